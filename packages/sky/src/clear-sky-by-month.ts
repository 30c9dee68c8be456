import { clearDays } from '../tables/clear-day.ashrae-1985.ts';
import { noSunlight, type Sunlight } from './clear-sky.ts';
import { requireBetween } from './sun-position.ts';

/** What a month's clear day is in the model: the sun over the air, how fast air dims it, how much the sky gives of the beam. */
export interface ClearDay {
  readonly A_W_m2: number;
  readonly B: number;
  readonly C: number;
}

/** @param month 1–12 @throws RangeError for another */
export function clearDayOf(month: number): ClearDay {
  const row = clearDays[month - 1];
  if (!row) throw new RangeError(`a month is a whole number from 1 to 12, got ${month}`);
  const [A_W_m2, B, C] = row;
  return { A_W_m2, B, C };
}

/**
 * Clear sky from the month: beam A·exp(−B/sin h), light of the sky C times the beam.
 *
 * @param month     1–12, for its 21st, northern hemisphere
 * @param altitude  of the sun. [°], −90–90
 * @returns         zeros with the sun's centre on or under the horizon
 *
 * Source: ASHRAE Fundamentals 1997 (1985 formulation), tables/clear-day.ashrae-1985. Checked in checks/sky.
 */
export function ashraeSky(month: number, altitude: number): Sunlight {
  requireBetween('altitude of the sun', altitude, -90, 90, '°');
  const { A_W_m2, B, C } = clearDayOf(month);
  const sine = Math.sin((altitude * Math.PI) / 180);
  if (sine <= 1e-12) return noSunlight;
  const beam_W_m2 = A_W_m2 * Math.exp(-B / sine);
  return { beam_W_m2, diffuse_W_m2: C * beam_W_m2, global_W_m2: beam_W_m2 * (sine + C) };
}
