/** How full a battery is, what is left in it and what it is worth, from any readings and what flowed between them. */
import type { BatteryHistory, VoltReading } from './battery-history.ts';
import { type BatteryPrior, batteryPrior, writeFigures } from './battery-prior.ts';
import type { Chemistry } from './chemistry.ts';
import { at, figureCount, type RunRoom, runThrough } from './circuit-model.ts';
import { selfDischarge_pct_month } from './keeping.ts';
import type { Band } from './rest-charge.ts';
import { dice, type TemperingSize, temperedDraws } from './tempered-draws.ts';
import { type CutHistory, cutHistory } from './timeline.ts';

/** A reading that cannot be right, or does not go with the others. */
export interface OddReading {
  readonly reading: VoltReading;
  readonly because: string;
}

/** What is believed of a battery at the end of its history. Bands hold 90 of 100. */
export interface BatteryEstimate {
  /** of what it gives from full at its 20-hour current, 25 °C */
  readonly soc_pct: Band;
  /** still to come down to the cut-off at the load asked about, 25 °C */
  readonly left_Ah: Band;
  /** from full at the 20-hour current, 25 °C */
  readonly capacity_Ah: Band;
  /** shown after an hour under a small load, 25 °C */
  readonly resistance_mohm: Band;
  /** the cut-off that `left_Ah` and `capacity_Ah` are down to. [V] */
  readonly cutOff_V: number;
  /** draws of what is believed, one place each draw */
  readonly draws: BatteryDraws;
  /** charge over the time of the history */
  readonly series: EstimateSeries;
  readonly odd: readonly OddReading[];
}

export interface BatteryDraws {
  readonly count: number;
  /** share of the capacity, 0–1 */
  readonly charge: Float64Array;
  readonly capacity_Ah: Float64Array;
  readonly loaded_mohm: Float64Array;
  readonly left_Ah: Float64Array;
}

/** Charge at the ends of steps of the history. [ms, %] */
export interface EstimateSeries {
  readonly at: Float64Array;
  readonly low: Float64Array;
  readonly likely: Float64Array;
  readonly high: Float64Array;
}

export interface EstimateAsked {
  /** the same seed gives the same estimate */
  readonly seed: number;
  /** the load that `left_Ah` is for; the 20-hour current where none is given. [A] */
  readonly load_A?: number;
  readonly tempering?: TemperingSize;
}

/** Volts at which a 12 V battery is taken as empty under its 20-hour current. Lead 1.8 V a cell, LiFePO4 2.5 V. */
const cutOffOf12V = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 10 : 10.8);

const usual: TemperingSize = { count: 240, movesEach: 2, movesAtEnd: 8 };

/**
 * Estimates a battery from its history.
 *
 * Thousands of batteries that could be meant, drawn from what tables and literature say of this kind, size and age, are run
 * through the history; those that would have read what was read are kept. Lamps and sun are misstated by one share each, the
 * meter is off by the same volts throughout, the circuit itself is not exact: all of that is in the bands.
 *
 * @throws RangeError when the history ends before it begins, a reading lies outside it or a figure is no number
 */
export function estimateBattery(history: BatteryHistory, asked: EstimateAsked): BatteryEstimate {
  requireHistory(history);
  const odd: OddReading[] = [];
  const scale = 12 / history.battery.nominal_V;
  const [least, most] = history.battery.chemistry === 'lifepo4' ? [7, 15.2] : [6, 16.5];
  let counted = [...history.readings]
    .sort((a, b) => a.at - b.at)
    .filter((reading) => {
      const can = reading.volts * scale >= least && reading.volts * scale <= most;
      if (!can)
        odd.push({
          reading,
          because: `no ${history.battery.nominal_V} V battery of this kind reads ${reading.volts} V`,
        });
      return can;
    });
  for (let round = 0; ; round++) {
    const found = fitted(history, counted, asked);
    const worst = round < 4 && counted.length >= 3 ? worstReading(found) : null;
    if (worst === null) return { ...summary(history, found, asked), odd };
    odd.push({ reading: counted[worst.place]!, because: worst.because });
    counted = counted.filter((_, i) => i !== worst.place);
  }
}

interface Fitted {
  readonly chemistry: Chemistry;
  readonly cut: CutHistory;
  readonly prior: BatteryPrior;
  readonly size: number;
  readonly count: number;
  readonly z: Float64Array;
  readonly selfLoss_h: number;
}

/** Assumed: a keeper's meter is off by so much, the battery's own rested volts another so much more than the tables say. [V] */
const assumedMeterSpread_V = 0.03;
const assumedOwnSpread_V = 0.05;

