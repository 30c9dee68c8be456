import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Placing } from './placing.ts';

/** An order of steps with wishes: what a plan is made from. Each step comes after those it waits for. */
export interface StepList {
  readonly order: Int32Array;
  /** by step: not before this minute */
  readonly notBefore: Int32Array;
  /** by unit: 1 to take the first time that fits even where a later one would save changing a set-up */
  readonly soon: Uint8Array;
  /** where a set-up can be changed back at any time in a gap: as late as it can, or as soon */
  readonly backLate: boolean;
}

/**
 * Makes a plan of a list: steps are placed in its order; a unit of jobs one of whose steps finds no place is taken
 * out whole and what came after its first step is placed again without it.
 */
export class ListPlacing {
  private readonly compiled: Compiled;
  private readonly placing: Placing;
  private readonly marks: Int32Array;
  private readonly position: Int32Array;
  private readonly notBefore: Int32Array;
  private readonly first: Int32Array;
  private readonly extra: Float64Array;
  private readonly refused: Float64Array;
  private readonly tries: Uint8Array;
  private readonly unitOf: Int32Array;
  /** by unit: 1 where the last list left it out */
  readonly out: Uint8Array;

  constructor(compiled: Compiled, placing: Placing) {
    this.compiled = compiled;
    this.placing = placing;
    const [steps, units] = [compiled.steps.length, compiled.units.length];
    this.marks = new Int32Array(steps + 1);
    this.position = new Int32Array(steps).fill(-1);
    this.notBefore = new Int32Array(steps);
    this.first = new Int32Array(units);
    this.extra = new Float64Array(units);
    this.refused = new Float64Array(units);
    this.tries = new Uint8Array(units);
    this.out = new Uint8Array(units);
    this.unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
  }

  place(list: StepList): void {
    const { compiled, placing, marks, position, notBefore, first, extra, refused, tries, unitOf, out } = this;
    const { taken } = placing;
    const { order } = list;
    placing.clear();
    placing.lines.backLate = list.backLate;
    notBefore.set(list.notBefore);
    out.fill(1);
    tries.fill(0);
    refused.fill(Number.POSITIVE_INFINITY);
    position.fill(-1);
    for (let at = order.length - 1; at >= 0; at--) {
      const unit = unitOf[order[at]!]!;
      position[order[at]!] = at;
      first[unit] = at;
      out[unit] = 0;
      extra[unit] = list.soon[unit] === 1 ? Number.POSITIVE_INFINITY : 0;
    }
    let pushes = 0;
    // every return to an earlier step either pushes a step back or takes a unit a level on, and both are bounded
    const mostPushes = 24 + order.length;
    for (let at = 0; at < order.length; at++) {
      const index = order[at]!;
      const unit = unitOf[index]!;
      marks[at] = taken.mark();
      if (out[unit] === 1) continue;
      const { before } = compiled.steps[index]!;
      const ready = before.every((tie) => taken.isPlaced(tie.before));
      if (ready) {
        if (placing.placeStep(index, notBefore[index]!, extra[unit]!)) continue;
        if (placing.refusedCost < refused[unit]!) refused[unit] = placing.refusedCost;
        const back = pushes < mostPushes ? this.pushBack(index, at, extra[unit]!) : -1;
        if (back >= 0) {
          pushes++;
          taken.takeBack(marks[back]!);
          at = back - 1;
          continue;
        }
      }
      if (
        ready &&
        tries[unit]! < 3 &&
        refused[unit]! < Number.POSITIVE_INFINITY &&
        extra[unit]! < Number.POSITIVE_INFINITY
      ) {
        extra[unit] = tries[unit]! < 2 ? refused[unit]! : Number.POSITIVE_INFINITY;
        tries[unit]!++;
        refused[unit] = Number.POSITIVE_INFINITY;
      } else out[unit] = 1;
      taken.takeBack(marks[first[unit]!]!);
      at = first[unit]! - 1;
    }
  }

  /**
   * Where a step is too late after one it follows, wishes that one later, if that would help; returns the place in
   * the list to go on from, −1 where it would not help.
   */
  private pushBack(index: number, at: number, extra: Minute): number {
    const { placing, position, notBefore } = this;
    const { taken } = placing;
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
      const place = position[tie.before]!;
      if (place < 0 || place >= at) return -1;
      notBefore[tie.before] = taken.start[tie.before]! + Math.max(1, tie.wait < 0 ? short : 1);
      return place;
    }
    return -1;
  }
}
