/** Something carried on the trailer, the trailer itself among it. Places are from the axle, ahead of it counted up. */
export interface Carried {
  readonly name: string;
  readonly mass_kg: number;
  readonly ahead_m: number;
  /** how far off the mass may be, either way */
  readonly mass_give_kg?: number;
  /** how far off the place may be, either way */
  readonly place_give_m?: number;
}

export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface Balance {
  readonly laden_kg: number;
  /** centre of gravity ahead of the axle, null where nothing is carried */
  readonly centre_m: number | null;
  readonly ball_kg: Band;
  readonly axle_kg: number;
  /** ball load over laden mass, null where nothing is carried */
  readonly ball_pct: number | null;
  /** of each thing: what it adds to the ball, taken off where it stands behind the axle */
  readonly shares: readonly { readonly name: string; readonly ball_kg: number; readonly give_kg: number }[];
}

/**
 * Ball and axle load of all that is carried: moments about the axle.
 *
 * B = Σ m·x / L. What is not known of each thing is taken as likely off one way as the other and apart from the rest, so the
 * give of the whole is the root of the sum of the squares; never below nothing carried.
 *
 * @param carried  masses from 0 kg, places ahead of the axle (behind it below 0)
 * @param ballAhead_m  from axle to ball, over 0; on two axles from half way between them
 */
export function balanceOf(carried: readonly Carried[], ballAhead_m: number): Balance {
  const laden_kg = carried.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const moment = carried.reduce((sum, { mass_kg, ahead_m }) => sum + mass_kg * ahead_m, 0);
  const likely = moment / ballAhead_m;
  const shares = carried.map(({ name, mass_kg, ahead_m, mass_give_kg = 0, place_give_m = 0 }) => ({
    name,
    ball_kg: (mass_kg * ahead_m) / ballAhead_m,
    give_kg: Math.hypot(mass_give_kg * ahead_m, mass_kg * place_give_m) / ballAhead_m,
  }));
  const give = Math.hypot(...shares.map(({ give_kg }) => give_kg));
  return {
    laden_kg,
    centre_m: laden_kg > 0 ? moment / laden_kg : null,
    ball_kg: { low: likely - give, likely, high: likely + give },
    axle_kg: laden_kg - likely,
    ball_pct: laden_kg > 0 ? (100 * likely) / laden_kg : null,
    shares,
  };
}

/** What the ball gains when a mass goes forward by so much, below 0 where it goes aft. [kg] B = m·Δx/L */
export const ballGain_kg = (mass_kg: number, forward_m: number, ballAhead_m: number): number =>
  (mass_kg * forward_m) / ballAhead_m;

/** How far a mass must go forward for the ball to gain so much, below 0 for aft. [m] Δx = ΔB·L/m, mass over 0 */
export const forwardFor_m = (gain_kg: number, mass_kg: number, ballAhead_m: number): number =>
  (gain_kg * ballAhead_m) / mass_kg;

/**
 * Ball load by a bathroom scale under the far end of a beam that rests on a block at its near end.
 * @param ratio  where the coupling presses, as a share of the beam from the block, over 0 to 1
 */
export const ballByScale_kg = (scale_kg: number, ratio: number): number => scale_kg / ratio;

/** How far one thing may be moved, ahead of the axle. */
export interface Movable {
  readonly name: string;
  readonly aftmost_m: number;
  readonly foremost_m: number;
}

export interface Mend {
  readonly name: string;
  readonly forward_m: number;
  /** ball load after it alone was moved */
  readonly ball_kg: number;
  /** whether that alone brings the ball load where it is wanted */
  readonly enough: boolean;
  /** kilogram metres moved: what the work is */
  readonly work_kg_m: number;
}

/**
 * What to move, and where, to bring the ball load between two figures: of each thing alone, as far as it must and can go.
 * Those that are enough come first, the least moved first.
 */
export function mendsOf(
  carried: readonly Carried[],
  movable: readonly Movable[],
  ballAhead_m: number,
  wanted: { readonly low_kg: number; readonly high_kg: number },
): readonly Mend[] {
  const now = balanceOf(carried, ballAhead_m).ball_kg.likely;
  const gain = now < wanted.low_kg ? wanted.low_kg - now : now > wanted.high_kg ? wanted.high_kg - now : 0;
  if (gain === 0) return [];
  return movable
    .flatMap(({ name, aftmost_m, foremost_m }): Mend[] => {
      const thing = carried.find((each) => each.name === name);
      if (!thing || thing.mass_kg <= 0) return [];
      const asked = forwardFor_m(gain, thing.mass_kg, ballAhead_m);
      const forward_m = Math.min(Math.max(asked, aftmost_m - thing.ahead_m), foremost_m - thing.ahead_m);
      // what can only be moved the wrong way does not help
      if (forward_m * gain <= 0) return [];
      return [
        {
          name,
          forward_m,
          ball_kg: now + ballGain_kg(thing.mass_kg, forward_m, ballAhead_m),
          enough: Math.abs(forward_m) >= Math.abs(asked) - 1e-9,
          work_kg_m: thing.mass_kg * Math.abs(forward_m),
        },
      ];
    })
    .sort((a, b) => Number(b.enough) - Number(a.enough) || a.work_kg_m - b.work_kg_m);
}
