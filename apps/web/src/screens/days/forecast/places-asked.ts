/** The places a forecast is asked for, and what of each leaves the device. */
import type { Book, Id } from '#boat-book';
import { type RoundedPlace, roundedPlace, roundedWithin_km } from '#forecast';
import { liesAt } from '#reckoning';
import { addDays, localAt } from '#units';

/** As far ahead as job days are looked at for their places. [days] */
const ahead_days = 8;
/** More places in one week are no trailer boat's. */
const mostPlaces = 4;

export interface PlaceAsked {
  readonly id: Id;
  readonly name: string;
  readonly asked: RoundedPlace;
  /** how far the true place can be from the one told. [km] */
  readonly within_km: number;
}

/** Where she lies, and where the job days of the next days are. */
export function placesAsked(book: Book, now: number): PlaceAsked[] {
  const lies = liesAt(book, now);
  const ids = new Set<Id>(lies === null ? [] : [lies]);
  for (const { place, date } of Object.values(book.jobDays)) {
    const record = book.places[place];
    if (record === undefined) continue;
    const { day: today } = localAt(now, record.timeZone);
    if (date >= today && date <= addDays(today, ahead_days)) ids.add(place);
  }
  return [...ids].slice(0, mostPlaces).map((id) => {
    const { name, latitude_deg, longitude_deg } = book.places[id]!;
    const asked = roundedPlace(latitude_deg, longitude_deg);
    return { id, name, asked, within_km: roundedWithin_km(asked) };
  });
}

/** `41.3° S, 174.8° E` */
export function roundedInWords({ latitude_deg, longitude_deg }: RoundedPlace): string {
  const side = (degrees: number, over: string, under: string) =>
    `${Math.abs(degrees).toFixed(1)}° ${degrees < 0 ? under : over}`;
  return `${side(latitude_deg, 'N', 'S')}, ${side(longitude_deg, 'E', 'W')}`;
}
