/** The clock of this device, read at the boat's place. The only place where screens ask what time it is. */
import { type Book, zoneOfBook } from '#boat-book';
import { localAt } from '#units';

export function zoneOf(book: Book): string {
  // to ask the device is slow, and seldom needed
  return zoneOfBook(book, () => Intl.DateTimeFormat().resolvedOptions().timeZone);
}

export function todayAt(book: Book): string {
  return localAt(Date.now(), zoneOf(book)).day;
}
