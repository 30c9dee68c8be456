import { inBase } from '#units';
import { type Answer, angle, assuming, choice, type Field, length, mass, question } from '#working';
import { cautions } from '../cautions.ts';
import { handLimit_N } from '../hoist/board-hoist.ts';
import { bearings, fallForce_N } from '../hoist/tackle.ts';
import {
  type MastRaising,
  mastRaising,
  type RaisingPoint,
  type RaisingPole,
  type RaisingTravel,
} from './mast-raising.ts';
import { rigCautions, rigSources } from './rig-fields.ts';

const poles = [
  { id: 'pole', title: 'a gin pole' },
  { id: 'A-frame', title: 'an A-frame' },
  { id: 'none', title: 'nothing: straight from mast to bow' },
] as const;

export function mastRaisingQuestion() {
  const none = (meaning: string, low: number, high: number) =>
    assuming(length('m', low, high, meaning), inBase('length', 0, 'm'), '0 m', 'at the mast’s hinge');
  return question({
    id: 'loads.mast-raising',
    title: 'What does raising or lowering the mast take, over the whole way?',
    fields: {
      mass: mass('kg', 2, 300, 'mast with all that hangs on it'),
      'mass-at': length('m', 0.3, 12, 'from the hinge to the middle of its weight, where it balances'),
      'line-at': length('m', 1, 20, 'from the hinge to where forestay or halyard takes hold'),
      by: choice(poles, 'what leads the pull') as Field<RaisingPole['kind']>,
      pole: assuming(
        length('m', 0.3, 6, 'pole, or a leg of the A-frame'),
        inBase('length', 1.5, 'm'),
        '1.5 m',
        'a usual pole',
      ),
      'heel-ahead': none('pole’s heel ahead of the hinge', -0.5, 3),
      'heel-up': none('pole’s heel above the hinge', -1, 0.8),
      lean: assuming(
        angle('°', -30, 70, 'pole ahead of upright, with the mast at the start'),
        inBase('angle', 0, '°'),
        '0°',
        'upright',
      ),
      spread: assuming(
        length('m', 0.1, 4, 'A-frame: between its heels'),
        inBase('length', 1, 'm'),
        '1 m',
        'a usual foredeck',
      ),
      'bow-ahead': length('m', 0.5, 8, 'bow fitting ahead of the hinge'),
      'bow-up': none('bow fitting above the hinge', -2, 1),
      from: assuming(
        angle('°', -10, 60, 'mast above level at the start'),
        inBase('angle', 0, '°'),
        '0°',
        'level, in its crutch',
      ),
      to: assuming(
        angle('°', 45, 89, 'mast above level at the end'),
        inBase('angle', 85, '°'),
        '85°',
        'the forestay is pinned from there',
      ),
    },
    conflict: (given) => {
      if (given.from >= given.to)
        return {
          where: 'from',
          wrong: `it starts at ${given.from}° and ends at ${given.to}°`,
          right: `give less than ${given.to}°`,
        };
      if (given.by === 'A-frame' && given.spread >= 1.9 * given.pole)
        return {
          where: 'spread',
          wrong: `heels ${given.spread} m apart, on legs of ${given.pole} m, leave an A-frame no height`,
          right: `give ${Math.round(100 * given.pole) / 100} m or less`,
        };
      const travel = mastRaising(raisingOf(given));
      return travel.kind === 'travel' ? null : { where: whereOf[travel.at], wrong: travel.wrong, right: travel.right };
    },
    answer: (given): Answer => {
      const raising = raisingOf(given);
      const travel = mastRaising(raising);
      if (travel.kind !== 'travel') throw new RangeError(travel.wrong);
      const most = (of: (point: RaisingPoint) => number) => worstRaising(travel, of);
      const [hardest, line, pole, pivot] = [
        most(({ tackle_N }) => tackle_N),
        most(({ line_N }) => line_N),
        most(({ leg_N }) => Math.abs(leg_N)),
        most(({ pivot_N }) => Math.hypot(pivot_N.ahead, pivot_N.up)),
      ];
      const needed = tackleNeeded(hardest.tackle_N);
      const pulled = travel.points.find(({ pole_N }) => pole_N < -1e-6);
      const [start, end] = [travel.points[0]!, travel.points.at(-1)!];
      const led = given.by !== 'none';
      const at = (symbol: string, point: RaisingPoint, force_N: number, meaning: string, formula: string) => ({
        symbol,
        meaning: `${meaning}, mast at ${Math.round(point.mast_deg)}°`,
        value: force_N,
        unit: 'N',
        formula,
      });
      const balance = 'balance of the forces at the tip';
      return {
        kind: 'found',
        results: [
          {
            symbol: 'T',
            meaning: led ? 'most in the tackle' : 'most in the line to the bow',
            value: hardest.tackle_N,
            unit: 'N',
          },
          { symbol: 'at', meaning: 'where that is, mast above level', value: hardest.mast_deg, unit: '°' },
          { symbol: 'S', meaning: 'most in the forestay or halyard', value: line.line_N, unit: 'N' },
          ...(led
            ? [
                {
                  symbol: 'C',
                  meaning: given.by === 'pole' ? 'most along the pole' : 'most along a leg of the A-frame',
                  value: Math.abs(pole.leg_N),
                  unit: 'N',
                },
              ]
            : []),
          {
            symbol: 'P',
            meaning: 'most on the mast’s hinge',
            value: Math.hypot(pivot.pivot_N.ahead, pivot.pivot_N.up),
            unit: 'N',
          },
          needed === null
            ? {
                symbol: 'tackle',
                meaning: `for ${handLimit_N.pull} N at the hand`,
                value: 'none of 8 parts or fewer: use a winch',
                unit: '',
              }
            : {
                symbol: 'tackle',
                meaning: `parts for ${handLimit_N.pull} N at the hand`,
                value: needed.parts,
                unit: 'parts',
              },
          ...(needed === null
            ? []
            : [
                { symbol: 'F', meaning: 'most at the hand, hoisting', value: needed.hoisting_N, unit: 'N' },
                { symbol: 'F holding', meaning: 'at the hand, holding there', value: needed.holding_N, unit: 'N' },
                {
                  symbol: 'cord',
                  meaning: 'to pull for the whole way',
                  value: needed.parts * travel.hauled_m,
                  unit: 'm',
                },
              ]),
          ...(pulled === undefined
            ? []
            : [
                {
                  symbol: 'lifts',
                  meaning: 'pole no longer pressed but pulled, mast above',
                  value: pulled.mast_deg,
                  unit: '°',
                },
              ]),
        ],
        working: [
          {
            symbol: 'M',
            meaning: 'moment of its weight at the start',
            value: start.moment_N_m,
            unit: 'N·m',
            formula: 'm·g·c·cos φ',
          },
          at('T start', start, start.tackle_N, 'tackle', led ? balance : 'M/arm'),
          at('S start', start, start.line_N, 'forestay or halyard', 'M/arm'),
          ...(led ? [at('C start', start, start.pole_N, 'pole, pressing', balance)] : []),
          at('T end', end, end.tackle_N, 'tackle', led ? balance : 'M/arm'),
          at('S end', end, end.line_N, 'forestay or halyard', 'M/arm'),
          ...(led ? [at('C end', end, end.pole_N, 'pole, pressing', balance)] : []),
          {
            symbol: 'hauled',
            meaning: led ? 'the tackle shortens by' : 'the line shortens by',
            value: travel.hauled_m,
            unit: 'm',
            formula: 'tip to bow, start less end',
          },
        ],
        sources: [
          rigSources.moments,
          rigSources.lever,
          {
            title: 'a person pulls 200 N on a fall, again and again; blocks on plain bearings',
            seen: 'our assumption',
          },
        ],
        limits: [
          'No wind, no friction at the hinge, no weight of pole and tackle, no jerk; the pole is pinned at its heel and guyed to both sides.',
          'Holding and lowering: friction is not counted as a brake.',
        ],
        cautions: [
          rigCautions.wires,
          rigCautions.path,
          rigCautions.sideways,
          rigCautions.alone,
          cautions.slip,
          cautions.winch,
          cautions.recoil,
          cautions.guidance,
        ],
      };
    },
  });
}

