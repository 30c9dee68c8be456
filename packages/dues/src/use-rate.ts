/** How fast a boat is used, from what her keeper wrote down, and when so much more use will have come. */
import { addDays, daysBetween } from '#units';
import { betaQuantile } from './beta-share.ts';
import type { UseKind } from './due-rule.ts';

/** Use of one kind on one day. `count` > 0, in the kind's unit. */
export interface UseCount {
  readonly use: UseKind;
  readonly on: string;
  readonly count: number;
}

/** A day with how sure it is: eight of ten should fall between low and high. */
export interface DayBand {
  readonly low: string;
  readonly likely: string;
  readonly high: string;
}

/** The use of a year back is what is looked at: a boat's year comes round. [d] */
export const yearLookedBack_d = 365;
/** Where writing down began later than that, no fewer days are counted than this: our judgement. [d] */
export const assumedLeastDaysKept_d = 30;
/** No further ahead than this is foretold; past it is 'not for years'. [d] */
export const furthestAhead_d = 20 * 365;

/** What was kept of one use, of the last year or since writing down began. */
export interface UseKept {
  readonly use: UseKind;
  /** times it was entered */
  readonly entries: number;
  /** in the kind's unit */
  readonly total: number;
  /** of how many days. ≥ `assumedLeastDaysKept_d` */
  readonly days: number;
  /** sum of the squares of what was entered at once, for how unevenly it comes */
  readonly squares: number;
}

/** What was kept of a use up to a day. Entries after that day are left out. */
export function keptUse(use: UseKind, uses: readonly UseCount[], today: string): UseKept {
  const known = uses.filter((each) => each.on <= today);
  const first = known.reduce<string | null>((least, { on }) => (least === null || on < least ? on : least), null);
  const days =
    first === null
      ? assumedLeastDaysKept_d
      : Math.min(yearLookedBack_d, Math.max(assumedLeastDaysKept_d, daysBetween(first, today) + 1));
  const since = addDays(today, 1 - days);
  const counted = known.filter((each) => each.use === use && each.on >= since);
  return {
    use,
    entries: counted.length,
    total: counted.reduce((sum, { count }) => sum + count, 0),
    days,
    squares: counted.reduce((sum, { count }) => sum + count * count, 0),
  };
}

/** Use that is sure to come on a day: an outing that is in the book. */
export interface UseAhead {
  readonly on: string;
  readonly use: UseKind;
  readonly count: number;
}

/**
 * Days from today in which so much more use comes, at the pace that was kept.
 *
 * Uses come by chance one at a time at a pace we only know from those seen (Jeffreys' prior): the time to the r-th more
 * is then, over the days looked at, spread as a ratio of gammas, read off the beta distribution. What comes several at
 * once (hours, kilometres, nights) counts as so many entries of its usual size. An outing in the book is sure use.
 *
 * @param more   still to come, in the kind's unit; 0 or less: it has come
 * @returns      days from today with 1 of 10 before `low` and 1 of 10 after `high`; null where nothing was kept and no
 *               outing brings it, so that nothing can be said
 */
export function daysUntilUse(
  more: number,
  kept: UseKept,
  ahead: readonly UseAhead[],
  today: string,
): { readonly low: number; readonly likely: number; readonly high: number } | null {
  if (more <= 0) return { low: 0, likely: 0, high: 0 };
  const sure = dayOfSureUse(more, kept.use, ahead, today);
  if (kept.entries === 0) return sure === null ? null : { low: 0, likely: sure, high: sure };
  const usual = kept.squares / kept.total;
  const times = more / usual;
  const seen = kept.total / usual + 0.5;
  const at = (share: number) => {
    const x = betaQuantile(share, times, seen);
    return Math.min(furthestAhead_d, (kept.days * x) / (1 - x));
  };
  const capped = (days: number) => Math.round(sure === null ? days : Math.min(days, sure));
  return { low: capped(at(0.1)), likely: capped(at(0.5)), high: capped(at(0.9)) };
}

/** Days to the outing with which the sure uses alone come to so much; null where they do not. */
function dayOfSureUse(more: number, use: UseKind, ahead: readonly UseAhead[], today: string): number | null {
  let sum = 0;
  const coming = ahead.filter((each) => each.use === use && each.on >= today);
  for (const { on, count } of [...coming].sort((a, b) => a.on.localeCompare(b.on))) {
    sum += count;
    if (sum >= more) return daysBetween(today, on);
  }
  return null;
}
