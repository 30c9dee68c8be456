import { inBase } from '#units';
import { angle, assuming, force, length, question } from '#working';
import { cautions } from '../cautions.ts';
import { rigSources } from './rig-fields.ts';
import { type Vang, vangForces } from './vang.ts';

export function vangQuestion() {
  return question({
    id: 'loads.vang',
    title: 'What does the vang bear, and what if either end moves?',
    fields: {
      lift: force('N', 1, 20_000, 'what lifts the boom, square to it: the pull of the sail’s leech'),
      'lift-at': length('m', 0.3, 8, 'from the gooseneck to there: the clew'),
      along: length('m', 0.1, 5, 'from the gooseneck along the boom to the vang'),
      below: length('m', 0.05, 3, 'vang’s lower end below the gooseneck'),
      aft: assuming(
        length('m', -0.5, 1.5, 'vang’s lower end aft of the gooseneck'),
        inBase('length', 0, 'm'),
        '0 m',
        'on the mast',
      ),
      'boom-up': assuming(angle('°', -20, 40, 'boom’s outer end above level'), inBase('angle', 0, '°'), '0°', 'level'),
      move: assuming(
        length('mm', 1, 1000, 'what either end is moved by: along the boom, or down the mast'),
        inBase('length', 100, 'mm'),
        '100 mm',
        'a step worth the holes',
      ),
    },
    conflict: (given) => {
      const forces = vangForces(vangOf(given), given.lift, given['lift-at'], given['boom-up']);
      return forces.arm_m >= 0.02
        ? null
        : {
            where: 'below',
            wrong: 'the vang runs past the gooseneck: no pull on it holds the boom down',
            right: 'take its lower end further down the mast, or its upper end further along the boom',
          };
    },
    answer: (given) => {
      const at = (vang: Vang) => vangForces(vang, given.lift, given['lift-at'], given['boom-up']);
      const vang = vangOf(given);
      const [now, onBoom, onMast] = [
        at(vang),
        at({ ...vang, boomAlong_m: vang.boomAlong_m + given.move }),
        at({ ...vang, below_m: vang.below_m + given.move }),
      ];
      const less = (to: number, from: number) => (from === 0 ? 0 : 100 * (to / from - 1));
      return {
        kind: 'found',
        results: [
          { symbol: 'T', meaning: 'in the vang', value: now.vang_N, unit: 'N' },
          { symbol: 'thrust', meaning: 'of the boom on the gooseneck, along it', value: now.thrust_N, unit: 'N' },
          {
            symbol: 'square',
            meaning:
              now.square_N < 0
                ? 'on the gooseneck square to the boom, pressed down (below zero)'
                : 'on the gooseneck square to the boom, lifted',
            value: now.square_N,
            unit: 'N',
          },
          {
            symbol: 'T boom',
            meaning: 'in the vang, its end moved out along the boom',
            value: onBoom.vang_N,
            unit: 'N',
          },
          { symbol: 'thrust boom', meaning: 'on the gooseneck then', value: onBoom.thrust_N, unit: 'N' },
          { symbol: 'T mast', meaning: 'in the vang, its end moved down the mast', value: onMast.vang_N, unit: 'N' },
          { symbol: 'thrust mast', meaning: 'on the gooseneck then', value: onMast.thrust_N, unit: 'N' },
        ],
        working: [
          {
            symbol: 'M',
            meaning: 'moment that lifts the boom',
            value: given.lift * given['lift-at'],
            unit: 'N·m',
            formula: 'F·e',
          },
          {
            symbol: 'arm',
            meaning: 'from the gooseneck square to the vang',
            value: now.arm_m,
            unit: 'm',
            formula: 'x·y/√(x² + y²) with the boom level',
          },
          {
            symbol: 'L',
            meaning: 'vang from end to end',
            value: now.length_m,
            unit: 'm',
            formula: '√(x² + y²) with the boom level',
          },
          {
            symbol: 'boom less',
            meaning: 'change of the vang’s pull by the boom’s end',
            value: less(onBoom.vang_N, now.vang_N),
            unit: '%',
            formula: 'T boom/T − 1',
          },
          {
            symbol: 'mast less',
            meaning: 'change of it by the mast’s end',
            value: less(onMast.vang_N, now.vang_N),
            unit: '%',
            formula: 'T mast/T − 1',
          },
        ],
        sources: [rigSources.moments, { title: 'the vang’s geometry', seen: 'our derivation' }],
        limits: [
          'The boom’s weight and the sheet are not counted; a boom that drags in a wave or a gybe brings several times this.',
          'A boom is bent most where the vang takes hold: further out bends it less, and the vang needs more way.',
        ],
        cautions: [
          'A vang under load is stretched: ease it on its cleat, not by a shackle, and keep the head out of the boom’s way.',
          cautions.recoil,
          cautions.guidance,
        ],
      };
    },
  });
}

function vangOf(given: { readonly along: number; readonly below: number; readonly aft: number }): Vang {
  return { boomAlong_m: given.along, below_m: given.below, aft_m: given.aft };
}
