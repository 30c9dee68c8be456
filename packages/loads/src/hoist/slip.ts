import { type HoistTravel, worst } from './board-hoist.ts';
import { turnsToHold } from './turns-round-a-post.ts';

/** What comes of it when clutch, pawl or hand lets go, no friction counted. */
export interface Slip {
  /** most that comes on what holds the last line: a cleat, a pin, the drum's own pawl. [N] */
  readonly onLine_N: number;
  /** most that comes on a pin or strop at the plate itself, where the wire is attached. [N] */
  readonly onWire_N: number;
  /** turns round a post or cleat that hold with a light hand on the tail */
  readonly turns: number;
  readonly lightHand_N: number;
  readonly friction: number;
  /** all the way up to all the way down: what the plate strikes with. [J] */
  readonly energy_J: number;
}

/** Turns and tail that are reckoned with: wet rope on smooth metal, a light hand. Our assumption. */
const assumed = { friction: 0.15, lightHand_N: 50 } as const;

/** What must hold where a clutch slips or a pawl jumps out, and what runs down if nothing does. */
export function slip(travel: HoistTravel): Slip {
  const onLine_N = worst(travel, ({ fall_N }) => fall_N.holding).fall_N.holding;
  return {
    onLine_N,
    onWire_N: worst(travel, ({ wire_N }) => wire_N.holding).wire_N.holding,
    turns: Math.ceil(turnsToHold(onLine_N, assumed.lightHand_N, assumed.friction) - 1e-9),
    ...assumed,
    energy_J: travel.work_J.gained,
  };
}
