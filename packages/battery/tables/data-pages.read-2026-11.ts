/**
 * Two data pages of valve-regulated (AGM) batteries, as printed; capacities at 25 °C in Ah against hours of discharge, the
 * share of the 25 °C capacity in percent against °C, what is left after months of storage. Source:
 * data-pages.read-2026-11.source.md.
 */
type Rows = readonly (readonly [number, number])[];

export interface DataPage {
  readonly nominal_Ah: number;
  /** hours of discharge and Ah given, fastest first */
  readonly rates: Rows;
  /** temperature and percent of the capacity at 25 °C, coldest first */
  readonly heat: Rows;
  /** months and percent left, and the temperature it holds for */
  readonly stored: Rows;
  readonly stored_C: number;
  /** full, 25 °C; null where the page gives a bound only */
  readonly resistance_mohm: number | null;
  /** at 25 °C */
  readonly cyclic_V: readonly [number, number];
  readonly float_V: readonly [number, number];
  readonly most_A: number;
  /** depth in percent and cycles, deepest first; empty where the page gives none */
  readonly cycles: Rows;
}

// biome-ignore format: one printed list, one line here
export const dataPages = {
  agm14: {
    nominal_Ah: 14,
    rates: [[1, 8.4], [5, 12], [10, 12.8], [20, 14]],
    heat: [[-15, 65], [0, 85], [25, 100], [40, 102]],
    stored: [[0, 100], [3, 91], [6, 82], [12, 64]],
    stored_C: 25,
    resistance_mohm: 13.5,
    cyclic_V: [14.1, 14.4],
    float_V: [13.5, 13.8],
    most_A: 5.6,
    cycles: [],
  },
  agm40: {
    nominal_Ah: 40,
    rates: [[1, 24], [5, 34], [10, 37.2], [20, 40]],
    heat: [[-10, 74], [10, 90], [25, 100], [30, 103]],
    stored: [[0, 100], [1, 95], [2, 90], [3, 81]],
    stored_C: 20,
    resistance_mohm: null,
    cyclic_V: [14.7, 15],
    float_V: [13.7, 13.9],
    most_A: 16,
    cycles: [[100, 200], [50, 600], [30, 1500]],
  },
} as const satisfies Readonly<Record<string, DataPage>>;

export type DataPageName = keyof typeof dataPages;
