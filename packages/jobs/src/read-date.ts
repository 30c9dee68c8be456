import { addDays, daysBetween, isDay, weekday } from '#units';
import { claim, type LineText, phrase } from './line-text.ts';
import type { Understood } from './read-line-parts.ts';
import { numberPattern, spokenNumber } from './spoken-numbers.ts';

const weekdayNames = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const weekdayPattern =
  '(mon(?:day)?|tue(?:s(?:day)?)?|wed(?:nesday)?|thu(?:rs(?:day)?)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?)';
const monthPattern =
  '(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';
const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** `by`, `before` (the day before it), `due`, `on`; the last two mean the day itself. */
const lead =
  '(?:(?:to be )?(?:done|ready|due|wanted|finished|needed) )?(by|before|until|till|due|on|for|no later than) (?:the )?';

/** The day it is to be done by: `today`, `by Friday`, `before 12 June`, `in two weeks`, `by the end of the month`. */
export function readDate(text: LineText, today: string): Understood<string> | null {
  const forms: readonly (readonly [string, (match: RegExpMatchArray, at: number) => string | null])[] = [
    ['(\\d{4}-\\d\\d-\\d\\d)', (m, at) => (isDay(m[at]) ? m[at] : null)],
    [
      `(\\d{1,2})(?:st|nd|rd|th)?(?: of)? ${monthPattern}(?:,? (\\d{4}))?`,
      (m, at) => dayOfMonth(Number(m[at]), monthNumber(m[at + 1]!), m[at + 2], today),
    ],
    [
      `${monthPattern} (?:the )?(\\d{1,2})(?:st|nd|rd|th)?(?:,? (\\d{4}))?`,
      (m, at) => dayOfMonth(Number(m[at + 1]), monthNumber(m[at]!), m[at + 2], today),
    ],
    ['(\\d{1,2})(?:st|nd|rd|th)', (m, at) => nextOfMonth(Number(m[at]), today)],
    [`(?:coming |this )?${weekdayPattern}`, (m, at) => nextWeekday(m[at]!, today)],
    [`next ${weekdayPattern}`, (m, at) => weekdayNextWeek(m[at]!, today)],
    ['(?:coming |this )?weekend', () => nextWeekday('saturday', today)],
    ['end of (?:the |this )?month', () => endOfMonth(today)],
    ['end of (?:the |this )?week', () => sundayOfWeek(today)],
    ['today', () => today],
    ['tomorrow', () => addDays(today, 1)],
  ];
  for (const [pattern, day] of forms) {
    const withLead = claim(text, phrase(lead + pattern), (match) => {
      const value = day(match, 2);
      return value !== null && match[1] === 'before' ? addDays(value, -1) : value;
    });
    if (withLead) return withLead;
  }
  const bare = claim(text, phrase('today|tomorrow'), (match) => (match[0] === 'today' ? today : addDays(today, 1)));
  if (bare) return bare;
  const inDays = claim(
    text,
    phrase(`(?:with)?in (?:the next )?(${numberPattern}|a) (days?|weeks?)(?:' time)?`),
    (match) => {
      const count = match[1] === 'a' ? 1 : spokenNumber(match[1]!);
      if (count === null || !Number.isInteger(count)) return null;
      const days = match[2]!.startsWith('w') ? count * 7 : count;
      return days <= 3660 ? addDays(today, days) : null;
    },
  );
  if (inDays) return inDays;
  for (const [pattern, day] of forms) {
    const alone = claim(text, phrase(pattern), (match) => day(match, 1), { alone: true });
    if (alone) return alone;
  }
  return null;
}

const monthNumber = (word: string) => monthNames.indexOf(word.slice(0, 3)) + 1;

/** A weekday's number, 0 for Monday. */
const weekdayNumber = (word: string) => weekdayNames.findIndex((name) => name.startsWith(word.slice(0, 3)));

/** The first such weekday after today; said on that very weekday, it means a week later. */
function nextWeekday(word: string, today: string): string {
  const ahead = (weekdayNumber(word) - weekday(today) + 7) % 7;
  return addDays(today, ahead === 0 ? 7 : ahead);
}

/** `next Friday`: the Friday of the week that starts with the coming Monday. */
function weekdayNextWeek(word: string, today: string): string {
  return addDays(today, 7 - weekday(today) + weekdayNumber(word));
}

const sundayOfWeek = (today: string) => addDays(today, 6 - weekday(today));

/** A day and month: in the year given, or the first such day from today on. */
function dayOfMonth(date: number, month: number, year: string | undefined, today: string): string | null {
  const two = (value: number) => String(value).padStart(2, '0');
  const inYear = (each: number) => `${each}-${two(month)}-${two(date)}`;
  if (year !== undefined) return isDay(inYear(Number(year))) ? inYear(Number(year)) : null;
  for (let ahead = 0; ahead <= 4; ahead++) {
    const day = inYear(Number(today.slice(0, 4)) + ahead);
    if (isDay(day) && daysBetween(today, day) >= 0) return day;
  }
  return null;
}

/** `the 12th`: the first such day of a month from today on. */
function nextOfMonth(date: number, today: string): string | null {
  if (date < 1 || date > 31) return null;
  for (let ahead = 0; ahead < 62; ahead++) {
    const day = addDays(today, ahead);
    if (Number(day.slice(8)) === date) return day;
  }
  return null;
}

function endOfMonth(today: string): string {
  let day = today;
  while (addDays(day, 1).slice(0, 7) === today.slice(0, 7)) day = addDays(day, 1);
  return day;
}
