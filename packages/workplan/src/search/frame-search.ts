import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import type { FramePlacing } from './frames/frame-placing.ts';
import type { Lay } from './kept-steps.ts';

/**
 * Looks for a better plan in a frame: a few units are taken out of the plan in hand and put back, with some that were
 * left out, in another order, among set-up changes that stand fast.
 */
export class FrameSearch {
  readonly placing: FramePlacing;
  /** the most that a plan since `startFrom` is worth: weight less twenty times the weight missed */
  best = Number.NEGATIVE_INFINITY;
  bestLay: Lay | null = null;
  tries = 0;
  /** what the plan in hand is worth */
  value = 0;
  mostOut = 6;
  heat0 = 0.25;
  private readonly compiled: Compiled;
  private readonly possible: readonly number[];
  private readonly dice: Dice;
  private readonly gain: Float64Array;
  private readonly minutes: Float64Array;
  private readonly waiting: readonly (readonly number[])[];
  private readonly unitOf: Int32Array;
  private readonly meanWeight: number;
  private readonly isIn: Uint8Array;
  private readonly out: Uint8Array;
  private readonly outList: Int32Array;
  private outCount = 0;
  private readonly key: Float64Array;
  private readonly candidates: Int32Array;
  private candidateCount = 0;
  // what was taken out, to be put back where it was
  private readonly wasStep: Int32Array;
  private readonly wasStart: Int32Array;
  private readonly wasFinish: Int32Array;
  private readonly wasBatch: Int32Array;
  private readonly wasAbrade: Int32Array;
  private readonly wasHands: (readonly number[])[];
  private wasCount = 0;
  private readonly came: Int32Array;
  private cameCount = 0;
  private period = 1;
  private at = 0;
  private readonly mixes: boolean;

  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, placing: FramePlacing, unitOf: Int32Array) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = placing;
    this.unitOf = unitOf;
    this.gain = Float64Array.from(compiled.units, ({ weight, missedWeight }) => weight + 20 * missedWeight);
    this.minutes = Float64Array.from(compiled.units, ({ open }) =>
      open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1),
    );
    this.waiting = compiled.units.map((_, unit) =>
      compiled.units.flatMap(({ waitsFor }, other) => (waitsFor.includes(unit) ? [other] : [])),
    );
    this.meanWeight = possible.reduce((sum, unit) => sum + compiled.units[unit]!.weight, 0) / Math.max(1, possible.length);
    const count = compiled.units.length;
    const steps = compiled.steps.length;
    this.isIn = new Uint8Array(count);
    this.out = new Uint8Array(count);
    this.outList = new Int32Array(count);
    this.key = new Float64Array(count);
    this.candidates = new Int32Array(count);
    this.came = new Int32Array(count);
    this.wasStep = new Int32Array(steps);
    this.wasStart = new Int32Array(steps);
    this.wasFinish = new Int32Array(steps);
    this.wasBatch = new Int32Array(steps);
    this.wasAbrade = new Int32Array(steps);
    this.wasHands = new Array<readonly number[]>(steps).fill([]);
    this.mixes = compiled.problem.mixes.length > 0;
  }

  /** Takes a plan in hand, with its frame, and cools over so many tries. */
  startFrom(lay: Lay, period: number): void {
    const { placing, isIn, unitOf, possible } = this;
    placing.setFrame(lay.frame);
    isIn.fill(0);
    lay.steps.forEach((at, step) => {
      if (at === null) return;
      placing.layStep(step, at);
      isIn[unitOf[step]!] = 1;
    });
    placing.keep();
    let value = 0;
    for (const unit of possible) value += isIn[unit] === 1 ? this.compiled.units[unit]!.weight : -20 * this.compiled.units[unit]!.missedWeight;
    this.value = value;
    this.best = value;
    this.bestLay = lay;
    this.period = period;
    this.at = 0;
  }

  get isOver(): boolean {
    return this.at >= this.period;
  }

  /** One more taking out and putting back; true where the plan in hand is better than any since the start. */
  step(): boolean {
    this.tries++;
    const { dice, placing, out, isIn, gain } = this;
    const share = 1 - this.at++ / this.period;
    const heat = this.heat0 * this.meanWeight * share * share + 1e-6;
    const least = this.value + heat * Math.log(1 - dice.share());
    this.outCount = 0;
    this.choose();
    // what shares a batch of one that is out, or waits for one
    if (this.mixes) this.addSharers();
    this.wasCount = 0;
    this.cameCount = 0;
    this.candidateCount = 0;
    let value = this.value;
    for (let k = 0; k < this.outCount; k++) {
      const unit = this.outList[k]!;
      this.takeOutUnit(unit);
      isIn[unit] = 0;
      value -= gain[unit]!;
      this.candidates[this.candidateCount++] = unit;
    }
    this.addLeftOut();
    this.sortCandidates();
    let most = value;
    for (let k = 0; k < this.candidateCount; k++) most += gain[this.candidates[k]!]!;
    let given = most < least;
    for (let k = 0; k < this.candidateCount && !given; k++) {
      const unit = this.candidates[k]!;
      if (isIn[unit] === 1) continue;
      if (this.put(unit)) continue;
      most -= gain[unit]!;
      given = most < least;
    }
    if (!given) for (let k = 0; k < this.cameCount; k++) value += gain[this.came[k]!]!;
    for (let k = 0; k < this.outCount; k++) out[this.outList[k]!] = 0;
    if (given || value < least) {
      placing.takeBackTo(0);
      for (let k = 0; k < this.cameCount; k++) isIn[this.came[k]!] = 0;
      for (let k = 0; k < this.wasCount; k++)
        placing.putBack(this.wasStep[k]!, this.wasStart[k]!, this.wasFinish[k]!, this.wasBatch[k]!, this.wasAbrade[k]!, this.wasHands[k]!);
      placing.keep();
      for (let k = 0; k < this.outCount; k++) isIn[this.outList[k]!] = 1;
      return false;
    }
    placing.keep();
    this.value = value;
    if (value <= this.best + 1e-9) return false;
    this.best = value;
    this.bestLay = placing.lay();
    return true;
  }

  private takeOutUnit(unit: number): void {
    const { placing } = this;
    const { open } = this.compiled.units[unit]!;
    for (let k = 0; k < open.length; k++) {
      const step = open[k]!;
      const n = this.wasCount++;
      this.wasStep[n] = step;
      this.wasStart[n] = placing.start[step]!;
      this.wasFinish[n] = placing.finish[step]!;
      this.wasBatch[n] = placing.batchOf[step]!;
      this.wasAbrade[n] = placing.abrade[step]!;
      this.wasHands[n] = placing.handsOf[step]!;
      placing.takeOut(step);
    }
  }

  private add(unit: number): void {
    if (this.out[unit] === 1 || this.isIn[unit] === 0) return;
    this.out[unit] = 1;
    this.outList[this.outCount++] = unit;
    const waiting = this.waiting[unit]!;
    for (let k = 0; k < waiting.length; k++) this.add(waiting[k]!);
  }

  private addSharers(): void {
    const { batchOf, finish } = this.placing;
    const { unitOf, out } = this;
    let more = true;
    while (more) {
      more = false;
      for (let step = 0; step < batchOf.length; step++) {
        const other = batchOf[step]!;
        if (other < 0 || finish[step]! < 0 || out[unitOf[step]!] === 1) continue;
        if (unitOf[other]! < 0 || out[unitOf[other]!] === 0) continue;
        this.add(unitOf[step]!);
        more = true;
      }
    }
  }

  private choose(): void {
    const { dice, possible, isIn, key, compiled, placing, minutes } = this;
    const pick = dice.share();
    const most = 2 + dice.below(this.mostOut);
    const { stretches } = compiled;
    if (pick < 0.55) {
      // what lies about one time, or on one day
      const stretch = stretches[dice.below(stretches.length)]!;
      const centre = stretch.from + dice.below(stretch.to - stretch.from);
      const day = pick < 0.35 ? -1 : stretch.day;
      for (const unit of possible) {
        key[unit] = Number.POSITIVE_INFINITY;
        if (isIn[unit] === 0) continue;
        const { open } = compiled.units[unit]!;
        let nearest = Number.POSITIVE_INFINITY;
        for (let k = 0; k < open.length; k++) {
          const start = placing.start[open[k]!]!;
          const far = start > centre ? start - centre : centre - start;
          if (far < nearest) nearest = far;
        }
        key[unit] = day < 0 ? nearest : nearest < 900 ? dice.share() : Number.POSITIVE_INFINITY;
      }
    } else if (pick < 0.8) {
      for (const unit of possible)
        key[unit] = isIn[unit] === 0 ? Number.POSITIVE_INFINITY : (compiled.units[unit]!.weight / minutes[unit]!) * (0.3 + dice.share());
    } else for (const unit of possible) key[unit] = isIn[unit] === 0 ? Number.POSITIVE_INFINITY : dice.share();
    while (this.outCount < most) {
      let chosen = -1;
      let least = Number.POSITIVE_INFINITY;
      for (const unit of possible)
        if (key[unit]! < least) {
          least = key[unit]!;
          chosen = unit;
        }
      if (chosen < 0) return;
      key[chosen] = Number.POSITIVE_INFINITY;
      this.add(chosen);
    }
  }

  private addLeftOut(): void {
    const { possible, isIn, out, dice } = this;
    let left = 0;
    for (const unit of possible) if (isIn[unit] === 0 && out[unit] === 0) left++;
    let wanted = Math.min(left, 3 + dice.below(4));
    for (const unit of possible) {
      if (wanted === 0) return;
      if (isIn[unit] === 1 || out[unit] === 1) continue;
      if (dice.below(left) < wanted) {
        this.candidates[this.candidateCount++] = unit;
        wanted--;
      }
      left--;
    }
  }

  private sortCandidates(): void {
    const { dice, candidates, key, gain, minutes, candidateCount } = this;
    const noise = dice.below(4);
    const spread = noise === 0 ? 0.2 : noise === 1 ? 0.6 : noise === 2 ? 1.5 : 4;
    const by = dice.below(3);
    for (let k = 0; k < candidateCount; k++) {
      const unit = candidates[k]!;
      const time = by === 0 ? 1 : by === 1 ? minutes[unit]! : Math.sqrt(minutes[unit]!);
      key[unit] = Math.log(gain[unit]! / time) + spread * (dice.share() - 0.5);
    }
    for (let k = 1; k < candidateCount; k++) {
      const unit = candidates[k]!;
      const own = key[unit]!;
      let n = k - 1;
      while (n >= 0 && key[candidates[n]!]! < own) {
        candidates[n + 1] = candidates[n]!;
        n--;
      }
      candidates[n + 1] = unit;
    }
  }

  private put(unit: number): boolean {
    const { dice, placing, isIn } = this;
    if (isIn[unit] === 1) return true;
    const { waitsFor } = this.compiled.units[unit]!;
    for (let k = 0; k < waitsFor.length; k++) if (!this.put(waitsFor[k]!)) return false;
    let done = false;
    if (dice.chance(0.2)) done = placing.placeUnit(unit, this.someStart());
    if (!done) done = placing.placeUnit(unit, 0);
    if (done) {
      isIn[unit] = 1;
      this.came[this.cameCount++] = unit;
    }
    return done;
  }

  private someStart(): Minute {
    const { stretches } = this.compiled;
    return stretches.length === 0 ? 0 : stretches[this.dice.below(stretches.length)]!.from;
  }
}