function room(cut: CutHistory, track: boolean): RunRoom {
  return {
    flow_A: new Float64Array(cut.flows.likely_A.length),
    predicted_V: new Float64Array(cut.timeline.readings),
    spread_V: new Float64Array(cut.timeline.readings),
    end: new Float64Array(5),
    track: track ? new Float64Array(cut.timeline.steps) : null,
  };
}

/** Amps of each flow as misstated by the normal numbers from `from` on. */
function writeFlows({ flows }: CutHistory, z: Float64Array, from: number, flow_A: Float64Array): void {
  for (let j = 0; j < flow_A.length; j++) {
    const value = z[from + flows.source[j]!]!;
    flow_A[j] = flows.likely_A[j]! * Math.exp(value * (value > 0 ? flows.over[j]! : flows.under[j]!));
  }
}

function fitted(history: BatteryHistory, readings: readonly VoltReading[], asked: EstimateAsked): Fitted {
  const { battery } = history;
  const cut = cutHistory(history, readings);
  const prior = batteryPrior(battery);
  const size = figureCount + cut.flows.sources;
  const selfLoss_h = selfDischarge_pct_month[battery.chemistry].likely / 100 / (30 * 24);
  const figures = new Float64Array(figureCount);
  const own = room(cut, false);
  const sums = new Float64Array(3 * Math.max(1, cut.timeline.meters));
  const point = new Float64Array(size);
  const logLikelihood = (z: Float64Array, from: number): number => {
    for (let i = 0; i < size; i++) point[i] = z[from + i]!;
    writeFigures(prior, point, figures);
    writeFlows(cut, point, figureCount, own.flow_A);
    runThrough(battery.chemistry, figures, cut.timeline, own, selfLoss_h);
    return readingsLikelihood(cut, own, sums) + beyondEmpty(own.end[0]!);
  };
  const { count, movesEach, movesAtEnd } = asked.tempering ?? usual;
  const { z } = temperedDraws(size, logLikelihood, dice(asked.seed), { count, movesEach, movesAtEnd });
  return { chemistry: battery.chemistry, cut, prior, size, count, z, selfLoss_h };
}

/** A battery cannot have given more than it has. */
const beyondEmpty = (charge: number) => (charge >= 0 ? 0 : -((charge / 0.01) ** 2));

/** Likelihood of the readings, the meter's offset taken out by its spread: readings by one meter are off together. */
function readingsLikelihood(cut: CutHistory, run: RunRoom, sums: Float64Array): number {
  const { timeline } = cut;
  let log = 0;
  sums.fill(0);
  for (let r = 0; r < timeline.readings; r++) {
    const off = timeline.volts[r]! - run.predicted_V[r]!;
    const precision = 1 / run.spread_V[r]! ** 2;
    const m = 3 * timeline.meter[r]!;
    sums[m]! += precision;
    sums[m + 1]! += precision * off;
    sums[m + 2]! += precision * off * off;
    log += 0.5 * Math.log(precision);
  }
  const common = assumedMeterSpread_V ** 2 + assumedOwnSpread_V ** 2;
  for (let m = 0; m < sums.length; m += 3) {
    const total = sums[m]! + 1 / common;
    log -= 0.5 * (sums[m + 2]! - sums[m + 1]! ** 2 / total + Math.log(total * common));
  }
  return log;
}

/** The reading that least goes with the others, when none of the draws comes near it. */
function worstReading(fitted: Fitted): { readonly place: number; readonly because: string } | null {
  const { cut, count } = fitted;
  const n = cut.timeline.readings;
  const off = new Float64Array(n);
  const nearest = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  eachDraw(fitted, false, (run) => {
    // what is left when the meter's offset is taken as the middle of the offs
    const offs = Array.from({ length: n }, (_, r) => cut.timeline.volts[r]! - run.predicted_V[r]!);
    const middle = [...offs].sort((a, b) => a - b)[n >> 1]!;
    for (let r = 0; r < n; r++) {
      const each = (offs[r]! - middle) / run.spread_V[r]!;
      off[r]! += (offs[r]! - middle) / count;
      nearest[r] = Math.min(nearest[r]!, Math.abs(each));
    }
  });
  let place = -1;
  for (let r = 0; r < n; r++) if (nearest[r]! > 4 && (place < 0 || nearest[r]! > nearest[place]!)) place = r;
  if (place < 0) return null;
  const by = off[place]!;
  return {
    place,
    because: `${Math.abs(by).toFixed(2)} V ${by > 0 ? 'higher' : 'lower'} than anything that goes with the other readings and what flowed`,
  };
}

