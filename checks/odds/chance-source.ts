/** A seeded source of chance of the world's own (xorshift128, G. Marsaglia, Journal of Statistical Software 8 (14), 2003). */
export interface ChanceSource {
  /** from 0, under 1 */
  share(): number;
  /** whole, from..to, both included */
  whole(from: number, to: number): number;
  one<T>(of: readonly T[]): T;
  /** a standard normal quantity: twelve shares added up, less six */
  normal(): number;
}

export function chanceSource(seed: number): ChanceSource {
  let [x, y, z, w] = [123456789 ^ seed, 362436069, 521288629, 88675123 + seed];
  const share = () => {
    const t = x ^ (x << 11);
    [x, y, z] = [y, z, w];
    w = w ^ (w >>> 19) ^ (t ^ (t >>> 8));
    return (w >>> 0) / 4294967296;
  };
  for (let n = 0; n < 40; n++) share();
  const whole = (from: number, to: number) => from + Math.floor(share() * (to - from + 1));
  return {
    share,
    whole,
    one: (of) => of[whole(0, of.length - 1)]!,
    normal: () => {
      let sum = -6;
      for (let n = 0; n < 12; n++) sum += share();
      return sum;
    },
  };
}
