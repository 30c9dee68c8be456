/**
 * The planner: a machine that is advanced by so many tries at a time, and asked at any moment for its best plan and
 * how good that is. It reads no clock; the same problem, seed and number of tries give the same plan everywhere.
 */
import type { Obstacle, Outcome, Plan, Verdict, Worth } from './plan.ts';
import type { Problem } from './problem.ts';
import { type Alone, boundsAlone } from './search/alone.ts';
import { Bounds } from './search/bounds.ts';
import { type Compiled, compile } from './search/compiled.ts';
import { Dice } from './search/dice.ts';
import { obstacleAlone } from './search/fits-alone.ts';
import { ListSearch } from './search/list-search.ts';
import { obstaclesToUnit, waitsForLeftOut } from './search/obstacles.ts';
import { Placing } from './search/placing.ts';
import { plainCase } from './search/plain/plain-case.ts';
import { startPlainSearch } from './search/plain/plain-search.ts';
import { violations } from './violations.ts';

export interface Progress {
  readonly iterations: number;
  /** of the best plan so far; null before the first */
  readonly worth: Worth | null;
  /** no plan does more weight than this */
  readonly bound: number;
  /** no plan is finished sooner than this [minutes]; null where the search keeps no such bound */
  readonly finishBound: number | null;
  /** nothing better is to be found */
  readonly finished: boolean;
}

export interface Search {
  /** Tries so many more plans. whole, ≥ 0 */
  advance(iterations: number): Progress;
  /** The best plan so far with its worth, nothing worked out about it; null before the first. */
  best(): { readonly plan: Plan; readonly worth: Worth } | null;
  /**
   * Goes on from a plan of the same problem that was found elsewhere, such as by another search beside this one. One
   * that breaks a rule, or is no better than the best so far, is left alone.
   *
   * @returns whether it is the best now
   */
  adopt(plan: Plan): boolean;
  /**
   * The best plan so far, which breaks no rule, with its verdict and the reasons for what is left out. The bound is
   * looked at more closely first, which takes some tenths of a second; not where it is taken 'as it stands'.
   */
  outcome(bound?: 'as it stands'): Outcome;
}

export interface SearchStart {
  /** of its chance. whole */
  readonly seed: number;
  /** a plan to start from, such as the one now in force; it need not keep the rules any more */
  readonly plan?: Plan;
  /** another search of the same problem goes on beside this one: it keeps to its own way unless that one misses less */
  readonly isBeside?: boolean;
}

/**
 * Starts a search for the best plan.
 *
 * @param problem  one that `checkProblem` finds sound
 */
export function startSearch(problem: Problem, start: SearchStart): Search {
  const plain = plainCase(problem);
  return plain === null ? startFullSearch(problem, start) : startPlainSearch(problem, plain, start.seed);
}

function startFullSearch(problem: Problem, { seed, plan, isBeside = false }: SearchStart): Search {
  const compiled = compile(problem);
  const reasoning = new Placing(compiled);
  const alone = boundsAlone(compiled, reasoning);
  const possible = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
  const list = new ListSearch(compiled, possible, new Dice(seed), plan ?? null, isBeside);
  const bounds = new Bounds(compiled, alone, possible);

  const allNamedBefore = possible.every((unit) =>
    compiled.units[unit]!.open.every((step) => compiled.previous[step]! >= 0),
  );
  const isSmall = compiled.steps.length <= 20;
  let slicesDue = 0;
  let counted = 0;
  const finished = () => {
    const best = list.best?.worth;
    if (best === undefined || best.moved_min > 0 || !bounds.isProved(best)) return false;
    // where every step stands as it did, there is no sooner finish to look for
    return bounds.isSoonest(best) || allNamedBefore;
  };
  const advance = (iterations: number): Progress => {
    for (let n = 0; n < iterations && !finished(); n++) {
      list.step();
      // the one this goes on beside looks at the same bounds, and ends both where nothing better is to be found
      if (isBeside) continue;
      slicesDue += isSmall ? 1 : (list.effort - counted) / effortASlice;
      counted = list.effort;
      // the closer look at the bounds waits until a plan has stood for a while, and then takes a small share of the time
      if (list.sinceBetter < 20 && list.iterations < 200) continue;
      const slices = Math.min(mostSlicesATry, Math.floor(slicesDue));
      slicesDue -= slices;
      bounds.lookCloser(list.best!.worth, slices);
    }
    const worth = list.best?.worth ?? null;
    return {
      iterations: list.iterations,
      worth,
      bound: bounds.weightFor(worth),
      finishBound: null,
      finished: finished(),
    };
  };
  return {
    advance,
    best: () => list.best,
    adopt: (found) => list.adopt(found),
    outcome(bound) {
      if (list.best === null) advance(1);
      const { plan: made, worth } = list.best!;
      const breaches = violations(made, problem);
      if (breaches.length > 0) throw new RangeError(`the plan breaks a rule: ${breaches[0]!.what}`);
      const obstacles = obstaclesOf(compiled, reasoning, alone, made);
      if (bound === undefined && !bounds.isProved(worth)) bounds.lookCloser(worth, 24);
      return {
        plan: made,
        worth,
        verdict: verdictOf(worth, bounds, obstacles, compiled, alone, list.iterations),
        obstacles,
        effort: { seed, iterations: list.iterations },
      };
    },
  };
}

