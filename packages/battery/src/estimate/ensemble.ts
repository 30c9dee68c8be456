import type { BatteryHistory } from '../battery-history.ts';
import {
  type Course,
  follow,
  type Paces,
  pacesOf,
  type RestLine,
  restLine,
  type State,
  terminalVolts,
} from './circuit-model.ts';
import type { Dice } from './dice.ts';
import {
  begunBy,
  type Draws,
  emptyDraws,
  fillDraw,
  meterSpread_V,
  normalOfShare,
  normalShare,
  type Prior,
  type UnloggedEvent,
  unknowns,
  unlogged,
} from './priors.ts';
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
/** Moves of each member after that, each along the difference of two others (C. ter Braak 2006). */
const moves = 9;
/** Before them, rounds of moves in what the log left out alone, at most, while a reading lies further off than this. */
const rounds = 10;
const wellFitted = 2;

/** Currents are stated for the 12 V battery that the model follows; volts are turned into its volts at the door. */
export interface Fitting {
  readonly history: BatteryHistory;
  readonly stretches: Stretches;
  readonly prior: Prior;
  readonly lead: boolean;
  /** by reading: which unknown says how far its meter is off */
  readonly meter: Int32Array;
  readonly dimensions: number;
  /** from the third last reading to the end. [h] of the history */
  readonly late_h: readonly [number, number];
}

export function fittingOf(history: BatteryHistory, stretches: Stretches, prior: Prior): Fitting {
  const meters = [...new Set(history.readings.map(({ meter }) => meter))];
  const firstMeter = unknowns.length + stretches.sources;
  return {
    history,
    stretches,
    prior,
    lead: prior.chemistry !== 'lifepo4',
    meter: Int32Array.from(history.readings, ({ meter }) => firstMeter + meters.indexOf(meter)),
    dimensions: firstMeter + meters.length,
    late_h: lateHours(history),
  };
}

