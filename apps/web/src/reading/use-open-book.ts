import type { Book } from '#boat-book';
import { useBook } from '../offline/use-book.ts';

/** The boat book, on a screen that is only shown when there is one. */
export function useOpenBook(): Book {
  const { book } = useBook();
  if (book === null) throw new Error('this screen was shown before the boat book was open');
  return book;
}
