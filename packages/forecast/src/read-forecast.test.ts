import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundedPlace } from './forecast-address.ts';
import { forecastEnd } from './forecast-hours.ts';
import { readForecast, replyLimit_bytes } from './read-forecast.ts';
import { type DocumentedReply, documentedReply } from './testing/documented-reply.ts';

const midnight = Date.parse('2026-11-26T00:00:00Z');
const now = Date.parse('2026-11-26T08:20:00Z');
const asked = roundedPlace(-41.3, 174.8);

const read = (text: string) => readForecast(text, { asked, now });

function changed(change: (reply: DocumentedReply) => void): string {
  const reply = documentedReply(midnight);
  change(reply);
  return JSON.stringify(reply);
}

function hoursOf(text: string) {
  const answer = read(text);
  if (answer.kind !== 'forecast') throw new Error(answer.why);
  return answer.hours;
}

describe('a documented reply', () => {
  const hours = hoursOf(JSON.stringify(documentedReply(midnight)));

  test('has an hour between each two of its instants', () => {
    expect(hours.from).toBe(midnight);
    expect(hours.air_C).toHaveLength(215);
    expect(forecastEnd(hours)).toBe(midnight + 215 * 3_600_000);
  });

  test('gives rain and its chance to the hour before the instant they stand at', () => {
    // 1.4 mm and 80 % stand at 06:00 of the second day: they fell from 05:00 to 06:00, which is hour 29
    expect([28, 29, 30].map((at) => hours.rain_mm[at])).toEqual([0, 1.4, 0]);
    expect([28, 29, 30].map((at) => hours.rainOdds_pct[at])).toEqual([5, 80, 5]);
  });

  test('takes the mean of air and humidity and the stronger wind of the two ends of an hour', () => {
    // instants 3 and 4: 11.5 and 12 °C, 87 and 86 %, 7 and 8 kn; 6 and 7: 10 and 4 kn
    expect([hours.air_C[3], hours.humidity_pct[3], hours.wind_kn[3]]).toEqual([11.8, 87, 8]);
    expect(hours.wind_kn[6]).toBe(10);
  });
});

test('a chance that is not given is not given, and no hour is lost by it', () => {
  const hours = hoursOf(changed(({ hourly }) => hourly.precipitation_probability!.fill(null, 100)));
  expect(hours.air_C).toHaveLength(215);
  expect([hours.rainOdds_pct[98], hours.rainOdds_pct[99]]).toEqual([5, null]);
});

test('a forecast ends where its figures end', () => {
  const hours = hoursOf(changed(({ hourly }) => hourly.wind_speed_10m!.fill(null, 150)));
  expect(hours.air_C).toHaveLength(149);
  expect(hours.rain_mm).toHaveLength(149);
});

test('of the hour before the first nothing is asked', () => {
  expect(hoursOf(changed(({ hourly }) => hourly.precipitation!.fill(null, 0, 1))).from).toBe(midnight);
});

const whole = JSON.stringify(documentedReply(midnight));

