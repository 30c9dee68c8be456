import { useSyncExternalStore } from 'react';
import { type BookSnapshot, bookClient } from './book-client.ts';

/** The open book and how it stands, kept up to date. Every change is told three times over: asked for, made, saved. */
export function useBook(): BookSnapshot {
  return useSyncExternalStore(bookClient.subscribe, bookClient.snapshot);
}

/** One part of that: who asks for the book alone is not drawn anew as it goes from being saved to saved. */
export function useOfBook<Part extends 'book' | 'first' | 'readOnly'>(part: Part): BookSnapshot[Part] {
  return useSyncExternalStore(bookClient.subscribe, () => bookClient.snapshot()[part]);
}
