import type { Book } from './records.ts';

/**
 * The zone a boat lives in, by which it is today or tomorrow there: that of her first place; before there is one, the device's.
 * Screens and operations ask here, so that no day is today to one and tomorrow to the other.
 *
 * @param device  tells the device's own, an IANA zone; asked only where there is no place
 */
export const zoneOfBook = ({ places }: Pick<Book, 'places'>, device: () => string): string =>
  Object.values(places)[0]?.timeZone ?? device();
