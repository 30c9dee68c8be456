/** The beta and the Poisson distribution, as far as a forecast of uses needs them. */

/** ln Γ(x) for x > 0: Stirling's series after the argument is raised past 8. Good to 1 in 10¹⁰. */
function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  while (z < 8) {
    shift += Math.log(z);
    z += 1;
  }
  const square = z * z;
  const tail = (1 / 12 - (1 / 360 - (1 / 1260 - 1 / (1680 * square)) / square) / square) / z;
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + tail - shift;
}

/**
 * Share of the beta distribution (a, b) below x: the regularised incomplete beta function.
 *
 * By its continued fraction (Lentz's way), from the side on which it converges fast.
 * @param x  0–1
 * @param a  > 0
 * @param b  > 0
 */
export function betaShareBelow(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0 && x >= 0 && x <= 1))
    throw new RangeError(`a share of a beta distribution needs a, b > 0 and x in 0 to 1, got a ${a}, b ${b}, x ${x}`);
  if (x === 0 || x === 1) return x;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaShareBelow(1 - x, b, a);
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x) - Math.log(a),
  );
  const tiny = 1e-300;
  const safe = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / safe(1 - ((a + b) * x) / (a + 1));
  let sum = d;
  for (let m = 1; m <= 400; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / safe(1 + even * d);
    c = safe(1 + even / c);
    sum *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / safe(1 + odd * d);
    c = safe(1 + odd / c);
    sum *= d * c;
    if (Math.abs(d * c - 1) < 1e-13) break;
  }
  return front * sum;
}

/** The x below which `share` of the beta distribution (a, b) lies. 0 < share < 1 */
export function betaQuantile(share: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 90; i++) {
    const middle = (low + high) / 2;
    if (betaShareBelow(middle, a, b) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Share of the Poisson distribution of this mean at or below a whole count. mean ≥ 0 */
function poissonShareUpTo(count: number, mean: number): number {
  // from the greatest term outward, so that none overflows
  if (mean === 0) return 1;
  let term = Math.exp(count * Math.log(mean) - mean - logGamma(count + 1));
  let sum = 0;
  for (let k = count; k >= 0; k--) {
    sum += term;
    term *= k / mean;
    if (term < 1e-18 * sum) break;
  }
  return Math.min(1, sum);
}

/**
 * The mean counts between which the true one lies, of so much happening by chance one at a time.
 *
 * The ends are the means at which a count as great, or as small, would be seen in half of what is left over.
 * @param count       whole, 0–100,000
 * @param confidence  0.5–0.999
 * Source: F. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28 (1936).
 */
export function countBand(count: number, confidence: number): { readonly low: number; readonly high: number } {
  if (!Number.isInteger(count) || count < 0 || count > 100_000)
    throw new RangeError(`a count must be a whole number from 0 to 100000, got ${count}`);
  if (!(confidence >= 0.5 && confidence <= 0.999))
    throw new RangeError(`confidence must be from 0.5 to 0.999, got ${confidence}`);
  const outside = (1 - confidence) / 2;
  const meanWhere = (sharesAbove: (mean: number) => boolean) => {
    let low = 0;
    let high = count + 10 * Math.sqrt(count + 1) + 20;
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (sharesAbove(middle)) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return {
    low: count === 0 ? 0 : meanWhere((mean) => 1 - poissonShareUpTo(count - 1, mean) < outside),
    high: meanWhere((mean) => poissonShareUpTo(count, mean) > outside),
  };
}
