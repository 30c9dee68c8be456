/** Minutes of a plan as clock times and days at the boat's place, in words. */
import { localAt, weekday } from '#units';
import type { Minute, Problem } from '#workplan';
import { dayInWords } from '../../parts/in-words.ts';

type Frame = Pick<Problem, 'startsAt' | 'timeZone'>;

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** The instant of a minute of the plan. [ms since 1970] */
export function instantOf(frame: Frame, minute: Minute): number {
  return Date.parse(frame.startsAt) + minute * 60_000;
}

/** The instant of a minute in the book's form, ISO 8601 in UTC. */
export function atOf(frame: Frame, minute: Minute): string {
  return new Date(instantOf(frame, minute)).toISOString();
}

/** The minute of the plan an instant falls in; may lie outside its horizon. */
export function minuteOf(frame: Frame, instant: number): Minute {
  return Math.floor((instant - Date.parse(frame.startsAt)) / 60_000);
}

/** `08:42` */
export function clockAt(frame: Frame, minute: Minute): string {
  return localAt(instantOf(frame, minute), frame.timeZone).clock;
}

/** `YYYY-MM-DD` */
export function dayAt(frame: Frame, minute: Minute): string {
  return localAt(instantOf(frame, minute), frame.timeZone).day;
}

/** `Saturday` */
export function weekdayInWords(day: string): string {
  return weekdays[weekday(day)];
}

/** `Sat 12 Jun` */
export function shortDay(day: string): string {
  const [, date, month] = dayInWords(day, day).split(' ');
  return `${weekdays[weekday(day)].slice(0, 3)} ${date} ${month?.slice(0, 3)}`;
}

/** `07:10` on the same day as `beside`, otherwise `07:10 on Sunday`, and the date where it is a week or more away. */
export function whenInWords(frame: Frame, minute: Minute, beside: Minute): string {
  const day = dayAt(frame, minute);
  const clock = clockAt(frame, minute);
  if (day === dayAt(frame, beside)) return clock;
  const far = Math.abs(minute - beside) > 6 * 1440;
  return `${clock} on ${far ? dayInWords(day, day) : weekdayInWords(day)}`;
}
