import { noSunlight, type Sunlight } from './clear-sky.ts';
import { requireBetween } from './sun-position.ts';

/**
 * Part of the light on a level surface that comes from the sky and not straight from the sun, by how clear the hour was.
 *
 * @param clearness  light on the level over light on the level outside the air. 0 and more; over 1 under bright cloud edges
 * @returns          0.165 clear to 1 overcast
 *
 * Source: D. Erbs, S. Klein and J. Duffie, Solar Energy 28 (1982) 293–302, hourly form, from memory; its pieces meet within
 * 0.001.
 */
export function erbsDiffuseShare(clearness: number): number {
  requireBetween('clearness', clearness, 0, 5, '');
  const k = clearness;
  if (k <= 0.22) return 1 - 0.09 * k;
  if (k > 0.8) return 0.165;
  return 0.9511 - 0.1604 * k + 4.388 * k ** 2 - 16.638 * k ** 3 + 12.336 * k ** 4;
}

/**
 * Light measured on the level, parted into the sun's beam and the light of the sky.
 *
 * @param global_W_m2   on the level. [W/m²], 0 and more
 * @param zenith        of the sun. [°], 0–180
 * @param outside_W_m2  on a surface square to the sun, outside the air. [W/m²]
 * @returns             beam never over what there is outside the air; with the sun under 1.15° all counts as light of the sky
 *
 * Source: `erbsDiffuseShare`. An hour's mean: of a single hour the share is out by 0.1 to 0.15.
 */
export function splitSunlight(global_W_m2: number, zenith: number, outside_W_m2: number): Sunlight {
  requireBetween('light on the level', global_W_m2, 0, 2000, 'W/m²');
  requireBetween('zenith angle of the sun', zenith, 0, 180, '°');
  requireBetween('sun outside the air', outside_W_m2, 1, 1500, 'W/m²');
  if (global_W_m2 === 0) return noSunlight;
  const cosine = Math.cos((zenith * Math.PI) / 180);
  // a low sun makes the quotient shoot up: no beam is trusted out of it
  if (cosine < leastCosine) return { global_W_m2, beam_W_m2: 0, diffuse_W_m2: global_W_m2 };
  const clearness = Math.min(5, global_W_m2 / (outside_W_m2 * cosine));
  const beam_W_m2 = Math.min(outside_W_m2, (global_W_m2 * (1 - erbsDiffuseShare(clearness))) / cosine);
  return { global_W_m2, beam_W_m2, diffuse_W_m2: Math.max(0, global_W_m2 - beam_W_m2 * cosine) };
}

const leastCosine = 0.02;
