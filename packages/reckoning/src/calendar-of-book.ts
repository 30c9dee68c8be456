import type { Book, Id, Job, KeptPlan, Step } from '#boat-book';
import { type CalendarEvent, versionOf } from '#calendar';
import { addDays, type Day, daysBetween, instantAt, localAt } from '#units';
import { dueRenewal } from './dues-told.ts';
import { inOrderKnown } from './in-order-known.ts';
import { duesAndPapers } from './paper-dues.ts';
import { dayInWords } from './when-in-words.ts';

/**
 * What of the book goes into a calendar: job days, the steps and waits of the plan in force, the outings, and what
 * falls due.
 *
 * Each thing has one uid for good, so that a calendar that takes the file in again changes what it has. A step or a wait that an
 * earlier plan had and the plan in force does not is written as called off, where its time is not past. So is what an earlier
 * file had and the book has no more: a job day, an outing, a due or a paper that was taken out.
 *
 * @param now    what ended before it is left out
 * @param given  what earlier files had, as far as is known
 */
export function calendarEvents(book: Book, now: number, given: readonly GivenEvent[] = []): readonly CalendarEvent[] {
  const plans = inOrderKnown(Object.values(book.plans));
  const inForce = plans.at(-1);
  const planned = inForce ? planEvents(book, inForce) : [];
  const there = new Set(planned.map(({ uid }) => uid));
  const calledOff = new Map<string, CalendarEvent>();
  for (const earlier of plans.slice(0, -1))
    for (const event of planEvents(book, earlier))
      if (!there.has(event.uid)) calledOff.set(event.uid, { ...event, off: true });
  const ahead = [
    ...jobDayEvents(book),
    ...planned,
    ...calledOff.values(),
    ...outingEvents(book),
    ...dueEvents(book, now),
  ].filter((event) => !isOver(event, now));
  const before = new Map(given.map((event) => [event.uid, event]));
  const written = new Set(ahead.map(({ uid }) => uid));
  const gone = given.filter((event) => !written.has(event.uid) && !isOver(event, now));
  return [...ahead, ...gone.map(({ uid, title, when }) => ({ uid, title, when, off: true as const }))].map((event) => {
    const version = before.get(event.uid)?.version;
    return version === undefined ? event : { ...event, above: version };
  });
}

/** What a file had of an event, kept so that a later one can take it back. */
export interface GivenEvent extends Pick<CalendarEvent, 'uid' | 'title' | 'when'> {
  readonly version: number;
}

/** What is to be kept of a file that was given out: all it had, and what was called off in it too, until that is over. */
export const givenIn = (events: readonly CalendarEvent[], made: number): readonly GivenEvent[] =>
  events.map((event) => ({ uid: event.uid, title: event.title, when: event.when, version: versionOf(event, made) }));

const isOver = ({ when }: Pick<CalendarEvent, 'when'>, now: number) =>
  (when.kind === 'span' ? when.end : endOfDay(when.last)) < now;

/** The end of a day wherever on earth the calendar is read. */
const endOfDay = (day: string) => Date.parse(`${day}T00:00:00Z`) + 36 * 3_600_000;

const uidOf = (book: Book, kind: string, id: Id) => `${kind}.${id}.${book.id}@boat-book`;

const jobDayEvents = (book: Book): CalendarEvent[] =>
  Object.entries(book.jobDays).flatMap(([id, day]) => {
    const place = book.places[day.place];
    if (!place) return [];
    const hands = day.hands.map(({ name, from, to }) => `${name} from ${from} to ${to}`);
    return [
      {
        uid: uidOf(book, 'job-day', id),
        title: `Job day: ${book.boat.name}`,
        place: place.name,
        when: {
          kind: 'span',
          start: instantAt(day.date, day.from, place.timeZone),
          end: instantAt(day.date, day.to, place.timeZone),
        },
        ...(hands.length > 0 ? { words: `With ${hands.join(', ')}.` } : {}),
      },
    ];
  });

const outingEvents = (book: Book): CalendarEvent[] =>
  Object.entries(book.outings).map(([id, outing]) => ({
    uid: uidOf(book, 'outing', id),
    title: `${outing.title}: ${book.boat.name}`,
    when: { kind: 'days', first: outing.date as Day, last: addDays(outing.date, outing.nights) },
    ...(outing.place ? { place: outing.place } : {}),
    words: `Leaves at ${outing.from}.`,
  }));

/**
 * What falls due, on its likely day, with the reminder in time for its job. Done or measured, it moves: its uid is the same.
 */
function dueEvents(book: Book, now: number): CalendarEvent[] {
  const today = localAt(now, Object.values(book.places)[0]?.timeZone ?? 'UTC').day;
  return duesAndPapers(book, today).flatMap((dueOf): CalendarEvent[] => {
    const { id, paper, due, falls, lead_d, job } = dueOf;
    const { day } = falls;
    if (day === null) return [];
    const renewal = dueRenewal(dueOf);
    const words = [
      ...(day.low === day.high ? [] : [`It may fall between ${dated(day.low)} and ${dated(day.high)}.`]),
      ...(job === null ? [] : ['Its job is in the book.']),
      ...(renewal === null ? [] : [renewal]),
      ...(due.source === '' ? [] : [`By: ${due.source}.`]),
    ];
    return [
      {
        uid: paper === null ? uidOf(book, 'due', id) : uidOf(book, 'paper', paper),
        title: `Due: ${due.title}`,
        when: { kind: 'days', first: day.likely as Day, last: day.likely as Day },
        ...(words.length > 0 ? { words: words.join('\n') } : {}),
        free: true,
        ...(job === null && daysBetween(today, day.likely) > lead_d ? { reminder_min: lead_d * 1440 } : {}),
      },
    ];
  });
}

const dated = (day: string) => `${dayInWords(day)} ${day.slice(0, 4)}`;

function planEvents(book: Book, { startsAt, plan }: Pick<KeptPlan, 'startsAt' | 'plan'>): CalendarEvent[] {
  const zero = Date.parse(startsAt);
  const at = (minute: number) => zero + 60_000 * minute;
  const jobOf = (step: Step): Job | undefined => book.jobs[step.job];
  const steps = plan.steps.flatMap(({ step: id, day, start, finish }): CalendarEvent[] => {
    const step = book.steps[id];
    const job = step && jobOf(step);
    // what was done or under way when it was planned is not ahead
    if (!step || !job || day === null) return [];
    const jobDay = book.jobDays[day];
    const place = jobDay ? book.places[jobDay.place]?.name : undefined;
    return [
      {
        uid: uidOf(book, 'step', id),
        title: `${job.title}: ${step.title}`,
        when: { kind: 'span', start: at(start), end: at(finish) },
        ...(place ? { place } : {}),
        ...(step.cautions.length > 0 ? { words: step.cautions.join('\n') } : {}),
      },
    ];
  });
  const waits = plan.waits.flatMap(({ step: id, wait: waitId, start, finish, tooCold }): CalendarEvent[] => {
    const step = book.steps[id];
    const job = step && jobOf(step);
    const wait = step?.waits.find((each) => each.id === waitId);
    if (!step || !job || !wait || finish === start) return [];
    return [
      {
        uid: uidOf(book, 'wait', `${id}.${waitId}`),
        title: `${wait.title} over: ${job.title}`,
        when: { kind: 'span', start: at(finish), end: at(finish) },
        free: true,
        reminder_min: 0,
        ...(tooCold ? { words: 'It met hours below the least temperature: it may never reach its strength.' } : {}),
      },
    ];
  });
  return [...steps, ...waits];
}
