/** Where a value lies in 9 of 10. */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A value of a band at a place of a normal spread: its ends at ±1.645, straight between, never under 0. @param z standard normal */
export const bandAt = ({ low, likely, high }: Band, z: number): number =>
  Math.max(0, likely + (z / 1.645) * (z < 0 ? likely - low : high - likely));

/** The middle of equally likely values and the ends between which 9 in 10 of them lie. */
export function bandOf(values: ArrayLike<number>): Band {
  const sorted = Float64Array.from(values).sort();
  const at = (share: number) => {
    const place = share * (sorted.length - 1);
    const below = sorted[Math.floor(place)]!;
    return below + (place % 1) * ((sorted[Math.ceil(place)] ?? below) - below);
  };
  return { low: at(0.05), likely: at(0.5), high: at(0.95) };
}

/** The band of what any of some values times any of some factors comes to. */
export function bandOfProducts(values: ArrayLike<number>, factors: ArrayLike<number>): Band {
  const all = new Float64Array(values.length * factors.length);
  for (let i = 0; i < values.length; i++)
    for (let k = 0; k < factors.length; k++) all[i * factors.length + k] = values[i]! * factors[k]!;
  return bandOf(all);
}
