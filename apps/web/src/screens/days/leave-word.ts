/** A line to leave with somebody before working alone: what, where, and by when to look. Pure; nothing is sent by it. */
import type { Book } from '#boat-book';

/**
 * @param step   what is being done
 * @param where  the boat's place, and the zone; empty: not known
 * @param by     clock time by which one will be heard from
 */
export function wordToLeave(book: Book, step: string, where: readonly string[], by: string): string {
  const at = where.filter((part) => part !== '');
  const place = at.length === 0 ? '' : ` (${at.join(', ')})`;
  return `I am working on ${book.boat.name}${place}: ${step}. If you don't hear from me by ${by}, ring me; if I don't answer, come and look.`;
}

/** The quarter of an hour after so many minutes past an instant: time enough to be late by a little. [ms] */
export function quarterAfter(instant: number, minutes: number): number {
  const quarter_ms = 15 * 60_000;
  return Math.ceil((instant + minutes * 60_000) / quarter_ms) * quarter_ms;
}
