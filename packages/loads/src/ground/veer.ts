import { lengthOf, type RodeLying, type RodeOut, type RodePiece, rodeLying } from './rode.ts';

/** The greatest pull above level at which most writers still trust an anchor, as a magazine says. [°] */
export const usualHoldingAngle_deg = 8;

/** How far a short chop carries the bow astern before the rode stops it. Our assumption. [m] */
export const assumedCarried_m = 0.3;

/** The first so many metres of a rode, from the anchor up. */
export function veered(pieces: readonly RodePiece[], length_m: number): readonly RodePiece[] {
  let left_m = length_m;
  return pieces.map((piece) => {
    const out_m = Math.min(piece.length_m, Math.max(0, left_m));
    left_m -= out_m;
    return { ...piece, length_m: out_m };
  });
}

/** How much rode to veer, or why no length does. */
export type Veer =
  | { readonly kind: 'veer'; readonly length_m: number; readonly lying: RodeLying; readonly out: RodeOut }
  /** all that there is pulls more steeply than the limit */
  | { readonly kind: 'not enough'; readonly lying: RodeLying; readonly out: RodeOut; readonly wanted_m: number | null }
  | { readonly kind: 'too short'; readonly rode_m: number; readonly height_m: number }
  | { readonly kind: 'floats' };

/** longest rode that is looked for where there is not enough. [m] */
const longest_m = 1000;

/**
 * The least rode that keeps the pull at the anchor at or below an angle: the chain goes first, then the rope. More rode
 * never steepens the pull, so it is found by halving.
 *
 * @param limit_deg  0: level, no link at the anchor lifted. 0–60
 * @returns          where there is not enough, how it lies with all of it out, and how much it would take if the last
 *                   piece were longer (null: none that is looked for)
 */
export function rodeToVeer(rode: RodeOut, limit_deg: number): Veer {
  const all = rodeLying(rode);
  if (all.kind !== 'lies') return all;
  if (!holds(all, limit_deg))
    return { kind: 'not enough', lying: all, out: rode, wanted_m: wantedLength_m(rode, limit_deg) };
  const with_m = (length_m: number): RodeOut => ({ ...rode, pieces: veered(rode.pieces, length_m) });
  const length_m = leastThatHolds_m(with_m, limit_deg, rode.height_m, lengthOf(rode.pieces));
  const out = with_m(length_m);
  const lying = rodeLying(out);
  return lying.kind === 'lies' ? { kind: 'veer', length_m, lying, out } : lying;
}

function wantedLength_m(rode: RodeOut, limit_deg: number): number | null {
  const last = rode.pieces.at(-1)!;
  const with_m = (length_m: number): RodeOut => ({
    ...rode,
    pieces: [...rode.pieces.slice(0, -1), { ...last, length_m: last.length_m + length_m - lengthOf(rode.pieces) }],
  });
  const longest = rodeLying(with_m(longest_m));
  return longest.kind === 'lies' && holds(longest, limit_deg)
    ? leastThatHolds_m(with_m, limit_deg, lengthOf(rode.pieces), longest_m)
    : null;
}

function leastThatHolds_m(
  with_m: (length_m: number) => RodeOut,
  limit_deg: number,
  tooShort_m: number,
  enough_m: number,
): number {
  let [low, high] = [tooShort_m, enough_m];
  for (let n = 0; n < 60 && high - low > 1e-9 * high; n++) {
    const middle = (low + high) / 2;
    const lying = rodeLying(with_m(middle));
    if (lying.kind === 'lies' && holds(lying, limit_deg)) high = middle;
    else low = middle;
  }
  return high;
}

/** Whether the pull at the anchor is no steeper than the limit; level means that nothing is lifted there. */
const holds = ({ lift_N, angle_deg }: RodeLying, limit_deg: number) =>
  limit_deg === 0 ? lift_N <= 0 : angle_deg <= limit_deg;

/**
 * The least load at which the pull at the anchor passes an angle with this rode out.
 *
 * @param most_N  as far as is looked
 * @returns       null where the angle is not passed by then. [N]
 */
export function loadThatLifts_N(rode: Omit<RodeOut, 'load_N'>, limit_deg: number, most_N: number): number | null {
  const passes = (load_N: number) => {
    const lying = rodeLying({ ...rode, load_N });
    return lying.kind === 'lies' && !holds(lying, limit_deg);
  };
  // stretching rope lengthens the rode, so that the pull need not steepen for ever: the first passing is looked for
  let low = most_N / 1e4;
  if (passes(low)) return low;
  for (let n = 1; n <= 30; n++) {
    let high = (most_N / 1e4) * 1e4 ** (n / 30);
    if (!passes(high)) {
      low = high;
      continue;
    }
    for (let m = 0; m < 40; m++) {
      const middle = (low + high) / 2;
      if (passes(middle)) high = middle;
      else low = middle;
    }
    return high;
  }
  return null;
}

/**
 * The load when a sea carries the bow so much farther from the anchor than where she lies, with no time to veer.
 * The way the rode stretches and lifts is all that gives; nothing is counted for how she slows.
 *
 * @param carried_m  level. ≥ 0
 * @param most_N     as far as is looked
 * @returns          [N]; null where it is past that
 */
export function loadWhenCarried_N(rode: RodeOut, carried_m: number, most_N: number): number | null {
  const lying = rodeLying(rode);
  if (lying.kind !== 'lies') return null;
  const reach = (load_N: number) => {
    const at = rodeLying({ ...rode, load_N });
    return at.kind === 'lies' ? at.reach_m : 0;
  };
  let [low, high] = [rode.load_N, rode.load_N];
  while (reach(high) < lying.reach_m + carried_m) {
    low = high;
    high *= 2;
    if (low > most_N) return null;
  }
  for (let n = 0; n < 50; n++) {
    const middle = (low + high) / 2;
    if (reach(middle) < lying.reach_m + carried_m) low = middle;
    else high = middle;
  }
  return high <= most_N ? high : null;
}

/** Circles a boat may swing round her anchor. [m] */
export interface SwingingCircle {
  /** with this load, from anchor to stern */
  readonly lying_m: number;
  /** with the rode drawn straight, from anchor to stern */
  readonly taut_m: number;
}

/**
 * The circle she swings in, from the anchor to the stern, with this load and drawn straight. The lower the water, the wider.
 */
export function swingingCircle(out: RodeOut, lying: RodeLying, boat_m: number): SwingingCircle {
  const straight_m = lengthOf(out.pieces) + lying.stretched_m;
  return {
    lying_m: lying.reach_m + boat_m,
    taut_m: Math.max(lying.reach_m, Math.sqrt(Math.max(0, straight_m ** 2 - out.height_m ** 2))) + boat_m,
  };
}
