import { expect, test } from 'vitest';
import { checkBook } from './check-book.ts';
import type { OperationFields } from './operation-fields.ts';
import { begun, done, place } from './testing/devices.ts';

function bookWithPlace() {
  const book = begun();
  return { book, place: done(book.run('addPlace', place)) };
}

const forecast = (place: string, air: readonly number[]): OperationFields<'keepForecast'> => ({
  place,
  source: 'A forecast',
  askedLatitude_deg: -41.3,
  askedLongitude_deg: 174.8,
  from: '2026-05-01T00:00:00Z',
  rain_mm: air.map(() => 0),
  rainOdds_pct: air.map(() => null),
  wind_kn: air.map(() => 5),
  air_C: air,
  humidity_pct: air.map(() => 70),
});

test('the forecast of a place takes the place of the one before it, and of no other place', () => {
  const { book, place } = bookWithPlace();
  done(book.run('keepForecast', forecast(place, [10, 11])));
  done(book.run('keepForecast', forecast(place, [12, 13])));
  const kept = Object.values(book.view().forecasts);
  expect(kept.map(({ air_C }) => air_C)).toEqual([[12, 13]]);
  expect(kept[0]).toMatchObject({ taken: expect.stringMatching(/Z$/), order: 2 });
  expect(checkBook(book.view())).toEqual([]);
});

test('a forecast with a column too short, or that begins between hours, is refused and the last one stays', () => {
  const { book, place } = bookWithPlace();
  done(book.run('keepForecast', forecast(place, [10, 11])));
  expect(book.run('keepForecast', { ...forecast(place, [10, 11]), wind_kn: [5] })).toMatchObject({
    kind: 'refused',
    where: 'wind_kn',
    wrong: 'it has 1 hours, and air_C has 2',
  });
  expect(book.run('keepForecast', { ...forecast(place, [10]), from: '2026-05-01T00:30:00Z' })).toMatchObject({
    kind: 'refused',
    where: 'from',
  });
  expect(book.run('keepForecast', forecast('elsewhere', [10]))).toMatchObject({ kind: 'refused', where: 'place' });
  expect(Object.values(book.view().forecasts)).toHaveLength(1);
});

test('going by the forecast takes out what was entered for the day there; undo brings it back', () => {
  const { book, place } = bookWithPlace();
  const hour = { rain: false, rainOdds_pct: null, wind_kn: 5, air_C: 12, surface_C: null, humidity_pct: 70 };
  const entry = { place, fromHour: 6, toHour: 11, ...hour, basis: 'typed' as const };
  done(
    book.run('enterWeather', {
      entries: [
        { ...entry, date: '2026-05-01' },
        { ...entry, date: '2026-05-02' },
      ],
    }),
  );
  done(book.run('goByForecast', { place, date: '2026-05-01' }));
  expect(Object.values(book.view().weather).map(({ date }) => date)).toEqual(['2026-05-02']);
  expect(book.run('goByForecast', { place, date: '2026-05-01' })).toMatchObject({ kind: 'refused', where: 'date' });
  book.undo();
  expect(
    Object.values(book.view().weather)
      .map(({ date }) => date)
      .sort(),
  ).toEqual(['2026-05-01', '2026-05-02']);
});
