import { requireBetween } from './sun-position.ts';

/**
 * Sun on a surface square to it outside the air, at the earth's mean distance. [W/m²]
 *
 * 1361 is what satellites measure (G. Kopp and J. Lean, 2011, from memory). Older formulas were fitted with 1366.1 (ASTM E 490)
 * or 1367 (World Radiation Centre): 0.4 % more, which is nothing beside the air.
 */
export const solarConstant_W_m2 = 1361;

/**
 * Sun on a surface square to it outside the air, from the sun's distance.
 *
 * @param distance_au  of the sun, `earthRadius_au` of `geocentricSun`. [au], 0.98–1.02
 * @returns            [W/m²], 1316 in July to 1407 in January
 * @throws RangeError  outside this range
 */
export function outsideAir_W_m2(distance_au: number): number {
  requireBetween('the sun’s distance', distance_au, 0.98, 1.02, 'au');
  return solarConstant_W_m2 / distance_au ** 2;
}

/**
 * How much stronger than in the mean the sun is on a day, for being nearer. 0.967–1.035
 *
 * @param dayOfYear  1–366
 * @param form       Spencer's series of 1971, or the one cosine of Duffie and Beckman's chapter 1; 0.3 % apart at most
 *
 * Source: both from memory. Checked in checks/sky against the true distance.
 */
export function nearnessOfSun(dayOfYear: number, form: 'Spencer' | 'Duffie and Beckman'): number {
  requireBetween('day of the year', dayOfYear, 1, 366, '');
  if (form === 'Duffie and Beckman') return 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
  const turn = (2 * Math.PI * (dayOfYear - 1)) / 365;
  return (
    1.00011 +
    0.034221 * Math.cos(turn) +
    0.00128 * Math.sin(turn) +
    0.000719 * Math.cos(2 * turn) +
    0.000077 * Math.sin(2 * turn)
  );
}

/**
 * Declination of the sun by Cooper's formula, for a sum in the head. [°]; out by up to 1°, most in October
 *
 * @param dayOfYear  1–366
 * Source: P. Cooper (1969), as in Duffie and Beckman, Solar Engineering of Thermal Processes, chapter 1, from memory.
 */
export function cooperDeclination_deg(dayOfYear: number): number {
  requireBetween('day of the year', dayOfYear, 1, 366, '');
  return 23.45 * Math.sin((2 * Math.PI * (284 + dayOfYear)) / 365);
}

/** A stretch of the sun's way over a level surface. */
export interface LevelStretch {
  /** −90–90 */
  readonly latitude_deg: number;
  readonly declination_deg: number;
  /** on a surface square to the sun. [W/m²] */
  readonly outside_W_m2: number;
  /** hour angles from the meridian, morning negative, 15° an hour. [°], −180–180, rising */
  readonly from_deg: number;
  readonly to_deg: number;
}

/**
 * Energy that falls on a level square metre outside the air between two hour angles; night counts for nothing.
 *
 * Exact for a declination that stays: the sine of the sun's altitude, summed over the part of the stretch with the sun up.
 *
 * @returns           [MJ/m²]
 * @throws RangeError outside the ranges, or where the stretch runs backward
 * Source: the integral of sin φ·sin δ + cos φ·cos δ·cos ω, our derivation; the same as Duffie and Beckman's equations 1.10.3
 * and 1.10.4.
 */
export function levelOutsideAir_MJ_m2(stretch: LevelStretch): number {
  const { latitude_deg, declination_deg, outside_W_m2, from_deg, to_deg } = stretch;
  requireBetween('latitude', latitude_deg, -90, 90, '°');
  requireBetween('declination', declination_deg, -24, 24, '°');
  requireBetween('start', from_deg, -180, 180, '°');
  requireBetween('end', to_deg, from_deg, 180, '°');
  const latitude = latitude_deg * radian;
  const declination = declination_deg * radian;
  const steady = Math.sin(latitude) * Math.sin(declination);
  const swing = Math.cos(latitude) * Math.cos(declination);
  const sunset = sunsetHourAngle(latitude_deg, declination_deg) * radian;
  const from = Math.max(-sunset, Math.min(sunset, from_deg * radian));
  const to = Math.max(-sunset, Math.min(sunset, to_deg * radian));
  const seconds_per_radian = 86_400 / (2 * Math.PI);
  const sum = steady * (to - from) + swing * (Math.sin(to) - Math.sin(from));
  return (Math.max(0, sum) * seconds_per_radian * outside_W_m2) / 1e6;
}

/**
 * Hour angle at which the sun's centre sets on a level horizon without air. [°]: 0 in polar night, 180 where it stays up
 *
 * @param latitude_deg     [°], −90–90
 * @param declination_deg  [°]
 */
export function sunsetHourAngle(latitude_deg: number, declination_deg: number): number {
  const cosine = -Math.tan(latitude_deg * radian) * Math.tan(declination_deg * radian);
  return Math.acos(Math.max(-1, Math.min(1, cosine))) / radian;
}

const radian = Math.PI / 180;
