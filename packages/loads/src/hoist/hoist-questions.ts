import { inBase, inUnit } from '#units';
import {
  angle,
  assuming,
  choice,
  count,
  type Field,
  force,
  length,
  mass,
  number,
  type Question,
  question,
} from '#working';
import { boardHoist, handLimit_N, worst } from './board-hoist.ts';
import {
  bearingField,
  cautions,
  densityField,
  drumField,
  endField,
  fixedField,
  gearField,
  handleField,
  loadField,
  lossField,
  movingField,
  sources,
  waterField,
  wireField,
} from './hoist-fields.ts';
import { hangingWeight_N, plateMass_kg, platePull, seaWater_kg_m3 } from './plate.ts';
import { bearings, fallForce_N, type Reeving, rove, tackleEfficiency } from './tackle.ts';
import { tailForce_N, turnsToHold } from './turns-round-a-post.ts';
import { bareDrumRatio, powerRatio, usualWinchLoss, wound } from './winch.ts';

/** The questions about hoisting: tackles, turns round a post, winches, plates. */
export function hoistQuestions(): readonly Question[] {
  return [tackleQuestion(), postQuestion(), winchQuestion(), plateQuestion(), boardHoistQuestion()];
}

/** What is wrong with a reeving, where a question names it. */
function reevingFault(reeving: Reeving) {
  const way = rove(reeving);
  return way.kind === 'rove' ? null : { where: 'moving-sheaves', wrong: way.wrong, right: way.right };
}

function tackleQuestion() {
  return question({
    id: 'loads.tackle',
    title: 'What does a tackle ask of the hand?',
    fields: {
      load: loadField(),
      'moving-sheaves': movingField(),
      'fixed-sheaves': fixedField(),
      'end-at': endField(),
      bearing: bearingField('how the sheaves run'),
      'turning-blocks': assuming(
        count(0, 6, 'blocks that only turn the fall'),
        0,
        '0',
        'the fall comes straight to hand',
      ),
    },
    conflict: ({ 'moving-sheaves': movingSheaves, 'fixed-sheaves': fixedSheaves, 'end-at': endAt }) =>
      reevingFault({ movingSheaves, fixedSheaves, endAt }),
    answer: ({ load, bearing, ...given }) => {
      const way = rove({
        movingSheaves: given['moving-sheaves'],
        fixedSheaves: given['fixed-sheaves'],
        endAt: given['end-at'],
      });
      if (way.kind !== 'rove') throw new RangeError(way.wrong);
      const { parts } = way;
      const sheaves = way.sheaves + given['turning-blocks'];
      const { factor } = bearings[bearing];
      const hoisting = fallForce_N(load, parts, sheaves, factor, 'hoisting');
      return {
        kind: 'found',
        results: [
          { symbol: 'F hoisting', meaning: 'on the fall, to hoist', value: hoisting, unit: 'N' },
          { symbol: 'F holding', meaning: 'to hold, no friction counted', value: load / parts, unit: 'N' },
          {
            symbol: 'F lowering',
            meaning: 'to let down slowly',
            value: fallForce_N(load, parts, sheaves, factor, 'lowering'),
            unit: 'N',
          },
          { symbol: 'cord', meaning: 'pulled for each metre of hoist', value: parts, unit: 'm' },
          {
            symbol: 'verdict',
            meaning: 'for one person, again and again',
            value: hoisting <= handLimit_N.pull ? 'within a pull of 200 N' : 'more than a pull of 200 N',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'N',
            meaning: 'parts at the moving block: the ideal advantage',
            value: parts,
            unit: '',
            formula: 'rope followed from its end',
          },
          {
            symbol: 'S',
            meaning: 'sheaves it runs over',
            value: sheaves,
            unit: '',
            formula: 'in the tackle and turning',
          },
          {
            symbol: 'from',
            meaning: 'the fall comes off the block that',
            value: way.pulledFrom === 'moving' ? 'moves' : 'stands',
            unit: '',
            formula: 'rope followed from its end',
          },
          { symbol: 'K', meaning: 'tension grows by, a sheave', value: factor, unit: '', formula: 'by bearing' },
          {
            symbol: 'η',
            meaning: 'share of the work that reaches the load',
            value: tackleEfficiency(parts, sheaves, factor),
            unit: '',
            formula: '(K^N − 1)/(K^S·N·(K − 1))',
          },
          {
            symbol: 'advantage',
            meaning: 'load for each newton of pull, hoisting',
            value: tackleEfficiency(parts, sheaves, factor) * parts,
            unit: '× pull',
            formula: 'η·N',
          },
          {
            symbol: 'F of the tenth',
            meaning: 'by the rule of a tenth a sheave, for comparison',
            value: (load * (1 + 0.1 * sheaves)) / parts,
            unit: 'N',
            formula: 'W·(1 + 0.1·S)/N',
          },
        ],
        sources: [sources.sheave, sources.parts, sources.tenth, sources.hand, sources.noBrake],
        limits: [
          'Parts that run alongside each other. Stiff rope on small sheaves, twisted parts and a fall led askew cost more.',
        ],
        cautions: [cautions.under, cautions.slip, cautions.persons],
      };
    },
  });
}

