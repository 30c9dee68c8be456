/** The plan in hand for the outings that hang on it: asked for only where one has jobs that stand before it. */
import type { Book, Id, Outing } from '#boat-book';
import { jobsOfOuting } from '#reckoning';
import { type PlanInHand, usePlan } from '../days/planner.ts';

/** The answer is on the screen before the planner is asked. [ms] */
const afterAnswer_ms = 400;

/** null: none of them hangs on one */
export function usePlanOfOutings(book: Book, outings: readonly (readonly [Id, Outing])[]): PlanInHand | null {
  const needed = outings.some(([id, outing]) => jobsOfOuting(book, id, outing).length > 0);
  const plan = usePlan(needed ? book : null, undefined, afterAnswer_ms);
  return needed ? plan : null;
}