/** Runs every draw once more. */
function eachDraw(
  { chemistry, cut, prior, size, count, z, selfLoss_h }: Fitted,
  track: boolean,
  each: (run: RunRoom, figures: Float64Array, draw: number) => void,
): void {
  const figures = new Float64Array(figureCount);
  const own = room(cut, track);
  for (let n = 0; n < count; n++) {
    const point = z.subarray(n * size, (n + 1) * size);
    writeFigures(prior, point, figures);
    writeFlows(cut, point, figureCount, own.flow_A);
    runThrough(chemistry, figures, cut.timeline, own, selfLoss_h);
    each(own, figures, n);
  }
}

/** Points in time that a series is kept to. */
const seriesPoints = 400;

function summary(history: BatteryHistory, fitted: Fitted, asked: EstimateAsked): Omit<BatteryEstimate, 'odd'> {
  const { count, cut } = fitted;
  const { chemistry, nominal_V } = history.battery;
  const draws: BatteryDraws = {
    count,
    charge: new Float64Array(count),
    capacity_Ah: new Float64Array(count),
    loaded_mohm: new Float64Array(count),
    left_Ah: new Float64Array(count),
  };
  const { steps } = cut.timeline;
  const every = Math.max(1, Math.ceil(steps / seriesPoints));
  const shown = Array.from({ length: Math.ceil(steps / every) }, (_, i) => Math.min(steps - 1, (i + 1) * every - 1));
  const tracks = new Float64Array(shown.length * count);
  eachDraw(fitted, true, (run, figures, n) => {
    const charge = Math.min(1, Math.max(0, run.end[0]!));
    const capacity = figures[at.capacity_Ah]!;
    draws.charge[n] = charge;
    draws.capacity_Ah[n] = capacity;
    draws.loaded_mohm[n] =
      (1000 * (figures[at.ohms]! + figures[at.fast_ohms]! + figures[at.slow_ohms]!) * nominal_V) / 12;
    draws.left_Ah[n] = leftAt_Ah(charge, capacity, asked.load_A ?? capacity / 20, figures[at.exponentOver1]!);
    for (const [i, step] of shown.entries()) tracks[i * count + n] = 100 * Math.min(1, Math.max(0, run.track![step]!));
  });
  const series = {
    at: Float64Array.from(shown, (step) => cut.ends[step]!),
    low: new Float64Array(shown.length),
    likely: new Float64Array(shown.length),
    high: new Float64Array(shown.length),
  };
  for (let i = 0; i < shown.length; i++) {
    const { low, likely, high } = bandOf(tracks.subarray(i * count, (i + 1) * count));
    series.low[i] = low;
    series.likely[i] = likely;
    series.high[i] = high;
  }
  return {
    soc_pct: bandOf(draws.charge.map((share) => 100 * share)),
    left_Ah: bandOf(draws.left_Ah),
    capacity_Ah: bandOf(draws.capacity_Ah),
    resistance_mohm: bandOf(draws.loaded_mohm),
    cutOff_V: (cutOffOf12V(chemistry) * nominal_V) / 12,
    draws,
    series,
  };
}

/**
 * What is left at a load. Slower than in 20 hours no more is counted; faster, the end is cut off sooner, by Peukert's law in
 * its rated-hour form.
 */
function leftAt_Ah(charge: number, capacity_Ah: number, load_A: number, exponentOver1: number): number {
  const times = Math.max(1, load_A / (capacity_Ah / 20));
  return Math.max(0, charge * capacity_Ah - capacity_Ah * (1 - times ** -exponentOver1));
}

/** Middle and ends of 90 of 100 of the draws. */
function bandOf(draws: Float64Array): Band {
  const sorted = Float64Array.from(draws).sort();
  const share = (part: number) => {
    const place = part * (sorted.length - 1);
    const below = Math.floor(place);
    const value = sorted[below]!;
    return value + (place - below) * ((sorted[below + 1] ?? value) - value);
  };
  return { low: share(0.05), likely: share(0.5), high: share(0.95) };
}

function requireHistory({ battery, from, to, readings, flows }: BatteryHistory): void {
  if (!(battery.nominal_Ah > 0)) throw new RangeError(`the size must be over 0 Ah, got ${battery.nominal_Ah}`);
  if (!(to >= from)) throw new RangeError(`a history ends after it begins, got ${from} to ${to}`);
  for (const { at, volts } of readings) {
    if (!(at >= from && at <= to))
      throw new RangeError(`a reading at ${at} lies outside the history, ${from} to ${to}`);
    if (!Number.isFinite(volts)) throw new RangeError(`a reading of ${volts} V is no number`);
  }
  for (const { from: start, to: end, low_A, likely_A, high_A } of flows)
    if (!(low_A <= likely_A && likely_A <= high_A && end >= start))
      throw new RangeError(`a flow rises from low over likely to high, got ${low_A}, ${likely_A}, ${high_A} A`);
}
