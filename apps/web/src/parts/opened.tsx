/**
 * The sheet that a page has open. It is held beside the page, not in its state: a tap that opens it draws the sheet alone,
 * and the long page behind it is not gone through again before the finger has its answer.
 */
import { type ReactNode, useState, useSyncExternalStore } from 'react';

export interface Opened<T> {
  open(what: T): void;
  close(): void;
  now(): T | null;
  subscribe(listener: () => void): () => void;
}

/** What a page holds for its sheets; the same from one drawing to the next. */
export function useOpened<T>(): Opened<T> {
  return useState(nothingOpened<T>)[0];
}

function nothingOpened<T>(): Opened<T> {
  let now: T | null = null;
  const listeners = new Set<() => void>();
  const set = (next: T | null) => {
    now = next;
    for (const listener of listeners) listener();
  };
  return {
    open: set,
    close: () => set(null),
    now: () => now,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Where the sheet of a page stands. */
export function OpenedSheet<T>({
  of,
  children,
}: {
  readonly of: Opened<T>;
  readonly children: (open: T) => ReactNode;
}) {
  const open = useSyncExternalStore(of.subscribe, of.now);
  return open === null ? null : children(open);
}
