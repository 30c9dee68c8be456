/** What is told of a battery, worked out beside the page: the estimate and a thousand runs of the nights. */
import { expose } from 'comlink';
import type { Book, Id } from '#boat-book';
import { type CardTold, cardTold, type PowerTold, powerTold } from '#reckoning';

const worker = {
  told: (book: Book, id: Id, now: number, nights: number): PowerTold | null => powerTold(book, id, now, nights),
  card: (book: Book, id: Id, now: number): CardTold | null => cardTold(book, id, now),
};
export type BatteryWorker = typeof worker;
expose(worker);
