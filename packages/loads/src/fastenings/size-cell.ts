import { metricThread, type SizeColumn } from '../../tables/threads.read-2026-11.ts';

/** Metric screws there are columns for, by their diameter in mm. */
export const screwSizes_mm = [3, 4, 5, 6, 8, 10, 12] as const;
export type ScrewSize = `M${(typeof screwSizes_mm)[number]}`;

/** A column of figures by screw. */
export type ThreadColumn = keyof typeof metricThread;

export interface SizeCell {
  readonly value: number;
  readonly seen: 'read second-hand' | 'recalled';
  readonly source: string;
}

/** The names of the screws there are, smallest first. */
export const screwNames: readonly ScrewSize[] = screwSizes_mm.map((size) => `M${size}` as const);

/** Diameter over the thread. [mm] */
export const screwSize_mm = (size: ScrewSize): number => Number(size.slice(1));

/** What a column prints for a screw, and how it was come by; null where it prints nothing. */
export function sizeCell(column: ThreadColumn, size: ScrewSize): SizeCell | null {
  const { source, read, recalled }: SizeColumn = metricThread[column];
  const size_mm = screwSize_mm(size);
  const printed = read[size_mm];
  if (printed !== undefined) return { value: printed, seen: 'read second-hand', source };
  const remembered = recalled[size_mm];
  return remembered === undefined ? null : { value: remembered, seen: 'recalled', source };
}

/** A cell of a column that has one for every screw. @throws RangeError where the table has lost it */
export function requiredCell(column: ThreadColumn, size: ScrewSize): SizeCell {
  const cell = sizeCell(column, size);
  if (!cell) throw new RangeError(`${column} of ${size} is not in the table of threads`);
  return cell;
}
