/** The battery's part of the answer, asked of a Worker for outings with nights; what was told stands until it is told anew. */
import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { assumedLookBack_days, type Beside } from '#reckoning';
import { blocksHere } from '../boat/readings/blocks-here.ts';
import type { NightsWorker } from './nights-worker.ts';

const none: Beside = { findings: [], notLooked: [] };
let worker: ReturnType<typeof wrap<NightsWorker>> | null = null;

export function useNights(book: Book, id: Id): Beside | null {
  const nights = book.outings[id]?.nights ?? 0;
  const [told, setTold] = useState<Beside | null>(nights === 0 ? none : null);
  useEffect(() => {
    if (nights === 0) {
      setTold(none);
      return;
    }
    let live = true;
    const ask = async () => {
      const now = Date.now();
      const blocks = new Map<string, Uint8Array>();
      for (const battery of Object.keys(book.batteries))
        for (const [hash, bytes] of await blocksHere(book, battery, now - assumedLookBack_days * 86_400_000))
          blocks.set(hash, bytes);
      worker ??= wrap<NightsWorker>(new Worker(new URL('./nights-worker.ts', import.meta.url), { type: 'module' }));
      return worker.findings({ ...book, jobs: {}, steps: {}, plans: {}, log: {} }, id, now, blocks);
    };
    ask().then(
      (findings) => live && setTold(findings),
      (cause: unknown) =>
        live &&
        setTold({
          findings: [],
          notLooked: [
            {
              subject: 'power',
              words: 'whether the battery lasts the nights',
              because: cause instanceof Error ? cause.message : String(cause),
            },
          ],
        }),
    );
    return () => {
      live = false;
    };
  }, [book, id, nights]);
  return told;
}
