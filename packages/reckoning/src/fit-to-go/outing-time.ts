import type { Book, Day, Outing } from '#boat-book';
import { addDays, instantAt, localAt } from '#units';
import { type OutingWind, outingWind } from './outing-wind.ts';

/** The hours an outing is reckoned by, and what it asks of her. */
export interface OutingTime {
  /** the instant it begins */
  readonly starts: number;
  /** its last day */
  readonly last: Day;
  /** IANA zone of the boat’s place */
  readonly zone: string;
  /** the instant it is asked, and its day */
  readonly now: number;
  readonly today: string;
  /** she is towed, and does not get wet: what only sailing or lying at anchor asks is not asked of her */
  readonly byRoad: boolean;
  /** the most wind that is expected of it; null: nobody said, or she goes by road */
  readonly wind: OutingWind | null;
}

export function outingTime(book: Book, outing: Outing, now: number): OutingTime {
  const zone = Object.values(book.places)[0]?.timeZone ?? 'UTC';
  const byRoad = outing.way === 'road';
  return {
    starts: instantAt(outing.date, outing.from, zone),
    last: addDays(outing.date as Parameters<typeof addDays>[0], outing.nights),
    zone,
    now,
    today: localAt(now, zone).day,
    byRoad,
    wind: byRoad ? null : outingWind(book, outing, zone),
  };
}
