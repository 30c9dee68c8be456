import { addDays, type Day, type Instant } from '#units';
import { folded, lineEnd, textValue } from './content-line.ts';

/** When an event is: whole days, the last among them, or a stretch of time. A moment is a stretch that ends as it begins. */
export type EventTime =
  | { readonly kind: 'days'; readonly first: Day; readonly last: Day }
  | { readonly kind: 'span'; readonly start: Instant; readonly end: Instant };

export interface CalendarEvent {
  /** the same each time this thing is written, and of no other thing in the world: so that it is changed, not doubled */
  readonly uid: string;
  readonly title: string;
  readonly when: EventTime;
  readonly place?: string;
  readonly words?: string;
  /** minutes before its start that the calendar is to speak up */
  readonly reminder_min?: number;
  /** it is no more: a calendar that has it takes it off */
  readonly off?: true;
  /** the version it was last written in: this one is higher, though it be written in the same minute */
  readonly above?: number;
  /** true where the time is not taken up by it, as while glue cures */
  readonly free?: true;
}

export interface Calendar {
  readonly name: string;
  /** when the file is made */
  readonly made: Instant;
  readonly events: readonly CalendarEvent[];
}

/** Media type of the file. */
export const calendarType = 'text/calendar;charset=utf-8';

/**
 * A calendar file (iCalendar, RFC 5545), in UTF-8 with lines folded by octets.
 *
 * Times are written in UTC, so that no rule of a time zone has to be carried: a calendar shows them in the zone it is in. Whole
 * days have no zone; their end is the day after, as the standard has it. What is written later wins over what was written
 * before: the number of the version is the minute the file was made in.
 *
 * No METHOD is written: PUBLISH asks for an ORGANIZER (RFC 5546 §3.2.1), whom a boat has not, and CANCEL is of a file with
 * nothing but cancellations. What is called off says so itself (STATUS, RFC 5545 §3.8.1.11).
 *
 * @throws RangeError when two events have the same uid, or one ends before it begins
 */
export function calendarFile({ name, made, events }: Calendar): string {
  const uids = new Set<string>();
  for (const { uid, when, title } of events) {
    if (uids.has(uid)) throw new RangeError(`two events have the uid ${uid}`);
    uids.add(uid);
    if (when.kind === 'span' ? !(when.start <= when.end) : !(when.first <= when.last))
      throw new RangeError(`'${title}' ends before it begins`);
  }
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Fettle//Boat book//EN',
    'CALSCALE:GREGORIAN',
    `NAME:${textValue(name)}`,
    ...events.flatMap((event) => eventLines(event, made)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => folded(line) + lineEnd).join('');
}

function eventLines(event: CalendarEvent, made: Instant): string[] {
  const { uid, title, when, place, words, reminder_min, off, free } = event;
  return [
    'BEGIN:VEVENT',
    `UID:${textValue(uid)}`,
    `DTSTAMP:${utc(made)}`,
    `SEQUENCE:${versionOf(event, made)}`,
    ...timeLines(when),
    `SUMMARY:${textValue(title)}`,
    ...(place ? [`LOCATION:${textValue(place)}`] : []),
    ...(words ? [`DESCRIPTION:${textValue(words)}`] : []),
    ...(off ? ['STATUS:CANCELLED'] : []),
    ...(free || off ? ['TRANSP:TRANSPARENT'] : []),
    ...(reminder_min === undefined || off
      ? []
      : [
          'BEGIN:VALARM',
          'ACTION:DISPLAY',
          `DESCRIPTION:${textValue(title)}`,
          `TRIGGER:${reminder_min === 0 ? '' : '-'}PT${reminder_min % 60 === 0 && reminder_min > 0 ? `${reminder_min / 60}H` : `${reminder_min}M`}`,
          'END:VALARM',
        ]),
    'END:VEVENT',
  ];
}

function timeLines(when: EventTime): string[] {
  if (when.kind === 'days')
    return [
      `DTSTART;VALUE=DATE:${when.first.replaceAll('-', '')}`,
      `DTEND;VALUE=DATE:${addDays(when.last, 1).replaceAll('-', '')}`,
    ];
  // an event without an end, and with a time, takes up none (§3.6.1)
  return [`DTSTART:${utc(when.start)}`, ...(when.end > when.start ? [`DTEND:${utc(when.end)}`] : [])];
}

/** An instant as the standard writes it in UTC, to the second. */
const utc = (instant: Instant) => new Date(instant).toISOString().replace(/[-:]|\.\d+/g, '');

/**
 * The version an event is written in: minutes since the start of 2020, below what a calendar takes for a whole number
 * until the year 6000; or one more than the version it was written in before.
 */
export const versionOf = ({ above = -1 }: Pick<CalendarEvent, 'above'>, made: Instant): number =>
  Math.max(0, above + 1, Math.floor((made - Date.UTC(2020, 0, 1)) / 60_000));
