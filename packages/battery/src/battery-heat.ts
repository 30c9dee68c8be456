import { dataPages } from '../tables/data-pages.read-2026-11.ts';
import type { Chemistry } from './chemistry.ts';
import type { Band } from './rest-charge.ts';
import { requireBetween, tableValue } from './table-value.ts';

/** LiFePO4: share of the 25 °C capacity, from memory of data sheets. [°C, %] */
const lithiumShare_pct = [
  [-20, 60],
  [0, 85],
  [25, 100],
  [45, 102],
] as const;

/**
 * Share of its 25 °C capacity that a battery gives when colder or warmer.
 *
 * @param battery_C   [°C], −20–50
 * @returns           [%]. Lead: the mean of two AGM data pages, which stand in for flooded and gel; the low end is the recalled
 *                    loss of 1 % for each °C below 25. LiFePO4: recalled
 * @throws RangeError outside the range
 *
 * Not covered: that it is not lost, only not to be had until it is warm again; age.
 */
export function capacityShare_pct(chemistry: Chemistry, battery_C: number): Band {
  requireBetween('battery temperature', battery_C, -20, 50, '°C');
  if (chemistry === 'lifepo4') {
    const likely = tableValue(lithiumShare_pct, battery_C);
    return { low: likely - 10, likely, high: Math.min(102, likely + 7) };
  }
  const pages = [dataPages.agm14, dataPages.agm40].map(({ heat }) =>
    tableValue(heat, battery_C, battery_C < 25 ? 'slope drawn on' : 'end value'),
  );
  const likely = (pages[0]! + pages[1]!) / 2;
  return {
    low: battery_C < 25 ? Math.min(likely, ...pages, 100 - (25 - battery_C)) : Math.min(likely, 100),
    likely,
    high: Math.max(...pages),
  };
}
