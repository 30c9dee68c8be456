/**
 * The plan the keeper has seen last, of each book on this device: what moved is told from there until it is seen. It is
 * a thing of this device, not of the boat book; what is kept is the id of a kept plan.
 */
import { useSyncExternalStore } from 'react';
import type { Book, Id, KeptPlan } from '#boat-book';
import { planInForce } from '#reckoning';

const place = (book: Id) => `fettle-plan-seen-${book}`;
const listeners = new Set<() => void>();
/** the round of planning in which the first plan of a book was taken as seen: a better one of that round still is */
let firstRound: number | null = null;

function seenId(book: Id): Id | null {
  return localStorage.getItem(place(book));
}

function keepSeen(book: Id, plan: Id): void {
  if (seenId(book) === plan) return;
  localStorage.setItem(place(book), plan);
  for (const listener of listeners) listener();
}

const lastIn = (book: Book): Id | null => {
  const last = planInForce(book);
  return Object.entries(book.plans).find(([, plan]) => plan === last)?.[0] ?? null;
};

/** A book that comes with a plan: that is the one seen. */
export function rememberSeen(book: Book): void {
  const last = lastIn(book);
  if (seenId(book.id) === null && last !== null) keepSeen(book.id, last);
}

/** The first plan made of a book has moved nothing, nor has a better one that its own search comes upon. */
export function rememberFirst(book: Id, plan: Id, round: number): void {
  if (seenId(book) !== null && firstRound !== round) return;
  firstRound = round;
  keepSeen(book, plan);
}

/** The keeper has seen what moved. */
export function sayPlanSeen(book: Book): void {
  const last = lastIn(book);
  firstRound = null;
  if (last !== null) keepSeen(book.id, last);
}

/** The plan seen last; where it is no longer kept, the oldest that is; null: none was. */
export function useSeenPlan(book: Book): KeptPlan | null {
  const id = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => seenId(book.id),
  );
  if (id === null) return null;
  return book.plans[id] ?? Object.values(book.plans)[0] ?? null;
}
