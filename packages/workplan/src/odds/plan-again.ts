import type { Minute } from '../problem.ts';
import { type Compiled, type CompiledAspect, type CompiledStep, suitsHour } from '../search/compiled.ts';
import { firstLists, inOrder } from '../search/first-lists.ts';
import { Placing } from '../search/placing.ts';
import { ListPlacing, type StepList } from '../search/step-list.ts';
import { isDone, isOpen, type RunState } from './run-state.ts';

/** So often the needed jobs that a list missed are put ahead in it. */
const assumedRepairs = 2;

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** An hour of work that does not suit is seen this far ahead when the rest is laid again. Our assumption. [h] */
const assumedSeen_h = 2;
/** What finds no place so often running is given up for the day. Our assumption. */
const assumedMostFailures = 3;

/**
 * What is left of a plan laid again from a minute on, in a cheap form: the search's own placing, but of a few lists
 * instead of thousands. The first is the plan's order, nothing sooner than it was to be; where a needed job finds no
 * place in it, such jobs go ahead, and where that does not do, the lists that a search begins with are tried; the best
 * is taken. It reckons with likely times and with the weather as said, but for the hours at hand.
 */
export class PlanAgain {
  private readonly compiled: Compiled;
  private readonly steps: Writable<CompiledStep>[];
  private readonly aspects: Writable<CompiledAspect>[];
  private readonly left: Writable<Compiled>;
  private readonly placing: Placing;
  private readonly lists: ListPlacing;
  private readonly unitOf: Int32Array;
  private readonly isInside: readonly boolean[];
  private readonly extra: Float64Array;
  private readonly seen: Uint8Array;
  /** by unit: given up for today */
  private readonly dropped: Uint8Array;
  /** by unit: 1 where some list of this laying had a place for it */
  private readonly found: Uint8Array;
  /** by unit: how many layings running no list had */
  private readonly failed: Uint8Array;
  private readonly laid: Laid;
  private best: Tried | null = null;
  private readonly skips: Uint8Array;
  private readonly notBefore: Int32Array;

  constructor(compiled: Compiled) {
    this.compiled = compiled;
    this.steps = compiled.steps.map((step) => ({ ...step }));
    this.aspects = compiled.aspects.map((aspect) => ({ ...aspect }));
    this.left = { ...compiled, steps: this.steps, aspects: this.aspects };
    this.placing = new Placing(this.left);
    this.lists = new ListPlacing(this.left, this.placing);
    this.unitOf = Int32Array.from(compiled.steps, ({ job }) => compiled.jobs[job]!.unit);
    const inside = new Set(compiled.problem.zones.filter((zone) => zone.inside).map(({ id }) => id));
    this.isInside = compiled.problem.steps.map(({ zone }) => zone !== null && inside.has(zone));
    const [steps, units] = [compiled.steps.length, compiled.units.length];
    this.extra = new Float64Array(units);
    this.seen = new Uint8Array(units);
    this.dropped = new Uint8Array(units);
    this.found = new Uint8Array(units);
    this.failed = new Uint8Array(units);
    this.laid = {
      start: new Int32Array(steps),
      finish: new Int32Array(steps),
      batchOf: new Int32Array(steps),
      hands: new Array<readonly number[]>(steps).fill([]),
      lines: compiled.aspects.map(() => []),
    };
    this.skips = new Uint8Array(compiled.units.length);
    this.notBefore = new Int32Array(compiled.steps.length);
  }

  /** For a new run: nothing has been dropped yet. */
  begin(): void {
    this.dropped.fill(0);
    this.failed.fill(0);
  }

  /**
   * Lays what is open of some steps again.
   *
   * @param wanted     the steps of the plan, in the order it has them now
   * @param starts     by step: when that plan has it start
   * @param now        nothing is under change then
   * @param workedDay  the day at hand, where there has been work on it; −1: none yet
   */
  lay(state: RunState, wanted: readonly number[], starts: Int32Array, now: Minute, workedDay: number): Laid {
    this.takeStock(state, now);
    this.placing.beginAgain(workedDay);
    const { dropped, unitOf } = this;
    // what was given up is looked at again in the morning
    if (workedDay < 0) dropped.fill(0);
    const open = wanted.filter(
      (step) =>
        state.status[step] === isOpen && state.jobLost[this.steps[step]!.job] === 0 && dropped[unitOf[step]!] === 0,
    );
    this.best = null;
    this.found.fill(0);
    // what is late moves later; what is not late stays where it is, and the boat stands as she was to stand
    this.notBefore.fill(0);
    for (const step of open) if (starts[step]! <= this.compiled.horizon) this.notBefore[step] = starts[step]!;
    const shifted = this.look(open);
    if (shifted.missed > 0) {
      for (const step of open) if (shifted.missing.includes(unitOf[step]!)) this.notBefore[step] = 0;
      if (this.look(this.missedAhead(shifted)).missed > 0) this.layAfresh(open);
    }
    for (const unit of this.best!.missing) {
      if (this.found[unit] === 0) this.failed[unit]!++;
      if (this.failed[unit]! >= assumedMostFailures || this.compiled.units[unit]!.missedWeight === 0) dropped[unit] = 1;
    }
    return this.laid;
  }

