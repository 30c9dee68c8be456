/** Clear days of a year by month, each for its 21st: [A W/m², B, C]. See clear-day.ashrae-1985.source.md. */
export const clearDays: readonly (readonly [number, number, number])[] = [
  [1230, 0.142, 0.058],
  [1215, 0.144, 0.06],
  [1186, 0.156, 0.071],
  [1136, 0.18, 0.097],
  [1104, 0.196, 0.121],
  [1088, 0.205, 0.134],
  [1085, 0.207, 0.136],
  [1107, 0.201, 0.122],
  [1151, 0.177, 0.092],
  [1192, 0.16, 0.073],
  [1221, 0.149, 0.063],
  [1233, 0.142, 0.057],
];
