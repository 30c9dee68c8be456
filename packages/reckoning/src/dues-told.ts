/** What is said of a due, in whole sentences with numbers in them. */
import type { Book } from '#boat-book';
import {
  allUsual,
  amountOfUse,
  type DuePart,
  dueCautions,
  intervalInWords,
  useKinds,
  usualInWords,
  usualOf,
} from '#dues';
import { daysBetween } from '#units';
import type { DueOfBook } from './due-of-book.ts';
import { dayInWords, sentence } from './when-in-words.ts';

/** '8 May', with the year where it is not this one. */
export function dueDay(day: string, today: string): string {
  const words = dayInWords(day).split(' ').slice(1).join(' ');
  return day.slice(0, 4) === today.slice(0, 4) ? words : `${words} ${day.slice(0, 4)}`;
}

/** 'today', 'in 12 days', '3 days ago', 'in 14 months', 'in 6 years' */
export function dueAway(day: string, today: string): string {
  const days = daysBetween(today, day);
  if (days === 0) return 'today';
  const long = Math.abs(days);
  const words =
    long < 90
      ? `${long} ${long === 1 ? 'day' : 'days'}`
      : long < 730
        ? `${Math.round(long / 30.44)} months`
        : `${Math.round(long / 365.25)} years`;
  return days > 0 ? `in ${words}` : `${words} ago`;
}

/** When it falls due, in a sentence: 'Falls due in 12 days, 20 May; between 12 May and 3 July.' */
export function dueWhen({ falls, stage, due }: DueOfBook, today: string): string {
  const { day, first } = falls;
  if (day === null || first === null) return 'When it falls due is not known.';
  const band =
    day.low === day.high
      ? ''
      : `; between ${dueDay(day.low, today)} and ${dueDay(day.high, today)}${first.kind === 'condition' ? ', as near as it is measured' : ' in eight of ten'}`;
  if (stage === 'past')
    return `${first.kind === 'printed' ? 'Out of date since' : 'Fell due on'} ${dueDay(day.likely, today)}, ${dueAway(day.likely, today)}.`;
  const verb = due.printed !== null && first.kind === 'printed' ? 'Good until' : 'Falls due';
  return verb === 'Good until'
    ? `Good until ${dueDay(day.likely, today)}, ${dueAway(day.likely, today)}.`
    : `Falls due ${dueAway(day.likely, today)}, ${dueDay(day.likely, today)}${band}.`;
}

/** What makes it due, and what the rest of its rule says, a sentence a part; the one that rules first. */
export function dueParts({ falls, since, due }: DueOfBook, today: string): readonly string[] {
  const ordered =
    falls.first === null ? falls.parts : [falls.first, ...falls.parts.filter((part) => part !== falls.first)];
  return ordered.map((part) => partSaid(part, due, since?.on ?? null, today));
}

