import { describe, expect, test } from 'vitest';
import type { Book, ForecastRecord, JobDay, WeatherEntry } from '#boat-book';
import { datedJobDays } from '../job-days-ahead.ts';
import { planHours } from '../plan-hours.ts';
import { smallBook } from '../testing/small-book.ts';
import { windowDays } from '../window-hours.ts';
import { forecastHours, forecastOf, weatherInForce } from './weather-in-force.ts';

/** A dry, mild forecast for the yard of the small book; air rises by a degree an hour, so that hours can be told apart. */
function forecast(from: string, hours: number, parts: Partial<ForecastRecord> = {}): ForecastRecord {
  const column = (figure: number) => Array.from({ length: hours }, () => figure);
  return {
    place: 'yard',
    source: 'A forecast',
    askedLatitude_deg: 50,
    askedLongitude_deg: 0,
    from,
    rain_mm: column(0),
    rainOdds_pct: column(10),
    wind_kn: column(6),
    air_C: column(0).map((_, at) => at % 24),
    humidity_pct: column(60),
    taken: '2026-05-01T05:00:00Z',
    order: 1,
    ...parts,
  };
}

const typed: WeatherEntry = {
  place: 'yard',
  date: '2026-05-01',
  fromHour: 9,
  toHour: 11,
  rain: true,
  rainOdds_pct: 90,
  wind_kn: 20,
  air_C: 4,
  surface_C: null,
  humidity_pct: 95,
  basis: 'typed',
  entered: '2026-04-30T20:00:00Z',
  order: 1,
};

/** What counts for each clock hour of a day at the yard. */
function counting(book: Book, date: string): (WeatherEntry | undefined)[] {
  const hours: (WeatherEntry | undefined)[] = Array.from({ length: 24 });
  for (const entry of weatherInForce(book))
    if (entry.place === 'yard' && entry.date === date)
      for (let hour = entry.fromHour; hour < entry.toHour; hour++) hours[hour] = entry;
  return hours;
}

describe('a forecast', () => {
  test('is weather of the clock hours at its place', () => {
    // British Summer Time: 00:00 UTC is 01:00
    const book = smallBook({ forecasts: { f: forecast('2026-05-01T00:00:00Z', 48) } });
    const hours = counting(book, '2026-05-01');
    expect(hours[0]).toBeUndefined();
    expect(hours[1]).toMatchObject({ air_C: 0, basis: 'forecast', rain: false, rainOdds_pct: 10 });
    expect(hours[23]).toMatchObject({ air_C: 22 });
    expect(forecastHours(book, 'yard', '2026-05-01')).toHaveLength(23);
  });

  test('gives way to what was entered by hand for the same hours, also where that was entered before', () => {
    const book = smallBook({ forecasts: { f: forecast('2026-05-01T00:00:00Z', 48) }, weather: { w: typed } });
    expect(counting(book, '2026-05-01').map((hour) => hour?.basis)).toEqual(
      Array.from({ length: 24 }, (_, h) => (h === 0 ? undefined : h === 9 || h === 10 ? 'typed' : 'forecast')),
    );
  });

  test('of two for a place the one known last counts, whatever the clocks said', () => {
    const book = smallBook({
      forecasts: {
        a: forecast('2026-05-01T00:00:00Z', 24, { order: 2, wind_kn: Array(24).fill(9) }),
        b: forecast('2026-05-01T00:00:00Z', 24, { order: 1, taken: '2031-01-01T00:00:00Z' }),
      },
    });
    expect(counting(book, '2026-05-01')[5]?.wind_kn).toBe(9);
    expect(forecastOf(book, 'yard')?.order).toBe(2);
  });

  test('is of no place that was moved elsewhere since, and of one that was moved a little', () => {
    const moved = (latitude_deg: number) => {
      const book = smallBook({ forecasts: { f: forecast('2026-05-01T00:00:00Z', 24) } });
      return { ...book, places: { yard: { ...book.places.yard!, latitude_deg } } };
    };
    expect(forecastOf(moved(50.04), 'yard')).not.toBeNull();
    expect(forecastOf(moved(50.06), 'yard')).toBeNull();
    expect(weatherInForce(moved(50.06))).toEqual([]);
  });

  test('goes by the clocks of the place when its zone is put right', () => {
    const book = smallBook({ forecasts: { f: forecast('2026-05-01T00:00:00Z', 24) } });
    expect(counting(book, '2026-05-01')[12]?.air_C).toBe(11);
    const east = { ...book, places: { yard: { ...book.places.yard!, timeZone: 'Europe/Athens' } } };
    expect(counting(east, '2026-05-01')[12]?.air_C).toBe(9);
  });

  test('counts an hour as wet by what falls or by its chance', () => {
    const [rain_mm, rainOdds_pct] = [
      [0, 0.1, 0, 0],
      [10, 20, 50, null],
    ];
    const four = forecast('2026-05-01T08:00:00Z', 4, { rain_mm: rain_mm as number[], rainOdds_pct: rainOdds_pct! });
    const hours = counting(smallBook({ forecasts: { f: four } }), '2026-05-01').slice(9, 13);
    expect(hours.map((hour) => hour?.rain)).toEqual([false, true, true, false]);
  });
});

