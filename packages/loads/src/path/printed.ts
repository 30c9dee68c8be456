import { standardGravity_m_s2 } from '#units';
import type { Source } from '#working';

/** What a table of strengths prints: numbers as printed, by size in mm. A size that is not there is not known: none is interpolated. */
export interface PrintedColumn {
  /** a word of its own among the columns for the same gear */
  readonly table: string;
  readonly unit: keyof typeof newtonsIn;
  /** size in mm and figure, seen in stored pages */
  readonly read: Readonly<Record<number, number>>;
  /** size in mm and figure, recalled and not seen */
  readonly recalled: Readonly<Record<number, number>>;
  readonly source: string;
}

/** Newtons in the units of the tables; a tonne and a kilogram stand for the weight of them. */
export const newtonsIn = {
  kN: 1000,
  kgf: standardGravity_m_s2,
  lbf: 4.4482216152605,
  kg: standardGravity_m_s2,
  t: 9806.65,
} as const;

export interface PrintedCell {
  readonly column: PrintedColumn;
  readonly printed: number;
  readonly force_N: number;
  readonly seen: 'read second-hand' | 'recalled';
}

/** Sizes are looked up by the figure printed; a twentieth of a millimetre is what a calliper is out by. */
const near = (a: number, b: number) => Math.abs(a - b) <= 0.05;

/** Every cell that columns have for a size, the lowest first; empty when no table has it. */
export function cellsFor(columns: readonly PrintedColumn[], size_mm: number): readonly PrintedCell[] {
  return columns
    .flatMap((column) =>
      (['read', 'recalled'] as const).flatMap((how) =>
        Object.entries(column[how])
          .filter(([size]) => near(Number(size), size_mm))
          .map(
            ([, printed]): PrintedCell => ({
              column,
              printed,
              force_N: printed * newtonsIn[column.unit],
              seen: how === 'read' ? 'read second-hand' : 'recalled',
            }),
          ),
      ),
    )
    .sort((a, b) => a.force_N - b.force_N);
}

/** The sizes columns have between them, in mm, smallest first. */
export function sizesIn(columns: readonly PrintedColumn[]): readonly number[] {
  const all = columns.flatMap(({ read, recalled }) => [...Object.keys(read), ...Object.keys(recalled)].map(Number));
  return [...new Set(all)].sort((a, b) => a - b);
}

/** The source of a cell, marked as it was seen. */
export const sourceOf = ({ column, seen }: PrintedCell): Source => ({ title: column.source, seen });
