import type { PrintedColumn } from '../src/path/printed.ts';

const lifting = 'RR-C-271 and EN 13889, working load of forged alloy and carbon steel lifting shackles';

/** Working load of marked steel lifting shackles, t, by body in mm. Never for stainless. Source: strengths.source.md. */
// biome-ignore format: one printed column, one place here
export const liftingShackle = [
  { table: 'lifting', unit: 't', source: lifting, read: { 5: 0.33, 6: 0.5, 8: 0.75, 9: 1, 11: 1.5, 13: 2, 16: 3.25 }, recalled: {} },
] as const satisfies readonly PrintedColumn[];

/** Breaking load of plain stainless D shackles, body and pin alike, as sold: the low side, recalled. */
// biome-ignore format: one printed column, one place here
export const stainlessShackle = [
  { table: 'as sold', unit: 'kN', source: 'plain 316 D shackles as they are sold, the low side', read: {}, recalled: { 4: 6.5, 5: 10, 6: 14, 8: 26, 10: 40, 12: 56, 14: 76, 16: 100 } },
] as const satisfies readonly PrintedColumn[];

/** Breaking over working load, share left pulled 45° aside, wear that retires it, months between inspections. */
export const shackleRules = { designFactor: 6, sideAt45_pct: 70, wear_pct: 8, inspection_months: 6 } as const;
