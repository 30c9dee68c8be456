/** A chance found by counting runs, with how far counting so few may be off. */
export interface Chance {
  /** runs in which it came about */
  readonly times: number;
  readonly runs: number;
  /** times / runs, from 0 to 1 */
  readonly share: number;
  /** the band that holds the chance 95 times of 100, as far as counting goes; not what the model leaves out */
  readonly low: number;
  readonly high: number;
}

/** 97.5 % of a normal quantity lies under this. */
const z = 1.959964;

/**
 * The chance that so many of so many runs show, with the band of E. B. Wilson.
 *
 *   (p + z²/2n ± z·√(p(1−p)/n + z²/4n²)) / (1 + z²/n),  p = times / n,  z = 1.96
 *
 * @param times  whole, 0 to `runs`
 * @param runs   whole, ≥ 1
 * @throws RangeError  outside these
 *
 * Source: E. B. Wilson, Probable inference, the law of succession, and statistical inference, Journal of the American
 * Statistical Association 22 (1927) 209–212; from memory, held in the test to a case worked by hand.
 */
export function chanceOf(times: number, runs: number): Chance {
  if (!Number.isInteger(runs) || runs < 1) throw new RangeError(`runs must be a whole number from 1, got ${runs}`);
  if (!Number.isInteger(times) || times < 0 || times > runs)
    throw new RangeError(`times must be a whole number from 0 to ${runs}, got ${times}`);
  const share = times / runs;
  const spread = z * Math.sqrt((share * (1 - share)) / runs + (z * z) / (4 * runs * runs));
  const middle = share + (z * z) / (2 * runs);
  const whole = 1 + (z * z) / runs;
  return {
    times,
    runs,
    share,
    low: times === 0 ? 0 : (middle - spread) / whole,
    high: times === runs ? 1 : (middle + spread) / whole,
  };
}
