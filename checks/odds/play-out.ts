/**
 * The world plays out: the full planner makes a plan, the keeper goes by it, and whenever something is other than the
 * plan has it (a step is not done when expected, or sooner; the sky changes; a new day and a new forecast) the full
 * planner plans the rest again with what is known then.
 *
 * Truths of this world: work that must stay dry and is rained on is stopped and begun anew; a wait that is rained on
 * uncovered is spoiled, and its step and all after it are to be done again; a step that is not done at the day's end is
 * broken off, and what is left of it stays to be done; what the boat must be put into for the night is
 * done late rather than left.
 */
import { type Plan, type PlanHour, type Problem, type ProblemStep, startSearch, waitAfter } from '#workplan';
import type { World } from './world-problem.ts';

interface StepNow {
  kind: 'open' | 'under way' | 'done';
  start: number;
  finish: number;
  expected: number;
  hands: readonly string[];
  /** of the step's true and likely time, what is still to be done. 1: all of it */
  left: number;
}

const overrun_min = 10;

export interface PlayedOut {
  /** ids of the jobs that were in time */
  readonly inTime: ReadonlySet<string>;
  readonly plans: number;
  /** what was done in the end, in minutes after the start */
  readonly done: readonly { readonly step: string; readonly start: number; readonly finish: number }[];
}

