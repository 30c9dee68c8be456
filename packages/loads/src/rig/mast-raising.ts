import { standardGravity_m_s2 } from '#units';

/** A place beside the mast's hinge: ahead of it and above it. [m] */
export interface PlaceAhead {
  readonly ahead_m: number;
  readonly up_m: number;
}

/** What leads the pull: a pole or A-frame with its heel pinned, or nothing. */
export type RaisingPole =
  | {
      readonly kind: 'pole' | 'A-frame';
      /** of the pole, or of a leg of the A-frame. [m] */
      readonly length_m: number;
      readonly heel: PlaceAhead;
      /** ahead of upright, with the mast at the start. [°] */
      readonly lean_deg: number;
      /** A-frame: between its heels, less than twice a leg; 0 of a pole. [m] */
      readonly spread_m: number;
    }
  | { readonly kind: 'none' };

/** A mast on its hinge, raised from lying aft. Angles are of the mast above level, aft. */
export interface MastRaising {
  /** with all that hangs on it. [kg] */
  readonly mass_kg: number;
  /** from the hinge to its centre of mass. [m] */
  readonly massAt_m: number;
  /** from the hinge to where the forestay or halyard takes hold. [m] */
  readonly lineAt_m: number;
  readonly pole: RaisingPole;
  /** where the tackle, or the straight line, is led at the bow */
  readonly bow: PlaceAhead;
  readonly from_deg: number;
  readonly to_deg: number;
}

/** Forces at one angle of the mast. */
export interface RaisingPoint {
  readonly mast_deg: number;
  /** of the mast's weight about its hinge. [N·m] */
  readonly moment_N_m: number;
  /** in the tackle between pole's tip and bow; without a pole, in the line. [N] */
  readonly tackle_N: number;
  /** in the forestay or halyard between mast and tip. [N] */
  readonly line_N: number;
  /** along the pole, pressing; below zero it is pulled. One leg of an A-frame bears `leg_N`. [N] */
  readonly pole_N: number;
  readonly leg_N: number;
  /** the mast on its hinge, ahead and up. [N] */
  readonly pivot_N: PlaceForce;
  /** from pole's tip to bow. [m] */
  readonly tackle_m: number;
  /** for the drawing */
  readonly attachment: PlaceAhead;
  readonly tip: PlaceAhead | null;
}
export interface PlaceForce {
  readonly ahead: number;
  readonly up: number;
}

export interface RaisingTravel {
  readonly kind: 'travel';
  readonly points: readonly RaisingPoint[];
  /** the tackle shortens by this over the travel. [m] */
  readonly hauled_m: number;
}

/** Why nothing raises it so, and which part is to be changed. */
export interface NoRaising {
  readonly kind: 'no pull';
  readonly at: 'pole' | 'bow' | 'line';
  readonly wrong: string;
  readonly right: string;
}

/** places of the travel that are looked at */
const places = 60;
/** a lever shorter than this raises nothing that could be trusted. [m] */
const leastArm_m = 0.01;

/**
 * Forces over the raising (or holding, or lowering: the same, without friction) of a mast on a hinge at its foot, by
 * moments about the hinge and the balance of the pole's tip. The pole is pinned at its heel and guyed sideways; the line
 * from its tip to the mast keeps its length. No wind, no friction at the hinge, no weight of pole and tackle is counted.
 */
export function mastRaising(raising: MastRaising): RaisingTravel | NoRaising {
  const points: RaisingPoint[] = [];
  for (let n = 0; n <= places; n++) {
    const mast_deg = raising.from_deg + ((raising.to_deg - raising.from_deg) * n) / places;
    const point = raisingPoint(raising, mast_deg);
    if ('kind' in point) return point;
    points.push(point);
  }
  return { kind: 'travel', points, hauled_m: points[0]!.tackle_m - points.at(-1)!.tackle_m };
}

