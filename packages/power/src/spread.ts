import type { Band } from '#battery';

/** The value below which a share of sorted values lie, straight between neighbours. */
export function quantile(sorted: Float64Array, share: number): number {
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low === high ? low : low + (at - below) * (high - low);
}

/** The middle of many values and the ends between which 90 of 100 of them lie. Sorts what it is given. */
export function bandOf(values: Float64Array): Band {
  values.sort();
  return { low: quantile(values, 0.05), likely: quantile(values, 0.5), high: quantile(values, 0.95) };
}

/** How often something came true in many runs, with the error of counting so few. */
export interface Chance {
  readonly runs: number;
  readonly of: number;
  /** [%] */
  readonly chance_pct: number;
  /** where the true share lies in 95 of 100 such counts. [%] */
  readonly low_pct: number;
  readonly high_pct: number;
}

/** @throws RangeError for no runs. The interval: E. B. Wilson's score interval (1927), from memory. */
export function chanceOf(of: number, runs: number): Chance {
  if (!(runs > 0 && of >= 0 && of <= runs)) throw new RangeError(`${of} of ${runs} runs is no count`);
  const z = 1.96;
  const p = of / runs;
  const middle = (p + z ** 2 / (2 * runs)) / (1 + z ** 2 / runs);
  const half = (z * Math.sqrt((p * (1 - p)) / runs + (z / (2 * runs)) ** 2)) / (1 + z ** 2 / runs);
  return {
    runs,
    of,
    chance_pct: 100 * p,
    low_pct: 100 * Math.max(0, middle - half),
    high_pct: 100 * Math.min(1, middle + half),
  };
}
