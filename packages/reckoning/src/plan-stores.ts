import type { Book, Day, Id } from '#boat-book';
import { addDays, instantAt } from '#units';
import type { StoreLine } from '#workplan';
import { type PlanNote, planNote } from './plan-note.ts';
import { dayInWords } from './when-in-words.ts';

/** What is expected on a day is counted on from this clock time. Our assumption. */
export const assumedArrival_clock = '09:00';

/**
 * The first day, from `day` on, on whose arrival time a thing can still come: the day after where that time has gone
 * by, so that a thing got the same day is counted on from the next morning.
 *
 * @param now  epoch ms
 */
export function firstMorning(day: Day, now: number, timeZone: string): Day {
  return instantAt(day, assumedArrival_clock, timeZone) < now ? addDays(day, 1) : day;
}

/**
 * The stores as the planner takes them: on hand from the start; expected from 09:00 of their day; with a lead time,
 * as if ordered today (named in a note where an open step needs it); not in sight where there is neither, or where
 * the day expected has gone by and they are still not marked as here (named in a note).
 *
 * @param now  epoch ms
 */
export function storeLines(
  book: Book,
  {
    today,
    now,
    timeZone,
    minute,
    notes,
  }: {
    readonly today: Day;
    readonly now: number;
    readonly timeZone: string;
    readonly minute: (ms: number) => number;
    readonly notes: PlanNote[];
  },
): StoreLine[] {
  const needed = storesNeeded(book);
  const arrival = (day: Day) => Math.max(0, minute(instantAt(day, assumedArrival_clock, timeZone)));
  return Object.entries(book.stores).map(([id, store]) => {
    if (store.onHand) return { id, name: store.name, from: 0 };
    if (store.expected === null) {
      if (store.lead_days === null) return { id, name: store.name, from: null };
      const day = firstMorning(addDays(today, store.lead_days), now, timeZone);
      if (needed.has(id))
        notes.push(
          planNote(
            'part not ordered',
            `${store.name}: not ordered. It is planned as if ordered today, and here on ${dayInWords(day)}.`,
          ),
        );
      return { id, name: store.name, from: arrival(day) };
    }
    if (store.expected < today) {
      notes.push(
        planNote(
          'part overdue',
          `${store.name}: expected ${dayInWords(store.expected)} and not marked as here. The plan does not count on it.`,
        ),
      );
      return { id, name: store.name, from: null };
    }
    return { id, name: store.name, from: arrival(store.expected) };
  });
}

/** The stores that a step still to do of an open job needs. */
function storesNeeded(book: Book): ReadonlySet<Id> {
  return new Set(
    Object.values(book.steps).flatMap((step) =>
      step.progress.kind === 'open' && book.jobs[step.job]?.state === 'open' ? step.stores : [],
    ),
  );
}
