/**
 * How clear the days of a season are where nobody has forecast them: the spread of a day's clearness, and how one day's hangs
 * on the day before. Clearness here is what came through of what a clear day brings: 1 is a clear day.
 */

/**
 * Assumed, from memory of maps of sun and cloud: clearness of the mean day by latitude, in the season's middle, and how much
 * more there is at midsummer than between, less at midwinter. Places of one latitude differ by much: `placeSpread`.
 */
const assumedMeans = [
  { latitude: 0, mean: 0.7, summer: 0 },
  { latitude: 15, mean: 0.75, summer: -0.03 },
  { latitude: 28, mean: 0.8, summer: 0 },
  { latitude: 40, mean: 0.7, summer: 0.08 },
  { latitude: 50, mean: 0.61, summer: 0.1 },
  { latitude: 60, mean: 0.57, summer: 0.08 },
  { latitude: 75, mean: 0.55, summer: 0 },
  { latitude: 90, mean: 0.55, summer: 0 },
] as const;

export const assumedSeason = {
  /** places of one latitude: spread of their mean day, as a standard deviation */
  placeSpread: 0.1,
  /** clearness of the dullest day */
  dullest: 0.08,
  /** and of the clearest: the haze of a clear day is taken as usual, and some days have less */
  clearest: 1.04,
  /**
   * how much of a day's luck the next day keeps, as a correlation. V. Graham, K. Hollands and T. Huget (1988) found 0.29 for
   * Canadian places, from memory; a little more is taken, for dull spells are what a battery is sized for
   */
  spell: 0.35,
} as const;

/**
 * Clearness of the mean day of a season where nothing else is known of a place.
 *
 * @param dayOfYear  1–366
 * @returns          0.4–0.9; our assumption
 */
export function assumedMeanClearness(latitude_deg: number, dayOfYear: number): number {
  const from_equator = Math.abs(latitude_deg);
  const next = assumedMeans.findIndex(({ latitude }) => latitude >= from_equator);
  const b = assumedMeans[Math.max(1, next)]!;
  const a = assumedMeans[Math.max(1, next) - 1]!;
  const share = Math.min(1, Math.max(0, (from_equator - a.latitude) / (b.latitude - a.latitude)));
  const between = (key: 'mean' | 'summer') => a[key] + share * (b[key] - a[key]);
  return between('mean') + between('summer') * summerness(latitude_deg, dayOfYear);
}

/** 1 at midsummer of the half of the earth, −1 at midwinter; a month behind the sun. */
export function summerness(latitude_deg: number, dayOfYear: number): number {
  const midsummer = latitude_deg >= 0 ? 200 : 17;
  return Math.cos((2 * Math.PI * (dayOfYear - midsummer)) / 365.25);
}

/**
 * How bent the spread of days is: γ of a density that goes as exp(γ·clearness) between the dullest day and the clearest.
 *
 * @param mean  of the days. Over dullest, under clearest by 0.02 at least
 * Source: the shape of P. Bendt, M. Collares-Pereira and A. Rabl (1981), from memory; with a clear day of the place and date as
 * its upper end, and γ found from the mean by halving in place of their fit.
 */
export function bend(mean: number): number {
  const { dullest, clearest } = assumedSeason;
  if (!(mean > dullest + 0.02 && mean < clearest - 0.02))
    throw new RangeError(`mean clearness must be ${dullest + 0.02} to ${clearest - 0.02}, got ${mean}`);
  let low = -60;
  let high = 60;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (meanOf(middle) < mean) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function meanOf(gamma: number): number {
  const { dullest, clearest } = assumedSeason;
  const width = clearest - dullest;
  const x = gamma * width;
  // mean of exp(x·u) over u from 0 to 1, in u
  const u = Math.abs(x) < 1e-4 ? 0.5 + x / 12 : 1 / (1 - Math.exp(-x)) - 1 / x;
  return dullest + width * u;
}

/** Clearness that a share of the days stay under. @param share  0–1 */
export function clearnessAt(gamma: number, share: number): number {
  const { dullest, clearest } = assumedSeason;
  const width = clearest - dullest;
  const x = gamma * width;
  const u = Math.abs(x) < 1e-4 ? share : Math.log(1 + share * (Math.exp(x) - 1)) / x;
  return dullest + width * Math.min(1, Math.max(0, u));
}
