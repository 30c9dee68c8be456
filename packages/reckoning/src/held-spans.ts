import type { Book, Id, Job } from '#boat-book';
import { instantAt } from '#units';
import type { MinuteSpan, PlanHour, Problem } from '#workplan';
import { type PlanNote, planNote } from './plan-note.ts';
import { type LinkedStep, waitsOver } from './plan-steps.ts';
import { dayInWords } from './when-in-words.ts';

interface HeldMatter {
  readonly book: Book;
  readonly id: Id;
  readonly job: Job;
  /** all steps of the job, in order */
  readonly steps: readonly LinkedStep[];
  readonly days: Problem['days'];
  readonly hours: readonly PlanHour[];
  readonly nowMinute: number;
  readonly minute: (ms: number) => number;
  readonly notes: PlanNote[];
}

/**
 * What each open step of a held job is held to. Its steps are held to the day; one that cannot be on that day, because
 * a wait before it in the job is not over by then however soon it is begun, is free. Held to a time, the first open step
 * starts then: its span is just as long as its likely minutes. A time that has passed, or of a job that was begun on
 * that day, holds to the day only.
 */
export function heldSpans(matter: HeldMatter): ReadonlyMap<Id, MinuteSpan> {
  const { book, id, job, steps, days, notes } = matter;
  if (job.heldTo === null) return new Map();
  const open = steps.filter(({ record }) => record.progress.kind === 'open');
  const day = days.find((each) => each.id === job.heldTo);
  if (day === undefined) {
    const date = book.jobDays[job.heldTo]?.date;
    notes.push(
      planNote(
        'taken from the book as',
        date
          ? `'${job.title}' was held to ${dayInWords(date)}, which is over or not planned: it is free again.`
          : `'${job.title}' was held to a job day that is no longer there: it is free again.`,
        { job: id },
      ),
    );
    return new Map();
  }
  const held = new Map<Id, MinuteSpan>();
  const at = heldMinute(matter, day);
  const earliest = soonest(open, matter, at ?? day.from + day.setOut_min);
  let first = at !== null;
  for (const { id: step, record } of open) {
    const start = earliest.get(step) ?? day.from;
    if (start + record.minutes.likely > day.to - day.clearUp_min) continue;
    held.set(
      step,
      first && at !== null
        ? { from: at, to: at + Math.max(1, Math.round(record.minutes.likely)) }
        : { from: day.from, to: day.to },
    );
    first = false;
  }
  // one that is too long for its day by itself is held to it all the same: the plan then says that it does not fit
  const [only] = open;
  if (held.size === 0 && only !== undefined) held.set(only.id, { from: day.from, to: day.to });
  return held;
}

/** The minute the job is held to; null where it is held to the day only. */
function heldMinute(
  { book, id, job, steps, nowMinute, minute, notes }: HeldMatter,
  day: Problem['days'][number],
): number | null {
  const record = book.jobDays[day.id];
  const place = record === undefined ? undefined : book.places[record.place];
  if (job.heldAt === null || record === undefined || place === undefined) return null;
  const begunThen = steps.some(
    ({ record: { progress } }) => progress.kind !== 'open' && minute(Date.parse(progress.started)) >= day.from,
  );
  if (begunThen) return null;
  const at = minute(instantAt(record.date, job.heldAt, place.timeZone));
  if (at >= nowMinute) return at;
  notes.push(
    planNote(
      'taken from the book as',
      `'${job.title}' was held to ${job.heldAt}, which has passed: it is held to the day.`,
      {
        job: id,
      },
    ),
  );
  return null;
}

/** The soonest each open step can start by the job's own order and waits, from a minute on. */
function soonest(open: readonly LinkedStep[], { hours, steps }: HeldMatter, from: number): ReadonlyMap<Id, number> {
  const starts = new Map<Id, number>();
  const own = new Map(steps.map((step) => [step.id, step]));
  // the links of a checked book make no ring; the bound keeps an unchecked one from going round here
  for (let round = 0; round <= open.length && starts.size < open.length; round++)
    for (const { id, links } of open) {
      const before = links.filter((link) => own.get(link.before)?.record.progress.kind === 'open');
      if (starts.has(id) || !before.every((link) => starts.has(link.before))) continue;
      const ends = before.map((link) => {
        const { record } = own.get(link.before)!;
        const finish = starts.get(link.before)! + record.minutes.likely;
        const waits = record.waits.filter((wait) => wait.id === link.wait);
        return (waitsOver(waits, hours, finish) ?? Number.POSITIVE_INFINITY) + link.least_min;
      });
      starts.set(id, Math.max(from, ...ends));
    }
  return starts;
}
