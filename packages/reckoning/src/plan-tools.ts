import type { Book, Day } from '#boat-book';
import { instantAt } from '#units';
import type { Problem } from '#workplan';
import { type PlanNote, planNote } from './plan-note.ts';
import { assumedArrival_clock } from './plan-stores.ts';
import { dayInWords } from './when-in-words.ts';

/**
 * The tools as the planner takes them: as many as there are, less those lent out until 09:00 of the day they are to be
 * back; those with no such day are not counted on. Tools lent that open work wants are named in a note.
 */
export function planTools(
  book: Book,
  {
    horizon,
    today,
    timeZone,
    minute,
    notes,
  }: {
    readonly horizon: number;
    readonly today: Day;
    readonly timeZone: string;
    readonly minute: (ms: number) => number;
    readonly notes: PlanNote[];
  },
): Problem['tools'] {
  const wanted = new Set(
    Object.values(book.steps).flatMap((step) =>
      step.progress.kind === 'open' && book.jobs[step.job]?.state === 'open' ? step.tools.map(({ tool }) => tool) : [],
    ),
  );
  return Object.entries(book.tools).map(([id, tool]) => {
    const lent = tool.lent ?? null;
    const here = Math.max(0, tool.count - (lent?.count ?? 0));
    // a day that has gone by without it is no day
    const backDay = lent?.back != null && lent.back >= today ? lent.back : null;
    const back =
      backDay === null
        ? horizon
        : Math.min(horizon, Math.max(0, minute(instantAt(backDay, assumedArrival_clock, timeZone))));
    if (lent !== null && wanted.has(id))
      notes.push(
        planNote(
          'tool lent',
          `${tool.name}: lent to ${lent.to}${backDay !== null ? `. It is counted on from ${dayInWords(backDay)}.` : `${lent.back === null ? ', with no day it comes back' : `, and was to be back ${dayInWords(lent.back)}`}. The plan does not count on it.`}`,
        ),
      );
    const spans = [
      { from: 0, to: lent === null ? horizon : back, count: here },
      { from: lent === null ? horizon : back, to: horizon, count: tool.count },
    ];
    return { id, name: tool.name, capacity: spans.filter(({ from, to, count }) => to > from && count > 0) };
  });
}