function partSaid(part: DuePart, due: DueOfBook['due'], since: string | null, today: string): string {
  switch (part.kind) {
    case 'printed':
      return `The date printed on it is ${dueDay(part.day.likely, today)}: it comes before any interval.`;
    case 'every':
      return `${sentence(intervalInWords(due.every!))}, last done ${dueDay(since!, today)}: ${dueDay(part.day.likely, today)}.`;
    case 'season':
      return `Once a year by ${dueDay(`2000-${due.season}`, '2000-01-01')}: ${dueDay(part.day.likely, today)}.`;
    case 'use':
      return part.used >= part.count
        ? `After ${amountOfUse(part.use, part.count)}: ${amountOfUse(part.use, part.used)} since ${dueDay(since!, today)}.`
        : `After ${amountOfUse(part.use, part.count)}: ${amountOfUse(part.use, part.used)} since ${dueDay(since!, today)}, ${amountOfUse(part.use, part.count - part.used)} to come by about ${dueDay(part.day.likely, today)} at the pace kept.`;
    case 'condition': {
      const { measure, unit, limit, way } = due.condition!;
      const of = unit === '' ? '' : ` ${unit}`;
      const to = way === 'falls' ? `down to ${limit}${of}` : `up to ${limit}${of}`;
      if (part.wear.kind === 'at its limit')
        return `${sentence(measure)} ${part.wear.value}${of}, at or past the limit of ${limit}${of} since ${dueDay(part.wear.since, today)}.`;
      if (part.wear.kind !== 'on its way') return '';
      return `${sentence(measure)} ${part.wear.last.value}${of} on ${dueDay(part.wear.last.on, today)}, going ${to} at ${Number(part.wear.a_year.toFixed(2))}${of} a year: about ${dueDay(part.day.likely, today)}.`;
    }
    case 'says nothing': {
      const what =
        part.part === 'use' && part.use !== null
          ? `After ${amountOfUse(part.use.use, part.use.count)}`
          : part.part === 'condition'
            ? sentence(due.condition!.measure)
            : due.every !== null && part.part === 'every'
              ? sentence(intervalInWords(due.every))
              : 'By season';
      const because = {
        'last done not known': 'it is not known when it was last done',
        'no such use kept': `no ${part.use === null ? 'use' : useKinds[part.use.use].title} of the last year are written down`,
        'not measured': 'it is not measured yet',
        'measured once': 'it is measured once; a second measure says how fast it goes',
        'no wear seen': 'no wear is seen, as near as it is measured',
      }[part.because];
      return `${what}: ${because}.`;
    }
  }
}

/** How it lies to the next outing: 'Falls due 9 days before ‘First sail’ on 29 May.'; null: after all of them, or no day. */
export function dueBesideOuting({ falls }: DueOfBook, book: Book, today: string): string | null {
  if (falls.day === null) return null;
  const { likely, low } = falls.day;
  const coming = Object.values(book.outings)
    .filter(({ date }) => date >= today)
    .sort((a, b) => a.date.localeCompare(b.date));
  const outing = coming.find(({ date, nights }) => daysBetween(likely, date) + nights >= 0);
  const where = (title: string, date: string) => `‘${title}’ on ${dueDay(date, today)}`;
  if (outing !== undefined) {
    if (likely < today)
      return `Past already, and ${where(outing.title, outing.date)} comes ${dueAway(outing.date, today)}.`;
    const days = daysBetween(likely, outing.date);
    if (days <= 0) return `Falls due ${days === 0 ? 'on the day of' : 'during'} ${where(outing.title, outing.date)}.`;
    return `Falls due ${days} ${days === 1 ? 'day' : 'days'} before ${where(outing.title, outing.date)}.`;
  }
  const near = coming.find(({ date }) => low <= date);
  return near === undefined ? null : `May fall due before ${where(near.title, near.date)}.`;
}

/** What renews a paper; null: it is no paper, and its job answers it. */
export const dueRenewal = ({ paper }: DueOfBook): string | null =>
  paper === null ? null : 'Renew it, and put the new paper in with its date: this one then goes.';

/** Why a job of it stands in the book. */
export function dueWhy(dueOf: DueOfBook, today: string): string {
  return [dueWhen(dueOf, today), dueParts(dueOf, today)[0] ?? ''].join(' ').trim();
}

/** The usual interval it began from, with its source; null where it is the keeper's own. */
export function dueUsual({ due }: DueOfBook): string | null {
  const usual = due.usual === null ? null : usualOf(due.usual);
  if (usual === null) return null;
  return `Usual: ${usualInWords(usual)} (${usual.source}; ${usual.seen}).${usual.note === '' ? '' : ` ${usual.note}`}`;
}

/** What can hurt, or mislead, at this due. */
export function dueCautionsOf({ due }: DueOfBook): readonly string[] {
  const group = due.usual === null ? null : allUsual().find(({ id }) => id === due.usual)?.group;
  const safety = group === 'safety gear' || due.printed !== null;
  return [dueCautions.custom, ...(safety ? [dueCautions.printed, dueCautions.safety] : [])];
}
