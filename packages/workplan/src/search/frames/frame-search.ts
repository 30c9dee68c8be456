import type { Minute } from '../../problem.ts';
import type { Compiled } from '../compiled.ts';
import type { Dice } from '../dice.ts';
import type { Lay } from '../kept-steps.ts';
import type { PressingSearch } from '../pressing-search.ts';
import type { FramePlacing } from './frame-placing.ts';

/** Units taken out in a try, but for what waits for them: so many, to so many more. */
const leastOut = 3;
const mostMoreOut = 4;
/** Units left out that are put in beside them: so many, to so many more. */
const leastAlso = 6;
const mostMoreAlso = 6;
/** At first a plan may be worse by so much of a unit's mean weight, about, and still be taken in hand. */
const heatAtFirst = 0.1;

/**
 * Looks for a better plan in a frame: a few units are taken out of the plan in hand and put back in another order,
 * with some that were left out, among set-up changes that stand fast. A little worse is taken now and then, less and less.
 */
export class FrameSearch {
  /** the best plan since the last start, and its weight less twenty times the weight it misses */
  bestLay: Lay = { steps: [], frame: [] };
  best = Number.NEGATIVE_INFINITY;
  private readonly compiled: Compiled;
  private readonly possible: readonly number[];
  private readonly dice: Dice;
  private readonly placing: FramePlacing;
  private readonly pressing: PressingSearch;
  private readonly unitOf: Int32Array;
  /** by unit: what leaving it out costs */
  private readonly gain: Float64Array;
  /** by unit: hand-minutes it takes, at least 1 */
  private readonly minutes: Float64Array;
  /** by unit: units that wait for it */
  private readonly waiting: readonly (readonly number[])[];
  private readonly meanWeight: number;
  private readonly hasMixes: boolean;
  /** of the plan in hand */
  private value = 0;
  private readonly isIn: Uint8Array;
  private tries = 0;
  private period = 0;
  /** units taken out in this try, marked too */
  private readonly out: number[] = [];
  private readonly isOut: Uint8Array;
  /** units to be put in, in their order, and those that came in */
  private readonly candidates: number[] = [];
  private readonly came: number[] = [];
  private readonly key: Float64Array;
  /** how the steps taken out lay */
  private readonly was: Laid;

