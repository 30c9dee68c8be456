import { airMass, airMassAtPressure, ineichenSky, pressureAtHeight_hPa, type Sunlight } from '#sky';
import { type SolarPlace, type SunPath, sunPath } from './sun-path.ts';
import { usualHaze } from './usual-haze.ts';

const day_ms = 86_400_000;

/**
 * Light of a clear day with the usual haze of the place and season, step by step along the sun's path.
 *
 * @param haze  Linke turbidity; null: the usual one, see `usualHaze`
 * @returns     [W/m²], one a step; zeros with the sun down
 */
export function clearLight({ latitude_deg, elevation_m }: SolarPlace, path: SunPath, haze: number | null): Sunlight[] {
  const pressure_hPa = pressureAtHeight_hPa(elevation_m);
  let day = Number.NaN;
  let turbidity = haze ?? Number.NaN;
  return Array.from(path.at, (at, i) => {
    const zenith = path.zenith[i]!;
    if (zenith >= 90) return { global_W_m2: 0, beam_W_m2: 0, diffuse_W_m2: 0 };
    const today = Math.floor(at / day_ms);
    if (haze === null && today !== day) {
      day = today;
      turbidity = usualHaze(latitude_deg, dayOfYear(at), elevation_m);
    }
    const air = airMassAtPressure(airMass(zenith), pressure_hPa);
    const { global_W_m2, beam_W_m2 } = ineichenSky({
      zenith,
      airMass: air,
      turbidity,
      elevation_m,
      outside_W_m2: path.outside_W_m2[i]!,
    });
    const global = global_W_m2 * lowSunFactor(air);
    return {
      global_W_m2: global,
      beam_W_m2,
      diffuse_W_m2: Math.max(0, global - beam_W_m2 * Math.cos((zenith * Math.PI) / 180)),
    };
  });
}

/**
 * What the clear sky's formula leaves out with a low sun: R. Perez and others, Solar Energy 73 (2002) 307–317, from memory. Held
 * at an air mass of 4.5, 13° of altitude (ours): beyond it the factor outgrows every other formula for a clear sky.
 */
const lowSunFactor = (air: number) => Math.exp(0.01 * Math.min(4.5, air) ** 1.8);

/** By universal time; a day either way is nothing here. 1–366 */
export function dayOfYear(at: number): number {
  const year = new Date(at).getUTCFullYear();
  return Math.floor((at - Date.UTC(year, 0, 1)) / day_ms) + 1;
}

/** Energy of a clear day on a level square metre. [kWh/m²]; the beam on a surface that follows the sun */
export interface ClearDay {
  readonly global_kWh: number;
  readonly beam_kWh: number;
  readonly sky_kWh: number;
  /** on the level, outside the air */
  readonly outside_kWh: number;
  /** Linke turbidity taken */
  readonly haze: number;
  /** the highest the sun gets, as seen. [°] */
  readonly highest_deg: number;
}

/**
 * A clear day from its midnight to the next, in steps of five minutes.
 *
 * @param haze  Linke turbidity, 1–10; null: the usual one
 */
export function clearDay(
  place: SolarPlace,
  { start, end }: { readonly start: number; readonly end: number },
  haze: number | null,
): ClearDay {
  const step_min = 5;
  const steps = Math.round((end - start) / 60_000 / step_min);
  const path = sunPath(place, start, step_min, steps);
  const lights = clearLight(place, path, haze);
  const kWh = (of: (light: Sunlight, i: number) => number) =>
    lights.reduce((sum, light, i) => sum + of(light, i), 0) * (step_min / 60_000);
  return {
    global_kWh: kWh(({ global_W_m2 }) => global_W_m2),
    beam_kWh: kWh(({ beam_W_m2 }) => beam_W_m2),
    sky_kWh: kWh(({ diffuse_W_m2 }) => diffuse_W_m2),
    outside_kWh: kWh((_, i) => path.outside_W_m2[i]! * Math.max(0, Math.cos((path.zenith[i]! * Math.PI) / 180))),
    haze: haze ?? usualHaze(place.latitude_deg, dayOfYear((start + end) / 2), place.elevation_m),
    highest_deg: path.zenith.reduce((most, zenith) => Math.max(most, 90 - zenith), -90),
  };
}
