/**
 * The reply of the forecast service, read with mistrust: what is not exactly what was asked for is refused whole and in
 * plain words. Half a forecast is worse than the last good one.
 *
 * Source of the form: Open-Meteo, Weather Forecast API (open-meteo.com/en/docs), looked up 2026-11-26: one list of times
 * and one of figures for each that was asked for, the units beside them in `hourly_units`; temperature, humidity and
 * wind are of the instant, precipitation is the sum and its probability the chance of more than 0.1 mm **of the hour
 * before**; an error is `{"error": true, "reason": "…"}`.
 */
import { askedUnits, type RoundedPlace } from './forecast-address.ts';
import type { ForecastHours } from './forecast-hours.ts';

/** A reply is 10 to 20 kB; past this nothing of it is read. [bytes] */
export const replyLimit_bytes = 500_000;

export type ReadForecast =
  | { readonly kind: 'forecast'; readonly hours: ForecastHours }
  | { readonly kind: 'refused'; readonly why: string };

const ms = 1000;
const hour_ms = 3_600_000;
/** The service gives at most 92 days gone by and 16 ahead; far fewer are asked for. [hours] */
const most_hours = 24 * 20;
/** Fewer hours ahead are no forecast to lay a day's work by. Our judgement. [hours] */
const assumedLeast_hours = 24;
/** The service answers for a cell of its grid near the place, mostly within a quarter of a degree. Our judgement. [°] */
const assumedFarthest_deg = 1;

/** What can be true near the ground where boats are kept; the ranges of the book's own weather. */
const ranges = {
  temperature_2m: { least: -60, most: 60, unit: '°C', name: 'the air' },
  relative_humidity_2m: { least: 1, most: 100, unit: '%', name: 'the humidity' },
  precipitation: { least: 0, most: 300, unit: 'mm in an hour', name: 'the rain' },
  precipitation_probability: { least: 0, most: 100, unit: '%', name: 'the chance of rain' },
  wind_speed_10m: { least: 0, most: 120, unit: 'kn', name: 'the wind' },
} as const;
type Column = keyof typeof ranges;

class Refused extends Error {}

function refuse(why: string): never {
  throw new Refused(why);
}

/**
 * The hours of a reply, from its first on.
 *
 * @param text   the reply as it came
 * @param asked  the place that was asked for
 * @param now    epoch ms, by the clock of this device
 */
export function readForecast(
  text: string,
  { asked, now }: { readonly asked: RoundedPlace; readonly now: number },
): ReadForecast {
  try {
    return { kind: 'forecast', hours: hoursOf(replyOf(text), asked, now) };
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', why: error.message };
    throw error;
  }
}

