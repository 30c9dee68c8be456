/**
 * Reasons for a plan, as data: for every job left out the smallest single changes that would let it in, for every
 * step in the plan what holds it where it is, and the one change that would gain most. Made by a machine that is
 * advanced a little at a time; it reads no clock.
 */
import type { Outcome, Plan, Worth } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { startSearch } from '../search.ts';
import { violations } from '../violations.ts';
import { compareWorth, worthOf } from '../worth.ts';
import { type Footing, footingOf, type Work } from './attempt.ts';
import { compareEase, type Relaxation, relaxed } from './relaxation.ts';
import { type JobLeftOut, mostWays, type WayIn, waysIn } from './ways-in.ts';
import { type StepHeld, stepHeld } from './what-holds.ts';

/** The ways in for one job left out. */
export interface WaysIn {
  readonly job: string;
  /** the easiest first; at most three, of a kind each */
  readonly ways: readonly WayIn[];
  /** every kind that may help has been tried */
  readonly finished: boolean;
}

/** What one change would gain over the plan in hand. */
export interface Gain {
  readonly relaxation: Relaxation;
  /** weight done more. > 0 */
  readonly weight: number;
  /** jobs left out by the plan in hand that come in, in the problem's order */
  readonly jobs: readonly string[];
  /** a plan of the changed problem that does so */
  readonly plan: Plan;
}

export interface Reasons {
  /** every job left out, in the problem's order */
  readonly ways: readonly WaysIn[];
  /** every open step in the plan, in order of start; grows until all are there */
  readonly steps: readonly StepHeld[];
  /** the change that gains most; null: none is known (yet, until `finished`) */
  readonly gain: Gain | null;
  /**
   * a plan of the problem as it stands that does more than the one in hand, come upon on the way. The reasons end with
   * it: they are of a plan that has been bettered. null: none was
   */
  readonly better: Plan | null;
  /** parts of the whole that are done, of so many */
  readonly done: number;
  readonly of: number;
  readonly finished: boolean;
}

export interface ReasonsRun {
  /** Does so much more, each about one try of a search. whole, ≥ 0 */
  advance(iterations: number): Reasons;
}

/** tries of the search at each change, on the first round and on the second, for jobs that had no way in by then */
const [firstTries, moreTries] = [200, 600];
/** tries for what a change would gain in all */
const gainTries = 24;

/**
 * Starts to work out the reasons of a plan. The same seed gives the same reasons, in however many goes.
 *
 * Each way in has been verified: its plan breaks no rule of the changed problem, holds the job, and leaves out or
 * misses nothing that the plan in hand does not, but for the one job it is 'without'. It is the smallest found, not
 * the smallest there is: where a heuristic search finds no plan with less, there may be one all the same, unless
 * `leastProved` says that the bound rules it out.
 *
 * @param problem        one that `checkProblem` finds sound
 * @param outcome        of a search on it
 * @param seed           whole
 * @param arrival_clock  from when on its day a store that comes is counted on, at the place. `HH:MM`
 */
