/** What weather the book has for a place and day, hour by hour; a later entry for an hour is used instead of one before. */
import type { Book, JobDay, OperationFields, WeatherEntry } from '#boat-book';
import { weatherInForce } from '#reckoning';
import { dayInWords } from '../../parts/in-words.ts';

export type WeatherEntries = OperationFields<'enterWeather'>['entries'];

export interface KnownHour {
  readonly rain: boolean;
  /** null: not given */
  readonly rainOdds_pct: number | null;
  readonly wind_kn: number;
  readonly air_C: number;
  readonly humidity_pct: number;
}

/** The 24 hours of a day at a place as they count: entered by hand, else by the forecast; null where nothing is known. */
export function knownHours(book: Book, place: string, date: string): (KnownHour | null)[] {
  return hoursFrom(weatherInForce(book), place, date);
}

/** The 24 hours of a day at a place as they were entered by hand; null where nothing was. */
export function enteredHours(book: Book, place: string, date: string): (KnownHour | null)[] {
  return hoursFrom(inOrder(book), place, date);
}

function hoursFrom(entries: readonly WeatherEntry[], place: string, date: string): (KnownHour | null)[] {
  const hours: (KnownHour | null)[] = Array.from({ length: 24 }, () => null);
  for (const entry of entries)
    if (entry.place === place && entry.date === date)
      for (let h = entry.fromHour; h < entry.toHour; h++)
        hours[h] = {
          rain: entry.rain,
          rainOdds_pct: entry.rainOdds_pct,
          wind_kn: entry.wind_kn,
          air_C: entry.air_C,
          humidity_pct: entry.humidity_pct,
        };
  return hours;
}

function inOrder(book: Book): WeatherEntry[] {
  return Object.entries(book.weather)
    .sort(([idA, a], [idB, b]) => (a.order ?? 0) - (b.order ?? 0) || (idA < idB ? -1 : 1))
    .map(([, entry]) => entry);
}

/** `The weather is known to Friday 8 May, 20:00.`, or that none is. */
export function weatherKnownInDays(book: Book, place: string, today: string): string {
  const last = weatherInForce(book)
    .filter((entry) => entry.place === place && entry.date >= today)
    .map((entry) => `${entry.date} ${String(entry.toHour).padStart(2, '0')}`)
    .sort()
    .at(-1);
  if (last === undefined) return 'No weather is known for the days ahead.';
  const [date = today, hour] = last.split(' ');
  return `The weather is known to ${dayInWords(date, today)}${hour === '24' ? '' : ` ${hour}:00`}.`;
}

/** The first and the last whole hour that a job day touches: [from, to). */
export function hoursOfDay(day: Pick<JobDay, 'from' | 'to'>): { readonly from: number; readonly to: number } {
  return {
    from: Number(day.from.slice(0, 2)),
    to: Math.ceil(Number(day.to.slice(0, 2)) + Number(day.to.slice(3)) / 60),
  };
}

/** `weather entered`, `weather by forecast`, or how many of its hours have none and are planned with the cautious figure. */
export function weatherKnownInWords(book: Book, day: JobDay): string {
  const { from, to } = hoursOfDay(day);
  const hours = knownHours(book, day.place, day.date).slice(from, to);
  const missing = hours.filter((hour) => hour === null).length;
  if (missing === hours.length) return 'weather not entered: planned as wet, with cautious figures';
  const typed = enteredHours(book, day.place, day.date).slice(from, to);
  const entered = typed.filter((hour) => hour !== null).length;
  const forecast = hours.length - missing - entered;
  const known =
    forecast === 0
      ? 'weather entered'
      : entered === 0
        ? 'weather by forecast'
        : `weather entered for ${entered} of its ${hours.length} hours and by forecast for ${forecast}`;
  if (missing === 0) return known;
  return forecast === 0
    ? `weather not entered for ${missing} of its ${hours.length} hours: those are planned as wet`
    : `${known}; ${missing} of its ${hours.length} hours are not known and planned as wet`;
}

export function sameWeather(a: KnownHour, b: KnownHour): boolean {
  return (
    a.rain === b.rain &&
    a.rainOdds_pct === b.rainOdds_pct &&
    a.wind_kn === b.wind_kn &&
    a.air_C === b.air_C &&
    a.humidity_pct === b.humidity_pct
  );
}
