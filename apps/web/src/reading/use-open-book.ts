import type { Book } from '#boat-book';
import { useOfBook } from '../offline/use-book.ts';

/** The boat book, on a screen that is only shown when there is one. */
export function useOpenBook(): Book {
  const book = useOfBook('book');
  if (book === null) throw new Error('this screen was shown before the boat book was open');
  return book;
}
