import { inBase, inUnit, type Metres } from '#units';
import {
  assuming,
  choice,
  count,
  type Fault,
  type Field,
  type Figure,
  length,
  type Source,
  type WorkingLine,
} from '#working';
import { cautions } from '../cautions.ts';
import { type Gear, type HoistTravel, handLimit_N, worst } from './board-hoist.ts';
import {
  bearingField,
  drumField,
  endField,
  gearField,
  handleField,
  lossField,
  sources,
  waterField,
  wireField,
} from './hoist-fields.ts';
import { slip } from './slip.ts';
import { type Bearing, bearings, rove } from './tackle.ts';
import { reevingFault } from './tackle-questions.ts';
import { usualWinchLoss } from './winch.ts';

const gears = [
  { id: 'tackle', title: 'a tackle' },
  { id: 'winch', title: 'a small winch' },
  { id: 'both', title: 'a tackle, and a small winch on its fall' },
] as const;
type GearId = (typeof gears)[number]['id'];

/** The fields that questions about boards on their wires share: leads, tackle, winch and water. Each made anew. */
export const gearFields = () => ({
  water: waterField(),
  leads: assuming(count(0, 6, 'blocks the wire turns over on its way'), 2, '2', 'one above the case, one at its end'),
  bearing: bearingField('how the sheaves run'),
  gear: choice(gears, 'what the hand works') as Field<GearId>,
  'moving-sheaves': assuming(count(0, 8, 'tackle: sheaves that move'), 1, '1', 'two parts and one'),
  'fixed-sheaves': assuming(count(0, 8, 'tackle: sheaves that stand'), 1, '1', 'two parts and one'),
  'end-at': assuming(endField(), 'fixed' as const, 'at the standing block', 'two parts'),
  'winch-gear': gearField(),
  handle: assuming(handleField(), inBase('length', 200, 'mm'), '200 mm', 'a usual crank'),
  drum: assuming(drumField(), inBase('length', 40, 'mm'), '40 mm', 'a small winch'),
  wire: wireField(),
  width: assuming(
    length('mm', 5, 300, 'drum between its cheeks'),
    inBase('length', 50, 'mm'),
    '50 mm',
    'a small winch',
  ),
  loss: lossField(usualWinchLoss),
});

interface GearGiven {
  readonly gear: GearId;
  readonly bearing: Bearing;
  readonly 'moving-sheaves': number;
  readonly 'fixed-sheaves': number;
  readonly 'end-at': 'moving' | 'fixed';
  readonly 'winch-gear': number;
  readonly handle: Metres;
  readonly drum: Metres;
  readonly wire: Metres;
  readonly width: Metres;
  readonly loss: number;
}

const reevingGiven = (given: GearGiven) => ({
  movingSheaves: given['moving-sheaves'],
  fixedSheaves: given['fixed-sheaves'],
  endAt: given['end-at'],
});

/** What is wrong with the gear that was given, or null. */
export function gearFault(given: GearGiven): Fault | null {
  return given.gear === 'winch' ? null : reevingFault(reevingGiven(given));
}

/** The gear that was given. @throws RangeError where it does not reeve: `gearFault` says so first */
export function gearOf(given: GearGiven): Gear {
  const way = given.gear === 'winch' ? null : rove(reevingGiven(given));
  if (way !== null && way.kind !== 'rove') throw new RangeError(way.wrong);
  return {
    tackles: way === null ? [] : [{ parts: way.parts, sheaves: way.sheaves, factor: bearings[given.bearing].factor }],
    drum:
      given.gear === 'tackle'
        ? null
        : {
            winch: {
              gear: given['winch-gear'],
              handle_mm: inUnit('length', given.handle, 'mm'),
              drum_mm: inUnit('length', given.drum, 'mm'),
              width_mm: inUnit('length', given.width, 'mm'),
              wire_mm: inUnit('length', given.wire, 'mm'),
              loss: given.loss,
            },
            woundWhenDown_m: 0,
          },
  };
}

