/**
 * Dew point of air by the Magnus form with the constants of WMO-No. 8 (17.62, 243.12 °C).
 *
 * @param air_C         air temperature. [°C], −45–60
 * @param humidity_pct  relative humidity. [%], over 0 to 100
 * @returns             dew point. [°C]
 * @throws RangeError   outside these ranges
 *
 * Source: WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B. Checked in checks/sky.
 */
export function dewPoint_C(air_C: number, humidity_pct: number): number {
  if (!(air_C >= -45 && air_C <= 60)) throw new RangeError(`air temperature must be −45 to 60 °C, got ${air_C}`);
  if (!(humidity_pct > 0 && humidity_pct <= 100))
    throw new RangeError(`relative humidity must be over 0 and at most 100 %, got ${humidity_pct}`);
  const gamma = Math.log(humidity_pct / 100) + (17.62 * air_C) / (243.12 + air_C);
  return (243.12 * gamma) / (17.62 - gamma);
}
