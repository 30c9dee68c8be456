import {
  type Board,
  type BoardHoist,
  boardHoist,
  type HoistTravel,
  handLimit_N,
  type NoHoist,
  worst,
} from './board-hoist.ts';
import { type HoistLine, type LineStrength, lineStrength } from './board-line.ts';
import { type Bearing, bearings, type Handling, type Reeving, rove } from './tackle.ts';
import { usualWinchLoss } from './winch.ts';

/** A board's hoist with all it is made of, as it stands on the boat. */
export interface WholeHoist {
  readonly board: Board;
  /** from the board to the first tackle, or to the hand or drum */
  readonly wire: Omit<HoistLine, 'sheave_mm'>;
  readonly leads: {
    readonly count: number;
    readonly bearing: Bearing;
    /** at the bottom of the groove; null: not measured */
    readonly sheave_mm: number | null;
  };
  readonly tackles: readonly (Reeving & { readonly bearing: Bearing })[];
  /** rove through the last tackle; null: there is none */
  readonly cord: Omit<HoistLine, 'sheave_mm'> | null;
  readonly winch: {
    readonly gear: number;
    readonly handle_mm: number;
    readonly drum_mm: number;
    readonly width_mm: number;
    readonly woundWhenDown_m: number;
  } | null;
  /** null: in air */
  readonly water_kg_m3: number | null;
}

/** What cannot be hoisted as it is rove or led, with the tackle it is about. */
export type CannotHoist =
  | NoHoist
  | { readonly kind: 'does not reeve'; readonly tackle: number; readonly wrong: string; readonly right: string };

/** The greatest of a force over the travel, and where. */
export interface Hardest {
  readonly force_N: number;
  /** of the travel, all the way down 0. [%] */
  readonly hauled_pct: number;
  /** below level; null: it slides */
  readonly down_deg: number | null;
}

/** How a line bears what is asked of it. */
export interface LineUnderLoad {
  readonly line: HoistLine;
  /** most in it, hoisting. [N] */
  readonly most_N: number;
  readonly strength: LineStrength;
  /** breaking load as used over the most in it; null: not known, or nothing pulls */
  readonly times: number | null;
  /** null: not known */
  readonly holds: boolean | null;
}

/** What a hoist asks, over its whole travel. */
export interface HoistFigures {
  readonly kind: 'figures';
  readonly travel: HoistTravel;
  readonly hand: Readonly<Record<Handling, Hardest>>;
  /** what one person is asked, by what is in the hand. [N] */
  readonly handLimit_N: number;
  readonly wire: LineUnderLoad;
  readonly cord: LineUnderLoad | null;
  /** parts at the moving blocks, multiplied: what the tackles gain, nothing lost */
  readonly advantage: number;
}

/**
 * What a hand can pull on a bare line of a size: the usual limit on 8 mm or more, and less the thinner it is, for it
 * cuts in. Our assumption. [N]
 */
export function gripLimit_N(size_mm: number): number {
  return Math.min(handLimit_N.pull, assumedGrip_N_mm * size_mm);
}
const assumedGrip_N_mm = handLimit_N.pull / 8;

/** The hoist in the terms it is reckoned in, or what does not reeve. */
export function reckoned(hoist: WholeHoist): BoardHoist | Extract<CannotHoist, { readonly kind: 'does not reeve' }> {
  const tackles = [];
  for (const [n, { bearing, ...reeving }] of hoist.tackles.entries()) {
    const way = rove(reeving);
    if (way.kind !== 'rove') return { ...way, tackle: n };
    tackles.push({ parts: way.parts, sheaves: way.sheaves, factor: bearings[bearing].factor });
  }
  const { winch } = hoist;
  return {
    board: hoist.board,
    leads: { count: hoist.leads.count, factor: bearings[hoist.leads.bearing].factor },
    gear: {
      tackles,
      drum: winch && {
        winch: {
          gear: winch.gear,
          handle_mm: winch.handle_mm,
          drum_mm: winch.drum_mm,
          width_mm: winch.width_mm,
          wire_mm: lastLine(hoist).size_mm,
          loss: usualWinchLoss,
        },
        woundWhenDown_m: winch.woundWhenDown_m,
      },
    },
    water_kg_m3: hoist.water_kg_m3,
  };
}

/** What comes to hand, or lies on the drum. */
export const lastLine = ({ wire, cord }: Pick<WholeHoist, 'wire' | 'cord'>) => cord ?? wire;

/** Everything that is asked of hand, wire and cord over the travel, or why it cannot be hoisted. */
export function hoistFigures(hoist: WholeHoist): HoistFigures | CannotHoist {
  const asked = reckoned(hoist);
  if ('kind' in asked) return asked;
  const travel = boardHoist(asked);
  if (travel.kind !== 'travel') return travel;
  const hardest = (handling: Handling): Hardest => {
    const point = worst(travel, ({ hand_N }) => hand_N[handling]);
    return {
      force_N: point.hand_N[handling],
      hauled_pct: travel.wire_m > 0 ? (100 * point.hauled_m) / travel.wire_m : 0,
      down_deg: point.down_deg,
    };
  };
  const { drum } = asked.gear;
  // the wire bears most where it has turned over its last lead
  const wireMost_N =
    worst(travel, ({ wire_N }) => wire_N.hoisting).wire_N.hoisting * asked.leads.factor ** asked.leads.count;
  const cordMost_N = worst(travel, ({ fall_N }) => fall_N.hoisting).fall_N.hoisting;
  return {
    kind: 'figures',
    travel,
    hand: { hoisting: hardest('hoisting'), holding: hardest('holding'), lowering: hardest('lowering') },
    handLimit_N: drum ? handLimit_N.crank : gripLimit_N(lastLine(hoist).size_mm),
    wire: underLoad({ ...hoist.wire, sheave_mm: wireSheave_mm(hoist) }, wireMost_N),
    cord: hoist.cord && underLoad({ ...hoist.cord, sheave_mm: hoist.winch?.drum_mm ?? null }, cordMost_N),
    advantage: asked.gear.tackles.reduce((ratio, { parts }) => ratio * parts, 1),
  };
}

/** The smallest round that the wire runs over: its leads, and the drum where it is wound itself. */
function wireSheave_mm({ leads, cord, winch }: WholeHoist): number | null {
  const drum_mm = cord === null && winch !== null ? winch.drum_mm : null;
  const lead_mm = leads.count > 0 ? leads.sheave_mm : null;
  if (lead_mm === null) return drum_mm;
  return drum_mm === null ? lead_mm : Math.min(lead_mm, drum_mm);
}

function underLoad(line: HoistLine, most_N: number): LineUnderLoad {
  const strength = lineStrength(line);
  if (strength.kind === 'unknown') return { line, most_N, strength, times: null, holds: null };
  return {
    line,
    most_N,
    strength,
    times: most_N > 0 ? strength.breaking_N / most_N : null,
    holds: most_N <= strength.working_N,
  };
}
