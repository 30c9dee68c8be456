/**
 * A load path as a whole: what each part bears of a load, which is the weakest, and whether the path holds.
 *
 * What is not known is never passed over: a part of unknown strength, and a place where nothing is said of how two parts
 * are joined, each leave the path unknown at that place, whatever the others bear.
 */
import type { Use } from './factor.ts';
import { fitOf, type Misfit } from './fit.ts';
import type { PartOfPath } from './part.ts';
import { type LoadPart, linesAt, type PartStrength, strengthAt } from './part-strength.ts';

export interface LoadCase {
  readonly name: string;
  readonly force_N: number;
  /** the wind it is for, with whose square it grows; null: it is not the wind’s */
  readonly wind_kn: number | null;
}

export interface PartBears {
  readonly strength: PartStrength;
  /** times the load of the path: more than 1 where a block turns a line, less behind a winch; null: not known */
  readonly times: number | null;
}

/** A place between two parts where nothing is said of how they are joined. */
export interface Gap {
  /** the first of the two parts */
  readonly after: number;
  readonly because: string;
  readonly right: string;
}

export interface PathBears {
  /** in the order of the path */
  readonly parts: readonly PartBears[];
  /** the part that reaches its working load first, of those that are known; null: none is */
  readonly weakest: number | null;
  /** the load at which it does; the path bears no more, and may bear less where it is not known. [N] */
  readonly atMost_N: number | null;
  /** parts whose strength, or whose load, is not known */
  readonly unknown: readonly number[];
  /** parts that are to be replaced, whatever the load */
  readonly replace: readonly number[];
  readonly gaps: readonly Gap[];
  /** what does not fit what */
  readonly misfits: readonly Misfit[];
  /** parts that nobody looked at: they are counted as sound */
  readonly notLookedAt: readonly number[];
}

export type PathVerdict =
  | { readonly kind: 'holds' }
  /** parts over their working load, to be replaced, or that do not go together */
  | { readonly kind: 'does not hold'; readonly parts: readonly number[] }
  | { readonly kind: 'unknown'; readonly places: number };

export interface CaseBorne {
  readonly verdict: PathVerdict;
  /** share of its working load that each part bears, 1 at the working load; null: not known, or it bears with its eye */
  readonly shares: readonly (number | null)[];
  /** wind at which the first part reaches its working load; null: not the wind’s load, or no part is known. [kn] */
  readonly goodTo_kn: number | null;
}

/** Times its tension that a line presses on what turns it by an angle: 0 straight through, 2 right round. */
export const turnedTimes = (turn_deg: number): number => 2 * Math.sin((turn_deg * Math.PI) / 360);

/**
 * Times the load of the path that each part bears. A block that a rope or wire runs over (it stands straight before the
 * block) bears what the line presses on it, and so does all that follows as what holds the block; a rope or wire straight
 * after it is the line that runs on, and bears the load once. A turn that was not measured is taken for one right round,
 * and no block is taken to bear less than its line. A hand behind a winch bears the load over the winch’s ratio.
 */
export function timesOf(parts: readonly PartOfPath[]): readonly (number | null)[] {
  let held = 1;
  let runs = false;
  let ratio: number | null = 1;
  return parts.map((part, i) => {
    const overBlock = parts[i - 1]?.kind === 'block';
    if (part.kind === 'rope' || part.kind === 'wire') {
      if (runs && overBlock) held = 1;
      runs = true;
    } else if (part.kind === 'block') {
      if (runs) held = Math.max(held, turnedTimes(part.turn_deg ?? 180), 1);
    } else runs = false;
    if (part.kind === 'winch') ratio = part.ratio;
    if (part.kind === 'hand') return ratio === null ? null : held / ratio;
    return held;
  });
}

