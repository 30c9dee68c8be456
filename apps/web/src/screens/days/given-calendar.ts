/**
 * What the calendar files that this device gave out had in them, of each book: so that what is taken out of the book
 * since is called off in the next. A thing of this device, as its calendar is.
 */
import type { Id } from '#boat-book';
import type { GivenEvent } from '#reckoning';

const place = (book: Id) => `fettle-calendar-given-${book}`;

/** What is kept of earlier files; nothing where it cannot be read: a calendar then keeps what it has. */
export function givenBefore(book: Id): readonly GivenEvent[] {
  const kept: unknown = JSON.parse(localStorage.getItem(place(book)) ?? '[]');
  return Array.isArray(kept) ? kept.filter(isGiven) : [];
}

export const keepGiven = (book: Id, given: readonly GivenEvent[]): void =>
  localStorage.setItem(place(book), JSON.stringify(given));

function isGiven(kept: unknown): kept is GivenEvent {
  if (typeof kept !== 'object' || kept === null) return false;
  const { uid, title, when, version } = kept as Partial<Record<keyof GivenEvent, unknown>>;
  const time = when as Partial<Record<string, unknown>> | null | undefined;
  const timed =
    time?.kind === 'span'
      ? typeof time.start === 'number' && typeof time.end === 'number'
      : time?.kind === 'days' && typeof time.first === 'string' && typeof time.last === 'string';
  return typeof uid === 'string' && typeof title === 'string' && typeof version === 'number' && timed;
}
