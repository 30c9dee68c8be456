import { boardHoist } from './board-hoist.ts';
import type { Handling } from './tackle.ts';
import { type HoistFigures, reckoned, type WholeHoist } from './whole-hoist.ts';

/**
 * What the hand is foretold to feel at one place of the travel.
 *
 * @param hauled_pct  of the wire, all the way down 0; null: where it is hardest
 */
export function pullAtHand_N({ travel, hand }: HoistFigures, handling: Handling, hauled_pct: number | null): number {
  if (hauled_pct === null) return hand[handling].force_N;
  const wanted_m = (travel.wire_m * hauled_pct) / 100;
  const nearest = travel.points.reduce((best, point) =>
    Math.abs(point.hauled_m - wanted_m) < Math.abs(best.hauled_m - wanted_m) ? point : best,
  );
  return nearest.hand_N[handling];
}

/** No sheave that still turns takes more than this. Our judgement. */
const most = 2;

/**
 * What every sheave would have to take, all alike, for the hand to feel what it felt when hoisting where it is hardest: a
 * sheave that seizes shows here before it stops. The tension grows by this factor over each.
 *
 * @returns 1 to 2; `less than none` where even without friction more was foretold, `more than any` beyond 2, `no sheave`
 */
export function feltSheaveFactor(
  hoist: WholeHoist,
  felt_N: number,
): number | 'less than none' | 'more than any' | 'no sheave' {
  const asked = reckoned(hoist);
  if ('kind' in asked || asked.leads.count + asked.gear.tackles.length === 0) return 'no sheave';
  const at = (factor: number): number => {
    const travel = boardHoist({
      ...asked,
      leads: { ...asked.leads, factor },
      gear: { ...asked.gear, tackles: asked.gear.tackles.map((tackle) => ({ ...tackle, factor })) },
    });
    return travel.kind === 'travel' ? Math.max(...travel.points.map(({ hand_N }) => hand_N.hoisting)) : Number.NaN;
  };
  if (felt_N < at(1)) return 'less than none';
  if (!(felt_N <= at(most))) return 'more than any';
  let [low, high] = [1, most] as [number, number];
  // each halving brings it twice as near; forty are nearer than any scale reads
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2;
    if (at(middle) < felt_N) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
