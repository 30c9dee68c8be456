import { assumedTurbidity } from '#sky';

/** Assumed: what is over clean air thins out upwards by e in so many metres. */
const thinning_m = 4000;

/**
 * Linke turbidity of a usual clear day, where nobody has measured it: that of the latitude and season at sea level, thinner
 * with height. Mountain air holds less water and dust than the clear sky's formula takes off for its height.
 *
 * @param dayOfYear    1–366
 * @param elevation_m  [m], −500–10 000
 * @returns            1.3–5; single days lie about 1 either way, cities and desert dust above. Our assumption
 */
export function usualHaze(latitude_deg: number, dayOfYear: number, elevation_m: number): number {
  const { likely } = assumedTurbidity(latitude_deg, dayOfYear);
  return 1 + (likely - 1) * Math.exp(-Math.max(0, elevation_m) / thinning_m);
}
