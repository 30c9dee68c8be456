/** The answer for an outing as far as it is there, and how far that is. */
import type { Book, Id, Outing } from '#boat-book';
import { jobsOfOuting, type OutingFit, outingFit } from '#reckoning';
import type { PlanInHand } from '../days/planner.ts';
import { plannerAtWork, plannerSaid } from './planner-said.ts';
import { useBeside } from './use-beside.ts';

export interface AnswerSoFar extends OutingFit {
  /** what is being looked at still, or again */
  readonly looking: readonly string[];
  /** how far the planner is; null: it is done, or has nothing to do */
  readonly planning: string | null;
}

/** @param plan  null: no outing hangs on one */
export function useAnswer(book: Book, id: Id, outing: Outing, plan: PlanInHand | null): AnswerSoFar {
  const { gear, nights, looking } = useBeside(book, id);
  const knows = plan === null ? null : plannerSaid(plan);
  return {
    ...outingFit(book, id, outing, Date.now(), { gear, nights, knows }),
    looking,
    planning: plan === null || jobsOfOuting(book, id, outing).length === 0 ? null : plannerAtWork(plan),
  };
}
