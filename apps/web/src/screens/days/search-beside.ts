/**
 * The second search, where the device has a core for it. Its Worker starts once there is a plan to look at, is kept for
 * the next one, and is only ever a gain: where it cannot start, or fails, the first search goes on alone.
 */
import { BesideLine, type FoundBeside } from '#workplan';
import type { SaidToBeside } from './beside-worker.ts';

let worker: Worker | null = null;
/** no second core, no Worker within a Worker, or it has failed */
let isAlone = !(navigator.hardwareConcurrency >= 2);

/** Ask it to begin once the first plan is told. */
export const besideLine = new BesideLine((told) => say(told));

/** Has it do nothing for so long, as the first does. 0: on at once. */
export function restBeside(for_ms: number): void {
  if (worker !== null) say({ kind: 'rest', for_ms });
}

function say(said: SaidToBeside): void {
  if (isAlone) return;
  worker ??= started();
  worker?.postMessage(said);
}

function started(): Worker | null {
  try {
    const made = new Worker(new URL('./beside-worker.ts', import.meta.url), { type: 'module', name: 'plan beside' });
    made.addEventListener('message', ({ data }: MessageEvent<FoundBeside>) => besideLine.hear(data));
    made.addEventListener('error', (fault) => {
      // the keeper has the plan of the first search; what failed is in the console
      fault.preventDefault();
      console.warn(`the second search ended: ${fault.message || 'its program did not come'}`);
      goOnAlone();
    });
    return made;
  } catch {
    // a browser that starts no Worker from a Worker
    isAlone = true;
    return null;
  }
}

function goOnAlone(): void {
  isAlone = true;
  worker?.terminate();
  worker = null;
}
