/**
 * Share of a standard normal spread under a value. [0–1]
 * Source: Abramowitz and Stegun 26.2.17, from memory; good to 7.5e-8.
 */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    0.3989422804014327 *
    Math.exp((-z * z) / 2) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}

/** Middles of so many equally likely parts of a standard normal spread, rising; found by halving. */
export function normalMiddles(parts: number): number[] {
  return Array.from({ length: parts }, (_, i) => {
    const share = (i + 0.5) / parts;
    let low = -8;
    let high = 8;
    for (let step = 0; step < 48; step++) {
      const middle = (low + high) / 2;
      if (normalShare(middle) < share) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  });
}
