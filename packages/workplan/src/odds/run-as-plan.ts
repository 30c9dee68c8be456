import type { Plan, PlannedStep } from '../plan.ts';
import type { PlanHour, Problem } from '../problem.ts';
import type { FollowedPlan } from './followed-plan.ts';
import { followedRuns } from './odds.ts';
import { isDone, isOpen } from './run-state.ts';

export interface ExecutedRun {
  /** the problem as it turned out, of which `plan` is a plan */
  readonly problem: Problem;
  readonly plan: Plan;
  /** days with work in them that could not be ended in the set-ups they must */
  readonly openDays: readonly string[];
}

/**
 * The runs that `startOdds` counts with the same seed, one after another, each as a plan that can be looked at and
 * judged: the times and the sky of the run, and of each job the steps that were done (a job half done is a job of
 * those steps; one that was not in time has no date). Of a step that was left off and taken up again only the last
 * part stands in it. A break that a step ran over into begins when that step is done.
 */
export function executedRuns(
  problem: Problem,
  plan: Plan,
  { seed }: { readonly seed: number },
): { next(): ExecutedRun } {
  const runs = followedRuns(problem, plan, seed);
  return {
    next() {
      runs.next();
      const { openDays } = runs.followed;
      return {
        ...runAsPlan(runs.followed, runs.weather.hours, runs.minutesOf),
        openDays: openDays.map((day) => problem.days[day]!.id),
      };
    },
  };
}

function runAsPlan(
  followed: FollowedPlan,
  hours: readonly PlanHour[],
  minutesOf: (step: number, day: number) => number,
): { readonly plan: Plan; readonly problem: Problem } {
  const { problem, steps: compiled } = followed.compiled;
  const { state } = followed;
  const kept = problem.steps.filter(
    ({ progress }, index) => progress.kind !== 'open' || state.status[index] === isDone,
  );
  const names = new Set(kept.map(({ id }) => id));
  const steps: PlannedStep[] = [];
  const waits: Plan['waits'][number][] = [];
  problem.steps.forEach((step, index) => {
    if (!names.has(step.id)) return;
    const begun = step.progress.kind !== 'open';
    const hands = state.hands[index]!.map((hand) => problem.hands[hand]!.id);
    const finish = state.finish[index]!;
    steps.push({
      step: step.id,
      start: state.start[index]!,
      finish,
      hands,
      day: begun ? null : problem.days[state.day[index]!]!.id,
      batchOf: begun || state.batchOf[index]! < 0 ? null : problem.steps[state.batchOf[index]!]!.id,
      abrade_min: begun ? 0 : state.abrade[index]!,
    });
    step.waits.forEach((wait, number) => {
      const end = state.waitEnd[index]![number]!;
      const over = end < 0 && finish >= 0 ? problem.horizon : end;
      const last = Math.ceil(over / 60);
      const { law } = wait;
      const cold =
        finish >= 0 &&
        'minimum_C' in law &&
        over > finish &&
        hours.slice(Math.floor(finish / 60), last).some((hour) => (hour.surface_C ?? hour.air_C) < law.minimum_C);
      waits.push({ step: step.id, wait: wait.id, start: finish, finish: over, tooCold: cold });
    });
  });
  const realised: Problem = {
    ...problem,
    days: problem.days.map((day) => ({
      ...day,
      breaks: day.breaks.flatMap((pause) => {
        const over = steps.filter(({ start, finish }) => start < pause.from && finish > pause.from);
        const from = Math.max(pause.from, ...over.map(({ finish }) => finish));
        return from < pause.to ? [{ from, to: pause.to }] : [];
      }),
    })),
    hours: structuredClone(hours) as PlanHour[],
    jobs: problem.jobs
      .filter(({ id }) => kept.some(({ job }) => job === id))
      .map((job) => (followed.jobInTime(problem.jobs.indexOf(job)) ? job : { ...job, deadline: null })),
    steps: kept.map((step) => {
      const index = problem.steps.indexOf(step);
      if (step.progress.kind !== 'open') return step;
      const all = minutesOf(index, state.day[index]!);
      const part = state.left[index]!;
      const minutes = part === 1 ? all : Math.max(step.hands > 0 ? 1 : 0, Math.round(all * part));
      // a batch whose step was spoiled later was a batch all the same
      const leader = state.batchOf[index]!;
      if (leader < 0 || state.status[leader] !== isOpen) return { ...step, minutes };
      return { ...step, minutes: minutes - compiled[index]!.mixing, mix: null };
    }),
    precedence: problem.precedence.filter(({ after }) => names.has(after)),
    previous: [],
  };
  const orphan = (of: string | null) => (of !== null && names.has(of) ? of : null);
  return {
    problem: realised,
    plan: {
      steps: steps.map((step) => ({ ...step, batchOf: orphan(step.batchOf) })),
      waits,
      changes: state.made.map(({ move, start, finish, hands, day }) => {
        const aspect = problem.aspects[move.aspect]!;
        return {
          aspect: aspect.id,
          from: aspect.states[move.from]!.id,
          to: aspect.states[move.to]!.id,
          start,
          finish,
          hands: hands.map((hand) => problem.hands[hand]!.id),
          day: problem.days[day]!.id,
        };
      }),
      leftOut: [],
    },
  };
}
