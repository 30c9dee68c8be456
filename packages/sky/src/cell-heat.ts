import { requireBetween } from './sun-position.ts';

/** Conditions of a panel's nominal operating temperature (NOCT): IEC 61215, as carried in the handbook (sky.noct.def). */
export const nominalConditions = { light_W_m2: 800, air_C: 20, wind_m_s: 1 } as const;

/** Assumed where a panel's label has no nominal operating temperature: the middle of the usual 43–48 °C, from memory. [°C] */
export const assumedNominal_C = 45;

/** Assumed where a panel's label has no power coefficient: crystalline silicon has −0.29 to −0.5. [%/°C] */
export const assumedPowerPerDegree_pct = -0.4;

/**
 * How hot a panel's cells get, in the light alone.
 *
 * @param light_W_m2  on the panel. [W/m²], 0–2000
 * @param air_C       [°C], −60–60
 * @param nominal_C   NOCT from the label. [°C], 20–80
 *
 * A panel free all round in a light wind. Flat on a deck with no air behind it, a panel runs 10 to 15 °C hotter (from memory).
 * Source: R. Ross (1976), as carried in the handbook (sky.noct.ross.*). Checked in checks/sky.
 */
export function cellTemperature_C(light_W_m2: number, air_C: number, nominal_C: number): number {
  requireBetween('light on the panel', light_W_m2, 0, 2000, 'W/m²');
  requireBetween('air temperature', air_C, -60, 60, '°C');
  requireBetween('nominal operating temperature', nominal_C, 20, 80, '°C');
  return air_C + ((nominal_C - nominalConditions.air_C) / nominalConditions.light_W_m2) * light_W_m2;
}

/** A panel in light and wind. */
export interface WindyPanel {
  /** on the panel. [W/m²], 0–2000 */
  readonly light_W_m2: number;
  /** [°C], −60–60 */
  readonly air_C: number;
  /** ten metres up, as forecasts give it. [m/s], 0–60 */
  readonly wind_m_s: number;
  /** NOCT from the label. [°C], 20–80 */
  readonly nominal_C: number;
  /** share of the light it turns into power. 0–0.5 */
  readonly efficiency: number;
  /** air behind it. [cm], 0–1000 */
  readonly gap_cm: number;
}

/**
 * How hot a panel's cells get with the wind over them.
 *
 * @throws RangeError outside the ranges
 * Source: NOCT model of a public simulation of the US laboratories, formula as described at pvpmc.sandia.gov, as carried in the
 * handbook (sky.noct.sam): wind at the panel 0.51 of that at 10 m, 0.9 of the light taken in, less air behind it hotter by
 * 18 °C (to 1.27 cm), 11 (to 3.8), 6 (to 6.4), 2 (to 8.9), from memory. Checked in checks/sky.
 */
export function cellTemperatureInWind_C(panel: WindyPanel): number {
  const { light_W_m2, air_C, wind_m_s, nominal_C, efficiency, gap_cm } = panel;
  requireBetween('wind', wind_m_s, 0, 60, 'm/s');
  requireBetween('efficiency', efficiency, 0, 0.5, '');
  requireBetween('gap behind the panel', gap_cm, 0, 1000, 'cm');
  const still = cellTemperature_C(light_W_m2, air_C, nominal_C);
  const taken = 0.9;
  const hotter = gapHotter_C.find(({ to_cm }) => gap_cm <= to_cm)?.by_C ?? 0;
  const rise = still - air_C + (hotter / nominalConditions.light_W_m2) * light_W_m2;
  return air_C + rise * (1 - efficiency / taken) * (9.5 / (5.7 + 3.8 * 0.51 * wind_m_s));
}

const gapHotter_C = [
  { to_cm: 1.27, by_C: 18 },
  { to_cm: 3.81, by_C: 11 },
  { to_cm: 6.35, by_C: 6 },
  { to_cm: 8.89, by_C: 2 },
] as const;

/**
 * Power of a panel in light and heat: straight with the light, and less by so many percent for each degree over 25 °C.
 *
 * @param peak_W                at 1000 W/m² and cells of 25 °C, as on the label. [W], 0 and more
 * @param light_W_m2            on the panel. [W/m²], 0–2000
 * @param cell_C                [°C], −60–150
 * @param powerPerDegree_pct    from the label. [%/°C], −1–0
 * @returns                     [W]; never under 0
 *
 * Source: the linear model of IEC 61215's labels. Checked in checks/sky (sky.derate). In weak light (under 200 W/m²) real panels
 * give some 3 to 5 % less than this (from memory).
 */
export function panelPower_W(peak_W: number, light_W_m2: number, cell_C: number, powerPerDegree_pct: number): number {
  requireBetween('peak power', peak_W, 0, 100_000, 'W');
  requireBetween('light on the panel', light_W_m2, 0, 2000, 'W/m²');
  requireBetween('cell temperature', cell_C, -60, 150, '°C');
  requireBetween('power lost to heat', powerPerDegree_pct, -1, 0, '%/°C');
  return peak_W * (light_W_m2 / 1000) * Math.max(0, 1 + (powerPerDegree_pct / 100) * (cell_C - 25));
}
