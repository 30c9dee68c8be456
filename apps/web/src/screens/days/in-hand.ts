/** What is in hand at a moment of a plan, what cures, and what comes next. Pure. */
import type { Book } from '#boat-book';
import type { Minute, Plan, PlannedChange, PlannedStep, PlannedWait, Problem, ProblemStep } from '#workplan';

export type Item =
  | { readonly kind: 'step'; readonly key: string; readonly planned: PlannedStep; readonly step: ProblemStep }
  | { readonly kind: 'change'; readonly key: string; readonly planned: PlannedChange };

export interface Moment {
  /** what the keeper has in hand or takes in hand next; null: nothing is left to do */
  readonly first: Item | null;
  /** what other hands are busy with meanwhile */
  readonly beside: readonly Item[];
  /** in order of their ends */
  readonly curing: readonly PlannedWait[];
  readonly next: readonly Item[];
}

/** What every piece of the screen about an item in hand is given. */
export interface InHandProps {
  readonly item: Item;
  readonly book: Book;
  readonly problem: Problem;
  readonly now: Minute;
}

/**
 * How the plan stands at a minute: a step under way comes first, otherwise what starts soonest.
 *
 * @param isTicked  of steps: done meanwhile, which a plan made before does not know
 */
export function momentOf(
  problem: Problem,
  plan: Plan,
  now: Minute,
  isTicked: (step: string) => boolean = () => false,
): Moment {
  const keeper = problem.hands[0]?.id;
  const open: Item[] = [];
  const steps = new Map(problem.steps.map((step) => [step.id, step]));
  for (const planned of plan.steps) {
    const step = steps.get(planned.step);
    if (step && step.progress.kind !== 'done' && !isTicked(step.id))
      open.push({ kind: 'step', key: planned.step, planned, step });
  }
  for (const planned of plan.changes) open.push({ kind: 'change', key: `${planned.aspect}-${planned.start}`, planned });
  open.sort((a, b) => a.planned.start - b.planned.start || Number(isUnderWay(b)) - Number(isUnderWay(a)));
  const keepers = (item: Item) => keeper === undefined || item.planned.hands.includes(keeper);
  const first =
    open.find((item) => isUnderWay(item) && keepers(item)) ??
    open.find((item) => !isUnderWay(item) && keepers(item)) ??
    open[0] ??
    null;
  const beside = open.filter(
    (item) =>
      item !== first &&
      (isUnderWay(item) ||
        (!keepers(item) && first !== null && item.planned.start <= Math.max(now, first.planned.start))),
  );
  return {
    first,
    beside,
    // a step ticked within this minute ends at the next: its wait has begun
    curing: plan.waits.filter((w) => w.start <= now + 1 && w.finish > now).sort((a, b) => a.finish - b.finish),
    next: open.filter((item) => item !== first && !beside.includes(item)),
  };
}

/** Whether a step is done by now, as the book has it. */
export const ticksOf =
  ({ steps }: Book) =>
  (step: string): boolean =>
    steps[step]?.progress.kind === 'done';

export function isUnderWay(item: Item): boolean {
  return item.kind === 'step' && item.step.progress.kind === 'under way';
}
