/** What is told of a battery, worked out beside the page: the estimate and a thousand runs of the nights. */
import { expose } from 'comlink';
import type { Book, Id } from '#boat-book';
import {
  type CardTold,
  cardTold,
  type NoCourse,
  type PowerTold,
  powerTold,
  type ReadingsCourse,
  readBlocks,
  readingsCourse,
} from '#reckoning';
import type { Span } from '#units';

/** Blocks of readings by the hash of their bytes. */
type BlockBytes = ReadonlyMap<string, Uint8Array>;

const worker = {
  told: (book: Book, id: Id, now: number, nights: number, blocks: BlockBytes): PowerTold | null =>
    powerTold(book, id, now, nights, readBlocks(blocks)),
  course: (book: Book, block: Id, blocks: BlockBytes, within: Span): ReadingsCourse | NoCourse =>
    readingsCourse(book, block, readBlocks(blocks), within),
  card: (book: Book, id: Id, now: number): CardTold | null => cardTold(book, id, now),
};
export type BatteryWorker = typeof worker;
expose(worker);
