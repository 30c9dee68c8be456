/** A book read back from the rows of its log, past any damage in them. */
import { type BookSurroundings, type OpenBook, openBook } from '#boat-book';
import type { ReadLog, ReadRow } from './book-log.ts';

export interface BookFromRows {
  /** null: no whole row can be read, so there is nothing to begin from */
  readonly book: OpenBook | null;
  /** keys of the rows that could not be read */
  readonly bad: readonly number[];
  /** the rows that the book was read from */
  readonly used: readonly ReadRow[];
  /** how many changes there are after the last whole row, and how large they are. [bytes] */
  readonly sinceWhole: number;
  readonly bytesSinceWhole: number;
}

/** Reads the last whole row and what came after it; where anything is damaged, every row there is. */
export function bookFromRows({ rows, damaged }: ReadLog, surroundings: BookSurroundings): BookFromRows {
  const bad = [...damaged];
  const lastWhole = rows.findLastIndex((row) => row.kind === 'whole');
  // with nothing damaged, what stands before the last whole row is in it
  const used = damaged.length === 0 ? rows.slice(Math.max(0, lastWhole)) : rows;
  const after = rows.slice(lastWhole + 1);
  let book: OpenBook | null = null;
  for (const row of used.filter((one) => one.kind === 'whole').reverse()) {
    try {
      book = openBook([row.change], surroundings);
      break;
    } catch {
      bad.push(row.key);
    }
  }
  for (const row of book === null ? [] : used) {
    try {
      if (!bad.includes(row.key)) book?.takeIn(row.change);
    } catch {
      bad.push(row.key);
    }
  }
  return {
    book,
    bad,
    used: used.filter((row) => !bad.includes(row.key)),
    sinceWhole: after.length,
    bytesSinceWhole: after.reduce((sum, { change }) => sum + bytesOf(change), 0),
  };
}

/** How large a change is in the documents' own form. [bytes] */
export function bytesOf(change: { readonly boat: Uint8Array | null; readonly work: Uint8Array | null }): number {
  return (change.boat?.length ?? 0) + (change.work?.length ?? 0);
}
