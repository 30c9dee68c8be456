/** Battery acid: density against charge, and where it freezes. Source: acid.read-2026-11.source.md. */
type Rows = readonly (readonly [number, number])[];

/** Charge in percent and specific gravity at 80 °F of batteries whose full charge is 1.265 or 1.280; emptiest first. */
// biome-ignore format: one printed table, one line here
export const gravityOfCharge = {
  '1.265': [[0, 1.12], [25, 1.16], [50, 1.19], [75, 1.225], [100, 1.265]],
  '1.280': [[0, 1.13], [25, 1.19], [50, 1.22], [75, 1.25], [100, 1.28]],
} as const satisfies Readonly<Record<string, Rows>>;

/** Half the range that the 1.265 table prints round each of its figures; its 25 % has half of that. */
export const gravityHalfRange = 0.01;

/** Specific gravity and freezing point in °F. */
// biome-ignore format: one printed table, one line here
export const freezing_F: Rows = [[1.0, 32], [1.05, 27], [1.1, 19], [1.15, 5], [1.2, -16], [1.25, -62], [1.28, -90]];
