import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';

/** Where units are placed one after another: with set-ups changed as they ask for it, or in a frame. */
export interface Ground {
  /** Takes out all of them. */
  clear(): void;
  /**
   * Places all the open steps of a unit, or none of them.
   *
   * @param from  no step sooner than this; or by step, the same
   */
  placeUnit(unit: number, from: Minute | Int32Array): boolean;
}

/** What was learned from plans of whole units: by unit, how much it presses for having been left out of so many. */
export interface Learned {
  readonly pressed: Float64Array;
  plans: number;
}

export function nothingLearned({ units }: Compiled): Learned {
  return { pressed: new Float64Array(units.length), plans: 0 };
}

/** The time a unit takes tells against its worth, by this power of it. */
const powerOfTime = 0.4;
/** How far chance may move a unit among the others. */
const chanceMoves = 0.4;
/** What one plan adds to what presses, in all: much at first, half of it after so many plans, at last no less than this. */
const firstLesson = 6;
const lessonHalved = 8;
const leastLesson = 0.3;

/**
 * Makes whole plans unit by unit, the most pressing first. What a plan leaves out presses more the next time, by its
 * share of all that was left out, until it comes early enough to find the hours, hands and set-ups that others had.
 *
 * The idea is squeaky wheel optimization (D. E. Joslin, D. P. Clements, Journal of Artificial Intelligence Research 10
 * (1999) 353–373; cited from memory).
 */
export class PressingSearch {
  /** plans made so far */
  tries = 0;
  /** another's may be put in its place */
  learned: Learned;
  private readonly compiled: Compiled;
  private readonly dice: Dice;
  private readonly possible: readonly number[];
  private readonly ground: Ground;
  /** by unit: what leaving it out costs */
  private readonly gain: Float64Array;
  /** by unit: how much it presses of itself */
  private readonly calm: Float64Array;
  /** what a plan is worth that leaves nothing out */
  private readonly most: number;
  private readonly key: Float64Array;
  private readonly order: number[];
  private readonly isIn: Uint8Array;
  /** by step: its start in the plan before, 0 where that has none; null: there is no plan before */
  private readonly before: Int32Array | null;

  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, ground: Ground) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.ground = ground;
    this.gain = Float64Array.from(compiled.units, ({ weight, missedWeight }) => weight + 20 * missedWeight);
    this.calm = Float64Array.from(compiled.units, ({ open }, unit) => {
      const minutes = open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1);
      return Math.log(this.gain[unit]! / minutes ** powerOfTime);
    });
    this.most = possible.reduce((sum, unit) => sum + compiled.units[unit]!.weight, 0);
    const count = compiled.units.length;
    this.learned = nothingLearned(compiled);
    this.key = new Float64Array(count);
    this.order = [...possible];
    this.isIn = new Uint8Array(count);
    const { previous } = compiled;
    this.before = previous.some((start) => start >= 0) ? previous.map((start) => Math.max(0, start)) : null;
  }

  /** One more whole plan; it lies on the ground. Returns its weight less twenty times the weight it misses, of units alone. */
  step(): number {
    this.tries++;
    const { key, order, ground, isIn } = this;
    for (const unit of order) key[unit] = this.pressure(unit);
    this.sort();
    ground.clear();
    isIn.fill(0);
    for (const unit of order) this.put(unit);
    return this.learn();
  }

  /** How much a unit presses this time. */
  pressure(unit: number): number {
    return this.calm[unit]! + this.learned.pressed[unit]! + chanceMoves * (this.dice.share() - 0.5);
  }

  /** The most pressing first, equals as they are numbered; the order is seldom far from that of the plan before. */
  private sort(): void {
    const { key, order } = this;
    for (let at = 1; at < order.length; at++) {
      const unit = order[at]!;
      const own = key[unit]!;
      let to = at;
      for (; to > 0; to--) {
        const other = order[to - 1]!;
        if (key[other]! > own || (key[other]! === own && other < unit)) break;
        order[to] = other;
      }
      order[to] = unit;
    }
  }

  private learn(): number {
    const { gain, isIn, possible, learned } = this;
    let leftOut = 0;
    for (const unit of possible) if (isIn[unit] === 0) leftOut += gain[unit]!;
    const lesson = Math.max(leastLesson, firstLesson / (1 + learned.plans++ / lessonHalved));
    for (const unit of possible) if (isIn[unit] === 0) learned.pressed[unit]! += (lesson * gain[unit]!) / leftOut;
    return this.most - leftOut;
  }

  private put(unit: number): boolean {
    const { dice, ground, isIn } = this;
    if (isIn[unit] === 1) return true;
    for (const other of this.compiled.units[unit]!.waitsFor) if (!this.put(other)) return false;
    let done = false;
    if (this.before !== null && dice.chance(0.5)) done = ground.placeUnit(unit, this.before);
    else if (dice.chance(0.1)) done = ground.placeUnit(unit, this.someStart());
    if (!done) done = ground.placeUnit(unit, 0);
    if (done) isIn[unit] = 1;
    return done;
  }

  private someStart(): Minute {
    const { stretches } = this.compiled;
    return stretches.length === 0 ? 0 : stretches[this.dice.below(stretches.length)]!.from;
  }
}
