import type { Conditions } from '#sky';

/** One condition as a need: `dry`, `from 12 °C`, `up to 10 knots`. */
export function conditionInWords(condition: string, needs: Conditions): string {
  switch (condition) {
    case 'dry':
      return 'dry';
    case 'daylight':
      return 'in daylight';
    case 'wind_max_kn':
      return needs.wind_max_kn === undefined ? 'light wind' : `wind up to ${needs.wind_max_kn} knots`;
    case 'air_min_C':
      return needs.air_min_C === undefined ? 'warm enough' : `from ${needs.air_min_C} °C`;
    case 'air_max_C':
      return needs.air_max_C === undefined ? 'cool enough' : `up to ${needs.air_max_C} °C`;
    case 'surface_min_C':
      return needs.surface_min_C === undefined ? 'a warm surface' : `a surface from ${needs.surface_min_C} °C`;
    case 'humidity_max_pct':
      return needs.humidity_max_pct === undefined ? 'drier air' : `humidity up to ${needs.humidity_max_pct} %`;
    case 'dewMargin_min_C':
      return needs.dewMargin_min_C === undefined
        ? 'clear of the dew'
        : `a surface ${needs.dewMargin_min_C} °C clear of the dew point`;
    default:
      return condition;
  }
}

/** All a step asks of the weather: `dry, from 12 °C, in daylight`; empty where it asks nothing. */
export function conditionsInWords(needs: Conditions): string {
  return conditionOrder
    .filter((key) => needs[key] !== undefined)
    .map((key) => conditionInWords(key, needs))
    .join(', ');
}

const conditionOrder = [
  'dry',
  'air_min_C',
  'air_max_C',
  'surface_min_C',
  'humidity_max_pct',
  'dewMargin_min_C',
  'wind_max_kn',
  'daylight',
] as const satisfies readonly (keyof Conditions)[];
