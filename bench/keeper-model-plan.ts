/** Reads the solver's values for `keeper-model.ts` back into a plan, in minutes. */
import type { Plan, PlannedChange, PlannedStep, PlannedWait, Problem, ProblemStep } from '#workplan';
import { waitFinish } from '../checks/workplan/minute-tables.ts';

export type PlanFrom = (values: Readonly<Record<string, unknown>>) => Plan;

const grid_min = 5;

/**
 * @param perDay  windows of the cover and of the mast, and changes of the board, a day
 * @param mixers  the steps that use the mix, in the model's order
 */
export function planReader(
  problem: Problem,
  perDay: { readonly cover: number; readonly mast: number; readonly board: number },
  mixers: readonly ProblemStep[],
): PlanFrom {
  const dayAt = (minute: number) => problem.days.find(({ from, to }) => from <= minute && minute < to)!.id;
  const [keeper, friend] = problem.hands.map(({ id }) => id);
  return (values) => {
    const row = <T>(name: string) => (values[name] ?? []) as readonly T[];
    const minutes = (name: string) => row<number>(name).map((tick) => tick * grid_min);
    const done = new Set(problem.jobs.filter((_, index) => row<boolean>('x')[index]).map(({ id }) => id));
    const [starts, ends] = [minutes('s'), minutes('e')];
    const batch = row<readonly boolean[]>('batch');
    const steps: PlannedStep[] = [];
    const waits: PlannedWait[] = [];
    for (const [index, step] of problem.steps.entries()) {
      if (!done.has(step.job)) continue;
      const [start, finish] = [starts[index]!, ends[index]!];
      const window = problem.precedence.find((one) => one.after === step.id && one.greatest_min !== null);
      const abrade = row<boolean>('late')[index] && window?.past.kind === 'abrade' ? window.past.minutes : 0;
      const from = batch[mixers.indexOf(step)]?.indexOf(true) ?? -1;
      steps.push({
        step: step.id,
        start,
        finish,
        hands: [
          ...(row<boolean>('keeper')[index] ? [keeper!] : []),
          ...(row<boolean>('friend')[index] ? [friend!] : []),
        ],
        day: dayAt(start),
        batchOf: from < 0 ? null : mixers[from]!.id,
        abrade_min: abrade,
      });
      for (const wait of step.waits) {
        const { finish: over, tooCold } = waitFinish(problem, wait, finish);
        waits.push({ step: step.id, wait: wait.id, start: finish, finish: over ?? problem.horizon, tooCold });
      }
    }
    const changes: PlannedChange[] = [];
    const change = (aspect: string, from: string, to: string, start: number) => {
      const listed = problem.aspects
        .find(({ id }) => id === aspect)!
        .changes.find((one) => one.from === from && one.to === to)!;
      changes.push({ aspect, from, to, start, finish: start + listed.minutes, hands: [keeper!], day: dayAt(start) });
    };
    for (const [aspect, rest, other] of [
      ['cover', 'on', 'off'],
      ['mast', 'down', 'up'],
    ] as const)
      for (let w = 0; w < problem.days.length * perDay[aspect]; w++) {
        if (!row<boolean>(`${aspect}_used`)[w]) continue;
        change(aspect, rest, other, minutes(`${aspect}_open`)[w]!);
        change(aspect, other, rest, minutes(`${aspect}_shut`)[w]!);
      }
    const board = problem.aspects.find(({ id }) => id === 'board')!;
    for (const [b, kind] of row<number>('board_kind').entries())
      if (kind > 0) {
        const { from, to } = board.changes[kind - 1]!;
        change('board', from, to, minutes('board_start')[b]!);
      }
    changes.sort((a, b) => a.start - b.start);
    const leftOut = problem.jobs.filter(({ id }) => !done.has(id)).map(({ id }) => id);
    return { steps, waits, changes, leftOut };
  };
}
