import { chainBreaking, chainWorking } from '../../tables/chain.read-2026-11.ts';
import { ropeBreaking } from '../../tables/fibre-rope.read-2026-11.ts';
import { liftingShackle, stainlessShackle } from '../../tables/shackle.read-2026-11.ts';
import { aircraftBreaking, wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import type { Use } from './factor.ts';
import { type PathBears, pathBears } from './load-path.ts';
import type { PartOfPath } from './part.ts';
import { type LoadPart, linesAt } from './part-strength.ts';
import { type PrintedColumn, sizesIn } from './printed.ts';

/** The tables a part is looked up in, if it is. */
function tablesOf(part: PartOfPath): readonly PrintedColumn[] {
  switch (part.kind) {
    case 'rope':
    case 'lashing':
      return ropeBreaking[part.fibre];
    case 'wire':
      return (part.make === '316' ? wireBreaking : aircraftBreaking)[part.laid];
    case 'chain':
      if (part.grade === null || part.metal === 'stainless') return [];
      return part.grade === '30' || part.grade === '40' ? chainBreaking[part.grade] : chainWorking[part.grade];
    case 'shackle':
      return part.make === 'galvanised' ? [] : part.make === 'lifting' ? liftingShackle : stainlessShackle;
    default:
      return [];
  }
}

/** What a path would bear with one part a size up or down, new and measured by nobody. */
export interface Stepped {
  /** the part that is another: the one asked about, or the line it ends */
  readonly at: number;
  readonly part: LoadPart;
  readonly path: PathBears;
}

const sizeOf = (part: PartOfPath): number => ('size_mm' in part ? part.size_mm : 0);

/** Sizes that were measured are those of the part that is there; with another size the tables stand in. */
function inSize(part: LoadPart, size_mm: number): LoadPart | null {
  const fresh = { marked: null, signs: [], years: 0 } as const;
  switch (part.kind) {
    case 'rope':
    case 'lashing':
    case 'wire':
      return { ...part, ...fresh, size_mm };
    case 'chain':
      return { ...part, ...fresh, size_mm, inside_mm: null };
    case 'shackle':
      return { ...part, ...fresh, size_mm, pin_mm: null, jaw_mm: null };
    default:
      return null;
  }
}

/**
 * What a path would bear with part `i` new, the next size up or down that a table has: strength and fit both. Of an
 * ending it is the line that has sizes, the thinner where there are two.
 *
 * @returns  null where the part has no table, or its size is at the end of it
 */
export function stepped(parts: readonly LoadPart[], i: number, way: 'up' | 'down', use: Use): Stepped | null {
  const part = parts[i];
  if (part?.kind === 'ending') {
    const line = linesAt(parts, i).toSorted((a, b) => sizeOf(parts[a]!) - sizeOf(parts[b]!))[0];
    return line === undefined ? null : stepped(parts, line, way, use);
  }
  if (part === undefined || !('size_mm' in part)) return null;
  const sizes = sizesIn(tablesOf(part));
  const size_mm =
    way === 'up'
      ? sizes.find((each) => each > part.size_mm + 0.05)
      : sizes.findLast((each) => each < part.size_mm - 0.05);
  const other = size_mm === undefined ? null : inSize(part, size_mm);
  if (size_mm === undefined || other === null) return null;
  return { at: i, part: other, path: pathBears(parts.with(i, other), use) };
}
