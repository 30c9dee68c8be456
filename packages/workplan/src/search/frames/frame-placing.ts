import type { Minute } from '../../problem.ts';
import type { Compiled, CompiledStep, Tie } from '../compiled.ts';
import type { Dice } from '../dice.ts';
import type { Lay } from '../kept-steps.ts';
import type { Placing } from '../placing.ts';
import type { Batch, Laid } from '../taken.ts';
import { type StepPlacing, UnitPlacing } from '../unit-placing.ts';
import { type Way, Ways } from '../ways.ts';
import { AllowedStarts } from './allowed-starts.ts';
import { DustAndWet } from './dust-and-wet.ts';
import type { Frame } from './frame.ts';
import { FreeHands } from './free-hands.ts';
import { ThingsLeft } from './things-left.ts';

/**
 * Places steps as `Placing` does, each at its earliest start, but among set-up changes that stand fast: some ten times
 * as quick, for what days, weather and set-ups allow is the same however the steps lie, and is looked up.
 */
export class FramePlacing implements StepPlacing {
  readonly compiled: Compiled;
  /** by step; −1: not placed */
  readonly start: Int32Array;
  readonly finish: Int32Array;
  /** by step: the one whose batch it shares; −1: none */
  readonly batchOf: Int32Array;
  readonly abrade: Int32Array;
  readonly handsOf: (readonly number[])[];
  /** how many starts have been looked for so far */
  effort = 0;
  /** no set-up change is ever refused: none is made */
  readonly refusedCost = Number.POSITIVE_INFINITY;
  private frame: Frame = [];
  private readonly allowed: AllowedStarts;
  private readonly hands: FreeHands;
  private readonly things: ThingsLeft;
  private readonly air: DustAndWet;
  /** by mix, in order of the steps that mixed them */
  private readonly batches: readonly Batch[][];
  private readonly ways: Ways;
  private readonly units: UnitPlacing;
  /** the steps placed since the last `keep`, in order */
  private readonly trail: number[] = [];

  /** @param placing  of the same problem; it is cleared */
  constructor(compiled: Compiled, placing: Placing) {
    placing.clear();
    const { taken } = placing;
    const count = compiled.steps.length;
    this.compiled = compiled;
    this.start = new Int32Array(count).fill(-1);
    this.finish = new Int32Array(count).fill(-1);
    this.batchOf = new Int32Array(count).fill(-1);
    this.abrade = new Int32Array(count);
    this.handsOf = new Array<readonly number[]>(count).fill([]);
    this.allowed = new AllowedStarts(compiled);
    this.hands = new FreeHands(compiled, taken.busy);
    this.things = new ThingsLeft(taken);
    this.air = new DustAndWet(compiled, taken);
    this.batches = compiled.problem.mixes.map(() => []);
    this.ways = new Ways(compiled, this.finish, this.batches);
    this.units = new UnitPlacing(compiled, this);
    this.setFrame(compiled.aspects.map(() => []));
  }

  /** Forgets all steps and lets these changes of set-up stand. */
  setFrame(frame: Frame): void {
    this.clear();
    if (frame === this.frame) return;
    this.frame = frame;
    this.allowed.setFrame(frame);
    this.hands.setFrame(frame);
  }

  /** Forgets all steps. */
  clear(): void {
    const { steps } = this.compiled;
    const { start, finish } = this;
    for (let index = 0; index < finish.length; index++) {
      if (finish[index]! < 0) continue;
      this.things.giveBack(steps[index]!, start[index]!, finish[index]!);
      start[index] = -1;
      finish[index] = -1;
    }
    this.keep();
    this.hands.clear();
    this.air.clear();
    for (let mix = 0; mix < this.batches.length; mix++) while (this.batches[mix]!.length > 0) this.batches[mix]!.pop();
  }

  /** How the placed steps lie now, and the frame. */
  lay(): Lay {
    const { compiled, start, batchOf, abrade, handsOf, allowed } = this;
    return {
      steps: Array.from(this.finish, (finish, step) => {
        if (finish < 0) return null;
        const begins = start[step]!;
        // a step of no minutes may lie at the end of a stretch
        const { day } = compiled.stretches[allowed.stretchAt(finish > begins ? begins : begins - 1)]!;
        const [shares, abrades, hands] = [batchOf[step]!, abrade[step]!, handsOf[step]!];
        return { start: begins, finish, day, batchOf: shares, abrade: abrades, hands };
      }),
      frame: this.frame,
    };
  }

  isPlaced(step: number): boolean {
    return this.ways.isPlaced(step);
  }

  endOf(tie: Tie): Minute {
    return this.ways.endOf(tie);
  }

  mark(): number {
    return this.trail.length;
  }

  /** Takes out what was placed since a mark. */
  takeBackTo(mark: number): void {
    while (this.trail.length > mark) this.takeOut(this.trail.pop()!);
  }

  /** Has what is placed now stay: marks begin anew. */
  keep(): void {
    while (this.trail.length > 0) this.trail.pop();
  }

