import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book } from '#boat-book';
import type { ReadingColumns } from '#readings';
import { airRead, measuredFlows, voltsIn, voltsRead } from './power-blocks.ts';
import { batteryHistory, batteryOfBook, spanOfReadings } from './power-history.ts';
import { batteryNow } from './power-night.ts';
import { readingsCourse } from './readings-course.ts';
import { smallBook } from './testing/small-book.ts';

const minute = 60_000;
const hour = 60 * minute;
const end = Date.parse('2026-06-20T04:00:00Z');

/** Readings a minute apart up to `end`. */
function block(
  count: number,
  parts: { volts?: (i: number) => number; current?: (i: number) => number },
): ReadingColumns {
  const of = (value: ((i: number) => number) | undefined) =>
    value ? Float32Array.from({ length: count }, (_, i) => value(i)) : null;
  return {
    at: Float64Array.from({ length: count }, (_, i) => end - (count - 1 - i) * minute),
    volts: of(parts.volts),
    current: of(parts.current),
    air: null,
  };
}
const whole = ({ at }: ReadingColumns) => ({ start: at[0]!, end: at.at(-1)! });
const Ah = (flows: readonly { from: number; to: number; likely_A: number }[]) =>
  flows.reduce((sum, { from, to, likely_A }) => sum + (likely_A * (to - from)) / hour, 0);

describe('a measured current', () => {
  it('comes to the ampere-hours that flowed, whatever it did and where it was not read', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 400 }),
        fc.nat(399),
        (amps, hole) => {
          const columns = block(amps.length, { current: (i) => (i === hole ? Number.NaN : amps[i]! / 10) });
          const { flows, spans } = measuredFlows([columns], whole(columns));
          // by hand: the mean of each two neighbours that were read, over the time between them
          let expected = 0;
          let last = -1;
          for (let i = 0; i < amps.length; i++) {
            if (i === hole) continue;
            if (last >= 0) expected += ((amps[i]! + amps[last]!) / 20) * ((i - last) / 60);
            last = i;
          }
          expect(Ah(flows)).toBeCloseTo(expected, 6);
          expect(spans.length).toBe(1);
          for (const { from, to, low_A, likely_A, high_A } of flows)
            expect(from < to && low_A < likely_A && likely_A < high_A).toBe(true);
        },
      ),
    );
  });

  it('says nothing of a gap', () => {
    const one = block(60, { current: () => 1 });
    const two = { ...one, at: one.at.map((at, i) => (i < 30 ? at - 5 * hour : at)) };
    const { flows, spans } = measuredFlows([two], whole(two));
    expect(spans.map(({ start, end: to }) => (to - start) / minute)).toEqual([29, 29]);
    expect(Ah(flows)).toBeCloseTo(58 / 60, 6);
  });
});

describe('volts from a block', () => {
  it('are few, evenly taken, and the last is among them', () => {
    const columns = block(10_000, { volts: (i) => 12 + i / 10_000, current: (i) => (i % 2 ? Number.NaN : 1) });
    const read = voltsRead([columns], whole(columns), 'm');
    expect(voltsIn([columns], whole(columns))).toBe(10_000);
    expect(read.length).toBeLessThanOrEqual(201);
    expect(read.at(-1)).toMatchObject({ at: end, meter: 'm' });
    const steps = read.slice(1, -1).map(({ at }, i) => (at - read[i]!.at) / minute);
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThanOrEqual(1);
    expect(airRead([columns], whole(columns))).toEqual([]);
  });
});

describe('the history of a battery', () => {
  const book = (columns: ReadingColumns, parts: Partial<Book> = {}): Book =>
    smallBook({
      batteries: {
        house: {
          name: 'House battery',
          zone: null,
          chemistry: 'agm',
          nominal_Ah: 20,
          nominal_V: 12,
          made: '2024-06-01',
          floor_pct: 50,
          meter: 'm',
          note: '',
        },
      },
      circuits: {
        pump: {
          name: 'Bilge pump',
          battery: 'house',
          watts: 12,
          duty_pct: 100,
          uses: { kind: 'always' },
          fuse_A: null,
          fuseAt_m: null,
          conductor: null,
          needs: 'other',
          zone: null,
        },
      },
      readingBlocks: {
        b: {
          battery: 'house',
          blob: 'x',
          from: new Date(columns.at[0]!).toISOString(),
          to: new Date(end).toISOString(),
          count: columns.at.length,
          columns: ['volts', 'current'],
          file: 'log.csv',
        },
      },
      ...parts,
    });
  // 1 A for eight hours out of 20 Ah: 12.65 V falling by 0.05 V an hour
  const night = block(481, { volts: (i) => 12.65 - i / 1200, current: () => 1 });
  const blocks = new Map([['x', night]]);

  it('goes by the measured current alone while it was measured', () => {
    const made = book(night);
    const battery = batteryOfBook(made, 'house', blocks)!;
    const place = { latitude_deg: 50, longitude_deg: 0, zone: 'UTC' };
    const span = { start: night.at[0]! - hour, end: end + hour };
    const { flows, readings } = batteryHistory(made, battery, place, span);
    const sources = (from: number, to: number) =>
      new Set(flows.filter((flow) => flow.from < to && flow.to > from).map(({ source }) => source));
    expect(sources(night.at[0]!, end)).toEqual(new Set(['measured current']));
    expect([...sources(end, end + hour)].join()).toMatch(/Bilge pump/);
    expect(readings.length).toBeGreaterThan(100);
    expect(spanOfReadings(battery, end + hour)?.start).toBe(night.at[0]! - 12 * hour);
  });

  it('without the block on this device goes on without it', () => {
    const battery = batteryOfBook(book(night), 'house', new Map())!;
    expect(spanOfReadings(battery, end + hour)).toBeNull();
    expect(batteryNow(book(night), battery, end + hour)).toBe('no reading');
  });

  it('and the charge over a block falls by what flowed, within its band', () => {
    const course = readingsCourse(book(night), 'b', blocks, { start: 0, end: end + hour });
    if (typeof course === 'string') throw new Error(course);
    const [first, last] = [0, course.at.length - 1];
    expect(course.at[last]).toBe(end);
    for (let i = 0; i <= last; i++) {
      expect(course.low[i]).toBeLessThanOrEqual(course.likely[i]!);
      expect(course.likely[i]).toBeLessThanOrEqual(course.high[i]!);
    }
    // 8 Ah of what it is worth, give or take what the current may be off
    const fallen = (course.likely[first]! - course.likely[last]!) / 100;
    const Ah_out = fallen * course.capacity_Ah.likely;
    expect(Ah_out).toBeGreaterThan(6.5);
    expect(Ah_out).toBeLessThan(9.5);
    const goesIn = course.working.rows.filter(({ kind }) => kind === 'goes in').map(({ words }) => words);
    expect(goesIn.join()).toMatch(/the current as it was measured, 100 % of the time/);
    expect(readingsCourse(book(night), 'b', new Map(), { start: 0, end })).toBe('not here');
    expect(readingsCourse(book(night, { places: {} }), 'b', blocks, { start: 0, end })).toBe('no place');
    expect(readingsCourse(book(night), 'b', blocks, { start: 0, end: night.at[0]! - 1 })).toBe('no volts');
  });
});
