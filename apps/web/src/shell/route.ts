/** Where the keeper is: the part of the address after '#'. `#/work/job/7` is the place `work` with `['job', '7']`. */
import { useMemo, useSyncExternalStore } from 'react';

export const places = ['work', 'days', 'boat', 'stores', 'go'] as const;
export type PlaceName = (typeof places)[number];

export interface Route {
  readonly place: PlaceName;
  readonly rest: readonly string[];
}

/** What each place is told: where it is shown; one that is being left is shown at its own address still. */
export interface ScreenProps {
  readonly at: Route;
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
  if (hash === location.hash) return;
  if (instead) history.replaceState(null, '', hash);
  else history.pushState(null, '', hash);
  went(true);
}

/** The route of the address, followed as it changes. */
export function useRoute(): Route {
  const hash = useSyncExternalStore(subscribe, () => location.hash);
  return useMemo(() => routeOf(hash), [hash]);
}

let gone = false;
let tapped = false;
const listeners = new Set<() => void>();

function went(byTap: boolean): void {
  gone = true;
  tapped = byTap;
  for (const listener of listeners) listener();
}

/**
 * A tap on a link to another page of the app is answered in its own event: left to the browser, the address changes a turn
 * later, often after another picture of the page that is being left.
 */
function follow(event: MouseEvent): void {
  const { target, button, metaKey, ctrlKey, shiftKey, altKey } = event;
  if (event.defaultPrevented || button !== 0 || metaKey || ctrlKey || shiftKey || altKey) return;
  const link = target instanceof Element ? target.closest<HTMLAnchorElement>('a[href^="#/"]') : null;
  if (link === null || link.target !== '' || link.hash === location.hash) return;
  event.preventDefault();
  history.pushState(null, '', link.hash);
  went(true);
}

// a test without a page goes nowhere
globalThis.addEventListener?.('hashchange', () => went(false));
globalThis.addEventListener?.('click', follow);

/** True where a tap led here; not the browser's own way back, nor an address typed in. */
export function cameByTap(): boolean {
  return tapped;
}

/** True once one has gone from the page one arrived on to another. */
export function hasGone(): boolean {
  return gone;
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
