/** Timers of the book in the order they end, and how they stand at a moment. Pure. */
import type { Book, Id, TimerRecord } from '#boat-book';

export interface NamedTimer {
  readonly id: Id;
  readonly timer: TimerRecord;
  /** from the moment to its end; 0 or less: it is over. [ms] */
  readonly left_ms: number;
}

/** @param now  [ms] */
export function timersOf(book: Book, now: number): readonly NamedTimer[] {
  return Object.entries(book.timers)
    .map(([id, timer]) => ({ id, timer, left_ms: Date.parse(timer.ends) - now }))
    .sort((a, b) => a.left_ms - b.left_ms);
}

/** `28 min`, `1 h 20`, `3 days`; the last minute as `less than a minute` */
export function leftInWords(left_ms: number): string {
  const minutes = Math.ceil(left_ms / 60_000);
  if (minutes <= 1) return 'less than a minute';
  if (minutes < 60) return `${minutes} min`;
  if (minutes >= 2 * 1440) return `${Math.round(minutes / 1440)} days`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')}`;
}
