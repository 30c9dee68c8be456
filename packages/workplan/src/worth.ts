import type { Plan, Worth } from './plan.ts';
import type { Problem } from './problem.ts';

/**
 * What a plan is worth, counted from the plan alone. A job counts as done unless it is in `plan.leftOut`; a job all
 * of whose steps are done or under way always counts. `moved` counts open steps of the plan that start elsewhere
 * than in `problem.previous`; steps it does not name are not counted.
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
  let moved = 0;
  for (const { step, start, finish } of plan.steps) {
    if (!open.has(step)) continue;
    lastFinish = Math.max(lastFinish, finish);
    const was = before.get(step);
    if (was !== undefined && was !== start) moved++;
  }
  return { missed, weight, setUp_min, lastFinish, moved };
}

/**
 * Which of two plans of the same problem is better: under 0 when the first is, 0 when they are equal. In order: less
 * missed, more weight, less set-up changing, sooner finish, fewer steps moved.
 */
export function compareWorth(a: Worth, b: Worth): number {
  return (
    a.missed - b.missed ||
    b.weight - a.weight ||
    a.setUp_min - b.setUp_min ||
    a.lastFinish - b.lastFinish ||
    a.moved - b.moved
  );
}
