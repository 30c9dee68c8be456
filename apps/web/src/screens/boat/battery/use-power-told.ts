/** What is told of a battery, worked out beside the page and asked again when the book changes. */
import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { assumedLookBack_days, type CardTold, type PowerTold } from '#reckoning';
import { blocksHere } from '../readings/blocks-here.ts';
import type { BatteryWorker } from './battery-worker.ts';

const worker = wrap<BatteryWorker>(new Worker(new URL('./battery-worker.ts', import.meta.url), { type: 'module' }));
/** Nights looked at. */
const nights = 3;

/** What a Worker works out beside the page. */
export type Telling<T> =
  | { readonly state: 'working out' }
  | { readonly state: 'told'; readonly told: T }
  | { readonly state: 'failed'; readonly because: string };

/** The book without what has no say in its power, so that a long log is not copied to the Worker at every change. */
const forPower = (book: Book): Book => ({
  ...book,
  zones: {},
  fittings: {},
  setUps: {},
  tools: {},
  mixes: {},
  jobs: {},
  steps: {},
  juryRigs: {},
  stores: {},
  plans: {},
  log: {},
});

type Ask<T> = (book: Book, id: Id) => Promise<T | null>;
const askPower: Ask<PowerTold> = async (book, id) => {
  const now = Date.now();
  const blocks = await blocksHere(book, id, now - assumedLookBack_days * 86_400_000);
  return worker.told(forPower(book), id, now, nights, blocks);
};
const askCard: Ask<CardTold> = (book, id) => worker.card(forPower(book), id, Date.now());

/** Asks again when the book is another; what was told stands until then. */
function useTelling<T>(ask: Ask<T>, book: Book, id: Id): Telling<T> {
  const [telling, setTelling] = useState<Telling<T>>({ state: 'working out' });
  useEffect(() => {
    let live = true;
    ask(book, id).then(
      (told) => {
        if (live && told !== null) setTelling({ state: 'told', told });
      },
      (cause: unknown) => {
        if (live) setTelling({ state: 'failed', because: cause instanceof Error ? cause.message : String(cause) });
      },
    );
    return () => {
      live = false;
    };
  }, [ask, book, id]);
  return telling;
}

export const usePowerTold = (book: Book, id: Id): Telling<PowerTold> => useTelling(askPower, book, id);
export const useCardTold = (book: Book, id: Id): Telling<CardTold> => useTelling(askCard, book, id);
