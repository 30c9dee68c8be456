/** A length of chain or rope of one kind, under water. */
export interface RodePiece {
  /** at rest. [m], ≥ 0 */
  readonly length_m: number;
  /** what a metre of it weighs under water; below 0: it floats. [N/m] */
  readonly weight_N_per_m: number;
  /** how much longer a metre of it is for each newton. 0: it does not stretch. [1/N] */
  readonly stretch_per_N: number;
}

/** A rode that is out: its pieces from the anchor up, and what pulls it. */
export interface RodeOut {
  readonly pieces: readonly RodePiece[];
  /** level part of the pull at the bow. [N], > 0 */
  readonly load_N: number;
  /** from the seabed at the anchor up to the bow roller. [m], > 0 */
  readonly height_m: number;
}

/** How a rode lies. */
export interface RodeLying {
  readonly kind: 'lies';
  /** the pull at the anchor, above level. 0–90 */
  readonly angle_deg: number;
  readonly atAnchor_N: number;
  readonly atBow_N: number;
  /** the pull at the upper end of each piece, from the anchor up. [N] */
  readonly atEnds_N: readonly number[];
  /** what lies on the seabed, as long as at rest. [m] */
  readonly grounded_m: number;
  /** level, from the anchor to the bow roller. [m] */
  readonly reach_m: number;
  /** how much longer it is than at rest. [m] */
  readonly stretched_m: number;
  /** vertical pull at the anchor; below 0: the weight that lies on the seabed, with a minus. [N] */
  readonly lift_N: number;
}

/** How a rode lies, or why it does not. */
export type RodeAnswer =
  | RodeLying
  | { readonly kind: 'too short'; readonly rode_m: number; readonly height_m: number }
  | { readonly kind: 'floats' };

/** A place along the rode: ahead of the anchor towards the boat, and above the seabed. [m] */
export interface RodePoint {
  readonly along_m: number;
  readonly up_m: number;
}

/** A piece as it lies: so much of it on the seabed, the rest hanging from a vertical pull at its lower end. */
interface Laid {
  readonly piece: RodePiece;
  readonly grounded_m: number;
  readonly hanging_m: number;
  readonly below_N: number;
}

/**
 * How a rode lies that a level pull draws tight: an elastic catenary for each piece, joined where the pull is the same;
 * what lies on the seabed is pulled level. The vertical pull at the anchor is sought between ends: the greater it is, the
 * higher the upper end stands.
 *
 * With H the level and V the vertical pull, w the weight of a metre and c its stretch for a newton, a piece of length l
 * rises (T₂ − T₁)/w + c(V₂² − V₁²)/2w and reaches H/w·(asinh V₂/H − asinh V₁/H) + cHl, where V₂ = V₁ + wl, T² = H² + V².
 *
 * @returns     'too short' where it is no longer than the height; 'floats' where floating rope would stand above the bow
 * @throws RangeError  when load or height is not above 0
 *
 * Not covered: friction on the seabed (all of the pull comes on the anchor), a seabed that slopes, current along the rode;
 * what hangs in air below the bow is taken at its weight in water.
 * Source: our derivation. Checked in checks/loads against sums along the rode and against its energy.
 */
export function rodeLying(rode: RodeOut): RodeAnswer {
  const { pieces, load_N, height_m } = rode;
  if (!(load_N > 0 && height_m > 0))
    throw new RangeError(`a rode wants a load and a height above 0, got ${load_N} N and ${height_m} m`);
  const rode_m = lengthOf(pieces);
  if (rode_m <= height_m) return { kind: 'too short', rode_m, height_m };
  const rise = (lift_N: number) => sum(laid(pieces, lift_N), (each) => riseOf(each, each.hanging_m, load_N));
  const low = -sinking_N(pieces);
  let high = Math.max(1, load_N, -low);
  for (let n = 0; n < 80 && rise(high) < height_m; n++) high *= 2;
  return rodeWithLift(rode, risingTo(height_m, rise, low, high));
}