/**
 * So much work of the search, as `Placing.effort` counts it, for a slice of work on the bounds: one part in twenty of
 * the time or less. Tries are no measure: one of many units is many times as heavy as one of few, or as one in a frame.
 */
const effortASlice = 2000;
/** Where more are due, for the bounds have waited, they come with so many tries. */
const mostSlicesATry = 2;

/** fewer tries than this say little about how good a plan can get */
const fewTries = 20;

function verdictOf(
  worth: Worth,
  bounds: Bounds,
  obstacles: readonly Obstacle[],
  compiled: Compiled,
  alone: Alone,
  iterations: number,
): Verdict {
  const bound = bounds.weightFor(worth);
  const gap = bound > 0 ? Math.max(0, (bound - worth.weight) / bound) : 0;
  const proved = bounds.isProved(worth);
  const rest = proved ? 'proved best' : iterations < fewTries ? 'stopped early' : 'good, gap known';
  // needed jobs that are in no plan, not those that only this plan leaves out
  const impossible = new Set(
    compiled.jobs
      .filter((job) => job.needed && job.unit >= 0 && !alone.possible[job.unit])
      .map((job) => compiled.problem.jobs[job.index]!.id),
  );
  const because = obstacles.filter(({ job }) => impossible.has(job));
  if (because.length > 0) return { kind: 'impossible, because', because, rest, bound, gap };
  if (proved) return { kind: 'proved best', finishToo: bounds.isSoonest(worth) };
  return { kind: iterations < fewTries ? 'stopped early' : 'good, gap known', bound, gap };
}

function obstaclesOf(compiled: Compiled, placing: Placing, alone: Alone, plan: Plan): Obstacle[] {
  const left = new Set(plan.leftOut);
  const { problem, units } = compiled;
  const isOut = (unit: number) => units[unit]!.jobs.some((job) => left.has(problem.jobs[job]!.id));
  const obstacles: Obstacle[] = [];
  units.forEach((unit, index) => {
    if (!isOut(index)) return;
    if (!alone.possible[index]) {
      obstacles.push(...obstaclesToUnit(compiled, placing, alone, index));
      return;
    }
    const other = unit.waitsFor.find(isOut);
    const byItself = other === undefined ? obstacleAlone(compiled, index) : null;
    for (const job of unit.jobs) {
      const { id } = problem.jobs[job]!;
      if (other !== undefined) obstacles.push(waitsForLeftOut(compiled, job, unit.open, other));
      else if (byItself !== null) obstacles.push({ ...byItself, job: id } as Obstacle);
      else obstacles.push({ kind: 'no room left', job: id, ...roomFor(compiled, job, plan) });
    }
  });
  const order = new Map(problem.jobs.map((job, index) => [job.id, index]));
  return obstacles.sort((a, b) => order.get(a.job)! - order.get(b.job)!);
}

/** Hands-on minutes a job needs, and minutes of the days' work in which the keeper is there and free. */
function roomFor(compiled: Compiled, job: number, plan: Plan): { need_min: number; free_min: number } {
  const { problem, stretches, absent, horizon } = compiled;
  const need_min = problem.steps
    .filter((step) => step.job === problem.jobs[job]!.id && step.progress.kind === 'open')
    .reduce((sum, step) => sum + step.minutes, 0);
  const keeper = problem.hands[0];
  if (keeper === undefined) return { need_min, free_min: 0 };
  const busy = Uint8Array.from(absent[0]!);
  for (const { hands, start, finish } of [...plan.steps, ...plan.changes])
    if (hands.includes(keeper.id)) busy.fill(1, Math.max(0, start), Math.min(horizon, finish));
  let free_min = 0;
  for (const { from, to } of stretches)
    for (let minute = from; minute < to; minute++) if (busy[minute] === 0) free_min++;
  return { need_min, free_min };
}
