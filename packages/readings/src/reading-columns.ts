/** What a column of readings is of, besides the time. */
export type ReadColumn = 'volts' | 'current' | 'air';
/** In the order they stand in a block. */
export const readColumns: readonly ReadColumn[] = ['volts', 'current', 'air'];

/** Readings of one battery in columns of one length. In a column NaN stands where nothing was read at that moment. */
export interface ReadingColumns {
  /** from 1970, each later than the one before. [ms] */
  readonly at: Float64Array;
  /** null: no such column was read. [V] */
  readonly volts: Float32Array | null;
  /** positive out of the battery. [A] */
  readonly current: Float32Array | null;
  /** [°C] */
  readonly air: Float32Array | null;
}

/** The columns that are there. */
export function columnsThere(columns: ReadingColumns): ReadColumn[] {
  return readColumns.filter((name) => columns[name] !== null);
}
