import { type Asking, type FamilyMapping, numberIn, type UnaskedFamily } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';
import { screwMappings } from './fastening-mapping.ts';
import { groundMappings } from './ground-mapping.ts';
import { hoistMappings } from './hoist-mapping.ts';
import { rigMappings, rigUnasked } from './rig-mapping.ts';

type Inputs = Readonly<Record<string, unknown>>;
const part = (row: OutsideRow, i: number) => row.id.split('.')[i] ?? '';
const last = (row: OutsideRow) => row.id.split('.').at(-1) ?? '';

const gear: Readonly<Record<string, string>> = { chain: 'chain', wire: 'wire', cordage: 'rope' };

/** Fibres in the words of the rows. */
const fibres: Readonly<Record<string, string>> = {
  pes: 'polyester',
  pa: 'nylon',
  pp: 'polypropylene',
  dbraid: 'polyester-braid',
};

/** `1/4` of an inch, as the rows write sizes. */
const inches = (row: OutsideRow, inputs: Inputs): number => {
  const [top, bottom] = String(inputs.size_in).split('/').map(Number);
  if (!top || !bottom) throw new Error(`${row.id}: its input size_in is not a fraction of an inch`);
  return (25.4 * top) / bottom;
};

const rope =
  (fibre: (row: OutsideRow) => string | undefined, pick: (row: OutsideRow) => string) =>
  (row: OutsideRow, inputs: Inputs): Asking => {
    const of = fibres[fibre(row) ?? ''];
    return of
      ? { question: 'loads.rope', fields: { fibre: of, size: numberIn(row, inputs, 'mm') }, pick: pick(row) }
      : { unmapped: `no fibre of ours is ${row.quantity}` };
  };

const manila = (row: OutsideRow, inputs: Inputs, pick: string): Asking => ({
  question: 'loads.rope',
  fields: { fibre: 'nylon', size: `${numberIn(row, inputs, 'circ_in') / Math.PI} in` },
  pick,
});

/** Rope tables call the 3/8 and 1/2 in ropes 10 and 12 mm. */
const calledInches: Readonly<Record<string, number>> = { '3/8': 10, '1/2': 12 };
const ropeWorking = (row: OutsideRow, inputs: Inputs): Asking => {
  const of = fibres[part(row, 3)] ?? 'polyester';
  const size = calledInches[String(inputs.size_in)] ?? numberIn(row, inputs, 'mm');
  return { question: 'loads.rope', fields: { fibre: of, size }, pick: 'rope table' };
};

const wire =
  (pick: string, extra: Readonly<Record<string, string>> = {}) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.wire',
    fields: { laid: part(row, extra.make === 'aircraft' ? 3 : 2), size: sizeOf(row, inputs), ...extra },
    pick,
  });
const sizeOf = (row: OutsideRow, inputs: Inputs) =>
  'size_in' in inputs ? inches(row, inputs) : numberIn(row, inputs, 'mm');

const layOf: Readonly<Record<string, string>> = { '6x7': '7x7', '6x19M': '7x19' };
const wireFactor = (row: OutsideRow): Asking => {
  const laid = layOf[last(row)];
  return laid
    ? { question: 'loads.wire', fields: { laid, size: 4 }, pick: part(row, 2) }
    : { unmapped: `no wire of ours is ${last(row)}` };
};

const chain =
  (pick: string, size: (row: OutsideRow, inputs: Inputs) => number = sizeOf) =>
  (row: OutsideRow, inputs: Inputs): Asking => {
    const grade = row.id.split('.').find((each) => /^g\d\d$/.test(each));
    return grade
      ? { question: 'loads.chain', fields: { grade: grade.slice(1), size: size(row, inputs) }, pick }
      : { unmapped: `no grade in ${row.id}` };
  };

const shackle = (size: number, pick: string): Asking => ({
  question: 'loads.shackle',
  fields: { make: 'lifting', size },
  pick,
});

/** Endings in the words of the rows, and the table of ours that holds the row’s source. */
const endings: Readonly<Record<string, readonly [ending: string, pick: string]>> = {
  'knot.uscg.square': ['square-knot', 'crew'],
  'knot.uscg.bowline': ['bowline', 'crew'],
  'knot.uscg.becket_bend': ['becket-bend', 'crew'],
  'knot.uscg.clove_hitch': ['clove-hitch', 'crew'],
  'knot.uscg.anchor_bend': ['anchor-bend', 'splicers'],
  'knot.uscg.eye_splice': ['eye-splice', 'crew'],
  'knot.uscg.short_splice': ['short-splice', 'splicers'],
  'knot.uscg.round_turn': ['round-turn', 'crew'],
  'knot.day.anchor_bend': ['anchor-bend', 'splicers'],
  'knot.day.clove_hitch': ['clove-hitch', 'splicers'],
  'knot.day.square': ['square-knot', 'splicers'],
  'knot.day.short_splice': ['short-splice', 'splicers'],
  'knot.day.figure_eight_end': ['figure-eight-end', 'splicers'],
  'knot.day.overhand': ['overhand', 'splicers'],
  'knot.day.bowline': ['bowline', 'crew'],
  'knot.ocimf.splice': ['eye-splice', 'mooring'],
  'knot.kiu.bowline': ['bowline', 'tests'],
  'knot.kiu.figure_eight_loop': ['figure-eight-loop', 'tests'],
  'wire.splice': ['hand-splice', 'k'],
  'wire.clips': ['clips', 'k'],
  'wire.ferrule': ['ferrule', 'k'],
  'wire.swage': ['swage', 'k'],
  'wire.mech': ['cone', 'k'],
  'wire.term.sleeve_iwrc': ['ferrule', 'wire core'],
  'wire.term.sleeve_fc': ['ferrule', 'fibre core'],
  'wire.term.handsplice_stainless': ['hand-splice', 'stainless'],
  'wire.term.socket': ['socket', 'army'],
  'wire.term.wedge': ['wedge', 'army'],
};
const ending = (row: OutsideRow): Asking => {
  const found = endings[row.id.replace(/^loads\./, '')];
  return found
    ? { question: 'loads.ending', fields: { ending: found[0] }, pick: found[1] }
    : { unmapped: `no ending of ours is ${row.quantity}` };
};

