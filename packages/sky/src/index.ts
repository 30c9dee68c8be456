export { type AirMassForm, airMass, airMassAtPressure, pressureAtHeight_hPa } from './air-mass.ts';
export { airQuestions } from './air-questions.ts';
export {
  assumedNominal_C,
  assumedPowerPerDegree_pct,
  cellTemperature_C,
  cellTemperatureInWind_C,
  panelPower_W,
} from './cell-heat.ts';
export { clearSky, haurwitz_W_m2, ineichenSky, noSunlight, type Sunlight, solisSky } from './clear-sky.ts';
export { clearSkyQuestions } from './clear-sky-questions.ts';
export { diffuseShareByCloud, kastenCzeplak_W_m2, shareThroughCloud } from './cloud-cover.ts';
export { dewPoint_C, humidity_pct, type MagnusForm, magnusForms, saturationPressure_hPa } from './dew-point.ts';
export { slopeLightQuestions } from './slope-light-questions.ts';
export { type SuitableSpans, suitableSpans, type WeatherSpan } from './suitable-spans.ts';
export { levelOutsideAir_MJ_m2, nearnessOfSun, outsideAir_W_m2, solarConstant_W_m2 } from './sun-outside-air.ts';
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
export { clearSkyTrack, type SkyTrack, type SunTrack, sunTrack } from './sun-track.ts';
export { sunlightQuestions } from './sunlight-questions.ts';
export { erbsDiffuseShare, splitSunlight } from './sunlight-split.ts';
export {
  assumedGroundShare,
  lightOnPlane,
  type SkySpread,
  type TiltedLight,
  type TiltedPlane,
} from './tilted-plane.ts';
export { assumedTurbidity, type TurbidityBand } from './turbidity.ts';
export { type Condition, unmetConditions } from './unmet-conditions.ts';
export type { Conditions, WeatherHour } from './weather-hour.ts';
