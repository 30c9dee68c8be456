import { inBase } from '#units';
import { angle, assuming, length, question } from '#working';
import { cautions } from '../cautions.ts';
import { densityField, sources, waterField } from './hoist-fields.ts';
import { hangingWeight_N, plateMass_kg, seaWater_kg_m3 } from './plate.ts';

export function plateQuestion() {
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
        cautions: [cautions.under, cautions.guidance],
      };
    },
  });
}
