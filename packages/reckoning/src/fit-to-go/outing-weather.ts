import type { Book, Id, Outing, WeatherEntry } from '#boat-book';
import { addDays, type Day } from '#units';
import { inOrderKnown } from '../in-order-known.ts';

/** What the book holds of the weather of an outing’s days, at one of the boat’s places. */
export interface OutingWeather {
  readonly place: Id;
  /** the entry in force for each hour that is known, in order of time */
  readonly hours: readonly { readonly day: string; readonly hour: number; readonly entry: WeatherEntry }[];
  /** hours of its days, from when it begins to the midnight after it, that nothing is known of */
  readonly unknown: number;
  /** when the oldest of it was entered, an instant */
  readonly oldest: string;
}

/**
 * The weather of an outing by the hour: of the place its words name, else of the one with most hours known. null: none is.
 * An entry known later counts instead of one known before for the same hour.
 */
export function outingWeather(book: Book, outing: Outing): OutingWeather | null {
  const days = Array.from({ length: outing.nights + 1 }, (_, n) => addDays(outing.date as Day, n) as string);
  const first = Number(outing.from.slice(0, 2));
  const asked = days.flatMap((day, n) =>
    Array.from({ length: n === 0 ? 24 - first : 24 }, (_, at) => ({ day, hour: n === 0 ? first + at : at })),
  );
  const inForce = new Map<string, WeatherEntry>();
  for (const entry of inOrderKnown(Object.values(book.weather)))
    if (days.includes(entry.date))
      for (let hour = entry.fromHour; hour < entry.toHour; hour++)
        inForce.set(`${entry.place} ${entry.date} ${hour}`, entry);
  const of = Object.keys(book.places).map((place) => ({
    place,
    hours: asked.flatMap(({ day, hour }) => {
      const entry = inForce.get(`${place} ${day} ${hour}`);
      return entry === undefined ? [] : [{ day, hour, entry }];
    }),
  }));
  const named = of.filter(({ place, hours }) => hours.length > 0 && isNamed(book.places[place]!.name, outing));
  const [most] = [...(named.length > 0 ? named : of)].sort((a, b) => b.hours.length - a.hours.length);
  if (most === undefined || most.hours.length === 0) return null;
  const [oldest] = most.hours.map(({ entry }) => entry.entered).sort();
  return { ...most, unknown: asked.length - most.hours.length, oldest: oldest! };
}

const isNamed = (name: string, { place, title }: Outing) =>
  `${place} ${title}`.toLocaleLowerCase('en').includes(name.toLocaleLowerCase('en'));
