import type { Batteries } from './batteries.ts';
import type { Dice } from './dice.ts';
import { type Fitting, freedom } from './fitting.ts';

/** One step of all members towards the readings, `weight` times as uncertain as they are (ensemble smoother). */
export function stepTowards(fitting: Fitting, members: Batteries, weight: number, dice: Dice): void {
  const { said_V, dimensions } = fitting;
  const m = said_V.length;
  const { cross, among, own } = spreadsOf(fitting, members);
  for (let r = 0; r < m; r++) among[r * m + r]! += weight * own[r]!;
  choleskyInPlace(among, m);
  const wish = new Float64Array(m);
  const gain = new Float64Array(dimensions);
  for (let n = 0; n < members.size; n++) {
    for (let r = 0; r < m; r++)
      wish[r] = said_V[r]! + Math.sqrt(weight * own[r]!) * dice.normal() - members.shown[n * m + r]!;
    solveInPlace(among, wish, m);
    gain.fill(0);
    for (let r = 0; r < m; r++) {
      const by = wish[r]!;
      for (let d = 0; d < dimensions; d++) gain[d]! += cross[r * dimensions + d]! * by;
    }
    for (let d = 0; d < dimensions; d++) members.zs[n * dimensions + d]! += gain[d]!;
  }
}

interface Spreads {
  /** covariance over the members of what would be shown with each unknown (rows of unknowns), and with each other (lower triangle) */
  readonly cross: Float64Array;
  readonly among: Float64Array;
  /** variance of each reading's own error */
  readonly own: Float64Array;
}

function spreadsOf({ said_V, dimensions }: Fitting, { size, zs, shown, error }: Batteries): Spreads {
  const m = said_V.length;
  const mean = meanOf(shown, size);
  const zMean = meanOf(zs, size);
  const cross = new Float64Array(m * dimensions);
  const among = new Float64Array(m * m);
  const apart = new Float64Array(dimensions);
  const off = new Float64Array(m);
  for (let n = 0; n < size; n++) {
    for (let d = 0; d < dimensions; d++) apart[d] = zs[n * dimensions + d]! - zMean[d]!;
    for (let r = 0; r < m; r++) off[r] = shown[n * m + r]! - mean[r]!;
    for (let r = 0; r < m; r++) {
      const by = off[r]!;
      for (let d = 0; d < dimensions; d++) cross[r * dimensions + d]! += (by * apart[d]!) / (size - 1);
      for (let q = 0; q <= r; q++) among[r * m + q]! += (by * off[q]!) / (size - 1);
    }
  }
  const own = meanOf(error, size).map((ownMean, r) => {
    const variance = ownMean * ownMean;
    // a reading far from all members counts for less, as its distribution has it
    const far = said_V[r]! - mean[r]!;
    const far2 = (far * far) / (among[r * m + r]! + variance);
    return variance * Math.max(1, (freedom + far2) / (freedom + 1));
  });
  return { cross, among, own };
}

/** The mean row. */
function meanOf(rows: Float64Array, size: number): Float64Array {
  const width = rows.length / size;
  const mean = new Float64Array(width);
  for (let n = 0; n < size; n++) for (let i = 0; i < width; i++) mean[i]! += rows[n * width + i]! / size;
  return mean;
}

/** Lower triangle of the square root of a positive matrix, in place of it. */
function choleskyInPlace(a: Float64Array, m: number): void {
  for (let r = 0; r < m; r++)
    for (let q = 0; q <= r; q++) {
      let sum = a[r * m + q]!;
      for (let k = 0; k < q; k++) sum -= a[r * m + k]! * a[q * m + k]!;
      a[r * m + q] = r === q ? Math.sqrt(Math.max(1e-12, sum)) : sum / a[q * m + q]!;
    }
}

function solveInPlace(root: Float64Array, x: Float64Array, m: number): void {
  for (let r = 0; r < m; r++) {
    let sum = x[r]!;
    for (let k = 0; k < r; k++) sum -= root[r * m + k]! * x[k]!;
    x[r] = sum / root[r * m + r]!;
  }
  for (let r = m - 1; r >= 0; r--) {
    let sum = x[r]!;
    for (let k = r + 1; k < m; k++) sum -= root[k * m + r]! * x[k]!;
    x[r] = sum / root[r * m + r]!;
  }
}
