/** From readings as they come out of a file to columns in the order of time: sorted, each instant once. */
import type { ReadColumn, ReadingColumns } from './reading-columns.ts';
import type { FaultList } from './row-faults.ts';

/** What may stand in a column; outside it a figure is a slip, a sensor that is off, or another unit. */
export interface ReadingLimits {
  /** shown by no battery of the kind but between these. [V] */
  readonly volts: readonly [least: number, most: number];
  /** now: nothing is read in the future. [ms] */
  readonly now: number;
}

/** 10 a second for three days, 1 a minute for five years: more is cut by date. */
export const mostReadings = 3_000_000;
/** Loggers whose clock was never set begin at 1970 or 2000. */
const earliest_ms = Date.UTC(2001, 0, 1);
/** Assumed: a clock may be this much fast. [ms] */
const clockFast_ms = 86_400_000;

/** Readings gathered one by one. */
export interface Gathered {
  /** Puts a reading in; NaN: not read. What is wrong with it is added to the faults. */
  add(row: number, at: number, volts: number, current: number, air: number): void;
  /** @returns the columns in order */
  inOrder(): OrderedReadings;
}

export interface OrderedReadings {
  readonly columns: ReadingColumns;
  /** rows that stood before one of an earlier time, and were put in order */
  readonly outOfOrder: number;
  /** rows that said the same as another of the same instant */
  readonly twice: number;
}

/** The range of current and air that can be right. */
const wide = { current: [-1000, 1000], air: [-60, 60] } as const;

/** @param there  the columns that are read */
export function gather(there: readonly ReadColumn[], limits: ReadingLimits, faults: FaultList): Gathered {
  let room = 1024;
  let count = 0;
  let at = new Float64Array(room);
  let rows = new Int32Array(room);
  let volts = new Float32Array(room);
  let current = new Float32Array(room);
  let air = new Float32Array(room);
  const grow = () => {
    room *= 2;
    const wider = <A extends Float64Array | Float32Array | Int32Array>(old: A, made: A): A => {
      made.set(old);
      return made;
    };
    at = wider(at, new Float64Array(room));
    rows = wider(rows, new Int32Array(room));
    volts = wider(volts, new Float32Array(room));
    current = wider(current, new Float32Array(room));
    air = wider(air, new Float32Array(room));
  };
  const kept = (row: number, name: 'current' | 'air', value: number): number => {
    const [least, most] = wide[name];
    if (Number.isNaN(value) || (value >= least && value <= most)) return value;
    const unit = name === 'current' ? 'A' : '°C';
    faults.add({
      row,
      lost: 'figure',
      wrong: `the ${name} is ${written(value)} ${unit}`,
      right: `from ${least} to ${most} ${unit}; the rest of the row is kept`,
    });
    return Number.NaN;
  };
  return {
    add(row, instant, volts_V, current_A, air_C) {
      const refuse = (wrong: string, right: string) => faults.add({ row, lost: 'row', wrong, right });
      if (instant > limits.now + clockFast_ms)
        return refuse(
          `its time, ${stamp(instant)}, lies ahead`,
          'a time that has been; see how dates are written, and the zone',
        );
      if (instant < earliest_ms)
        return refuse(
          `its time, ${stamp(instant)}, is before 2001`,
          'a time from 2001 on; the clock may not have been set',
        );
      const [least, most] = limits.volts;
      if (!Number.isNaN(volts_V) && !(volts_V >= least && volts_V <= most))
        return refuse(
          `the volts are ${written(volts_V)}`,
          `from ${least} to ${most} V, which a battery of this kind can show`,
        );
      const amps = kept(row, 'current', current_A);
      const warmth = kept(row, 'air', air_C);
      if (Number.isNaN(volts_V) && Number.isNaN(amps) && Number.isNaN(warmth))
        return refuse('there is no figure in it', `${there.join(' or ')} as a figure`);
      if (count === mostReadings)
        return refuse('there are too many readings', `at most ${mostReadings} in one file; cut it by date`);
      if (count === room) grow();
      at[count] = instant;
      rows[count] = row;
      volts[count] = volts_V;
      current[count] = amps;
      air[count] = warmth;
      count++;
    },
    inOrder() {
      let outOfOrder = 0;
      let latest = Number.NEGATIVE_INFINITY;
      for (let i = 0; i < count; i++) {
        if (at[i]! < latest) outOfOrder++;
        else latest = at[i]!;
      }
      const order = Uint32Array.from({ length: count }, (_, i) => i);
      if (outOfOrder > 0) order.sort((a, b) => at[a]! - at[b]! || a - b);
      const same = (a: Float32Array, i: number, j: number) => Object.is(a[i], a[j]);
      let twice = 0;
      let size = 0;
      for (let n = 0; n < count; n++) {
        const i = order[n]!;
        const before = size === 0 ? -1 : order[size - 1]!;
        if (before >= 0 && at[i] === at[before]) {
          if (same(volts, i, before) && same(current, i, before) && same(air, i, before)) twice++;
          else
            faults.add({
              row: rows[i]!,
              lost: 'row',
              wrong: `row ${rows[before]} is of the same instant, ${stamp(at[i]!)}, and says otherwise`,
              right: 'one reading an instant: the first is kept; a clock that shows seconds tells them apart',
            });
          continue;
        }
        order[size++] = i;
      }
      const column = (name: ReadColumn, from: Float32Array) =>
        there.includes(name) ? Float32Array.from({ length: size }, (_, n) => from[order[n]!]!) : null;
      return {
        columns: {
          at: Float64Array.from({ length: size }, (_, n) => at[order[n]!]!),
          volts: column('volts', volts),
          current: column('current', current),
          air: column('air', air),
        },
        outOfOrder,
        twice,
      };
    },
  };
}

/** `2026-05-02 18:40:00 UTC` */
export const stamp = (at: number): string => `${new Date(at).toISOString().slice(0, 19).replace('T', ' ')} UTC`;

/** A figure with no more places than it needs. */
const written = (value: number): string => `${Number(value.toPrecision(6))}`;

export interface Gap {
  readonly from: number;
  readonly to: number;
}

/** Assumed: a step this many times the usual one is a gap, and none shorter than a minute. */
const gapTimes = 5;
const leastGap_ms = 60_000;

/** The step beyond which two readings do not hang together: five times the usual one. [ms] */
export function gapFrom_ms(at: Float64Array): number {
  if (at.length < 3) return Number.POSITIVE_INFINITY;
  const every = Math.max(1, Math.floor(at.length / 20_000));
  const steps: number[] = [];
  for (let i = 1; i < at.length; i += every) steps.push(at[i]! - at[i - 1]!);
  steps.sort((a, b) => a - b);
  return Math.max(leastGap_ms, gapTimes * steps[steps.length >> 1]!);
}

/** The gaps between readings, in order. */
export function gapsIn(at: Float64Array): Gap[] {
  const from = gapFrom_ms(at);
  const gaps: Gap[] = [];
  for (let i = 1; i < at.length; i++) if (at[i]! - at[i - 1]! > from) gaps.push({ from: at[i - 1]!, to: at[i]! });
  return gaps;
}
