import { type HingedPlate, hangingWeight_N, type PlatePull, platePull } from './plate.ts';
import { type SlidingPlate, slidingPull } from './sliding-board.ts';
import { fallForce_N, type Handling, type Tackle, towardsHand } from './tackle.ts';
import { powerRatio, type Winch, wound } from './winch.ts';

/** What hangs on the wire: a plate that turns on a pivot, or one that slides up and down. */
export type Board =
  | { readonly kind: 'pivoting'; readonly plate: HingedPlate; readonly downTo_deg: number; readonly upTo_deg: number }
  | { readonly kind: 'sliding'; readonly plate: SlidingPlate; readonly travel_m: number };

/** What the hand works. */
export interface Gear {
  /** the first on the wire, each other on the fall of the one before; none: the wire itself comes on */
  readonly tackles: readonly Tackle[];
  /** what winds the last line; null: it comes to hand */
  readonly drum: { readonly winch: Winch; readonly woundWhenDown_m: number } | null;
}

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
  /** at the board; all three alike unless it rubs in its case */
  readonly wire_N: Readonly<Record<Handling, number>>;
  readonly pivot_N: number | null;
  /** in the last line, before the winch or at the hand */
  readonly fall_N: Readonly<Record<Handling, number>>;
  /** at the hand, on the fall or the crank */
  readonly hand_N: Readonly<Record<Handling, number>>;
}

export interface HoistTravel {
  readonly kind: 'travel';
  /** from all the way down to all the way up */
  readonly points: readonly HoistPoint[];
  /** wire hauled in over the whole travel. [m] */
  readonly wire_m: number;
  /** that the moving block of each tackle needs to travel. [m] */
  readonly room_m: readonly number[];
  /** of the last line: pulled through the hand, or wound with the turns of crank and drum it takes */
  readonly toPull:
    | { readonly kind: 'fall'; readonly line_m: number }
    | {
        readonly kind: 'crank';
        readonly line_m: number;
        readonly drumTurns: number;
        readonly crankTurns: number;
        readonly layer: number;
      };
  /** over the whole travel: what the load gains, and what the hand gives, hoisting. [J] */
  readonly work_J: { readonly gained: number; readonly given: number };
}

export type NoHoist = Extract<PlatePull, { readonly kind: 'no pull' }>;
export type Hoisted = HoistTravel | NoHoist;

/** Most a person is asked to pull on a fall or turn at a crank, alone and again and again. Our assumption. */
export const handLimit_N = { pull: 200, crank: 120 } as const;

/** places of the travel that are looked at */
const places = 60;

interface Pull {
  readonly down_deg: number | null;
  readonly wire_N: Readonly<Record<Handling, number>>;
  readonly toLead_m: number;
  readonly pivot_N: number | null;
}

/**
 * What hoisting, holding and lowering a board takes at the hand over its whole travel. Friction takes from the hand when
 * it hoists, helps it when it lowers, and is not counted when it holds.
 */
export function boardHoist({ board, leads, gear, water_kg_m3 }: BoardHoist): Hoisted {
  const pulls: Pull[] = [];
  for (let n = 0; n <= places; n++) {
    const pull = pullAt(board, n / places, water_kg_m3);
    if ('kind' in pull) return pull;
    pulls.push(pull);
  }
  const longest_m = pulls[0]!.toLead_m;
  const points = pulls.map(({ down_deg, wire_N, toLead_m, pivot_N }): HoistPoint => {
    const hauled_m = longest_m - toLead_m;
    const fall = (handling: Handling) =>
      onFall_N(wire_N[handling] * towardsHand(leads.factor, handling) ** leads.count, gear, handling);
    const fall_N = byHandling(fall);
    return {
      down_deg,
      hauled_m,
      wire_N,
      pivot_N,
      fall_N,
      hand_N: byHandling((handling) => atHand_N(fall_N[handling], gear, hauled_m, handling)),
    };
  });
  const wire_m = points.at(-1)!.hauled_m;
  return {
    kind: 'travel',
    points,
    wire_m,
    room_m: gear.tackles.map((_, n) => wire_m * advantage(gear.tackles.slice(0, n))),
    toPull: toPull(gear, wire_m),
    work_J: {
      gained: over(points, ({ wire_N }) => wire_N.holding),
      given: over(points, (point) => point.hand_N.hoisting * handTravel(gear, point.hauled_m)),
    },
  };
}

function byHandling(of: (handling: Handling) => number): Readonly<Record<Handling, number>> {
  return { hoisting: of('hoisting'), holding: of('holding'), lowering: of('lowering') };
}

/** @param share  of the travel, 0 all the way down */
function pullAt(board: Board, share: number, water_kg_m3: number | null): Pull | NoHoist {
  if (board.kind === 'sliding') {
    const pull = slidingPull(board.plate, board.travel_m * share, water_kg_m3);
    if (pull.kind === 'no pull') return pull;
    return { down_deg: null, wire_N: pull.wire_N, toLead_m: board.travel_m * (1 - share), pivot_N: null };
  }
  const { plate, downTo_deg, upTo_deg } = board;
  const down_deg = downTo_deg + (upTo_deg - downTo_deg) * share;
  const pull = platePull(plate, down_deg, hangingWeight_N(plate.mass_kg, plate.density_kg_m3, water_kg_m3));
  if (pull.kind === 'no pull') return pull;
  return {
    down_deg,
    wire_N: byHandling(() => pull.tension_N),
    toLead_m: pull.wire_m,
    pivot_N: Math.hypot(pull.pivot_N.aft, pull.pivot_N.up),
  };
}

/** What one tackle after the other leaves of a pull. */
const onFall_N = (pull_N: number, { tackles }: Gear, handling: Handling): number =>
  tackles.reduce((load, { parts, sheaves, factor }) => fallForce_N(load, parts, sheaves, factor, handling), pull_N);

/** Line that comes off the last tackle for one of the wire. */
const advantage = (tackles: readonly Tackle[]): number => tackles.reduce((ratio, { parts }) => ratio * parts, 1);

const ratioAt = (drum: NonNullable<Gear['drum']>, pulled_m: number): number =>
  powerRatio(drum.winch, wound(drum.winch, drum.woundWhenDown_m + Math.max(0, pulled_m)).layer);

function atHand_N(fall_N: number, { tackles, drum }: Gear, hauled_m: number, handling: Handling): number {
  if (drum === null) return fall_N;
  // hoisting, the loss comes on top; lowering, it comes off; holding, it is not counted
  const { loss } = drum.winch;
  const kept = handling === 'hoisting' ? 1 / (1 - loss) : handling === 'holding' ? 1 : 1 - loss;
  return (fall_N * kept) / ratioAt(drum, advantage(tackles) * hauled_m);
}

/** Travel of the hand for one of the wire. */
function handTravel({ tackles, drum }: Gear, hauled_m: number): number {
  const ratio = advantage(tackles);
  return drum === null ? ratio : ratio * ratioAt(drum, ratio * hauled_m);
}

function toPull({ tackles, drum }: Gear, wire_m: number): HoistTravel['toPull'] {
  const line_m = advantage(tackles) * wire_m;
  if (drum === null) return { kind: 'fall', line_m };
  const [down, up] = [wound(drum.winch, drum.woundWhenDown_m), wound(drum.winch, drum.woundWhenDown_m + line_m)];
  const drumTurns = up.turns - down.turns;
  return { kind: 'crank', line_m, drumTurns, crankTurns: drumTurns * drum.winch.gear, layer: up.layer };
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
