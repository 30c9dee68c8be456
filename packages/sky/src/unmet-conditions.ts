import { dewPoint_C } from './dew-point.ts';
import type { Conditions, WeatherHour } from './weather-hour.ts';

export type Condition = keyof Conditions;

/**
 * Which of the conditions one hour of weather does not meet, in a set order; empty when it suits.
 * Daylight is not a matter of the hour (it starts and ends within one) and is left to the caller.
 */
export function unmetConditions(needs: Conditions, hour: WeatherHour): Condition[] {
  const unmet: Condition[] = [];
  const surface_C = hour.surface_C ?? hour.air_C;
  if (needs.dry && hour.rain) unmet.push('dry');
  if (needs.wind_max_kn !== undefined && hour.wind_kn > needs.wind_max_kn) unmet.push('wind_max_kn');
  if (needs.air_min_C !== undefined && hour.air_C < needs.air_min_C) unmet.push('air_min_C');
  if (needs.air_max_C !== undefined && hour.air_C > needs.air_max_C) unmet.push('air_max_C');
  if (needs.surface_min_C !== undefined && surface_C < needs.surface_min_C) unmet.push('surface_min_C');
  if (needs.humidity_max_pct !== undefined && hour.humidity_pct > needs.humidity_max_pct)
    unmet.push('humidity_max_pct');
  if (needs.dewMargin_min_C !== undefined && dewMargin_C(hour) < needs.dewMargin_min_C) unmet.push('dewMargin_min_C');
  return unmet;
}

/** How far what lies in the open is over the dew point. [°C]; 0 and below: dew (or frost) falls on it */
export function dewMargin_C(hour: Pick<WeatherHour, 'air_C' | 'surface_C' | 'humidity_pct' | 'skyCooling_C'>): number {
  return (hour.surface_C ?? hour.air_C) - (hour.skyCooling_C ?? 0) - dewPoint_C(hour.air_C, hour.humidity_pct);
}

/** The hour as it is under a roof: no rain reaches what is there, and the sky does not cool it. */
export function underRoof<H extends WeatherHour>(hour: H): H {
  return { ...hour, rain: false, skyCooling_C: 0 };
}
