import { useSyncExternalStore } from 'react';
import { type BookSnapshot, bookClient } from './book-client.ts';

/** The open book and how it stands, kept up to date. */
export function useBook(): BookSnapshot {
  return useSyncExternalStore(bookClient.subscribe, bookClient.snapshot);
}
