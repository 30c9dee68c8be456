import type { BatteryHistory, Flow } from '../battery-history.ts';

/**
 * The history cut where anything changes: within a stretch each flow is steady, and a reading stands at the end of one at
 * most. Long before a reading, stretches are put together and their flows averaged: the charge comes out the same, and how it
 * came is forgotten by then.
 */
export interface Stretches {
  readonly count: number;
  /** start of all. [ms] */
  readonly from: number;
  /** end of each. [ms] */
  readonly end: Float64Array;
  readonly hours: Float64Array;
  readonly battery_C: Float64Array;
  /** flows of one name, misstated by one share */
  readonly sources: number;
  /** what flows in stretch n, name by name: `firstTerm[n]` up to before `firstTerm[n + 1]` */
  readonly firstTerm: Int32Array;
  readonly source: Int32Array;
  /** [A], out of the battery; and a standard deviation to either side */
  readonly likely_A: Float64Array;
  readonly more_A: Float64Array;
  readonly less_A: Float64Array;
  /** the reading at the end of a stretch; −1: none */
  readonly reading: Int32Array;
}

const hour = 3_600_000;
/** Assumed: a battery takes this long to follow the air. [h] */
const followsAir_h = 3;
/** Standard deviations from the middle to an end of a band of nine in ten. */
const toEnd = 1.645;
/** A stretch put together is no longer than this share of the time to the next reading, and than a day. */
const shareToNext = 0.25;
const longest_ms = 24 * hour;

/** @throws RangeError naming what is not in order */
export function stretchesOf(history: BatteryHistory): Stretches {
  requireOrder(history);
  const { from, to, flows, readings, temperatures } = history;
  const readAt = readings.map((_, index) => index).sort((a, b) => readings[a]!.at - readings[b]!.at);
  const ends = edgesOf(history);
  const { names, count: sources } = namesOf(flows);
  const byStart = flows.map((_, index) => index).sort((a, b) => flows[a]!.from - flows[b]!.from);
  const end: number[] = [];
  const hours: number[] = [];
  const heat: number[] = [];
  const firstTerm = [0];
  const terms: { source: number; likely: number; more: number; less: number }[] = [];
  const reading: number[] = [];
  // what flowed in the stretch so far, by name: two places each, for what draws and what charges
  const likely = new Float64Array(2 * sources);
  const more = new Float64Array(2 * sources);
  const less = new Float64Array(2 * sources);
  const touched: number[] = [];
  const flowed = ({ low_A, likely_A, high_A }: Flow, name: number, span: number) => {
    const place = 2 * name + (likely_A < 0 ? 1 : 0);
    if (!touched.includes(place)) touched.push(place);
    likely[place]! += likely_A * span;
    more[place]! += ((high_A - likely_A) * span) / toEnd;
    less[place]! += ((likely_A - low_A) * span) / toEnd;
  };
  let battery_C = temperatures.length > 0 ? temperatures[0]!.air_C : 20;
  let warmth = 0;
  let start = from;
  const close = (until: number, read: number) => {
    const span = (until - start) / hour;
    for (const place of touched) {
      const over = span > 0 ? span : 1;
      terms.push({
        source: place >> 1,
        likely: likely[place]! / over,
        more: more[place]! / over,
        less: less[place]! / over,
      });
      likely[place] = 0;
      more[place] = 0;
      less[place] = 0;
    }
    touched.length = 0;
    end.push(until);
    hours.push(span);
    heat.push(span > 0 ? warmth / span : battery_C);
    warmth = 0;
    firstTerm.push(terms.length);
    reading.push(read);
    start = until;
  };
  const air = airAlong(temperatures);
  let running: number[] = [];
  let nextStart = 0;
  let nextRead = 0;
  let piece = from;
  for (const until of ends) {
    while (
      nextRead < readAt.length &&
      readings[readAt[nextRead]!]!.at < until &&
      readings[readAt[nextRead]!]!.at < piece
    )
      nextRead++;
    const due = nextRead < readAt.length ? readings[readAt[nextRead]!]!.at : to;
    const most = Math.min(longest_ms, shareToNext * (due - start));
    if (piece > start && until - start > most) close(piece, -1);
    const span = (until - piece) / hour;
    if (span > 0) {
      const warmer = air((piece + until) / 2);
      battery_C += (warmer - battery_C) * (1 - Math.exp(-span / followsAir_h));
      warmth += battery_C * span;
      running = running.filter((index) => flows[index]!.to > piece);
      while (nextStart < byStart.length && flows[byStart[nextStart]!]!.from < until) {
        if (flows[byStart[nextStart]!]!.to > piece) running.push(byStart[nextStart]!);
        nextStart++;
      }
      for (const index of running) flowed(flows[index]!, names[index]!, span);
    }
    piece = until;
    let read = 0;
    for (; nextRead < readAt.length && readings[readAt[nextRead]!]!.at <= until; nextRead++, read++) {
      // at an instant what flows is what has flowed up to it
      if (read > 0 || until === start)
        for (const index of running)
          if (flows[index]!.to >= until && flows[index]!.from < until) flowed(flows[index]!, names[index]!, 1);
      close(until, readAt[nextRead]!);
    }
    if (until === to && start < to) close(to, -1);
  }
  return {
    count: end.length,
    from,
    end: Float64Array.from(end),
    hours: Float64Array.from(hours),
    battery_C: Float64Array.from(heat),
    sources,
    firstTerm: Int32Array.from(firstTerm),
    source: Int32Array.from(terms, (term) => term.source),
    likely_A: Float64Array.from(terms, (term) => term.likely),
    more_A: Float64Array.from(terms, (term) => term.more),
    less_A: Float64Array.from(terms, (term) => term.less),
    reading: Int32Array.from(reading),
  };
}

