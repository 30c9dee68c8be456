import { airMass, airMassAtPressure, pressureAtHeight_hPa, seaPressure_hPa } from './air-mass.ts';
import { requireBetween } from './sun-position.ts';

/** Strength of sunlight at the ground. */
export interface Sunlight {
  /** all of it, on a level surface. [W/m²] */
  readonly global_W_m2: number;
  /** straight from the sun, on a surface square to it. [W/m²] */
  readonly beam_W_m2: number;
  /** from the rest of the sky, on a level surface. [W/m²] */
  readonly diffuse_W_m2: number;
}

export const noSunlight: Sunlight = { global_W_m2: 0, beam_W_m2: 0, diffuse_W_m2: 0 };

/**
 * Clear sky over a level surface from the sun's height alone: the plainest formula there is.
 *
 * @param zenith  of the sun as seen. [°], 0–180
 * @returns       [W/m²]; 0 with the sun's centre on or under the horizon
 *
 * Source: B. Haurwitz, Journal of Meteorology 2 (1945), as carried in the handbook (sky.haurwitz.*). Checked in checks/sky.
 */
export function haurwitz_W_m2(zenith: number): number {
  requireBetween('zenith angle of the sun', zenith, 0, 180, '°');
  const cosine = Math.cos(zenith * radian);
  return cosine <= flat ? 0 : 1098 * cosine * Math.exp(-0.059 / cosine);
}

/** A clear sky with its haze as one number. */
export interface HazySky {
  /** of the sun as seen. [°], 0–180 */
  readonly zenith: number;
  /** at the place's pressure; see `airMassAtPressure`. 0.2 and more */
  readonly airMass: number;
  /**
   * Linke turbidity: how many layers of clean dry air dim the beam as the real air does. 1–10; 2 cold and clean, 3 usual, 5 hazy
   * summer; see `assumedTurbidity`
   */
  readonly turbidity: number;
  /** above the sea. [m], −500–5000 */
  readonly elevation_m: number;
  /** on a surface square to the sun, outside the air. [W/m²] */
  readonly outside_W_m2: number;
}

/**
 * Clear sky from the Linke turbidity.
 *
 * The beam is the smaller of the air's own law and what leaves the sky its least share of diffuse light.
 *
 * @returns  zeros with the sun's centre on or under the horizon
 * @throws RangeError outside the ranges
 *
 * Not covered: cloud, mountains that hide the horizon, twilight.
 * Source: P. Ineichen and R. Perez, Solar Energy 73 (2002) 151–157, from memory, without the later factor for a low sun; as
 * carried in the handbook (sky.ineichen.*). Checked in checks/sky.
 */
export function ineichenSky({ zenith, airMass: air, turbidity, elevation_m, outside_W_m2 }: HazySky): Sunlight {
  requireBetween('zenith angle of the sun', zenith, 0, 180, '°');
  requireBetween('Linke turbidity', turbidity, 1, 10, '');
  requireBetween('elevation', elevation_m, -500, 5000, 'm');
  requireBetween('sun outside the air', outside_W_m2, 0, 1500, 'W/m²');
  const cosine = Math.cos(zenith * radian);
  if (cosine <= flat) return noSunlight;
  requireBetween('air mass', air, 0.2, 60, '');
  const fh1 = Math.exp(-elevation_m / 8000);
  const fh2 = Math.exp(-elevation_m / 1250);
  const a1 = 5.09e-5 * elevation_m + 0.868;
  const a2 = 3.92e-5 * elevation_m + 0.0387;
  // all light, on a surface square to the sun; over 4000 m the fit alone would give more than there is
  const square = Math.min(outside_W_m2, a1 * outside_W_m2 * Math.exp(-a2 * air * (fh1 + fh2 * (turbidity - 1))));
  const b = 0.664 + 0.163 / fh1;
  const byAir = b * outside_W_m2 * Math.exp(-0.09 * air * (turbidity - 1));
  const bySky = square * Math.max(0, 1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / fh1));
  const global_W_m2 = square * cosine;
  const beam_W_m2 = Math.min(byAir, bySky);
  return { global_W_m2, beam_W_m2, diffuse_W_m2: Math.max(0, global_W_m2 - beam_W_m2 * cosine) };
}

/** A clear sky of a place, for planning: the haze, and the height that thins the air. */
export interface ClearSky {
  /** of the sun as seen. [°], 0–180 */
  readonly zenith: number;
  /** on a surface square to the sun, outside the air. [W/m²] */
  readonly outside_W_m2: number;
  /** Linke turbidity, 1–10; see `assumedTurbidity` */
  readonly turbidity: number;
  /** above the sea. [m], −500–5000 */
  readonly elevation_m: number;
}

/**
 * Clear sky of a place by `ineichenSky`, with the air crossed worked out, the light of a low sun mended, and the beam fading as
 * the sun's disc sinks.
 *
 * The plain formula gives a sun at 10° a fifth too little in all; a later factor lifts it. That factor is held at an air
 * mass of 4.5, 13° of altitude (ours): beyond, it outgrows every other formula. The formula's beam stops at once when the
 * sun's centre sets. Here it fades over the quarter of a degree (the sun's half width) before that (ours), so that nothing
 * jumps.
 *
 * Source: the factor by R. Perez and others, Solar Energy 73 (2002) 307–317, from memory. Checked in checks/sky, against
 * `solisSky` too.
 */
