/** Tabs of one device, for tests of what is kept on it: they share a store and hear each other. */
import 'fake-indexeddb/auto';
import { type Book, emptyBook } from '#boat-book';
import { type BookLog, bookLog } from '../book-log.ts';
import { type BookNews, patchedBook } from '../book-news.ts';
import type { KeptBooks, World } from '../book-world.ts';
import { keptBooks } from '../kept-books.ts';

export const boat = {
  name: 'Dabchick',
  keeper: 'Ilka',
  demo: true,
  length_m: 5.6,
  beam_m: 2.2,
  mastHeight_m: 7,
  mastFromBow_m: 2,
  boom_m: 2.4,
  freeboard_m: 0.6,
  draft_m: 0.25,
  draftBoardDown_m: 1.2,
  cabin: true,
  board: 'pivoting',
} as const;

let count = 0;

export interface Tab {
  readonly books: KeptBooks;
  readonly news: BookNews[];
  /** the book as a screen of this tab would show it */
  book(): Book | null;
  log(): BookLog;
}

export function device(name = `device ${++count}`) {
  const tabs: Tab[] = [];
  /** a tab that has not started yet */
  function opening(change: Partial<World> = {}): Tab {
    const news: BookNews[] = [];
    let shown: Book | null = null;
    let log: BookLog | null = null;
    const books = keptBooks({
      async openLog() {
        log = await bookLog(name);
        return log;
      },
      tell(one) {
        news.push(one);
        shown = one.book === undefined ? shown : one.book;
        if (shown !== null) shown = patchedBook(shown, one.patches);
      },
      nudge(book) {
        for (const other of tabs) if (other.books !== books) void other.books.catchUp(book);
      },
      surroundings: () => ({
        session: ++count,
        newId: () => `id${++count}`,
        now: () => Date.UTC(2026, 4, 2, 9),
        timeZone: 'UTC',
      }),
      demoBook: async () => emptyBook('demo', boat),
      compactAfter: 2_000,
      later: (then, wait_ms) => void setTimeout(then, Math.min(wait_ms, 5)),
      ...change,
    });
    const made: Tab = { books, news, book: () => shown, log: () => log! };
    tabs.push(made);
    return made;
  }
  async function tab(change: Partial<World> = {}): Promise<Tab> {
    const made = opening(change);
    await made.books.start();
    return made;
  }
  return { name, opening, tab };
}
