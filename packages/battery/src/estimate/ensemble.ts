import type { BatteryHistory } from '../battery-history.ts';
import { flow, type RestLine, restLine, type State, terminalVolts } from './circuit-model.ts';
import type { Dice } from './dice.ts';
import { type Draws, emptyDraws, fillDraw, meterSpread_V, type Prior, unknowns } from './priors.ts';
import type { Stretches } from './stretches.ts';

/** Degrees of freedom of Student's distribution, which a reading's own error is taken to follow: far-off ones count little. */
const freedom = 4;
/**
 * Readings of one battery share what the model has wrong of it, so many of them tell no more than this many would that knew
 * nothing of each other: the error of each is widened so. Assumed.
 */
const apartAtMost = 12;
/** Weights of the steps in which readings are taken in; their inverses sum to 1 (A. Emerick and A. Reynolds 2013). */
const steps = [9.333, 7, 4, 2];
/** Moves of each member after that, each towards the difference of two others (C. ter Braak 2006). */
const moves = 10;

/** Currents are stated for the 12 V battery that the model follows; volts are turned into its volts at the door. */
export interface Fitting {
  readonly history: BatteryHistory;
  readonly stretches: Stretches;
  readonly prior: Prior;
  readonly lead: boolean;
  /** by flow: which unknown says how far it is misstated */
  readonly misstated: Int32Array;
  /** by reading: which unknown says how far its meter is off */
  readonly meter: Int32Array;
  readonly dimensions: number;
}

export function fittingOf(history: BatteryHistory, stretches: Stretches, prior: Prior): Fitting {
  const names = new Map<string, number>();
  const dimension = (name: string) => {
    const known = names.get(name);
    if (known !== undefined) return known;
    names.set(name, unknowns.length + names.size);
    return unknowns.length + names.size - 1;
  };
  return {
    history,
    stretches,
    prior,
    lead: prior.chemistry !== 'lifepo4',
    misstated: Int32Array.from(history.flows, ({ source }, index) =>
      dimension(source === null ? `flow ${index}` : `source ${source}`),
    ),
    meter: Int32Array.from(history.readings, ({ meter }) => dimension(`meter ${meter}`)),
    dimensions: unknowns.length + names.size,
  };
}

/** Batteries that may be this one, and what each would have shown. Rows are members. */
export class Ensemble {
  readonly fitting: Fitting;
  readonly size: number;
  readonly draws: Draws;
  /** standard normal unknowns, `size` rows of `dimensions` */
  readonly zs: Float64Array;
  /** volts each would have shown, `size` rows of readings, and the spread of a reading's own error */
  readonly shown: Float64Array;
  readonly error: Float64Array;
  readonly end: { readonly hand: Float64Array; readonly rest: Float64Array; readonly surface_V: Float64Array };
  private readonly fit: Float64Array;
  private readonly widened: number;
  private readonly line: RestLine;
  private readonly state: State = { hand: 0, rest: 0, surface_V: 0 };
  private readonly dice: Dice;

  constructor(fitting: Fitting, size: number, dice: Dice) {
    this.fitting = fitting;
    this.size = size;
    this.dice = dice;
    this.line = restLine(fitting.prior.chemistry);
    this.draws = emptyDraws(size);
    this.zs = new Float64Array(size * fitting.dimensions);
    for (let i = 0; i < this.zs.length; i++) this.zs[i] = dice.normal();
    const readings = fitting.history.readings.length;
    this.widened = Math.sqrt(Math.max(1, readings / apartAtMost));
    this.shown = new Float64Array(size * readings);
    this.error = new Float64Array(size * readings);
    this.end = { hand: new Float64Array(size), rest: new Float64Array(size), surface_V: new Float64Array(size) };
    this.fit = new Float64Array(size);
  }

