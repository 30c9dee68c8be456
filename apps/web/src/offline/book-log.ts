/** The log of a book: what is written stays as it was written, and what was damaged is found and set aside. */
import type { Book, KeyChange, StoredChange } from '#boat-book';
import { databaseName, type KnownBook, openDatabase, type StoredRow } from './book-database.ts';
import { checksum } from './checksum.ts';

export interface ReadRow {
  readonly key: number;
  readonly kind: 'edit' | 'whole';
  readonly change: StoredChange;
}

export interface ReadLog {
  readonly rows: readonly ReadRow[];
  /** keys of rows that could not be read; they stay where they are until `setAside` */
  readonly damaged: readonly number[];
}

export interface BookLog {
  books(): Promise<readonly KnownBook[]>;
  current(): Promise<string | null>;
  open(book: string): Promise<void>;
  /** Begins a book with a whole row, and makes it the open one. `onlyFirst`: unless there is a book already. */
  begin(book: KnownBook, whole: StoredChange, onlyFirst: boolean): Promise<boolean>;
  keepForeign(book: KnownBook, bytes: Uint8Array): Promise<void>;
  foreign(book: string): Promise<Uint8Array | null>;
  named(book: KnownBook): Promise<void>;
  /** Rows of a book after the row `after`, oldest first. */
  read(book: string, after?: number): Promise<ReadLog>;
  /** Resolves with the rows' keys when all are in lasting storage; rejects when none is. */
  append(book: string, changes: readonly StoredChange[]): Promise<readonly number[]>;
  /** Puts a whole row in and takes away what the whole row before it covers, unless there are rows not in `seen`. */
  compact(book: string, whole: StoredChange, seen: ReadonlySet<number>): Promise<number | null>;
  setAside(book: string, keys: readonly number[], found: string): Promise<void>;
  /** Keeps the book for the first paint, and what its list of work shows, where it is the open one. */
  keepFirst(id: string, book: Book, work: string): Promise<void>;
  first(book: string): Promise<Book | null>;
  blob(hash: string): Promise<Uint8Array | null>;
  /** Keeps blobs by their hash; all of them, or it rejects and none is kept. */
  keepBlobs(blobs: ReadonlyMap<string, Uint8Array>): Promise<void>;
  /**
   * Notes which blobs a book names now, and takes away those that it has not named for `spare_ms` and no other book does:
   * until then undo finds them.
   * @returns which of those named are not on this device
   */
  noteBlobs(book: string, named: ReadonlySet<string>, now: number, spare_ms: number): Promise<readonly string[]>;
  close(): void;
}

const lasting = { durability: 'strict' } as const;

export function storedRow(book: string, kind: 'edit' | 'whole', change: StoredChange): StoredRow {
  const keys = JSON.stringify(change.keys);
  const { boat, work } = change;
  return { book, kind, boat, work, keys, check: checksum([book, kind, keys, boat, work]) };
}

/** The change in a row, or null where the row is not as it was written. */
export function readRow(row: unknown): { kind: 'edit' | 'whole'; change: StoredChange } | null {
  if (typeof row !== 'object' || row === null) return null;
  const { book, kind, boat, work, keys, check } = row as Partial<StoredRow>;
  const bytes = (value: unknown): value is Uint8Array | null => value === null || value instanceof Uint8Array;
  if (typeof book !== 'string' || typeof keys !== 'string' || !bytes(boat) || !bytes(work)) return null;
  if (kind !== 'edit' && kind !== 'whole') return null;
  if (checksum([book, kind, keys, boat, work]) !== check) return null;
  try {
    return { kind, change: { boat, work, keys: JSON.parse(keys) as KeyChange[] } };
  } catch {
    return null;
  }
}

