import { type Asking, type FamilyMapping, numberIn, type UnaskedFamily } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;
const last = (row: OutsideRow) => row.id.split('.').at(-1)!;

/** A figure that stands in the working of any answer about limits. */
const printed =
  (pick: string, fields: Readonly<Record<string, string | number>> = {}) =>
  (): Asking => ({ question: 'trailer.limits', fields: { laden: 900, ball: 60, ...fields }, pick });
const ofLashing = (pick: string) => (): Asking => ({
  question: 'trailer.straps-over',
  fields: { mass: 800, way: 'forward', friction: 0.3 },
  pick,
});
const ofWeb = (pick: string) => (): Asking => ({ question: 'trailer.webbing', fields: { width: '50' }, pick });
const ofAge = (pick: string) => (): Asking => ({
  question: 'trailer.tyre-age',
  fields: { code: '3519', today: '2024-01-01' },
  pick,
});

/** Share of the weight by the way the row’s id ends in. */
const byWay =
  (suffix: string) =>
  (row: OutsideRow): Asking => {
    const way = { fwd: 'forward', side: 'sideways', rear: 'rearward' }[last(row)];
    return way ? ofLashing(`c ${way}${suffix}`)() : { unmapped: `no way is ${last(row)}` };
  };

const overHer = (row: OutsideRow, inputs: Inputs): Asking => ({
  question: 'trailer.straps-over',
  fields: {
    mass: numberIn(row, inputs, 'm_kg'),
    share: numberIn(row, inputs, 'c'),
    // the factor of a row goes with its way: 1.25 forward, 1.1 otherwise
    way: numberIn(row, inputs, 'fs') > 1.2 ? 'forward' : 'sideways',
    friction: numberIn(row, inputs, 'mu'),
    tension: numberIn(row, inputs, 'F_T_N'),
    'strap-angle': numberIn(row, inputs, 'alpha'),
  },
  pick: 'n',
});

