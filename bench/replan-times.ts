/** How soon the demo is planned again when its first day has gone wrong, what that misses and how much it moves. */

import { type Plan, type Problem, startSearch, violations } from '#workplan';
import type { BesideThread } from '../apps/cli/src/beside/beside-thread.ts';
import { demoProblem } from './plan-times.ts';

export interface ReplanTime {
  readonly seed: number;
  /** [ms] */
  readonly firstPlan_ms: number;
  readonly after: readonly ReplanWorth[];
  readonly violations: number;
}

/** How good the plan is once so much time was spent on it. */
export interface ReplanWorth {
  readonly spent_ms: number;
  readonly missed: number;
  readonly weight: number;
  readonly setUp_min: number;
  /** steps that start at another time than before, and by how much in all */
  readonly moved: number;
  readonly moved_min: number;
}

/** minutes after the first job day's start at which the keeper plans again: 11:40 where the day starts at 9:00 */
const later_min = 160;
const stepLonger_min = 60;
/** rain from so long after, and for so long */
const rain = { after_min: 80, lasts_min: 300 };

/** The demo at 11:40 of its first day: the step under way takes an hour longer, and the afternoon is to be wet. */
export function lateDemo(): { readonly problem: Problem; readonly plan: Plan } {
  const problem = demoProblem();
  const search = startSearch(problem, { seed: 1 });
  search.advance(1500);
  const { plan } = search.outcome('as it stands');
  return { problem: gone(problem, plan), plan };
}

function gone(problem: Problem, plan: Plan): Problem {
  const first = problem.days.find((day) => plan.steps.some((step) => step.day === day.id))!;
  const now = first.from + later_min;
  const placed = new Map(plan.steps.map((step) => [step.step, step]));
  const steps = problem.steps.map((step): Problem['steps'][number] => {
    const at = placed.get(step.id);
    if (at === undefined || at.start >= now) return step;
    const { start, finish, hands } = at;
    if (finish <= now) return { ...step, progress: { kind: 'done', start, finish } };
    return { ...step, progress: { kind: 'under way', start, expectedFinish: finish + stepLonger_min, hands } };
  });
  const made = plan.changes.filter((change) => change.finish <= now).sort((a, b) => a.finish - b.finish);
  const isOpen = new Set(steps.filter(({ progress }) => progress.kind === 'open').map(({ id }) => id));
  const [wetFrom, wetTo] = [now + rain.after_min, now + rain.after_min + rain.lasts_min];
  return {
    ...problem,
    now,
    steps,
    aspects: problem.aspects.map((aspect) => ({
      ...aspect,
      initial: made.findLast((change) => change.aspect === aspect.id)?.to ?? aspect.initial,
    })),
    hours: problem.hours.map((hour, n) => ({ ...hour, rain: hour.rain || (n * 60 >= wetFrom && n * 60 < wetTo) })),
    previous: plan.steps.filter(({ step }) => isOpen.has(step)).map(({ step, start }) => ({ step, start })),
  };
}

/** @param beside  a thread that is up, as it is in the app by then, to search in beside; null: one search alone */
export function replanTimes(
  seeds: readonly number[],
  marks_ms: readonly number[],
  beside: BesideThread | null,
): ReplanTime[] {
  const { problem, plan } = lateDemo();
  const before = new Map(problem.previous.map(({ step, start }) => [step, start]));
  return seeds.map((seed) => {
    const began = performance.now();
    const spent_ms = () => performance.now() - began;
    const search = startSearch(problem, { seed, plan });
    search.advance(1);
    const firstPlan_ms = spent_ms();
    beside?.begin(search, problem, { seed, plan });
    const after = marks_ms.map((mark): ReplanWorth => {
      while (spent_ms() < mark && !search.advance(1).finished) beside?.swap();
      const spent = spent_ms();
      const outcome = search.outcome('as it stands');
      const { missed, weight, setUp_min, moved_min } = outcome.worth;
      const moved = outcome.plan.steps.filter(({ step, start }) => (before.get(step) ?? start) !== start).length;
      return { spent_ms: spent, missed, weight, setUp_min, moved, moved_min };
    });
    beside?.end();
    return { seed, firstPlan_ms, after, violations: violations(search.outcome('as it stands').plan, problem).length };
  });
}

export const replanTimeHead = [
  '| seed | first plan | after | missed | weight | set-ups | steps moved | moved | violations |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- |',
];

export function replanTimeRows({ seed, firstPlan_ms, after, violations: broken }: ReplanTime): string[] {
  return after.map(
    ({ spent_ms, missed, weight, setUp_min, moved, moved_min }) =>
      `| ${seed} | ${firstPlan_ms.toFixed(0)} ms | ${spent_ms.toFixed(0)} ms | ${missed.toFixed(1)} | ${weight.toFixed(1)} | ${setUp_min} min | ${moved} | ${moved_min} min | ${broken} |`,
  );
}