  private missedAhead({ order, missing }: Tried): number[] {
    const { compiled, unitOf } = this;
    const ahead = (step: number) => {
      const unit = unitOf[step]!;
      return missing.includes(unit) && compiled.units[unit]!.missedWeight > 0;
    };
    return [...order.filter(ahead), ...order.filter((step) => !ahead(step))];
  }

  /** Tries the lists that a search begins with, each again with what it missed ahead, until nothing needed is missed. */
  private layAfresh(open: readonly number[]): void {
    this.notBefore.fill(0);
    const units = [...new Set(open.map((step) => this.unitOf[step]!))];
    const isOpenStep = new Set(open);
    for (const { order, extra } of firstLists(this.left, units, null)) {
      this.extra.set(extra);
      let tried = this.look([...order].filter((step) => isOpenStep.has(step)));
      for (let repairs = 0; repairs < assumedRepairs && tried.missed > 0; repairs++)
        tried = this.look(this.missedAhead(tried));
      if (tried.missed === 0) break;
    }
    this.extra.fill(0);
  }

  private look(order: readonly number[]): Tried {
    const { compiled, lists, unitOf } = this;
    const list: StepList = {
      order: inOrder(this.left, order, unitOf),
      notBefore: this.notBefore,
      extra: this.extra,
      skips: this.skips,
      backLate: true,
    };
    lists.place(list, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
    const missing: number[] = [];
    let [weight, missed] = [0, 0];
    this.seen.fill(0);
    for (const step of order) {
      const unit = unitOf[step]!;
      if (this.seen[unit] === 1) continue;
      this.seen[unit] = 1;
      const { weight: worth, missedWeight } = compiled.units[unit]!;
      if (lists.out[unit] === 0) {
        weight += worth;
        this.found[unit] = 1;
        this.failed[unit] = 0;
      } else {
        missed += missedWeight;
        missing.push(unit);
      }
    }
    const tried = { order, missing, weight, missed };
    if (this.best === null || isBetter(tried, this.best)) {
      this.best = tried;
      this.keep();
    }
    return tried;
  }

  private keep(): void {
    const { laid } = this;
    const { taken } = this.placing;
    laid.start.set(taken.start);
    laid.finish.set(taken.finish);
    laid.batchOf.set(taken.batchOf);
    for (let step = 0; step < laid.hands.length; step++) laid.hands[step] = taken.hands[step]!;
    for (let aspect = 0; aspect < laid.lines.length; aspect++) laid.lines[aspect] = [...taken.lines[aspect]!];
  }

  /** Writes how things stand in a run into the problem that is laid again. */
  private takeStock(state: RunState, now: Minute): void {
    const { compiled, steps } = this;
    this.left.now = now;
    this.left.stretches = compiled.stretches
      .filter(({ to }) => to > now)
      .map((stretch) => (stretch.from >= now ? stretch : { ...stretch, from: now }));
    for (const aspect of this.aspects) aspect.initial = state.standing[aspect.index]!;
    for (const step of compiled.steps) {
      const mine = steps[step.index]!;
      const status = state.status[step.index]!;
      if (status === isOpen) {
        const left = state.left[step.index]!;
        mine.fixed = null;
        mine.source = step.source;
        mine.minutes = left === 1 ? step.minutes : Math.max(step.hands > 0 ? 1 : 0, Math.round(step.minutes * left));
        mine.earliest = Math.max(now, step.earliest, this.suitedFrom(step, state, now));
        continue;
      }
      const [start, finish] = [state.start[step.index]!, state.finish[step.index]!];
      mine.fixed = { start, finish, hands: state.hands[step.index]! };
      if (status === isDone || step.fixed !== null) mine.source = step.source;
      else mine.source = { ...step.source, progress: { kind: 'under way', start, expectedFinish: finish, hands: [] } };
    }
  }

  /** From when on the hours at hand suit a step, as they are in the run. */
  private suitedFrom({ index, source }: CompiledStep, state: RunState, now: Minute): Minute {
    const hour = Math.floor(now / 60);
    const kind = { needs: source.needs, inside: this.isInside[index]! };
    let from = now;
    for (let at = hour; at < Math.min(state.hours.length, hour + assumedSeen_h); at++)
      if (!suitsHour(kind, state.hours[at]!)) from = (at + 1) * 60;
    return from;
  }
}

interface Tried {
  readonly order: readonly number[];
  /** units that found no place */
  readonly missing: readonly number[];
  /** of the jobs that found one, and of needed ones that did not */
  readonly weight: number;
  readonly missed: number;
}

const isBetter = (a: Tried, b: Tried) => a.missed < b.missed || (a.missed === b.missed && a.weight > b.weight);

/** Where things lie, by step; a finish of −1: nowhere. `lines`: the set-ups with their changes. */
export interface Laid {
  readonly start: Int32Array;
  readonly finish: Int32Array;
  readonly batchOf: Int32Array;
  readonly hands: (readonly number[])[];
  readonly lines: Placing['taken']['lines'];
}
