import { inBase } from '#units';
import { angle, assuming, length, mass, question } from '#working';
import { boardHoist, worst } from './board-hoist.ts';
import { gearFault, gearFields, gearOf, travelShown } from './gear-fields.ts';
import { densityField, sources } from './hoist-fields.ts';
import { platePull, seaWater_kg_m3 } from './plate.ts';
import { bearings } from './tackle.ts';

export function boardHoistQuestion() {
  const m = (value: number) => inBase('length', value, 'm');
  return question({
    id: 'loads.board-hoist',
    title: 'What does hoisting the board take, over the whole travel?',
    fields: {
      mass: mass('kg', 1, 500, 'the plate; from its sizes: ask loads.plate'),
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
      ...gearFields(),
    },
    conflict: (given) => {
      if (given['up-to'] >= given['down-to'])
        return {
          where: 'up-to',
          wrong: `up at ${given['up-to']}° is not above down at ${given['down-to']}°, both below level`,
          right: `give less than ${given['down-to']}°`,
        };
      const fault = gearFault(given);
      if (fault !== null) return fault;
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
      const shown = travelShown(travel);
      return {
        kind: 'found',
        results: shown.results,
        working: [
          {
            symbol: 'wire',
            meaning: 'hauled in over the travel',
            value: travel.wire_m,
            unit: 'm',
            formula: 'attachment to lead, down less up; T = W·arm of mass/arm of wire',
          },
          {
            symbol: 'pivot',
            meaning: 'most that the pivot bears',
            value: worst(travel, (p) => p.pivot_N ?? 0).pivot_N ?? 0,
            unit: 'N',
            formula: 'what is left of weight and wire',
          },
          ...shown.working,
        ],
        sources: [sources.moments, sources.density, ...shown.sources],
        limits: [
          'No friction at the pivot or in the case, no water flowing past; a plate that jams asks for more than any sum says.',
        ],
        cautions: shown.cautions,
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
