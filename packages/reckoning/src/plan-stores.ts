import type { Book, Day, Id, StoreRecord } from '#boat-book';
import { addDays, instantAt } from '#units';
import type { ProblemStep, StoreLine } from '#workplan';
import { type PlanNote, planNote } from './plan-note.ts';
import { countInWords } from './store-amounts.ts';
import { type StoreStanding, storeStandings } from './store-standing.ts';
import { dayInWords, listInWords } from './when-in-words.ts';

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

/** What stands in a plan for the part of a store that is not there yet. */
const moreOf = (store: Id) => `${store}.more`;

/** The store of the book that a line of a plan is, or is more of. */
export function storeOfLine(line: Id, book: Pick<Book, 'stores'>): Id {
  return book.stores[line] === undefined && line.endsWith('.more') ? line.slice(0, -'.more'.length) : line;
}

export interface StoresToPlan {
  readonly lines: readonly StoreLine[];
  /** the same steps, those of jobs that what is there does not reach for asking for the part still to come */
  readonly steps: readonly ProblemStep[];
}

/**
 * The stores as the planner takes them: on hand from the start; expected from 09:00 of their day; with a lead time,
 * as if ordered today (named in a note where an open step needs it); not in sight where there is neither, or where
 * the day expected has gone by and they are still not marked as here (named in a note).
 *
 * Of what is there and counted the jobs get theirs in the order of their weight; the others wait for what is still to
 * be got of it. What is past its date is not counted on. Both are named in a note.
 *
 * @param now  epoch ms
 */
export function storesToPlan(
  book: Book,
  steps: readonly ProblemStep[],
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
): StoresToPlan {
  const standings = storeStandings(book, today);
  const arrival = (day: Day) => Math.max(0, minute(instantAt(day, assumedArrival_clock, timeZone)));
  const short = new Map<Id, ReadonlySet<Id>>();
  const lines = Object.entries(book.stores).flatMap(([id, store]): StoreLine[] => {
    const stands = standings.get(id)!;
    const { name } = store;
    const past = store.onHand && (stands.keeps?.past ?? false);
    if (store.onHand && !stands.short && !past) return [{ id, name, from: 0 }];
    const from = whenMoreComes(store, { today, now, timeZone, arrival, notes, needed: stands.needs.length > 0 });
    if (past && stands.needs.length > 0)
      notes.push(planNote('part past its date', `${name}: ${stands.keeps!.words}. The plan does not count on it.`));
    if (!store.onHand || past) return [{ id, name, from }];
    notes.push(planNote('not enough of a part', notEnough(name, stands)));
    short.set(id, new Set(stands.needs.flatMap((each) => (each.short ? [each.job] : []))));
    return [
      { id, name, from: 0 },
      { id: moreOf(id), name: `${name}, more of it`, from },
    ];
  });
  return {
    lines,
    steps: steps.map((step) =>
      step.stores.some((id) => short.get(id)?.has(step.job))
        ? { ...step, stores: step.stores.map((id) => (short.get(id)?.has(step.job) ? moreOf(id) : id)) }
        : step,
    ),
  };
}

/** The minute at which what is not there comes; null: not in sight. */
function whenMoreComes(
  { name, expected, lead_days }: StoreRecord,
  {
    today,
    now,
    timeZone,
    arrival,
    notes,
    needed,
  }: {
    readonly today: Day;
    readonly now: number;
    readonly timeZone: string;
    readonly arrival: (day: Day) => number;
    readonly notes: PlanNote[];
    readonly needed: boolean;
  },
): number | null {
  if (expected === null) {
    if (lead_days === null) return null;
    const day = firstMorning(addDays(today, lead_days), now, timeZone);
    if (needed)
      notes.push(
        planNote(
          'part not ordered',
          `${name}: not ordered. It is planned as if ordered today, and here on ${dayInWords(day)}.`,
        ),
      );
    return arrival(day);
  }
  if (expected < today) {
    notes.push(
      planNote(
        'part overdue',
        `${name}: expected ${dayInWords(expected)} and not marked as here. The plan does not count on it.`,
      ),
    );
    return null;
  }
  return arrival(expected);
}

/** `M6 × 40 bolts: 6 are there and the open jobs take 8. 'Fit the cleat' waits for more.` */
function notEnough(name: string, { there, reserved, unit, needs }: StoreStanding): string {
  const waits = needs.filter((each) => each.short).map(({ title }) => `'${title}'`);
  const sums =
    there === null || reserved === null || unit === null
      ? 'not enough is there'
      : `${countInWords(there, unit)} there, and the open jobs take ${countInWords(reserved, unit)}`;
  return `${name}: ${sums}. ${listInWords(waits)} ${waits.length === 1 ? 'waits' : 'wait'} for more.`;
}
