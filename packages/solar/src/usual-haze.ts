import { summerness } from './season-clearness.ts';

/**
 * Assumed, from memory of the worldwide maps of Linke turbidity (J. Remund and others, 2003): the haze of a usual clear day at
 * sea level by latitude, and how much more there is at midsummer.
 */
const assumedHaze = [
  { latitude: 0, mean: 4.2, summer: 0 },
  { latitude: 15, mean: 4, summer: 0.3 },
  { latitude: 30, mean: 3.6, summer: 0.5 },
  { latitude: 45, mean: 3.3, summer: 0.6 },
  { latitude: 60, mean: 2.7, summer: 0.4 },
  { latitude: 90, mean: 2.2, summer: 0.2 },
] as const;
/** Assumed: what is over clean air thins out upwards by e in so many metres. */
const thinning_m = 4000;

/**
 * Linke turbidity of a usual clear day, where nobody has measured it.
 *
 * @param dayOfYear    1–366
 * @param elevation_m  [m]
 * @returns            1.5–5; single days lie about 1 either way, cities and desert dust above
 */
export function usualHaze(latitude_deg: number, dayOfYear: number, elevation_m: number): number {
  const from_equator = Math.abs(latitude_deg);
  const next = Math.max(
    1,
    assumedHaze.findIndex(({ latitude }) => latitude >= from_equator),
  );
  const b = assumedHaze[next]!;
  const a = assumedHaze[next - 1]!;
  const share = Math.min(1, Math.max(0, (from_equator - a.latitude) / (b.latitude - a.latitude)));
  const between = (key: 'mean' | 'summer') => a[key] + share * (b[key] - a[key]);
  const atSea = between('mean') + between('summer') * summerness(latitude_deg, dayOfYear);
  return 1 + (atSea - 1) * Math.exp(-Math.max(0, elevation_m) / thinning_m);
}