/** Where a function that only rises reaches a height between two places: by chords, an end that stays halved (Illinois). */
function risingTo(height: number, of: (place: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [under, over] = [of(low) - height, of(high) - height];
  let last = 0;
  for (let n = 0; n < 200 && high - low > 1e-13 * (1 + Math.abs(high)) && over > under; n++) {
    const place = low - (under * (high - low)) / (over - under);
    const off = of(place) - height;
    if (Math.abs(off) < 1e-12 * height) return place;
    if (off < 0) {
      low = place;
      under = off;
      if (last < 0) over /= 2;
    } else {
      high = place;
      over = off;
      if (last > 0) under /= 2;
    }
    last = off;
  }
  return (low + high) / 2;
}

function rodeWithLift({ pieces, load_N }: RodeOut, lift_N: number): RodeAnswer {
  const all = laid(pieces, lift_N);
  const tops_N = all.map(aboveOf);
  if (tops_N.at(-1)! < 0) return { kind: 'floats' };
  const atEnds_N = tops_N.map((vertical_N) => pullOf(load_N, vertical_N));
  const atAnchor_N = pullOf(load_N, Math.max(0, lift_N));
  return {
    kind: 'lies',
    angle_deg: (Math.atan2(Math.max(0, lift_N), load_N) * 180) / Math.PI,
    atAnchor_N,
    atBow_N: atEnds_N.at(-1)!,
    atEnds_N,
    grounded_m: sum(all, ({ grounded_m }) => grounded_m),
    reach_m: sum(all, (each) => onSeabed_m(each, load_N) + reachOf(each, each.hanging_m, load_N)),
    stretched_m: sum(all, (each) => stretchOf(each, load_N)),
    lift_N,
  };
}

/** Length of pieces at rest. [m] */
export function lengthOf(pieces: readonly RodePiece[]): number {
  return sum(pieces, ({ length_m }) => length_m);
}

/**
 * The line of each piece of a rode that lies, from the anchor to the bow, to draw it by.
 *
 * @param places  on what hangs of each piece, besides its lower end. whole, ≥ 1
 */
export function rodeLines(rode: RodeOut, { lift_N }: RodeLying, places: number): readonly (readonly RodePoint[])[] {
  let end: RodePoint = { along_m: 0, up_m: 0 };
  return laid(rode.pieces, lift_N).map((each) => {
    const line = [end];
    const foot = { along_m: end.along_m + onSeabed_m(each, rode.load_N), up_m: end.up_m };
    if (each.grounded_m > 0) line.push(foot);
    for (let n = 1; n <= places && each.hanging_m > 0; n++) {
      const length_m = (each.hanging_m * n) / places;
      line.push({
        along_m: foot.along_m + reachOf(each, length_m, rode.load_N),
        up_m: foot.up_m + riseOf(each, length_m, rode.load_N),
      });
    }
    end = line.at(-1)!;
    return line;
  });
}

/** The pieces with a vertical pull at the anchor, or, below 0, with so much weight on the seabed. */
function laid(pieces: readonly RodePiece[], lift_N: number): readonly Laid[] {
  let toGround_N = Math.max(0, -lift_N);
  let below_N = Math.max(0, lift_N);
  return pieces.map((piece) => {
    const { length_m, weight_N_per_m } = piece;
    const grounded_m = weight_N_per_m > 0 ? Math.min(length_m, toGround_N / weight_N_per_m) : 0;
    toGround_N -= grounded_m * weight_N_per_m;
    const each = { piece, grounded_m, hanging_m: length_m - grounded_m, below_N };
    below_N = aboveOf(each);
    return each;
  });
}

/** Weight of all that can lie on the seabed: what sinks, from the anchor up to the first that floats. [N] */
function sinking_N(pieces: readonly RodePiece[]): number {
  const floating = pieces.findIndex(({ weight_N_per_m, length_m }) => weight_N_per_m <= 0 && length_m > 0);
  return sum(floating < 0 ? pieces : pieces.slice(0, floating), (each) => each.length_m * each.weight_N_per_m);
}

/** The pull whose level and vertical parts these are. [N] */
const pullOf = (level_N: number, vertical_N: number) => Math.sqrt(level_N * level_N + vertical_N * vertical_N);

const aboveOf = ({ piece, hanging_m, below_N }: Laid) => below_N + piece.weight_N_per_m * hanging_m;

/** How far above its foot a place of what hangs is. [m] */
function riseOf({ piece, below_N }: Laid, length_m: number, load_N: number): number {
  const above_N = below_N + piece.weight_N_per_m * length_m;
  // (T₂ − T₁)/w without the weight below the line, so that it may be next to nothing
  const pulls_N = pullOf(load_N, below_N) + pullOf(load_N, above_N);
  return length_m * (below_N + above_N) * (1 / pulls_N + piece.stretch_per_N / 2);
}

/** How far along from its foot a place of what hangs is. [m] */
function reachOf({ piece, below_N }: Laid, length_m: number, load_N: number): number {
  const { weight_N_per_m: w, stretch_per_N } = piece;
  const above_N = below_N + w * length_m;
  const straight = (length_m * load_N) / pullOf(load_N, (below_N + above_N) / 2);
  // where the pull hardly turns along the piece, its chord is as good and keeps its figures
  const curve =
    Math.abs(w * length_m) < 1e-6 * load_N
      ? straight
      : (load_N / w) * (Math.asinh(above_N / load_N) - Math.asinh(below_N / load_N));
  return curve + stretch_per_N * load_N * length_m;
}

const onSeabed_m = ({ piece, grounded_m }: Laid, load_N: number) => grounded_m * (1 + piece.stretch_per_N * load_N);

/** How much longer a piece is than at rest: by the pull summed along it. [m] */
function stretchOf({ piece, grounded_m, hanging_m, below_N }: Laid, load_N: number): number {
  const { weight_N_per_m: w, stretch_per_N } = piece;
  if (stretch_per_N === 0) return 0;
  const above_N = below_N + w * hanging_m;
  const mean = (below_N + above_N) / 2;
  // Simpson's rule: the pull changes little along rope
  const pull = (pullOf(load_N, below_N) + 4 * pullOf(load_N, mean) + pullOf(load_N, above_N)) / 6;
  return stretch_per_N * (load_N * grounded_m + pull * hanging_m);
}

const sum = <T>(all: readonly T[], of: (each: T) => number): number => all.reduce((total, each) => total + of(each), 0);
