/** Where and when a boat's power is asked for: the place of the sun and the clocks, and when someone is aboard. */
import type { Book, Outing } from '#boat-book';
import type { PowerPlace } from '#power';
import { addDays, instantAt, type Span } from '#units';
import { liesAt } from './window-hours.ts';

/** The place of an outing where the book knows it by name, else where the boat lies; null: the book has no place. */
export function powerPlace(book: Book, now: number, outing: Outing | null): PowerPlace | null {
  const named =
    outing === null
      ? undefined
      : Object.values(book.places).find(({ name }) => name.toLowerCase() === outing.place.trim().toLowerCase());
  const lies = liesAt(book, now);
  const place = named ?? (lies === null ? undefined : book.places[lies]);
  return place === undefined
    ? null
    : { latitude_deg: place.latitude_deg, longitude_deg: place.longitude_deg, zone: place.timeZone };
}

/** When someone is aboard: from an outing's start to noon after its last night. In order. */
export function aboardSpans(book: Book, zone: string): Span[] {
  return Object.values(book.outings)
    .filter(({ nights }) => nights > 0)
    .map(({ date, from, nights }) => ({
      start: instantAt(date, from, zone),
      end: instantAt(addDays(date, nights), '12:00', zone),
    }))
    .sort((a, b) => a.start - b.start);
}

/** The next outing with a night aboard that is not over, or null. */
export function nextNightsAboard(book: Book, now: number, zone: string): Outing | null {
  const ahead = Object.values(book.outings)
    .filter(({ date, nights }) => nights > 0 && instantAt(addDays(date, nights), '12:00', zone) > now)
    .sort((a, b) => a.date.localeCompare(b.date));
  return ahead[0] ?? null;
}
