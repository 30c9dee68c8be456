import type { Book, Id, Job } from '#boat-book';
import { addDays, instantAt } from '#units';
import { type PlanNote, planNote } from './plan-note.ts';
import type { LinkedStep } from './plan-steps.ts';
import { dayInWords } from './when-in-words.ts';

export interface DatedJob {
  readonly id: Id;
  readonly job: Job;
  readonly steps: readonly LinkedStep[];
  readonly deadlineMs: number | null;
  readonly needed: boolean;
}

/** The end of the day a job is due, or the start of its outing, whichever is first; a date gone by is no deadline. */
export function jobDates(
  book: Book,
  id: Id,
  job: Job,
  { nowMs, timeZone: zone, notes }: { readonly nowMs: number; readonly timeZone: string; readonly notes: PlanNote[] },
) {
  const outing = job.outing === null ? undefined : book.outings[job.outing];
  const dueMs = job.due === null ? null : instantAt(addDays(job.due, 1), '00:00', zone);
  const outingMs = outing ? instantAt(outing.date, outing.from, zone) : null;
  if (dueMs !== null && dueMs <= nowMs)
    notes.push(
      planNote(
        'date passed',
        `'${job.title}' was due ${dayInWords(job.due!)}: it counts as needed, with no date to meet.`,
        { job: id },
      ),
    );
  if (outing && outingMs !== null && outingMs <= nowMs)
    notes.push(
      planNote(
        'date passed',
        `'${job.title}' was for ${outing.title} on ${dayInWords(outing.date)}, which has begun: it has no date now.`,
        { job: id },
      ),
    );
  const dates = [dueMs, outingMs].filter((ms): ms is number => ms !== null && ms > nowMs);
  return {
    deadlineMs: dates.length > 0 ? Math.min(...dates) : null,
    needed: dates.length > 0 || (dueMs !== null && dueMs <= nowMs),
  };
}
