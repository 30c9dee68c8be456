/** Blocks of readings as they lie on this device, for the Workers that reckon with them. */
import type { Book, Id } from '#boat-book';
import { bookClient } from '../../../offline/book-client.ts';

/** The bytes of the blocks of a battery that reach into the time from `since` on, by their hash; those that are here. */
export async function blocksHere(book: Book, battery: Id, since: number): Promise<ReadonlyMap<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>();
  for (const block of Object.values(book.readingBlocks)) {
    if (block.battery !== battery || Date.parse(block.to) < since) continue;
    const bytes = await bookClient.blob(block.blob);
    if (bytes !== null) found.set(block.blob, bytes);
  }
  return found;
}
