import { type Asking, type FamilyMapping, numberIn, type UnaskedFamily } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;
const part = (row: OutsideRow, i: number) => row.id.split('.')[i] ?? '';

const drill =
  (pick: (row: OutsideRow) => string) =>
  (_: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.drill',
    fields: { size: String(inputs.size) },
    pick: pick(_),
  });

const tightened =
  (friction: (row: OutsideRow) => number, pick: string) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.bolt-torque',
    fields: { size: String(inputs.size), class: String(inputs.class), friction: friction(row), through: 'metal' },
    pick,
  });

/** Woods in the words of the rows. */
const woods: Readonly<Record<string, string>> = {
  mahogany_african: 'african-mahogany',
  teak: 'teak',
  oak: 'oak',
  iroko: 'iroko',
  douglas_fir: 'douglas-fir',
  western_red_cedar: 'western-red-cedar',
  ash: 'ash',
  okoume_ply: 'okoume-ply',
  gaboon: 'gaboon',
};
const timber =
  (at: number, pick: string) =>
  (row: OutsideRow): Asking => {
    const wood = woods[part(row, at)];
    return wood
      ? { question: 'loads.timber', fields: { wood }, pick }
      : { unmapped: `no wood of ours is ${row.quantity}` };
  };

/** Rows about threads, drills, torque and timber, which the handbook counts among materials. */
export const threadMappings: readonly FamilyMapping[] = [
  { family: 'materials.clear', kind: 'transcription', asking: drill((row) => `clearance ${part(row, 3)}`) },
  { family: 'materials.pitch', kind: 'transcription', asking: drill(() => 'pitch') },
  { family: 'materials.tap', kind: 'transcription', asking: drill(() => 'tapping') },
  { family: 'materials.tap50', kind: 'transcription', asking: drill(() => 'tapping for stainless') },
  {
    family: 'materials.torque',
    kind: 'outside answer',
    asking: tightened((row) => Number(part(row, 4)) / 10, 'M'),
  },
  {
    family: 'materials.torque.soft',
    kind: 'transcription',
    asking: () => ({ question: 'loads.bolt-torque', fields: { size: 'M6', through: 'laminate' }, pick: 'rule' }),
  },
  { family: 'materials.preload', kind: 'outside answer', asking: tightened(() => 0.1, 'F') },
  { family: 'materials.timber', kind: 'transcription', asking: timber(2, 'ρ') },
  { family: 'materials.timber.sg', kind: 'outside answer', asking: timber(3, 'G') },
];
export const timberUnasked: readonly UnaskedFamily[] = [
  { family: 'materials.timber.teak_burma', because: 'a heavier teak: for what screws hold the lighter one stands' },
];

const inWood =
  (pick: string, extra: Readonly<Record<string, string | number>> = {}) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.wood-screw',
    fields: {
      gravity: typeof inputs === 'object' && 'G' in inputs ? numberIn(row, inputs, 'G') : 0.5,
      size:
        'D_in' in inputs ? `${numberIn(row, inputs, 'D_in')} in` : 'D_mm' in inputs ? numberIn(row, inputs, 'D_mm') : 4,
      depth: 'L_mm' in inputs ? numberIn(row, inputs, 'L_mm') : 30,
      ...extra,
    },
    pick,
  });

export const screwMappings: readonly FamilyMapping[] = [
  { family: 'loads.screw.wh', kind: 'outside answer', asking: inWood('F') },
  { family: 'loads.screw.wh.coef', kind: 'transcription', asking: inWood('K') },
  { family: 'loads.screw.wh.inch', kind: 'outside answer', asking: inWood('K turned') },
  { family: 'loads.screw.wh.minL', kind: 'transcription', asking: inWood('L/D least') },
  { family: 'loads.screw.wh.tapping', kind: 'transcription', asking: inWood('tapping') },
  { family: 'loads.screw.nds', kind: 'outside answer', asking: inWood('allowed an inch') },
  { family: 'loads.screw.nds.ratio', kind: 'outside answer', asking: inWood('n') },
  { family: 'loads.screw.nds.endgrain', kind: 'transcription', asking: inWood('rule', { grain: 'end' }) },
  {
    family: 'loads.screw.lag',
    kind: 'outside answer',
    asking: (row, inputs) => {
      const inches = numberIn(row, inputs, 'L_in') - numberIn(row, inputs, 'tip_in') - numberIn(row, inputs, 'side_in');
      return inWood('W dry', { screw: 'coach', depth: `${inches} in` })(row, inputs);
    },
  },
];
