/**
 * The one way screens read and change the boat book. The book itself lives in a Worker; a screen sees a plain value
 * that never changes under it, and asks for changes by the name of an operation.
 */
import { type Remote, transfer, wrap } from 'comlink';
import type { Boat, Book, OperationFields, OperationName, OperationOutcome, RecordPatch } from '#boat-book';
import type { LogFound, LogQuery } from '#log';
import type { KeptWork } from '../reading/work-shown.ts';
import { firstPicture } from './book-database.ts';
import { type BookNews, type BookState, patchedBook } from './book-news.ts';
import type { BlobFields, BlobOperation, KeptBooks, StartsWith } from './book-world.ts';

export interface BookSnapshot extends BookState {
  /** null while opening, and when there is no book on this device yet */
  readonly book: Book | null;
  /** what the list of work showed when it was last kept, while the book is on its way; else null */
  readonly first: KeptWork | null;
}

export type OpenedFile =
  | { readonly kind: 'opened'; readonly readOnly: boolean; readonly notes: readonly string[] }
  | { readonly kind: 'refused'; readonly because: readonly string[] };

export interface BookClient {
  /** Opens the book. What is asked of it opens it too; so this may wait until something else is on the screen. */
  open(): void;
  /** Shows the list of work as it was last kept, until the book is there. */
  showFirst(first: KeptWork): void;
  /** More than the list is wanted before the book is there: shows the whole of it as it last stood. */
  showPicture(): void;
  subscribe(listener: () => void): () => void;
  snapshot(): BookSnapshot;
  run<N extends OperationName>(name: N, fields: OperationFields<N>): Promise<OperationOutcome>;
  undo(): Promise<void>;
  redo(): Promise<void>;
  /** resolves when all that was asked so far is in lasting storage, or cannot be (see `state`) */
  flush(): Promise<void>;
  boatFile(): Promise<Uint8Array>;
  /** Keeps a blob on the device and names it in the book. The bytes are handed over. */
  keepBlob<N extends BlobOperation>(name: N, fields: BlobFields<N>, bytes: Uint8Array): Promise<OperationOutcome>;
  /** The bytes of a blob, or null where this device does not have it. */
  blob(hash: string): Promise<Uint8Array | null>;
  /** Finds in the log, the jobs, the fittings and the papers of the open book. */
  find(query: LogQuery): Promise<readonly LogFound[]>;
  /** `asCopy`: as a new book of its own, even where this device has the same one */
  openFile(bytes: Uint8Array, how?: { readonly asCopy: boolean }): Promise<OpenedFile>;
  startBook(kind: 'demo' | 'empty', boat?: Partial<Boat>, standing?: StartsWith): Promise<void>;
  /** the books on this device */
  books(): Promise<readonly { readonly id: string; readonly name: string; readonly current: boolean }[]>;
  openBook(id: string): Promise<void>;
}

/** Screens are told at most so often. [ms] */
const leastBetween_ms = 16;

/** The part of a Worker that the client needs. */
export type BookWorker = Pick<Worker, 'postMessage' | 'addEventListener' | 'removeEventListener'>;

/**
 * A client of the book in a Worker.
 * @param begin    starts the Worker
 * @param picture  the book as it last stood, for the first paint; null where there is none
 */
