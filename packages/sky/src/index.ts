export { type AirMassForm, airMass, airMassAtPressure, pressureAtHeight_hPa } from './air-mass.ts';
export { airQuestions } from './air-questions.ts';
export { cellTemperature_C } from './cell-heat.ts';
export { type ClearSky, clearSky, noSunlight, type Sunlight, solisSky } from './clear-sky.ts';
export { clearSkyQuestions } from './clear-sky-questions.ts';
export { dewPoint_C, humidity_pct, type MagnusForm, magnusForms, saturationPressure_hPa } from './dew-point.ts';
export { slopeLightQuestions } from './slope-light-questions.ts';
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
export { type SunTrack, sunTrack, type TrackCase } from './sun-track.ts';
export { sunlightQuestions } from './sunlight-questions.ts';
export {
  assumedGroundShare,
  lightOnPlane,
  type SkySpread,
  type TiltedLight,
  type TiltedPlane,
} from './tilted-plane.ts';
export { assumedTurbidity, dayOfYear, type TurbidityBand } from './turbidity.ts';
export { type Condition, dewMargin_C, underRoof, unmetConditions } from './unmet-conditions.ts';
export type { Conditions, WeatherHour } from './weather-hour.ts';
