import { summerness } from './season-clearness.ts';

/** What stands in the way of the sun on a clear day. */
export interface ClearAir {
  /** optical depth of haze at 700 nm. 0–0.45; 0.03 very clean, 0.1 usual, 0.3 hazy */
  readonly depth: number;
  /** water in the air above, if it all rained out. [cm], 0.1–10 */
  readonly water_cm: number;
}

/**
 * Assumed, from memory of what sun photometers and soundings find on clear days at sea level: mean over the year, and how much more
 * at midsummer.
 */
const assumedAtSea = [
  { latitude: 0, depth: 0.12, depthSummer: 0, water: 3.8, waterSummer: 0 },
  { latitude: 15, depth: 0.12, depthSummer: 0.01, water: 3.2, waterSummer: 0.6 },
  { latitude: 30, depth: 0.1, depthSummer: 0.035, water: 2, waterSummer: 1 },
  { latitude: 45, depth: 0.085, depthSummer: 0.03, water: 1.4, waterSummer: 0.8 },
  { latitude: 60, depth: 0.065, depthSummer: 0.015, water: 1, waterSummer: 0.5 },
  { latitude: 90, depth: 0.05, depthSummer: 0, water: 0.5, waterSummer: 0.2 },
] as const;
/** Assumed: haze and water thin out upwards by e in so many metres. */
const thinning_m = { depth: 1500, water: 2100 } as const;
/** Assumed: the south is mostly sea, and its air cleaner. */
const southHaze = 0.75;

/**
 * Air of a usual clear day, where nobody has measured it, by latitude, season and height.
 *
 * @param dayOfYear    1–366
 * @param elevation_m  [m], −500–10 000
 * @returns            our assumption; single days lie from half to double the haze, cities, smoke and desert dust above
 */
export function usualAir(latitude_deg: number, dayOfYear: number, elevation_m: number): ClearAir {
  const from_equator = Math.abs(latitude_deg);
  const next = Math.max(
    1,
    assumedAtSea.findIndex(({ latitude }) => latitude >= from_equator),
  );
  const [a, b] = [assumedAtSea[next - 1]!, assumedAtSea[next]!];
  const share = Math.min(1, Math.max(0, (from_equator - a.latitude) / (b.latitude - a.latitude)));
  const between = (key: Exclude<keyof typeof a, 'latitude'>) => a[key] + share * (b[key] - a[key]);
  const summer = summerness(latitude_deg, dayOfYear);
  const height_m = Math.max(0, elevation_m);
  const south = latitude_deg < 0 ? southHaze : 1;
  return {
    depth: south * (between('depth') + between('depthSummer') * summer) * Math.exp(-height_m / thinning_m.depth),
    water_cm: Math.max(
      0.1,
      (between('water') + between('waterSummer') * summer) * Math.exp(-height_m / thinning_m.water),
    ),
  };
}
