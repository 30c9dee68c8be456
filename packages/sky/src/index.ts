export { dewPoint_C } from './dew-point.ts';
export { type Condition, unmetConditions } from './unmet-conditions.ts';
export type { Conditions, WeatherHour } from './weather-hour.ts';