  /** Fits the members to the readings: first all together in small steps, then each by moves that keep the odds right. */
  settle(): void {
    const { size } = this;
    const { readings } = this.fitting.history;
    for (let n = 0; n < size; n++) this.show(n);
    if (readings.length === 0) return;
    for (const weight of steps) {
      this.step(weight);
      for (let n = 0; n < size; n++) this.show(n);
    }
    for (let n = 0; n < size; n++) this.fit[n] = this.odds(n);
    for (let move = 0; move < moves; move++)
      this.move(move % 5 === 4 ? 1 : 2.38 / Math.sqrt(2 * this.fitting.dimensions));
  }

  /** What member `n` is and would have shown; `each`, where it is given, hears of the state at the end of every stretch. */
  show(n: number, each: ((stretch: number, state: State) => void) | null = null): void {
    const { fitting, draws, zs, state, line, shown, error, end } = this;
    const { stretches, history, lead, misstated, dimensions, meter } = fitting;
    const { readings, flows } = history;
    const at = n * dimensions;
    fillDraw(draws, n, zs, at, fitting.prior);
    state.hand = draws.first[n]!;
    state.rest = draws.first[n]!;
    state.surface_V = draws.surfaceFirst_V[n]!;
    for (let s = 0; s < stretches.count; s++) {
      let amps = 0;
      for (let k = stretches.firstFlow[s]!; k < stretches.firstFlow[s + 1]!; k++) {
        const { low_A, likely_A, high_A } = flows[stretches.flow[k]!]!;
        const z = zs[at + misstated[stretches.flow[k]!]!]! / 1.645;
        amps += likely_A + (z > 0 ? z * (high_A - likely_A) : z * (likely_A - low_A));
      }
      const heat = stretches.battery_C[s]!;
      flow(draws, n, state, amps, stretches.hours[s]!, heat, lead);
      const read = stretches.reading[s]!;
      if (read >= 0) {
        const now = readings[read]!.current_A ?? amps;
        const volts = terminalVolts(line, draws, n, state, now, heat, lead);
        const index = n * readings.length + read;
        shown[index] = volts + meterSpread_V * zs[at + meter[read]!]!;
        error[index] = this.widened * this.errorOf(n, now, state);
      }
      each?.(s, state);
    }
    end.hand[n] = state.hand;
    end.rest[n] = state.rest;
    end.surface_V[n] = state.surface_V;
  }

  /** How far a reading lies off even the right battery, as one standard deviation. [V] Assumed. */
  private errorOf(n: number, amps: number, state: State): number {
    const drop = Math.abs(amps) * this.draws.ohms[n]!;
    if (amps < -1e-4 * this.draws.capacity_Ah[n]!)
      return 0.06 + 0.3 * drop + 0.2 * state.hand ** 8 + 0.3 * state.surface_V;
    return 0.02 + 0.2 * drop + 0.25 * state.surface_V;
  }

  /** How well a member fits: logarithm of the odds of its unknowns and of the readings. */
  private odds(n: number): number {
    const { fitting, zs, shown, error } = this;
    const { dimensions } = fitting;
    const { readings } = fitting.history;
    let sum = 0;
    for (let d = 0; d < dimensions; d++) sum -= zs[n * dimensions + d]! ** 2 / 2;
    for (let r = 0; r < readings.length; r++) {
      const index = n * readings.length + r;
      const own = error[index]!;
      const off = (readings[r]!.volts - shown[index]!) / own;
      sum -= ((freedom + 1) / 2) * Math.log(1 + (off * off) / freedom) + Math.log(own);
    }
    return sum;
  }

