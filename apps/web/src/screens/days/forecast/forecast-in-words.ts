/** A forecast in sentences: whose, of when, how old, and what it says of some hours. */
import type { ForecastRecord, WeatherEntry } from '#boat-book';
import { localAt } from '#units';
import { countInWords, dayInWords } from '../../../parts/in-words.ts';

const hour_ms = 3_600_000;

/** `40 minutes old`, `5 hours old`, `3 days old`; a device's clock may be behind: then it is `just taken`. */
export function ageInWords(taken: string, now: number): string {
  const age = now - Date.parse(taken);
  if (age < 60_000) return 'just taken';
  if (age < hour_ms) return `${countInWords(Math.floor(age / 60_000), 'minute')} old`;
  if (age < 48 * hour_ms) return `${countInWords(Math.floor(age / hour_ms), 'hour')} old`;
  return `${countInWords(Math.floor(age / (24 * hour_ms)), 'day')} old`;
}

/** `of Thursday 26 November 06:40, 2 hours old` */
export function takenInWords({ taken }: ForecastRecord, zone: string, now: number): string {
  const { day, clock } = localAt(Date.parse(taken), zone);
  return `of ${dayInWords(day, localAt(now, zone).day)} ${clock}, ${ageInWords(taken, now)}`;
}

/** `to Friday 4 December, 14:00` */
export function untilInWords({ from, air_C }: ForecastRecord, zone: string, now: number): string {
  const { day, clock } = localAt(Date.parse(from) + air_C.length * hour_ms, zone);
  return `to ${dayInWords(day, localAt(now, zone).day)}, ${clock}`;
}

/** `dry, 5 % chance of rain, wind 4 to 9 kn, 11 to 15 °C, 60 to 72 % humid`; null: no hour of them is told. */
export function hoursInWords(hours: readonly WeatherEntry[]): string | null {
  if (hours.length === 0) return null;
  const wet = hours.filter(({ rain }) => rain).length;
  const odds = hours.map(({ rainOdds_pct }) => rainOdds_pct).filter((each) => each !== null);
  return [
    wet === 0 ? 'dry' : wet === hours.length ? 'rain' : `rain in ${wet} of ${hours.length} hours`,
    ...(odds.length === 0 ? [] : [`${range(odds)} % chance of rain in an hour`]),
    `wind ${range(hours.map(({ wind_kn }) => wind_kn))} kn`,
    `${range(hours.map(({ air_C }) => air_C))} °C`,
    `${range(hours.map(({ humidity_pct }) => humidity_pct))} % humid`,
  ].join(', ');
}

function range(figures: readonly number[]): string {
  const [low, high] = [Math.round(Math.min(...figures)), Math.round(Math.max(...figures))];
  return low === high ? `${low}` : `${low} to ${high}`;
}