export const trailerMappings: readonly FamilyMapping[] = [
  {
    family: 'trailer.nose.balance',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'trailer.ball-load',
      fields: {
        laden: numberIn(row, inputs, 'W_kg'),
        'centre-ahead': numberIn(row, inputs, 'x_m'),
        'ball-ahead': numberIn(row, inputs, 'B_m'),
      },
      pick: 'B',
    }),
  },
  {
    family: 'trailer.nose.axle',
    kind: 'outside answer',
    // the row gives the ball load: the place of the weight that makes it so
    asking: (row, inputs) => ({
      question: 'trailer.ball-load',
      fields: {
        laden: numberIn(row, inputs, 'W_kg'),
        'centre-ahead': (3.5 * numberIn(row, inputs, 'ball_kg')) / numberIn(row, inputs, 'W_kg'),
        'ball-ahead': 3.5,
      },
      pick: 'A',
    }),
  },
  ...(['move', 'outboard'] as const).map(
    (name): FamilyMapping => ({
      family: `trailer.nose.${name}`,
      kind: 'outside answer',
      asking: (row, inputs) => ({
        question: 'trailer.ball-gain',
        fields: {
          moved: numberIn(row, inputs, 'm_kg'),
          forward: numberIn(row, inputs, name === 'move' ? 'dx_m' : 'x_m'),
          'ball-ahead': numberIn(row, inputs, 'B_m'),
        },
        pick: 'ΔB',
      }),
    }),
  ),
  {
    family: 'trailer.nose.boatmove',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'trailer.shift',
      fields: {
        gain: numberIn(row, inputs, 'dB_kg'),
        moved: numberIn(row, inputs, 'm_kg'),
        'ball-ahead': numberIn(row, inputs, 'B_m'),
      },
      pick: 'Δx',
    }),
  },
  {
    family: 'trailer.nose.scale',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'trailer.ball-by-scale',
      fields: { scale: numberIn(row, inputs, 'scale_kg'), ratio: numberIn(row, inputs, 'ratio') },
      pick: 'B',
    }),
  },
  { family: 'trailer.nose.uk', kind: 'default in its band', asking: printed('advised') },
  { family: 'trailer.nose.us', kind: 'default in its band', asking: printed('advised', { advice: 'us' }) },
  { family: 'trailer.nose.nh', kind: 'default in its band', asking: printed('advised', { advice: 'us' }) },
  { family: 'trailer.nose.min', kind: 'transcription', asking: printed('least') },
  { family: 'trailer.nose.max10', kind: 'transcription', asking: printed('most') },
  { family: 'trailer.nose.ratio', kind: 'transcription', asking: printed('over kerb') },
  { family: 'trailer.law.unbraked', kind: 'transcription', asking: printed('without brakes') },
  { family: 'trailer.law.width', kind: 'transcription', asking: printed('width') },
  { family: 'trailer.law.length', kind: 'transcription', asking: printed('length') },
  {
    family: 'trailer.li',
    kind: 'transcription',
    asking: (row, inputs) => ({
      question: 'trailer.tyre-load',
      fields: { index: numberIn(row, inputs, 'index') },
      pick: 'each',
    }),
  },
  {
    family: 'trailer.speed',
    kind: 'transcription',
    asking: (row) => ({ question: 'trailer.tyre-speed', fields: { symbol: last(row) }, pick: 'v' }),
  },
  {
    family: 'trailer.tyre.axle',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'trailer.tyre-load',
      fields: { index: numberIn(row, inputs, 'index'), tyres: numberIn(row, inputs, 'tyres') },
      pick: 'all',
    }),
  },
  {
    family: 'trailer.tyre.need',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'trailer.tyre-needed',
      fields: { axle: numberIn(row, inputs, 'axle_kg'), spare: numberIn(row, inputs, 'spare') },
      pick: 'LI',
    }),
  },
  {
    family: 'trailer.dot',
    kind: 'outside answer',
    asking: (_, inputs) => ({
      question: 'trailer.tyre-age',
      fields: { code: String(inputs.code), today: '2024-01-01' },
      pick: 'made',
    }),
  },
  { family: 'trailer.age.replace', kind: 'default in its band', asking: ofAge('change at') },
  { family: 'trailer.age.max', kind: 'transcription', asking: ofAge('never past') },
  { family: 'trailer.tread.uk', kind: 'transcription', asking: ofAge('least tread') },
  { family: 'trailer.lash.c', kind: 'transcription', asking: byWay('') },
  { family: 'trailer.lash.c.down', kind: 'transcription', asking: ofLashing('c down') },
  { family: 'trailer.lash.c.tip', kind: 'transcription', asking: ofLashing('c tipping') },
  { family: 'trailer.lash.uk', kind: 'transcription', asking: byWay(', code') },
  { family: 'trailer.lash.top', kind: 'outside answer', asking: overHer },
  {
    family: 'trailer.lash.direct',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'trailer.direct-lashings',
      fields: {
        mass: numberIn(row, inputs, 'm_kg'),
        share: numberIn(row, inputs, 'c'),
        way: 'forward',
        friction: numberIn(row, inputs, 'mu'),
        capacity: numberIn(row, inputs, 'F_R_N'),
        'strap-angle': 30,
      },
      pick: 'n',
    }),
  },
  {
    family: 'trailer.lash.lc',
    kind: 'default in its band',
    asking: (row) => ({ question: 'trailer.webbing', fields: { width: last(row) }, pick: 'LC' }),
  },
  { family: 'trailer.lash.lc.mbf', kind: 'transcription', asking: ofWeb('breaking') },
  { family: 'trailer.lash.shf', kind: 'transcription', asking: ofWeb('SHF') },
  { family: 'trailer.lash.discard', kind: 'transcription', asking: ofWeb('cut most') },
  { family: 'trailer.lash.elong', kind: 'transcription', asking: ofWeb('stretch most') },
  {
    family: 'trailer.lash.cfr.web',
    kind: 'transcription',
    asking: (row) => ofWeb(`unmarked ${last(row)}`)(),
  },
];

export const trailerUnasked: readonly UnaskedFamily[] = [
  { family: 'trailer.nose.limit', because: 'the limit of one’s own car is entered from its papers, never supposed' },
  { family: 'trailer.tyre.dual', because: 'two indices in one marking: told in words beside the load index' },
  {
    family: 'trailer.dot.3digit',
    because: 'a text: a test beside the question holds that three figures are before 2000',
  },
  { family: 'trailer.age.law', because: 'a rule in words that binds other vehicles; named among the sources' },
  { family: 'trailer.law.licence', because: 'a caution in words; ours stands at the question about limits' },
  { family: 'trailer.run', because: 'what comes round on the running gear falls due by the rules of dues' },
  { family: 'trailer.lash.k', because: 'two figures of two standards in one row; both stand in the working' },
  { family: 'trailer.lash.label', because: 'colours in words' },
];