  /** Places all the open steps of a unit from a minute on, or by step from one each; false: none of them. */
  placeUnit(unit: number, from: Minute | Int32Array): boolean {
    return this.units.place(unit, from, 0);
  }

  /** Places all the open steps of some units among each other, by chance; false: none of them. */
  placeAmong(units: readonly number[], dice: Dice): boolean {
    return this.units.placeAmong(units, 0, dice);
  }

  /** Places one step at its earliest start from `notBefore` on. What it comes after must be placed or begun. */
  placeStep(index: number, notBefore: Minute, _extra: Minute, ignoreGreatest = false): boolean {
    this.effort++;
    const step = this.compiled.steps[index]!;
    if (!this.ways.look(step, notBefore, ignoreGreatest)) return this.placeInSomeWay(step, notBefore, ignoreGreatest);
    const { from, to } = this.ways;
    const lasts = step.minutes;
    const start = this.earliest(step, lasts, from, to, 0);
    if (start < 0) return false;
    this.putBack(index, start, start + lasts, -1, 0, this.hands.chosen(step, start, lasts));
    return true;
  }

  private placeInSomeWay(step: CompiledStep, notBefore: Minute, ignoreGreatest: boolean): boolean {
    const ways = this.ways.of(step, notBefore, ignoreGreatest);
    let best: Way | null = null;
    let bestStart = 0;
    let soonest = Number.POSITIVE_INFINITY;
    for (let k = 0; k < ways.length; k++) {
      const way = ways[k]!;
      if (way.from + way.lasts >= soonest) continue;
      const start = this.earliest(step, way.lasts, way.from, way.to, way.abrade);
      if (start < 0 || start + way.lasts >= soonest) continue;
      soonest = start + way.lasts;
      bestStart = start;
      best = way;
    }
    if (best === null) return false;
    const hands = this.hands.chosen(step, bestStart, best.lasts);
    this.putBack(step.index, bestStart, bestStart + best.lasts, best.batchOf, best.abrade, hands);
    return true;
  }

  /** The earliest start in a way's window at which the step fits; −1: none. */
  private earliest(step: CompiledStep, lasts: Minute, from: Minute, to: Minute, abrade: Minute): Minute {
    const { allowed, hands, things, air } = this;
    let start = from;
    while (start <= to) {
      start = allowed.next(step, lasts, start, to);
      if (start > to) return -1;
      let next = hands.next(step, start, lasts);
      if (next === start) {
        next = things.hinders(step, start, start + lasts);
        if (next < 0) next = air.hinders(step, start, start + lasts, abrade);
        if (next < 0) return start;
      }
      start = next > start ? next : start + 1;
    }
    return -1;
  }

  /** Lays a step where it lay in a plan of this frame; nothing is asked. */
  layStep(index: number, { start, finish, batchOf, abrade, hands }: Laid): void {
    this.putBack(index, start, finish, batchOf, abrade, hands);
  }

  /** Takes what a step takes at a start at which it fits; nothing is asked. */
  putBack(
    index: number,
    start: Minute,
    finish: Minute,
    batchOf: number,
    abrade: Minute,
    hands: readonly number[],
  ): void {
    const step = this.compiled.steps[index]!;
    this.hands.occupy(hands, start, finish);
    this.things.take(step, start, finish);
    this.air.add(step, start, finish, abrade);
    if (step.mix >= 0 && batchOf < 0) addBatch(this.batches[step.mix]!, index, start + abrade + step.mixing);
    this.start[index] = start;
    this.finish[index] = finish;
    this.batchOf[index] = batchOf;
    this.abrade[index] = abrade;
    this.handsOf[index] = hands;
    this.trail.push(index);
  }

  /** Takes out a step that was there when `keep` was last called, whatever came in before or after it. */
  takeOut(index: number): void {
    const step = this.compiled.steps[index]!;
    const start = this.start[index]!;
    const finish = this.finish[index]!;
    this.hands.free(this.handsOf[index]!, start, finish);
    this.things.giveBack(step, start, finish);
    this.air.remove(step, this.abrade[index]!);
    if (step.mix >= 0 && this.batchOf[index]! < 0) removeBatch(this.batches[step.mix]!, index);
    this.start[index] = -1;
    this.finish[index] = -1;
  }
}

/** Adds a batch so that the order of batches is the same in whatever order their steps came in. */
function addBatch(batches: Batch[], step: number, mixed: Minute): void {
  const batch = { step, mixed };
  batches.push(batch);
  let at = batches.length - 1;
  for (; at > 0 && batches[at - 1]!.step > step; at--) batches[at] = batches[at - 1]!;
  batches[at] = batch;
}

function removeBatch(batches: Batch[], step: number): void {
  let at = 0;
  while (batches[at]!.step !== step) at++;
  for (; at + 1 < batches.length; at++) batches[at] = batches[at + 1]!;
  batches.pop();
}
