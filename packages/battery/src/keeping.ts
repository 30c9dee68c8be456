import { dataPages } from '../tables/data-pages.read-2026-11.ts';
import type { Chemistry } from './chemistry.ts';
import type { Band } from './rest-charge.ts';
import { requireBetween } from './table-value.ts';

/**
 * Charge lost in a month on the shelf at 20 °C, from a charged battery. [%]
 * AGM: 1 to 3 on data sheets, 3 on a 14 Ah page (25 °C), 5 on a 40 Ah page: the higher end is for planning a recharge. Gel as
 * AGM. Flooded, with antimony in its plates: recalled. LiFePO4 with its own protection running: recalled.
 */
export const selfDischarge_pct_month: Readonly<Record<Chemistry, Band>> = {
  flooded: { low: 4, likely: 6, high: 8 },
  agm: { low: 1, likely: 3, high: 5 },
  gel: { low: 1, likely: 3, high: 5 },
  lifepo4: { low: 1, likely: 2, high: 4 },
};

/** Fall of a flooded battery's specific gravity for each day of its first month in storage below 80 °F. US Army TM 5-1185. */
export const gravityFall_per_day = 0.001;
/** A stored flooded battery is recharged after so many days. US Army TM 5-1185. */
export const rechargeFlooded_days = 30;

/** Charge left of a full battery after some months. [%] Loss doubles for each 10 °C (common practice); 20 °C is the tables'. */
export function leftAfterMonths_pct(chemistry: Chemistry, months: number, battery_C: number): Band {
  requireBetween('months', months, 0, 24, '');
  requireBetween('battery temperature', battery_C, -20, 50, '°C');
  const { low, likely, high } = selfDischarge_pct_month[chemistry];
  const faster = 2 ** ((battery_C - 20) / 10);
  const left = (rate: number) => Math.max(0, 100 - rate * faster * months);
  return { low: left(high), likely: left(likely), high: left(low) };
}

/** The lowest charge that is planned for. [%] Cruising and trade practice. */
export const floor_pct = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 20 : 50);

/**
 * Cycles to a depth until a battery keeps 80 % of its rated capacity: very different from one product to the next.
 *
 * @param depth_pct  [%], 10–100
 * @returns          the middle by the 40 Ah page (lead; logarithm against depth) with the ends of the ranges in print
 */
export function cycleLife(chemistry: Chemistry, depth_pct: number): Band {
  requireBetween('depth of discharge', depth_pct, 10, 100, '%');
  if (chemistry === 'lifepo4') {
    // 2000 to 5000 on a page that does not say how deep; taken for 80 % and in proportion to the depth below
    const share = 80 / Math.max(depth_pct, 30);
    return { low: 2000 * share, likely: 3500 * share, high: 5000 * share };
  }
  const rows = dataPages.agm40.cycles;
  let i = 1;
  while (i < rows.length - 1 && depth_pct < rows[i]![0]) i++;
  const [d0, n0] = rows[i - 1]!;
  const [d1, n1] = rows[i]!;
  const likely = n0 * (n1 / n0) ** ((depth_pct - d0) / (d1 - d0));
  return { low: 0.6 * likely, likely, high: 2 * likely };
}

/**
 * Resistance of a 12 V battery, new, full, 25 °C. [mΩ]
 * For one kind of lead battery resistance × capacity is much the same over the small sizes: 0.19 Ω·Ah by a 14 Ah page
 * (13.5 mΩ), 0.15 by a 7.5 Ah page (20 mΩ), 0.16 to 0.25 by the ranges recalled for 12 to 20 Ah. LiFePO4: 24.5 mΩ for each of
 * five 100 Ah batteries by their owner's claim is 2.4; with the protection's own resistance 0.2 to 3 is what is met.
 */
export function newResistance_mohm(chemistry: Chemistry, nominal_Ah: number): Band {
  requireBetween('capacity', nominal_Ah, 1, 2000, 'Ah');
  const [low, likely, high] = ohmAh[chemistry];
  return { low: (1000 * low) / nominal_Ah, likely: (1000 * likely) / nominal_Ah, high: (1000 * high) / nominal_Ah };
}
const ohmAh: Readonly<Record<Chemistry, readonly [number, number, number]>> = {
  agm: [0.13, 0.19, 0.25],
  gel: [0.16, 0.24, 0.36],
  flooded: [0.16, 0.26, 0.45],
  lifepo4: [0.15, 0.5, 2.5],
};
