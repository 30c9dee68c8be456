import type { Plan, Worth } from './plan.ts';
import type { Problem } from './problem.ts';

/**
 * What a plan is worth, counted from the plan alone. A job counts as done unless it is in `plan.leftOut`; a job all
 * of whose steps are done or under way always counts. `moved_min` sums |start − start before| over the open steps of
 * the plan that `problem.previous` names; steps it does not name, and steps left out, add nothing.
 *
 * @param plan  one in which `violations` finds nothing
 */
export function worthOf(plan: Plan, problem: Problem): Worth {
  const left = new Set(plan.leftOut);
  const open = new Set(problem.steps.filter(({ progress }) => progress.kind === 'open').map(({ id }) => id));
  const before = new Map(problem.previous.map(({ step, start }) => [step, start]));
  let missed = 0;
  let weight = 0;
  for (const job of problem.jobs) {
    if (!left.has(job.id)) weight += job.weight;
    else if (job.deadline !== null || !job.optional) missed += job.weight;
  }
  let setUp_min = 0;
  for (const { start, finish } of plan.changes) setUp_min += finish - start;
  let lastFinish = 0;
  let moved_min = 0;
  for (const { step, start, finish } of plan.steps) {
    if (!open.has(step)) continue;
    lastFinish = Math.max(lastFinish, finish);
    const was = before.get(step);
    if (was !== undefined) moved_min += Math.abs(start - was);
  }
  return { missed, weight, setUp_min, moved_min, lastFinish };
}

/**
 * Which of two plans of the same problem is better: under 0 when the first is, 0 when they are equal. In order: less
 * missed, more weight, less set-up changing, less moved from the plan before, sooner finish.
 *
 * Source: the sum of absolute deviations of start times is the instability cost of O. Lambrechts, E. Demeulemeester,
 * W. Herroelen, Journal of Scheduling 11 (2008) 121–136 (abstract read). That it counts before the finish is ours:
 * decisions/0008-steadiness.md.
 */
export function compareWorth(a: Worth, b: Worth): number {
  return (
    a.missed - b.missed ||
    b.weight - a.weight ||
    a.setUp_min - b.setUp_min ||
    a.moved_min - b.moved_min ||
    a.lastFinish - b.lastFinish
  );
}
