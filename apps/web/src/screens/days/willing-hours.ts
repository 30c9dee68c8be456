/** Between which hours the keeper is willing to work: a choice of this device; our assumption until it is made. */
import { useSyncExternalStore } from 'react';
import { assumedWilling, type WillingHours } from '#reckoning';
import { isClock } from '#units';

const key = 'fettle-willing-hours';
const listeners = new Set<() => void>();

/** @param hours  `to` after `from` */
export function chooseWillingHours(hours: WillingHours): void {
  localStorage.setItem(key, `${hours.from} ${hours.to}`);
  for (const listener of listeners) listener();
}

export function useWillingHours(): { readonly hours: WillingHours; readonly assumed: boolean } {
  const kept = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => localStorage.getItem(key),
  );
  const [from, to] = kept?.split(' ') ?? [];
  return isClock(from) && isClock(to) && from < to
    ? { hours: { from, to }, assumed: false }
    : { hours: assumedWilling, assumed: true };
}
