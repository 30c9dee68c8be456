import { localAt, weekday } from '#units';
import type { Problem } from '#workplan';

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `Saturday 9 May` */
export function dayInWords(day: string): string {
  return `${weekdayInWords(day)} ${Number(day.slice(8))} ${months[Number(day.slice(5, 7)) - 1]}`;
}

/** `Saturday` */
export function weekdayInWords(day: string): string {
  return weekdays[weekday(day)];
}

/** The day and clock time of a minute of the plan, at the plan's place. */
export function localMinute(minute: number, problem: Pick<Problem, 'startsAt' | 'timeZone'>) {
  return localAt(Date.parse(problem.startsAt) + minute * 60_000, problem.timeZone);
}

/** `Saturday 9 May 14:30`; a minute that is midnight is the end of the day before: `the end of Friday 8 May`. */
export function minuteInWords(minute: number, problem: Pick<Problem, 'startsAt' | 'timeZone'>): string {
  const { day, clock } = localMinute(minute, problem);
  if (clock === '00:00') return `the end of ${dayInWords(localMinute(minute - 1, problem).day)}`;
  return `${dayInWords(day)} ${clock}`;
}

/** `40 minutes`, `1 h`, `5 h 20`, `3 days` (from 48 h, rounded to half days up) */
export function lengthInWords(minutes: number): string {
  const whole = Math.max(0, Math.round(minutes));
  if (whole < 60) return whole === 1 ? '1 minute' : `${whole} minutes`;
  if (whole >= 48 * 60) return `${Math.ceil(whole / 720) / 2} days`;
  const rest = whole % 60;
  return rest === 0 ? `${whole / 60} h` : `${Math.floor(whole / 60)} h ${String(rest).padStart(2, '0')}`;
}

/** `a, b and c` */
export function listInWords(names: readonly string[], joint: 'and' | 'or' = 'and'): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} ${joint} ${names.at(-1)}`;
}

/** First letter as a capital. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