  /** @param pressing  plans of whole units in the same frames: what it learned says what is put back first */
  constructor(
    compiled: Compiled,
    possible: readonly number[],
    dice: Dice,
    placing: FramePlacing,
    pressing: PressingSearch,
    unitOf: Int32Array,
  ) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = placing;
    this.pressing = pressing;
    this.unitOf = unitOf;
    this.gain = Float64Array.from(compiled.units, ({ weight, missedWeight }) => weight + 20 * missedWeight);
    this.minutes = Float64Array.from(compiled.units, ({ open }) =>
      open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1),
    );
    this.waiting = compiled.units.map((_, unit) =>
      compiled.units.flatMap(({ waitsFor }, other) => (waitsFor.includes(unit) ? [other] : [])),
    );
    this.meanWeight =
      possible.reduce((sum, unit) => sum + compiled.units[unit]!.weight, 0) / Math.max(1, possible.length);
    this.hasMixes = compiled.problem.mixes.length > 0;
    const count = compiled.units.length;
    this.isIn = new Uint8Array(count);
    this.isOut = new Uint8Array(count);
    this.key = new Float64Array(count);
    this.was = new Laid(compiled.steps.length);
  }

  /** Takes a plan in hand, with its frame, and cools over so many tries. */
  startFrom(lay: Lay, period: number): void {
    const { placing, isIn, unitOf, possible, compiled } = this;
    placing.setFrame(lay.frame);
    isIn.fill(0);
    lay.steps.forEach((at, step) => {
      if (at === null) return;
      placing.layStep(step, at);
      isIn[unitOf[step]!] = 1;
    });
    placing.keep();
    this.value = 0;
    for (const unit of possible) {
      const { weight, missedWeight } = compiled.units[unit]!;
      this.value += isIn[unit] === 1 ? weight : -20 * missedWeight;
    }
    this.best = this.value;
    this.bestLay = lay;
    this.period = period;
    this.tries = 0;
  }

  get isOver(): boolean {
    return this.tries >= this.period;
  }

  /** One more taking out and putting back. */
  step(): void {
    const { placing, dice } = this;
    const share = 1 - this.tries++ / this.period;
    const heat = heatAtFirst * this.meanWeight * share * share + 1e-6;
    const least = this.value + heat * Math.log(1 - dice.share());
    this.choose();
    const value = this.changed(least);
    if (value < least) {
      this.putBackAsItWas();
      return;
    }
    for (let k = 0; k < this.out.length; k++) this.isOut[this.out[k]!] = 0;
    placing.keep();
    this.value = value;
    if (value <= this.best + 1e-9) return;
    this.best = value;
    this.bestLay = placing.lay();
  }

  /** What the plan is worth with some units out and others in; −Infinity as soon as it must be worth less than `least`. */
  private changed(least: number): number {
    const { out, candidates, came, gain, isIn } = this;
    candidates.length = 0;
    came.length = 0;
    let value = this.value;
    for (let k = 0; k < out.length; k++) {
      const unit = out[k]!;
      this.takeOut(unit);
      value -= gain[unit]!;
      candidates.push(unit);
    }
    this.addLeftOut();
    this.sortCandidates();
    let most = value;
    for (let k = 0; k < candidates.length; k++) most += gain[candidates[k]!]!;
    for (let k = 0; k < candidates.length; k++) {
      if (most < least) return Number.NEGATIVE_INFINITY;
      const unit = candidates[k]!;
      if (isIn[unit] === 0 && !this.put(unit)) most -= gain[unit]!;
    }
    for (let k = 0; k < came.length; k++) value += gain[came[k]!]!;
    return value;
  }

  private takeOut(unit: number): void {
    const { placing, was } = this;
    const { open } = this.compiled.units[unit]!;
    for (let k = 0; k < open.length; k++) {
      was.note(open[k]!, placing);
      placing.takeOut(open[k]!);
    }
    this.isIn[unit] = 0;
  }

  private putBackAsItWas(): void {
    const { placing, was, came, out, isIn, isOut } = this;
    placing.takeBackTo(0);
    for (let k = 0; k < came.length; k++) isIn[came[k]!] = 0;
    was.putBack(placing);
    placing.keep();
    for (let k = 0; k < out.length; k++) {
      isIn[out[k]!] = 1;
      isOut[out[k]!] = 0;
    }
  }

  /** Chooses what is taken out: what lies about one time, or on one day, or is worth the least for its time, or any. */
  private choose(): void {
    const { dice, possible, isIn, key, compiled, minutes, out } = this;
    this.was.clear();
    out.length = 0;
    const pick = dice.share();
    const most = leastOut + dice.below(mostMoreOut + 1);
    if (pick < 0.55) this.keyByTime(pick < 0.35);
    else if (pick < 0.8)
      for (const unit of possible) key[unit] = (compiled.units[unit]!.weight / minutes[unit]!) * (0.3 + dice.share());
    else for (const unit of possible) key[unit] = dice.share();
    for (const unit of possible) if (isIn[unit] === 0) key[unit] = Number.POSITIVE_INFINITY;
    while (out.length < most) {
      let chosen = -1;
      let least = Number.POSITIVE_INFINITY;
      for (const unit of possible)
        if (key[unit]! < least) {
          least = key[unit]!;
          chosen = unit;
        }
      if (chosen < 0) break;
      key[chosen] = Number.POSITIVE_INFINITY;
      this.add(chosen);
    }
    if (this.hasMixes) this.addSharers();
  }

  /** Ranks units by how near a step of theirs lies to some minute; or any that have one on that day alike. */
  private keyByTime(isByMinute: boolean): void {
    const { dice, possible, key, compiled, placing } = this;
    const { stretches } = compiled;
    const stretch = stretches[dice.below(stretches.length)]!;
    const centre = stretch.from + dice.below(stretch.to - stretch.from);
    for (const unit of possible) {
      const { open } = compiled.units[unit]!;
      let nearest = Number.POSITIVE_INFINITY;
      for (let k = 0; k < open.length; k++) nearest = Math.min(nearest, Math.abs(placing.start[open[k]!]! - centre));
      if (isByMinute) key[unit] = nearest;
      else key[unit] = nearest < 900 ? dice.share() : Number.POSITIVE_INFINITY;
    }
  }

  private add(unit: number): void {
    if (this.isOut[unit] === 1 || this.isIn[unit] === 0) return;
    this.isOut[unit] = 1;
    this.out.push(unit);
    const waiting = this.waiting[unit]!;
    for (let k = 0; k < waiting.length; k++) this.add(waiting[k]!);
  }

  /** Adds what shares a batch of what is out. */
  private addSharers(): void {
    const { batchOf, finish } = this.placing;
    const { unitOf, isOut } = this;
    let more = true;
    while (more) {
      more = false;
      for (let step = 0; step < batchOf.length; step++) {
        const other = batchOf[step]!;
        if (other < 0 || finish[step]! < 0 || isOut[unitOf[step]!] === 1) continue;
        if (unitOf[other]! < 0 || isOut[unitOf[other]!] === 0) continue;
        this.add(unitOf[step]!);
        more = true;
      }
    }
  }

  private addLeftOut(): void {
    const { possible, isIn, isOut, dice, candidates } = this;
    let left = 0;
    for (const unit of possible) if (isIn[unit] === 0 && isOut[unit] === 0) left++;
    let wanted = Math.min(left, leastAlso + dice.below(mostMoreAlso + 1));
    for (const unit of possible) {
      if (wanted === 0) return;
      if (isIn[unit] === 1 || isOut[unit] === 1) continue;
      if (dice.below(left--) >= wanted) continue;
      candidates.push(unit);
      wanted--;
    }
  }

  /** What presses more comes sooner, as in plans of whole units. */
  private sortCandidates(): void {
    const { candidates, key, pressing } = this;
    for (let k = 0; k < candidates.length; k++) key[candidates[k]!] = pressing.pressure(candidates[k]!);
    candidates.sort((a, b) => key[b]! - key[a]!);
  }

  private put(unit: number): boolean {
    const { dice, placing, isIn } = this;
    if (isIn[unit] === 1) return true;
    const { waitsFor } = this.compiled.units[unit]!;
    for (let k = 0; k < waitsFor.length; k++) if (!this.put(waitsFor[k]!)) return false;
    const done = (dice.chance(0.2) && placing.placeUnit(unit, this.someStart())) || placing.placeUnit(unit, 0);
    if (done) {
      isIn[unit] = 1;
      this.came.push(unit);
    }
    return done;
  }

  private someStart(): Minute {
    const { stretches } = this.compiled;
    return stretches.length === 0 ? 0 : stretches[this.dice.below(stretches.length)]!.from;
  }
}

