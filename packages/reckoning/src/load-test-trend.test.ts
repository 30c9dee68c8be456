import { describe, expect, it } from 'vitest';
import type { Book, ReadingRecord } from '#boat-book';
import { loadTestTrend } from './load-test-trend.ts';
import { batteryOfBook } from './power-history.ts';
import { loadTestsInWords } from './power-in-words.ts';
import { smallBook } from './testing/small-book.ts';
import { lineInWords } from './told-line.ts';

const place = { latitude_deg: 50, longitude_deg: 0, zone: 'Europe/London' };
const read = (at: string, volts: number, parts: Partial<ReadingRecord> = {}): ReadingRecord => ({
  battery: 'house',
  at,
  volts,
  current_A: null,
  air_C: 18,
  circumstance: 'under load',
  on: [],
  panelDark: true,
  by: 'hand',
  ...parts,
});
/** A lamp of 20 W from full for five hours: read rested, four times under way and rested in the morning. */
const test = (year: number, volts: readonly number[]) => {
  const [full, one, two, three, four, morning] = volts as [number, number, number, number, number, number];
  const at = (day: number, clock: string) => `${year}-06-0${day}T${clock}:00Z`;
  return {
    [`${year}a`]: read(at(1, '18:00'), full, { circumstance: 'rested' }),
    [`${year}b`]: read(at(1, '19:00'), one),
    [`${year}c`]: read(at(1, '20:30'), two),
    [`${year}d`]: read(at(1, '22:00'), three),
    [`${year}e`]: read(at(1, '23:00'), four),
    [`${year}f`]: read(at(2, '06:00'), morning, { circumstance: 'rested' }),
  };
};
const tests: Readonly<Record<number, readonly number[]>> = {
  2023: [12.85, 12.55, 12.45, 12.35, 12.28, 12.38],
  2025: [12.8, 12.35, 12.15, 11.95, 11.75, 12.0],
};
const book = (years: readonly number[]): Book =>
  smallBook({
    batteries: {
      house: {
        name: 'House battery',
        zone: null,
        chemistry: 'agm',
        nominal_Ah: 20,
        nominal_V: 12,
        made: '2020-06-01',
        floor_pct: 50,
        meter: 'm',
        note: '',
      },
    },
    readings: Object.assign({}, ...years.map((year) => test(year, tests[year]!))),
    loadTests: Object.fromEntries(
      years.map((year) => [
        `test ${year}`,
        {
          battery: 'house',
          readings: ['b', 'c', 'd', 'e'].map((n) => `${year}${n}`),
          circuit: null,
          watts: 20,
          note: '',
        },
      ]),
    ),
  });
const trendOf = (years: readonly number[]) => {
  const made = book(years);
  return loadTestTrend(made, batteryOfBook(made, 'house')!, place);
};

describe('load tests of a battery', () => {
  it('are told oldest first, each with its day, what was drawn, capacity and resistance', () => {
    const { tests: found } = trendOf([2025, 2023]);
    expect(found.map(({ day, hours, readings }) => [day, hours, readings])).toEqual([
      ['2023-06-01', 4, 4],
      ['2025-06-01', 4, 4],
    ]);
    // 20 W at some 12.5 V for four hours
    expect(found[0]!.drawn_Ah).toBeCloseTo((20 / 12.5) * 4, 0);
    for (const { capacity_Ah, resistance_mohm } of found)
      for (const { low, likely, high } of [capacity_Ah, resistance_mohm]) {
        expect(low).toBeLessThan(likely);
        expect(likely).toBeLessThan(high);
      }
  });

  it('fall where the volts fall lower for the same draw, and the words say by how much', () => {
    const trend = trendOf([2023, 2025]);
    expect(trend.tests[1]!.capacity_Ah.likely).toBeLessThan(trend.tests[0]!.capacity_Ah.likely);
    expect(trend.capacityChange_pct_year!.likely).toBeLessThan(-3);
    expect(lineInWords(loadTestsInWords(trend).at(-1)!)).toMatch(/a year/);
  });

  it('one alone says nothing of a year', () => {
    expect(trendOf([2023]).capacityChange_pct_year).toBeNull();
    expect(trendOf([2023]).tests).toHaveLength(1);
  });
});
