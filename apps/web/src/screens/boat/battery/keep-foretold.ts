/** Keeps what was foretold of the coming night in the book, so that the morning’s reading can be held beside it. */
import type { Book } from '#boat-book';
import type { NightForetold } from '#reckoning';
import { bookClient } from '../../../offline/book-client.ts';

/** A night foretold anew is kept anew only where it says something else. [V] */
const sameWithin_V = 0.01;

/** Whether the book holds this night, foretold the same within a hundredth of a volt. */
export function isKept({ battery, morning, volts }: NightForetold, book: Pick<Book, 'nightsAhead'>): boolean {
  return Object.values(book.nightsAhead).some(
    (kept) =>
      kept.battery === battery &&
      kept.morning === morning &&
      (['low', 'likely', 'high'] as const).every((end) => Math.abs(kept.volts[end] - volts[end]) <= sameWithin_V),
  );
}

/** Keeps it, unless the book has it already or may not be written to. */
export async function keepForetold(foretold: NightForetold): Promise<void> {
  const { book, readOnly } = bookClient.snapshot();
  if (book === null || readOnly !== null || isKept(foretold, book)) return;
  await bookClient.run('keepNightAhead', foretold);
}
