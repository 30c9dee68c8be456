import { standardGravity_m_s2 } from '#units';
import type { PlaceAhead } from './mast-raising.ts';

/** What is to keep a mast from falling sideways while it goes up on its hinge. */
export interface MastSideways {
  readonly mass_kg: number;
  /** from the hinge to its centre of mass. [m] */
  readonly massAt_m: number;
  /** from the hinge to where the shroud, or a side guy, takes hold. [m] */
  readonly shroudAt_m: number;
  /** chainplate beside the hinge: ahead of it (below zero: aft) and above it, and out to the side. [m] */
  readonly chainplate: PlaceAhead;
  readonly out_m: number;
  /** how far the boat leans to one side. [°] */
  readonly heel_deg: number;
}

/** How a shroud that is taut with the mast up hangs at an angle of the mast. */
export interface ShroudPoint {
  readonly mast_deg: number;
  /** too long by this; below zero it would be too short, and holds the mast back or breaks. [m] */
  readonly slack_m: number;
}

/** Slack of a shroud over the way of the mast, from level to upright. @param from_deg mast above level */
export function shroudSlack(sideways: MastSideways, from_deg: number): readonly ShroudPoint[] {
  const places = 60;
  const taut_m = shroudLength_m(sideways, 90);
  return Array.from({ length: places + 1 }, (_, n) => {
    const mast_deg = from_deg + ((90 - from_deg) * n) / places;
    return { mast_deg, slack_m: taut_m - shroudLength_m(sideways, mast_deg) };
  });
}

function shroudLength_m({ shroudAt_m, chainplate, out_m }: MastSideways, mast_deg: number): number {
  const angle = (mast_deg * Math.PI) / 180;
  return Math.hypot(
    -shroudAt_m * Math.cos(angle) - chainplate.ahead_m,
    shroudAt_m * Math.sin(angle) - chainplate.up_m,
    out_m,
  );
}

/** Moment that turns the mast over to one side on a boat that leans: the same all the way up. [N·m] */
export function sideMoment_N_m({ mass_kg, massAt_m, heel_deg }: MastSideways): number {
  return mass_kg * standardGravity_m_s2 * massAt_m * Math.sin((heel_deg * Math.PI) / 180);
}

/** Force in a line to one side that holds it, made fast abreast of the hinge and at its height. [N] */
export function sideLine_N(sideways: MastSideways): number {
  const { shroudAt_m, out_m } = sideways;
  return sideMoment_N_m(sideways) / ((shroudAt_m * out_m) / Math.hypot(shroudAt_m, out_m));
}