  /** One step of all members towards the readings, `weight` times as uncertain as they are (ensemble smoother). */
  private step(weight: number): void {
    const { size, zs, shown, error, dice, fitting } = this;
    const { dimensions } = fitting;
    const { readings } = fitting.history;
    const m = readings.length;
    const mean = new Float64Array(m);
    const meanError = new Float64Array(m);
    for (let n = 0; n < size; n++)
      for (let r = 0; r < m; r++) {
        mean[r]! += shown[n * m + r]! / size;
        meanError[r]! += error[n * m + r]! / size;
      }
    const cross = new Float64Array(dimensions * m);
    const among = new Float64Array(m * m);
    const zMean = new Float64Array(dimensions);
    for (let n = 0; n < size; n++) for (let d = 0; d < dimensions; d++) zMean[d]! += zs[n * dimensions + d]! / size;
    for (let n = 0; n < size; n++)
      for (let r = 0; r < m; r++) {
        const off = shown[n * m + r]! - mean[r]!;
        for (let d = 0; d < dimensions; d++)
          cross[d * m + r]! += (off * (zs[n * dimensions + d]! - zMean[d]!)) / (size - 1);
        for (let q = 0; q <= r; q++) among[r * m + q]! += (off * (shown[n * m + q]! - mean[q]!)) / (size - 1);
      }
    const own = new Float64Array(m);
    for (let r = 0; r < m; r++) {
      const spread = among[r * m + r]!;
      const variance = meanError[r]! ** 2;
      // a reading far from all members counts for less, as its distribution has it
      const off2 = (readings[r]!.volts - mean[r]!) ** 2 / (spread + variance);
      own[r] = variance * Math.max(1, (freedom + off2) / (freedom + 1));
      among[r * m + r]! += weight * own[r]!;
    }
    choleskyInPlace(among, m);
    const wish = new Float64Array(m);
    for (let n = 0; n < size; n++) {
      for (let r = 0; r < m; r++)
        wish[r] = readings[r]!.volts + Math.sqrt(weight * own[r]!) * dice.normal() - shown[n * m + r]!;
      solveInPlace(among, wish, m);
      for (let d = 0; d < dimensions; d++) {
        let gain = 0;
        for (let r = 0; r < m; r++) gain += cross[d * m + r]! * wish[r]!;
        zs[n * dimensions + d]! += gain;
      }
    }
  }

  /** Each member tries a move along the difference of two others, and takes it as the odds say (differential evolution). */
  private move(length: number): void {
    const { size, zs, dice, fit, fitting } = this;
    const { dimensions } = fitting;
    const before = new Float64Array(dimensions);
    for (let n = 0; n < size; n++) {
      let a = dice.below(size - 1);
      if (a >= n) a++;
      let b = dice.below(size - 1);
      if (b >= n) b++;
      for (let d = 0; d < dimensions; d++) {
        before[d] = zs[n * dimensions + d]!;
        zs[n * dimensions + d]! += length * (zs[a * dimensions + d]! - zs[b * dimensions + d]!) + 0.02 * dice.normal();
      }
      const was = fit[n]!;
      this.show(n);
      const now = this.odds(n);
      if (Math.log(dice.share()) < now - was) fit[n] = now;
      else {
        zs.set(before, n * dimensions);
        this.show(n);
      }
    }
  }
}

/** Lower triangle of the square root of a positive matrix, in place of it. */
function choleskyInPlace(a: Float64Array, m: number): void {
  for (let r = 0; r < m; r++)
    for (let q = 0; q <= r; q++) {
      let sum = a[r * m + q]!;
      for (let k = 0; k < q; k++) sum -= a[r * m + k]! * a[q * m + k]!;
      a[r * m + q] = r === q ? Math.sqrt(Math.max(1e-12, sum)) : sum / a[q * m + q]!;
    }
}

function solveInPlace(root: Float64Array, x: Float64Array, m: number): void {
  for (let r = 0; r < m; r++) {
    let sum = x[r]!;
    for (let k = 0; k < r; k++) sum -= root[r * m + k]! * x[k]!;
    x[r] = sum / root[r * m + r]!;
  }
  for (let r = m - 1; r >= 0; r--) {
    let sum = x[r]!;
    for (let k = r + 1; k < m; k++) sum -= root[k * m + r]! * x[k]!;
    x[r] = sum / root[r * m + r]!;
  }
}
