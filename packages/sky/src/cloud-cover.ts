import { requireBetween } from './sun-position.ts';

/**
 * Share of a clear sky's light that a covered one lets through.
 *
 * @param oktas  eighths of the sky that are cloud. 0–8, fractions taken
 * @returns      0.25 overcast to 1 clear
 *
 * The mean of many hours: one hour of seven oktas may have the sun in a gap or behind a shower. Low rain cloud lets through a
 * tenth, high thin cloud four fifths.
 * Source: F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177–189, ten years of Hamburg, as carried in the handbook
 * (sky.cloud.*). Checked in checks/sky.
 */
export function shareThroughCloud(oktas: number): number {
  requireBetween('cloud cover', oktas, 0, 8, 'oktas');
  return 1 - 0.75 * (oktas / 8) ** 3.4;
}

/**
 * Part of the light on a level surface that comes from the sky and not straight from the sun, by cloud. 0.3–1
 *
 * @param oktas  0–8
 * Source: the same paper, from memory.
 */
export function diffuseShareByCloud(oktas: number): number {
  requireBetween('cloud cover', oktas, 0, 8, 'oktas');
  return 0.3 + 0.7 * (oktas / 8) ** 2;
}

/**
 * Clear sky over a level surface by the sun's height, the one the cloud figures were measured against.
 *
 * @param altitude  of the sun. [°], −90–90
 * @returns         [W/m²]; 0 under 1.9°
 * Source: the same paper, from memory: Hamburg, hazy; some 5 % under `ineichenSky` with a turbidity of 3.
 */
export function kastenCzeplak_W_m2(altitude: number): number {
  requireBetween('altitude of the sun', altitude, -90, 90, '°');
  return Math.max(0, 910 * Math.sin((altitude * Math.PI) / 180) - 30);
}
