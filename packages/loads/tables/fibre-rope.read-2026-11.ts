import type { PrintedColumn } from '../src/path/printed.ts';

const american = 'Cordage Institute type tables by inch sizes (1/4 to 5/8 in, called 6 to 16 mm), new and dry';
const british = 'BS 4928 and EN 696, 697, 699, now EN ISO 1140, 1141, 1346: three-strand, new and dry';
const mooring = 'Mooring Equipment Guidelines, 2nd edition, table 6.5';
const knotBook = 'one rope maker’s figures as a knot book prints them';

/** Least breaking load of new dry rope, by fibre and lay. Source: strengths.source.md. */
// biome-ignore format: one printed column, one place here
export const ropeBreaking = {
  polyester: [
    { table: 'american', unit: 'kN', source: american, read: { 6: 5.85, 8: 9.1, 10: 12.9, 12: 22.6 }, recalled: { 14: 28.6, 16: 34.8 } },
    { table: 'british', unit: 'kN', source: british, read: { 8: 10, 10: 15.59, 12: 22.26, 14: 31.19, 16: 39.81 }, recalled: { 4: 2.89, 5: 3.92, 6: 5.54 } },
    { table: 'BS of four', unit: 't', source: mooring, read: { 8: 1, 10: 1.6, 12: 2.3, 14: 3.2, 16: 4.1 }, recalled: {} },
    { table: 'JIS of four', unit: 't', source: mooring, read: { 8: 1, 12: 2.2, 16: 3.8 }, recalled: {} },
  ],
  nylon: [
    { table: 'american', unit: 'kN', source: american, read: { 6: 6.63, 8: 10.23, 10: 14.86, 12: 25.58, 16: 41.59 }, recalled: { 14: 32 } },
    { table: 'british', unit: 'kN', source: british, read: {}, recalled: { 4: 3.14, 5: 4.9, 6: 7.35, 8: 13.24, 10: 20.4, 12: 29.42, 14: 40.21, 16: 51.98 } },
    { table: 'knot book', unit: 'kgf', source: knotBook, read: { 6: 780, 8: 1800, 10: 2800, 14: 4900 }, recalled: {} },
  ],
  polypropylene: [
    { table: 'american', unit: 'kN', source: american, read: { 6: 5, 8: 7.61, 10: 10.8, 12: 16.81, 14: 20.4, 16: 24.8 }, recalled: {} },
    { table: 'british', unit: 'kN', source: british, read: {}, recalled: { 4: 2.45, 5: 3.43, 6: 5.39, 8: 9.41, 10: 13.97, 12: 19.91, 14: 27.36, 16: 34.32 } },
    { table: 'knot book', unit: 'kgf', source: knotBook, read: { 6: 480, 10: 1430, 12: 2030, 14: 2790 }, recalled: {} },
  ],
  'polyester-braid': [
    { table: 'as sold', unit: 'kN', source: 'double-braid polyester as it is sold, the low side', read: {}, recalled: { 4: 3.8, 5: 6, 6: 8.5, 8: 14.5, 10: 22, 12: 32, 14: 42, 16: 52 } },
    { table: 'knot book', unit: 'kgf', source: knotBook, read: { 6: 1230, 8: 2000, 12: 4000, 14: 6000 }, recalled: {} },
  ],
  'polyethylene-braid': [
    { table: 'as sold', unit: 'kN', source: 'high-modulus polyethylene in twelve strands as it is sold, the low side', read: {}, recalled: { 4: 13, 5: 20, 6: 30, 8: 52, 10: 78, 12: 110, 14: 140, 16: 180 } },
  ],
} as const satisfies Readonly<Record<string, readonly PrintedColumn[]>>;

/** Largest working loads of a rope table, to show beside ours: its factor falls from 12 to 9 with size. */
// biome-ignore format: one printed column, one place here
export const ropeWorking = {
  polyester: [{ table: 'rope table', unit: 'kN', source: american, read: { 10: 1.07 }, recalled: {} }],
  nylon: [{ table: 'rope table', unit: 'lbf', source: american, read: { 10: 278, 12: 525 }, recalled: {} }],
  polypropylene: [{ table: 'rope table', unit: 'lbf', source: american, read: { 10: 244, 12: 420 }, recalled: {} }],
  'polyester-braid': [],
  'polyethylene-braid': [],
} as const satisfies Readonly<Record<keyof typeof ropeBreaking, readonly PrintedColumn[]>>;

/** Share of the strength of dry nylon that wet nylon has (seamanship notes; others say 85 to 90 %: the lower is taken). */
export const wetNylonShare = 0.8;
