import { choice, question } from '#working';
import { cautions } from '../cautions.ts';
import { boltClasses, stressArea_mm2, tightenedTo, tightening, torqueFor_Nm } from './bolt.ts';
import { boltField, classField, fasteningCautions, frictionField, sources } from './fastening-fields.ts';
import { requiredCell } from './size-cell.ts';

/** What soft things under a washer bear for years without creeping, N/mm². Our assumptions: a third of what laminate, half of what soft wood crushes at. */
const assumedUnderWasher_N_mm2 = { laminate: 40, wood: 2 } as const;

export function boltTorqueQuestion() {
  return question({
    id: 'loads.bolt-torque',
    title: 'How tight may this bolt be?',
    fields: {
      size: boltField(),
      class: classField(),
      friction: frictionField(),
      through: choice<'metal' | 'laminate' | 'wood'>(
        [
          { id: 'metal', title: 'metal on metal' },
          { id: 'laminate', title: 'laminate' },
          { id: 'wood', title: 'wood, ply or a cored deck' },
        ],
        'what is squeezed under the head',
      ),
    },
    answer: ({ size, class: ofClass, friction, through }) => {
      const bolt = tightening(size, ofClass, friction);
      const washer = requiredCell('washer large', size).value;
      const hole = requiredCell('clearance medium', size).value;
      const ring_mm2 = (Math.PI / 4) * (washer ** 2 - hole ** 2);
      const soft_N = through === 'metal' ? bolt.preload_N : ring_mm2 * assumedUnderWasher_N_mm2[through];
      const preload_N = Math.min(bolt.preload_N, soft_N);
      return {
        kind: 'found',
        results: [
          { symbol: 'M', meaning: 'torque, at the most', value: torqueFor_Nm(size, preload_N, friction), unit: 'N·m' },
          { symbol: 'F', meaning: 'pull it gives the bolt', value: preload_N / 1000, unit: 'kN' },
          {
            symbol: 'rule',
            meaning: 'how to go about it',
            value: through === 'metal' ? 'with a torque wrench' : 'use large washers; snug plus part turn',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'As',
            meaning: 'stress area of the thread',
            value: stressArea_mm2(size),
            unit: 'mm²',
            formula: 'π/4·(d − 0.9382·P)²',
          },
          {
            symbol: 'Rp',
            meaning: 'proof stress of the class',
            value: boltClasses[ofClass].proof_N_mm2,
            unit: 'N/mm²',
            formula: 'ISO 3506-1, recalled',
          },
          {
            symbol: 'F bolt',
            meaning: `what brings the bolt to ${100 * tightenedTo} % of its proof stress, twist counted`,
            value: bolt.preload_N / 1000,
            unit: 'kN',
            formula: '0.9·Rp·As/√(1 + 3·(twist)²)',
          },
          {
            symbol: 'M bolt',
            meaning: 'torque for that',
            value: bolt.torque_Nm,
            unit: 'N·m',
            formula: 'F·(P/2π + 0.577·d2·µ + r·µ)',
          },
          ...(through === 'metal'
            ? []
            : [
                {
                  symbol: 'F under the washer',
                  meaning: 'what is under a large washer bears for years',
                  value: soft_N / 1000,
                  unit: 'kN',
                  formula: `ring·${assumedUnderWasher_N_mm2[through]} N/mm², our assumption`,
                },
              ]),
        ],
        sources: [
          sources.tightening,
          sources.bolts,
          ...(through === 'metal'
            ? []
            : [
                {
                  title: 'large washers, snug and a part of a turn: what is squeezed gives before the bolt',
                  seen: 'common practice' as const,
                },
              ]),
        ],
        limits: [
          'Friction decides: a dry stainless bolt at the torque of a greased one is not tight, a greased one at the torque of a dry one parts.',
          'A bolt in sealant is nipped up, and turned the rest when the sealant has cured.',
        ],
        cautions: [fasteningCautions.galling, cautions.guidance],
      };
    },
  });
}
