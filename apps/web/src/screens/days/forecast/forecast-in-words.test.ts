import { expect, test } from 'vitest';
import type { WeatherEntry } from '#boat-book';
import { ageInWords, hoursInWords } from './forecast-in-words.ts';
import { roundedInWords } from './places-asked.ts';

const taken = '2026-11-26T06:40:00Z';
const after = (minutes: number) => Date.parse(taken) + minutes * 60_000;

test.each([
  [0, 'just taken'],
  [-600, 'just taken'],
  [40, '40 minutes old'],
  [60, '1 hour old'],
  [47 * 60 + 59, '47 hours old'],
  [72 * 60, '3 days old'],
])('%i minutes after it was taken a forecast is %s', (minutes, words) => {
  expect(ageInWords(taken, after(minutes))).toBe(words);
});

test('a rounded place is told by its sides of the equator and of Greenwich', () => {
  expect(roundedInWords({ latitude_deg: -41.3, longitude_deg: 174.8 })).toBe('41.3° S, 174.8° E');
  expect(roundedInWords({ latitude_deg: 0, longitude_deg: -5 })).toBe('0.0° N, 5.0° W');
});

test('hours are told as a sentence with their ranges, and a chance that is not given is left out', () => {
  const hour: WeatherEntry = {
    place: 'yard',
    date: '2026-11-26',
    fromHour: 9,
    toHour: 10,
    rain: false,
    rainOdds_pct: 5,
    wind_kn: 4.4,
    air_C: 11,
    surface_C: null,
    humidity_pct: 60,
    basis: 'forecast',
    entered: taken,
  };
  expect(hoursInWords([])).toBeNull();
  expect(hoursInWords([hour, { ...hour, rain: true, rainOdds_pct: 80, wind_kn: 9, air_C: 15 }])).toBe(
    'rain in 1 of 2 hours, 5 to 80 % chance of rain in an hour, wind 4 to 9 kn, 11 to 15 °C, 60 % humid',
  );
  expect(hoursInWords([{ ...hour, rainOdds_pct: null }])).toBe('dry, wind 4 kn, 11 °C, 60 % humid');
});
