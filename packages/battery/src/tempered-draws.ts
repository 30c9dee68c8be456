/**
 * Draws from what is believed after readings: many points from the prior are led to it by steps (tempering), with resampling
 * and Metropolis moves whose reach is learnt from the points themselves. Seeded; nothing is made in the inner loops.
 *
 * P. Del Moral, A. Doucet, A. Jasra, Sequential Monte Carlo samplers, J. R. Statist. Soc. B 68 (2006) 411. From memory.
 */

/** Numbers from 0 up to 1 and normal ones, the same for the same seed (32-bit mixing generator; polar method). */
export interface Dice {
  readonly even: () => number;
  readonly normal: () => number;
}

export function dice(seed: number): Dice {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
  };
  let kept = Number.NaN;
  const normal = () => {
    if (!Number.isNaN(kept)) {
      const value = kept;
      kept = Number.NaN;
      return value;
    }
    for (;;) {
      const x = 2 * even() - 1;
      const y = 2 * even() - 1;
      const r = x * x + y * y;
      if (r >= 1 || r === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(r)) / r);
      kept = y * scale;
      return x * scale;
    }
  };
  return { even, normal };
}

/** Points in standard normal numbers, one after another, `size` numbers each. */
export interface Draws {
  readonly count: number;
  readonly size: number;
  readonly z: Float64Array;
}

export interface TemperingSize {
  readonly count: number;
  readonly movesEach: number;
  readonly movesAtEnd: number;
}

/**
 * Draws from prior × likelihood, the prior being standard normal.
 *
 * @param size           numbers in a point
 * @param logLikelihood  of the point that starts at an offset of the list
 */
export function temperedDraws(
  size: number,
  logLikelihood: (z: Float64Array, from: number) => number,
  { even, normal }: Dice,
  { count, movesEach, movesAtEnd }: TemperingSize,
): Draws {
  let z = new Float64Array(count * size);
  let spare = new Float64Array(count * size);
  const likelihood = new Float64Array(count);
  const spareLikelihood = new Float64Array(count);
  const weight = new Float64Array(count);
  const mean = new Float64Array(size);
  const root = new Float64Array(size * size);
  const tried = new Float64Array(size);
  const noise = new Float64Array(size);
  for (let i = 0; i < z.length; i++) z[i] = normal();
  for (let n = 0; n < count; n++) likelihood[n] = logLikelihood(z, n * size);
  let heat = 0;
  let reach = 2.38 / Math.sqrt(size);
  for (let stage = 0; stage < 60 && heat < 1; stage++) {
    const step = nextStep(likelihood, weight, 1 - heat);
    heat = Math.min(1, heat + step);
    // resample evenly by weight
    let sum = 0;
    for (let n = 0; n < count; n++) sum += weight[n]!;
    let mark = (even() * sum) / count;
    let passed = weight[0]!;
    let from = 0;
    for (let n = 0; n < count; n++) {
      while (passed < mark && from < count - 1) passed += weight[++from]!;
      spare.set(z.subarray(from * size, (from + 1) * size), n * size);
      spareLikelihood[n] = likelihood[from]!;
      mark += sum / count;
    }
    [z, spare] = [spare, z];
    likelihood.set(spareLikelihood);
    writeRoot(z, count, size, mean, root);
    const moves = heat < 1 ? movesEach : movesAtEnd;
    for (let move = 0; move < moves; move++) {
      let taken = 0;
      for (let n = 0; n < count; n++) {
        const start = n * size;
        let prior = 0;
        for (let i = 0; i < size; i++) noise[i] = normal();
        // now and then a long step, so that two valleys are both found
        const far = even() < 0.1 ? 2.5 * reach : reach;
        for (let i = 0; i < size; i++) {
          let sum = 0;
          for (let k = 0; k <= i; k++) sum += root[i * size + k]! * noise[k]!;
          const before = z[start + i]!;
          const after = before + far * sum;
          tried[i] = after;
          prior += (before * before - after * after) / 2;
        }
        const there = logLikelihood(tried, 0);
        if (Math.log(even() + 1e-300) < prior + heat * (there - likelihood[n]!)) {
          z.set(tried, start);
          likelihood[n] = there;
          taken++;
        }
      }
      reach = Math.min(1.5, Math.max(0.05, reach * Math.exp(taken / count - 0.25)));
    }
  }
  return { count, size, z };
}

/** The largest step of the likelihood's power that leaves six tenths of the points of use; writes the weights. */
function nextStep(likelihood: Float64Array, weight: Float64Array, most: number): number {
  const count = likelihood.length;
  let best = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < count; n++) if (likelihood[n]! > best) best = likelihood[n]!;
  const useful = (step: number) => {
    let sum = 0;
    let squares = 0;
    for (let n = 0; n < count; n++) {
      const w = Math.exp(step * (likelihood[n]! - best));
      weight[n] = w;
      sum += w;
      squares += w * w;
    }
    return (sum * sum) / squares;
  };
  if (useful(most) >= 0.6 * count) return most;
  let low = 0;
  let high = most;
  for (let i = 0; i < 25; i++) {
    const middle = (low + high) / 2;
    if (useful(middle) >= 0.6 * count) low = middle;
    else high = middle;
  }
  const step = Math.max(low, 1e-6);
  useful(step);
  return step;
}

/** Lower triangle whose product with its own transpose is the spread of the points. */
function writeRoot(z: Float64Array, count: number, size: number, mean: Float64Array, root: Float64Array): void {
  mean.fill(0);
  for (let n = 0; n < count; n++) for (let i = 0; i < size; i++) mean[i]! += z[n * size + i]! / count;
  for (let i = 0; i < size; i++)
    for (let k = 0; k <= i; k++) {
      let sum = 0;
      for (let n = 0; n < count; n++) sum += (z[n * size + i]! - mean[i]!) * (z[n * size + k]! - mean[k]!);
      // shrunk a little towards its diagonal: few points for many numbers
      root[i * size + k] = (i === k ? 1 : 0.95) * (sum / count) + (i === k ? 1e-6 : 0);
    }
  for (let i = 0; i < size; i++)
    for (let k = 0; k <= i; k++) {
      let sum = root[i * size + k]!;
      for (let j = 0; j < k; j++) sum -= root[i * size + j]! * root[k * size + j]!;
      root[i * size + k] = i === k ? Math.sqrt(Math.max(1e-9, sum)) : sum / root[k * size + k]!;
    }
}
