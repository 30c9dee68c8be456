/** Whether the batteries last the nights of an outing, worked out beside the page. */
import { expose } from 'comlink';
import type { Book, Id } from '#boat-book';
import { type Beside, powerFindings, readBlocks } from '#reckoning';

const worker = {
  findings: (book: Book, outing: Id, now: number, blocks: ReadonlyMap<string, Uint8Array>): Beside => {
    const going = book.outings[outing];
    return going ? powerFindings(book, going, now, readBlocks(blocks)) : { findings: [], notLooked: [] };
  },
};
export type NightsWorker = typeof worker;
expose(worker);
