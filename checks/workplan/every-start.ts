/**
 * The least that the steps of a plan can move, by trying every start of each of them: every ten minutes of the days and
 * the starts they had, with the hands, batches and set-up changes as the plan has them. Judged by `violations` and
 * `worthOf` alone.
 */
import {
  compareWorth,
  type Plan,
  type PlannedStep,
  type Problem,
  violations,
  type Worth,
  waitAfter,
  worthOf,
} from '#workplan';

/** null: no such plan keeps the rules */
export function everyStart(problem: Problem, plan: Plan): Worth | null {
  if (plan.changes.length > 0) return null;
  const open = plan.steps.filter(({ step }) => problem.steps.find(({ id }) => id === step)?.progress.kind === 'open');
  if (open.some(({ batchOf, abrade_min }) => batchOf !== null || abrade_min > 0)) return null;
  const rest = plan.steps.filter((step) => !open.includes(step));
  const starts = [
    ...new Set([...problem.days.flatMap(({ from, to }) => tens(from, to)), ...open.map(({ start }) => start)]),
  ];
  let best: Worth | null = null;
  let tried = 0;
  const before = new Map(problem.previous.map(({ step, start }) => [step, start]));
  const lay = (at: number, laid: readonly PlannedStep[], moved_min: number): void => {
    // jobs and set-ups are the same in all, so what has moved further than the best already cannot better it
    if (tried > 60_000 || (best !== null && moved_min > best.moved_min)) return;
    const step = open[at];
    if (step === undefined) {
      tried++;
      const made = planOf(problem, [...rest, ...laid], plan.leftOut);
      if (violations(made, problem).length > 0) return;
      const worth = worthOf(made, problem);
      if (best === null || compareWorth(worth, best) < 0) best = worth;
      return;
    }
    const was = before.get(step.step) ?? step.start;
    for (const start of [...starts].sort((a, b) => Math.abs(a - was) - Math.abs(b - was))) {
      if (start < problem.now) continue;
      const day = problem.days.find(({ from, to }) => start >= from && start < to);
      if (day === undefined) continue;
      const finish = start + step.finish - step.start;
      const clash = laid.some(
        (other) =>
          other.start < finish && start < other.finish && other.hands.some((hand) => step.hands.includes(hand)),
      );
      if (!clash) lay(at + 1, [...laid, { ...step, start, finish, day: day.id }], moved_min + Math.abs(start - was));
    }
  };
  lay(0, [], 0);
  return tried > 60_000 ? null : best;
}

const tens = (from: number, to: number): number[] =>
  Array.from({ length: Math.ceil((to - from) / 10) }, (_, i) => from + 10 * i);

function planOf(problem: Problem, steps: readonly PlannedStep[], leftOut: readonly string[]): Plan {
  const order = new Map(problem.steps.map(({ id }, index) => [id, index]));
  const sorted = [...steps].sort((a, b) => order.get(a.step)! - order.get(b.step)!);
  return {
    steps: sorted,
    waits: sorted.flatMap(({ step, finish: start }) =>
      (problem.steps.find(({ id }) => id === step)?.waits ?? []).map((wait) => {
        const { finish, tooCold } = waitAfter(wait, start, problem.hours);
        return { step, wait: wait.id, start, finish: finish ?? problem.horizon, tooCold };
      }),
    ),
    changes: [],
    leftOut,
  };
}