const bend = (pick: string): Asking => ({ question: 'loads.bend', fields: { ratio: 10 }, pick });
const factor = (of: string, use: string): Asking => ({
  question: 'loads.factor',
  fields: { gear: of, use },
  pick: 'n',
});
const copied = (family: string, asking: FamilyMapping['asking']): FamilyMapping => ({
  family,
  kind: 'transcription',
  asking,
});

const pathMappings: readonly FamilyMapping[] = [
  copied('loads.cfr.unmarked', (row) => {
    const of = gear[last(row)];
    return of
      ? { question: 'loads.unmarked', fields: { gear: of }, pick: 'taken for' }
      : { unmapped: `no gear of ours is ${row.quantity}` };
  }),
  ...['pes', 'pa'].flatMap((fibre) => [
    copied(
      `loads.rope.${fibre}.a`,
      rope(
        () => fibre,
        () => 'american',
      ),
    ),
    copied(
      `loads.rope.${fibre}.b`,
      rope(
        () => fibre,
        () => 'british',
      ),
    ),
  ]),
  copied(
    'loads.rope.pp',
    rope(
      () => 'pp',
      () => 'american',
    ),
  ),
  copied(
    'loads.rope.dbraid',
    rope(
      () => 'dbraid',
      () => 'as sold',
    ),
  ),
  copied(
    'loads.rope.kiu',
    rope(
      (row) => part(row, 3),
      () => 'knot book',
    ),
  ),
  copied(
    'loads.rope.std.pes',
    rope(
      () => 'pes',
      (row) => (part(row, 4) === 'jis' ? 'JIS of four' : 'BS of four'),
    ),
  ),
  copied('loads.rope.wll', ropeWorking),
  copied('loads.rope.wet.nylon', () => ({
    question: 'loads.rope',
    fields: { fibre: 'nylon', size: 10 },
    pick: 'k wet',
  })),
  {
    family: 'loads.rope.navy.manila',
    kind: 'outside answer',
    asking: (row, inputs) => manila(row, inputs, 'F manila'),
  },
  {
    family: 'loads.rope.navy.nylon',
    kind: 'outside answer',
    asking: (row, inputs) => manila(row, inputs, 'F nylon by rule'),
  },
  ...['1x19', '7x7', '7x19'].flatMap((laid): FamilyMapping[] => [
    copied(`loads.wire.${laid}`, wire('F')),
    { family: `loads.wire.${laid}.calc`, kind: 'outside answer', asking: wire('F by K') },
  ]),
  copied('loads.wire.cres', wire('aircraft', { make: 'aircraft' })),
  ...['K2', 'K3', 'C2'].map((of) => copied(`loads.wire.${of}`, wireFactor)),
  copied('loads.chain.a', chain('DIN')),
  copied('loads.chain.b', chain('writer')),
  { family: 'loads.chain.calc', kind: 'outside answer', asking: chain('F by grade') },
  copied('loads.chain.nacm', chain('rule in pounds')),
  copied('loads.cfr.chain', chain('rule', inches)),
  copied('loads.chain.mass', (row, inputs) => ({
    question: 'loads.chain',
    fields: { grade: '30', size: numberIn(row, inputs, 'mm') },
    pick: 'm',
  })),
  copied('loads.shackle', (row, inputs) => shackle(numberIn(row, inputs, 'body_mm'), 'WLL')),
  copied('loads.shackle.df', () => shackle(9, 'n')),
  copied('loads.shackle.side45', () => shackle(9, 'k 45°')),
  copied('loads.shackle.wear', () => shackle(9, 'wear')),
  copied('loads.shackle.inspect', () => shackle(9, 'inspect')),
  ...['knot', 'wire.splice', 'wire.clips', 'wire.ferrule', 'wire.swage', 'wire.mech', 'wire.term'].map((family) =>
    copied(`loads.${family}`, ending),
  ),
  copied('loads.bend.wire', (row, inputs) => ({
    question: 'loads.bend',
    fields: { ratio: numberIn(row, inputs, 'D_over_d') },
    pick: 'k',
  })),
  copied('loads.wire.sharpbend', () => bend('loss at a sharp edge')),
  copied('loads.sheave.wire', () => bend('least for wire')),
  copied('loads.sheave.fibre', () => bend('least for rope')),
  copied('loads.df.chain_lifting', () => factor('chain', 'hoist')),
  copied('loads.df.wire_lifting', () => factor('wire', 'hoist')),
  copied('loads.df.textile_sling', () => factor('rope', 'hoist')),
  copied('loads.df.running_rigging', () => factor('rope', 'running-rigging')),
  copied('loads.df.rig_static', () => factor('wire', 'standing-rigging')),
];

export const loadsMappings: readonly FamilyMapping[] = [
  ...pathMappings,
  // one part a line
  ...hoistMappings,
  ...screwMappings,
  ...rigMappings,
  ...groundMappings,
];

export const loadsUnasked: readonly UnaskedFamily[] = [
  { family: 'loads', because: 'no question asks about it yet' },
  { family: 'loads.df.overhead', because: 'a caution in words; ours stand at every question about a load' },
  ...rigUnasked,
  { family: 'loads.cfr.wire', because: 'wire rope with a fibre core, which a boat does not have' },
];
