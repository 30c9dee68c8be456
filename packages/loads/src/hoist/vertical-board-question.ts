import { inBase } from '#units';
import { assuming, length, number, question } from '#working';
import { boardHoist } from './board-hoist.ts';
import { gearFault, gearFields, gearOf, travelShown } from './gear-fields.ts';
import { densityField, sources } from './hoist-fields.ts';
import { plateMass_kg, seaWater_kg_m3 } from './plate.ts';
import { assumedCaseFriction, type SlidingPlate, slidingPull } from './sliding-board.ts';
import { bearings } from './tackle.ts';

export function verticalBoardQuestion() {
  const m = (value: number) => inBase('length', value, 'm');
  return question({
    id: 'loads.vertical-board',
    title: 'What does hoisting a board that slides in its case take?',
    fields: {
      length: length('m', 0.1, 4, 'plate from top to foot'),
      breadth: length('m', 0.02, 2, 'plate fore and aft'),
      thickness: length('mm', 1, 200, 'plate through'),
      density: densityField(),
      travel: length('m', 0.05, 3, 'from all the way down to all the way up'),
      'top-above-water': assuming(
        length('m', -3, 3, 'top of the plate above the water, all the way down; below it: minus'),
        m(0),
        '0 m',
        'at the waterline; it counts only afloat',
      ),
      'off-middle': assuming(
        length('m', -1, 1, 'the wire’s attachment from the plate’s middle, fore and aft'),
        m(0),
        '0 m',
        'on the middle',
      ),
      held: length('m', 0.05, 3, 'of the plate that the case still holds, all the way down'),
      friction: assuming(
        number('', 0, 0.9, 'friction between plate and case, µ'),
        assumedCaseFriction,
        String(assumedCaseFriction),
        'wet metal on laminate or timber: our assumption',
      ),
      ...gearFields(),
    },
    conflict: (given) => {
      const fault = gearFault(given);
      if (fault !== null) return fault;
      if (given.held > given.length + 1e-9)
        return {
          where: 'held',
          wrong: `the case cannot hold ${given.held} m of a plate of ${given.length} m`,
          right: `give ${given.length} m or less`,
        };
      const pull = slidingPull(plateOf(given), 0, null);
      return pull.kind === 'no pull' ? { where: 'off-middle', wrong: pull.wrong, right: pull.right } : null;
    },
    answer: (given) => {
      const plate = plateOf(given);
      const travel = boardHoist({
        board: { kind: 'sliding', plate, travel_m: given.travel },
        leads: { count: given.leads, factor: bearings[given.bearing].factor },
        gear: gearOf(given),
        water_kg_m3: given.water === 'sea' ? seaWater_kg_m3 : null,
      });
      if (travel.kind !== 'travel') throw new RangeError(travel.wrong);
      const shown = travelShown(travel);
      return {
        kind: 'found',
        results: shown.results,
        working: [
          {
            symbol: 'm',
            meaning: 'mass of the plate',
            value: plate.mass_kg,
            unit: 'kg',
            formula: 'length·breadth·thickness·ρ',
          },
          {
            symbol: 'rub',
            meaning: 'share of the pull lost between plate and case',
            value: (2 * plate.friction * Math.abs(plate.offMiddle_m)) / plate.held_m,
            unit: '',
            formula: '2·µ·e/h',
          },
          ...shown.working,
        ],
        sources: [
          { title: 'statics of a drawer pulled off its middle: N = T·e/h at each end', seen: 'our derivation' },
          sources.density,
          ...shown.sources,
        ],
        limits: [
          'One thickness; what the case holds all the way down is taken for the whole travel; no water flowing past; grit and barnacles jam it sooner.',
        ],
        cautions: shown.cautions,
      };
    },
  });
}

function plateOf(given: {
  readonly length: number;
  readonly breadth: number;
  readonly thickness: number;
  readonly density: number;
  readonly 'top-above-water': number;
  readonly 'off-middle': number;
  readonly held: number;
  readonly friction: number;
}): SlidingPlate {
  return {
    mass_kg: plateMass_kg(given.length, given.breadth, given.thickness, given.density),
    density_kg_m3: given.density,
    length_m: given.length,
    topAboveWater_m: given['top-above-water'],
    offMiddle_m: given['off-middle'],
    held_m: given.held,
    friction: given.friction,
  };
}
