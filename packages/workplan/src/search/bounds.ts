import type { Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import type { Alone } from './alone.ts';
import { type Goal, JobCases } from './bound/job-cases.ts';
import { type Pause, PriceList } from './bound/price-list.ts';
import { type SupplyBound, supplyBound } from './bound/supplies.ts';
import { workMinutes } from './bound/work-minutes.ts';
import type { Compiled } from './compiled.ts';
import { leastSetUpMinutes } from './set-up-bound.ts';

/**
 * What no plan can better, in the order of worth: each bound holds for plans as good as can be in those before it.
 * The first bounds are had at once; `lookCloser` brings them down, a little each time.
 */
export class Bounds {
  /** least weight of needed jobs left out, as far as is known */
  missed: number;
  /** the same where each job is looked at alone: a plan that misses no more holds all of `needed` */
  private readonly missedAlone: number;
  /** weight of all jobs that are not known to be impossible */
  private readonly total: number;
  private readonly compiled: Compiled;
  private readonly alone: Alone;
  private readonly possible: readonly number[];
  private readonly needed: readonly number[];
  private closer: CloserLook | null = null;
  private readonly ofAll: { readonly setUp_min: Minute; readonly lastFinish: Minute };
  private readonly ofNeeded: { readonly setUp_min: Minute; readonly lastFinish: Minute };

  constructor(compiled: Compiled, alone: Alone, possible: readonly number[]) {
    this.compiled = compiled;
    this.alone = alone;
    this.possible = possible;
    // in the order of the jobs, as `worthOf` adds, so that equal sets of jobs have equal sums
    let [missed, total] = [0, 0];
    for (const job of compiled.jobs) {
      if (job.unit < 0 || alone.possible[job.unit]) total += job.weight;
      else if (job.needed) missed += job.weight;
    }
    this.missed = missed;
    this.missedAlone = missed;
    this.total = total;
    const needed = new Set<number>();
    const add = (unit: number) => {
      if (needed.has(unit)) return;
      needed.add(unit);
      for (const other of compiled.units[unit]!.waitsFor) add(other);
    };
    for (const unit of possible) if (compiled.units[unit]!.missedWeight > 0) add(unit);
    this.needed = [...needed];
    this.ofAll = this.boundsWith(possible);
    this.ofNeeded = this.boundsWith(this.needed);
  }

  /** Weight that no plan exceeds that misses as little as one of this worth. */
  weightFor(worth: Worth | null): number {
    const { closer, total } = this;
    if (worth === null || closer === null) return total;
    const { weight, supplies } = closer;
    let bound = total;
    if (supplies !== null)
      bound = Math.min(bound, worth.missed === this.missedAlone ? supplies.weightWithNeeded : supplies.weight);
    if (weight !== null && worth.missed <= weight.missed) bound = Math.min(bound, weight.cases.bound);
    return bound <= worth.weight + 1e-9 * total ? worth.weight : bound;
  }

  /**
   * Looks closer at what is still open about the bounds, as far as concerns a plan of this worth, in so many slices,
   * each of a few milliseconds.
   */
  lookCloser(worth: Worth, slices: number): void {
    if (worth.missed === this.missed && worth.weight === this.total) return;
    this.closer ??= new CloserLook(this.compiled, this.alone, this.needed);
    for (let n = 0; n < slices; n++) {
      if (worth.missed === this.missed && worth.weight === this.weightFor(worth)) return;
      this.closer.slice(worth, this.missed, this.missedAlone);
      const least = this.closer.leastMissed(worth);
      if (least !== null) this.missed = least;
    }
  }

  /** Nothing misses less, does more weight, or does the same with less set-up changing. */
  isProved(worth: Worth): boolean {
    return (
      worth.missed === this.missed &&
      worth.weight === this.weightFor(worth) &&
      worth.setUp_min <= this.restOf(worth).setUp_min
    );
  }

  /** Nothing as good in all that goes before finishes sooner. */
  isSoonest(worth: Worth): boolean {
    return worth.lastFinish <= this.restOf(worth).lastFinish;
  }

  private restOf(worth: Worth) {
    if (worth.weight === this.total) return this.ofAll;
    return worth.missed === this.missedAlone ? this.ofNeeded : nothingSaid;
  }

  private boundsWith(units: readonly number[]) {
    let lastFinish = 0;
    for (const unit of units)
      for (const step of this.compiled.units[unit]!.open) {
        const { minutes, mixing } = this.compiled.steps[step]!;
        lastFinish = Math.max(lastFinish, this.alone.earliest[step]! + minutes - mixing);
      }
    return { setUp_min: leastSetUpMinutes(this.compiled, units), lastFinish };
  }
}

const nothingSaid = { setUp_min: 0, lastFinish: 0 };

type Work<Result> = Generator<Pause, Result, undefined>;

/** The closer look: first at sums of minutes, then by prices of hours at what must be missed, and at weight. */
class CloserLook {
  weight: { readonly missed: number; readonly cases: JobCases; readonly work: Work<void> } | null = null;
  private missed: { readonly worth: number; readonly cases: JobCases; readonly work: Work<void> } | null = null;
  supplies: SupplyBound | null = null;
  private list: PriceList | null = null;
  private first: Float64Array | null = null;
  private readonly making: Work<void>;
  private readonly compiled: Compiled;
  private readonly alone: Alone;
  private readonly needed: readonly number[];
  private turn = 0;
  private midst: Work<void> | null = null;
  /** missed weight a unit saves when it is in the plan, by unit; and of all that are not known to be impossible */
  private readonly saves: Float64Array;
  private readonly saved: number;

  constructor(compiled: Compiled, alone: Alone, needed: readonly number[]) {
    this.compiled = compiled;
    this.alone = alone;
    this.needed = needed;
    this.saves = Float64Array.from(compiled.units, (unit, index) => (alone.possible[index] ? unit.missedWeight : 0));
    this.saved = this.saves.reduce((sum, one) => sum + one, 0);
    this.making = this.make();
  }

  private *make(): Work<void> {
    const { compiled, alone, needed } = this;
    // small problems can afford prices by the quarter of an hour
    const axis = workMinutes(compiled, compiled.steps.length <= 12 ? 15 : 60);
    this.supplies = yield* supplyBound(compiled, alone, axis, needed);
    yield 'between';
    this.list = yield* PriceList.made(compiled, alone, axis);
    this.first = this.list.first(this.supplies);
  }

  /** The least that must be missed, once it is known that a plan misses no more; null until then. */
  leastMissed(worth: Worth): number | null {
    const { missed } = this;
    if (missed === null || missed.worth !== worth.missed) return null;
    return missed.cases.bound <= missed.cases.reached ? worth.missed : null;
  }

  /** One slice of work on whichever bound is open. */
  slice(worth: Worth, leastMissed: number, missedAlone: number): void {
    const { list, first, compiled, saves, saved } = this;
    if (list === null || first === null) {
      this.making.next();
      return;
    }
    if (worth.missed > leastMissed && this.missed?.worth !== worth.missed) {
      const cases = new JobCases(compiled, list, { worth: saves, base: 0, needed: [], atLeast: null }, first);
      cases.reached = saved - (worth.missed - missedAlone);
      this.missed = { worth: worth.missed, cases, work: cases.work() };
    }
    if (this.weight?.missed !== worth.missed) {
      const settled = worth.missed === missedAlone;
      const base = compiled.jobs.reduce((sum, job) => (job.unit < 0 ? sum + job.weight : sum), 0);
      const goal: Goal = {
        worth: Float64Array.from(compiled.units, ({ weight }) => weight),
        base,
        needed: settled ? this.needed : [],
        atLeast: settled ? null : { each: saves, sum: saved - (worth.missed - missedAlone) },
      };
      const cases = new JobCases(compiled, list, goal, first);
      this.weight = { missed: worth.missed, cases, work: cases.work() };
    }
    const { weight, missed } = this;
    weight!.cases.reached = worth.weight;
    const isMissedOpen = worth.missed > leastMissed && missed !== null && missed.cases.bound > missed.cases.reached;
    // what is in the midst of a round goes on; else the two take turns
    if (this.midst === null) this.midst = isMissedOpen && this.turn++ % 2 === 0 ? missed.work : weight!.work;
    if (this.midst.next().value !== 'in the midst') this.midst = null;
  }
}
