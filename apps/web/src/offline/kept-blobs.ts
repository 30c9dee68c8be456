/** The blobs of this device: blocks of readings, each under the SHA-256 of its bytes, beside the books that name them. */
import type { Book } from '#boat-book';
import type { BookLog } from './book-log.ts';

/** A blob that no book names is kept this much longer, so that undo in another tab finds it. [ms] */
const spareBlob_ms = 7 * 86_400_000;

export interface KeptBlobs {
  /** Keeps them all, or rejects and keeps none. */
  keep(blobs: ReadonlyMap<string, Uint8Array>): Promise<void>;
  blob(hash: string): Promise<Uint8Array | null>;
  /** those that a book names and this device has */
  namedBy(book: Book): Promise<ReadonlyMap<string, Uint8Array>>;
  /** Notes what a book names now. @returns the blocks of readings that are not on this device, in words */
  missing(id: string, book: Book): Promise<readonly string[]>;
}

/** @param log  the device's store; null: it gives none, and blobs last only while the page is open */
export function keptBlobs(log: () => BookLog | null, now: () => number): KeptBlobs {
  const here = new Map<string, Uint8Array>();
  const blob = async (hash: string) => here.get(hash) ?? (await log()?.blob(hash)) ?? null;
  return {
    blob,
    async keep(blobs) {
      const store = log();
      if (store !== null) await store.keepBlobs(blobs);
      else for (const [hash, bytes] of blobs) here.set(hash, bytes);
    },
    async namedBy(book) {
      const found = new Map<string, Uint8Array>();
      for (const { blob: hash } of Object.values(book.readingBlocks)) {
        const bytes = await blob(hash);
        if (bytes !== null) found.set(hash, bytes);
      }
      return found;
    },
    async missing(id, book) {
      const blocks = Object.values(book.readingBlocks);
      const named = new Set(blocks.map((block) => block.blob));
      // noted again the next time the book is opened
      const gone =
        (await log()
          ?.noteBlobs(id, named, now(), spareBlob_ms)
          .catch(() => null)) ?? [];
      return blocks
        .filter((block) => gone.includes(block.blob))
        .map(
          ({ file, count }) =>
            `The ${count} readings from ‘${file}’ are named in the book but are not on this device: nothing is worked out from them. Open a boat file from the device that has them.`,
        );
    },
  };
}