describe('when the clocks change', () => {
  test('the hour that is there twice has the worse of its two', () => {
    // 25 October 2026: 02:00 BST is 01:00 GMT; 00:00Z and 01:00Z are both 01:00 by the clock
    const wet = [0, 2, 0, 0];
    const book = smallBook({
      forecasts: {
        f: forecast('2026-10-25T00:00:00Z', 4, { rain_mm: wet, wind_kn: [9, 3, 3, 3], air_C: [8, 6, 5, 5] }),
      },
    });
    const hours = counting(book, '2026-10-25');
    expect(hours[1]).toMatchObject({ rain: true, wind_kn: 9, air_C: 6 });
    expect(hours[2]).toMatchObject({ rain: false, air_C: 5 });
  });

  test('the hour that is skipped has none, and those beside it have theirs', () => {
    // 29 March 2026: 01:00 GMT is 02:00 BST
    const book = smallBook({ forecasts: { f: forecast('2026-03-29T00:00:00Z', 4) } });
    expect(counting(book, '2026-03-29').map((hour) => hour?.air_C)).toEqual([
      0,
      undefined,
      1,
      2,
      3,
      ...Array(19).fill(undefined),
    ]);
  });

  test.each(['Europe/London', 'Pacific/Auckland', 'Asia/Kolkata', 'Australia/Lord_Howe'])(
    'the plan takes every hour as the forecast gave it, in %s',
    (timeZone) => {
      const from = '2026-10-24T00:00:00Z';
      const day: JobDay = {
        date: '2026-10-25',
        from: '09:00',
        to: '17:00',
        place: 'yard',
        setOut_min: 0,
        clearUp_min: 0,
        breaks: [],
        hands: [],
        endsIn: [],
      };
      const small = smallBook({ forecasts: { f: forecast(from, 72) }, jobDays: { day } });
      const book = { ...small, places: { yard: { ...small.places.yard!, timeZone } } };
      const hours = planHours(book, datedJobDays(book).days, Date.parse(from), 72);
      const off = hours.flatMap(({ air_C, basis }, at) => (basis === 'forecast' && air_C === at % 24 ? [] : [at]));
      // an hour the clock shows twice has the colder of its two: at most one hour is not its own
      expect(off.length).toBeLessThanOrEqual(1);
      expect(hours.every(({ rainOdds_pct }) => rainOdds_pct === 10)).toBe(true);
    },
  );
});

test('a window is looked for in the hours a forecast knows', () => {
  const now = Date.parse('2026-05-01T06:00:00Z');
  const looked = { now, freeAt: now, place: 'yard', willing: { from: '08:00', to: '20:00' }, helpers: 0 } as const;
  expect(windowDays(smallBook(), looked).size).toBe(0);
  const book = smallBook({ forecasts: { f: forecast('2026-05-01T00:00:00Z', 60) } });
  expect([...windowDays(book, looked).values()].map(({ date, from, to }) => [date, from, to])).toEqual([
    ['2026-05-01', '08:00', '20:00'],
    ['2026-05-02', '08:00', '20:00'],
    ['2026-05-03', '08:00', '13:00'],
  ]);
});
