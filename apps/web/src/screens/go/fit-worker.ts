/** The slower looks at an outing, made beside the page: what falls due and what her gear bears; whether the batteries last. */
import { expose } from 'comlink';
import type { Book, Id } from '#boat-book';
import { type Beside, gearFindings, powerFindings, readBlocks } from '#reckoning';

const worker = {
  gear: (book: Book, outing: Id, now: number): Beside => gearFindings(book, outing, now),
  nights: (book: Book, outing: Id, now: number, blocks: ReadonlyMap<string, Uint8Array>): Beside => {
    const going = book.outings[outing];
    return going ? powerFindings(book, going, now, readBlocks(blocks)) : { findings: [], notLooked: [] };
  },
};
export type FitWorker = typeof worker;
expose(worker);
