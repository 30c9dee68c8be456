/** What a search in the log finds, asked of the Worker that holds the book, and asked again when the book is another. */
import { useEffect, useRef, useState } from 'react';
import type { LogFound, LogQuery } from '#log';
import { bookClient } from '../../../offline/book-client.ts';
import { useOfBook } from '../../../offline/use-book.ts';

export type Found =
  | { readonly state: 'nothing asked' | 'looking' }
  | { readonly state: 'found'; readonly all: readonly LogFound[] }
  | { readonly state: 'failed'; readonly because: string };

/** What was found stands until the next answer is there. */
export function useFound(query: LogQuery): Found {
  const book = useOfBook('book');
  const [found, setFound] = useState<Found>({ state: 'nothing asked' });
  const key = JSON.stringify(query);
  const asked = query.words.trim() !== '';
  const latest = useRef(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says the query; the book is not read, only waited for
  useEffect(() => {
    const mine = ++latest.current;
    if (!asked) {
      setFound({ state: 'nothing asked' });
      return;
    }
    setFound((before) => (before.state === 'found' ? before : { state: 'looking' }));
    bookClient.find(query).then(
      (all) => {
        if (latest.current === mine) setFound({ state: 'found', all });
      },
      (cause: unknown) => {
        if (latest.current === mine) setFound({ state: 'failed', because: String(cause) });
      },
    );
  }, [key, asked, book]);
  return found;
}
