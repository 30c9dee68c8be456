/**
 * What the list of work shows of a book, and no more. It is kept beside the book as it last stood, so that the list is there
 * before the book is; words that go by the day are made when it is shown.
 */
import type { Boat, Book, Consequence, Id } from '#boat-book';
import { type RigsOfBook, rigsOfBook } from '#reckoning';
import { addDays, type Instant, instantAt, localAt } from '#units';
import { type JobWaits, minutesLeft, openJobs, stepsOf, waitsFor } from './open-work.ts';
import { zoneOf } from './today.ts';

/** Goes up with every change of what is kept: what an earlier version of the program kept is then left alone. */
const workForm = 3;
/** So many days from the one it is kept on, it is known without the time zones' rules what day it is. */
const daysKnown = 14;

export interface ShownJob {
  readonly id: Id;
  readonly title: string;
  readonly consequence: Consequence;
  /** null: it has none, or one that is not in the book */
  readonly zone: Id | null;
  readonly due: string | null;
  /** title of the outing it is for */
  readonly outing: string | null;
  readonly held: { readonly date: string; readonly at: string | null } | null;
  /** hands-on, still to do */
  readonly minutes: number;
  readonly steps: number;
  readonly stepsDone: number;
  readonly waits: JobWaits;
}

export interface WorkShown {
  readonly boat: Pick<Boat, 'name' | 'demo'>;
  /** IANA zone of the boat's place */
  readonly timeZone: string;
  /** open jobs, the gravest first */
  readonly jobs: readonly ShownJob[];
  /** of those jobs, from the bow aft */
  readonly zones: readonly { readonly id: Id; readonly name: string }[];
  /** how many are done or dropped */
  readonly closed: number;
  readonly rigs: RigsOfBook;
}

export interface KeptWork extends WorkShown {
  readonly form: number;
  /**
   * Days at the boat's place and the instants they begin at, in their order. A device takes longer to load the time zones' rules
   * than to show the list.
   */
  readonly days: readonly { readonly day: string; readonly begins: Instant }[];
}

const known = new WeakMap<Book, WorkShown>();

/** Worked out once for a book as it stands: one comes back to the list from wherever one was. */
export function workShown(book: Book): WorkShown {
  const shown = known.get(book) ?? workOf(book);
  known.set(book, shown);
  return shown;
}

function workOf(book: Book): WorkShown {
  const jobs = openJobs(book).map((named): ShownJob => {
    const { id, job } = named;
    const steps = stepsOf(book, id);
    const heldTo = job.heldTo === null ? undefined : book.jobDays[job.heldTo];
    return {
      id,
      title: job.title,
      consequence: job.consequence,
      zone: job.zone !== null && book.zones[job.zone] !== undefined ? job.zone : null,
      due: job.due,
      outing: job.outing === null ? null : (book.outings[job.outing]?.title ?? null),
      held: heldTo === undefined ? null : { date: heldTo.date, at: job.heldAt },
      minutes: minutesLeft(steps),
      steps: steps.length,
      stepsDone: steps.filter(({ step }) => step.progress.kind === 'done').length,
      waits: waitsFor(book, named, steps),
    };
  });
  const zones = Object.entries(book.zones)
    .filter(([id]) => jobs.some(({ zone }) => zone === id))
    .sort(([, a], [, b]) => a.along - b.along || a.name.localeCompare(b.name))
    .map(([id, { name }]) => ({ id, name }));
  return {
    boat: { name: book.boat.name, demo: book.boat.demo },
    timeZone: zoneOf(book),
    jobs,
    zones,
    closed: Object.values(book.jobs).filter(({ state }) => state !== 'open').length,
    rigs: rigsOfBook(book),
  };
}

/** What is kept of a book, as text. */
export function keptWork(book: Book, now: Instant): string {
  const shown = workShown(book);
  const today = localAt(now, shown.timeZone).day;
  const days = Array.from({ length: daysKnown }, (_, ahead) => {
    const day = addDays(today, ahead);
    return { day, begins: instantAt(day, '00:00', shown.timeZone) };
  });
  return JSON.stringify({ ...shown, form: workForm, days } satisfies KeptWork);
}

/** What was kept; null where there is none, or of an earlier version of the program. */
export function workFromText(text: string | null): KeptWork | null {
  if (text === null) return null;
  try {
    const kept = JSON.parse(text) as KeptWork;
    return kept.form === workForm ? kept : null;
  } catch {
    return null;
  }
}

/** The day at the boat's place. */
export function dayAtPlace({ timeZone, days }: Pick<KeptWork, 'timeZone' | 'days'>, now: Instant): string {
  const next = days.findIndex(({ begins }) => begins > now);
  return days[next - 1]?.day ?? localAt(now, timeZone).day;
}

export interface JobGroup {
  readonly key: string;
  readonly name: string;
  readonly jobs: readonly ShownJob[];
}

/** From the bow aft, mast and rig as they lie; those without a zone last. */
export function jobsByZone({ jobs, zones }: Pick<WorkShown, 'jobs' | 'zones'>): readonly JobGroup[] {
  const groups = [
    ...zones.map(({ id, name }) => ({ key: id, name, jobs: jobs.filter(({ zone }) => zone === id) })),
    { key: 'nowhere', name: 'no zone given', jobs: jobs.filter(({ zone }) => zone === null) },
  ];
  return groups.filter((group) => group.jobs.length > 0);
}
