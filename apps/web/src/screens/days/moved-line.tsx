/** What moved since the keeper last saw the plan: said above it until it is seen, with the way to begin afresh. */
import { memo, useMemo } from 'react';
import type { Book } from '#boat-book';
import { type MovesWords, movesInWords, movesSince, type PlanMoves } from '#reckoning';
import { type PlanInHand, planBook } from './planner.ts';
import { sayPlanSeen, useSeenPlan } from './seen-plan.ts';

export interface Moved {
  readonly moves: PlanMoves;
  readonly words: MovesWords;
}

/** so many are named at once; the rest unfold */
const namedAtOnce = 4;

/** What moved; null while a plan is being made, and where nothing did. */
export function useMoved(book: Book, { state, problem, picture }: PlanInHand): Moved | null {
  const seen = useSeenPlan(book);
  const settled = state === 'settled' || state === 'stopped';
  return useMemo(() => {
    if (!settled || seen === null || problem === null || picture === null) return null;
    const moves = movesSince(seen, picture.outcome.plan, problem);
    const words = movesInWords(moves, problem);
    return words.lead === null ? null : { moves, words };
  }, [settled, seen, problem, picture]);
}

export const MovedLine = memo(function MovedLine({
  book,
  moved,
}: {
  readonly book: Book;
  readonly moved: Moved | null;
}) {
  if (moved === null) return null;
  const { lead, each } = moved.words;
  const line = ({ step, words }: (typeof each)[number]) => <li key={step}>{words}</li>;
  return (
    <section className="days-moved" aria-label="What moved">
      <p>
        <span className="days-moved-sign" aria-hidden="true" />
        <b>{lead}</b>
      </p>
      <ul>{each.slice(0, namedAtOnce).map(line)}</ul>
      {each.length > namedAtOnce && (
        <details>
          <summary>and {each.length - namedAtOnce} more</summary>
          <ul>{each.slice(namedAtOnce).map(line)}</ul>
        </details>
      )}
      <p className="days-moved-acts">
        <button type="button" onClick={() => sayPlanSeen(book)}>
          Seen
        </button>
        <button type="button" className="words" onClick={() => planBook(book, { forget: true })}>
          Plan afresh
        </button>
      </p>
    </section>
  );
});
