import type { Book, Id, WeatherEntry } from '#boat-book';
import { addDays, daysBetween, instantAt, localAt } from '#units';
import type { PlanHour } from '#workplan';
import { cautiousClimate } from './cautious-climate.ts';
import type { DatedJobDay } from './job-days-ahead.ts';
import { weatherInForce } from './weather/weather-in-force.ts';

const msInHour = 3_600_000;

/**
 * Where the boat lies at an instant: where the last job day begun by then was, or before the first one, where that
 * one will be. An hour in which a job day begins is already at its place.
 *
 * @param days  all job days, in order; at least one
 */
export function placeAt(days: readonly DatedJobDay[], atMs: number): DatedJobDay {
  let lies = days[0]!;
  for (const day of days) {
    if (day.from >= atMs + msInHour) break;
    lies = day;
  }
  return lies;
}

/**
 * The weather of each hour from an instant on, where the boat then lies: what was entered last for that place, day
 * and clock hour, else the forecast, else the cautious climate value.
 *
 * In a zone whose clock is not whole hours from UTC, an hour of the plan takes the clock hour its middle falls in.
 *
 * @param fromMs  epoch ms, on a whole hour UTC
 * @param count   hours wanted
 */
export function planHours(book: Book, days: readonly DatedJobDay[], fromMs: number, count: number): PlanHour[] {
  const entered = enteredHours(book);
  const hours: PlanHour[] = [];
  let zone = '';
  let dayStart = 0;
  let dayEnd = 0;
  let day = '';
  let plainDay = false;
  for (let index = 0; index < count; index++) {
    const atMs = fromMs + index * msInHour;
    const middle = atMs + msInHour / 2;
    const lies = placeAt(days, atMs);
    const place = lies.place;
    if (place.timeZone !== zone || middle < dayStart || middle >= dayEnd) {
      zone = place.timeZone;
      day = localAt(middle, zone).day;
      dayStart = instantAt(day, '00:00', zone);
      dayEnd = instantAt(addDays(day, 1), '00:00', zone);
      plainDay = dayEnd - dayStart === 24 * msInHour;
    }
    // a day on which the clock changes is read hour by hour
    const hour = plainDay
      ? Math.floor((middle - dayStart) / msInHour)
      : Math.floor(localAt(middle, zone).minuteOfDay / 60);
    const entry = entered.get(hourKey(lies.placeId, day, hour));
    hours.push(
      entry
        ? {
            rain: entry.rain,
            ...(entry.rainOdds_pct === null ? {} : { rainOdds_pct: entry.rainOdds_pct }),
            wind_kn: entry.wind_kn,
            air_C: entry.air_C,
            surface_C: entry.surface_C,
            humidity_pct: entry.humidity_pct,
            basis: entry.basis,
            sheltered: place.sheltered,
          }
        : {
            ...cautiousClimate(place.latitude_deg, daysBetween(`${day.slice(0, 4)}-01-01`, day) + 1, hour),
            sheltered: place.sheltered,
          },
    );
  }
  return hours;
}

const hourKey = (place: Id, day: string, hour: number) => `${place} ${day} ${hour}`;

/** The entry in force for each place, day and clock hour. */
function enteredHours(book: Book): Map<string, WeatherEntry> {
  const hours = new Map<string, WeatherEntry>();
  for (const entry of weatherInForce(book))
    for (let hour = entry.fromHour; hour < entry.toHour; hour++)
      hours.set(hourKey(entry.place, entry.date, hour), entry);
  return hours;
}
