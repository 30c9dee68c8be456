import { inBase } from '#units';
import { angle, assuming, length, mass, question } from '#working';
import { cautions } from '../cautions.ts';
import { shroudSlack, sideLine_N, sideMoment_N_m } from './mast-sideways.ts';
import { rigCautions, rigSources } from './rig-fields.ts';

export function mastSidewaysQuestion() {
  return question({
    id: 'loads.mast-sideways',
    title: 'What keeps the mast from falling sideways on its way up?',
    fields: {
      mass: mass('kg', 2, 300, 'mast with all that hangs on it'),
      'mass-at': length('m', 0.3, 12, 'from the hinge to the middle of its weight'),
      'shroud-at': length('m', 0.5, 20, 'from the hinge to where the shroud or side guy takes hold'),
      'chainplate-ahead': assuming(
        length('m', -2, 1, 'chainplate ahead of the hinge; below zero it is aft'),
        inBase('length', 0, 'm'),
        '0 m',
        'abreast of the hinge',
      ),
      'chainplate-up': assuming(
        length('m', -1, 1, 'chainplate above the hinge; below zero it is lower'),
        inBase('length', 0, 'm'),
        '0 m',
        'at the hinge’s height',
      ),
      out: length('m', 0.1, 3, 'from the mast out to the chainplate'),
      heel: assuming(
        angle('°', 0, 30, 'how far she leans to one side'),
        inBase('angle', 5, '°'),
        '5°',
        'someone steps on the side deck, or a sloping driveway',
      ),
      from: assuming(
        angle('°', -10, 60, 'mast above level at the start'),
        inBase('angle', 0, '°'),
        '0°',
        'level, in its crutch',
      ),
    },
    answer: (given) => {
      const sideways = {
        mass_kg: given.mass,
        massAt_m: given['mass-at'],
        shroudAt_m: given['shroud-at'],
        chainplate: { ahead_m: given['chainplate-ahead'], up_m: given['chainplate-up'] },
        out_m: given.out,
        heel_deg: given.heel,
      };
      const points = shroudSlack(sideways, given.from);
      const loosest = points.reduce((most, point) => (point.slack_m > most.slack_m ? point : most));
      const tightest = points.reduce((most, point) => (point.slack_m < most.slack_m ? point : most));
      const mm = (metres: number) => 1000 * metres;
      return {
        kind: 'found',
        results: [
          { symbol: 'slack', meaning: 'shroud too long by, at most', value: mm(loosest.slack_m), unit: 'mm' },
          { symbol: 'at', meaning: 'where that is, mast above level', value: loosest.mast_deg, unit: '°' },
          {
            symbol: 'short',
            meaning: 'too short by, at most: ease it by that before it starts',
            value: Math.max(0, mm(-tightest.slack_m)),
            unit: 'mm',
          },
          {
            symbol: 'side line',
            meaning: 'in a line to one side that holds it as she leans, abreast of the hinge',
            value: sideLine_N(sideways),
            unit: 'N',
          },
          {
            symbol: 'held',
            meaning: 'by the shrouds on the way',
            value:
              mm(loosest.slack_m) > 20
                ? 'not held: they hang slack'
                : mm(tightest.slack_m) < -5
                  ? 'too short: they stop it or break'
                  : 'held all the way',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'M side',
            meaning: 'turning it over to one side',
            value: sideMoment_N_m(sideways),
            unit: 'N·m',
            formula: 'm·g·c·sin(heel)',
          },
          {
            symbol: 'slack start',
            meaning: 'at the start',
            value: mm(points[0]!.slack_m),
            unit: 'mm',
            formula: 'shroud upright less shroud now',
          },
        ],
        sources: [
          {
            title: 'length of a shroud between two places, moments about the line fore and aft',
            seen: 'our derivation',
          },
          rigSources.moments,
        ],
        limits: [
          'A shroud slack by up to 20 mm is called held: our assumption. A line that is not abreast of the hinge, at its height, goes slack or tight on the way.',
          'No wind and no swing: a swell or a passing boat doubles it.',
        ],
        cautions: [rigCautions.sideways, rigCautions.path, rigCautions.wires, rigCautions.alone, cautions.guidance],
      };
    },
  });
}
