import { endingShares } from '../../tables/endings.read-2026-11.ts';
import { ropeBreaking } from '../../tables/fibre-rope.read-2026-11.ts';
import { wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import { bendShare, type Ending, endingShare } from '../path/ending.ts';
import { type Factor, factorOf } from '../path/factor.ts';
import { cellsFor, type PrintedCell, type PrintedColumn, sizesIn } from '../path/printed.ts';

/** What the board hangs on, or what is rove through its tackle: a wire by how it is laid, a rope by its fibre. */
export type BoardLine = keyof typeof wireBreaking | keyof typeof ropeBreaking;
/** How its end is made. */
export type LineEnding = Exclude<
  Ending,
  'square-knot' | 'becket-bend' | 'clove-hitch' | 'figure-eight-end' | 'overhand' | 'short-splice'
>;

export interface HoistLine {
  readonly of: BoardLine;
  readonly size_mm: number;
  /** null: not said; it is then reckoned without, and the answer says so */
  readonly ending: LineEnding | null;
  /** smallest sheave it runs over, at the bottom of its groove; null: not measured */
  readonly sheave_mm: number | null;
}

/** What a line bears under the board, or that no table has its size. */
export type LineStrength =
  | {
      readonly kind: 'known';
      /** new, straight: the lowest printed. [N] */
      readonly printed: PrintedCell;
      /** what its ending leaves; 1 where none is said */
      readonly endingShare: number;
      /** what its smallest sheave leaves; 1 where none was measured, and of rope */
      readonly bendShare: number;
      /** what is left of it as it is used: the worse of ending and bend. [N] */
      readonly breaking_N: number;
      readonly factor: Factor;
      /** [N] */
      readonly working_N: number;
      /** smallest sheave over its own diameter; null: not measured */
      readonly sheaveRatio: number | null;
    }
  | { readonly kind: 'unknown'; readonly sizes_mm: readonly number[] };

export const isWire = (of: BoardLine): of is keyof typeof wireBreaking => of in wireBreaking;
const columnsOf = (of: BoardLine): readonly PrintedColumn[] => (isWire(of) ? wireBreaking[of] : ropeBreaking[of]);

/** Sizes that tables have of a line. [mm] */
export const lineSizes_mm = (of: BoardLine): readonly number[] => sizesIn(columnsOf(of));

/** Endings that a line can have. */
export function endingsOf(of: BoardLine): readonly LineEnding[] {
  const on = isWire(of) ? 'wire' : 'rope';
  const knots = ['square-knot', 'becket-bend', 'clove-hitch', 'figure-eight-end', 'overhand', 'short-splice'];
  return (Object.keys(endingShares) as Ending[]).filter(
    (ending): ending is LineEnding => endingShares[ending].on === on && !knots.includes(ending),
  );
}

/**
 * What a line of a hoist bears: the lowest breaking load printed, less what its ending or its smallest sheave takes,
 * whichever takes more: they are at different places. Over the factor for hoisting.
 */
export function lineStrength({ of, size_mm, ending, sheave_mm }: HoistLine): LineStrength {
  const printed = cellsFor(columnsOf(of), size_mm)[0];
  if (printed === undefined) return { kind: 'unknown', sizes_mm: lineSizes_mm(of) };
  const sheaveRatio = sheave_mm === null ? null : sheave_mm / size_mm;
  const left = ending === null ? 1 : endingShare(ending);
  // the table is for wire; below it, as sharp as it goes
  const bent = sheaveRatio === null || !isWire(of) ? 1 : (bendShare(sheaveRatio) ?? assumedSharpShare);
  const factor = factorOf(isWire(of) ? 'wire' : 'rope', 'hoist');
  const breaking_N = printed.force_N * Math.min(left, bent);
  return {
    kind: 'known',
    printed,
    endingShare: left,
    bendShare: bent,
    breaking_N,
    factor,
    working_N: breaking_N / factor.factor,
    sheaveRatio,
  };
}

/** What a wire keeps round less than its own diameter: less than the table's last, our assumption. */
const assumedSharpShare = 0.4;
