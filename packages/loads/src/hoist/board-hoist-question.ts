import { inBase, inUnit, type Metres } from '#units';
import { angle, assuming, choice, count, type Field, length, mass, question } from '#working';
import { cautions } from '../cautions.ts';
import { boardHoist, handLimit_N, worst } from './board-hoist.ts';
import {
  bearingField,
  densityField,
  drumField,
  endField,
  gearField,
  handleField,
  lossField,
  sources,
  waterField,
  wireField,
} from './hoist-fields.ts';
import { platePull, seaWater_kg_m3 } from './plate.ts';
import { bearings, rove } from './tackle.ts';
import { reevingFault } from './tackle-questions.ts';
import { usualWinchLoss } from './winch.ts';

const boardKinds = [
  { id: 'tackle', title: 'a tackle' },
  { id: 'winch', title: 'a small winch' },
] as const;

export function boardHoistQuestion() {
  const m = (value: number) => inBase('length', value, 'm');
  return question({
    id: 'loads.board-hoist',
    title: 'What does hoisting the board take, over the whole travel?',
    fields: {
      mass: mass('kg', 1, 500, 'the plate'),
      density: densityField(),
      'mass-along': length('m', 0.01, 3, 'from the pivot to the centre of mass, along the plate'),
      'mass-square': assuming(
        length('m', -1, 1, 'centre of mass above the line along the plate'),
        m(0),
        '0 m',
        'an even plate',
      ),
      'attached-along': length('m', 0, 3, 'from the pivot to the wire, along the plate'),
      'attached-square': assuming(
        length('m', -0.3, 0.5, 'the wire’s attachment above that line'),
        m(0),
        '0 m',
        'on the line',
      ),
      'lead-aft': length('m', -0.5, 4, 'from the pivot aft to where the wire leaves upwards'),
      'lead-up': length('m', 0.1, 3, 'from the pivot up to the same'),
      'down-to': assuming(
        angle('°', 30, 100, 'all the way down, below level'),
        inBase('angle', 70, '°'),
        '70°',
        'a usual plate',
      ),
      'up-to': assuming(
        angle('°', -10, 25, 'all the way up, below level'),
        inBase('angle', 0, '°'),
        '0°',
        'level in its case',
      ),
      water: waterField(),
      leads: assuming(
        count(0, 6, 'blocks the wire turns over on its way'),
        2,
        '2',
        'one above the case, one at its end',
      ),
      bearing: bearingField('how the sheaves run'),
      gear: choice(boardKinds, 'what the hand works') as Field<'tackle' | 'winch'>,
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
    },
    conflict: (given) => {
      if (given['up-to'] >= given['down-to'])
        return {
          where: 'up-to',
          wrong: `up at ${given['up-to']}° is not above down at ${given['down-to']}°, both below level`,
          right: `give less than ${given['down-to']}°`,
        };
      if (given.gear === 'tackle') {
        const fault = reevingFault({
          movingSheaves: given['moving-sheaves'],
          fixedSheaves: given['fixed-sheaves'],
          endAt: given['end-at'],
        });
        if (fault !== null) return fault;
      }
      const plate = plateOf(given);
      for (let n = 0; n <= 60; n++) {
        const pull = platePull(plate, given['down-to'] + ((given['up-to'] - given['down-to']) * n) / 60, 1);
        if (pull.kind === 'no pull')
          return {
            where: pull.at === 'attachment' ? 'attached-along' : 'lead-aft',
            wrong: pull.wrong,
            right: pull.right,
          };
      }
      return null;
    },
    answer: (given) => {
      const travel = boardHoist({
        board: { kind: 'pivoting', plate: plateOf(given), downTo_deg: given['down-to'], upTo_deg: given['up-to'] },
        leads: { count: given.leads, factor: bearings[given.bearing].factor },
        gear: gearOf(given),
        water_kg_m3: given.water === 'sea' ? seaWater_kg_m3 : null,
      });
      if (travel.kind !== 'travel') throw new RangeError(travel.wrong);
      const hardest = worst(travel, (point) => point.hand_N.hoisting);
      const tightest = worst(travel, (point) => point.wire_N);
      const limit = given.gear === 'tackle' ? handLimit_N.pull : handLimit_N.crank;
      const { toPull, work_J } = travel;
      return {
        kind: 'found',
        results: [
          { symbol: 'F hoisting', meaning: 'most at the hand, hoisting', value: hardest.hand_N.hoisting, unit: 'N' },
          { symbol: 'at', meaning: 'where that is, below level', value: hardest.down_deg ?? 0, unit: '°' },
          {
            symbol: 'F holding',
            meaning: 'most at the hand, holding',
            value: worst(travel, (p) => p.hand_N.holding).hand_N.holding,
            unit: 'N',
          },
          {
            symbol: 'F lowering',
            meaning: 'most at the hand, lowering',
            value: worst(travel, (p) => p.hand_N.lowering).hand_N.lowering,
            unit: 'N',
          },
          { symbol: 'T', meaning: 'most in the wire', value: tightest.wire_N, unit: 'N' },
          toPull.kind === 'fall'
            ? { symbol: 'cord', meaning: 'to pull for the whole travel', value: toPull.cord_m, unit: 'm' }
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
            symbol: 'wire',
            meaning: 'hauled in over the travel',
            value: travel.wire_m,
            unit: 'm',
            formula: 'attachment to lead, down less up',
          },
          {
            symbol: 'T down',
            meaning: 'in the wire, all the way down',
            value: travel.points[0]!.wire_N,
            unit: 'N',
            formula: 'W·arm of mass/arm of wire',
          },
          {
            symbol: 'T up',
            meaning: 'in the wire, all the way up',
            value: travel.points.at(-1)!.wire_N,
            unit: 'N',
            formula: 'W·arm of mass/arm of wire',
          },
          {
            symbol: 'pivot',
            meaning: 'most that the pivot bears',
            value: worst(travel, (p) => p.pivot_N ?? 0).pivot_N ?? 0,
            unit: 'N',
            formula: 'what is left of weight and wire',
          },
          {
            symbol: 'if it slips',
            meaning: 'what comes on whatever holds the wire, at the gear',
            value: tightest.wire_N,
            unit: 'N',
            formula: 'T, no friction counted',
          },
          { symbol: 'work gained', meaning: 'by the plate', value: work_J.gained, unit: 'J', formula: 'Σ T·wire' },
          {
            symbol: 'work given',
            meaning: 'by the hand',
            value: work_J.given,
            unit: 'J',
            formula: 'Σ F·travel of the hand',
          },
        ],
        sources: [
          sources.moments,
          sources.sheave,
          ...(given.gear === 'winch' ? [sources.winch] : []),
          sources.density,
          sources.hand,
          sources.noBrake,
        ],
        limits: [
          'No friction at the pivot or in the case, no water flowing past; a plate that jams asks for more than any sum says.',
        ],
        cautions: [cautions.under, cautions.slip, cautions.winch, cautions.persons, cautions.guidance],
      };
    },
  });
}

