import type { Plan } from '../plan.ts';
import type { Minute, Problem, ProblemStep } from '../problem.ts';
import { compile } from '../search/compiled.ts';
import { Dice } from '../search/dice.ts';
import { type Chance, chanceOf } from './chance.ts';
import { FollowedPlan } from './followed-plan.ts';
import { normalShare } from './normal-share.ts';
import { isDone } from './run-state.ts';
import { type StepTimes, stepTimes, timeAt } from './step-times.ts';
import { normal, WeatherDraws } from './weather-draws.ts';

/**
 * Share of a step's spread that it has in common with the other steps of the day: a keeper who is slow is slow at
 * everything. Correlation of the normal quantities behind the times. Our assumption.
 */
export const assumedSameDay = 0.3;

/** Jobs that are to be over together by a minute, whatever dates of their own they have. */
export interface WantedSet {
  /** one for each set */
  readonly id: string;
  /** ids of jobs of the problem; a job may stand in several sets */
  readonly jobs: readonly string[];
  readonly by: Minute;
}

export interface Odds {
  readonly runs: number;
  /** every job: all its steps and waits over by its deadline, or by the horizon where it has none */
  readonly jobs: readonly { readonly job: string; readonly deadline: Minute | null; readonly inTime: Chance }[];
  /** every job day: all that the plan lays on it done by its end */
  readonly days: readonly { readonly day: string; readonly allDone: Chance }[];
  /** every deadline: all jobs that have it in time */
  readonly deadlines: readonly {
    readonly deadline: Minute;
    readonly jobs: readonly string[];
    readonly allInTime: Chance;
  }[];
  /** every set that was asked for: all its jobs over by its minute */
  readonly sets: readonly { readonly set: string; readonly allInTime: Chance }[];
}

export interface OddsRun {
  /** Follows the plan so many times more. whole, ≥ 0 */
  advance(runs: number): Odds;
}

/**
 * Starts to work out the chances of a plan: it is followed many times, each time with other times for the steps
 * (`step-times.ts`) and another sky (`weather-draws.ts`), as it would be followed (`followed-plan.ts`). The same
 * seed gives the same runs, in however many goes.
 *
 * A job left out has no chance; a job with nothing left to do is certain.
 *
 * Not counted: set-up changes take their minutes, parts come on their day, hands stay as long as said, nobody falls
 * ill, no new work is found. The keeper may find a better way than the cheap replanning here does.
 *
 * @param problem  one that `checkProblem` finds sound
 * @param plan     a plan of it in which `violations` finds nothing
 * @param seed     whole
 * @param sets     jobs whose chance together is asked for
 * @throws RangeError  where a set names a job that the problem does not have
 */
export function startOdds(
  problem: Problem,
  plan: Plan,
  { seed, sets = [] }: { readonly seed: number; readonly sets?: readonly WantedSet[] },
): OddsRun {
  const runs = followedRuns(problem, plan, seed);
  const { followed, compiled } = runs;
  const left = new Set(plan.leftOut);
  const planned = new Map(plan.steps.map((step) => [step.step, step]));
  const hasOpen = problem.jobs.map(({ id }) =>
    problem.steps.some(({ job, progress }) => job === id && progress.kind === 'open'),
  );
  const inTime = new Int32Array(problem.jobs.length);
  const days = problem.days.map(({ id }, index) => ({
    index,
    steps: problem.steps.flatMap((step, at) => (planned.get(step.id)?.day === id ? [at] : [])),
  }));
  const dayDone = new Int32Array(days.length);
  const deadlines = [...new Set(problem.jobs.flatMap(({ deadline }) => (deadline === null ? [] : [deadline])))]
    .sort((a, b) => a - b)
    .map((deadline) => ({
      deadline,
      jobs: [...problem.jobs.keys()].filter((job) => problem.jobs[job]!.deadline === deadline),
    }));
  const setDone = new Int32Array(deadlines.length);
  const wanted = sets.map(({ id, jobs, by }) => ({ id, by, jobs: jobs.map((job) => jobAt(problem, job)) }));
  const wantedDone = new Int32Array(wanted.length);
  const good = new Uint8Array(problem.jobs.length);
  const over = (job: number, by?: Minute) =>
    !left.has(problem.jobs[job]!.id) && (!hasOpen[job] || followed.jobInTime(job, by));
  let count = 0;
  return {
    advance(more) {
      for (let n = 0; n < more; n++) {
        runs.next();
        count++;
        for (let job = 0; job < good.length; job++) {
          good[job] = over(job) ? 1 : 0;
          inTime[job]! += good[job]!;
        }
        const { status, day } = followed.state;
        for (const { index, steps } of days)
          if (steps.every((step) => status[step] === isDone && day[step]! <= index)) dayDone[index]!++;
        deadlines.forEach(({ jobs }, at) => {
          if (jobs.every((job) => good[job] === 1)) setDone[at]!++;
        });
        wanted.forEach(({ jobs, by }, at) => {
          if (jobs.every((job) => over(job, by))) wantedDone[at]!++;
        });
      }
      const chance = (times: number) => chanceOf(times, Math.max(1, count));
      return {
        runs: count,
        jobs: problem.jobs.map(({ id, deadline }, job) => ({ job: id, deadline, inTime: chance(inTime[job]!) })),
        days: compiled.problem.days.map(({ id }, index) => ({ day: id, allDone: chance(dayDone[index]!) })),
        deadlines: deadlines.map(({ deadline, jobs }, at) => ({
          deadline,
          jobs: jobs.map((job) => problem.jobs[job]!.id),
          allInTime: chance(setDone[at]!),
        })),
        sets: wanted.map(({ id }, at) => ({ set: id, allInTime: chance(wantedDone[at]!) })),
      };
    },
  };
}

