/** Whether the page is being laid out for paper, which is not as wide as the screen and has no tabs to turn. */
import { useSyncExternalStore } from 'react';
import { flushSync } from 'react-dom';

/** What a drawing may take of a page in width, A4 or Letter, inside the margins of look/print.css. [CSS px] */
export const paperWidth_px = 680;

// one for all of the page: what is first drawn as it is laid out for paper is drawn for paper
let onPaper = false;
const listeners = new Set<() => void>();

function turn(to: boolean): void {
  onPaper = to;
  // the page is laid out right after the event: it is to be drawn by then
  flushSync(() => {
    for (const listener of listeners) listener();
  });
}
// a test without a page is not printed
globalThis.addEventListener?.('beforeprint', () => turn(true));
globalThis.addEventListener?.('afterprint', () => turn(false));

export function useOnPaper(): boolean {
  return useSyncExternalStore(subscribe, () => onPaper);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
