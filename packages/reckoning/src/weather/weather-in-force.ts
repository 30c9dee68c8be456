import type { Book, ForecastRecord, Id, WeatherEntry } from '#boat-book';
import { roundedPlace } from '#forecast';
import { localAt } from '#units';
import { inOrderKnown } from '../in-order-known.ts';

const hour_ms = 3_600_000;

/** At what chance an hour is counted on as wet: as likely as not. Our judgement. [%] */
const assumedWetFrom_pct = 50;
/** What falls in an hour and wets a surface: the least that the service counts as rain. [mm] */
const wetFrom_mm = 0.1;

/**
 * All weather the book has, hour by hour or in stretches, in order of force: of two for the same place, day and hour
 * the later counts. First what forecasts say, then what was entered by hand, each in the order it was known.
 */
export function weatherInForce(book: Book): WeatherEntry[] {
  return [
    ...inOrderKnown(Object.values(book.forecasts)).flatMap((forecast) => hoursOfForecast(book, forecast)),
    ...inOrderKnown(Object.values(book.weather)),
  ];
}

/** The last forecast known of a place; null: none, or the place was moved since it was asked for. */
export function forecastOf(book: Book, place: Id): ForecastRecord | null {
  const forecasts = inOrderKnown(Object.values(book.forecasts));
  return forecasts.findLast((each) => each.place === place && isOf(book, each)) ?? null;
}

/** What the last forecast known says of a day at a place, by the clock hour; empty where it says nothing. */
export function forecastHours(book: Book, place: Id, date: string): readonly WeatherEntry[] {
  const forecast = forecastOf(book, place);
  return forecast === null ? [] : hoursOfForecast(book, forecast).filter((hour) => hour.date === date);
}

/** True while the place of a forecast lies where it was asked for. */
function isOf(book: Book, { place: id, askedLatitude_deg, askedLongitude_deg }: ForecastRecord): boolean {
  const place = book.places[id];
  if (place === undefined) return false;
  const { latitude_deg, longitude_deg } = roundedPlace(place.latitude_deg, place.longitude_deg);
  return latitude_deg === askedLatitude_deg && longitude_deg === askedLongitude_deg;
}

const expanded = new WeakMap<ForecastRecord, { readonly zone: string; readonly hours: readonly WeatherEntry[] }>();

/** A forecast as weather of clock hours at its place. It never changes, so its hours are worked out once a zone. */
function hoursOfForecast(book: Book, forecast: ForecastRecord): readonly WeatherEntry[] {
  if (!isOf(book, forecast)) return [];
  const zone = book.places[forecast.place]!.timeZone;
  const known = expanded.get(forecast);
  if (known?.zone === zone) return known.hours;
  const hours = clockHours(forecast, zone);
  expanded.set(forecast, { zone, hours });
  return hours;
}

/**
 * In a zone whose clock is not whole hours from UTC, an hour falls in the clock hour of its middle. A clock hour that is
 * there twice, when the clocks go back, has the worse of its two hours.
 */
function clockHours(forecast: ForecastRecord, zone: string): WeatherEntry[] {
  const from = Date.parse(forecast.from);
  const hours = new Map<string, WeatherEntry>();
  for (const [index, air_C] of forecast.air_C.entries()) {
    const { day, minuteOfDay } = localAt(from + (index + 0.5) * hour_ms, zone);
    const fromHour = Math.floor(minuteOfDay / 60);
    const odds = forecast.rainOdds_pct[index] ?? null;
    const entry: WeatherEntry = {
      place: forecast.place,
      date: day,
      fromHour,
      toHour: fromHour + 1,
      rain: forecast.rain_mm[index]! >= wetFrom_mm || (odds !== null && odds >= assumedWetFrom_pct),
      rainOdds_pct: odds,
      wind_kn: forecast.wind_kn[index]!,
      air_C,
      surface_C: null,
      humidity_pct: forecast.humidity_pct[index]!,
      basis: 'forecast',
      entered: forecast.taken,
    };
    const key = `${day} ${fromHour}`;
    const twice = hours.get(key);
    hours.set(key, twice === undefined ? entry : worse(twice, entry));
  }
  return [...hours.values()];
}

function worse(a: WeatherEntry, b: WeatherEntry): WeatherEntry {
  const odds = [a.rainOdds_pct, b.rainOdds_pct].filter((each) => each !== null);
  return {
    ...a,
    rain: a.rain || b.rain,
    rainOdds_pct: odds.length === 0 ? null : Math.max(...odds),
    wind_kn: Math.max(a.wind_kn, b.wind_kn),
    air_C: Math.min(a.air_C, b.air_C),
    humidity_pct: Math.max(a.humidity_pct, b.humidity_pct),
  };
}
