import { standardGravity_m_s2 } from '#units';

/** What the road does to a load, as shares of its weight, and the safety factor that goes with it. */
export const road = {
  forward: { share: 0.8, factor: 1.25 },
  sideways: { share: 0.5, factor: 1.1 },
  rearward: { share: 0.5, factor: 1.1 },
  down: 1,
  /** sideways, for a load that would tip before it slid */
  tipping: 0.6,
} as const;
export type Way = 'forward' | 'sideways' | 'rearward';

/** Share of the weight that the British code of practice asks to be held: more than the standard forward. */
export const codeOfPractice = { forward: 1, sideways: 0.5, rearward: 0.5 } as const;

/** Share of the friction that counts beside direct lashings. */
export const frictionShare = 0.75;
/** How a strap’s tension goes over to its other side: revised standard, and the one of 2003. */
export const acrossOver = { revised: 2, of2003: 1.5 } as const;

/** The larger of what the standard and the code ask for. */
export const shareAsked = (way: Way): number => Math.max(road[way].share, codeOfPractice[way]);

/**
 * Straps over the top that hold a load by pressing it down; infinite where nothing rubs.
 * n = (c − µ)·m·g·f/(k·µ·sin α·F)
 *
 * @param mass_kg over 0
 * @param share  of the weight the road asks for
 * @param friction  µ, 0 on rollers
 * @param tension_N  in each strap after its ratchet, over 0
 * @param angle_rad  of the strap above level
 */
export function strapsOver(
  mass_kg: number,
  share: number,
  friction: number,
  factor: number,
  tension_N: number,
  angle_rad: number,
): number {
  const missing = Math.max(0, share - friction * road.down);
  if (missing === 0) return 0;
  if (friction === 0 || Math.sin(angle_rad) <= 0) return Number.POSITIVE_INFINITY;
  return (
    (missing * mass_kg * standardGravity_m_s2 * factor) /
    (acrossOver.revised * friction * Math.sin(angle_rad) * tension_N)
  );
}

/** What one direct lashing holds against a way, with the friction its downward part wins. [N] */
export const directHolds_N = (capacity_N: number, above_rad: number, aside_rad: number, friction: number): number =>
  capacity_N * (Math.cos(above_rad) * Math.cos(aside_rad) + frictionShare * friction * Math.sin(above_rad));

/**
 * Direct lashings that hold a load one way; infinite where they point away from it.
 * n = (c − µ·f·1)·m·g/(F·(cos α·cos β + µ·f·sin α))
 */
export function directLashings(
  mass_kg: number,
  share: number,
  friction: number,
  capacity_N: number,
  above_rad: number,
  aside_rad: number,
): number {
  const missing = Math.max(0, share - frictionShare * friction * road.down) * mass_kg * standardGravity_m_s2;
  if (missing === 0) return 0;
  const each = directHolds_N(capacity_N, above_rad, aside_rad, friction);
  return each > 0 ? missing / each : Number.POSITIVE_INFINITY;
}

/** What webbing of a width is sold to hold, straight. [N] low and high */
export const webCapacity_N: Readonly<Record<25 | 35 | 50, { readonly low: number; readonly high: number }>> = {
  25: { low: 2_500, high: 5_000 },
  35: { low: 7_500, high: 10_000 },
  50: { low: 20_000, high: 25_000 },
};
/** Unmarked webbing by the American rule. [kg] */
export const unmarkedWeb_kg = { 45: 790, 50: 910 } as const;
/** Hand force on the ratchet that the label speaks of. [N] */
export const handForce_N = 500;
/** Breaking force over lashing capacity of a strap as assembled. */
export const breakingOverCapacity = 2;
/** Stretch of webbing at its capacity at most, and the cut in its edge at which it is thrown away. [%] */
export const webLimits_pct = { stretch: 7, cut: 10 } as const;

/** One lashing of a boat on her trailer. */
export interface Lashing {
  readonly name: string;
  /** the winch and its line are named so that they are seen not to count */
  readonly kind: 'strap' | 'winch line';
  /** which way its pull holds her from going */
  readonly holds: Way;
  readonly capacity_N: number;
  readonly above_rad: number;
  readonly aside_rad: number;
  /** what the place on the hull may bear; null where nobody knows, and then it counts for nothing */
  readonly hull_N: number | null;
}

export interface WayHeld {
  readonly way: Way;
  readonly asked_N: number;
  /** by rubbing, by the bow post, by the lashings */
  readonly friction_N: number;
  readonly post_N: number | null;
  readonly lashings_N: number;
  readonly verdict: 'held' | 'short' | 'not known';
  /** lashings that count for nothing, with the reason */
  readonly idle: readonly { readonly name: string; readonly because: 'winch line' | 'hull not known' }[];
}

/**
 * What keeps a boat on her trailer, a way at a time.
 *
 * On rollers nothing rubs (µ = 0 unless entered). Forward she rests on the bow post. A winch line is no lashing. A strap holds
 * no more than the place on the hull it is made fast to, and nothing where that is not known.
 *
 * @param friction  µ between hull and supports
 * @param post_N  what the bow post and its chock bear, null where not known
 */
export function restraint(
  mass_kg: number,
  friction: number,
  post_N: number | null,
  lashings: readonly Lashing[],
): readonly WayHeld[] {
  const weight_N = mass_kg * standardGravity_m_s2;
  return (['forward', 'sideways', 'rearward'] as const).map((way) => {
    const asked_N = shareAsked(way) * weight_N;
    const friction_N = frictionShare * friction * road.down * weight_N;
    const here = lashings.filter(({ holds }) => holds === way);
    const counted = here.filter(({ kind, hull_N }) => kind === 'strap' && hull_N !== null);
    const lashings_N = counted.reduce(
      (sum, { capacity_N, hull_N, above_rad, aside_rad }) =>
        sum + directHolds_N(Math.min(capacity_N, hull_N ?? 0), above_rad, aside_rad, friction),
      0,
    );
    const known = friction_N + lashings_N + (way === 'forward' ? (post_N ?? 0) : 0);
    const idle = here.flatMap(({ name, kind, hull_N }): WayHeld['idle'] => {
      if (kind === 'winch line') return [{ name, because: 'winch line' }];
      return hull_N === null ? [{ name, because: 'hull not known' }] : [];
    });
    const open = (way === 'forward' && post_N === null) || idle.some(({ because }) => because === 'hull not known');
    return {
      way,
      asked_N,
      friction_N,
      post_N: way === 'forward' ? post_N : null,
      lashings_N,
      verdict: known >= asked_N ? 'held' : open ? 'not known' : 'short',
      idle,
    };
  });
}
