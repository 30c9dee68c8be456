/** Whether a thing in the stores is still fit to be used, by its dates. */
import type { Day, StoreRecord } from '#boat-book';
import { shelfLifeOf } from '#materials';
import { addDays, daysBetween } from '#units';
import { dayInWords } from './when-in-words.ts';

export interface KeepsUntil {
  /** the last day it is counted on */
  readonly last: Day;
  /** where that comes from; a date printed on it counts before all else */
  readonly from: 'printed on it' | 'the tin' | 'common practice';
  /** `opened 14 months ago: past its shelf life of 12 months (common practice)` */
  readonly words: string;
  readonly past: boolean;
}

const daysInMonth = 365.25 / 12;

/**
 * Until when a thing can be used: the date printed on it; else so long after it was opened as the keeper says its tin
 * does, or as its family commonly keeps; else so long after it came. Null where nothing is known of it.
 */
export function keepsUntil(store: StoreRecord, today: Day): KeepsUntil | null {
  const { opened = null, expires = null, got = null } = store;
  const family = shelfLifeOf(store.name);
  const told = store.keepsOpened_months ?? null;
  const keeps = told ?? family?.opened_months ?? family?.sealed_months ?? null;
  const ends: KeepsUntil[] = [];
  if (expires !== null)
    ends.push({
      last: expires,
      from: 'printed on it',
      past: expires < today,
      words: `${expires < today ? 'out of date since' : 'good until'} ${dayInWords(expires)} ${expires.slice(0, 4)}, printed on it`,
    });
  // a printed date is for a closed tin: once it is opened, the shorter of the two counts, unless the tin says no more
  if (opened !== null && keeps !== null && (expires === null || told !== null))
    ends.push(counted('opened', opened, keeps, told === null ? 'common practice' : 'the tin', today));
  if (ends.length === 0 && opened === null && got !== null && family?.sealed_months != null)
    ends.push(counted('got', got, family.sealed_months, 'common practice', today));
  return ends.sort((a, b) => (a.last < b.last ? -1 : 1))[0] ?? null;
}

function counted(
  what: 'opened' | 'got',
  since: Day,
  keeps_months: number,
  from: KeepsUntil['from'],
  today: Day,
): KeepsUntil {
  const last = monthsLater(since, keeps_months);
  const past = last < today;
  const ago = agoInWords(since, today);
  const source = from === 'the tin' ? 'by its tin' : 'common practice';
  const life = keeps_months === 1 ? 'a month' : `${Number(keeps_months.toFixed(1))} months`;
  return {
    last,
    from,
    past,
    words: past
      ? `${what} ${ago}: past its shelf life of ${life} (${source})`
      : `${what} ${ago}: keeps until ${dayInWords(last)} ${last.slice(0, 4)} (${source})`,
  };
}

/** The day so many months later, the last of a shorter month; part of a month in days. */
function monthsLater(day: Day, months: number): Day {
  const whole = Math.floor(months);
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const first = new Date(Date.UTC(year, month - 1 + whole, 1));
  const longest = new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + 1, 0)).getUTCDate();
  first.setUTCDate(Math.min(date, longest));
  return addDays(first.toISOString().slice(0, 10), Math.round((months - whole) * daysInMonth));
}

/** `14 months ago`, `3 weeks ago`, `today` */
export function agoInWords(day: Day, today: Day): string {
  const days = daysBetween(day, today);
  if (days <= 0) return days === 0 ? 'today' : 'in days to come';
  if (days < 14) return days === 1 ? 'yesterday' : `${days} days ago`;
  if (days < 60) return `${Math.floor(days / 7)} weeks ago`;
  const [from, to] = [day, today].map((each) => 12 * Number(each.slice(0, 4)) + Number(each.slice(5, 7)));
  const months = to! - from! - (today.slice(8) < day.slice(8) ? 1 : 0);
  return months < 24 ? `${months} months ago` : `${Math.floor(months / 12)} years ago`;
}
