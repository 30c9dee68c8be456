import { requireBetween } from './sun-position.ts';

/**
 * Constants of the Magnus form, e = e₀·exp(a·t/(b + t)), over water. [hPa, –, °C]
 *
 * WMO: WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B, as carried in the handbook (sky.dew.wmo.*).
 * Alduchov & Eskridge: J. Appl. Meteor. 35 (1996) 601–609, as carried in the handbook (sky.rh.ae.*); e₀ 6.1094 from memory.
 */
export const magnusForms = {
  WMO: { e0_hPa: 6.112, a: 17.62, b_C: 243.12 },
  'Alduchov and Eskridge': { e0_hPa: 6.1094, a: 17.625, b_C: 243.04 },
} as const;

export type MagnusForm = keyof typeof magnusForms;

/**
 * Dew point of air: the temperature at which a surface in it starts to wet.
 *
 * @param air_C         air temperature. [°C], −60–60; the source states its constants for −45–60
 * @param humidity_pct  relative humidity. [%], over 0 to 100
 * @param form          which constants; WMO unless named
 * @returns             dew point over water. [°C]; below 0 °C frost forms somewhat above it
 * @throws RangeError   outside these ranges
 *
 * Source: Magnus form, see `magnusForms`. Checked in checks/sky.
 */
export function dewPoint_C(air_C: number, humidity_pct: number, form: MagnusForm = 'WMO'): number {
  requireBetween('air temperature', air_C, -60, 60, '°C');
  if (!(humidity_pct > 0 && humidity_pct <= 100))
    throw new RangeError(`relative humidity must be over 0 and at most 100 %, got ${humidity_pct}`);
  const { a, b_C } = magnusForms[form];
  const gamma = Math.log(humidity_pct / 100) + (a * air_C) / (b_C + air_C);
  return (b_C * gamma) / (a - gamma);
}

/**
 * Relative humidity of air from its dew point. [%]
 *
 * @param air_C       [°C], −60–60
 * @param dewPoint    [°C], −120 to the air temperature
 * @throws RangeError outside these ranges: air cannot be below its own dew point
 */
export function humidity_pct(air_C: number, dewPoint: number, form: MagnusForm = 'WMO'): number {
  requireBetween('air temperature', air_C, -60, 60, '°C');
  requireBetween('dew point', dewPoint, -120, air_C, '°C');
  const { a, b_C } = magnusForms[form];
  return 100 * Math.exp((a * dewPoint) / (b_C + dewPoint) - (a * air_C) / (b_C + air_C));
}

/** Water vapour that air can hold at a temperature, over water. [hPa] @param air_C [°C], −60–60 */
export function saturationPressure_hPa(air_C: number, form: MagnusForm = 'WMO'): number {
  requireBetween('air temperature', air_C, -60, 60, '°C');
  const { e0_hPa, a, b_C } = magnusForms[form];
  return e0_hPa * Math.exp((a * air_C) / (b_C + air_C));
}