export function clearSky({ zenith, outside_W_m2, turbidity, elevation_m }: ClearSky): Sunlight {
  if (zenith >= 90) {
    requireBetween('zenith angle of the sun', zenith, 0, 180, '°');
    return noSunlight;
  }
  const air = airMassAtPressure(airMass(zenith), pressureAtHeight_hPa(elevation_m));
  const plain = ineichenSky({ zenith, airMass: air, turbidity, elevation_m, outside_W_m2 });
  const cosine = Math.cos(zenith * radian);
  const lifted = plain.global_W_m2 * Math.exp(0.01 * Math.min(4.5, air) ** 1.8);
  const global_W_m2 = Math.min(outside_W_m2 * cosine, lifted);
  const beam_W_m2 = plain.beam_W_m2 * Math.min(1, (90 - zenith) / sunHalfWidth_deg);
  return { global_W_m2, beam_W_m2, diffuse_W_m2: Math.max(0, global_W_m2 - beam_W_m2 * cosine) };
}

/** A clear sky with its haze as an optical depth, and its water. */
export interface DepthSky {
  /** of the sun as seen. [°], −90–90 */
  readonly altitude: number;
  /** optical depth of the haze at 700 nm. 0–0.45; 0.05 clean, 0.1 usual, 0.3 hazy */
  readonly depth: number;
  /** water in the air above, if it all rained out. [cm], 0–10; under 0.2 counts as 0.2 */
  readonly water_cm: number;
  /** [hPa], 300–1100 */
  readonly pressure_hPa: number;
  /** on a surface square to the sun, outside the air. [W/m²] */
  readonly outside_W_m2: number;
}

/**
 * Clear sky by the simplified Solis formulas: the second way to the same, from the haze's optical depth and the water in the air.
 *
 * @returns  zeros with the sun's centre on or under the horizon. The three are fitted each for itself: beam on the level and
 *           diffuse add to all of it within a few percent
 * @throws RangeError outside the ranges
 *
 * Source: P. Ineichen, Solar Energy 82 (2008) 758–762, coefficients from memory, held to published values. Checked in checks/sky.
 */
export function solisSky({ altitude, depth, water_cm, pressure_hPa, outside_W_m2 }: DepthSky): Sunlight {
  requireBetween('altitude of the sun', altitude, -90, 90, '°');
  requireBetween('optical depth at 700 nm', depth, 0, 0.45, '');
  requireBetween('water in the air', water_cm, 0, 10, 'cm');
  requireBetween('pressure', pressure_hPa, 300, 1100, 'hPa');
  requireBetween('sun outside the air', outside_W_m2, 0, 1500, 'W/m²');
  const sine = Math.sin(altitude * radian);
  if (sine <= flat) return noSunlight;
  const w = Math.max(0.2, water_cm);
  const lnW = Math.log(w);
  const lnP = Math.log(pressure_hPa / seaPressure_hPa);
  const t = depth;

  const raised = outside_W_m2 * (0.12 * w ** 0.56 * t ** 2 + 0.97 * w ** 0.032 * t + 1.08 * w ** 0.0051 + 0.071 * lnP);
  const beamDepth =
    (1.82 + 0.056 * lnW + 0.0071 * lnW ** 2) * t + 0.33 + 0.045 * lnW + 0.0096 * lnW ** 2 + (0.0089 * w + 0.13) * lnP;
  const b = (0.00925 * t ** 2 + 0.0148 * t - 0.0172) * lnW - 0.7565 * t ** 2 + 0.5057 * t + 0.4557;
  const globalDepth =
    (1.24 + 0.047 * lnW + 0.0061 * lnW ** 2) * t + 0.27 + 0.043 * lnW + 0.009 * lnW ** 2 + (0.0079 * w + 0.1) * lnP;
  const g = -0.0147 * lnW - 0.3079 * t ** 2 + 0.2846 * t + 0.3798;
  const [d4, d3, d2, d1, d0, dP] =
    t < 0.05
      ? [
          86 * w - 13800,
          -3.11 * w + 79.4,
          -0.23 * w + 74.8,
          0.092 * w - 8.86,
          0.0042 * w + 3.12,
          -0.83 * (1 + t) ** -17.2,
        ]
      : [
          -0.21 * w + 11.6,
          0.27 * w - 20.7,
          -0.134 * w + 15.5,
          0.0554 * w - 5.71,
          0.0057 * w + 2.94,
          -0.71 * (1 + t) ** -15,
        ];
  const diffuseDepth = d4 * t ** 4 + d3 * t ** 3 + d2 * t ** 2 + d1 * t + d0 + dP * lnP;
  const d = -0.337 * t ** 2 + 0.63 * t + 0.116 + lnP / (18 + 152 * t);
  return {
    beam_W_m2: raised * Math.exp(-beamDepth / sine ** b),
    global_W_m2: raised * Math.exp(-globalDepth / sine ** g) * sine,
    diffuse_W_m2: raised * Math.exp(-diffuseDepth / sine ** d),
  };
}

/** cosines this small are the horizon itself, within rounding */
const flat = 1e-12;
const sunHalfWidth_deg = 0.2667;
const radian = Math.PI / 180;
