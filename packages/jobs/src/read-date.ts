import { addDays, daysBetween, isDay, weekday } from '#units';
import { claim, type LineText, partAround, phrase } from './line-text.ts';
import type { Understood } from './read-line-parts.ts';
import { numberPattern, spokenNumber } from './spoken-numbers.ts';

export const weekdayNames = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const weekdayPattern =
  '(mon(?:day)?|tue(?:s(?:day)?)?|wed(?:nesday)?|thu(?:rs(?:day)?)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?)';
const monthPattern =
  '(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';
const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** `by`, `before` (the day before it), `due`, `on`; all but `before` mean the day itself. */
const lead =
  '(?:(?:to be |it is |be )?(?:done|ready|due|wanted|finished|needed|good|fit|fixed|back) )?(by|before|until|till|due|on|for|over|at|say|no later than|not later than|(?:some ?time |any ?time )?(?:in|during)) (?:the )?';
/** Said of a day that is over. */
const past =
  /\b(?:was|were|had|did|came|went|broke|lost|found|saw|since|last|checked|noticed|happened|cleaned|pumped|tried|looked|serviced|greased|fixed|sailed|towed|(?:could|did|was|were|would)(?:n't| not))\b/;
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth'];
const ordinal = `(${ordinals.join('|')}|1st|2nd|3rd|4th|last)`;
const count = `(${numberPattern}|a|an|a couple of|a few)`;

type DayOf = (match: RegExpMatchArray, at: number) => string | null;

/** What a phrase that names a day means, seen from today. Of two that begin alike the longer stands first. */
const dayForms = (today: string): readonly (readonly [pattern: string, day: DayOf])[] => [
  ['(\\d{4}-\\d\\d-\\d\\d)', (m, at) => (isDay(m[at]) ? m[at]! : null)],
  [
    `(\\d{1,2}|first)(?:st|nd|rd|th)?(?: of)? ${monthPattern}(?:,? (\\d{4}))?`,
    (m, at) => dayOfMonth(m[at] === 'first' ? 1 : Number(m[at]), monthNumber(m[at + 1]!), m[at + 2], today),
  ],
  [
    `${monthPattern} (?:the )?(\\d{1,2})(?:st|nd|rd|th)?(?:,? (\\d{4}))?`,
    (m, at) => dayOfMonth(Number(m[at + 1]), monthNumber(m[at]!), m[at + 2], today),
  ],
  [
    '(\\d{1,2})\\/(\\d{1,2})(?:\\/(\\d{4}))?',
    (m, at) => {
      const month = Number(m[at + 1]);
      return month >= 1 && month <= 12 ? dayOfMonth(Number(m[at]), month, m[at + 2], today) : null;
    },
  ],
  [
    `${ordinal} (?:${weekdayPattern}|weekend) (?:in|of) ${monthPattern}`,
    (m, at) => nthInMonth(m[at]!, m[at + 1], monthNumber(m[at + 2]!), today),
  ],
  ['(\\d{1,2})(?:st|nd|rd|th)', (m, at) => nextOfMonth(Number(m[at]), today)],
  [`${weekdayPattern} week`, (m, at) => addDays(nextWeekday(m[at]!, today), 7)],
  [`(?:coming |this )?${weekdayPattern}`, (m, at) => nextWeekday(m[at]!, today)],
  [`next ${weekdayPattern}`, (m, at) => weekdayNextWeek(m[at]!, today)],
  ['next weekend', () => addDays(sundayOfWeek(today), 7)],
  ['end of (?:the |this )?month', () => endOfMonth(today)],
  ['end of (?:the )?next month', () => endOfMonth(addDays(endOfMonth(today), 1))],
  ['end of (?:the |this )?week', () => sundayOfWeek(today)],
  ['end of (?:the )?next week', () => addDays(sundayOfWeek(today), 7)],
  ['end of (?:the )?year', () => `${today.slice(0, 4)}-12-31`],
  [`(?:very )?(?:end of|late) ${monthPattern}`, (m, at) => endOfMonth(monthAhead(monthNumber(m[at]!), today))],
  [
    `(?:the )?mid(?:dle)?(?: of)?[ -]+${monthPattern}`,
    (m, at) => dayOfMonth(15, monthNumber(m[at]!), undefined, today),
  ],
  ['this time next month', () => addMonth(today)],
  ['this time next week', () => addDays(today, 7)],
  ['day after tomorrow', () => addDays(today, 2)],
  ['today|tonight|this (?:evening|afternoon)', () => today],
  ['tomorrow(?: (?:morning|afternoon|evening|night))?', () => addDays(today, 1)],
];

/** Without one of these no day is told: looked for first, because the forms are long. */
const anyDay =
  /day|week|month|night|morrow|evening|noon|morning|fortnight|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|mon(?![a-z])|tue|wed(?![a-z])|thu|fri(?![a-z])|sat(?![a-z])|sun(?![a-z])|\d(?:st|nd|rd|th)|\d[./-]\d|first|second|third|[a-z]th(?![a-z])|the \d/;

/**
 * The day it is to be done by: `today`, `by Friday`, `before 12 June`, `in two weeks`, `by the end of the month`, `a
 * week on Saturday`, `by mid May`, `next week` (its Sunday). Days said of what is over are not taken.
 */
export function readDate(text: LineText, today: string): Understood<string> | null {
  if (!anyDay.test(text.plain)) return null;
  const ahead = (match: RegExpMatchArray) => {
    const part = partAround(text.plain, match.index!, match.index! + match[0].length);
    return !past.test(text.plain.slice(part.from, match.index!));
  };
  const weekend = claim(
    text,
    phrase(`(by|before|for|until|till|over|at|on|in|this|some time this) (?:the |this )?(?:coming )?weekend`),
    (match) => {
      const saturday = nextWeekday('saturday', addDays(today, -1));
      if (match[1] === 'before') return addDays(saturday, -1);
      return /^(?:by|for|until|till)$/.test(match[1]!) && !/this weekend/.test(match[0])
        ? saturday
        : addDays(saturday, 1);
    },
  );
  if (weekend) return weekend;
  const weeksOn = claim(text, phrase(`${count} (weeks?|fortnights?) (?:on|from) ${weekdayPattern}`), (match) =>
    later(match[1]!, match[2]!, nextWeekday(match[3]!, today), 'in'),
  );
  if (weeksOn) return weeksOn;
  const forms = dayForms(today);
  for (const [pattern, day] of forms) {
    const withLead = claim(text, phrase(`${lead}(?:${pattern})`), (match) => {
      if (!/^(?:by|before|due|no|not)/.test(match[1]!) && !ahead(match)) return null;
      const value = day(match, 2);
      return value !== null && match[1] === 'before' ? addDays(value, -1) : value;
    });
    if (withLead) return withLead;
  }
  const beforeMonth = claim(text, phrase(`before (?:the start of )?${monthPattern}`), (match) =>
    addDays(`${monthAhead(monthNumber(match[1]!), today).slice(0, 7)}-01`, -1),
  );
  if (beforeMonth) return beforeMonth;
  const inTime = claim(
    text,
    phrase(
      `(?:(?:with)?in|for|give it|good for|not more than|at most) (?:the next |about |another |at most )?${count} (days?|weeks?|months?|fortnights?)(?:' time| time|'s time| at (?:the )?most)?`,
    ),
    (match) => later(match[1]!, match[2]!, today, match[0]),
  );
  if (inTime) return inTime;
  const fromNow = claim(
    text,
    phrase(
      `${count} (days?|weeks?|months?|fortnights?) (?:from (?:now|today)|at (?:the )?(?:very )?most|time|or so at most)`,
    ),
    (match) => later(match[1]!, match[2]!, today, 'in'),
  );
  if (fromNow) return fromNow;
  const soon = claim(
    text,
    phrase(
      '(?:(?:some ?time|any ?time|during|in|for|by|over) )?(?:the )?(this|next) (week|month)|(?:this|to)(?:day| ?night| evening| afternoon)|tomorrow(?: (?:morning|afternoon|evening))?|(?:the )?day after tomorrow',
    ),
    (match) => {
      if (!ahead(match)) return null;
      if (match[2] === 'week') return addDays(sundayOfWeek(today), match[1] === 'next' ? 7 : 0);
      if (match[2] === 'month') return endOfMonth(match[1] === 'next' ? addDays(endOfMonth(today), 1) : today);
      if (/day after/.test(match[0])) return addDays(today, 2);
      return /tomorrow/.test(match[0]) ? addDays(today, 1) : today;
    },
  );
  if (soon) return soon;
  for (const [pattern, day] of forms) {
    const alone = claim(text, phrase(`(?:the |due )?(?:${pattern})`), (match) => day(match, 1), { alone: true });
    if (alone) return alone;
  }
  return null;
}

/** So many days, weeks or months from today; null where the number is none or too far. `for` days are a stretch of work. */
function later(number: string, unit: string, today: string, words: string): string | null {
  if (words.startsWith('for ') && unit.startsWith('d')) return null;
  const count = /^an?$/.test(number) ? 1 : /couple/.test(number) ? 2 : /few/.test(number) ? 3 : spokenNumber(number);
  if (count === null || !Number.isInteger(count) || count > 3660) return null;
  if (unit.startsWith('m')) {
    let day = today;
    for (let month = 0; month < Math.min(count, 120); month++) day = addMonth(day);
    return day;
  }
  const days = unit.startsWith('w') ? count * 7 : unit.startsWith('f') ? count * 14 : count;
  return days <= 3660 ? addDays(today, days) : null;
}

/** The same date a month later, or that month's last day. */
function addMonth(day: string): string {
  const month = Number(day.slice(5, 7));
  const next = month === 12 ? `${Number(day.slice(0, 4)) + 1}-01` : `${day.slice(0, 4)}-${twoFigures(month + 1)}`;
  const same = `${next}-${day.slice(8)}`;
  return isDay(same) ? same : endOfMonth(`${next}-01`);
}

/** A day of the coming month of that name, this one included. */
function monthAhead(month: number, today: string): string {
  const year = Number(today.slice(0, 4)) + (month < Number(today.slice(5, 7)) ? 1 : 0);
  return `${year}-${twoFigures(month)}-01`;
}

/** `the second weekend in May` (its Sunday), `the last Friday of May`. */
function nthInMonth(nth: string, day: string | undefined, month: number, today: string): string | null {
  const first = monthAhead(month, today);
  const wanted = day === undefined ? 5 : weekdayNumber(day);
  const days: string[] = [];
  for (let each = first; each.slice(0, 7) === first.slice(0, 7); each = addDays(each, 1))
    if (weekday(each) === wanted) days.push(each);
  const place = ordinals.indexOf(nth) >= 0 ? ordinals.indexOf(nth) : Number.parseInt(nth, 10) - 1;
  const found = nth === 'last' ? days.at(-1) : days[place];
  if (found === undefined) return null;
  return day === undefined ? addDays(found, 1) : found;
}

const twoFigures = (value: number) => String(value).padStart(2, '0');

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
  const inYear = (each: number) => `${each}-${twoFigures(month)}-${twoFigures(date)}`;
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
