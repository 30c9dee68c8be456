/** Where the keeper is: the part of the address after '#'. `#/work/job/7` is the place `work` with `['job', '7']`. */
import { useSyncExternalStore } from 'react';

export const places = ['work', 'days', 'boat', 'stores', 'go'] as const;
export type PlaceName = (typeof places)[number];

export interface Route {
  readonly place: PlaceName;
  readonly rest: readonly string[];
}

/** The route an address stands for; what names no place is Work. */
export function routeOf(hash: string): Route {
  const [first = '', ...rest] = hash.replace(/^#\/?/, '').split('?')[0]!.split('/').map(decoded);
  const place = places.find((name) => name === first);
  return place ? { place, rest: rest.filter((part) => part !== '') } : { place: 'work', rest: [] };
}

/** The address of a route: `address('work', 'job', id)` is `#/work/job/…`. */
export function address(place: PlaceName, ...rest: readonly string[]): string {
  return `#/${[place, ...rest].map(encodeURIComponent).join('/')}`;
}

/** Goes to an address. With `instead`, the page left is not gone back to (a job that was just put in). */
export function goTo(hash: string, instead = false): void {
  if (instead) location.replace(hash);
  else location.hash = hash;
}

export function useRoute(): Route {
  const hash = useSyncExternalStore(subscribe, () => location.hash);
  return routeOf(hash);
}

let gone = false;
// before any screen hears of it; a test without a page goes nowhere
globalThis.addEventListener?.('hashchange', () => {
  gone = true;
});

/** True once one has gone from the page one arrived on to another. */
export function hasGone(): boolean {
  return gone;
}

function subscribe(listener: () => void): () => void {
  addEventListener('hashchange', listener);
  return () => removeEventListener('hashchange', listener);
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