export function startReasons(
  problem: Problem,
  outcome: Pick<Outcome, 'plan' | 'worth' | 'obstacles'>,
  { seed, arrival_clock }: { readonly seed: number; readonly arrival_clock: string },
): ReasonsRun {
  const footing = footingOf(problem, outcome.plan, seed);
  const weightOf = new Map(problem.jobs.map(({ id, weight }) => [id, weight]));
  const leftOut = outcome.plan.leftOut.map((job): JobLeftOut => ({ job, obstacles: obstaclesOf(outcome, job) }));
  const byWeight = [...leftOut].sort((a, b) => weightOf.get(b.job)! - weightOf.get(a.job)!);
  const ways = new Map<string, WayIn[]>(leftOut.map(({ job }) => [job, []]));
  const over = new Set<string>();
  const steps: StepHeld[] = [];
  let gain: Gain | null = null;
  let better: Plan | null = null;
  let done = 0;
  const of = leftOut.length + 2;

  function* all(): Work<void> {
    for (const one of byWeight) {
      better = yield* waysIn(footing, one, { tries: firstTries, arrival_clock }, (way) => take(one.job, way));
      if (better !== null) return;
      const none = ways.get(one.job)!.length === 0;
      if (!none) over.add(one.job);
      if (!none) done++;
    }
    const open = outcome.plan.steps.filter(({ day }) => day !== null).sort((a, b) => a.start - b.start);
    for (const { step } of open) {
      steps.push(stepHeld(problem, outcome.plan, step));
      yield;
    }
    done++;
    for (const one of byWeight) {
      if (over.has(one.job)) continue;
      better = yield* waysIn(footing, one, { tries: moreTries, arrival_clock }, (way) => take(one.job, way));
      if (better !== null) return;
      over.add(one.job);
      done++;
    }
    yield* gains();
    done++;
  }

  function take(job: string, way: WayIn): void {
    const others = ways.get(job)!.filter(({ relaxation }) => relaxation.kind !== way.relaxation.kind);
    ways.set(
      job,
      [...others, way].sort((a, b) => compareEase(a.relaxation, b.relaxation, problem)),
    );
  }

  function* gains(): Work<void> {
    const known = new Map<string, WayIn>();
    for (const list of ways.values())
      for (const way of list)
        known.set(JSON.stringify(way.relaxation), known.get(JSON.stringify(way.relaxation)) ?? way);
    for (const { relaxation, plan } of known.values()) {
      const found = yield* gainOf(footing, outcome.worth, relaxation, plan);
      if (found === null || found.weight <= 0) continue;
      const more = gain === null ? 1 : found.weight - gain.weight;
      if (more > 1e-9 || (more > -1e-9 && compareEase(found.relaxation, gain!.relaxation, problem) < 0)) gain = found;
    }
  }

  const work = all();
  let finished = false;
  return {
    advance(iterations) {
      for (let n = 0; n < iterations && !finished; n++) finished = work.next().done === true;
      return {
        ways: leftOut.map(({ job }) => ({ job, ways: ways.get(job)!.slice(0, mostWays), finished: over.has(job) })),
        steps: [...steps],
        gain,
        better,
        done,
        of,
        finished,
      };
    },
  };
}

/** Those of a job, and of the jobs left out that it waits for. */
function obstaclesOf({ obstacles }: Pick<Outcome, 'obstacles'>, job: string): Outcome['obstacles'] {
  const jobs = new Set([job]);
  for (const id of jobs)
    for (const obstacle of obstacles)
      if (obstacle.job === id && obstacle.kind === 'waits for a job left out') jobs.add(obstacle.other);
  return obstacles.filter((obstacle) => jobs.has(obstacle.job));
}

/** How much weight more a changed problem lets be done than the plan in hand does; null where a need would be missed. */
function* gainOf(
  { problem, plan: inHand, seed }: Footing,
  worth: Worth,
  relaxation: Relaxation,
  plan: Plan,
): Work<Gain | null> {
  const changed = relaxed(problem, relaxation);
  let best = plan;
  const search = startSearch(changed, { seed, plan });
  yield;
  for (let tried = 0; tried < gainTries; tried++) {
    const progress = search.advance(1);
    yield;
    if (progress.finished) break;
  }
  const { plan: found } = search.outcome('as it stands');
  yield;
  if (violations(found, changed).length === 0 && compareWorth(worthOf(found, changed), worthOf(best, changed)) < 0)
    best = found;
  const now = worthOf(best, changed);
  if (now.missed > worth.missed + 1e-9) return null;
  const left = new Set(best.leftOut);
  const still = new Set(changed.jobs.map(({ id }) => id));
  const jobs = inHand.leftOut.filter((id) => still.has(id) && !left.has(id));
  return { relaxation, weight: now.weight - worth.weight, jobs, plan: best };
}
