/**
 * The planner: a machine that is advanced by so many tries at a time, and asked at any moment for its best plan and
 * how good that is. It reads no clock; the same problem, seed and number of tries give the same plan everywhere.
 */
import type { Obstacle, Outcome, Plan, Verdict, Worth } from './plan.ts';
import type { Problem } from './problem.ts';
import { type Alone, boundsAlone } from './search/alone.ts';
import { type Compiled, compile } from './search/compiled.ts';
import { Dice } from './search/dice.ts';
import { ListSearch } from './search/list-search.ts';
import { obstaclesToUnit, waitsForLeftOut } from './search/obstacles.ts';
import { Placing } from './search/placing.ts';
import { plainCase } from './search/plain/plain-case.ts';
import { startPlainSearch } from './search/plain/plain-search.ts';
import { leastSetUpMinutes } from './search/set-up-bound.ts';
import { violations } from './violations.ts';

export interface Progress {
  readonly iterations: number;
  /** of the best plan so far; null before the first */
  readonly worth: Worth | null;
  /** no plan does more weight than this */
  readonly bound: number;
  /** nothing better is to be found */
  readonly finished: boolean;
}

export interface Search {
  /** Tries so many more plans. whole, ≥ 0 */
  advance(iterations: number): Progress;
  /** The best plan so far, which breaks no rule, with its verdict and the reasons for what is left out. */
  outcome(): Outcome;
}

/**
 * Starts a search for the best plan.
 *
 * @param problem  one that `checkProblem` finds sound
 * @param seed     of its chance. whole
 * @param plan     a plan to start from, such as the one now in force; it need not keep the rules any more
 */
export function startSearch(problem: Problem, { seed, plan }: { readonly seed: number; readonly plan?: Plan }): Search {
  const plain = plainCase(problem);
  return plain === null ? startFullSearch(problem, seed, plan ?? null) : startPlainSearch(problem, plain, seed);
}

function startFullSearch(problem: Problem, seed: number, plan: Plan | null): Search {
  const compiled = compile(problem);
  const reasoning = new Placing(compiled);
  const alone = boundsAlone(compiled, reasoning);
  const possible = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
  const list = new ListSearch(compiled, possible, new Dice(seed), plan);
  const bounds = boundsOf(compiled, alone);

  const finished = () => {
    const worth = list.best?.worth;
    return (
      worth !== undefined &&
      isProved(worth, bounds) &&
      worth.lastFinish <= bounds.lastFinish &&
      (worth.moved === 0 || problem.previous.length === 0)
    );
  };
  const advance = (iterations: number): Progress => {
    for (let n = 0; n < iterations && !finished(); n++) list.step();
    return { iterations: list.iterations, worth: list.best?.worth ?? null, bound: bounds.weight, finished: finished() };
  };
  return {
    advance,
    outcome() {
      if (list.best === null) advance(1);
      const best = list.best!;
      const breaches = violations(best.plan, problem);
      if (breaches.length > 0) throw new RangeError(`the plan breaks a rule: ${breaches[0]!.what}`);
      const obstacles = obstaclesOf(compiled, reasoning, alone, best.plan);
      return {
        plan: best.plan,
        worth: best.worth,
        verdict: verdictOf(best.worth, bounds, obstacles, compiled),
        obstacles,
        effort: { seed, iterations: list.iterations },
      };
    },
  };
}

interface Bounds {
  readonly missed: number;
  readonly weight: number;
  /** holds for plans that do the weight of the bound and miss no more */
  readonly setUp_min: number;
  readonly lastFinish: number;
}

function boundsOf(compiled: Compiled, alone: Alone): Bounds {
  let missed = 0;
  let weight = 0;
  let lastFinish = 0;
  // in the order of the jobs, as `worthOf` adds, so that equal sets of jobs have equal sums
  for (const job of compiled.jobs) {
    if (job.unit < 0 || alone.possible[job.unit]) weight += job.weight;
    else if (job.needed) missed += job.weight;
  }
  compiled.units.forEach((unit, index) => {
    if (!alone.possible[index]) return;
    for (const step of unit.open) {
      const { minutes, mixing } = compiled.steps[step]!;
      lastFinish = Math.max(lastFinish, alone.earliest[step]! + minutes - mixing);
    }
  });
  const all = compiled.units.flatMap((_, index) => (alone.possible[index] ? [index] : []));
  return { missed, weight, setUp_min: leastSetUpMinutes(compiled, all), lastFinish };
}

function isProved(worth: Worth, bounds: Bounds): boolean {
  return worth.missed === bounds.missed && worth.weight === bounds.weight && worth.setUp_min <= bounds.setUp_min;
}

function verdictOf(worth: Worth, bounds: Bounds, obstacles: readonly Obstacle[], compiled: Compiled): Verdict {
  const bound = bounds.weight;
  const gap = bound > 0 ? (bound - worth.weight) / bound : 0;
  const proved = isProved(worth, bounds);
  const needed = new Set(compiled.jobs.filter((job) => job.needed).map((job) => compiled.problem.jobs[job.index]!.id));
  const because =
    bounds.missed > 0 ? obstacles.filter(({ job, kind }) => needed.has(job) && kind !== 'no room left') : [];
  if (because.length > 0)
    return { kind: 'impossible, because', because, rest: proved ? 'proved best' : 'good, gap known', bound, gap };
  if (proved) return { kind: 'proved best', finishToo: worth.lastFinish <= bounds.lastFinish };
  return { kind: 'good, gap known', bound, gap };
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
    for (const job of unit.jobs)
      obstacles.push(
        other === undefined
          ? { kind: 'no room left', job: problem.jobs[job]!.id, ...roomFor(compiled, job, plan) }
          : waitsForLeftOut(compiled, job, unit.open, other),
      );
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