type Reply = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Reply {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function replyOf(text: string): Reply {
  if (text.length > replyLimit_bytes) refuse(`the reply is longer than ${replyLimit_bytes / 1000} kB`);
  if (text.trim() === '') refuse('the reply is empty');
  let reply: unknown;
  try {
    reply = JSON.parse(text);
  } catch {
    refuse(
      text.trimStart().startsWith('{')
        ? `the reply breaks off or is damaged, after ${text.length} characters`
        : 'the reply is no forecast but something else: a sign-in page of the network, or another server',
    );
  }
  if (!isObject(reply)) refuse('the reply is no forecast');
  if (reply.error === true)
    refuse(`the service says: ${typeof reply.reason === 'string' ? reply.reason.slice(0, 200) : 'an error'}`);
  return reply;
}

function hoursOf(reply: Reply, asked: RoundedPlace, now: number): ForecastHours {
  checkPlace(reply, asked);
  if (reply.utc_offset_seconds !== 0)
    refuse(`its times should be UTC, and are ${String(reply.utc_offset_seconds)} seconds off it`);
  const { hourly, hourly_units: units } = reply;
  if (!isObject(hourly)) refuse('it has no hours');
  if (!isObject(units)) refuse('it does not say its units');
  for (const [name, unit] of Object.entries(askedUnits))
    if (units[name] !== unit)
      refuse(
        `${name === 'time' ? 'the time' : ranges[name as Column].name} should come in ${unit} and comes in ${units[name] === undefined ? 'no unit' : String(units[name]).slice(0, 40)}`,
      );
  const times = timesOf(hourly.time);
  const columns = Object.fromEntries(
    Object.keys(ranges).map((name) => [name, columnOf(name as Column, hourly[name], times)]),
  ) as Record<Column, readonly (number | null)[]>;
  const last = lastWhole(columns, times);
  checkNow(times[0]!, times[last]!, now);
  return byHour(columns, times[0]!, last);
}

function checkPlace({ latitude, longitude }: Reply, asked: RoundedPlace): void {
  if (typeof latitude !== 'number' || typeof longitude !== 'number') refuse('it does not say for which place it is');
  const off = Math.abs(((longitude - asked.longitude_deg + 540) % 360) - 180);
  if (
    !(Math.abs(latitude - asked.latitude_deg) <= assumedFarthest_deg) ||
    !(off * Math.cos((asked.latitude_deg * Math.PI) / 180) <= assumedFarthest_deg)
  )
    refuse(`it is for ${latitude}, ${longitude}, and ${asked.latitude_deg}, ${asked.longitude_deg} was asked for`);
}

/** `26 November 14:00 UTC` */
function told(time: number): string {
  const at = new Date(time);
  const month = at.toLocaleString('en-GB', { month: 'long', timeZone: 'UTC' });
  return `${at.getUTCDate()} ${month} ${at.toISOString().slice(11, 16)} UTC`;
}

/** The instants of the reply: every hour once, in order. [epoch ms] */
function timesOf(list: unknown): number[] {
  if (!Array.isArray(list) || list.length < 2) refuse('it has no hours');
  if (list.length > most_hours) refuse(`it has ${list.length} hours; at most ${most_hours} are read`);
  const times: number[] = [];
  for (const seconds of list as readonly unknown[]) {
    const inRange = typeof seconds === 'number' && Number.isInteger(seconds) && seconds > 0 && seconds < 8e9;
    if (!inRange || (seconds * ms) % hour_ms !== 0)
      refuse(`a time of it is ${JSON.stringify(seconds) ?? 'missing'}, which is no whole hour`);
    const time = seconds * ms;
    const before = times.at(-1);
    if (before !== undefined && time === before) refuse(`it has the hour ${told(time)} twice`);
    if (before !== undefined && time < before) refuse(`its hours are out of order at ${told(time)}`);
    if (before !== undefined && time > before + hour_ms)
      refuse(`hours are missing in it between ${told(before)} and ${told(time)}`);
    times.push(time);
  }
  return times;
}

function columnOf(name: Column, list: unknown, times: readonly number[]): readonly (number | null)[] {
  const range = ranges[name];
  if (!Array.isArray(list)) refuse(`${range.name} is missing`);
  if (list.length !== times.length) refuse(`it has ${times.length} hours and ${list.length} figures for ${range.name}`);
  return (list as readonly unknown[]).map((value, at) => {
    if (value === null) return null;
    if (typeof value !== 'number') refuse(`${range.name} is no figure at ${told(times[at]!)}`);
    if (!(value >= range.least && value <= range.most))
      refuse(
        `${range.name} is ${value} ${range.unit} at ${told(times[at]!)}, and can be ${range.least} to ${range.most}`,
      );
    return value;
  });
}

/** The last instant with every figure. A forecast may end before its list does; within it nothing may be missing. */
function lastWhole(columns: Readonly<Record<Column, readonly (number | null)[]>>, times: readonly number[]): number {
  let end = times.length;
  for (const name of Object.keys(ranges) as Column[]) {
    // a chance that is not given is not given, and no hour is lost by it
    if (name === 'precipitation_probability') continue;
    const column = columns[name];
    let known = column.length;
    while (known > 0 && column[known - 1] === null) known--;
    const gap = column.slice(0, known).indexOf(null);
    // of the hour before the first nothing is asked
    if (gap > 0 || (gap === 0 && name !== 'precipitation'))
      refuse(`${ranges[name].name} is missing at ${told(times[gap]!)}`);
    end = Math.min(end, known);
  }
  if (end < 2) refuse('it has no figures');
  return end - 1;
}

function checkNow(first: number, last: number, now: number): void {
  if (first > now + hour_ms) refuse(`it begins at ${told(first)}, after now`);
  if (last < now + assumedLeast_hours * hour_ms)
    refuse(`it ends at ${told(last)}: less than ${assumedLeast_hours} hours ahead, or a clock is wrong`);
}

const tenth = (figure: number) => Math.round(figure * 10) / 10;

/** From figures at instants to figures of the hours between them. */
function byHour(
  columns: Readonly<Record<Column, readonly (number | null)[]>>,
  from: number,
  last: number,
): ForecastHours {
  const hours = Array.from({ length: last }, (_, at) => at);
  const figure = (name: Column, at: number) => columns[name][at]!;
  const mean = (name: Column) => (at: number) => (figure(name, at) + figure(name, at + 1)) / 2;
  return {
    from,
    rain_mm: hours.map((at) => tenth(figure('precipitation', at + 1))),
    rainOdds_pct: hours.map((at) => {
      const odds = columns.precipitation_probability[at + 1]!;
      return odds === null ? null : Math.round(odds);
    }),
    wind_kn: hours.map((at) => tenth(Math.max(figure('wind_speed_10m', at), figure('wind_speed_10m', at + 1)))),
    air_C: hours.map((at) => tenth(mean('temperature_2m')(at))),
    humidity_pct: hours.map((at) => Math.round(mean('relative_humidity_2m')(at))),
  };
}