function postQuestion() {
  return question({
    id: 'loads.turns-round-a-post',
    title: 'What holds a rope that runs round a post?',
    fields: {
      pull: force('N', 0, 100_000, 'pull on the rope'),
      turns: number('', 0, 10, 'turns round it; three quarters of one is 0.75'),
      friction: assuming(
        number('', 0.01, 0.9, 'friction between rope and post, µ'),
        0.15,
        '0.15',
        'wet rope on smooth metal: our assumption, on the low side',
      ),
      tail: assuming(force('N', 1, 2000, 'what holds the tail'), inBase('force', 50, 'N'), '50 N', 'a light hand'),
    },
    answer: ({ pull, turns, friction, tail }) => {
      const least = tailForce_N(pull, friction, 2 * Math.PI * turns);
      return {
        kind: 'found',
        results: [
          { symbol: 'F', meaning: 'least on the tail that holds', value: least, unit: 'N' },
          {
            symbol: 'turns',
            meaning: 'that hold with that tail',
            value: Math.ceil(turnsToHold(pull, tail, friction) - 1e-9),
            unit: 'turns',
          },
        ],
        working: [
          { symbol: 'α', meaning: 'how far round', value: 2 * Math.PI * turns, unit: 'rad', formula: '2π·turns' },
          {
            symbol: 'ratio',
            meaning: 'pull for each newton of tail',
            value: Math.exp(friction * 2 * Math.PI * turns),
            unit: '',
            formula: 'e^(µα)',
          },
          { symbol: 'F', meaning: 'on the tail', value: least, unit: 'N', formula: 'T·e^(−µα)' },
        ],
        sources: [sources.rope],
        limits: ['Friction of a wet, worn or new rope differs by half: one turn more costs nothing.'],
        cautions: [cautions.slip],
      };
    },
  });
}

function winchQuestion() {
  return question({
    id: 'loads.winch',
    title: 'What does a small winch ask of the hand?',
    fields: {
      pull: assuming(force('N', 0, 20_000, 'pull on the wire'), inBase('force', 500, 'N'), '500 N', 'a middling board'),
      gear: gearField(),
      handle: handleField(),
      drum: drumField(),
      wire: wireField(),
      width: assuming(
        length('mm', 5, 300, 'drum between its cheeks'),
        inBase('length', 50, 'mm'),
        '50 mm',
        'a small winch',
      ),
      wound: assuming(
        length('m', 0, 50, 'wire on the drum'),
        inBase('length', 1, 'm'),
        '1 m',
        'most of the travel hauled',
      ),
      loss: lossField(usualWinchLoss),
    },
    answer: ({ pull, gear, handle, drum, wire, width, wound: onDrum, loss }) => {
      const winch = {
        gear,
        handle_mm: inUnit('length', handle, 'mm'),
        drum_mm: inUnit('length', drum, 'mm'),
        width_mm: inUnit('length', width, 'mm'),
        wire_mm: inUnit('length', wire, 'mm'),
        loss,
      };
      const { layer, turns } = wound(winch, onDrum);
      const ratio = powerRatio(winch, layer);
      const hoisting = pull / ratio / (1 - loss);
      return {
        kind: 'found',
        results: [
          { symbol: 'F hoisting', meaning: 'at the crank, to hoist', value: hoisting, unit: 'N' },
          { symbol: 'F holding', meaning: 'at the crank if the pawl is off', value: pull / ratio, unit: 'N' },
          {
            symbol: 'F lowering',
            meaning: 'at the crank, to let down slowly',
            value: (pull / ratio) * (1 - loss),
            unit: 'N',
          },
          {
            symbol: 'verdict',
            meaning: 'for one person, again and again',
            value: hoisting <= handLimit_N.crank ? 'within 120 N at a crank' : 'more than 120 N at a crank',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'layer',
            meaning: 'that the last of the wire lies in',
            value: layer,
            unit: '',
            formula: 'width ÷ wire to a layer',
          },
          {
            symbol: 'turns',
            meaning: 'of the drum to wind it',
            value: turns,
            unit: 'turns',
            formula: 'length ÷ circle of each layer',
          },
          {
            symbol: 'ratio',
            meaning: 'pull for each newton at the hand, nothing lost',
            value: ratio,
            unit: '',
            formula: 'gear·2·handle/(drum + (2·layer − 1)·wire)',
          },
          {
            symbol: 'ratio of the bare drum',
            meaning: 'as lectures and catalogues reckon it',
            value: bareDrumRatio(gear, winch.handle_mm, winch.drum_mm),
            unit: '',
            formula: 'gear·2·handle/drum',
          },
          { symbol: 'loss', meaning: 'share lost in the winch', value: loss, unit: '', formula: 'given' },
        ],
        sources: [sources.winch, sources.hand, sources.noBrake],
        limits: [
          'Wire laid side by side with nothing lost between turns; three turns stay on the drum and are not in the sum.',
        ],
        cautions: [cautions.under, cautions.slip, cautions.persons],
      };
    },
  });
}

