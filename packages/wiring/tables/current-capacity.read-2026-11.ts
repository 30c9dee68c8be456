/**
 * Current a conductor may carry for as long as it likes, in A, by its size and the temperature its insulation bears in °C.
 * Source: current-capacity.read-2026-11.source.md.
 */
export interface PrintedRow {
  readonly size: number | string;
  /** column and figure read in stored pages */
  readonly found: Readonly<Record<string | number, number>>;
  /** column and figure recalled, not seen: the standard decides */
  readonly recalled: Readonly<Record<string | number, number>>;
}

/** By area in mm²; the column 85 stands for 85 to 90 °C (ISO 10133:2012 and ISO 13297, tables A.1). */
// biome-ignore format: one printed line, one line here
export const isoCapacity: readonly PrintedRow[] = [
  { size: 0.75, found: { 70: 10, 85: 12, 105: 16 }, recalled: { 60: 6, 125: 20, 200: 25 } },
  { size: 1, found: { 70: 14, 85: 18, 105: 20 }, recalled: { 60: 8, 125: 25, 200: 35 } },
  { size: 1.5, found: { 70: 18, 85: 21, 105: 25 }, recalled: { 60: 12, 125: 30, 200: 40 } },
  { size: 2.5, found: { 70: 25, 85: 30, 105: 35 }, recalled: { 60: 17, 125: 40, 200: 45 } },
  { size: 4, found: { 70: 35, 85: 40, 105: 45 }, recalled: { 60: 22, 125: 50, 200: 55 } },
  { size: 6, found: { 70: 45, 85: 50, 105: 60 }, recalled: { 60: 29, 125: 70, 200: 75 } },
  { size: 10, found: { 70: 65, 85: 70, 105: 90 }, recalled: { 60: 40, 125: 100, 200: 120 } },
  { size: 16, found: { 70: 90, 85: 100, 105: 130 }, recalled: { 60: 54, 125: 150, 200: 170 } },
  { size: 25, found: { 70: 120, 85: 140 }, recalled: { 60: 71, 105: 170, 125: 185, 200: 200 } },
  { size: 35, found: { 70: 160, 105: 210 }, recalled: { 60: 87, 85: 185, 125: 225, 200: 240 } },
  { size: 50, found: { 85: 230, 105: 270 }, recalled: { 60: 105, 70: 210, 125: 300, 200: 325 } },
  { size: 70, found: {}, recalled: { 60: 135, 70: 265, 85: 285, 105: 330, 125: 360, 200: 375 } },
  { size: 95, found: {}, recalled: { 60: 165, 70: 310, 85: 330, 105: 390, 125: 410, 200: 430 } },
  { size: 120, found: {}, recalled: { 60: 190, 70: 360, 85: 400, 105: 450, 125: 480, 200: 520 } },
  { size: 150, found: {}, recalled: { 60: 220, 70: 380, 85: 430, 105: 475, 125: 520, 200: 560 } },
];

/** By gauge (33 CFR 183.425 table 5). */
// biome-ignore format: one printed line, one line here
export const gaugeCapacity: readonly PrintedRow[] = [
  { size: '18', found: { 75: 10, 80: 15, 125: 25 }, recalled: { 60: 10, 90: 20, 105: 20, 200: 25 } },
  { size: '16', found: { 60: 15, 75: 15, 80: 20, 90: 25, 105: 25, 125: 30 }, recalled: { 200: 35 } },
  { size: '14', found: { 60: 20, 75: 20, 80: 25, 90: 30, 105: 35, 125: 40, 200: 45 }, recalled: {} },
  { size: '12', found: { 60: 25, 75: 25, 80: 35, 90: 40, 105: 45, 200: 55 }, recalled: { 125: 50 } },
  { size: '10', found: { 60: 40, 75: 40, 80: 50, 90: 55, 105: 60, 125: 70, 200: 70 }, recalled: {} },
  { size: '8', found: { 60: 55, 75: 65, 80: 70, 90: 70, 105: 80, 125: 90, 200: 100 }, recalled: {} },
  { size: '6', found: { 75: 95, 90: 100 }, recalled: { 60: 80, 80: 100, 105: 120, 125: 125, 200: 135 } },
  { size: '4', found: { 60: 105, 75: 125, 80: 130, 90: 135, 105: 160, 125: 170, 200: 180 }, recalled: {} },
  { size: '3', found: {}, recalled: { 60: 120, 75: 145, 80: 150, 90: 155, 105: 180, 125: 195, 200: 210 } },
  { size: '2', found: {}, recalled: { 60: 140, 75: 170, 80: 175, 90: 180, 105: 210, 125: 225, 200: 240 } },
  { size: '1', found: {}, recalled: { 60: 165, 75: 195, 80: 210, 90: 210, 105: 245, 125: 265, 200: 280 } },
  { size: '1/0', found: {}, recalled: { 60: 195, 75: 230, 80: 245, 90: 245, 105: 285, 125: 305, 200: 325 } },
  { size: '2/0', found: {}, recalled: { 60: 225, 75: 265, 80: 285, 90: 285, 105: 330, 125: 355, 200: 370 } },
  { size: '3/0', found: {}, recalled: { 60: 260, 75: 310, 80: 330, 90: 330, 105: 385, 125: 410, 200: 430 } },
  { size: '4/0', found: {}, recalled: { 60: 300, 75: 360, 80: 385, 90: 385, 105: 445, 125: 475, 200: 510 } },
];

/** The 105 °C column as a maker's battery manual prints it, by area: higher than the standards' own table, and not used. */
export const manualCapacity105: Readonly<Record<number, number>> = { 2.5: 45, 4: 55, 6: 75, 10: 120, 16: 170 };

/** Share left in an engine space (60 °C taken by ISO 10133 annex A, 50 °C by the note to table 5), by insulation. */
export const isoEngineShare: PrintedRow = {
  size: 'any',
  found: {},
  recalled: { 70: 0.75, 85: 0.82, 105: 0.86, 125: 0.89, 200: 1 },
};
export const gaugeEngineShare: PrintedRow = {
  size: 'any',
  found: { 105: 0.85 },
  recalled: { 60: 0.58, 75: 0.75, 80: 0.78, 90: 0.82, 125: 0.89, 200: 1 },
};

/** Share left where conductors lie together, by the least number of them (ISO 13297 table A.2). */
export const isoBundleShare = [
  { least: 1, share: 1 },
  { least: 4, share: 0.7 },
  { least: 7, share: 0.6 },
  { least: 25, share: 0.5 },
] as const;
/** The same for gauges: the bundle table of UL 1426 is these shares of table 5. 25 and more is recalled. */
export const gaugeBundleShare = [
  { least: 1, share: 1 },
  { least: 3, share: 0.7 },
  { least: 4, share: 0.6 },
  { least: 7, share: 0.5 },
  { least: 25, share: 0.4 },
] as const;