/** The same at one angle. @param mast_deg above level, from the start of the travel on */
function raisingPoint(raising: MastRaising, mast_deg: number): RaisingPoint | NoRaising {
  const weight_N = raising.mass_kg * standardGravity_m_s2;
  const [c, s] = inParts(mast_deg);
  const moment_N_m = weight_N * raising.massAt_m * c;
  const attachment = { ahead_m: -raising.lineAt_m * c, up_m: raising.lineAt_m * s };
  const tip = raising.pole.kind === 'none' ? null : tipAt(raising, raising.pole, mast_deg);
  if (tip !== null && 'kind' in tip) return tip;
  const led = tip ?? raising.bow;
  const line = towards(attachment, led);
  // how far from the hinge the line pulls: what turns the mast up
  const arm_m = attachment.up_m * line.ahead - attachment.ahead_m * line.up;
  if (!(arm_m >= leastArm_m))
    return {
      kind: 'no pull',
      at: tip === null ? 'bow' : 'line',
      wrong: `with the mast at ${shown(mast_deg)}° the line to it runs ${arm_m > -leastArm_m ? 'past the hinge' : 'below the hinge'}: no pull raises it`,
      right:
        tip === null
          ? 'lead it over a pole, start with the mast higher in a crutch, or lead it from higher up'
          : 'take a longer pole, or start with the mast higher in a crutch',
    };
  const line_N = moment_N_m / arm_m;
  const at = { mast_deg, moment_N_m, line_N, attachment, tip };
  const pivot_N = { ahead: line.ahead * line_N, up: line.up * line_N - weight_N };
  if (tip === null || raising.pole.kind === 'none')
    return { ...at, tackle_N: line_N, pole_N: 0, leg_N: 0, pivot_N, tackle_m: line.length_m };
  const { pole } = raising;
  const tackle = towards(tip, raising.bow);
  const along = towards(pole.heel, tip);
  // balance at the tip: line back to the mast, tackle to the bow, pole from its heel
  const across = tackle.ahead * along.up - tackle.up * along.ahead;
  const perLine = (line.ahead * along.up - line.up * along.ahead) / across;
  if (!(perLine > 0) || perLine / arm_m > 1 / leastArm_m)
    return {
      kind: 'no pull',
      at: 'bow',
      wrong: `with the mast at ${shown(mast_deg)}° the pole's tip, its heel and the bow fitting are in one line, or past it: no pull on the tackle raises the mast`,
      right: 'lead the tackle lower at the bow, or end the travel before that',
    };
  const tackle_N = perLine * line_N;
  const pole_N =
    (line.ahead - perLine * tackle.ahead) * line_N * along.ahead + (line.up - perLine * tackle.up) * line_N * along.up;
  return {
    ...at,
    tackle_N,
    pole_N,
    leg_N: pole.kind === 'A-frame' ? (pole_N / 2) * (pole.length_m / reach_m(pole)) : pole_N,
    pivot_N,
    tackle_m: tackle.length_m,
  };
}

/** Where the pole's tip is: as far from its heel and from the mast's attachment as at the start, on the same side. */
function tipAt(
  raising: MastRaising,
  pole: Exclude<RaisingPole, { readonly kind: 'none' }>,
  mast_deg: number,
): PlaceAhead | NoRaising {
  const [c0, s0] = inParts(raising.from_deg);
  const [sinLean, cosLean] = [Math.sin((pole.lean_deg * Math.PI) / 180), Math.cos((pole.lean_deg * Math.PI) / 180)];
  const high_m = reach_m(pole);
  const start = { ahead_m: pole.heel.ahead_m + high_m * sinLean, up_m: pole.heel.up_m + high_m * cosLean };
  const line_m = Math.hypot(start.ahead_m + raising.lineAt_m * c0, start.up_m - raising.lineAt_m * s0);
  const [c, s] = inParts(mast_deg);
  const attachment = { ahead_m: -raising.lineAt_m * c, up_m: raising.lineAt_m * s };
  const base = towards(pole.heel, attachment);
  const along_m = (base.length_m ** 2 + high_m ** 2 - line_m ** 2) / (2 * base.length_m);
  const square2_m2 = high_m ** 2 - along_m ** 2;
  // at the start the circles may touch but for the last digit
  if (square2_m2 < -1e-9)
    return {
      kind: 'no pull',
      at: 'pole',
      wrong: `with the mast at ${shown(mast_deg)}° pole and line no longer reach each other`,
      right: 'put the pole’s heel nearer the hinge, or take a longer pole',
    };
  const square_m = Math.sqrt(Math.max(0, square2_m2));
  // the tip stands on the side of heel and attachment that is up with the mast down, ahead with it up
  return {
    ahead_m: pole.heel.ahead_m + along_m * base.ahead + square_m * base.up,
    up_m: pole.heel.up_m + along_m * base.up - square_m * base.ahead,
  };
}

/** From the middle between its heels to its tip. [m] */
const reach_m = ({ length_m, spread_m }: { readonly length_m: number; readonly spread_m: number }) =>
  Math.sqrt(length_m ** 2 - (spread_m / 2) ** 2);

function towards(from: PlaceAhead, to: PlaceAhead) {
  const [dx, dy] = [to.ahead_m - from.ahead_m, to.up_m - from.up_m];
  const length_m = Math.hypot(dx, dy);
  return { ahead: dx / length_m, up: dy / length_m, length_m };
}

const inParts = (deg: number) => [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)] as const;
const shown = (deg: number) => Math.round(deg * 10) / 10;
