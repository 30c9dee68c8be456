/** The trailer of the book as the boat is drawn on it. */
import type { Boat, TrailerRecord } from '#boat-book';

export interface TrailerDrawn {
  /** as `boatDrawing` takes them; what is undefined it draws as is usual. [m] */
  readonly sizes: {
    readonly couplingAhead_m: number;
    readonly axleFromBow_m: number;
    readonly axles: 1 | 2;
    readonly wheel_m: number | undefined;
  };
  /** sizes that are not in the book */
  readonly guessed: readonly string[];
}

/** How a trailer lies under her stem. Where she stands on it is not measured: the axle as usual, the stem short of the ball. */
export function trailerDrawn(boat: Boat, { ballAhead_m, stemAhead_m, axles, wheel_m }: TrailerRecord): TrailerDrawn {
  const axleFromBow_m = stemAhead_m ?? Math.min(ballAhead_m - 0.5, 0.61 * boat.length_m);
  return {
    sizes: { couplingAhead_m: ballAhead_m - axleFromBow_m, axleFromBow_m, axles, wheel_m: wheel_m ?? undefined },
    guessed: [...(stemAhead_m === null ? ['where she stands on it'] : []), ...(wheel_m === null ? ['the wheels'] : [])],
  };
}
