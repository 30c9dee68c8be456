import { type Book, readBoatFile } from '#boat-book';
import type { Surroundings } from './surroundings.ts';

export type BookFile =
  | {
      readonly kind: 'book';
      readonly book: Book;
      /** blocks of readings and the like, by their hash */
      readonly blobs: ReadonlyMap<string, Uint8Array>;
      readonly notes: readonly string[];
    }
  | { readonly kind: 'refused'; readonly because: readonly string[] };

/** A book from a boat file or a bare `book.json`, through the one gate; or why not, in whole sentences. */
export function readBookFile(path: string, { readFile }: Pick<Surroundings, 'readFile'>): BookFile {
  let bytes: Uint8Array;
  try {
    bytes = readFile(path);
  } catch (error) {
    return {
      kind: 'refused',
      because: [`${fileTrouble(error, path)} Give the path of a .fettle file or a book.json.`],
    };
  }
  const read = readBoatFile(bytes);
  if (read.kind === 'refused')
    return { kind: 'refused', because: [`${path} cannot be taken as a boat book.`, ...read.because] };
  if (read.kind === 'newer')
    return { kind: 'book', book: read.book, blobs: new Map(), notes: [read.why, ...read.notes] };
  return { kind: 'book', book: read.book, blobs: read.blobs, notes: read.notes };
}

/** What the system says of a file, in words. */
export function fileTrouble(error: unknown, path: string): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  switch (code) {
    case 'ENOENT':
      return `There is no file or folder ${path}.`;
    case 'EISDIR':
      return `${path} is a folder.`;
    case 'ENOTDIR':
      return `${path} goes through a file that is no folder.`;
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `${path} may not be opened by you.`;
    case 'EEXIST':
      return `${path} is there already, and is left as it is.`;
    case 'ENOSPC':
      return `There is no room left for ${path}.`;
    default:
      return `${path} cannot be opened: ${error instanceof Error ? error.message : String(error)}.`;
  }
}
