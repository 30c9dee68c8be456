import type { Book, Day } from '#boat-book';
import { instantAt } from '#units';
import type { StoreLine } from '#workplan';
import { type PlanNote, planNote } from './plan-note.ts';
import { dayInWords } from './when-in-words.ts';

/** What is expected on a day is counted on from this clock time. Our assumption. */
export const assumedArrival_clock = '09:00';

/**
 * The stores as the planner takes them: on hand from the start; expected from 09:00 of their day; not in sight
 * where there is no day, or where the day has gone by and they are still not marked as here (named in a note).
 */
export function storeLines(
  book: Book,
  today: Day,
  timeZone: string,
  minute: (ms: number) => number,
  notes: PlanNote[],
): StoreLine[] {
  return Object.entries(book.stores).map(([id, store]) => {
    if (store.onHand) return { id, name: store.name, from: 0 };
    if (store.expected === null) return { id, name: store.name, from: null };
    if (store.expected < today) {
      notes.push(
        planNote(
          'part overdue',
          `${store.name}: expected ${dayInWords(store.expected)} and not marked as here. The plan does not count on it.`,
        ),
      );
      return { id, name: store.name, from: null };
    }
    return {
      id,
      name: store.name,
      from: Math.max(0, minute(instantAt(store.expected, assumedArrival_clock, timeZone))),
    };
  });
}
