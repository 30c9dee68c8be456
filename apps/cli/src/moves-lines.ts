import type { Book } from '#boat-book';
import { movesInWords, movesSince, planInForce } from '#reckoning';
import type { Outcome, Problem } from '#workplan';

/** What moved since the plan kept in the file; nothing where there is none, or nothing did. */
export function movesLines({ plan }: Outcome, problem: Problem, book: Book): string[] {
  const kept = planInForce(book);
  if (kept === null) return [];
  const { lead, each } = movesInWords(movesSince(kept, plan, problem), problem);
  return lead === null
    ? []
    : ['', `Since the plan kept in the file: ${lead}`, ...each.map(({ words }) => `  ${words}`)];
}
