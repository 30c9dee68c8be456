import type { Instant, Span } from '#units';
import { lightSpans } from './sun-times.ts';
import { type Condition, unmetConditions } from './unmet-conditions.ts';
import type { Conditions, WeatherHour } from './weather-hour.ts';

/** The weather of a stretch of hours at one place. */
export interface WeatherSpan {
  /** the first hour's start, on a whole hour of UTC. [ms since 1970-01-01T00:00Z] */
  readonly start: Instant;
  readonly hours: readonly WeatherHour[];
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/** Spans that suit, or why there is none. */
export type SuitableSpans =
  | { readonly kind: 'spans'; readonly spans: readonly Span[] }
  | {
      readonly kind: 'no span';
      /** the longest stretch that does suit, in minutes; 0 when no minute does */
      readonly longest_min: number;
      /** how many hours each condition alone leaves out, most first */
      readonly because: readonly { readonly condition: Condition; readonly hours: number }[];
    };

/**
 * Spans of time in which the weather meets every condition, each at least so long.
 *
 * An hour counts for the whole of its sixty minutes; daylight starts and ends at sunrise and sunset within the hour.
 *
 * @param needs        a missing key asks nothing
 * @param weather      one entry an hour
 * @param shortest_min least length of a span. [min], ≥ 0
 */
export function suitableSpans(needs: Conditions, weather: WeatherSpan, shortest_min: number): SuitableSpans {
  if (!(shortest_min >= 0)) throw new RangeError(`the least length must be 0 minutes or more, got ${shortest_min}`);
  if (weather.start % hour_ms !== 0)
    throw new RangeError(`the weather must start on a whole hour of UTC, got ${new Date(weather.start).toISOString()}`);
  const whole = { start: weather.start, end: weather.start + weather.hours.length * hour_ms };
  const light = needs.daylight ? lightSpans(weather, 'sun', whole) : [whole];

  const left = new Map<Condition, number>();
  const count = (condition: Condition, hours: number) => left.set(condition, (left.get(condition) ?? 0) + hours);
  const suit: Span[] = [];
  weather.hours.forEach((hour, i) => {
    const unmet = unmetConditions(needs, hour);
    for (const condition of unmet) count(condition, 1);
    const start = weather.start + i * hour_ms;
    let lit_ms = 0;
    for (const span of light) {
      const from = Math.max(span.start, start);
      const to = Math.min(span.end, start + hour_ms);
      if (from >= to) continue;
      lit_ms += to - from;
      if (unmet.length > 0) continue;
      const last = suit.at(-1);
      if (last && last.end === from) suit[suit.length - 1] = { start: last.start, end: to };
      else suit.push({ start: from, end: to });
    }
    if (needs.daylight && lit_ms < hour_ms) count('daylight', 1 - lit_ms / hour_ms);
  });
  const longest_min = suit.reduce((most, span) => Math.max(most, (span.end - span.start) / 60_000), 0);
  const spans = suit.filter((span) => (span.end - span.start) / 60_000 >= shortest_min);
  if (spans.length > 0) return { kind: 'spans', spans };
  const because = [...left]
    .map(([condition, hours]) => ({ condition, hours }))
    .sort((a, b) => b.hours - a.hours || (a.condition < b.condition ? -1 : 1));
  return { kind: 'no span', longest_min, because };
}

const hour_ms = 3_600_000;