/** Parts that a line needs no knot, splice or terminal to hold to. */
const takesLine = (part: PartOfPath): boolean =>
  part.kind === 'ending' ||
  part.kind === 'block' ||
  part.kind === 'winch' ||
  part.kind === 'hand' ||
  part.kind === 'lashing' ||
  (part.kind === 'fitting' && (part.what === 'cleat' || part.what === 'post'));

function gapsOf(parts: readonly LoadPart[]): readonly Gap[] {
  return parts.slice(1).flatMap((part, i): Gap[] => {
    const before = parts[i]!;
    const ofLine = [before, part].find((each) => each.kind === 'rope' || each.kind === 'wire');
    if (ofLine === undefined) return [];
    const other = ofLine === before ? part : before;
    if (takesLine(other)) return [];
    const thimbled = other.kind === 'thimble' && linesEndedAt(parts, ofLine === before ? i + 2 : i - 1);
    if (thimbled) return [];
    return [
      {
        after: i,
        because: `nothing is said of how the ${ofLine.kind} ends at the ${other.kind}`,
        right: 'its knot, splice or terminal, between the two',
      },
    ];
  });
}

/** An ending on the far side of a thimble ends the line all the same. */
const linesEndedAt = (parts: readonly LoadPart[], i: number): boolean =>
  parts[i]?.kind === 'ending' && linesAt(parts, i).length > 0;

/**
 * What a load path bears.
 *
 * @param parts  from what pulls to what holds, one or more
 * @param use    what the path is for: it sets how far below breaking its parts may work
 */
export function pathBears(parts: readonly LoadPart[], use: Use): PathBears {
  const times = timesOf(parts);
  const bears = parts.map((_, i): PartBears => ({ strength: strengthAt(parts, i, use), times: times[i]! }));
  let weakest: number | null = null;
  let atMost_N: number | null = null;
  bears.forEach(({ strength, times: k }, i) => {
    if (strength.kind !== 'known' || k === null || k <= 0) return;
    const load_N = strength.working_N / k;
    if (atMost_N === null || load_N < atMost_N) [weakest, atMost_N] = [i, load_N];
  });
  const where = (is: (each: PartBears) => boolean) => bears.flatMap((each, i) => (is(each) ? [i] : []));
  return {
    parts: bears,
    weakest,
    atMost_N,
    unknown: where(
      ({ strength, times: k }) => strength.kind === 'unknown' || (strength.kind === 'known' && k === null),
    ),
    replace: where(({ strength }) => strength.kind === 'replace'),
    gaps: gapsOf(parts),
    misfits: fitOf(parts),
    notLookedAt: parts.flatMap(({ signs, kind }, i) => (signs === null && kind !== 'hand' ? [i] : [])),
  };
}

/** How a path bears one load: whether it holds, each part’s share, and the wind it is good to. */
export function caseBorne(path: PathBears, { force_N, wind_kn }: LoadCase): CaseBorne {
  const shares = path.parts.map(({ strength, times }) =>
    strength.kind === 'known' && times !== null ? (force_N * times) / strength.working_N : null,
  );
  const over = shares.flatMap((each, i) => (each !== null && each > 1 ? [i] : []));
  const apart = path.misfits.flatMap(({ gravity, at }) => (gravity === 'does not go together' ? [...at] : []));
  const failed = [...new Set([...over, ...path.replace, ...apart])].sort((a, b) => a - b);
  const places = placesUnknown(path);
  return {
    verdict:
      failed.length > 0
        ? { kind: 'does not hold', parts: failed }
        : places > 0
          ? { kind: 'unknown', places }
          : { kind: 'holds' },
    shares,
    goodTo_kn: wind_kn === null || path.atMost_N === null ? null : wind_kn * Math.sqrt(path.atMost_N / force_N),
  };
}

/** At how many places a path is unknown: parts, joints that nothing is said of, and fits that were not measured. */
export const placesUnknown = ({ unknown, gaps, misfits }: PathBears): number =>
  unknown.length + gaps.length + misfits.filter(({ gravity }) => gravity === 'not known').length;
