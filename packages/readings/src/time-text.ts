/** A date and time of day as loggers write them. */

/** How the times of a file are written. */
export type TimeForm = 'year first' | 'day first' | 'month first' | 'seconds' | 'milliseconds' | 'sheet days';

/** What was read: an instant, or what the clocks of a zone showed (`wall_ms`: as if they showed UTC). */
export type ReadTime =
  | { readonly kind: 'instant'; readonly at: number }
  | { readonly kind: 'wall'; readonly wall_ms: number }
  | { readonly kind: 'refused'; readonly wrong: string };

/** An example of each form, for what would be right. */
export const timeExamples: Readonly<Record<TimeForm, string>> = {
  'year first': '2026-05-02 18:40:00',
  'day first': '02.05.2026 18:40:00',
  'month first': '05/02/2026 06:40:00 PM',
  seconds: '1777747200',
  milliseconds: '1777747200000',
  'sheet days': '46144.77778',
};

const clock =
  /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?\s*([ap]\.?m\.?)?\s*(z|utc|gmt|[+-]\d{2}:?\d{2}|[+-]\d{2})?$/i;
const packed = /^(\d{4})(\d{2})(\d{2})[T ]?(\d{2})(\d{2})(\d{2})?(z)?$/i;
const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ,]+(.+))?$/i;
const yearLast = /^(\d{1,2})[-/. ]\s?(\d{1,2}|[a-z]{3,9})\.?[-/. ]\s?(\d{4}|\d{2})(?:[T ,]+(.+))?$/i;
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const day_ms = 86_400_000;
/** Day 0 of spreadsheets’ dates, from 1 March 1900 on: 1899-12-30. */
const sheetDayZero_ms = Date.UTC(1899, 11, 30);

/**
 * Reads a time in the form given. Years of two figures are 2000 to 2099. Fractions of a second are kept to the ms.
 * Not covered: ordinal days, week dates, names of zones but UTC and GMT.
 */
export function readTime(text: string, form: TimeForm): ReadTime {
  const given = text.trim();
  if (given === '') return refused('the time is empty');
  if (form === 'seconds' || form === 'milliseconds' || form === 'sheet days') return counted(given, form);
  if (form === 'year first') {
    const whole = packed.exec(given);
    if (whole) {
      const [, y, mo, d, h, mi, s, z] = whole;
      return at(given, [Number(y), Number(mo), Number(d)], [Number(h), Number(mi), Number(s ?? 0)], 0, z ?? null);
    }
    const parts = yearFirst.exec(given);
    if (!parts) return refused(`‘${shown(given)}’ is no date and time with the year first`);
    return withClock(given, [Number(parts[1]), Number(parts[2]), Number(parts[3])], parts[4]);
  }
  const parts = yearLast.exec(given);
  if (!parts) return refused(`‘${shown(given)}’ is no date and time with the ${form}`);
  const [, one, two, last, rest] = parts;
  const year = last!.length === 2 ? 2000 + Number(last) : Number(last);
  const named = /^[a-z]/i.test(two!) ? months.indexOf(two!.slice(0, 3).toLowerCase()) + 1 : null;
  if (named === 0) return refused(`‘${shown(given)}’ names no month`);
  const [day, month] =
    named !== null
      ? [Number(one), named]
      : form === 'day first'
        ? [Number(one), Number(two)]
        : [Number(two), Number(one)];
  return withClock(given, [year, month, day], rest);
}

const refused = (wrong: string): ReadTime => ({ kind: 'refused', wrong });
export const shown = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

function counted(given: string, form: 'seconds' | 'milliseconds' | 'sheet days'): ReadTime {
  const plain = given.replace(',', '.');
  if (!/^\d+(\.\d*)?$/.test(plain)) return refused(`‘${shown(given)}’ is no count of ${countOf[form]}`);
  const value = Number(plain);
  if (form === 'sheet days') return { kind: 'wall', wall_ms: Math.round(sheetDayZero_ms + value * day_ms) };
  return { kind: 'instant', at: Math.round(form === 'seconds' ? value * 1000 : value) };
}
const countOf = { seconds: 'seconds', milliseconds: 'milliseconds', 'sheet days': 'days' } as const;

type Date3 = readonly [year: number, month: number, day: number];
type Clock3 = readonly [hour: number, minute: number, second: number];

function withClock(given: string, date: Date3, rest: string | undefined): ReadTime {
  if (rest === undefined) return refused(`‘${shown(given)}’ has no time of day`);
  const read = clock.exec(rest.trim());
  if (!read) return refused(`‘${shown(rest)}’ is no time of day`);
  const [, h, m, s, fraction, half, zone] = read;
  let hour = Number(h);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return refused(`‘${shown(rest)}’ is no time of day`);
    hour = (hour % 12) + (/^p/i.test(half) ? 12 : 0);
  }
  const ms = fraction === undefined ? 0 : Math.round(Number(`0.${fraction}`) * 1000);
  return at(given, date, [hour, Number(m), Number(s ?? 0)], ms, zone ?? null);
}

function at(given: string, [year, month, day]: Date3, clock3: Clock3, ms: number, zone: string | null): ReadTime {
  const [hour, minute, second] = clock3;
  // the second that is put in now and then counts as the one after it
  if (hour > 23 || minute > 59 || second > 60) return refused(`‘${shown(given)}’ is no time of day`);
  const midnight = Date.UTC(year, month - 1, day);
  const made = new Date(midnight);
  if (made.getUTCMonth() !== month - 1 || made.getUTCDate() !== day)
    return refused(`‘${shown(given)}’ is no day of the calendar`);
  const wall_ms = midnight + ((hour * 60 + minute) * 60 + second) * 1000 + ms;
  if (zone === null) return { kind: 'wall', wall_ms };
  return { kind: 'instant', at: wall_ms - offset_ms(zone) };
}

/** How far a zone written as Z, UTC, GMT, +02, +0200 or +02:00 is ahead of UTC. [ms] */
function offset_ms(zone: string): number {
  const parts = /^([+-])(\d{2}):?(\d{2})?$/.exec(zone);
  if (!parts) return 0;
  return (parts[1] === '-' ? -1 : 1) * (Number(parts[2]) * 60 + Number(parts[3] ?? 0)) * 60_000;
}