function jobAt(problem: Problem, job: string): number {
  const at = problem.jobs.findIndex(({ id }) => id === job);
  if (at < 0) throw new RangeError(`the problem has no job ${job}; it has ${problem.jobs.length} others`);
  return at;
}

/** The runs themselves, one after another: what `startOdds` counts, and what tests look into. */
export function followedRuns(problem: Problem, plan: Plan, seed: number) {
  const compiled = compile(problem);
  const weather = new WeatherDraws(problem);
  const times = timesOfSteps(problem);
  const least = compiled.steps.map(({ mixing, hands }) => Math.max(hands > 0 ? 1 : 0, mixing));
  const dice = new Dice(seed);
  const ofStep = new Float64Array(times.length);
  const ofDay = new Float64Array(problem.days.length);
  const [common, own] = [Math.sqrt(assumedSameDay), Math.sqrt(1 - assumedSameDay)];
  const likely = (step: number) => problem.steps[step]!.minutes;
  const drawn = (step: number, day: number) => {
    const of = times[step];
    if (of === null || of === undefined) return likely(step);
    const share = normalShare(common * ofDay[day]! + own * ofStep[step]!);
    return Math.max(least[step]!, Math.round(timeAt(of, share)));
  };
  const followed = rehearsed();
  return {
    compiled,
    followed,
    weather,
    /** how long a step takes in the run, done on a day */
    minutesOf: drawn,
    next() {
      for (let step = 0; step < ofStep.length; step++) ofStep[step] = normal(dice);
      for (let day = 0; day < ofDay.length; day++) ofDay[day] = normal(dice);
      weather.draw(dice);
      followed.follow(weather.hours, drawn);
    },
  };

  /** Where beginning early would upset the plan although all goes as said, nothing is begun before its minute. */
  function rehearsed(): FollowedPlan {
    weather.asSaid();
    const done = (followed_: FollowedPlan) => {
      followed_.follow(weather.hours, likely);
      return compiled.jobs.filter(({ index, unit }) => unit >= 0 && followed_.jobInTime(index)).length;
    };
    const eager = new FollowedPlan(compiled, plan, false);
    const left = new Set(plan.leftOut);
    const all = compiled.jobs.filter(({ index, unit }) => unit >= 0 && !left.has(problem.jobs[index]!.id)).length;
    const early = done(eager);
    if (early === all) return eager;
    const clocked = new FollowedPlan(compiled, plan, true);
    return done(clocked) > early ? clocked : eager;
  }
}

function timesOfSteps(problem: Problem): readonly (StepTimes | null)[] {
  const known = new Map<string, StepTimes>();
  return problem.steps.map(({ minutes, minutes_low, minutes_high }: ProblemStep) => {
    const [low, high] = [Math.max(1, minutes_low ?? minutes), minutes_high ?? minutes];
    if (minutes < 1 || (low >= minutes && high <= minutes)) return null;
    const key = `${low} ${minutes} ${high}`;
    let times = known.get(key);
    if (times === undefined) {
      times = stepTimes(Math.min(low, minutes), minutes, high);
      known.set(key, times);
    }
    return times;
  });
}