function lateHours({ from, to, readings }: BatteryHistory): [number, number] {
  const third =
    readings
      .map(({ at }) => at)
      .sort((a, b) => a - b)
      .at(-3) ?? from;
  return [(third - from) / 3_600_000, (to - from) / 3_600_000];
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
  /** a member as it was before a move */
  private readonly before: {
    readonly zs: Float64Array;
    readonly shown: Float64Array;
    readonly error: Float64Array;
    readonly end: Float64Array;
  };
  private readonly widened: number;
  private readonly line: RestLine;
  private readonly paces: Paces;
  /** volts that were read */
  private readonly said: Float64Array;
  /** of the member looked at last: what flowed in each stretch, and what it came to */
  private readonly amps: Float64Array;
  private readonly course: Course;
  private readonly state: State = { hand: 0, rest: 0, surface_V: 0 };
  private readonly dice: Dice;

  constructor(fitting: Fitting, size: number, dice: Dice) {
    this.fitting = fitting;
    this.size = size;
    this.dice = dice;
    this.line = restLine(fitting.prior.chemistry);
    this.paces = pacesOf(fitting.stretches.hours, fitting.stretches.battery_C, fitting.lead);
    this.draws = emptyDraws(size);
    this.zs = new Float64Array(size * fitting.dimensions);
    for (let i = 0; i < this.zs.length; i++) this.zs[i] = dice.normal();
    const { count } = fitting.stretches;
    this.amps = new Float64Array(count);
    this.course = {
      hand: new Float64Array(count),
      rest: new Float64Array(count),
      surface_V: new Float64Array(count),
    };
    this.said = Float64Array.from(fitting.history.readings, ({ volts }) => volts);
    const readings = fitting.history.readings.length;
    this.widened = Math.sqrt(Math.max(1, readings / apartAtMost));
    this.shown = new Float64Array(size * readings);
    this.error = new Float64Array(size * readings);
    this.end = { hand: new Float64Array(size), rest: new Float64Array(size), surface_V: new Float64Array(size) };
    this.fit = new Float64Array(size);
    this.before = {
      zs: new Float64Array(fitting.dimensions),
      shown: new Float64Array(readings),
      error: new Float64Array(readings),
      end: new Float64Array(3),
    };
  }

  /** Fits the members to the readings: first all together in small steps, then each by moves that keep the odds right. */
  settle(): void {
    const { size } = this;
    if (this.fitting.history.readings.length === 0) {
      for (let n = 0; n < size; n++) this.show(n);
      return;
    }
    for (let n = 0; n < size; n++) this.show(n);
    for (const weight of steps) {
      this.step(weight);
      for (let n = 0; n < size; n++) this.show(n);
    }
    for (let n = 0; n < size; n++) this.fit[n] = this.odds(n);
    for (const event of unlogged) this.moveEvent(event);
    let off = this.worstOff();
    for (let round = 0; round < rounds && Math.abs(off) > wellFitted; round++) {
      // less was read than is thought: something drew, or less came in
      for (const event of unlogged) if (event.fills === off > 0) this.moveEvent(event);
      const before = off;
      off = this.worstOff();
      if (round >= 4 && Math.abs(off) > 0.99 * Math.abs(before)) break;
    }
    for (let move = 0; move < moves; move++)
      this.move(move % 5 === 4 ? 1 : 2.38 / Math.sqrt(2 * this.fitting.dimensions));
  }

  /** How far the reading that fits worst lies over what members would have shown, in the mean, in its own spreads. */
  private worstOff(): number {
    const { size, shown, error, said } = this;
    let worst = 0;
    for (let r = 0; r < said.length; r++) {
      let off = 0;
      for (let n = 0; n < size; n++) {
        const index = n * said.length + r;
        off += (said[r]! - shown[index]!) / error[index]! / size;
      }
      if (Math.abs(off) > Math.abs(worst)) worst = off;
    }
    return worst;
  }

  private moveEvent(event: UnloggedEvent): void {
    this.moveAnew(event);
    // what a few have found, others come to know
    this.moveAlong(event);
  }

  /** What member `n` is and would have shown. */
  show(n: number): void {
    const { fitting, draws, zs, state, line, shown, error, end } = this;
    const { stretches, history, lead, dimensions, meter } = fitting;
    const { readings } = history;
    const { reading, count } = stretches;
    const course = this.courseOf(n);
    for (let s = 0; s < count; s++) {
      const read = reading[s]!;
      if (read < 0) continue;
      state.hand = course.hand[s]!;
      state.rest = course.rest[s]!;
      state.surface_V = course.surface_V[s]!;
      const now = readings[read]!.current_A ?? this.amps[s]!;
      const volts = terminalVolts(line, draws, n, state, now, stretches.battery_C[s]!, lead);
      const index = n * readings.length + read;
      shown[index] = volts + meterSpread_V * zs[n * dimensions + meter[read]!]!;
      error[index] = this.widened * this.errorOf(n, now, state);
    }
    end.hand[n] = course.hand[count - 1]!;
    end.rest[n] = course.rest[count - 1]!;
    end.surface_V[n] = course.surface_V[count - 1]!;
  }

  /** How far the meter of the last reading shows too much, by member; nought where nothing was read. [V] */
  meterOff_V(): Float64Array {
    const { size, zs, fitting } = this;
    const last = fitting.meter.at(-1);
    return Float64Array.from({ length: size }, (_, n) =>
      last === undefined ? 0 : meterSpread_V * zs[n * fitting.dimensions + last]!,
    );
  }

  /** What member `n` comes to at the end of each stretch; good until the next is asked for. */
  courseOf(n: number): Course {
    const { fitting, draws, zs, amps, course } = this;
    const { firstTerm, source, likely_A, more_A, less_A, hours, count } = fitting.stretches;
    const row = n * fitting.dimensions;
    const firstSource = row + unknowns.length;
    fillDraw(draws, n, zs, row, fitting.prior);
    const lostFrom_h = draws.lostFrom_h[n]!;
    const lost = 1 - draws.kept[n]!;
    const drainFrom_h = draws.drainFrom_h[n]!;
    const drain_A = draws.drain_A[n]!;
    const extraFrom_h = draws.extraFrom_h[n]!;
    const extraTo_h = draws.extraTo_h[n]!;
    const extra_A = draws.extra_A[n]!;
    let start_h = 0;
    for (let s = 0; s < count; s++) {
      const end_h = start_h + hours[s]!;
      let out_A = 0;
      let in_A = 0;
      const last = firstTerm[s + 1]!;
      for (let k = firstTerm[s]!; k < last; k++) {
        const likely = likely_A[k]!;
        const z = zs[firstSource + source[k]!]!;
        const flows = likely + z * (z > 0 ? more_A[k]! : less_A[k]!);
        if (likely < 0) in_A += flows;
        else out_A += flows;
      }
      if (in_A !== 0 && lostFrom_h < end_h) in_A *= 1 - lost * shareFrom(lostFrom_h, start_h, end_h);
      if (drainFrom_h <= end_h) out_A += drain_A * shareFrom(drainFrom_h, start_h, end_h);
      if (extraFrom_h < end_h && extraTo_h > start_h)
        in_A -= extra_A * (shareFrom(extraFrom_h, start_h, end_h) - shareFrom(extraTo_h, start_h, end_h));
      amps[s] = out_A + in_A;
      start_h = end_h;
    }
    follow(draws, n, amps, this.paces, course);
    return course;
  }

  /** How far a reading lies off even the right battery, as one standard deviation. [V] Assumed. */
  private errorOf(n: number, amps: number, { hand, surface_V }: State): number {
    const drop = Math.abs(amps) * this.draws.ohms[n]!;
    if (amps < -1e-4 * this.draws.capacity_Ah[n]!) {
      const squared = hand * hand;
      const fourth = squared * squared;
      return 0.06 + 0.3 * drop + 0.2 * fourth * fourth + 0.3 * surface_V;
    }
    return 0.02 + 0.2 * drop + 0.25 * surface_V;
  }

  /** How well a member fits: logarithm of the odds of its unknowns and of the readings. */
  private odds(n: number): number {
    const { dimensions } = this.fitting;
    let sum = this.oddsOfReadings(n);
    for (let d = 0; d < dimensions; d++) sum -= this.zs[n * dimensions + d]! ** 2 / 2;
    return sum;
  }

  private oddsOfReadings(n: number): number {
    const { readings } = this.fitting.history;
    let sum = 0;
    // logarithms are dear: of some readings together
    let product = 1;
    for (let r = 0; r < readings.length; r++) {
      const index = n * readings.length + r;
      const own = this.error[index]!;
      const off = (this.said[r]! - this.shown[index]!) / own;
      const tail = 1 + (off * off) / freedom;
      // to the power of half of the freedom and one
      product *= tail * tail * Math.sqrt(tail) * own;
      if (r % 8 === 7) {
        sum -= Math.log(product);
        product = 1;
      }
    }
    return sum - Math.log(product);
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
    const { size, zs, dice } = this;
    const { dimensions } = this.fitting;
    for (let n = 0; n < size; n++) {
      let a = dice.below(size - 1);
      if (a >= n) a++;
      let b = dice.below(size - 1);
      if (b >= n) b++;
      this.keep(n);
      const row = n * dimensions;
      for (let d = 0; d < dimensions; d++)
        zs[row + d]! += length * (zs[a * dimensions + d]! - zs[b * dimensions + d]!) + 0.02 * dice.normal();
      this.takeOrLeave(n, 0);
    }
  }

  /**
   * Each member tries one thing that the log left out as it was thought of beforehand, half of the time as if it began between
   * the last readings: a way between 'left on' and 'all written down' that small moves do not find.
   */
  private moveAnew(event: UnloggedEvent): void {
    const { size, zs, dice } = this;
    const { dimensions, late_h } = this.fitting;
    const low = begunBy(event, late_h[0]);
    const high = begunBy(event, late_h[1]);
    if (!(high - low > 1e-6)) return;
    // how many times as often a beginning is tried as it is thought of
    const often = (share: number) => 0.5 + (share > low && share < high ? 0.5 / (high - low) : 0);
    const [since, ...others] = event.places as [number, ...number[]];
    for (let n = 0; n < size; n++) {
      this.keep(n);
      const row = n * dimensions;
      const was = often(normalShare(zs[row + since]!));
      zs[row + since] = dice.share() < 0.5 ? dice.normal() : normalOfShare(low + (high - low) * dice.share());
      for (const place of others) zs[row + place] = dice.normal();
      const is = often(normalShare(zs[row + since]!));
      // how it was thought of beforehand stands in the odds too: taken out again, for the draws follow it
      let prior = 0;
      for (const place of event.places) prior += (zs[row + place]! ** 2 - this.before.zs[place]! ** 2) / 2;
      this.takeOrLeave(n, prior + Math.log(was / is));
    }
  }

  /** Each member tries one thing that the log left out, moved by the difference of two others in it alone. */
  private moveAlong({ places }: UnloggedEvent): void {
    const { size, zs, dice } = this;
    const { dimensions } = this.fitting;
    for (let n = 0; n < size; n++) {
      let a = dice.below(size - 1);
      if (a >= n) a++;
      let b = dice.below(size - 1);
      if (b >= n) b++;
      this.keep(n);
      for (const d of places)
        zs[n * dimensions + d]! += zs[a * dimensions + d]! - zs[b * dimensions + d]! + 0.02 * dice.normal();
      this.takeOrLeave(n, 0);
    }
  }

  private keep(n: number): void {
    const { before, zs, shown, error, end } = this;
    const { dimensions } = this.fitting;
    const m = this.fitting.history.readings.length;
    for (let d = 0; d < dimensions; d++) before.zs[d] = zs[n * dimensions + d]!;
    for (let r = 0; r < m; r++) {
      before.shown[r] = shown[n * m + r]!;
      before.error[r] = error[n * m + r]!;
    }
    before.end[0] = end.hand[n]!;
    before.end[1] = end.rest[n]!;
    before.end[2] = end.surface_V[n]!;
  }

  /** Takes the member as moved, or puts back what was kept. @param more added to the logarithm of the odds of taking it */
  private takeOrLeave(n: number, more: number): void {
    const { before, zs, shown, error, end, fit, fitting, dice } = this;
    this.show(n);
    const now = this.odds(n);
    if (Math.log(dice.share()) < now - fit[n]! + more) {
      fit[n] = now;
      return;
    }
    const { dimensions } = fitting;
    const m = fitting.history.readings.length;
    for (let d = 0; d < dimensions; d++) zs[n * dimensions + d] = before.zs[d]!;
    for (let r = 0; r < m; r++) {
      shown[n * m + r] = before.shown[r]!;
      error[n * m + r] = before.error[r]!;
    }
    end.hand[n] = before.end[0]!;
    end.rest[n] = before.end[1]!;
    end.surface_V[n] = before.end[2]!;
    fillDraw(this.draws, n, zs, n * dimensions, fitting.prior);
  }
}

/** How much of a stretch lies after an hour. 0–1 */
function shareFrom(from_h: number, start_h: number, end_h: number): number {
  if (from_h <= start_h) return 1;
  return from_h >= end_h ? 0 : (end_h - from_h) / (end_h - start_h);
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
