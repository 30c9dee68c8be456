export { airQuestions } from './air-questions.ts';
export { dewPoint_C, humidity_pct, type MagnusForm, magnusForms, saturationPressure_hPa } from './dew-point.ts';
export { type SuitableSpans, suitableSpans, type WeatherSpan } from './suitable-spans.ts';
export {
  assumedDeltaT_s,
  type GeocentricSun,
  geocentricSun,
  incidenceAngle,
  type SunCase,
  type SunPosition,
  sunPosition,
} from './sun-position.ts';
export { sunQuestions } from './sun-questions.ts';
export {
  type Light,
  type LightTimes,
  lightLimits_deg,
  lightSpans,
  type PlaceDay,
  type SunTimes,
  sunTimes,
} from './sun-times.ts';
export { type Condition, unmetConditions } from './unmet-conditions.ts';
export type { Conditions, WeatherHour } from './weather-hour.ts';
