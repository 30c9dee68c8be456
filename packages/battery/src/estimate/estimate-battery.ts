/** How full a battery is, what is left in it and what it is worth, from any readings and what flowed between them. */
import type { BatteryHistory, VoltReading } from '../battery-history.ts';
import type { Band } from '../rest-charge.ts';
import type { Batteries } from './batteries.ts';
import { cutOff_V, fillAtCutOff, heatAt, stillToCome_Ah } from './circuit-model.ts';
import { Dice } from './dice.ts';
import { Ensemble } from './ensemble.ts';
import { fittingOf } from './fitting.ts';
import { oddReadings, whyImpossible } from './odd-readings.ts';
import { type Draws, priorOf } from './priors.ts';
import { stretchesOf } from './stretches.ts';

/** Members of the ensemble. */
const members = 200;

/** What is believed of a battery at the end of its history. Bands hold 90 of 100. */
export interface BatteryEstimate {
  /** of what it gives from full at its 20-hour current, 25 °C */
  readonly soc_pct: Band;
  /** still to come down to the cut-off at the load asked about, 25 °C */
  readonly left_Ah: Band;
  /** from full at the 20-hour current, 25 °C */
  readonly capacity_Ah: Band;
  /** shown after some minutes under a small load, 25 °C */
  readonly resistance_mohm: Band;
  /** the cut-off that `left_Ah` and `capacity_Ah` are down to. [V] */
  readonly cutOff_V: number;
  /** what is believed, draw by draw */
  readonly draws: BatteryDraws;
  /** the same draws as the model has them, at the end of the history */
  readonly members: BatteryMembers;
  /** charge over the time of the history */
  readonly series: EstimateSeries;
  readonly odd: readonly OddReading[];
}

/** One place each draw. */
export interface BatteryDraws {
  readonly count: number;
  /** share of the capacity, 0–1 */
  readonly charge: Float64Array;
  readonly capacity_Ah: Float64Array;
  readonly loaded_mohm: Float64Array;
  readonly left_Ah: Float64Array;
}

/** The draws of the estimate's own model: for `nextReadings`. Volts and ohms are those of a 12 V battery. */
export interface BatteryMembers {
  readonly draws: Draws;
  /** how full the well at hand and the other are, 0–1 */
  readonly hand: Float64Array;
  readonly rest: Float64Array;
  /** how far the meter of the last reading shows too much. [V] */
  readonly meter_V: Float64Array;
}

/** Charge at the ends of the stretches of the history. [ms, %] */
export interface EstimateSeries {
  readonly at: Float64Array;
  readonly low: Float64Array;
  readonly likely: Float64Array;
  readonly high: Float64Array;
}

/** A reading that cannot be right, or does not go with the others. */
export interface OddReading {
  readonly reading: VoltReading;
  readonly because: string;
  /** no battery of the kind shows it, whatever else was read */
  readonly impossible: boolean;
}

export interface EstimateAsked {
  /** the same seed gives the same estimate */
  readonly seed: number;
  /** the load that `left_Ah` is for; the 20-hour current where none is given. [A] */
  readonly load_A?: number;
}

/**
 * The estimate, by an ensemble of batteries that may be this one: drawn from what is thought of its kind, size and age, moved
 * together towards the readings in four steps (ensemble smoother with multiple data assimilation), then each by itself by
 * moves that leave the odds right (differential evolution Markov chain).
 *
 * @param history      readings, and what is known of the currents between them. What nobody wrote down (something left on, a
 *                     panel that brings less, a charge) is among the unknowns: `assumedOfBatteries` says how often it is thought
 *                     to come
 * @throws RangeError  for a history that is not in order, saying where
 *
 * Of more than 60 readings the newest 20 and 40 of the others are taken. One that no battery of the kind can show is left out.
 *
 * Not covered: a battery of several that differ, a dead cell, a warm engine room beside cool air.
 * Sources: A. Emerick and A. Reynolds, Computers & Geosciences 55 (2013) 3–15; C. ter Braak, Statistics and Computing 16
 * (2006) 239–249, both from memory. Held against measured runs and another, richer battery in checks/battery.
 */
