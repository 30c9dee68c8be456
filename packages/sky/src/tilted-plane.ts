import type { Sunlight } from './clear-sky.ts';
import { incidenceAngle, requireBetween } from './sun-position.ts';

/** A flat surface that light falls on, where it stands and how the sun stands to it. */
export interface TiltedPlane {
  /** of the sun as seen. [°], 0–180 */
  readonly zenith: number;
  /** of the sun, true, from north. [°] */
  readonly azimuth: number;
  /** of the surface from level. [°], 0–180 */
  readonly slope: number;
  /** the way the surface looks down its slope, true, from north. [°] */
  readonly facing: number;
  /** share of light the ground or water throws back. 0–1; see `assumedGroundShare` */
  readonly groundShare: number;
  /** on a surface square to the sun, outside the air. [W/m²]; only Hay and Davies ask for it */
  readonly outside_W_m2: number;
}

/** Light on a tilted surface, by where it comes from. [W/m²] */
export interface TiltedLight {
  readonly beam_W_m2: number;
  readonly sky_W_m2: number;
  readonly ground_W_m2: number;
  readonly total_W_m2: number;
}

/** How the light of the sky is spread: evenly, or partly close round the sun. */
export type SkySpread = 'even' | 'Hay and Davies';

/**
 * Assumed share of light thrown back: 0.06 by water under a high sun (more when it is low), 0.2 by grass and gravel, 0.25 by
 * concrete, 0.6 to 0.8 by snow. From memory; on a deck nearly level it hardly counts.
 */
export const assumedGroundShare = {
  water: 0.06,
  grass: 0.2,
  concrete: 0.25,
  'old snow': 0.6,
  'new snow': 0.8,
} as const;

/**
 * Light on a tilted surface from the light on the level.
 *
 * 'even' treats the sky as equally bright all over: on the safe side by 2 to 6 % for a surface that looks at the sun. 'Hay and
 * Davies' takes the part A = beam over beam outside the air as coming from where the sun stands.
 *
 * @throws RangeError outside the ranges
 *
 * Source: B. Liu and R. Jordan (1963) for ground and even sky, as carried in the handbook (sky.iso.*); J. Hay and J. Davies
 * (1980), from memory. Checked in checks/sky.
 */
export function lightOnPlane(light: Sunlight, plane: TiltedPlane, spread: SkySpread): TiltedLight {
  const { zenith, azimuth, slope, facing, groundShare, outside_W_m2 } = plane;
  requireBetween('zenith angle of the sun', zenith, 0, 180, '°');
  const squareness = zenith >= 90 ? 0 : Math.max(0, Math.cos(incidenceAngle(zenith, azimuth, slope, facing) * radian));
  const beam_W_m2 = light.beam_W_m2 * squareness;
  const evenSky_W_m2 = light.diffuse_W_m2 * shareOfSky(slope);
  const ground_W_m2 = groundLight_W_m2(light.global_W_m2, slope, groundShare);
  let sky_W_m2 = evenSky_W_m2;
  if (spread === 'Hay and Davies' && zenith < 90) {
    requireBetween('sun outside the air', outside_W_m2, 1, 1500, 'W/m²');
    const round = Math.min(1, light.beam_W_m2 / outside_W_m2);
    // the quotient shoots up with the sun on the horizon: held at its value for 1°
    const turned = squareness / Math.max(Math.cos(zenith * radian), leastCosine);
    sky_W_m2 = light.diffuse_W_m2 * round * turned + evenSky_W_m2 * (1 - round);
  }
  return { beam_W_m2, sky_W_m2, ground_W_m2, total_W_m2: beam_W_m2 + sky_W_m2 + ground_W_m2 };
}

/** Share of an evenly bright sky that a slope sees: (1 + cos slope)/2. @param slope [°], 0–180 */
export function shareOfSky(slope: number): number {
  requireBetween('slope', slope, 0, 180, '°');
  return (1 + Math.cos(slope * radian)) / 2;
}

/** Light that the ground throws on a slope. [W/m²] @param groundShare 0–1 */
export function groundLight_W_m2(global_W_m2: number, slope: number, groundShare: number): number {
  requireBetween('slope', slope, 0, 180, '°');
  requireBetween('share of light the ground throws back', groundShare, 0, 1, '');
  return (global_W_m2 * groundShare * (1 - Math.cos(slope * radian))) / 2;
}

const leastCosine = 0.01745;
const radian = Math.PI / 180;
