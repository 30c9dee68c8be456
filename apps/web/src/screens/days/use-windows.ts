/** The hours that would suit each job, asked of the plan worker when a screen shows them and when the book changes. */
import { proxy } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { WillingHours } from '#reckoning';
import { planWorker } from './planner.ts';
import type { ShownWindow, WindowTelling } from './window-report.ts';

export interface WindowsInHand {
  /** in the order told: the heaviest job first */
  readonly windows: readonly ShownWindow[];
  readonly state: 'looking' | 'all told' | 'failed';
  readonly words: string | null;
}

const looking: WindowsInHand = { windows: [], state: 'looking', words: null };

export function useWindows(
  book: Book,
  { place, willing, job }: { readonly place: Id; readonly willing: WillingHours; readonly job: Id | null },
): WindowsInHand {
  const [inHand, setInHand] = useState(looking);
  const { from, to } = willing;
  useEffect(() => {
    let live = true;
    let told: readonly ShownWindow[] = [];
    setInHand((before) => ({ ...before, state: 'looking', words: null }));
    const hear = (telling: WindowTelling) => {
      if (!live) return;
      if (telling.kind === 'window') {
        told = [...told, telling.window];
        // what stood there before stays until it is told anew
        const fresh = new Map(told.map((window) => [window.job, window]));
        setInHand(({ windows }) => ({
          windows: windows.length > told.length ? windows.map((window) => fresh.get(window.job) ?? window) : told,
          state: 'looking',
          words: null,
        }));
      } else setInHand({ windows: told, state: 'all told', words: null });
    };
    planWorker
      .windows({ book, now: new Date().toISOString(), place, willing: { from, to }, job }, proxy(hear))
      .catch((error: unknown) => {
        if (live)
          setInHand({ windows: [], state: 'failed', words: error instanceof Error ? error.message : String(error) });
      });
    return () => {
      live = false;
    };
  }, [book, place, from, to, job]);
  return inHand;
}