export function estimateBattery(history: BatteryHistory, { seed, load_A }: EstimateAsked): BatteryEstimate {
  const { chemistry, nominal_Ah, nominal_V } = history.battery;
  const scale = nominal_V / 12;
  const impossible = history.readings.flatMap((reading): OddReading[] => {
    const because = whyImpossible(chemistry, reading.volts / scale);
    return because === null ? [] : [{ reading, because, impossible: true }];
  });
  const fitted = thinned(history.readings.filter((reading) => !impossible.some((odd) => odd.reading === reading)));
  const readings = fitted.map((reading) => ({ ...reading, volts: reading.volts / scale }));
  const as12V = { ...history, readings };
  const stretches = stretchesOf(as12V);
  const ensemble = new Ensemble(fittingOf(as12V, stretches, priorOf(history.battery)), members, new Dice(seed));
  ensemble.settle();
  const { draws, size, courses } = ensemble.members;
  const hand = atEnd(courses.hand, size);
  const rest = atEnd(courses.rest, size);
  const heat = heatAt(chemistry, 25);
  const charge = new Float64Array(size);
  const left = new Float64Array(size);
  const capacity = new Float64Array(size);
  const twenty_A = nominal_Ah / 20;
  for (let n = 0; n < size; n++) {
    const dry = fillAtCutOff(heat, draws, n, twenty_A, cutOff_V(chemistry));
    capacity[n] = stillToCome_Ah(heat, draws, n, 1, 1, twenty_A, dry);
    const slowly = stillToCome_Ah(heat, draws, n, hand[n]!, rest[n]!, twenty_A, dry);
    const share = slowly / capacity[n]!;
    // the volts of a full battery do not tell the last half percent
    charge[n] = share > 0.995 ? 1 : share;
    if (load_A === undefined) left[n] = slowly;
    else {
      const loadedDry = fillAtCutOff(heat, draws, n, load_A, cutOff_V(chemistry));
      left[n] = stillToCome_Ah(heat, draws, n, hand[n]!, rest[n]!, load_A, loadedDry);
    }
  }
  const loaded_mohm = draws.ohms.map((ohms) => 1000 * ohms * scale);
  return {
    soc_pct: bandOf(charge.map((share) => 100 * share)),
    left_Ah: bandOf(left),
    capacity_Ah: bandOf(capacity),
    resistance_mohm: bandOf(loaded_mohm),
    cutOff_V: cutOff_V(chemistry) * scale,
    members: { draws, hand, rest, meter_V: ensemble.meterOff_V() },
    draws: { count: size, charge, capacity_Ah: capacity, loaded_mohm, left_Ah: left },
    series: seriesOf(ensemble.members, stretches.end),
    odd: [
      ...impossible,
      ...oddReadings(ensemble).map(({ reading, because }) => ({
        reading: fitted[reading]!,
        because,
        impossible: false,
      })),
    ],
  };
}

/** The newest readings, and of those before as many again and more, evenly over them: more would say no more. */
const newest = 20;
const before = 40;

function thinned(readings: readonly VoltReading[]): VoltReading[] {
  const inTime = [...readings].sort((a, b) => a.at - b.at);
  const older = inTime.slice(0, -newest);
  if (older.length <= before) return inTime;
  const some = Array.from({ length: before }, (_, i) => older[Math.floor(((i + 0.5) * older.length) / before)]!);
  return [...some, ...inTime.slice(-newest)];
}

/** The last of each row. */
function atEnd(rows: Float64Array, size: number): Float64Array {
  const width = rows.length / size;
  return Float64Array.from({ length: size }, (_, n) => rows[(n + 1) * width - 1]!);
}

function seriesOf({ size, draws, courses: { hand, rest } }: Batteries, at: Float64Array): EstimateSeries {
  const all = new Float64Array(at.length * size);
  for (let n = 0; n < size; n++) {
    const atHand = draws.atHand[n]!;
    const stranded = draws.stranded[n]!;
    for (let stretch = 0; stretch < at.length; stretch++) {
      const index = n * at.length + stretch;
      const whole = atHand * hand[index]! + (1 - atHand) * rest[index]!;
      all[stretch * size + n] = 100 * Math.max(0, Math.min(1, (whole - stranded) / (1 - stranded)));
    }
  }
  const [low, likely, high] = [new Float64Array(at.length), new Float64Array(at.length), new Float64Array(at.length)];
  for (let s = 0; s < at.length; s++) {
    const band = bandOf(all.subarray(s * size, (s + 1) * size));
    low[s] = band.low;
    likely[s] = band.likely;
    high[s] = band.high;
  }
  return { at, low, likely, high };
}

/** Nine in ten of the values, and the middle. */
export function bandOf(values: Float64Array): Band {
  const sorted = Float64Array.from(values).sort();
  const at = (share: number) => {
    const x = share * (sorted.length - 1);
    const i = Math.min(sorted.length - 2, Math.floor(x));
    return sorted[i]! + (x - i) * (sorted[i + 1]! - sorted[i]!);
  };
  return { low: at(0.05), likely: at(0.5), high: at(0.95) };
}
