import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;

/** A tackle with so many parts at the moving block and so many sheaves, the last of them turning blocks. */
const rigged = (parts: number, sheaves: number) => {
  const movingSheaves = Math.floor(parts / 2);
  const atMoving = parts % 2 === 1;
  const fixed = atMoving ? movingSheaves + 1 : movingSheaves;
  return {
    'moving-sheaves': movingSheaves,
    'fixed-sheaves': fixed,
    'end-at': atMoving ? 'moving' : 'fixed',
    'turning-blocks': sheaves - movingSheaves - fixed,
  };
};

const tackle = (
  parts: number,
  sheaves: number,
  pick: string,
  extra: Readonly<Record<string, string | number>> = {},
): Asking => ({
  question: 'loads.tackle',
  fields: { load: 1000, ...rigged(parts, sheaves), ...extra },
  pick,
});

/** Tackles of wooden blocks, by the parts their advantage fits: a luff with its double block standing has three. */
const oldTackles: Readonly<Record<string, number>> = { two_double: 4, double_and_treble: 5, luff_to_advantage: 3 };

/** What a plate of the rows is made of: 1.2 by 0.35 m, 8 mm. */
const plate =
  (pick: string, extra: Readonly<Record<string, string | number>>) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.plate',
    fields: {
      length: numberIn(row, inputs, 'L_m'),
      breadth: numberIn(row, inputs, 'B_m'),
      thickness: 1000 * numberIn(row, inputs, 't_m'),
      attachment: numberIn(row, inputs, 'pennant_m'),
      ...extra,
    },
    pick,
  });

const densities: Readonly<Record<string, number>> = {
  steel: 7850,
  stainless316: 8000,
  cast_iron: 7200,
  lead: 11340,
  aluminium: 2700,
};
const anyPlate = (density: number, pick: string): Asking => ({
  question: 'loads.plate',
  fields: { length: 1, breadth: 0.4, thickness: 8, attachment: 1, water: 'sea', density },
  pick,
});
const lastPart = (row: OutsideRow) => row.id.split('.').at(-1)!;

export const hoistMappings: readonly FamilyMapping[] = [
  {
    family: 'loads.tackle.eff',
    kind: 'outside answer',
    asking: (row, inputs) =>
      tackle(numberIn(row, inputs, 'N'), numberIn(row, inputs, 'S'), 'η', {
        bearing: numberIn(row, inputs, 'K') === 1.04 ? 'ball' : 'plain',
      }),
  },
  {
    family: 'loads.tackle.tenth',
    kind: 'outside answer',
    asking: (row, inputs) =>
      tackle(numberIn(row, inputs, 'N'), numberIn(row, inputs, 'S'), 'F of the tenth', {
        load: numberIn(row, inputs, 'W_N'),
      }),
  },
  {
    family: 'loads.tackle.hist',
    kind: 'default in its band',
    asking: (row) => {
      const parts = oldTackles[lastPart(row)];
      return parts === undefined ? { unmapped: 'no tackle of that name' } : tackle(parts, parts, 'advantage');
    },
  },
  {
    family: 'loads.tackle.ideal',
    kind: 'outside answer',
    asking: (row, inputs) => tackle(numberIn(row, inputs, 'parts'), numberIn(row, inputs, 'parts'), 'N'),
  },
  {
    family: 'loads.capstan.1',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.turns-round-a-post',
      fields: {
        // the exercise takes g as 9.81 m/s²
        pull: 9.81 * numberIn(row, inputs, 'm_kg'),
        friction: numberIn(row, inputs, 'mu'),
        turns: numberIn(row, inputs, 'alpha_rad') / (2 * Math.PI),
      },
      pick: 'F',
    }),
  },
  {
    family: 'loads.capstan.2',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.turns-round-a-post',
      fields: {
        pull: numberIn(row, inputs, 'T_N'),
        friction: numberIn(row, inputs, 'mu'),
        turns: numberIn(row, inputs, 'turns'),
      },
      pick: 'F',
    }),
  },
  {
    family: 'loads.capstan.4',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.turns-round-a-post',
      fields: { pull: 1000, friction: numberIn(row, inputs, 'mu'), turns: numberIn(row, inputs, 'turns') },
      pick: 'ratio',
    }),
  },
  {
    family: 'loads.winch.1',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.winch',
      fields: {
        handle: `${numberIn(row, inputs, 'handle_in')} in`,
        drum: `${2 * numberIn(row, inputs, 'radius_in')} in`,
      },
      pick: 'ratio of the bare drum',
    }),
  },
  {
    family: 'loads.winch.3',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.winch',
      fields: {
        handle: `${numberIn(row, inputs, 'handle_in')} in`,
        drum: `${numberIn(row, inputs, 'drum_dia_in')} in`,
        gear: numberIn(row, inputs, 'gear'),
      },
      pick: 'ratio of the bare drum',
    }),
  },
  {
    family: 'loads.winch.loss',
    kind: 'default in its band',
    asking: () => ({ question: 'loads.winch', fields: { handle: 200, drum: 40 }, pick: 'loss' }),
  },
  { family: 'loads.plate.mass', kind: 'outside answer', asking: plate('m', { water: 'air' }) },
  { family: 'loads.plate.moment.air', kind: 'outside answer', asking: plate('M', { water: 'air' }) },
  { family: 'loads.plate.moment.sea', kind: 'outside answer', asking: plate('M', { water: 'sea' }) },
  { family: 'loads.plate.pull.air', kind: 'outside answer', asking: plate('T', { water: 'air' }) },
  { family: 'loads.plate.pull.45', kind: 'outside answer', asking: plate('T', { water: 'sea', 'wire-angle': 45 }) },
  {
    family: 'loads.density',
    kind: 'transcription',
    asking: (row) => {
      const what = lastPart(row);
      if (what === 'sea') return anyPlate(7850, 'ρ water');
      const density = densities[what];
      return density === undefined ? { unmapped: `no density of ${what}` } : anyPlate(density, 'ρ');
    },
  },
  {
    family: 'loads.buoy',
    kind: 'outside answer',
    asking: (row) => {
      const density = densities[lastPart(row)];
      return density === undefined
        ? { unmapped: `no density of ${lastPart(row)}` }
        : anyPlate(density, 'share in water');
    },
  },
];