describe('is refused whole and in plain words:', () => {
  test.each<readonly [string, string, RegExp]>([
    ['an empty reply', ' ', /is empty/],
    ['half a reply', whole.slice(0, whole.length / 2), /breaks off or is damaged, after \d+ characters/],
    ['a sign-in page', '<!doctype html><title>Harbour network</title>', /a sign-in page of the network/],
    ['a list', '[1, 2]', /is no forecast/],
    [
      'an error',
      '{"error": true, "reason": "Latitude must be in range"}',
      /the service says: Latitude must be in range/,
    ],
    ['a reply too long', `{"x":"${'x'.repeat(replyLimit_bytes)}"}`, /longer than 500 kB/],
    ['no hours', changed((reply) => Reflect.deleteProperty(reply, 'hourly')), /it has no hours/],
    ['no units', changed((reply) => Reflect.deleteProperty(reply, 'hourly_units')), /does not say its units/],
    ['no place', changed((reply) => Reflect.deleteProperty(reply, 'latitude')), /does not say for which place/],
    [
      'another place',
      changed((reply) => Object.assign(reply, { latitude: 41.25 })),
      /is for 41.25, 174.75, and -41.3, 174.8/,
    ],
    ['a zone', changed((reply) => Object.assign(reply, { utc_offset_seconds: 46_800 })), /are 46800 seconds off/],
    [
      'another unit of wind',
      changed((r) => Object.assign(r.hourly_units, { wind_speed_10m: 'km/h' })),
      /in kn and comes in km\/h/,
    ],
    ['°F', changed((r) => Object.assign(r.hourly_units, { temperature_2m: '°F' })), /in °C and comes in °F/],
    ['inches', changed((r) => Object.assign(r.hourly_units, { precipitation: 'inch' })), /in mm and comes in inch/],
    [
      'clock times',
      changed((r) => Object.assign(r.hourly_units, { time: 'iso8601' })),
      /in unixtime and comes in iso8601/,
    ],
    ['a unit left out', changed((r) => Reflect.deleteProperty(r.hourly_units, 'precipitation')), /comes in no unit/],
    [
      '900 degrees',
      changed(({ hourly }) => hourly.temperature_2m!.fill(900, 40, 41)),
      /the air is 900 °C at 27 November 16:00 UTC, and can be -60 to 60/,
    ],
    [
      'rain under nought',
      changed(({ hourly }) => hourly.precipitation!.fill(-0.1, 7, 8)),
      /the rain is -0.1 mm in an hour at 26 November 07:00/,
    ],
    [
      'a chance over 100',
      changed(({ hourly }) => hourly.precipitation_probability!.fill(101, 7, 8)),
      /the chance of rain is 101 %/,
    ],
    ['a wind in words', changed(({ hourly }) => hourly.wind_speed_10m!.fill('calm', 7, 8)), /the wind is no figure at/],
    [
      'a figure left out',
      changed(({ hourly }) => hourly.temperature_2m!.fill(null, 40, 41)),
      /the air is missing at 27 November 16:00/,
    ],
    [
      'a column left out',
      changed(({ hourly }) => Reflect.deleteProperty(hourly, 'relative_humidity_2m')),
      /the humidity is missing/,
    ],
    [
      'a column too short',
      changed(({ hourly }) => hourly.wind_speed_10m!.pop()),
      /216 hours and 215 figures for the wind/,
    ],
    [
      'an hour left out',
      changed(({ hourly }) => Object.values(hourly).map((list) => list.splice(50, 2))),
      /missing in it between 28 November 01:00 UTC and 28 November 04:00/,
    ],
    [
      'an hour twice',
      changed(({ hourly }) => Object.values(hourly).map((list) => list.splice(50, 0, list[50]!))),
      /the hour 28 November 02:00 UTC twice/,
    ],
    [
      'hours out of order',
      changed(({ hourly }) => hourly.time!.splice(10, 2, hourly.time![11]!, hourly.time![10]!)),
      /missing|out of order/,
    ],
    [
      'times between the hours',
      changed(({ hourly }) => Object.assign(hourly, { time: hourly.time!.map((t) => Number(t) + 900) })),
      /no whole hour/,
    ],
    [
      'times in thousandths',
      changed(({ hourly }) => Object.assign(hourly, { time: hourly.time!.map((t) => Number(t) * 1000) })),
      /no whole hour/,
    ],
    ['far too many hours', JSON.stringify(documentedReply(midnight, 600)), /600 hours; at most 480/],
    [
      'hours gone by',
      JSON.stringify(documentedReply(midnight - 20 * 24 * 3_600_000)),
      /less than 24 hours ahead, or a clock is wrong/,
    ],
    [
      'hours of next week',
      JSON.stringify(documentedReply(midnight + 7 * 24 * 3_600_000)),
      /begins at 3 December 00:00 UTC, after now/,
    ],
  ])('%s', (_, text, why) => {
    const answer = read(text);
    expect(answer).toMatchObject({ kind: 'refused', why: expect.stringMatching(why) });
  });
});

test('whatever comes, it is refused or every figure is one the book takes', () => {
  const anything = fc.oneof(fc.double(), fc.integer(), fc.constant(null), fc.string(), fc.boolean());
  const columns = Object.keys(documentedReply(midnight).hourly);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...columns), fc.nat(215), anything), { maxLength: 4 }),
      fc.nat(60_000),
      (faults, cut) => {
        const reply = documentedReply(midnight);
        for (const [column, at, value] of faults) reply.hourly[column]![at] = value as number;
        for (const text of [JSON.stringify(reply), JSON.stringify(reply).slice(0, cut)]) {
          const answer = read(text);
          if (answer.kind === 'refused') continue;
          const { rain_mm, rainOdds_pct, wind_kn, air_C, humidity_pct } = answer.hours;
          const within = (list: readonly (number | null)[], least: number, most: number) =>
            list.length === air_C.length && list.every((f) => f === null || (f >= least && f <= most));
          expect(within(rain_mm, 0, 300) && within(rainOdds_pct, 0, 100) && within(wind_kn, 0, 120)).toBe(true);
          expect(within(air_C, -60, 60) && within(humidity_pct, 1, 100)).toBe(true);
          expect([...rain_mm, ...wind_kn, ...air_C, ...humidity_pct]).not.toContain(null);
        }
      },
    ),
    { numRuns: 200 },
  );
});
