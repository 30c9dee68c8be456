/**
 * The form of her hull from her sizes: sheer, stem, bottom, transom, and half breadth at deck and waterline.
 *
 * Metres: x from the foremost point of the hull (0) aft to the aftmost (her length); y up from the waterline; breadth from
 * the centreline. The curves between the given sizes are tables of ours, shares of those sizes, drawn by eye after small
 * trailerable boats in general: a sheer that springs at the bow and is lowest at three quarters, a forefoot that is
 * rounded and a flat run aft, the widest place aft of the middle.
 */
import { at, type Point, type Run } from './line.ts';
import type { BoatSizes, BowKind, SternKind } from './sizes.ts';

export interface HullForm {
  readonly sizes: BoatSizes;
  /** depth of the hull itself, without what is fixed under it. [m] */
  readonly body_m: number;
  /** height of the sheer. [m] */
  readonly sheer: (x: number) => number;
  /** height of the underside of the hull; below 0 under water. [m] */
  readonly bottom: (x: number) => number;
  /** from the stem head down to the waterline, and on round the forefoot along the bottom to the transom */
  readonly underside: Run;
  readonly stemHead: Point;
  readonly transomTop: Point;
  readonly transomFoot: Point;
  /** half breadth at the deck. [m] */
  readonly breadth: (x: number) => number;
  /** half breadth at the waterline; 0 ahead of where she enters the water. [m] */
  readonly waterBreadth: (x: number) => number;
}

/** how far the stem leans over the water, as a share of the length, and how round it is */
const bows: Readonly<Record<BowKind, { readonly over: number; readonly round: number }>> = {
  raked: { over: 0.075, round: 1.3 },
  plumb: { over: 0.014, round: 2 },
  spoon: { over: 0.135, round: 1.75 },
};

/** where the top and foot of the transom are, from the aftmost point, as a share of the length; how far its foot is over the water in freeboards */
const sterns: Readonly<Record<SternKind, { readonly top: number; readonly foot: number; readonly over: number }>> = {
  upright: { top: 0, foot: 0.016, over: 0.06 },
  reversed: { top: 0.055, foot: 0, over: 0.1 },
  counter: { top: 0, foot: 0.075, over: 0.36 },
};

/** hull deeper than this share of her length is keel, not hull */
const deepestBody = 0.052;

const rocker = table(
  [0, 0],
  [0.012, 0.15],
  [0.035, 0.325],
  [0.08, 0.525],
  [0.17, 0.755],
  [0.31, 0.945],
  [0.46, 1],
  [0.6, 0.955],
  [0.75, 0.76],
  [0.88, 0.44],
  [0.96, 0.18],
  [1, 0],
);
const deckBreadth = table(
  [0, 0],
  [0.02, 0.085],
  [0.06, 0.225],
  [0.12, 0.4],
  [0.2, 0.592],
  [0.3, 0.775],
  [0.4, 0.9],
  [0.5, 0.972],
  [0.6, 1],
  [0.72, 0.985],
  [0.86, 0.92],
  [1, 0.815],
);
const waterlineBreadth = table(
  [0, 0],
  [0.08, 0.14],
  [0.2, 0.41],
  [0.35, 0.7],
  [0.5, 0.85],
  [0.62, 0.87],
  [0.8, 0.79],
  [1, 0.62],
);

/** The form of a hull. Not a designer's lines: enough to draw her by and to say where things are. */
export function hullForm(sizes: BoatSizes): HullForm {
  const { length_m: length, beam_m: beam, freeboard_m: freeboard } = sizes;
  const body_m = Math.max(0.02 * length, Math.min(sizes.draft_m, deepestBody * length));
  const stern = sterns[sizes.stern];
  const bow = bows[sizes.bow];
  const lowest = 0.74 * length;
  const sheer = (x: number) => {
    const s = Math.min(length, Math.max(0, x));
    return s < lowest
      ? freeboard * (1 + 0.36 * ((lowest - s) / lowest) ** 2)
      : freeboard * (1 + 0.05 * ((s - lowest) / (length - lowest)) ** 2);
  };
  const stemHead = at(0, sheer(0));
  const transomTop = at(length * (1 - stern.top), sheer(length * (1 - stern.top)));
  const transomFoot = at(length * (1 - stern.foot), freeboard * stern.over);
  const entry = bow.over * length;
  const afloat = transomFoot.x - entry;
  const bottom = (x: number) => {
    const share = Math.min(1, Math.max(0, (x - entry) / afloat));
    return -body_m * rocker(share) + transomFoot.y * share ** 6;
  };
  const stem = Array.from({ length: 6 }, (_, i) => {
    const t = i / 6;
    return at(entry * t ** bow.round, stemHead.y * (1 - t));
  });
  const afterStem = [0, 0.012, 0.035, 0.08, 0.17, 0.31, 0.46, 0.6, 0.75, 0.88, 0.96, 1].map((share) => {
    const x = entry + afloat * share;
    return at(x, bottom(x));
  });
  return {
    sizes,
    body_m,
    sheer,
    bottom,
    underside: [...stem, ...afterStem],
    stemHead,
    transomTop,
    transomFoot,
    breadth: (x) => (beam / 2) * deckBreadth(Math.min(1, Math.max(0, x / transomTop.x))),
    waterBreadth: (x) => (beam / 2) * waterlineBreadth(Math.min(1, Math.max(0, (x - entry) / afloat))),
  };
}

/** A smooth function through rows of (place, value), that overshoots none of them: its slope at a row is the
 * harmonic mean of the slopes on both sides, 0 where they point two ways. */
export function table(...rows: readonly (readonly [number, number])[]): (place: number) => number {
  const slopes = rows.slice(1).map(([x, y], i) => (y - rows[i]![1]) / (x - rows[i]![0]));
  const tangents = rows.map((_, i) => {
    const before = slopes[i - 1] ?? slopes[i]!;
    const after = slopes[i] ?? before;
    return before * after <= 0 ? 0 : (2 * before * after) / (before + after);
  });
  return (place) => {
    const next = rows.findIndex(([x]) => x >= place);
    if (next === 0) return rows[0]![1];
    if (next < 0) return rows[rows.length - 1]![1];
    const [x0, y0] = rows[next - 1]!;
    const [x1, y1] = rows[next]!;
    const wide = x1 - x0;
    const t = (place - x0) / wide;
    const [m0, m1] = [tangents[next - 1]! * wide, tangents[next]! * wide];
    return (
      (2 * t ** 3 - 3 * t ** 2 + 1) * y0 +
      (t ** 3 - 2 * t ** 2 + t) * m0 +
      (-2 * t ** 3 + 3 * t ** 2) * y1 +
      (t ** 3 - t ** 2) * m1
    );
  };
}
