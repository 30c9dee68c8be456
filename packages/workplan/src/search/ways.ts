import type { Minute } from '../problem.ts';
import type { Compiled, CompiledStep, Tie } from './compiled.ts';
import type { Batch } from './taken.ts';

/** One way to do a step in one stretch of starts: sharing a batch or not, abrading first or not. */
export interface Way {
  /** the step whose batch it shares; −1: none */
  readonly batchOf: number;
  readonly abrade: Minute;
  readonly lasts: Minute;
  readonly from: Minute;
  /** the last start, as far as what it comes after and the batch go */
  readonly to: Minute;
}

/** The ways to do a step after what it comes after, which must be placed or begun. */
export class Ways {
  /** of the step looked at last */
  from: Minute = 0;
  to: Minute = 0;
  private abrades = false;
  private readonly compiled: Compiled;
  private readonly finish: Int32Array;
  private readonly batches: readonly (readonly Batch[])[];

  /**
   * @param finish   by step: when it is over where it is placed, else −1
   * @param batches  by mix: those that lie ready
   */
  constructor(compiled: Compiled, finish: Int32Array, batches: readonly (readonly Batch[])[]) {
    this.compiled = compiled;
    this.finish = finish;
    this.batches = batches;
  }

  isPlaced(step: number): boolean {
    return this.finish[step]! >= 0 || this.compiled.steps[step]!.fixed !== null;
  }

  /** When a step that is placed or begun, or its wait, is over as a tie asks. */
  endOf(tie: Tie): Minute {
    const { compiled } = this;
    const before = compiled.steps[tie.before]!;
    const finish = before.fixed === null ? this.finish[tie.before]! : before.fixed.finish;
    if (tie.wait < 0 || finish < 0) return finish;
    const over = before.waits[tie.wait]!.cure.finish(finish);
    return over < 0 ? compiled.horizon + 1 : over;
  }

  /** @param ignoreGreatest  as if nothing it comes after set a latest start */
  of(step: CompiledStep, notBefore: Minute, ignoreGreatest: boolean): readonly Way[] {
    const hasOne = this.look(step, notBefore, ignoreGreatest);
    const { from, to } = this;
    if (!hasOne) return this.severalOf(step, from, to, this.abrades);
    return from > to ? [] : [{ batchOf: -1, abrade: 0, lasts: step.minutes, from, to }];
  }

  /**
   * Looks for the starts of a step. Returns whether there is but one way, which takes the step's own minutes; it starts
   * from `from` to `to` then (none where `to` is the sooner), which saves a list for each of many thousand steps.
   */
  look(step: CompiledStep, notBefore: Minute, ignoreGreatest: boolean): boolean {
    const { before } = step;
    let from = step.earliest > notBefore ? step.earliest : notBefore;
    let to = this.compiled.horizon;
    let abrades = false;
    for (let k = 0; k < before.length; k++) {
      const tie = before[k]!;
      const end = this.endOf(tie);
      if (end + tie.least > from) from = end + tie.least;
      if (tie.greatest < 0) continue;
      if (tie.abrade >= 0) abrades = true;
      else if (!ignoreGreatest && end + tie.greatest < to) to = end + tie.greatest;
    }
    const isOne = step.mix < 0 && !abrades;
    const last = step.latestFinish - step.minutes;
    this.from = from;
    this.to = isOne && last < to ? last : to;
    this.abrades = abrades;
    return isOne;
  }

  private severalOf(step: CompiledStep, from: Minute, to: Minute, abrades: boolean): Way[] {
    const ways: Way[] = [];
    if (!abrades) {
      this.add(ways, step, from, to, 0);
      return ways;
    }
    const windows = step.before
      .filter((tie) => tie.greatest >= 0 && tie.abrade >= 0)
      .map((tie) => ({ end: this.endOf(tie) + tie.greatest, abrade: tie.abrade }))
      .sort((a, b) => a.end - b.end);
    let abrade = 0;
    let at = from;
    for (const window of windows) {
      if (window.end >= at) {
        this.add(ways, step, at, Math.min(to, window.end), abrade);
        at = window.end + 1;
      }
      abrade = Math.max(abrade, window.abrade);
    }
    this.add(ways, step, at, to, abrade);
    return ways;
  }

  /** Adds the ways to do a step with so much abrading: with a batch of its own, and with each that lies ready. */
  private add(ways: Way[], step: CompiledStep, from: Minute, to: Minute, abrade: Minute): void {
    const whole = step.minutes + abrade;
    const last = Math.min(to, step.latestFinish - whole);
    if (from <= last) ways.push({ batchOf: -1, abrade, lasts: whole, from, to: last });
    if (step.mix < 0) return;
    const batches = this.batches[step.mix]!;
    const lasts = whole - step.mixing;
    for (let k = 0; k < batches.length; k++) {
      const { step: batchOf, mixed } = batches[k]!;
      const since = Math.max(from, mixed);
      const until = Math.min(to, step.latestFinish - lasts, mixed + step.potLife - lasts);
      if (since <= until) ways.push({ batchOf, abrade, lasts, from: since, to: until });
    }
  }
}
