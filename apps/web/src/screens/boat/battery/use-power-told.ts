/** What is told of a battery, asked again when the book changes and when the hour does. */
import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { PowerTold } from '#reckoning';
import type { BatteryWorker } from './battery-worker.ts';

const worker = wrap<BatteryWorker>(new Worker(new URL('./battery-worker.ts', import.meta.url), { type: 'module' }));
/** Nights looked at. */
const nights = 3;

export type Telling =
  | { readonly state: 'working out' }
  | { readonly state: 'told'; readonly told: PowerTold }
  | { readonly state: 'failed'; readonly because: string };

export function usePowerTold(book: Book, id: Id): Telling {
  const [telling, setTelling] = useState<Telling>({ state: 'working out' });
  useEffect(() => {
    let live = true;
    worker.told(book, id, Date.now(), nights).then(
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
  }, [book, id]);
  return telling;
}
