import { type HingedPlate, hangingWeight_N, type PlatePull, platePull } from './plate.ts';
import { fallForce_N, type Handling, towardsHand } from './tackle.ts';
import { powerRatio, type Winch, wound } from './winch.ts';

/** What hangs on the wire: a plate that turns on a pivot, or one that slides up and down. */
export type Board =
  | { readonly kind: 'pivoting'; readonly plate: HingedPlate; readonly downTo_deg: number; readonly upTo_deg: number }
  | {
      readonly kind: 'sliding';
      readonly mass_kg: number;
      readonly density_kg_m3: number;
      readonly travel_m: number;
    };

/** What the hand works: a tackle, a winch, or the wire's own tail. */
export type Gear =
  | { readonly kind: 'tackle'; readonly parts: number; readonly sheaves: number; readonly factor: number }
  | { readonly kind: 'winch'; readonly winch: Winch; readonly onDrumWhenDown_m: number };

export interface BoardHoist {
  readonly board: Board;
  /** blocks that the wire turns over between the board and the gear. 0–6 */
  readonly leads: { readonly count: number; readonly factor: number };
  readonly gear: Gear;
  /** density of the water it hangs in; null: in air */
  readonly water_kg_m3: number | null;
}

/** What is felt at one place of the travel. */
export interface HoistPoint {
  /** below level; null: it slides */
  readonly down_deg: number | null;
  /** wire hauled in since the board was all the way down. [m] */
  readonly hauled_m: number;
  readonly wire_N: number;
  readonly pivot_N: number | null;
  /** at the hand, on the fall or the crank */
  readonly hand_N: Readonly<Record<Handling, number>>;
}

export interface HoistTravel {
  readonly kind: 'travel';
  /** from all the way down to all the way up */
  readonly points: readonly HoistPoint[];
  /** wire hauled in over the whole travel. [m] */
  readonly wire_m: number;
  /** fall pulled through, or wire wound with the turns of crank and drum it takes */
  readonly toPull:
    | { readonly kind: 'fall'; readonly cord_m: number }
    | { readonly kind: 'crank'; readonly drumTurns: number; readonly crankTurns: number; readonly layer: number };
  /** over the whole travel: what the load gains, and what the hand gives, hoisting. [J] */
  readonly work_J: { readonly gained: number; readonly given: number };
}

export type Hoisted = HoistTravel | Extract<PlatePull, { readonly kind: 'no pull' }>;

/** Most a person is asked to pull on a fall or turn at a crank, alone and again and again. Our assumption. */
export const handLimit_N = { pull: 200, crank: 120 } as const;

/** places of the travel that are looked at */
const places = 60;

/**
 * What hoisting, holding and lowering a board takes at the hand over its whole travel. Friction takes from the hand when
 * it hoists, helps it when it lowers, and is not counted when it holds.
 */
export function boardHoist({ board, leads, gear, water_kg_m3 }: BoardHoist): Hoisted {
  const { mass_kg, density_kg_m3 } = board.kind === 'pivoting' ? board.plate : board;
  const weight_N = hangingWeight_N(mass_kg, density_kg_m3, water_kg_m3);
  const pulls: { down_deg: number | null; wire_N: number; toLead_m: number; pivot_N: number | null }[] = [];
  for (let n = 0; n <= places; n++) {
    if (board.kind === 'sliding') {
      const toLead_m = board.travel_m * (1 - n / places);
      pulls.push({ down_deg: null, wire_N: weight_N, toLead_m, pivot_N: null });
      continue;
    }
    const down_deg = board.downTo_deg + ((board.upTo_deg - board.downTo_deg) * n) / places;
    const pull = platePull(board.plate, down_deg, weight_N);
    if (pull.kind === 'no pull') return pull;
    const pivot_N = Math.hypot(pull.pivot_N.aft, pull.pivot_N.up);
    pulls.push({ down_deg, wire_N: pull.tension_N, toLead_m: pull.wire_m, pivot_N });
  }
  const longest_m = pulls[0]!.toLead_m;
  const points = pulls.map(({ down_deg, wire_N, toLead_m, pivot_N }): HoistPoint => {
    const hauled_m = longest_m - toLead_m;
    const hand = (handling: Handling) =>
      atHand_N(wire_N * towardsHand(leads.factor, handling) ** leads.count, gear, hauled_m, handling);
    return {
      down_deg,
      hauled_m,
      wire_N,
      pivot_N,
      hand_N: { hoisting: hand('hoisting'), holding: hand('holding'), lowering: hand('lowering') },
    };
  });
  const wire_m = points.at(-1)!.hauled_m;
  return {
    kind: 'travel',
    points,
    wire_m,
    toPull: toPull(gear, wire_m),
    work_J: {
      gained: over(points, ({ wire_N }) => wire_N),
      given: over(points, (point) => point.hand_N.hoisting * handTravel(gear, point.hauled_m)),
    },
  };
}

function atHand_N(pull_N: number, gear: Gear, hauled_m: number, handling: Handling): number {
  if (gear.kind === 'tackle') return fallForce_N(pull_N, gear.parts, gear.sheaves, gear.factor, handling);
  const { winch, onDrumWhenDown_m } = gear;
  const { layer } = wound(winch, onDrumWhenDown_m + Math.max(0, hauled_m));
  // hoisting, the loss comes on top; lowering, it comes off; holding, it is not counted
  const kept = handling === 'hoisting' ? 1 / (1 - winch.loss) : handling === 'holding' ? 1 : 1 - winch.loss;
  return (pull_N * kept) / powerRatio(winch, layer);
}

/** Travel of the hand for one of the wire. */
function handTravel(gear: Gear, hauled_m: number): number {
  if (gear.kind === 'tackle') return gear.parts;
  return powerRatio(gear.winch, wound(gear.winch, gear.onDrumWhenDown_m + Math.max(0, hauled_m)).layer);
}

function toPull(gear: Gear, wire_m: number): HoistTravel['toPull'] {
  if (gear.kind === 'tackle') return { kind: 'fall', cord_m: gear.parts * wire_m };
  const { winch, onDrumWhenDown_m } = gear;
  const [down, up] = [wound(winch, onDrumWhenDown_m), wound(winch, onDrumWhenDown_m + wire_m)];
  const drumTurns = up.turns - down.turns;
  return { kind: 'crank', drumTurns, crankTurns: drumTurns * winch.gear, layer: up.layer };
}

/** A force summed over the wire hauled in, by trapezes. [J] */
function over(points: readonly HoistPoint[], force_N: (point: HoistPoint) => number): number {
  let sum = 0;
  for (let n = 1; n < points.length; n++)
    sum += ((force_N(points[n]!) + force_N(points[n - 1]!)) / 2) * (points[n]!.hauled_m - points[n - 1]!.hauled_m);
  return sum;
}

/** The greatest force of the travel, and where. */
export function worst(travel: HoistTravel, of: (point: HoistPoint) => number): HoistPoint {
  return travel.points.reduce((most, point) => (of(point) > of(most) ? point : most));
}
