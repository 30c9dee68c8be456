/** A figure of each size, mm by mm of the size: those seen in stored pages apart from those recalled. */
export interface SizeColumn {
  readonly source: string;
  readonly read: Readonly<Record<number, number>>;
  readonly recalled: Readonly<Record<number, number>>;
}

/** Metric screws M3 to M12, coarse thread: pitch and drills, mm. A cell that is missing is not known. Source: fastenings.source.md. */
// biome-ignore format: one printed column, one place here
export const metricThread = {
  pitch: { source: 'ISO 261, coarse pitch', read: { 3: 0.5, 4: 0.7, 5: 0.8, 6: 1, 8: 1.25, 10: 1.5 }, recalled: { 12: 1.75 } },
  'clearance fine': { source: 'ISO 273, fine', read: { 3: 3.2, 4: 4.3, 5: 5.3, 6: 6.4, 8: 8.4, 10: 10.5, 12: 13 }, recalled: {} },
  'clearance medium': { source: 'ISO 273, medium', read: { 4: 4.5, 5: 5.5, 6: 6.6, 8: 9, 12: 13.5 }, recalled: { 3: 3.4, 10: 11 } },
  'clearance coarse': { source: 'ISO 273, coarse', read: { 5: 5.8, 6: 7, 8: 10, 10: 12, 12: 14.5 }, recalled: { 3: 3.6, 4: 4.8 } },
  tapping: { source: 'ISO 2306, coarse', read: { 4: 3.3, 5: 4.2, 6: 5, 8: 6.8 }, recalled: { 3: 2.5, 10: 8.5, 12: 10.2 } },
  'tapping for stainless': { source: 'a chart of tapping drills for hard metal; other charts run 0.1 to 0.3 mm bigger', read: { 3: 2.55, 4: 3.4, 5: 4.3, 8: 6.9, 10: 8.7 }, recalled: {} },
  'washer plain': { source: 'ISO 7089, outer diameter', read: {}, recalled: { 3: 7, 4: 9, 5: 10, 6: 12, 8: 16, 10: 20, 12: 24 } },
  'washer large': { source: 'ISO 7093-1, outer diameter', read: {}, recalled: { 3: 9, 4: 12, 5: 15, 6: 18, 8: 24, 10: 30, 12: 37 } },
  'across flats': { source: 'ISO 4017 and ISO 4032, hexagon', read: {}, recalled: { 3: 5.5, 4: 7, 5: 8, 6: 10, 8: 13, 10: 16, 12: 18 } },
} as const satisfies Readonly<Record<string, SizeColumn>>;

/** Inch screws met on boats: name, threads to the inch and diameter in mm (ASME B1.1, recalled). */
// biome-ignore format: one screw, one line
export const inchThreads = [
  { name: 'No. 8-32', size_mm: 4.166, perInch: 32 },
  { name: 'No. 10-24', size_mm: 4.826, perInch: 24 },
  { name: 'No. 10-32', size_mm: 4.826, perInch: 32 },
  { name: '1/4-20', size_mm: 6.35, perInch: 20 },
  { name: '5/16-18', size_mm: 7.9375, perInch: 18 },
] as const;
