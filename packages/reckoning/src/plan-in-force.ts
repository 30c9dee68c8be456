import type { Book, KeptPlan } from '#boat-book';
import type { Plan, Problem } from '#workplan';
import { inOrderKnown } from './in-order-known.ts';

/** The plan kept last in the book; null where none was kept. */
export function planInForce(book: Pick<Book, 'plans'>): KeptPlan | null {
  return inOrderKnown(Object.values(book.plans)).at(-1) ?? null;
}

/** A kept plan in the minutes of a problem, whose minute 0 is another instant. */
export function planInMinutesOf(
  { startsAt, plan }: Pick<KeptPlan, 'startsAt' | 'plan'>,
  problem: Pick<Problem, 'startsAt'>,
): Plan {
  const by = Math.round((Date.parse(startsAt) - Date.parse(problem.startsAt)) / 60_000);
  const later = <T extends { readonly start: number; readonly finish: number }>(part: T): T => ({
    ...part,
    start: part.start + by,
    finish: part.finish + by,
  });
  return { ...plan, steps: plan.steps.map(later), waits: plan.waits.map(later), changes: plan.changes.map(later) };
}
