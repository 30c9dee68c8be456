/**
 * A forecast hour by hour: one figure for each hour in every column, all of the same length.
 *
 * An hour is the sixty minutes from its instant on: rain and its chance are of those minutes, the wind is the stronger
 * and air and humidity the mean of the figures at its two ends.
 */
export interface ForecastHours {
  /** when the first hour begins; on a whole hour UTC. [epoch ms] */
  readonly from: number;
  /** rain, showers and snow as water, within the hour. [mm], 0–300 */
  readonly rain_mm: readonly number[];
  /** chance of more than 0.1 mm within the hour; null: not given. [%], 0–100 */
  readonly rainOdds_pct: readonly (number | null)[];
  /** mean wind 10 m up. [kn], 0–120 */
  readonly wind_kn: readonly number[];
  /** 2 m up. [°C], −60–60 */
  readonly air_C: readonly number[];
  /** relative, 2 m up. [%], 1–100 */
  readonly humidity_pct: readonly number[];
}

/** When the last hour of a forecast ends. [epoch ms] */
export function forecastEnd({ from, air_C }: Pick<ForecastHours, 'from' | 'air_C'>): number {
  return from + air_C.length * 3_600_000;
}
