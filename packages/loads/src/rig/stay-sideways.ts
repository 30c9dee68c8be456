import { type Laid, type StayLoad, stayLoadByTension, stiffness_N } from './wire-stretch.ts';

/** A stay pulled sideways at one place. */
export interface SidewaysPull {
  /** between the points that hold the stay. [m], > 0 */
  readonly length_m: number;
  /** from the nearer end to where it is pulled. [m], between 0 and the length */
  readonly pulledAt_m: number;
  /** square to the stay, by a spring balance. [N], > 0 */
  readonly pull_N: number;
  /** how far it came aside there. [m], > 0 */
  readonly aside_m: number;
}

/**
 * Tension in a stay by a known pull sideways: while pulled, and at rest, which is less by what the longer way stretches it.
 * Its ends are taken to stand still, and the wire to bend freely.
 *
 * @param stiffness_N  of the wire, force for a strain of one. [N]
 * @returns            [N]; at rest below zero where it was slack and the pull itself made it taut
 */
export function tensionBySidewaysPull(
  { length_m, pulledAt_m, pull_N, aside_m }: SidewaysPull,
  stiffness_N: number,
): { readonly pulled_N: number; readonly atRest_N: number } {
  const [short, long] = [Math.hypot(pulledAt_m, aside_m), Math.hypot(length_m - pulledAt_m, aside_m)];
  const pulled_N = pull_N / (aside_m / short + aside_m / long);
  const longer_m = short + long - length_m;
  return { pulled_N, atRest_N: (pulled_N * length_m - stiffness_N * longer_m) / (length_m + longer_m) };
}

/** How much too long a slack stay is whose middle can be moved so far to either side before it comes taut. [m] */
export function slackBySway_m(length_m: number, sway_m: number): number {
  return 2 * Math.hypot(length_m / 2, sway_m) - length_m;
}

/**
 * What a stay bears by a pull sideways, with a band for a millimetre and a twentieth of the pull misread. A tension of 0
 * where it was slack and the pull itself made it taut.
 */
export function stayLoadByPull(laid: Laid, size_mm: number, pull: SidewaysPull): StayLoad {
  const stiff_N = stiffness_N(laid, size_mm);
  const atRest_N = (more_m: number, share: number) =>
    Math.max(
      0,
      tensionBySidewaysPull(
        { ...pull, pull_N: pull.pull_N * share, aside_m: Math.max(0.0005, pull.aside_m + more_m) },
        stiff_N,
      ).atRest_N,
    );
  const tension_N = atRest_N(0, 1);
  return stayLoadByTension(laid, size_mm, {
    tension_N,
    low_N: Math.min(tension_N, atRest_N(0.001, 0.95)),
    high_N: Math.max(tension_N, atRest_N(-0.001, 1.05)),
  });
}
