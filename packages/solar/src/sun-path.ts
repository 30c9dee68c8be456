import { assumedDeltaT_s, geocentricSun, outsideAir_W_m2 } from '#sky';

/** Where a panel stands. */
export interface SolarPlace {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  /** above the sea. [m] */
  readonly elevation_m: number;
}

/** The sun at moments of even step. Lists of one length. */
export interface SunPath {
  /** middles of the steps. [ms] */
  readonly at: Float64Array;
  /** of the sun as seen, through usual air. [°]; over 90: it is down */
  readonly zenith: Float64Array;
  /** true, from north, eastward. [°] */
  readonly azimuth: Float64Array;
  /** on a surface square to the sun, outside the air. [W/m²] */
  readonly outside_W_m2: Float64Array;
}

const day_ms = 86_400_000;
const radian = Math.PI / 180;

/**
 * The sun over a stretch of time, quickly: its exact place among the stars at each midnight, straight lines between, which is
 * within 0.01° of the exact one.
 *
 * @param from     start of the first step. [ms]
 * @param step_min over 0
 */
export function sunPath(place: SolarPlace, from: number, step_min: number, steps: number): SunPath {
  return sunPathAt(
    place,
    Float64Array.from({ length: steps }, (_, i) => from + (i + 0.5) * step_min * 60_000),
  );
}

/** The same at moments that rise. */
export function sunPathAt({ latitude_deg, longitude_deg }: SolarPlace, at: Float64Array): SunPath {
  const steps = at.length;
  const zenith = new Float64Array(steps);
  const azimuth = new Float64Array(steps);
  const outside_W_m2 = new Float64Array(steps);
  const sinLatitude = Math.sin(latitude_deg * radian);
  const cosLatitude = Math.cos(latitude_deg * radian);
  let day = Number.NaN;
  let before = geocentricSun(0, assumedDeltaT_s);
  let after = before;
  for (let i = 0; i < steps; i++) {
    const today = Math.floor(at[i]! / day_ms);
    if (today !== day) {
      before = today === day + 1 ? after : geocentricSun(today * day_ms, assumedDeltaT_s);
      after = geocentricSun((today + 1) * day_ms, assumedDeltaT_s);
      day = today;
    }
    const share = at[i]! / day_ms - today;
    const declination = (before.declination + share * (after.declination - before.declination)) * radian;
    const equation_min = before.equationOfTime_min + share * (after.equationOfTime_min - before.equationOfTime_min);
    const hourAngle = (360 * share - 180 + longitude_deg + equation_min / 4) * radian;
    const up = sinLatitude * Math.sin(declination) + cosLatitude * Math.cos(declination) * Math.cos(hourAngle);
    const altitude = Math.asin(Math.max(-1, Math.min(1, up))) / radian;
    zenith[i] = 90 - altitude - refraction_deg(altitude);
    azimuth[i] =
      (Math.atan2(Math.sin(hourAngle), Math.cos(hourAngle) * sinLatitude - Math.tan(declination) * cosLatitude) /
        radian +
        540) %
      360;
    outside_W_m2[i] = outsideAir_W_m2(before.earthRadius_au + share * (after.earthRadius_au - before.earthRadius_au));
  }
  return { at, zenith, azimuth, outside_W_m2 };
}

/** As in `sunPosition`, for usual air. [°] */
const refraction_deg = (altitude: number) =>
  altitude < -0.8 ? 0 : 1.02 / (60 * Math.tan((altitude + 10.3 / (altitude + 5.11)) * radian));
