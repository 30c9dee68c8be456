import type { BatteryHistory } from '../battery-history.ts';

/** The history cut where anything changes: within a stretch each flow is steady, and a reading stands at the end of one at most. */
export interface Stretches {
  readonly count: number;
  /** start of all. [ms] */
  readonly from: number;
  /** end of each. [ms] */
  readonly end: Float64Array;
  readonly hours: Float64Array;
  readonly battery_C: Float64Array;
  /** which flows there are in stretch n: `flow[firstFlow[n]]` up to before `flow[firstFlow[n + 1]]` */
  readonly firstFlow: Int32Array;
  readonly flow: Int32Array;
  /** the reading at the end of a stretch; −1: none */
  readonly reading: Int32Array;
}

/** Assumed: a battery takes this long to follow the air. [h] */
const followsAir_h = 3;

/** @throws RangeError naming what is not in order */
export function stretchesOf(history: BatteryHistory): Stretches {
  const { from, to, flows, readings, temperatures } = history;
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
  const edges = new Set<number>([to]);
  for (const flow of flows) for (const edge of [flow.from, flow.to]) if (edge > from && edge < to) edges.add(edge);
  for (const { at } of readings) edges.add(at);
  const ends = [...edges].sort((a, b) => a - b);
  const last = new Map<number, number[]>();
  for (const [index, { at }] of readings.entries()) last.set(at, [...(last.get(at) ?? []), index]);
  const end: number[] = [];
  const hours: number[] = [];
  const heat: number[] = [];
  const firstFlow: number[] = [0];
  const flow: number[] = [];
  const reading: number[] = [];
  let start = from;
  let battery_C = temperatures.length > 0 ? airAt(temperatures, from) : 20;
  const add = (until: number, read: number) => {
    const span = (until - start) / 3_600_000;
    const air = temperatures.length > 0 ? airAt(temperatures, (start + until) / 2) : 20;
    battery_C += (air - battery_C) * (1 - Math.exp(-span / followsAir_h));
    end.push(until);
    hours.push(span);
    heat.push(battery_C);
    const middle = (start + until) / 2;
    // at an instant what flows is what has flowed up to it
    flows.forEach((each, index) => {
      if (span > 0 ? each.from <= middle && each.to > middle : each.from < until && each.to >= until) flow.push(index);
    });
    firstFlow.push(flow.length);
    reading.push(read);
    start = until;
  };
  for (const until of ends) {
    const reads = last.get(until) ?? [-1];
    for (const read of reads) add(until, read);
  }
  return {
    count: end.length,
    from,
    end: Float64Array.from(end),
    hours: Float64Array.from(hours),
    battery_C: Float64Array.from(heat),
    firstFlow: Int32Array.from(firstFlow),
    flow: Int32Array.from(flow),
    reading: Int32Array.from(reading),
  };
}

function airAt(temperatures: BatteryHistory['temperatures'], at: number): number {
  let before = temperatures[0]!;
  for (const each of temperatures) {
    if (each.at > at) {
      const span = each.at - before.at;
      return span <= 0 ? each.air_C : before.air_C + ((at - before.at) / span) * (each.air_C - before.air_C);
    }
    before = each;
  }
  return before.air_C;
}
