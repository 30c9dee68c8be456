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
  /** Places all the open steps of some units among each other, whose turn it is by chance; or none of them. */
  placeAmong(units: readonly number[], dice: Dice): boolean;
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
/** With this chance some units of a plan are laid step by step among each other: so many, to so many more. */
const chanceAmong = 0.15;
const leastAmong = 3;
const mostMoreAmong = 5;
/** Each in the plan before is passed over with this chance. */
const passedOver = 0.2;
/** So many ways of laying them are tried. */
const triesAmong = 20;

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
    const among = this.dice.chance(chanceAmong) ? this.chooseAmong() : [];
    ground.clear();
    isIn.fill(0);
    this.putAmong(among);
    for (const unit of order) this.put(unit);
    return this.learn();
  }

  /**
   * One that the plan before left out, the dearer the likelier, and some of the most pressing that it had: one by one,
   * whichever comes last may find no room, and yet all fit where their steps lie among each other.
   */
  private chooseAmong(): number[] {
    const { order, isIn, gain, dice, compiled } = this;
    let chosen = -1;
    let sum = 0;
    for (const unit of order) {
      if (isIn[unit] === 1) continue;
      sum += gain[unit]!;
      if (dice.share() * sum < gain[unit]!) chosen = unit;
    }
    if (chosen < 0 || compiled.units[chosen]!.waitsFor.length > 0) return [];
    const among = [chosen];
    const wanted = leastAmong + dice.below(mostMoreAmong + 1);
    for (const unit of order) {
      if (among.length === wanted) break;
      if (isIn[unit] === 0 || compiled.units[unit]!.waitsFor.length > 0 || dice.chance(passedOver)) continue;
      among.push(unit);
    }
    return among;
  }

  private putAmong(among: readonly number[]): void {
    if (among.length < 2) return;
    for (let n = 0; n < triesAmong; n++) {
      if (!this.ground.placeAmong(among, this.dice)) continue;
      for (const unit of among) this.isIn[unit] = 1;
      return;
    }
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
