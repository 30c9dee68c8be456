/** Where a value lies in 9 of 10. */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A value of a band at a place of a normal spread: its ends at ±1.645, straight between, never under 0. @param z standard normal */
export const bandAt = ({ low, likely, high }: Band, z: number): number =>
  Math.max(0, likely + (z / 1.645) * (z < 0 ? likely - low : high - likely));

/** The middle of equally likely values and the ends between which 9 in 10 of them lie. Sorts what it is given. */
export function bandOf(values: number[] | Float64Array): Band {
  values.sort((a, b) => a - b);
  const at = (share: number) => {
    const place = share * (values.length - 1);
    const below = values[Math.floor(place)]!;
    return below + (place % 1) * ((values[Math.ceil(place)] ?? below) - below);
  };
  return { low: at(0.05), likely: at(0.5), high: at(0.95) };
}