function requireOrder({ from, to, flows, readings }: BatteryHistory): void {
  if (!(to >= from)) throw new RangeError(`a history ends no sooner than it begins; got ${from} to ${to}`);
  flows.forEach((flow, index) => {
    if (!(flow.to > flow.from)) throw new RangeError(`flow ${index + 1}: it must end after it begins`);
    if (!(flow.low_A <= flow.likely_A && flow.likely_A <= flow.high_A))
      throw new RangeError(
        `flow ${index + 1}: low ≤ likely ≤ high is wanted; got ${flow.low_A}, ${flow.likely_A}, ${flow.high_A} A`,
      );
  });
  readings.forEach(({ at, volts }, index) => {
    if (!(at >= from && at <= to)) throw new RangeError(`reading ${index + 1}: it lies outside the history`);
    if (!Number.isFinite(volts)) throw new RangeError(`reading ${index + 1}: its volts are no number`);
  });
}

/** Every instant at which something changes or is read, and the end. In order. */
function edgesOf({ from, to, flows, readings }: BatteryHistory): Float64Array {
  const edges = new Set<number>([to]);
  for (const flow of flows) {
    if (flow.from > from && flow.from < to) edges.add(flow.from);
    if (flow.to > from && flow.to < to) edges.add(flow.to);
  }
  for (const { at } of readings) edges.add(at);
  return Float64Array.from(edges).sort();
}

/** The number of each flow's name; a flow without one has a number of its own. */
function namesOf(flows: readonly Flow[]): { readonly names: Int32Array; readonly count: number } {
  const numbers = new Map<string, number>();
  let count = 0;
  const names = Int32Array.from(flows, ({ source }) => {
    const known = source === null ? undefined : numbers.get(source);
    if (known !== undefined) return known;
    if (source !== null) numbers.set(source, count);
    return count++;
  });
  return { names, count };
}

/** The air at instants asked for in the order of time, straight between what was read. [°C] */
function airAlong(temperatures: BatteryHistory['temperatures']): (at: number) => number {
  let next = 0;
  return (at) => {
    if (temperatures.length === 0) return 20;
    while (next < temperatures.length && temperatures[next]!.at <= at) next++;
    const before = temperatures[Math.max(0, next - 1)]!;
    const after = temperatures[Math.min(next, temperatures.length - 1)]!;
    const span = after.at - before.at;
    return span <= 0 ? before.air_C : before.air_C + ((at - before.at) / span) * (after.air_C - before.air_C);
  };
}
