import type { Minute } from '../problem.ts';
import type { Compiled, Tie } from './compiled.ts';
import type { Dice } from './dice.ts';

/** What places single steps beside what lies already, and takes back what it placed last. */
export interface StepPlacing {
  /** by step: its start where it is placed */
  readonly start: Int32Array;
  /** after a step that found no start: the least extra set-up minutes that were refused; Infinity: none were */
  readonly refusedCost: Minute;
  mark(): number;
  takeBackTo(mark: number): void;
  /** whether it is placed or has begun */
  isPlaced(step: number): boolean;
  /** when a step that is placed or begun, or its wait, is over as a tie asks */
  endOf(tie: Tie): Minute;
  placeStep(index: number, notBefore: Minute, extra: Minute, ignoreGreatest?: boolean): boolean;
}

/** Places all the open steps of a unit beside what lies already, or none of them. */
export class UnitPlacing {
  private readonly compiled: Compiled;
  private readonly steps: StepPlacing;
  private readonly marks: Int32Array;
  private readonly notBefore: Int32Array;
  /** by unit: its open steps placed so far */
  private readonly placed: Int32Array;
  /** the least extra set-up minutes refused by the last place; Infinity: none were */
  refusedCost = Number.POSITIVE_INFINITY;

  constructor(compiled: Compiled, steps: StepPlacing) {
    this.compiled = compiled;
    this.steps = steps;
    this.marks = new Int32Array(compiled.steps.length);
    this.notBefore = new Int32Array(compiled.steps.length);
    this.placed = new Int32Array(compiled.units.length);
  }

  /**
   * @param from   no step sooner than this; or by step, the same
   * @param extra  minutes more of set-up changes that each step may cost
   * @returns false, with nothing taken, where one of its steps finds no start
   */
  place(unit: number, from: Minute | Int32Array, extra: Minute): boolean {
    const { compiled, steps, marks, notBefore } = this;
    const { open } = compiled.units[unit]!;
    const begin = steps.mark();
    for (let at = 0; at < open.length; at++) notBefore[open[at]!] = typeof from === 'number' ? from : from[open[at]!]!;
    this.refusedCost = Number.POSITIVE_INFINITY;
    let pushes = 0;
    for (let at = 0; at < open.length; at++) {
      const index = open[at]!;
      marks[at] = steps.mark();
      if (!this.isReady(index)) break;
      if (steps.placeStep(index, notBefore[index]!, extra)) {
        if (at === open.length - 1) return true;
        continue;
      }
      this.refusedCost = Math.min(this.refusedCost, steps.refusedCost);
      const back = pushes < 12 ? this.pushBack(open, at, extra) : -1;
      if (back < 0) break;
      pushes++;
      steps.takeBackTo(marks[back]!);
      at = back - 1;
    }
    steps.takeBackTo(begin);
    return open.length === 0;
  }

  /**
   * Places all the open steps of some units, or none of them: each step at its earliest, whose turn it is by chance,
   * so that the steps of one lie among those of the others. No step is pushed back where another comes too late after it.
   *
   * @param extra  minutes more of set-up changes that each step may cost
   */
  placeAmong(units: readonly number[], extra: Minute, dice: Dice): boolean {
    const { compiled, steps, placed } = this;
    const begin = steps.mark();
    let left = 0;
    for (let k = 0; k < units.length; k++) {
      placed[units[k]!] = 0;
      left += compiled.units[units[k]!]!.open.length;
    }
    for (; left > 0; left--) {
      const unit = this.oneOf(units, dice.below(left));
      const index = compiled.units[unit]!.open[placed[unit]!++]!;
      if (this.isReady(index) && steps.placeStep(index, 0, extra)) continue;
      steps.takeBackTo(begin);
      return false;
    }
    return true;
  }

  /** The unit that a step still to be placed belongs to, counted through all of them. */
  private oneOf(units: readonly number[], count: number): number {
    let at = 0;
    let before = count;
    for (;;) {
      const unit = units[at++]!;
      const left = this.compiled.units[unit]!.open.length - this.placed[unit]!;
      if (before < left) return unit;
      before -= left;
    }
  }

  /** Whether all that a step comes after is placed or begun. */
  private isReady(index: number): boolean {
    const { before } = this.compiled.steps[index]!;
    for (let k = 0; k < before.length; k++) if (!this.steps.isPlaced(before[k]!.before)) return false;
    return true;
  }

  /**
   * Where a step is too late after one of its own unit, wishes that one later; returns its place to go on from, −1
   * where that would not help.
   */
  private pushBack(open: readonly number[], at: number, extra: Minute): number {
    const { steps, notBefore } = this;
    const index = open[at]!;
    const { before } = this.compiled.steps[index]!;
    if (!before.some(setsLatest)) return -1;
    const mark = steps.mark();
    const found = steps.placeStep(index, notBefore[index]!, extra, true);
    const start = steps.start[index]!;
    steps.takeBackTo(mark);
    if (!found) return -1;
    for (const tie of before) {
      if (!setsLatest(tie)) continue;
      const short = start - (steps.endOf(tie) + tie.greatest);
      if (short <= 0) continue;
      const place = open.indexOf(tie.before);
      if (place < 0 || place >= at) return -1;
      notBefore[tie.before] = steps.start[tie.before]! + Math.max(1, tie.wait < 0 ? short : 1);
      return place;
    }
    return -1;
  }
}

/** Whether a tie sets a latest start that no abrading helps over. */
function setsLatest({ greatest, abrade }: Tie): boolean {
  return greatest >= 0 && abrade < 0;
}