/** Opens the store. @throws when the device allows none */
export async function bookLog(name = databaseName): Promise<BookLog> {
  const db = await openDatabase(name);
  return {
    books: () => db.getAll('books'),
    current: async () => (await db.get('open', 'current')) ?? null,
    async open(book) {
      const tx = db.transaction('open', 'readwrite');
      await Promise.all([tx.store.put(book, 'current'), tx.store.delete('work'), tx.done]);
    },
    async begin(book, whole, onlyFirst) {
      const tx = db.transaction(['rows', 'books', 'open'], 'readwrite', lasting);
      if (onlyFirst && (await tx.objectStore('open').get('current')) !== undefined) {
        await tx.done;
        return false;
      }
      await Promise.all([
        tx.objectStore('rows').add(storedRow(book.id, 'whole', whole)),
        tx.objectStore('books').put(book),
        tx.objectStore('open').put(book.id, 'current'),
        // it is of the book that was open before
        tx.objectStore('open').delete('work'),
        tx.done,
      ]);
      return true;
    },
    async keepForeign(book, bytes) {
      const tx = db.transaction(['books', 'open', 'foreign'], 'readwrite', lasting);
      await Promise.all([
        tx.objectStore('books').put(book),
        tx.objectStore('open').put(book.id, 'current'),
        tx.objectStore('open').delete('work'),
        tx.objectStore('foreign').put(bytes, book.id),
        tx.done,
      ]);
    },
    foreign: async (book) => (await db.get('foreign', book)) ?? null,
    async named(book) {
      await db.put('books', book);
    },
    async read(book, after = 0) {
      const rows: ReadRow[] = [];
      const damaged: number[] = [];
      const tx = db.transaction('rows', 'readonly');
      const index = tx.store.index('book');
      // both in the index's order: by key, as one book is asked for
      const [keys, values] = await Promise.all([index.getAllKeys(book), index.getAll(book), tx.done]);
      keys.forEach((key, i) => {
        if (key <= after) return;
        const read = readRow(values[i]);
        if (read === null) damaged.push(key);
        else rows.push({ key, ...read });
      });
      return { rows, damaged };
    },
    async append(book, changes) {
      const tx = db.transaction('rows', 'readwrite', lasting);
      const keys = Promise.all(changes.map((change) => tx.store.add(storedRow(book, 'edit', change))));
      const [made] = await Promise.all([keys, tx.done]);
      return made;
    },
    async compact(book, whole, seen) {
      const tx = db.transaction('rows', 'readwrite', lasting);
      const index = tx.store.index('book');
      const [keys, values] = await Promise.all([index.getAllKeys(book), index.getAll(book)]);
      if (keys.some((key) => !seen.has(key))) {
        await tx.done;
        return null;
      }
      const lastWhole = keys.findLast((_, i) => values[i]?.kind === 'whole' && readRow(values[i]) !== null);
      const made = await tx.store.add(storedRow(book, 'whole', whole));
      for (const key of keys) if (lastWhole !== undefined && key < lastWhole) void tx.store.delete(key);
      await tx.done;
      return made;
    },
    async setAside(book, keys, found) {
      const tx = db.transaction(['rows', 'set aside'], 'readwrite', lasting);
      for (const key of keys) {
        const row: unknown = await tx.objectStore('rows').get(key);
        if (row === undefined) continue;
        await tx.objectStore('set aside').add({ book, row, found });
        await tx.objectStore('rows').delete(key);
      }
      await tx.done;
    },
    async keepFirst(id, book, work) {
      const tx = db.transaction(['firsts', 'open'], 'readwrite');
      const open = tx.objectStore('open');
      void tx.objectStore('firsts').put({ book }, id);
      // another tab may have opened another book
      if ((await open.get('current')) === id) void open.put(work, 'work');
      await tx.done;
    },
    first: async (book) => (await db.get('firsts', book))?.book ?? null,
    blob: async (hash) => (await db.get('blobs', hash)) ?? null,
    async keepBlobs(blobs) {
      if (blobs.size === 0) return;
      const tx = db.transaction('blobs', 'readwrite', lasting);
      await Promise.all([...[...blobs].map(([hash, bytes]) => tx.store.put(bytes, hash)), tx.done]);
    },
    async noteBlobs(book, named, now, spare_ms) {
      const tx = db.transaction(['blobs', 'blob uses'], 'readwrite');
      const uses = tx.objectStore('blob uses');
      const before = await uses.index('book').getAll(book);
      for (const blob of named) void uses.put({ book, blob, unnamedSince: null });
      for (const use of before.filter(({ blob }) => !named.has(blob))) {
        if (use.unnamedSince === null) void uses.put({ ...use, unnamedSince: now });
        else if (now - use.unnamedSince > spare_ms) {
          await uses.delete([book, use.blob]);
          if ((await uses.index('blob').count(use.blob)) === 0) await tx.objectStore('blobs').delete(use.blob);
        }
      }
      const missing: string[] = [];
      for (const blob of named) if ((await tx.objectStore('blobs').count(blob)) === 0) missing.push(blob);
      await tx.done;
      return missing;
    },
    close: () => db.close(),
  };
}
