/** The clock of this device, read at the boat's place. The only place where screens ask what time it is. */
import type { Book } from '#boat-book';
import { localAt } from '#units';

/** The zone of the boat's first place; before there is one, the device's own. */
export function zoneOf(book: Book): string {
  return Object.values(book.places)[0]?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
}

export function todayAt(book: Book): string {
  return localAt(Date.now(), zoneOf(book)).day;
}
