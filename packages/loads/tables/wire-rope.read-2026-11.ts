import type { PrintedColumn } from '../src/path/printed.ts';

const trade = 'trade tables of 316 stainless wire, about 1570 N/mm²';
const aircraft = 'FAA AC 43.13-1B table 7-3, corrosion-resistant aircraft cable (MIL-W-83420 composition B)';

/** Least breaking load of new wire, by how it is laid. Source: strengths.source.md. */
// biome-ignore format: one printed column, one place here
export const wireBreaking = {
  '1x19': [{ table: 'trade', unit: 'kN', source: trade, read: { 3: 7.06, 4: 12.6, 6: 28.22 }, recalled: { 2: 3.14, 2.5: 4.9, 5: 19.66, 7: 34.81, 8: 45.5 } }],
  '7x7': [{ table: 'trade', unit: 'kN', source: trade, read: {}, recalled: { 2: 2.23, 2.5: 3.49, 3: 5.02, 4: 8.92, 5: 13.9, 6: 20.1, 7: 27.3, 8: 35.7 } }],
  '7x19': [{ table: 'trade', unit: 'kN', source: trade, read: {}, recalled: { 2: 2.1, 2.5: 3.24, 3: 4.66, 4: 8.29, 5: 12.94, 6: 18.63, 7: 25.4, 8: 33.15 } }],
} as const satisfies Readonly<Record<string, readonly PrintedColumn[]>>;

/** The same of aircraft cable by inch sizes (1/16 to 5/16 in): another wire, 35 to 50 % stronger. It never serves 316. */
// biome-ignore format: one printed column, one place here
export const aircraftBreaking = {
  '1x19': [],
  '7x7': [{ table: 'aircraft', unit: 'lbf', source: aircraft, read: { 1.5875: 480, 2.38125: 920 }, recalled: {} }],
  '7x19': [{ table: 'aircraft', unit: 'lbf', source: aircraft, read: { 2.38125: 920, 3.175: 1760, 4.7625: 3700, 6.35: 6400, 7.9375: 9000 }, recalled: { 3.96875: 2400, 5.55625: 5000 } }],
} as const satisfies Readonly<Record<keyof typeof wireBreaking, readonly PrintedColumn[]>>;

/**
 * Factors of least breaking force, F = K·d²·R (EN 12385-4): K2 with a steel rope core, K3 with a steel strand core, C2 the
 * metallic area over d². For 7x7 and 7x19 those of 6x7 and 6x19M stand; for 1x19 a fit to the printed 3, 4 and 6 mm.
 */
export const breakingFactors = {
  '1x19': { of: '1x19, fitted', K2: 0.5, K3: null, C2: null },
  '7x7': { of: '6x7', K2: 0.359, K3: 0.388, C2: 0.432 },
  '7x19': { of: '6x19M', K2: 0.332, K3: 0.362, C2: null },
} as const;
