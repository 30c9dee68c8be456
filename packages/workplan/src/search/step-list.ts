import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Placing } from './placing.ts';

/** An order of steps with wishes: what a plan is made from. Each step comes after those it waits for. */
export interface StepList {
  readonly order: Int32Array;
  /** by step: not before this minute */
  readonly notBefore: Int32Array;
  /** by unit: minutes more of set-up changes that each of its steps may cost at first; they are raised where needed */
  readonly extra: Float64Array;
  /** by unit: 1 to leave it out without trying */
  readonly skips: Uint8Array;
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
  /** by unit: the extra minutes that the last list came to allow it */
  readonly extra: Float64Array;
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

  /**
   * Places a list. Gives up, and returns false, once so much is left out that the plan would do less weight, or miss
   * more, than asked for.
   */
  place(list: StepList, leastWeight: number, mostMissed: number): boolean {
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
      out[unit] = list.skips[unit]!;
      extra[unit] = list.extra[unit]!;
    }
    let [weight, missed] = [0, 0];
    for (const job of compiled.jobs) {
      if (job.unit < 0 || out[job.unit] === 0) weight += job.weight;
      else if (job.needed) missed += job.weight;
    }
    // sums in another order may differ in the last digits
    const [least, most] = [leastWeight - 1e-9 * weight, mostMissed + 1e-9 * weight];
    if (weight < least || missed > most) return false;
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
      } else {
        out[unit] = 1;
        weight -= compiled.units[unit]!.weight;
        missed += compiled.units[unit]!.missedWeight;
        if (weight < least || missed > most) return false;
      }
      taken.takeBack(marks[first[unit]!]!);
      at = first[unit]! - 1;
    }
    return true;
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