function plateOf(given: {
  readonly mass: number;
  readonly density: number;
  readonly 'mass-along': number;
  readonly 'mass-square': number;
  readonly 'attached-along': number;
  readonly 'attached-square': number;
  readonly 'lead-aft': number;
  readonly 'lead-up': number;
}) {
  return {
    mass_kg: given.mass,
    density_kg_m3: given.density,
    centreOfMass: { along_m: given['mass-along'], square_m: given['mass-square'] },
    attachment: { along_m: given['attached-along'], square_m: given['attached-square'] },
    lead: { aft_m: given['lead-aft'], up_m: given['lead-up'] },
  };
}

function gearOf(given: {
  readonly gear: 'tackle' | 'winch';
  readonly bearing: keyof typeof bearings;
  readonly 'moving-sheaves': number;
  readonly 'fixed-sheaves': number;
  readonly 'end-at': 'moving' | 'fixed';
  readonly 'winch-gear': number;
  readonly handle: Metres;
  readonly drum: Metres;
  readonly wire: Metres;
  readonly width: Metres;
  readonly loss: number;
}) {
  if (given.gear === 'tackle') {
    const way = rove({
      movingSheaves: given['moving-sheaves'],
      fixedSheaves: given['fixed-sheaves'],
      endAt: given['end-at'],
    });
    if (way.kind !== 'rove') throw new RangeError(way.wrong);
    return { kind: 'tackle' as const, parts: way.parts, sheaves: way.sheaves, factor: bearings[given.bearing].factor };
  }
  return {
    kind: 'winch' as const,
    winch: {
      gear: given['winch-gear'],
      handle_mm: inUnit('length', given.handle, 'mm'),
      drum_mm: inUnit('length', given.drum, 'mm'),
      width_mm: inUnit('length', given.width, 'mm'),
      wire_mm: inUnit('length', given.wire, 'mm'),
      loss: given.loss,
    },
    onDrumWhenDown_m: 0,
  };
}