/** What every board on its wire is answered with: hand, wire, what there is to pull, and what holds if it slips. */
export function travelShown(travel: HoistTravel): {
  readonly results: readonly [Figure, ...Figure[]];
  readonly working: readonly WorkingLine[];
  readonly sources: readonly Source[];
  readonly cautions: readonly string[];
} {
  const hardest = worst(travel, (point) => point.hand_N.hoisting);
  const most = (of: 'holding' | 'lowering') => worst(travel, (point) => point.hand_N[of]).hand_N[of];
  const { toPull, work_J, points } = travel;
  const limit = toPull.kind === 'fall' ? handLimit_N.pull : handLimit_N.crank;
  const slipped = slip(travel);
  const where: Figure =
    hardest.down_deg === null
      ? { symbol: 'at', meaning: 'where that is, hauled in since it was down', value: hardest.hauled_m, unit: 'm' }
      : { symbol: 'at', meaning: 'where that is, below level', value: hardest.down_deg, unit: '°' };
  return {
    results: [
      { symbol: 'F hoisting', meaning: 'most at the hand, hoisting', value: hardest.hand_N.hoisting, unit: 'N' },
      where,
      { symbol: 'F holding', meaning: 'most at the hand, holding', value: most('holding'), unit: 'N' },
      { symbol: 'F lowering', meaning: 'most at the hand, lowering', value: most('lowering'), unit: 'N' },
      {
        symbol: 'T',
        meaning: 'most in the wire at the board',
        value: worst(travel, ({ wire_N }) => wire_N.hoisting).wire_N.hoisting,
        unit: 'N',
      },
      toPull.kind === 'fall'
        ? { symbol: 'cord', meaning: 'to pull for the whole travel', value: toPull.line_m, unit: 'm' }
        : {
            symbol: 'crank',
            meaning: 'turns of the crank for the whole travel',
            value: toPull.crankTurns,
            unit: 'turns',
          },
      {
        symbol: 'verdict',
        meaning: `against ${limit} N for one person`,
        value: hardest.hand_N.hoisting <= limit ? 'within it' : 'more than that',
        unit: '',
      },
    ],
    working: [
      {
        symbol: 'T down',
        meaning: 'in the wire, all the way down',
        value: points[0]!.wire_N.hoisting,
        unit: 'N',
        formula: 'hoisting',
      },
      {
        symbol: 'T up',
        meaning: 'in the wire, all the way up',
        value: points.at(-1)!.wire_N.hoisting,
        unit: 'N',
        formula: 'hoisting',
      },
      {
        symbol: 'if it slips',
        meaning: 'what comes on whatever holds the last line',
        value: slipped.onLine_N,
        unit: 'N',
        formula: 'no friction counted',
      },
      {
        symbol: 'turns to hold',
        meaning: `round a post, with ${slipped.lightHand_N} N on the tail and µ ${slipped.friction}`,
        value: slipped.turns,
        unit: 'turns',
        formula: 'ln(F/tail)/(2π·µ), made whole',
      },
      {
        symbol: 'work gained',
        meaning: 'by the plate; what it strikes with if it runs down',
        value: work_J.gained,
        unit: 'J',
        formula: 'Σ T·wire',
      },
      {
        symbol: 'work given',
        meaning: 'by the hand',
        value: work_J.given,
        unit: 'J',
        formula: 'Σ F·travel of the hand',
      },
      ...(toPull.kind === 'fall'
        ? []
        : [
            {
              symbol: 'drum',
              meaning: 'turns of the drum for the whole travel',
              value: toPull.drumTurns,
              unit: 'turns',
              formula: 'line ÷ circle of each layer',
            },
            {
              symbol: 'layer',
              meaning: 'that the last of the line lies in',
              value: toPull.layer,
              unit: '',
              formula: 'width ÷ line to a layer',
            },
          ]),
    ],
    sources: [
      sources.sheave,
      ...(toPull.kind === 'crank' ? [sources.winch] : []),
      sources.hand,
      sources.noBrake,
      sources.rope,
    ],
    cautions: [cautions.under, cautions.slip, cautions.winch, cautions.persons, cautions.guidance],
  };
}
