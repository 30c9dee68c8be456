/** A day of the calendar, `YYYY-MM-DD` (Gregorian, also before its invention). Years 1900–2199. */
export type Day = string & { readonly form: 'YYYY-MM-DD' };
/** A clock time, `HH:MM`, 00:00–23:59. */
export type Clock = string & { readonly form: 'HH:MM' };

/** Monday is 0. */
export type Weekday = 0 | 1 | 2 | 3 | 4 | 5 | 6;

const dayForm = /^(19|20|21)\d\d-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;
const clockForm = /^([01]\d|2[0-3]):[0-5]\d$/;
const msInDay = 86_400_000;

/** True for a day there is: the form `YYYY-MM-DD`, years 1900–2199, and no 30 February. */
export function isDay(value: unknown): value is Day {
  return typeof value === 'string' && dayForm.test(value) && Number(value.slice(8)) <= lastOfMonth(value);
}

/** The last day of the month that a day of the right form is in. */
function lastOfMonth(day: string): number {
  const month = Number(day.slice(5, 7));
  if (month !== 2) return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
  const year = Number(day.slice(0, 4));
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
}

/** True for a clock time from 00:00 to 23:59 in the form `HH:MM`. */
export function isClock(value: unknown): value is Clock {
  return typeof value === 'string' && clockForm.test(value);
}

/**
 * Whole days from 1970-01-01 to a day; negative before it. Every day counts 1: a day has no zone and no hours.
 * @throws RangeError when the day is not one that `isDay` takes
 */
export function dayNumber(day: string): number {
  if (!isDay(day)) throw new RangeError(`a day is YYYY-MM-DD and one that there is, years 1900 to 2199; got '${day}'`);
  return Date.parse(day) / msInDay;
}

/** The day `n` whole days after a day (before it, where n is negative). @throws RangeError past the years 1900–2199 */
export function addDays(day: string, n: number): Day {
  if (!Number.isInteger(n)) throw new RangeError(`days to add must be a whole number, got ${n}`);
  const sum = dayOfNumber(dayNumber(day) + n);
  if (!isDay(sum)) throw new RangeError(`${n} days after ${day} lies outside the years 1900 to 2199`);
  return sum;
}

/**
 * The same day of the month `n` months later (earlier, where n is negative); the month's last day where it has none such.
 * @throws RangeError where n is no whole number, or the day lies outside the years 1900–2199
 */
export function addMonths(day: string, n: number): Day {
  if (!Number.isInteger(n)) throw new RangeError(`months to add must be a whole number, got ${n}`);
  dayNumber(day);
  const months = Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1 + n;
  const first = new Date(Date.UTC(0, 0, 1));
  first.setUTCFullYear(Math.floor(months / 12), (((months % 12) + 12) % 12) + 1, 0);
  const month = first.toISOString().slice(0, 8);
  const sum = `${month}${String(Math.min(Number(day.slice(8)), first.getUTCDate())).padStart(2, '0')}`;
  if (!isDay(sum)) throw new RangeError(`${n} months after ${day} lies outside the years 1900 to 2199`);
  return sum;
}

/** Whole days from `a` to `b`; negative where b is the earlier. */
export function daysBetween(a: string, b: string): number {
  return dayNumber(b) - dayNumber(a);
}

/** Day of the week, 0 for Monday to 6 for Sunday. */
export function weekday(day: string): Weekday {
  // 1970-01-01 was a Thursday (3)
  return ((((dayNumber(day) + 3) % 7) + 7) % 7) as Weekday;
}

/** Minutes from 00:00 to a clock time. whole, 0–1439. @throws RangeError when it is not one that `isClock` takes */
export function minuteOfClock(clock: string): number {
  if (!isClock(clock)) throw new RangeError(`a clock time is HH:MM from 00:00 to 23:59; got '${clock}'`);
  return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
}

/** The clock time so many minutes after 00:00. @param minute whole, 0–1439 */
export function clockOfMinute(minute: number): Clock {
  if (!Number.isInteger(minute) || minute < 0 || minute > 1439)
    throw new RangeError(`minute of the day must be a whole number from 0 to 1439, got ${minute}`);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}` as Clock;
}

function dayOfNumber(n: number): string {
  const date = new Date(n * msInDay);
  return Number.isNaN(date.getTime()) ? '' : date.toISOString().slice(0, 10);
}
