/**
 * What is kept of every book on this device, in IndexedDB.
 *
 *   rows        the log of changes, only ever added to: `edit` rows hold one change each, `whole` rows a whole book.
 *               Every row carries a checksum. Two whole rows are kept, so that a damaged one loses nothing.
 *   set aside   damaged rows, as they were found
 *   books       the books there are
 *   open        which of them is open (`current`), and what its list of work shows, as text (`work`)
 *   firsts      for each book, the plain book as it last stood, for the first paint
 *   foreign     books from a newer version, as the bytes of their file
 *   blobs       blocks of readings and the like, each under the SHA-256 of its bytes; they never change
 *   blob uses   which book names which blob; one that no book has named for a week is taken away
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Book } from '#boat-book';

export interface StoredRow {
  readonly book: string;
  readonly kind: 'edit' | 'whole';
  readonly boat: Uint8Array | null;
  readonly work: Uint8Array | null;
  /** the change in plain values, as JSON; what a damaged history keeps from being read is done again from these */
  readonly keys: string;
  readonly check: string;
}

export interface KnownBook {
  readonly id: string;
  readonly name: string;
  readonly demo: boolean;
  /** true: it is from a newer version, kept as its file */
  readonly foreign: boolean;
}

export interface BlobUse {
  readonly book: string;
  readonly blob: string;
  /** when the book was first seen without it; null: it names it. [ms] */
  readonly unnamedSince: number | null;
}

export interface Schema extends DBSchema {
  rows: { key: number; value: StoredRow; indexes: { book: string } };
  'set aside': { key: number; value: { book: string; row: unknown; found: string } };
  books: { key: string; value: KnownBook };
  open: { key: 'current' | 'work'; value: string };
  firsts: { key: string; value: { book: Book } };
  foreign: { key: string; value: Uint8Array };
  blobs: { key: string; value: Uint8Array };
  'blob uses': { key: [book: string, blob: string]; value: BlobUse; indexes: { book: string; blob: string } };
}

/** Held to the type of the book; the schema itself is not loaded before the first paint. */
const bookVersion: Book['version'] = 5;

export const databaseName = 'fettle';

export async function openDatabase(name: string): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, 2, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('rows', { autoIncrement: true }).createIndex('book', 'book');
        db.createObjectStore('set aside', { autoIncrement: true });
        db.createObjectStore('books', { keyPath: 'id' });
        db.createObjectStore('open');
        db.createObjectStore('firsts');
        db.createObjectStore('foreign');
      }
      db.createObjectStore('blobs');
      const uses = db.createObjectStore('blob uses', { keyPath: ['book', 'blob'] });
      uses.createIndex('book', 'book');
      uses.createIndex('blob', 'blob');
    },
    blocking(_current, _blocked, event) {
      // a newer version of the program in another tab wants to change the store: let it
      (event.target as IDBDatabase).close();
    },
  });
}

/**
 * The open book as it last stood, for the first paint; null where there is none, or where an earlier version of the
 * program kept it: then the first paint waits for the book itself, once.
 */
export async function firstPicture(name = databaseName): Promise<Book | null> {
  const db = await openDatabase(name);
  try {
    const current = await db.get('open', 'current');
    const picture = current === undefined ? null : ((await db.get('firsts', current))?.book ?? null);
    return picture !== null && picture.version === bookVersion ? picture : null;
  } finally {
    db.close();
  }
}
