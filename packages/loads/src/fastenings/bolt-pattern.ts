import type { Giving } from './holding.ts';

/** A pull on a fitting, and how it stands. */
export interface FittingPull {
  readonly pull_N: number;
  /** from straight out of the surface, 0, to along it, 90. [°] */
  readonly angle_deg: number;
  /** height of the pull over the surface: the part along it tips the fitting. [mm] */
  readonly height_mm: number;
  /** between the two rows of fasteners, along the pull. [mm] */
  readonly rows_mm: number;
}

/** What the hardest pulled fastener of a pattern has to bear. [N] */
export interface FastenerShare {
  readonly out_N: number;
  readonly along_N: number;
}

/** Numbers a pattern of two rows is made with. */
export const patternCounts = [2, 4, 6, 8, 10, 12] as const;

/**
 * The share of the hardest pulled of n fasteners in two rows across the pull. A fitting tips over its front row: the back row
 * takes what the height of the pull asks, the pull straight out is shared by all, and so is the part along the surface.
 *
 * @param count  fasteners in all, even, ≥ 2
 */
export function hardestShare({ pull_N, angle_deg, height_mm, rows_mm }: FittingPull, count: number): FastenerShare {
  const angle = (angle_deg * Math.PI) / 180;
  const out_N = pull_N * Math.cos(angle);
  const along_N = pull_N * Math.sin(angle);
  return { out_N: out_N / count + (along_N * height_mm) / rows_mm / (count / 2), along_N: along_N / count };
}

/** Working load of a way of giving. @param factor  breaking over working of the path, where the way has none of its own. ≥ 1 */
export const workingLoad_N = ({ failing_N, ownFactor }: Giving, factor: number): number =>
  failing_N / (ownFactor ?? factor);

/** What it is that gives first, under its own factor. */
export function firstToGive(ways: readonly Giving[], factor: number): Giving {
  return ways.reduce((least, way) => (workingLoad_N(way, factor) < workingLoad_N(least, factor) ? way : least));
}

/** Share of what a fastener bears that a pull out and a pull along take together: added one to the other. 1 is the limit. Ours. */
export const usedShare = (share: FastenerShare, out_N: number, along_N: number): number =>
  share.out_N / out_N + share.along_N / along_N;

/** The smallest pattern that bears a pull; null where twelve do not. */
export function leastCount(pull: FittingPull, out_N: number, along_N: number): number | null {
  return patternCounts.find((count) => usedShare(hardestShare(pull, count), out_N, along_N) <= 1) ?? null;
}
