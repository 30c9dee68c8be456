/** What of the answer is worked out beside the page, asked of a Worker; what was told stands until it is told anew. */
import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { assumedLookBack_days, type Beside, planInForce } from '#reckoning';
import { blocksHere } from '../boat/readings/blocks-here.ts';
import type { FitWorker } from './fit-worker.ts';

interface Told {
  /** of this state of the book; another has come where it is not the one shown */
  readonly book: Book | null;
  readonly gear: Beside | null;
  readonly nights: Beside | null;
}

export interface LookedSoFar {
  readonly gear: Beside | null;
  readonly nights: Beside | null;
  /** what is being looked at still, or again */
  readonly looking: readonly string[];
}

/** [ms] */
const afterPaint_ms = 50;
const none: Beside = { findings: [], notLooked: [] };
let worker: ReturnType<typeof wrap<FitWorker>> | null = null;

export function useBeside(book: Book, id: Id): LookedSoFar {
  const withNights = (book.outings[id]?.nights ?? 0) > 0;
  const [told, setTold] = useState<Told>({ book: null, gear: null, nights: null });
  useEffect(() => {
    let live = true;
    const now = Date.now();
    const tell = (part: Partial<Told>) => live && setTold((before) => ({ ...before, ...part }));
    const ask = async () => {
      worker ??= wrap<FitWorker>(new Worker(new URL('./fit-worker.ts', import.meta.url), { type: 'module' }));
      const gear = await worker.gear(forGear(book), id, now).catch(failed('dues', 'what falls due, and her gear'));
      tell({ gear });
      const nights = withNights
        ? await nightsOf(worker, book, id, now).catch(failed('power', 'whether the battery lasts the nights'))
        : none;
      tell({ nights, book });
    };
    // what the page itself knows is painted before the book is handed over
    const timer = setTimeout(() => void ask(), afterPaint_ms);
    return () => {
      live = false;
      clearTimeout(timer);
    };
  }, [book, id, withNights]);
  const again = told.book !== book;
  return {
    gear: told.gear,
    nights: withNights ? told.nights : none,
    looking: [
      ...(told.gear === null || again ? ['what falls due and her gear'] : []),
      ...(withNights && (told.nights === null || again) ? ['the battery’s nights'] : []),
    ],
  };
}

/** What cannot be looked at is told as not looked at. */
const failed =
  (subject: 'dues' | 'power', words: string) =>
  (cause: unknown): Beside => ({
    findings: [],
    notLooked: [{ subject, words, because: cause instanceof Error ? cause.message : String(cause) }],
  });

/** No more of the book than is looked at goes to the Worker: a log of years takes longer to hand over than to read. */
function forGear(book: Book): Book {
  const plan = planInForce(book);
  return {
    ...book,
    log: {},
    photos: {},
    readings: {},
    readingBlocks: {},
    plans: plan === null ? {} : { inForce: plan },
  };
}

async function nightsOf(ask: ReturnType<typeof wrap<FitWorker>>, book: Book, id: Id, now: number): Promise<Beside> {
  const blocks = new Map<string, Uint8Array>();
  for (const battery of Object.keys(book.batteries))
    for (const [hash, bytes] of await blocksHere(book, battery, now - assumedLookBack_days * 86_400_000))
      blocks.set(hash, bytes);
  return ask.nights({ ...book, jobs: {}, steps: {}, plans: {}, log: {}, photos: {} }, id, now, blocks);
}
