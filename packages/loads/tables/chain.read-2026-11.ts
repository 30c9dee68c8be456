import type { PrintedColumn } from '../src/path/printed.ts';

const din = 'DIN 766 and ISO 4565, calibrated short link';
const writer = 'a technical writer’s table of DIN 766 and ISO 4565 (four times the working load)';

/** Least breaking load of new short-link chain, by grade. Source: strengths.source.md. */
// biome-ignore format: one printed column, one place here
export const chainBreaking = {
  '30': [
    { table: 'DIN', unit: 'kN', source: din, read: { 6: 18, 8: 32, 10: 50 }, recalled: { 5: 12.5, 7: 25 } },
    { table: 'writer', unit: 'kN', source: writer, read: { 6: 16, 8: 30, 10: 50 }, recalled: {} },
  ],
  '40': [
    { table: 'DIN', unit: 'kN', source: din, read: { 6: 20, 8: 40, 10: 63 }, recalled: { 5: 16, 7: 31 } },
    { table: 'writer', unit: 'kN', source: writer, read: { 10: 62 }, recalled: {} },
  ],
} as const satisfies Readonly<Record<string, readonly PrintedColumn[]>>;

const cfr = '49 CFR 393.108, working load limits of chain by inch sizes';
/** Working load limits by inch sizes (1/4, 5/16, 3/8 in, which the rule calls 7, 8 and 10 mm). */
// biome-ignore format: one printed column, one place here
export const chainWorking = {
  '30': [
    { table: 'rule', unit: 'kg', source: cfr, read: { 6.35: 580, 9.525: 1200 }, recalled: { 7.9375: 860 } },
    { table: 'rule in pounds', unit: 'lbf', source: cfr, read: { 6.35: 1300, 7.9375: 1900, 9.525: 2650 }, recalled: {} },
  ],
  '43': [
    { table: 'rule', unit: 'kg', source: cfr, read: { 6.35: 1180, 7.9375: 1770, 9.525: 2450 }, recalled: {} },
    { table: 'rule in pounds', unit: 'lbf', source: cfr, read: { 6.35: 2600, 7.9375: 3900, 9.525: 5400 }, recalled: {} },
  ],
  '70': [{ table: 'rule', unit: 'kg', source: cfr, read: { 6.35: 1430, 7.9375: 2130 }, recalled: { 9.525: 2990 } }],
} as const satisfies Readonly<Record<string, readonly PrintedColumn[]>>;

/** Mass of short-link chain in air, kg/m, by size in mm (the same writer’s table; 5 mm recalled). */
export const chainMass_kg_per_m = { read: { 6: 0.85, 7: 1.1, 8: 1.45, 10: 2.3 }, recalled: { 5: 0.5 } } as const;
