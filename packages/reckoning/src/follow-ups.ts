/** What a finished job leaves to be done: when each follows, and the job it goes in as. */
import type { Book, Day, Id, Job, NewJob } from '#boat-book';
import type { RecipeFollowUp } from '#jobs';
import { addDays, daysBetween, localAt, minuteOfClock } from '#units';
import { dayInWords } from './when-in-words.ts';

/** What follows an outing, or has waited its days without one, is to be done within so many days then. Our judgement. */
const assumedGrace_days = 14;

export interface FollowUpTold {
  readonly title: string;
  readonly because: string;
  /** the first day it makes sense, and the day it is to be done by */
  readonly from: Day;
  readonly due: Day;
  /** `after ‘Whit sail’: from Tuesday 9 June, by Tuesday 23 June` */
  readonly when: string;
  /** the job in the book that it was put in as already; null: not yet */
  readonly already: Id | null;
  /** one of the `followUps` of the operation `putInFollowUps` */
  readonly job: NewJob;
}

/**
 * The follow-ups of a job, in the order they come round; empty where none are known, or there is no such job.
 *
 * Each goes in as a job of one step in the origin's zone, at its fitting, by its day. The planner keeps it back until
 * then where the origin's last step was ticked: the step follows that one by so many minutes.
 *
 * @param today  the day the job is taken to be done on, where it is not closed yet
 */
export function followUpsOf(book: Book, jobId: Id, today: Day): FollowUpTold[] {
  const job = book.jobs[jobId];
  if (job === undefined) return [];
  const done = job.closed ?? today;
  return (job.followUps ?? [])
    .map((followUp) => told(book, jobId, job, followUp, done))
    .sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
}

function told(book: Book, origin: Id, job: Job, followUp: RecipeFollowUp, done: Day): FollowUpTold {
  const { title, because, minutes, consequence } = followUp;
  const { from, due, when } = times(book, followUp, done);
  const already = Object.entries(book.jobs).find(([, other]) => other.followsJob === origin && other.title === title);
  const follows = heldBack(book, origin, from);
  return {
    title,
    because,
    from,
    due,
    when,
    already: already?.[0] ?? null,
    job: {
      title,
      why: because,
      consequence,
      zone: job.zone,
      fitting: job.fitting,
      due,
      steps: [{ title, minutes, hands: 1, ...(follows === null ? {} : { follows: [follows] }) }],
    },
  };
}

function times(book: Book, { after }: RecipeFollowUp, done: Day) {
  if (after.kind === 'days') {
    const from = addDays(done, after.least_days);
    const due = addDays(done, after.most_days);
    return { from, due, when: spanInWords(from, due, done) };
  }
  const next = Object.values(book.outings)
    .filter(({ date }) => date >= done)
    .sort((a, b) => (a.date < b.date ? -1 : 1))[0];
  if (next === undefined) {
    const from = addDays(done, after.else_days);
    const due = addDays(from, assumedGrace_days);
    return { from, due, when: `no outing is in the book: ${spanInWords(from, due, done)}` };
  }
  const from = addDays(next.date, next.nights + 1);
  const due = addDays(from, assumedGrace_days);
  return { from, due, when: `after ‘${next.title}’: ${spanInWords(from, due, done)}` };
}

function spanInWords(from: Day, due: Day, done: Day): string {
  return from <= done ? `by ${dayInWords(due)}` : `from ${dayInWords(from)}, by ${dayInWords(due)}`;
}

/** Keeps a step back until the midnight before `from`, by the origin's step that was finished last. */
function heldBack(book: Book, origin: Id, from: Day) {
  const timeZone = Object.values(book.places)[0]?.timeZone;
  const ticked = Object.entries(book.steps).flatMap(([id, { job, progress }]) =>
    job === origin && progress.kind === 'done' ? [{ id, finished: progress.finished }] : [],
  );
  const last = ticked.sort((a, b) => (a.finished < b.finished ? 1 : -1))[0];
  if (timeZone === undefined || last === undefined) return null;
  const { day, clock } = localAt(Date.parse(last.finished), timeZone);
  const least_min = daysBetween(day, from) * 1440 - minuteOfClock(clock);
  if (least_min <= 0) return null;
  return { step: last.id, wait: null, least_min, greatest_min: null, past: { kind: 'forbidden' } } as const;
}