function plateQuestion() {
  return question({
    id: 'loads.plate',
    title: 'What does a plate hinged at its end weigh on its wire?',
    fields: {
      length: length('m', 0.1, 4, 'length from the pivot to the far end'),
      breadth: length('m', 0.02, 2, 'breadth'),
      thickness: length('mm', 1, 100, 'thickness'),
      density: densityField(),
      attachment: length('m', 0.01, 4, 'from the pivot to where the wire is attached'),
      'wire-angle': assuming(
        angle('°', 5, 175, 'between plate and wire'),
        inBase('angle', 90, '°'),
        '90°',
        'square to the plate: the least pull',
      ),
      water: waterField(),
    },
    conflict: ({ length: long, attachment }) =>
      attachment > long + 1e-9
        ? {
            where: 'attachment',
            wrong: `the wire is attached ${attachment} m from the pivot, on a plate of ${long} m`,
            right: `give ${long} m or less`,
          }
        : null,
    answer: ({ length: long, breadth, thickness, density, attachment, 'wire-angle': wireAngle, water }) => {
      const kilograms = plateMass_kg(long, breadth, thickness, density);
      const weight = hangingWeight_N(kilograms, density, water === 'sea' ? seaWater_kg_m3 : null);
      const moment = (weight * long) / 2;
      const pull = moment / (attachment * Math.sin((wireAngle * Math.PI) / 180));
      return {
        kind: 'found',
        results: [
          { symbol: 'T', meaning: 'in the wire, the plate level', value: pull, unit: 'N' },
          { symbol: 'M', meaning: 'moment about the pivot, level', value: moment, unit: 'N·m' },
          { symbol: 'm', meaning: 'mass of the plate', value: kilograms, unit: 'kg' },
        ],
        working: [
          { symbol: 'ρ', meaning: 'density', value: density, unit: 'kg/m³', formula: 'given' },
          {
            symbol: 'ρ water',
            meaning: 'density of sea water',
            value: seaWater_kg_m3,
            unit: 'kg/m³',
            formula: 'recalled',
          },
          {
            symbol: 'share in water',
            meaning: 'of the weight in air that is left under water',
            value: 1 - seaWater_kg_m3 / density,
            unit: '',
            formula: '1 − ρ water/ρ',
          },
          {
            symbol: 'W',
            meaning: 'weight that hangs',
            value: weight,
            unit: 'N',
            formula: water === 'sea' ? 'm·g·(1 − ρ water/ρ)' : 'm·g',
          },
          { symbol: 'M', meaning: 'moment, level', value: moment, unit: 'N·m', formula: 'W·L/2' },
          { symbol: 'T', meaning: 'pull', value: pull, unit: 'N', formula: 'M/(attachment·sin wire-angle)' },
        ],
        sources: [sources.moments, sources.density],
        limits: [
          'One thickness, pivot at the end, no friction at the pivot or in the case; a plate that jams asks for more than any sum says.',
        ],
        cautions: [cautions.under],
      };
    },
  });
}

const boardKinds = [
  { id: 'tackle', title: 'a tackle' },
  { id: 'winch', title: 'a small winch' },
] as const;

function boardHoistQuestion() {
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
        if (pull.kind === 'no pull') return { where: 'lead-aft', wrong: pull.wrong, right: pull.right };
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
        cautions: [cautions.under, cautions.slip, cautions.persons],
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
  readonly handle: number;
  readonly drum: number;
  readonly wire: number;
  readonly width: number;
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
      handle_mm: inUnit('length', given.handle as never, 'mm'),
      drum_mm: inUnit('length', given.drum as never, 'mm'),
      width_mm: inUnit('length', given.width as never, 'mm'),
      wire_mm: inUnit('length', given.wire as never, 'mm'),
      loss: given.loss,
    },
    onDrumWhenDown_m: 0,
  };
}