/** @param iterations  of the full planner, each time it plans */
export function playOut(world: World, first: Plan, iterations: number): PlayedOut {
  const { problem, weather } = world;
  const hours = weather.truth;
  const now: StepNow[] = problem.steps.map(() => ({
    kind: 'open',
    start: 0,
    finish: 0,
    expected: 0,
    hands: [],
    left: 1,
  }));
  const index = new Map(problem.steps.map(({ id }, at) => [id, at]));
  const standing = new Map(problem.aspects.map(({ id, initial }) => [id, initial]));
  let changing: { aspect: string; to: string; finish: number } | null = null;
  let plan = first;
  let plans = 0;
  let saidHour = -1;
  let said: readonly PlanHour[] = problem.hours;

  const dayAt = (minute: number) => problem.days.findIndex(({ from, to }) => from <= minute && minute < to);
  const sheltered = () =>
    problem.aspects.some(({ id, states }) => states.some((state) => state.id === standing.get(id) && state.shelters));
  const outside = (step: ProblemStep) => step.zone !== 'cabin';
  const waitEnds = (at: number) =>
    problem.steps[at]!.waits.map((wait) => waitAfter(wait, now[at]!.finish, hours).finish ?? problem.horizon + 1);

  const again = (at: number) => {
    const mine = now[at]!;
    if (mine.kind === 'open') return;
    mine.kind = 'open';
    mine.left = 1;
    for (const { before, after } of problem.precedence) if (before === problem.steps[at]!.id) again(index.get(after)!);
  };

  const replan = (minute: number) => {
    const hour = Math.floor(minute / 60);
    if (hour !== saidHour) {
      said = weather.said(hour * 60);
      saidHour = hour;
    }
    const at: Problem = {
      ...problem,
      now: minute,
      hours: said,
      aspects: problem.aspects.map((aspect) => ({ ...aspect, initial: standing.get(aspect.id)! })),
      steps: problem.steps.map((step, n): ProblemStep => {
        const mine = now[n]!;
        if (mine.kind === 'open') return { ...step, minutes: Math.max(5, Math.round(step.minutes * mine.left)) };
        if (mine.kind === 'done')
          return { ...step, progress: { kind: 'done', start: mine.start, finish: mine.finish } };
        const expectedFinish = Math.max(minute, mine.expected);
        return { ...step, progress: { kind: 'under way', start: mine.start, expectedFinish, hands: mine.hands } };
      }),
      jobs: problem.jobs,
    };
    const search = startSearch(at, { seed: 1 + plans, plan });
    search.advance(iterations);
    plan = search.outcome().plan;
    plans++;
  };

  const lastDay = problem.days.at(-1)!.to;
  let stale = true;
  for (let minute = problem.now; minute <= lastDay; minute++) {
    const day = dayAt(minute);
    if (changing !== null && changing.finish <= minute) {
      standing.set(changing.aspect, changing.to);
      changing = null;
    }
    // what is under way: finished, stopped by rain, broken off at the day's end, or late
    now.forEach((mine, at) => {
      if (mine.kind !== 'under way') return;
      const step = problem.steps[at]!;
      if (mine.finish <= minute) {
        mine.kind = 'done';
        if (mine.finish !== mine.expected) stale = true;
      } else if (step.needs.dry && outside(step) && hours[Math.floor(minute / 60)]!.rain) {
        mine.kind = 'open';
        stale = true;
      } else if (day >= 0 && minute >= problem.days[day]!.to - 1) {
        mine.left *= (mine.finish - minute) / (mine.finish - mine.start);
        mine.kind = 'open';
        stale = true;
      } else if (mine.expected <= minute) {
        mine.expected = Math.max(minute, mine.expected) + overrun_min;
        stale = true;
      }
    });
    // waits in the rain
    if (minute % 60 === 0 || stale) {
      const { rain } = hours[Math.floor(minute / 60)]!;
      if (rain && !sheltered())
        now.forEach((mine, at) => {
          const step = problem.steps[at]!;
          if (mine.kind !== 'done' || !outside(step)) return;
          const ends = waitEnds(at);
          if (!step.waits.some(({ needs }, n) => needs.dry && ends[n]! > minute)) return;
          again(at);
          stale = true;
        });
    }
    if (day < 0) continue;
    const { from, to, endsIn } = problem.days[day]!;
    if (minute === from) stale = true;
    if (minute % 60 === 0 && minute < to) {
      const hour = minute / 60;
      const other = said[hour] === undefined || said[hour]!.rain !== hours[hour]!.rain;
      if (other || Math.abs(said[hour]!.wind_kn - hours[hour]!.wind_kn) > 2) stale = true;
    }
    if (minute === to - 1) {
      for (const { aspect, state } of endsIn) standing.set(aspect, state);
      continue;
    }
    if (stale && changing === null) {
      replan(minute);
      stale = false;
    }
    if (changing !== null && stale) continue;
    for (const change of plan.changes) {
      if (change.start !== minute) continue;
      changing = { aspect: change.aspect, to: change.to, finish: change.finish };
    }
    for (const planned of plan.steps) {
      if (planned.start !== minute) continue;
      const at = index.get(planned.step)!;
      const mine = now[at]!;
      if (mine.kind !== 'open') continue;
      mine.kind = 'under way';
      mine.start = minute;
      mine.hands = planned.hands;
      mine.expected = planned.finish;
      mine.finish = minute + Math.max(1, Math.round(world.trueMinutes(at, day) * mine.left));
    }
  }
  const done = problem.steps.flatMap(({ id }, at) =>
    now[at]!.kind === 'done' ? [{ step: id, start: now[at]!.start, finish: now[at]!.finish }] : [],
  );
  return { inTime: jobsInTime(problem, now, waitEnds, hours, sheltered()), plans, done };
}

function jobsInTime(
  problem: Problem,
  now: readonly StepNow[],
  waitEnds: (step: number) => number[],
  hours: readonly PlanHour[],
  sheltered: boolean,
): ReadonlySet<string> {
  const last = problem.days.at(-1)!.to;
  const good = problem.jobs.filter(({ id, deadline }) =>
    problem.steps.every((step, at) => {
      if (step.job !== id) return true;
      if (now[at]!.kind !== 'done' || now[at]!.finish > (deadline ?? problem.horizon)) return false;
      return waitEnds(at).every((end, n) => {
        if (end > (deadline ?? problem.horizon)) return false;
        if (!step.waits[n]!.needs.dry || sheltered || step.zone === 'cabin') return true;
        // nights after the last day
        for (let hour = Math.floor(Math.max(last, now[at]!.finish) / 60); hour * 60 < end; hour++)
          if (hours[hour]!.rain) return false;
        return true;
      });
    }),
  );
  return new Set(good.map(({ id }) => id));
}
