import type { Batteries } from './batteries.ts';
import { felt_A, follow, type Heat, heatAt, type Paces, pacesOf, terminalVolts } from './circuit-model.ts';
import { type Fitting, freedom } from './fitting.ts';
import { meterSpread_V, unknowns } from './priors.ts';

/**
 * Readings of one battery share what the model has wrong of it, so many of them tell no more than this many would that knew
 * nothing of each other: the error of each is widened so. Assumed.
 */
const apartAtMost = 12;
/** Logarithms are dear: taken of so many readings together. */
const together = 8;
/** Batteries are followed so many readings ahead, and looked at one by one. */
const ahead = 4;
/** How far a reading lies off even the right battery at least, one spread. [V] Assumed. */
const leastError_V = 0.02;

/** Runs batteries through a history: what flows, what each comes to and shows, and how well that goes with the readings. */
export class HistoryRun {
  private readonly fitting: Fitting;
  private readonly heats: readonly Heat[];
  private readonly paces: Paces;
  /** end of each stretch. [h] of the history */
  private readonly end_h: Float64Array;
  /** of each reading: the current measured with it (not a number: none), and the stretch it stands at the end of */
  private readonly measured_A: Float64Array;
  private readonly readAfter: Int32Array;
  private readonly widened: number;
  /** no reading's own error is less */
  private readonly leastOwn_V: number;

  constructor(fitting: Fitting) {
    const { hours, battery_C, reading } = fitting.stretches;
    const { readings } = fitting.history;
    this.fitting = fitting;
    const heats = new Map<number, Heat>();
    for (const heat of battery_C) if (!heats.has(heat)) heats.set(heat, heatAt(fitting.prior.chemistry, heat));
    this.heats = Array.from(battery_C, (heat) => heats.get(heat)!);
    this.paces = pacesOf(hours, battery_C, this.heats);
    let end_h = 0;
    this.end_h = hours.map((span) => {
      end_h += span;
      return end_h;
    });
    this.measured_A = Float64Array.from(readings, ({ current_A }) => current_A ?? Number.NaN);
    this.readAfter = new Int32Array(readings.length);
    reading.forEach((read, s) => {
      if (read >= 0) this.readAfter[read] = s;
    });
    this.widened = Math.sqrt(Math.max(1, readings.length / apartAtMost));
    this.leastOwn_V = this.widened * leastError_V;
  }

