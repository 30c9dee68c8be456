/**
 * How long steps really take: draws from low, likely and high.
 *
 * A step's time is a PERT-beta quantity (modified PERT, λ = 4): on [a, b] with its peak at m it is
 * a + (b − a)·Beta(1 + λ(m − a)/(b − a), 1 + λ(b − m)/(b − a)).
 * `low` and `high` are taken as keepers mean them: one time in ten the step lies outside them (our assumption; ranges
 * people give are rather too narrow than too wide). So a and b lie further out than low and high, both by the same
 * share of their distance from the likely time, so far that a tenth of the draws fall outside; a is no less than a
 * quarter of the likely time.
 *
 * Source of the shape: D. G. Malcolm, J. H. Roseboom, C. E. Clark and W. Fazar, Application of a technique for
 * research and development program evaluation, Operations Research 7 (1959) 646–669, and for λ: D. Vose, Risk
 * Analysis, Wiley, 2000; titles from memory. The formula is also printed in the manual of the Cimba library
 * (`cmb_random_PERT_mod`), looked up 2026-11-25: mean (min + λ·mode + max)/(λ + 2).
 */
export const pertLambda = 4;

/** How often a step lies outside low to high. Our assumption. */
export const assumedOutside = 0.1;

const cells = 64;
const grid = 240;

/** The times a step may take, so that `timeAt` finds the one that a share of all draws stays under. */
export interface StepTimes {
  readonly likely: number;
  /** at shares 0, 1/64 … 1. [min] */
  readonly quantiles: Float64Array;
}

/**
 * The draws for a step.
 *
 * @param low     ≤ likely. [min], > 0
 * @param high    ≥ likely. [min]
 * @throws RangeError  where they are not in that order
 */
export function stepTimes(low: number, likely: number, high: number): StepTimes {
  if (!(low > 0 && low <= likely && likely <= high))
    throw new RangeError(`low, likely and high must rise from more than 0 min, got ${low}, ${likely}, ${high}`);
  if (low === high) return { likely, quantiles: new Float64Array(cells + 1).fill(likely) };
  let [near, far] = [1, 4];
  for (let n = 0; n < 24; n++) {
    const middle = (near + far) / 2;
    if (outside(low, likely, high, middle) < assumedOutside) near = middle;
    else far = middle;
  }
  const [a, b] = reach(low, likely, high, near);
  const sums = sharesUnder(a, likely, b);
  const quantiles = new Float64Array(cells + 1);
  let at = 0;
  for (let cell = 0; cell <= cells; cell++) {
    const share = cell / cells;
    while (at < grid - 1 && sums[at + 1]! < share) at++;
    const [under, over] = [sums[at]!, sums[at + 1]!];
    quantiles[cell] = a + ((b - a) * (at + (over > under ? (share - under) / (over - under) : 0))) / grid;
  }
  quantiles[cells] = b;
  return { likely, quantiles };
}

/** The time that a share of the draws stays under. [min], not rounded */
export function timeAt({ quantiles }: StepTimes, share: number): number {
  const at = Math.min(cells - 1e-9, Math.max(0, share * cells));
  const cell = Math.floor(at);
  return quantiles[cell]! + (at - cell) * (quantiles[cell + 1]! - quantiles[cell]!);
}

function reach(low: number, likely: number, high: number, out: number): readonly [number, number] {
  return [Math.max(likely / 4, likely - out * (likely - low)), likely + out * (high - likely)];
}

function outside(low: number, likely: number, high: number, out: number): number {
  const [a, b] = reach(low, likely, high, out);
  const sums = sharesUnder(a, likely, b);
  const shareUnder = (time: number) => {
    const at = Math.min(grid, Math.max(0, ((time - a) / (b - a)) * grid));
    const cell = Math.min(grid - 1, Math.floor(at));
    return sums[cell]! + (at - cell) * (sums[cell + 1]! - sums[cell]!);
  };
  return shareUnder(low) + 1 - shareUnder(high);
}

/** Shares under a + (b − a)·i/grid, by the midpoint rule. */
function sharesUnder(a: number, likely: number, b: number): Float64Array {
  const p = (pertLambda * (likely - a)) / (b - a);
  const q = pertLambda - p;
  const sums = new Float64Array(grid + 1);
  for (let i = 0; i < grid; i++) {
    const x = (i + 0.5) / grid;
    sums[i + 1] = sums[i]! + x ** p * (1 - x) ** q;
  }
  const all = sums[grid]!;
  for (let i = 0; i <= grid; i++) sums[i]! /= all;
  return sums;
}
