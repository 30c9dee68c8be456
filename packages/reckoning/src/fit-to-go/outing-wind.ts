import type { Book, Outing } from '#boat-book';
import { localAt } from '#units';
import { dayInWords } from '../when-in-words.ts';
import { outingWeather } from './outing-weather.ts';

/** The most wind that is expected of an outing, and who says so. */
export interface OutingWind {
  readonly kn: number;
  /** `Gusts of 20 knots are expected, as written down for it.` */
  readonly words: string;
  /** the day that is from; null: an outing does not say when it was written */
  readonly from: string | null;
}

/**
 * The strongest of what is written down for an outing (its gusts, or else the most it blows) and of what the weather in the
 * book says of its days. null: neither says anything.
 */
export function outingWind(book: Book, outing: Outing, zone: string): OutingWind | null {
  const { wind_kn, gust_kn = null } = outing;
  const written: OutingWind | null =
    gust_kn !== null
      ? { kn: gust_kn, words: `Gusts of ${gust_kn} knots are expected, as written down for it.`, from: null }
      : wind_kn !== null
        ? { kn: wind_kn, words: `${wind_kn} knots are expected at most, as written down for it.`, from: null }
        : null;
  const weather = outingWeather(book, outing);
  const strongest = weather?.hours.reduce((most, hour) => (hour.entry.wind_kn > most.entry.wind_kn ? hour : most));
  if (weather === null || strongest === undefined || strongest.entry.wind_kn <= (written?.kn ?? -1)) return written;
  const { day, hour, entry } = strongest;
  return {
    kn: entry.wind_kn,
    words: `${entry.wind_kn} knots ${dayInWords(day)} at ${String(hour).padStart(2, '0')}:00, by the weather in the book for ${book.places[weather.place]!.name}.`,
    from: localAt(Date.parse(entry.entered), zone).day,
  };
}
