/** What mast, boom, ropes and the label's promise leave of a panel: as the keeper guesses, and as readings teach it. */
import { type Band, bandAt } from './band.ts';
import { normalMiddles, normalShare } from './normal.ts';
import { assumedOfPanels } from './solar-panel.ts';

/** Assumed: kept of the sun on a small boat at anchor, where nobody has said; and how far a keeper's guess is off. [%] */
export const assumedKept = { low_pct: 55, likely_pct: 80, high_pct: 97, guessOff_pct: 12 } as const;

/** What the rig leaves of the sun by the keeper's guess. [0–1] @param kept_pct null: nobody has said. @throws RangeError outside 0 to 100 % */
export function keptBand(kept_pct: number | null): Band {
  if (kept_pct === null)
    return { low: assumedKept.low_pct / 100, likely: assumedKept.likely_pct / 100, high: assumedKept.high_pct / 100 };
  if (!(kept_pct >= 0 && kept_pct <= 100))
    throw new RangeError(`kept of the sun must be 0 to 100 %, got ${kept_pct} %`);
  const off = assumedKept.guessOff_pct / 100;
  const likely = kept_pct / 100;
  return { low: Math.max(0, likely - off), likely, high: Math.min(1, likely + off) };
}

/** What rig, dirt and the label's promise leave at places of their normal spreads. [0–1] @param rig,label standard normal */
export const keptAt = (kept: Band, rig: number, label: number): number =>
  Math.min(1, bandAt(kept, rig)) * Math.min(1, bandAt(assumedOfPanels.left, label));

const middles = normalMiddles(3);
/** The same as nine equally likely factors. */
export function keptFactors(kept: Band): number[] {
  return middles.flatMap((rig) => middles.map((label) => keptAt(kept, rig, label)));
}

/** What a panel was to bring over some days, unshaded, and what readings say it brought. [Ah] */
export interface BroughtPair {
  readonly expected_Ah: Band;
  readonly brought_Ah: Band;
}

/** A day that was to bring less says nothing. [Ah] */
export const leastExpected_Ah = 0.001;

/**
 * The share that a panel keeps, learnt from what readings say came in.
 *
 * Before: the keeper's guess, spread evenly at its ends. Each pair speaks for the shares that bring the two together, by how
 * far both may be off; days are misjudged each by its own, so that many pairs narrow the band, and no pair by itself can
 * carry it beyond what its own bands allow: its tails are taken heavy (Student, four degrees).
 *
 * @param before  the share as it was known. [0–1.2]
 * @param pairs   pairs with nothing expected say nothing and are passed over
 * @returns       the share with its band; the same as before with no pair
 * @throws RangeError for a band out of order
 * Source: Bayes' rule over a list of shares; our derivation.
 */
export function keptLearnt(before: Band, pairs: readonly BroughtPair[]): Band {
  for (const band of [before, ...pairs.flatMap(({ expected_Ah, brought_Ah }) => [expected_Ah, brought_Ah])])
    if (!(band.low >= 0 && band.low <= band.likely && band.likely <= band.high && Number.isFinite(band.high)))
      throw new RangeError(`a band goes from low over likely to high, got ${band.low}, ${band.likely}, ${band.high}`);
  const telling = pairs.filter(({ expected_Ah }) => expected_Ah.likely > leastExpected_Ah);
  if (telling.length === 0) return before;
  const shares = Array.from({ length: 601 }, (_, i) => i / 500);
  const spread = (band: Band, at: number) =>
    Math.max(1e-6, (at < band.likely ? band.likely - band.low : band.high - band.likely) / 1.645);
  const logs = shares.map((share) => {
    let sum = -0.5 * ((share - before.likely) / Math.max(0.01, spread(before, share))) ** 2;
    for (const { expected_Ah, brought_Ah } of telling) {
      const wanted = share * expected_Ah.likely;
      // how far both may be off, at the share that this pair itself tells: a scale that grew with the share looked for would favour small ones
      const told = Math.max(0.1, brought_Ah.likely / expected_Ah.likely);
      const off = Math.hypot(
        spread(brought_Ah, wanted),
        told * spread(expected_Ah, wanted < brought_Ah.likely ? Number.POSITIVE_INFINITY : 0),
        0.02 * expected_Ah.likely,
      );
      sum += -2.5 * Math.log(1 + ((wanted - brought_Ah.likely) / off) ** 2 / 4);
    }
    return sum;
  });
  const most = Math.max(...logs);
  const weights = logs.map((each) => Math.exp(each - most));
  const all = weights.reduce((sum, each) => sum + each, 0);
  const at = (share: number) => {
    let sum = 0;
    for (const [i, weight] of weights.entries()) {
      if (sum + weight >= share * all) return shares[i]! + ((share * all - sum) / weight - 0.5) / 500;
      sum += weight;
    }
    return shares.at(-1)!;
  };
  return { low: Math.max(0, at(0.05)), likely: at(normalShare(0)), high: at(0.95) };
}
