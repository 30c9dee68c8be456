import { describe, expect, it } from 'vitest';
import { cautiousClimate } from './cautious-climate.ts';

const at = (latitude: number, dayOfYear: number, hour: number) => cautiousClimate(latitude, dayOfYear, hour).air_C;

describe('the cautious climate value', () => {
  it('is wet, breezy and damp at every hour, and says that it is no entry', () => {
    for (let hour = 0; hour < 24; hour++) {
      const value = cautiousClimate(50, 129, hour);
      expect(value).toMatchObject({ rain: true, wind_kn: 15, basis: 'climate', surface_C: null });
      expect(value.humidity_pct).toBeGreaterThanOrEqual(75);
    }
  });

  it('is the sum it says it is', () => {
    // 50° north, warmest day, 15:00: 28 − 0.0068·2500 = 11; + 7; + 4; − 3 = 19
    expect(at(50, 207, 15)).toBe(19);
    // the same day 03:00: 11 + 7 − 4 − 3 = 11
    expect(at(50, 207, 3)).toBe(11);
  });

  it('has its seasons the other way round south of the equator, and none on it', () => {
    expect(at(-36, 20, 12)).toBeGreaterThan(at(-36, 200, 12) + 8);
    expect(at(36, 200, 12)).toBeGreaterThan(at(36, 20, 12) + 8);
    expect(at(0, 20, 12)).toBe(at(0, 200, 12));
  });

  it('is coldest in the small hours and colder toward the poles', () => {
    for (let hour = 0; hour < 24; hour++) expect(at(50, 100, 3)).toBeLessThanOrEqual(at(50, 100, hour));
    for (let latitude = 0; latitude < 85; latitude += 5)
      expect(at(latitude + 5, 10, 12)).toBeLessThan(at(latitude, 10, 12));
  });

  it('stays under monthly means that a coast really has, so that it is cautious', () => {
    // Mean air of the month at sea level, mid-latitude west coasts, from memory, rounded: at 50° north July 16–17 °C,
    // January 5–7 °C; at 36° south January 19–20 °C, July 10–11 °C. The mean of our day must be below.
    const dayMean = (latitude: number, day: number) =>
      Array.from({ length: 24 }, (_, hour) => at(latitude, day, hour)).reduce((a, b) => a + b) / 24;
    expect(dayMean(50, 196)).toBeLessThan(17);
    expect(dayMean(50, 15)).toBeLessThan(5);
    expect(dayMean(-36, 15)).toBeLessThan(22);
    expect(dayMean(-36, 196)).toBeLessThan(12);
  });

  it('refuses what is no place, day or hour', () => {
    expect(() => cautiousClimate(91, 1, 0)).toThrow(/latitude/);
    expect(() => cautiousClimate(0, 367, 0)).toThrow(/day of the year/);
    expect(() => cautiousClimate(0, 1, 24)).toThrow(/hour/);
  });
});
