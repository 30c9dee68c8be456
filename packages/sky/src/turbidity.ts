import { requireBetween } from './sun-position.ts';

/** Linke turbidity of a clear day: what is likely, and what nine clear days in ten lie between. */
export interface TurbidityBand {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * Assumed haze of a clear day at sea level, by latitude and season, where nobody measured it.
 *
 * No map of the world's haze comes with this project. The figures are from memory of such maps: some 2.5 in winter and 3.6 in
 * summer at 45°, 3.8 all year near the equator, 2.4 near the poles, a little cleaner in the south, which is mostly sea.
 * The two ends are far apart on purpose: clean air after a front, and a week of haze. In the mean of the day, one step of
 * turbidity is worth 5 to 8 % of the light on the level.
 *
 * @param latitude_deg  [°], −90–90
 * @param dayOfYear     1–366
 * @throws RangeError   outside the ranges
 *
 * Not covered: cities, smoke, desert dust, mountains (give the height to `clearSky` instead: it thins the haze itself).
 */
export function assumedTurbidity(latitude_deg: number, dayOfYear: number): TurbidityBand {
  requireBetween('latitude', latitude_deg, -90, 90, '°');
  requireBetween('day of the year', dayOfYear, 1, 366, '');
  const south = latitude_deg < 0;
  const [mean, swing] = byLatitude(Math.abs(latitude_deg));
  // the haze lags the sun: at its most a month after the longest day
  const warmest = south ? 202 - 182.6 : 202;
  const season = Math.cos((2 * Math.PI * (dayOfYear - warmest)) / 365.25);
  const cleaner = south ? cleanerSouth * Math.min(1, -latitude_deg / 20) : 0;
  const likely = mean - cleaner + swing * season;
  return { low: Math.max(1.5, likely - 0.8), likely, high: likely + 1.1 };
}

/** Latitude, yearly mean, half the step from winter to summer. */
const bands = [
  [0, 3.8, 0],
  [20, 3.6, 0.3],
  [35, 3.2, 0.5],
  [50, 3.0, 0.55],
  [65, 2.6, 0.4],
  [90, 2.3, 0.2],
] as const;
const cleanerSouth = 0.3;

function byLatitude(latitude: number): readonly [number, number] {
  let i = 1;
  while (i < bands.length - 1 && latitude > bands[i]![0]) i++;
  const [l0, m0, s0] = bands[i - 1]!;
  const [l1, m1, s1] = bands[i]!;
  const part = (latitude - l0) / (l1 - l0);
  return [m0 + part * (m1 - m0), s0 + part * (s1 - s0)];
}

/** Day of the year of a moment, by universal time. 1–366 @param instant [ms since 1970-01-01T00:00Z] */
export function dayOfYear(instant: number): number {
  return Math.floor((instant - Date.UTC(new Date(instant).getUTCFullYear(), 0, 1)) / 86_400_000) + 1;
}