  /** The first stretch that ends no sooner than an hour of the history; as many as there are: none. */
  stretchAt(hour: number): number {
    const { end_h } = this;
    let low = 0;
    let high = end_h.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (end_h[middle]! >= hour) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /** The first reading that stands at the end of a stretch or later. */
  readingFrom(stretch: number): number {
    let r = 0;
    while (r < this.readAfter.length && this.readAfter[r]! < stretch) r++;
    return r;
  }

  /** What flows in each stretch from stretch `from` on, were row `n` the battery: fills its amps from its draw. */
  currents(of: Batteries, n: number, from: number): void {
    const { draws, zs } = of;
    const { end_h } = this;
    const { firstTerm, source, likely_A, more_A, less_A, count } = this.fitting.stretches;
    const { amps } = of.courses;
    const firstSource = n * this.fitting.dimensions + unknowns.length;
    const row = n * count;
    const lostFrom_h = draws.lostFrom_h[n]!;
    const lost = 1 - draws.kept[n]!;
    const drainFrom_h = draws.drainFrom_h[n]!;
    const drain_A = draws.drain_A[n]!;
    const extraFrom_h = draws.extraFrom_h[n]!;
    const extraTo_h = draws.extraTo_h[n]!;
    const extra_A = draws.extra_A[n]!;
    let start_h = from > 0 ? end_h[from - 1]! : 0;
    for (let s = from; s < count; s++) {
      const until_h = end_h[s]!;
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
      if (in_A !== 0 && lostFrom_h < until_h) in_A *= 1 - lost * shareFrom(lostFrom_h, start_h, until_h);
      if (drainFrom_h <= until_h) out_A += drain_A * shareFrom(drainFrom_h, start_h, until_h);
      if (extraFrom_h < until_h && extraTo_h > start_h)
        in_A -= extra_A * (shareFrom(extraFrom_h, start_h, until_h) - shareFrom(extraTo_h, start_h, until_h));
      amps[row + s] = out_A + in_A;
      start_h = until_h;
    }
  }

  /**
   * What row `n` comes to and would have shown from stretch `from` on. What it comes to in the stretch before, and what the
   * readings before take off the odds, stands in the row already. Fills the odds of the readings.
   *
   * @param least  given up as soon as the logarithm of the odds of the readings can no longer come to this
   * @returns whether it came to the end
   */
  through(of: Batteries, n: number, from: number, least: number): boolean {
    const { readAfter, leastOwn_V } = this;
    const { said_V, stretches } = this.fitting;
    const row = n * said_V.length;
    // by how much the odds may fall short of the best there is, and by how much they do: not logarithms
    const room = Math.exp(-said_V.length * Math.log(leastOwn_V) - least);
    let short = 1;
    let sum = 0;
    let product = 1;
    let stretch = from;
    for (let r = 0; r < said_V.length; r++) {
      if (short > room) return false;
      if (readAfter[r]! >= from) {
        if (readAfter[r]! >= stretch) {
          // on to a reading some further on: to begin costs more than a stretch
          const next = readAfter[Math.min(r + ahead, said_V.length) - 1]! + 1;
          follow(of.draws, n, this.paces, of.courses, stretch, next);
          stretch = next;
        }
        this.look(of, n, r);
      }
      const less = of.less[row + r]!;
      short *= less / leastOwn_V;
      product *= less;
      if (r % together === together - 1) {
        sum -= Math.log(product);
        product = 1;
      }
    }
    if (stretch < stretches.count) follow(of.draws, n, this.paces, of.courses, stretch, stretches.count);
    of.ofReadings[n] = sum - Math.log(product);
    return true;
  }

  /** What row `n` would have shown at reading `r`, how far that reading may lie off it, and what it so takes off the odds. */
  private look(of: Batteries, n: number, r: number): void {
    const { measured_A, readAfter, fitting } = this;
    const { draws, courses } = of;
    const stretch = readAfter[r]!;
    const at = n * fitting.stretches.count + stretch;
    const index = n * readAfter.length + r;
    const hand = courses.hand[at]!;
    const surface_V = courses.surface_V[at]!;
    const measured = measured_A[r]!;
    const amps = Number.isNaN(measured) ? courses.amps[at]! : measured;
    const felt = felt_A(draws, n, amps);
    const volts = terminalVolts(this.heats[stretch]!, draws, n, hand, surface_V, amps, felt);
    const shown = volts + meterSpread_V * of.zs[n * fitting.dimensions + fitting.meter[r]!]!;
    const drop = Math.abs(amps) * draws.ohms[n]!;
    // how far a reading lies off even the right battery, as one standard deviation. Assumed
    let error = leastError_V + 0.2 * drop + 0.25 * surface_V;
    if (amps < -1e-4 * draws.capacity_Ah[n]!) {
      const squared = hand * hand;
      const fourth = squared * squared;
      error = 0.06 + 0.3 * drop + 0.2 * fourth * fourth + 0.3 * surface_V;
    }
    const own = this.widened * error;
    const off = (fitting.said_V[r]! - shown) / own;
    const tail = 1 + (off * off) / freedom;
    of.shown[index] = shown;
    of.error[index] = own;
    // to the power of half of the freedom and one
    of.less[index] = tail * tail * Math.sqrt(tail) * own;
  }
}

/** How much of a stretch lies after an hour. 0–1 */
function shareFrom(from_h: number, start_h: number, end_h: number): number {
  if (from_h <= start_h) return 1;
  return from_h >= end_h ? 0 : (end_h - from_h) / (end_h - start_h);
}