/** How steps lay that were taken out, to be put back where they were. */
class Laid {
  private readonly step: Int32Array;
  private readonly start: Int32Array;
  private readonly finish: Int32Array;
  private readonly batchOf: Int32Array;
  private readonly abrade: Int32Array;
  private readonly hands: (readonly number[])[];
  private count = 0;

  constructor(most: number) {
    this.step = new Int32Array(most);
    this.start = new Int32Array(most);
    this.finish = new Int32Array(most);
    this.batchOf = new Int32Array(most);
    this.abrade = new Int32Array(most);
    this.hands = new Array<readonly number[]>(most).fill([]);
  }

  clear(): void {
    this.count = 0;
  }

  note(step: number, placing: FramePlacing): void {
    const at = this.count++;
    this.step[at] = step;
    this.start[at] = placing.start[step]!;
    this.finish[at] = placing.finish[step]!;
    this.batchOf[at] = placing.batchOf[step]!;
    this.abrade[at] = placing.abrade[step]!;
    this.hands[at] = placing.handsOf[step]!;
  }

  putBack(placing: FramePlacing): void {
    for (let at = 0; at < this.count; at++)
      placing.putBack(
        this.step[at]!,
        this.start[at]!,
        this.finish[at]!,
        this.batchOf[at]!,
        this.abrade[at]!,
        this.hands[at]!,
      );
  }
}
