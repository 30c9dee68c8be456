import type { Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import type { Placing } from './placing.ts';
import { UnitPlacing } from './unit-placing.ts';
import { worthPlaced } from './written-plan.ts';

/**
 * Makes whole plans unit by unit, the most pressing first. What a plan leaves out presses more the next time, by its
 * share of all that was left out, until it comes early enough to find the hours, hands and set-ups that others had.
 *
 * The idea is squeaky wheel optimization (D. E. Joslin, D. P. Clements, Journal of Artificial Intelligence Research 10
 * (1999) 353–373; cited from memory).
 */
export class PressingSearch {
  readonly placing: Placing;
  /** plans made so far */
  tries = 0;
  private readonly compiled: Compiled;
  private readonly dice: Dice;
  private readonly possible: readonly number[];
  private readonly units: UnitPlacing;
  /** by unit: what leaving it out costs */
  private readonly gain: Float64Array;
  /** by unit: how much it presses of itself */
  private readonly calm: Float64Array;
  /** by unit: how much more it presses for having been left out */
  private readonly pressed: Float64Array;
  private readonly key: Float64Array;
  private readonly order: number[];
  private readonly isIn: Uint8Array;
  /** by step: its start in the plan before, 0 where that has none; null: there is no plan before */
  private readonly before: Int32Array | null;

  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, placing: Placing) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = placing;
    this.units = new UnitPlacing(compiled, placing);
    this.gain = Float64Array.from(compiled.units, ({ weight, missedWeight }) => weight + 20 * missedWeight);
    this.calm = Float64Array.from(compiled.units, ({ open }, unit) => {
      const minutes = open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1);
      return Math.log(this.gain[unit]! / Math.sqrt(minutes));
    });
    const count = compiled.units.length;
    this.pressed = new Float64Array(count);
    this.key = new Float64Array(count);
    this.order = [...possible];
    this.isIn = new Uint8Array(count);
    const { previous } = compiled;
    this.before = previous.some((start) => start >= 0) ? previous.map((start) => Math.max(0, start)) : null;
  }

  /** One more whole plan; it lies in `placing`. */
  step(): Worth {
    this.tries++;
    const { dice, key, order, placing, isIn } = this;
    for (const unit of order) key[unit] = this.calm[unit]! + this.pressed[unit]! + 0.4 * (dice.share() - 0.5);
    order.sort((a, b) => key[b]! - key[a]! || a - b);
    placing.clear();
    placing.lines.backLate = dice.chance(0.5);
    isIn.fill(0);
    for (const unit of order) this.put(unit);
    this.learn();
    return worthPlaced(placing.taken, this.compiled);
  }

  private learn(): void {
    const { gain, isIn, pressed, possible } = this;
    let leftOut = 0;
    for (const unit of possible) if (isIn[unit] === 0) leftOut += gain[unit]!;
    for (const unit of possible) if (isIn[unit] === 0) pressed[unit]! += gain[unit]! / leftOut;
  }

  private put(unit: number): boolean {
    const { dice, units, isIn } = this;
    if (isIn[unit] === 1) return true;
    for (const other of this.compiled.units[unit]!.waitsFor) if (!this.put(other)) return false;
    const anyExtra = Number.POSITIVE_INFINITY;
    let done = false;
    if (this.before !== null && dice.chance(0.5)) done = units.place(unit, this.before, anyExtra);
    else if (dice.chance(0.2)) done = units.place(unit, this.someStart(), anyExtra);
    if (!done) done = units.place(unit, 0, 0) || (units.refusedCost < anyExtra && units.place(unit, 0, anyExtra));
    if (done) isIn[unit] = 1;
    return done;
  }

  private someStart(): Minute {
    const { stretches } = this.compiled;
    return stretches.length === 0 ? 0 : stretches[this.dice.below(stretches.length)]!.from;
  }
}
