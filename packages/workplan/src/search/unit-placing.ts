import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Placing } from './placing.ts';

/** Places all the open steps of a unit beside what lies already, or none of them. */
export class UnitPlacing {
  private readonly compiled: Compiled;
  private readonly placing: Placing;
  private readonly marks: Int32Array;
  private readonly notBefore: Int32Array;
  /** the least extra set-up minutes refused by the last place; Infinity: none were */
  refusedCost = Number.POSITIVE_INFINITY;

  constructor(compiled: Compiled, placing: Placing) {
    this.compiled = compiled;
    this.placing = placing;
    this.marks = new Int32Array(compiled.steps.length);
    this.notBefore = new Int32Array(compiled.steps.length);
  }

  /**
   * @param from   no step sooner than this; or by step, the same
   * @param extra  minutes more of set-up changes that each step may cost
   * @returns false, with nothing taken, where one of its steps finds no start
   */
  place(unit: number, from: Minute | Int32Array, extra: Minute): boolean {
    const { compiled, placing, marks, notBefore } = this;
    const { taken } = placing;
    const { open } = compiled.units[unit]!;
    const start = taken.mark();
    for (const step of open) notBefore[step] = typeof from === 'number' ? from : from[step]!;
    this.refusedCost = Number.POSITIVE_INFINITY;
    let pushes = 0;
    for (let at = 0; at < open.length; at++) {
      const index = open[at]!;
      marks[at] = taken.mark();
      if (!compiled.steps[index]!.before.every((tie) => taken.isPlaced(tie.before))) break;
      if (placing.placeStep(index, notBefore[index]!, extra)) {
        if (at === open.length - 1) return true;
        continue;
      }
      this.refusedCost = Math.min(this.refusedCost, placing.refusedCost);
      const back = pushes < 12 ? this.pushBack(open, at, extra) : -1;
      if (back < 0) break;
      pushes++;
      taken.takeBack(marks[back]!);
      at = back - 1;
    }
    taken.takeBack(start);
    return open.length === 0;
  }

  /**
   * Where a step is too late after one of its own unit, wishes that one later; returns its place to go on from, −1
   * where that would not help.
   */
  private pushBack(open: readonly number[], at: number, extra: Minute): number {
    const { placing, notBefore } = this;
    const { taken } = placing;
    const index = open[at]!;
    const bounds = this.compiled.steps[index]!.before.filter((tie) => tie.greatest >= 0 && tie.abrade < 0);
    if (bounds.length === 0) return -1;
    const mark = taken.mark();
    const found = placing.placeStep(index, notBefore[index]!, extra, true);
    const start = taken.start[index]!;
    taken.takeBack(mark);
    if (!found) return -1;
    for (const tie of bounds) {
      const short = start - (placing.endOf(tie) + tie.greatest);
      if (short <= 0) continue;
      const place = open.indexOf(tie.before);
      if (place < 0 || place >= at) return -1;
      notBefore[tie.before] = taken.start[tie.before]! + Math.max(1, tie.wait < 0 ? short : 1);
      return place;
    }
    return -1;
  }
}
