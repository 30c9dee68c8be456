/** A vang between boom and mast, or the deck. */
export interface Vang {
  /** from the gooseneck along the boom to where it takes hold. [m], > 0 */
  readonly boomAlong_m: number;
  /** its lower end below the gooseneck. [m] */
  readonly below_m: number;
  /** its lower end aft of the gooseneck. [m] */
  readonly aft_m: number;
}

/** Forces with the boom held down. */
export interface VangForces {
  /** from the gooseneck square to the line of the vang. [m] */
  readonly arm_m: number;
  readonly vang_N: number;
  /** along the boom, pressing on the gooseneck. [N] */
  readonly thrust_N: number;
  /** of the boom on the gooseneck, square to the boom: above zero it lifts it, below it presses it down. [N] */
  readonly square_N: number;
  /** from end to end of the vang. [m] */
  readonly length_m: number;
}

/**
 * Force in a vang that balances a moment lifting the boom, by moments about the gooseneck: moment over the distance from
 * the gooseneck square to the vang. The boom's weight and the sheet are not counted.
 *
 * @param lift_N     square to the boom, upwards. [N], ≥ 0
 * @param liftAt_m   where, from the gooseneck. [m], > 0
 * @param boomUp_deg the boom's outer end above level. −20 to 40
 */
export function vangForces(vang: Vang, lift_N: number, liftAt_m: number, boomUp_deg: number): VangForces {
  const up = (boomUp_deg * Math.PI) / 180;
  const [ux, uy] = [Math.cos(up), Math.sin(up)];
  const [x, y] = [vang.boomAlong_m * ux, vang.boomAlong_m * uy];
  const [dx, dy] = [vang.aft_m - x, -vang.below_m - y];
  const length_m = Math.hypot(dx, dy);
  // turning the boom down is what it is for
  const arm_m = (y * dx - x * dy) / length_m;
  const vang_N = (lift_N * liftAt_m) / arm_m;
  const along_N = (vang_N * (dx * ux + dy * uy)) / length_m;
  const square_N = (vang_N * (-dx * uy + dy * ux)) / length_m + lift_N;
  return { arm_m, vang_N, thrust_N: -along_N, square_N, length_m };
}
