import { dayOfYear, noSunlight, pressureAtHeight_hPa, type Sunlight, solisSky, sunTrack } from '#sky';
import { type ClearAir, usualAir } from './usual-air.ts';

/** Where a panel stands. */
export interface SolarPlace {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  /** above the sea. [m] */
  readonly elevation_m: number;
}

/** Even steps of time. */
export interface Steps {
  /** start of the first. [ms] */
  readonly from: number;
  readonly step_min: number;
  readonly count: number;
}

/** A clear sky at a moment, and the sun in it. */
export interface ClearMoment extends Sunlight {
  /** of the sun as seen. [°]; over 90: it is down */
  readonly zenith: number;
  /** true, from north, eastward. [°] */
  readonly azimuth: number;
  /** on a surface square to the sun, outside the air. [W/m²] */
  readonly outside_W_m2: number;
}

const day_ms = 86_400_000;
const radian = Math.PI / 180;

/**
 * Light of a clear sky at the middle of each step.
 *
 * Of the formulas that `sky` holds this one keeps to what the air takes up a mountain, where that of Ineichen and Perez (2002)
 * gives 4 to 10 % more, and with a low sun.
 *
 * @param air  null: the usual air of the place and season, see `usualAir`
 * Source: P. Ineichen, Solar Energy 82 (2008) 758–762 (`solisSky`). Held against measured days in checks/solar.
 */
export function clearLight(place: SolarPlace, { from, step_min, count }: Steps, air: ClearAir | null): ClearMoment[] {
  const { latitude_deg, elevation_m } = place;
  const step_ms = step_min * 60_000;
  const track = sunTrack({ ...place, start: from + step_ms / 2, step_min, count });
  const pressure_hPa = pressureAtHeight_hPa(elevation_m);
  let day = Number.NaN;
  let through = air;
  return Array.from({ length: count }, (_, i) => {
    const altitude = track.altitude[i]!;
    const zenith = 90 - altitude;
    const sun = { zenith, azimuth: track.azimuth[i]!, outside_W_m2: track.outside_W_m2[i]! };
    if (altitude <= 0) return { ...noSunlight, ...sun };
    const at = from + i * step_ms;
    if (through === null || (air === null && Math.floor(at / day_ms) !== day)) {
      day = Math.floor(at / day_ms);
      through = usualAir(latitude_deg, dayOfYear(at), elevation_m);
    }
    const { global_W_m2, beam_W_m2 } = solisSky({ ...through, altitude, pressure_hPa, outside_W_m2: sun.outside_W_m2 });
    // the three are fitted each for itself: the sky is what the beam leaves of all
    const level = Math.min(global_W_m2, beam_W_m2 * Math.cos(zenith * radian));
    return {
      ...sun,
      global_W_m2,
      beam_W_m2: level / Math.cos(zenith * radian),
      diffuse_W_m2: global_W_m2 - level,
    };
  });
}

/** Energy of a clear day on a level square metre. [kWh/m²]; the beam on a surface that follows the sun */
export interface ClearDay {
  readonly global_kWh: number;
  readonly beam_kWh: number;
  readonly sky_kWh: number;
  /** on the level, outside the air */
  readonly outside_kWh: number;
  /** the air taken */
  readonly air: ClearAir;
  /** the highest the sun gets, as seen. [°] */
  readonly highest_deg: number;
}

/**
 * A clear day from its midnight to the next, in steps of five minutes.
 *
 * @param air  null: the usual one
 */
export function clearDay(
  place: SolarPlace,
  { start, end }: { readonly start: number; readonly end: number },
  air: ClearAir | null,
): ClearDay {
  const step_min = 5;
  const count = Math.round((end - start) / 60_000 / step_min);
  const moments = clearLight(place, { from: start, step_min, count }, air);
  const kWh = (of: (moment: ClearMoment) => number) =>
    moments.reduce((sum, moment) => sum + of(moment), 0) * (step_min / 60_000);
  return {
    global_kWh: kWh(({ global_W_m2 }) => global_W_m2),
    beam_kWh: kWh(({ beam_W_m2 }) => beam_W_m2),
    sky_kWh: kWh(({ diffuse_W_m2 }) => diffuse_W_m2),
    outside_kWh: kWh(({ outside_W_m2, zenith }) => outside_W_m2 * Math.max(0, Math.cos(zenith * radian))),
    air: air ?? usualAir(place.latitude_deg, dayOfYear((start + end) / 2), place.elevation_m),
    highest_deg: moments.reduce((most, { zenith }) => Math.max(most, 90 - zenith), -90),
  };
}
