/** The blobs of this device, each under the SHA-256 of its bytes, beside the books that name them. */
import { type Book, blobsNamed } from '#boat-book';
import type { BookLog } from './book-log.ts';

/** A blob that no book names is kept this much longer, so that undo in another tab finds it. [ms] */
const spareBlob_ms = 7 * 86_400_000;

export interface KeptBlobs {
  /** Keeps them all, or rejects and keeps none. */
  keep(blobs: ReadonlyMap<string, Uint8Array>): Promise<void>;
  blob(hash: string): Promise<Uint8Array | null>;
  /** those that a book names and this device has */
  namedBy(book: Book): Promise<ReadonlyMap<string, Uint8Array>>;
  /** Notes what a book names now. @returns what of it is not on this device, in words */
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
      for (const { blob: hash } of blobsNamed(book)) {
        if (found.has(hash)) continue;
        const bytes = await blob(hash);
        if (bytes !== null) found.set(hash, bytes);
      }
      return found;
    },
    async missing(id, book) {
      const all = blobsNamed(book);
      const named = new Set(all.map((one) => one.blob));
      // noted again the next time the book is opened
      const gone = new Set(
        await log()
          ?.noteBlobs(id, named, now(), spareBlob_ms)
          .catch(() => null),
      );
      const notHere = all.filter((one) => gone.has(one.blob));
      const photographs = notHere.filter(({ kind }) => kind === 'photograph').length;
      return [
        ...notHere.filter(({ kind }) => kind === 'readings').map(({ what }) => readingsMissing(what)),
        ...notHere.filter(({ kind }) => kind === 'paper').map(({ what }) => paperMissing(what)),
        ...(photographs === 0 ? [] : [photographsMissing(photographs)]),
      ];
    },
  };
}

const readingsMissing = (what: string): string =>
  `${what.charAt(0).toUpperCase()}${what.slice(1)} are named in the book but are not on this device: nothing is worked out from them. Open a boat file from the device that has them.`;

const paperMissing = (what: string): string =>
  `${what.charAt(0).toUpperCase()}${what.slice(1)} is named in the book but is not on this device. Open a boat file from the device that has it.`;

const photographsMissing = (count: number): string =>
  `${count} ${count === 1 ? 'photograph is' : 'photographs are'} named in the book but not on this device, and an empty frame stands for ${count === 1 ? 'it' : 'each'}. Open a boat file from the device that has ${count === 1 ? 'it' : 'them'}.`;