const whereOf = { pole: 'heel-ahead', bow: 'bow-ahead', line: 'pole' } as const;

/** The greatest of a raising, and where. */
export function worstRaising(travel: RaisingTravel, of: (point: RaisingPoint) => number): RaisingPoint {
  return travel.points.reduce((most, point) => (of(point) > of(most) ? point : most));
}

/** A tackle on plain bearings that a person alone can haul: the fewest parts, or null where eight are not enough. */
export function tackleNeeded(
  pull_N: number,
): { readonly parts: number; readonly hoisting_N: number; readonly holding_N: number } | null {
  for (let parts = 1; parts <= 8; parts++) {
    const hoisting_N = fallForce_N(pull_N, parts, parts, bearings.plain.factor, 'hoisting');
    if (hoisting_N <= handLimit_N.pull)
      return { parts, hoisting_N, holding_N: fallForce_N(pull_N, parts, parts, bearings.plain.factor, 'holding') };
  }
  return null;
}

function raisingOf(given: {
  readonly mass: number;
  readonly 'mass-at': number;
  readonly 'line-at': number;
  readonly by: RaisingPole['kind'];
  readonly pole: number;
  readonly 'heel-ahead': number;
  readonly 'heel-up': number;
  readonly lean: number;
  readonly spread: number;
  readonly 'bow-ahead': number;
  readonly 'bow-up': number;
  readonly from: number;
  readonly to: number;
}): MastRaising {
  return {
    mass_kg: given.mass,
    massAt_m: given['mass-at'],
    lineAt_m: given['line-at'],
    pole:
      given.by === 'none'
        ? { kind: 'none' }
        : {
            kind: given.by,
            length_m: given.pole,
            heel: { ahead_m: given['heel-ahead'], up_m: given['heel-up'] },
            lean_deg: given.lean,
            spread_m: given.by === 'A-frame' ? given.spread : 0,
          },
    bow: { ahead_m: given['bow-ahead'], up_m: given['bow-up'] },
    from_deg: given.from,
    to_deg: given.to,
  };
}
