/** A history cut into steps in which nothing changes, for the circuit to run through. */
import type { BatteryHistory, Flow, VoltReading } from './battery-history.ts';
import type { Timeline } from './circuit-model.ts';

const hour = 3_600_000;

/** The flows of a timeline, each with the standard normal number that misstates it. */
export interface TimelineFlows {
  readonly likely_A: Float64Array;
  /** spread of the logarithm to either side of likely */
  readonly over: Float64Array;
  readonly under: Float64Array;
  /** which normal number, from 0 */
  readonly source: Int32Array;
  readonly sources: number;
}

export interface CutHistory {
  readonly timeline: Timeline;
  readonly flows: TimelineFlows;
  /** readings in the timeline's order */
  readonly readings: readonly VoltReading[];
  /** end of each step. [ms] */
  readonly ends: Float64Array;
}

/** Ends of a band of 90 of 100 lie so many spreads from the middle. */
export const bandSpreads = 1.645;
/** A charge is followed in steps of at most this: what is stored changes with the charge. [h] */
const chargeStep_h = 0.5;
/** Misstatements told apart; past these, sources share one, that least ampere-hours hang on. */
const sourcesApart = 16;

/**
 * Cuts a history.
 *
 * @param readings  of the history, in order of time, those that are counted
 */
export function cutHistory(history: BatteryHistory, readings: readonly VoltReading[]): CutHistory {
  const { from, to } = history;
  const flows = history.flows.filter((flow) => flow.to > from && flow.from < to && flow.to > flow.from);
  const marks = new Set<number>([from, to]);
  for (const flow of flows) {
    marks.add(Math.max(from, flow.from));
    marks.add(Math.min(to, flow.to));
    if (flow.low_A < 0)
      for (let ms = flow.from + chargeStep_h * hour; ms < flow.to; ms += chargeStep_h * hour)
        if (ms > from && ms < to) marks.add(ms);
  }
  for (const { at } of readings) if (at > from && at < to) marks.add(at);
  const edges = Float64Array.from([...marks].sort((a, b) => a - b));
  const steps = edges.length - 1;
  const byStart = flows.map((_, i) => i).sort((a, b) => flows[a]!.from - flows[b]!.from);
  const firstFlow = new Int32Array(steps + 1);
  const index: number[] = [];
  const hours = new Float64Array(steps);
  const battery_C = new Float64Array(steps);
  let open: number[] = [];
  let next = 0;
  for (let i = 0; i < steps; i++) {
    const start = edges[i]!;
    while (next < byStart.length && flows[byStart[next]!]!.from <= start) open.push(byStart[next++]!);
    open = open.filter((each) => flows[each]!.to > start);
    firstFlow[i] = index.length;
    index.push(...open);
    hours[i] = (edges[i + 1]! - start) / hour;
    battery_C[i] = heatAt(history.temperatures, (start + edges[i + 1]!) / 2);
  }
  firstFlow[steps] = index.length;
  const firstReading = new Int32Array(steps + 2);
  let r = 0;
  while (r < readings.length && readings[r]!.at <= from) r++;
  firstReading[0] = 0;
  firstReading[1] = r;
  for (let i = 0; i < steps; i++) {
    while (r < readings.length && (readings[r]!.at <= edges[i + 1]! || i === steps - 1)) r++;
    firstReading[i + 2] = r;
  }
  const meters = [...new Set(readings.map(({ meter }) => meter))];
  const scale = 12 / history.battery.nominal_V;
  return {
    readings,
    ends: edges.slice(1),
    timeline: {
      steps,
      hours,
      battery_C,
      firstFlow,
      flowIndex: Int32Array.from(index),
      firstReading,
      readings: readings.length,
      volts: Float64Array.from(readings, ({ volts }) => volts * scale),
      measured_A: Float64Array.from(readings, ({ current_A }) => current_A ?? Number.NaN),
      meter: Int32Array.from(readings, ({ meter }) => meters.indexOf(meter)),
      meters: meters.length,
    },
    flows: cutFlows(flows),
  };
}

function cutFlows(flows: readonly Flow[]): TimelineFlows {
  const count = flows.length;
  const likely_A = new Float64Array(count);
  const over = new Float64Array(count);
  const under = new Float64Array(count);
  const unsure_Ah = new Map<string, number>();
  const nameOf = (flow: Flow, i: number) => flow.source ?? `flow ${i}`;
  for (const [i, flow] of flows.entries()) {
    const [least, middle, most] = [flow.low_A, flow.likely_A, flow.high_A].map(Math.abs).sort((a, b) => a - b) as [
      number,
      number,
      number,
    ];
    likely_A[i] = Math.sign(flow.likely_A) * middle;
    over[i] = middle > 0 ? Math.log(Math.max(1, most / middle)) / bandSpreads : 0;
    under[i] = middle > 0 ? Math.log(Math.max(1, middle / Math.max(0.02 * middle, least))) / bandSpreads : 0;
    const name = nameOf(flow, i);
    unsure_Ah.set(name, (unsure_Ah.get(name) ?? 0) + middle * (over[i]! + under[i]!) * ((flow.to - flow.from) / hour));
  }
  const ranked = [...unsure_Ah].sort((a, b) => b[1] - a[1]).map(([name]) => name);
  const place = new Map(ranked.map((name, i) => [name, Math.min(i, sourcesApart - 1)]));
  return {
    likely_A,
    over,
    under,
    source: Int32Array.from(flows, (flow, i) => place.get(nameOf(flow, i))!),
    sources: Math.min(ranked.length, sourcesApart),
  };
}

/** Mean of the air over some hours before: a battery in a locker lags and smooths it. 20 °C where nothing is said. */
function heatAt(temperatures: BatteryHistory['temperatures'], ms: number): number {
  if (temperatures.length === 0) return assumedBattery_C;
  let sum = 0;
  let count = 0;
  for (let back = 1; back <= 7; back += 2) {
    sum += airAt(temperatures, ms - back * hour);
    count++;
  }
  return Math.min(50, Math.max(-20, sum / count));
}
export const assumedBattery_C = 20;

function airAt(temperatures: BatteryHistory['temperatures'], ms: number): number {
  let low = 0;
  let high = temperatures.length - 1;
  if (ms <= temperatures[0]!.at) return temperatures[0]!.air_C;
  if (ms >= temperatures[high]!.at) return temperatures[high]!.air_C;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (temperatures[middle]!.at <= ms) low = middle;
    else high = middle;
  }
  const a = temperatures[low]!;
  const b = temperatures[high]!;
  return a.air_C + ((ms - a.at) / (b.at - a.at)) * (b.air_C - a.air_C);
}
