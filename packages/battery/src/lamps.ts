import { requireBetween } from './table-value.ts';

/** Lights of a small boat and what is sold for them. [W] Common practice; strips are for a metre. */
export const lamps = {
  'led-anchor-or-tricolour': { title: 'LED all-round or three-colour masthead light', low: 1.5, likely: 2.5, high: 5 },
  'led-two-colour': { title: 'LED two-colour bow light', low: 1.5, likely: 2.5, high: 4 },
  'led-stern': { title: 'LED stern light', low: 0.8, likely: 1.8, high: 3 },
  'filament-navigation': { title: 'navigation light with a filament', low: 10, likely: 12, high: 25 },
  'led-cabin-spot': { title: 'LED spot in the cabin', low: 0.5, likely: 1.2, high: 2 },
  'led-cabin-strip': { title: 'a metre of LED strip in the cabin', low: 3, likely: 4.5, high: 6 },
  'filament-cabin': { title: 'cabin light with a filament', low: 10, likely: 15, high: 21 },
} as const;
export type Lamp = keyof typeof lamps;

/** Nautical miles each light of a boat under 12 m must be seen. COLREG 1972 rule 22(c): read for sidelight, masthead and all-round light, recalled for the stern light. */
export const seenFrom_nm = { sidelight: 1, stern: 2, masthead: 2, 'all-round': 2 } as const;
export type NavigationLight = keyof typeof seenFrom_nm;

/**
 * Least luminous intensity for a range, I = 3.43·10⁶·T·D²·K^−D with T = 2·10⁻⁷ lux and K = 0.8.
 *
 * @param range_nm  D. [nautical miles], 0.5–6
 * @returns         [cd]
 * Source: COLREG 1972 annex I section 8, read second-hand.
 */
export function intensity_cd(range_nm: number): number {
  requireBetween('range', range_nm, 0.5, 6, 'nmi');
  return 3.43e6 * 2e-7 * range_nm ** 2 * 0.8 ** -range_nm;
}
