import { dewPoint_C } from '#sky';

/** Least margin of a surface over the dew point for paint and varnish. [°C] ISO 8502-4 and ISO 12944-7, from secondary pages. */
export const leastDewMargin_C = 3;
/** Most relative humidity for paint. [%] ISO 12944-7 practice, from secondary pages; varnish tins often say 80. */
export const mostCoatingHumidity_pct = 85;

/**
 * Margin of a surface over the dew point of the air about it, and whether paint may go on.
 *
 * @param air_C        [°C], −60–60
 * @param humidity_pct [%], over 0–100
 * @param surface_C    [°C]
 */
export function coatingMargin(
  air_C: number,
  humidity_pct: number,
  surface_C: number,
): { readonly dewPoint_C: number; readonly margin_C: number; readonly mayCoat: boolean } {
  const dewPoint = dewPoint_C(air_C, humidity_pct);
  const margin_C = surface_C - dewPoint;
  return {
    dewPoint_C: dewPoint,
    margin_C,
    mayCoat: margin_C >= leastDewMargin_C && humidity_pct <= mostCoatingHumidity_pct,
  };
}
