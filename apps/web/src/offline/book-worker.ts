/** The Worker that holds the book: the world's clock, dice, store and other tabs are given to it here. */
import { expose } from 'comlink';
import type { BookSurroundings } from '#boat-book';
import { bookLog } from './book-log.ts';
import type { KeptBooks } from './book-world.ts';
import { keptBooks } from './kept-books.ts';

/** Ids of 120 random bits, in letters and figures that ids may have. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(24));
  return Array.from(bytes, (byte) => 'abcdefghijkmnpqrstuvwxyz23456789'[byte % 32]).join('');
}

const surroundings = (): BookSurroundings => ({
  session: 1 + (crypto.getRandomValues(new Uint32Array(1))[0]! % 0xffff_fffe),
  newId,
  now: () => Date.now(),
  timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
});

const tabs = new BroadcastChannel('fettle-books');

const books = keptBooks({
  openLog: () => bookLog(),
  // on the same port as the answers, so that what an operation changed is known before its answer is
  tell: (news) => self.postMessage({ news }),
  nudge: (book) => tabs.postMessage({ book }),
  surroundings,
  async demoBook() {
    const { demoBook } = await import('../../../../examples/demo-book.ts');
    const { timeZone } = surroundings();
    const today = new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' }).format(new Date());
    return demoBook(today);
  },
  compactAfter: 2_000,
  later: (then, wait_ms) => void setTimeout(then, wait_ms),
});

tabs.addEventListener('message', (event: MessageEvent<{ readonly book?: unknown }>) => {
  if (typeof event.data?.book === 'string') void books.catchUp(event.data.book);
});

expose(books satisfies KeptBooks);
