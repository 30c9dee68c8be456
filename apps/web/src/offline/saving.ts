/**
 * Writes changes to the log in the order they were made, several at a time, and says what is saved. Nothing is
 * dropped: what the device would not take stays in memory and is tried again.
 */
import type { StoredChange } from '#boat-book';

export interface Saving {
  add(change: StoredChange): void;
  state(): { readonly state: 'saved' | 'saving' | 'not saved'; readonly because: string | null };
  /** Resolves when all that was added so far is in lasting storage, or the device would not take it. */
  flush(): Promise<void>;
  /** changes that are not in lasting storage yet */
  waiting(): readonly StoredChange[];
}

/** Between tries; the last stands for all later ones. [ms] */
const assumedPauses_ms = [500, 2_000, 10_000, 30_000];

const mostAtOnce = 500;

/**
 * @param append  stores changes for good, or rejects and stores none
 * @param told    called whenever what `state` says may have changed
 * @param later   calls back after so many milliseconds
 */
export function saving(
  append: (changes: readonly StoredChange[]) => Promise<void>,
  told: () => void,
  later: (then: () => void, wait_ms: number) => void,
): Saving {
  const waiting: StoredChange[] = [];
  let writing: Promise<void> | null = null;
  let because: string | null = null;
  let failures = 0;
  let pausing = false;

  async function write(): Promise<void> {
    // changes of the same moment go together
    await Promise.resolve();
    while (waiting.length > 0) {
      const some = waiting.slice(0, mostAtOnce);
      try {
        await append(some);
        waiting.splice(0, some.length);
        failures = 0;
        because = null;
      } catch (error) {
        because = inPlainWords(error);
        const pause = assumedPauses_ms[Math.min(failures, assumedPauses_ms.length - 1)]!;
        failures++;
        pausing = true;
        later(() => {
          pausing = false;
          begin();
        }, pause);
        break;
      }
    }
    writing = null;
    told();
  }

  function begin(): void {
    if (writing === null && !pausing && waiting.length > 0) writing = write();
  }

  return {
    add(change) {
      waiting.push(change);
      begin();
    },
    state() {
      if (because !== null) return { state: 'not saved', because };
      return { state: waiting.length > 0 ? 'saving' : 'saved', because: null };
    },
    async flush() {
      while (writing !== null) await writing;
    },
    waiting: () => waiting,
  };
}

/** Why the device would not store something. */
export function inPlainWords(error: unknown): string {
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') {
    return 'The device has no room left for the boat book. Your changes are kept while this page stays open, and are tried again; make room on the device, or take a copy of the book now.';
  }
  if (name === 'InvalidStateError' || name === 'AbortError') {
    return 'The store on this device was closed. Your changes are kept while this page stays open, and are tried again.';
  }
  const detail = error instanceof Error ? error.message : String(error);
  return `The device would not store the last changes (${detail}). They are kept while this page stays open, and are tried again.`;
}
