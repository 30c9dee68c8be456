import type { Book, Clock, Day, Id, JobDay, Place } from '#boat-book';
import { addDays, instantAt } from '#units';
import { type PlanNote, planNote } from './plan-note.ts';
import { dayInWords } from './when-in-words.ts';

/** A job day of the book with its instants. */
export interface DatedJobDay {
  readonly id: Id;
  readonly record: JobDay;
  readonly place: Place;
  readonly placeId: Id;
  /** epoch ms */
  readonly from: number;
  readonly to: number;
}

/** All job days of the book that can be read, in order of time, past ones too (they say where the boat lay). */
export function datedJobDays(book: Book): { readonly days: readonly DatedJobDay[]; readonly notes: PlanNote[] } {
  const notes: PlanNote[] = [];
  const days: DatedJobDay[] = [];
  for (const [id, record] of Object.entries(book.jobDays)) {
    const place = book.places[record.place];
    if (!place) {
      notes.push(
        planNote('job day left aside', `${dayInWords(record.date)} has no place in the book: it is not planned.`, {
          day: id,
        }),
      );
      continue;
    }
    const from = instantAt(record.date, record.from, place.timeZone);
    const to = endInstant(record.date, record.from, record.to, place.timeZone);
    days.push({ id, record, place, placeId: record.place, from, to });
  }
  days.sort((a, b) => a.from - b.from || a.to - b.to || (a.id < b.id ? -1 : 1));
  return { days, notes };
}

/**
 * The job days a plan is made over: not over yet, within 90 days, and none running into the one before it
 * (the earlier stands; the later is named in a note).
 */
export function jobDaysAhead(
  all: readonly DatedJobDay[],
  nowMs: number,
  lastMs: number,
): { readonly days: readonly DatedJobDay[]; readonly notes: PlanNote[] } {
  const notes: PlanNote[] = [];
  const days: DatedJobDay[] = [];
  for (const day of all) {
    if (day.to <= nowMs) continue;
    const before = days.at(-1);
    if (day.to > lastMs)
      notes.push(
        planNote('job day left aside', `${dayInWords(day.record.date)} is too far off: a plan reaches 90 days.`, {
          day: day.id,
        }),
      );
    else if (before && day.from < before.to)
      notes.push(
        planNote(
          'job day left aside',
          `${dayInWords(day.record.date)} from ${day.record.from} starts before the job day on ${dayInWords(before.record.date)} ends at ${before.record.to}: only the earlier one is planned.`,
          { day: day.id },
        ),
      );
    else days.push(day);
  }
  return { days, notes };
}

/** The instant a clock time is reached after another on the same day; past midnight where it is not later. */
export function endInstant(date: Day, from: Clock, to: Clock, timeZone: string): number {
  return instantAt(to > from ? date : addDays(date, 1), to, timeZone);
}