export function clientOf(begin: () => BookWorker, picture: () => Promise<Book | null>): BookClient {
  let current: BookSnapshot = {
    book: null,
    first: null,
    state: 'opening',
    because: null,
    undo: null,
    redo: null,
    troubles: [],
    readOnly: null,
    questions: [],
  };
  /** changes that no screen has asked for yet: many are put in at once */
  const waiting: RecordPatch[] = [];
  const listeners = new Set<() => void>();
  let toldAt = Number.NEGATIVE_INFINITY;
  let telling = false;
  /** operations asked for and not yet answered: until then nothing shows as saved */
  let asked = 0;
  let worker: Remote<KeptBooks> | null = null;
  let pictured = false;

  function changed(next: BookSnapshot): void {
    current = next;
    if (telling) return;
    const wait_ms = toldAt + leastBetween_ms - performance.now();
    if (wait_ms <= 0) tell();
    else {
      telling = true;
      setTimeout(tell, wait_ms);
    }
  }

  function tell(): void {
    telling = false;
    toldAt = performance.now();
    for (const listener of listeners) listener();
  }

  function heard(news: BookNews): void {
    const { book, patches, ...state } = news;
    if (book !== undefined) waiting.length = 0;
    waiting.push(...patches);
    changed({
      ...state,
      state: asked > 0 && state.state === 'saved' ? 'saving' : state.state,
      book: book === undefined ? current.book : book,
      first: book === undefined ? current.first : null,
    });
  }

  function books(): Remote<KeptBooks> {
    if (worker !== null) return worker;
    const begun = begin();
    begun.addEventListener('message', (event) => {
      const { data } = event as MessageEvent<{ readonly news?: BookNews }>;
      if (data?.news) heard(data.news);
    });
    begun.addEventListener('error', () => {
      changed({
        ...current,
        state: 'not saved',
        because:
          'The part of the program that keeps the book stopped. Load the page again; all that showed as saved is there.',
      });
    });
    worker = wrap<KeptBooks>(begun as Worker);
    const failed = (error: unknown): void =>
      changed({ ...current, state: 'not saved', because: `The boat book could not be opened (${String(error)}).` });
    worker.start().catch(failed);
    if (current.first === null) showPicture();
    return worker;
  }

  function showPicture(): void {
    if (pictured || current.book !== null) return;
    pictured = true;
    picture().then(
      (book) => {
        if (book !== null && current.state === 'opening') changed({ ...current, book, first: null });
      },
      () => {}, // without a picture the first paint waits for the book itself
    );
  }

  async function asking<T>(ask: (books: Remote<KeptBooks>) => Promise<T>): Promise<T> {
    asked++;
    const there = books();
    if (current.state === 'saved') {
      // told beside the turn of what changes: the answer to a tap would wait for its next one
      current = { ...current, state: 'saving' };
      for (const listener of listeners) listener();
    }
    try {
      return await ask(there);
    } finally {
      asked--;
      // what was answered and needed no writing leaves no later news behind it
      if (asked === 0 && current.state === 'saving') void there.tellAgain();
    }
  }

  return {
    open() {
      books();
    },
    showFirst(first) {
      if (worker === null) changed({ ...current, first });
    },
    showPicture,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    snapshot() {
      if (waiting.length > 0 && current.book !== null) {
        current = { ...current, book: patchedBook(current.book, waiting) };
        waiting.length = 0;
      }
      return current;
    },
    run: (name, fields) => asking((there) => there.run(name as never, fields as never) as Promise<OperationOutcome>),
    undo: () => asking((there) => there.undo()),
    redo: () => asking((there) => there.redo()),
    async flush() {
      await books().flush();
    },
    boatFile: () => books().boatFile(),
    keepBlob: (name, fields, bytes) =>
      asking(
        (there) => there.keepBlob(name, fields as never, transfer(bytes, [bytes.buffer])) as Promise<OperationOutcome>,
      ),
    blob: (hash) => books().blob(hash),
    find: (query) => books().find(query) as Promise<readonly LogFound[]>,
    openFile: (bytes, how) => asking((there) => there.openFile(bytes, how?.asCopy === true) as Promise<OpenedFile>),
    startBook: (kind, boat, standing) => asking((there) => there.startBook(kind, boat, standing)),
    books: () => books().books(),
    openBook: (id) => asking((there) => there.openBook(id)),
  };
}

export const bookClient: BookClient = clientOf(() => {
  void navigator.storage?.persist?.().catch(() => false);
  return new Worker(new URL('./book-worker.ts', import.meta.url), { type: 'module', name: 'boat book' });
}, firstPicture);

declare global {
  /** the book's client in the browser's console: the same operations as the buttons, for mending by hand */
  var fettleBook: BookClient | undefined;
}
globalThis.fettleBook = bookClient;

// a page that holds what the device would not take is not closed by a slip; a test has no page
if (typeof document !== 'undefined') {
  globalThis.addEventListener('beforeunload', (event) => {
    if (bookClient.snapshot().state === 'not saved') event.preventDefault();
  });
}
