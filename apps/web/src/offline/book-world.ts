/** What the books of a device need of the world, and what they give. */
import type { Boat, Book, BookSurroundings, OperationFields, OperationName, OperationOutcome } from '#boat-book';
import type { LogFound, LogQuery } from '#log';
import type { OpenedFile } from './book-client.ts';
import type { BookLog } from './book-log.ts';
import type { BookNews } from './book-news.ts';

export interface World {
  /** opens the device's store. @throws when the device allows none */
  openLog(): Promise<BookLog>;
  tell(news: BookNews): void;
  /** tells the other tabs that there are new rows for a book */
  nudge(book: string): void;
  surroundings(): BookSurroundings;
  demoBook(): Promise<Book>;
  later(then: () => void, wait_ms: number): void;
  /** a whole row is written after so many changes */
  readonly compactAfter: number;
}

/** The zones and set-ups a new book has from its first moment. */
export type StartsWith = Pick<Book, 'zones' | 'setUps'>;

/** The operations that name a blob, which is kept first. */
export type BlobOperation = 'keepReadingBlock' | 'keepPhoto' | 'keepPaper';

/** What such an operation is told, but for the hash of the bytes. */
export type BlobFields<N extends BlobOperation> = Omit<OperationFields<N>, 'blob'>;

export interface KeptBooks {
  /** Opens the book that was open last, if any. */
  start(): Promise<void>;
  run<N extends OperationName>(name: N, fields: OperationFields<N>): Promise<OperationOutcome>;
  undo(): Promise<void>;
  redo(): Promise<void>;
  flush(): Promise<void>;
  boatFile(): Promise<Uint8Array>;
  /** Keeps a blob on the device and names it in the book; refused where the device has no room for it. */
  keepBlob<N extends BlobOperation>(name: N, fields: BlobFields<N>, bytes: Uint8Array): Promise<OperationOutcome>;
  /** The bytes of a blob, or null where this device does not have it. */
  blob(hash: string): Promise<Uint8Array | null>;
  /** Finds in the log, the jobs, the fittings and the papers of the open book. */
  find(query: LogQuery): Promise<readonly LogFound[]>;
  openFile(bytes: Uint8Array, asCopy: boolean): Promise<OpenedFile>;
  /** `standing`: what an empty book starts with besides the boat, so that it is never seen half made */
  startBook(kind: 'demo' | 'empty', boat?: Partial<Boat>, standing?: StartsWith): Promise<void>;
  books(): Promise<readonly { readonly id: string; readonly name: string; readonly current: boolean }[]>;
  openBook(id: string): Promise<void>;
  /** Tells what there is to show besides the book once more. */
  tellAgain(): void;
  /** Takes in what other tabs wrote to the book that is open here. */
  catchUp(book: string): Promise<void>;
}
