/** What a book keeps outside its documents, as blobs under their SHA-256. */
import type { Book } from './records.ts';

export interface BlobNamed {
  readonly blob: string;
  readonly kind: 'readings' | 'photograph' | 'paper';
  /** what it is, for a sentence about it */
  readonly what: string;
  /** packed already: a zip makes it no smaller */
  readonly packed: boolean;
}

/** Every blob the book names, with what names it. The same blob stands twice where two records name it. */
export function blobsNamed(book: Book): readonly BlobNamed[] {
  return [
    ...Object.values(book.readingBlocks).map(({ blob, count, file }) => ({
      blob,
      kind: 'readings' as const,
      what: `the ${count} readings from ‘${file}’`,
      packed: false,
    })),
    ...Object.values(book.photos).map(({ blob, taken }) => ({
      blob,
      kind: 'photograph' as const,
      what: `the photograph of ${taken.slice(0, 10)}`,
      packed: true,
    })),
    ...Object.values(book.papers).map(({ blob, title, type }) => ({
      blob,
      kind: 'paper' as const,
      what: `the paper ‘${title}’`,
      packed: type !== 'text/plain',
    })),
  ];
}
