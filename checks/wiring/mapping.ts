import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;

const mm2 = (row: OutsideRow, inputs: Inputs) => `${numberIn(row, inputs, 'mm2')}mm2`;
const awg = (row: OutsideRow, inputs: Inputs) => `awg${numberIn(row, inputs, 'awg')}`;
/** `'85-90'` or a number: the lower end. */
const insulation = (inputs: Inputs) => String(Number.parseInt(String(inputs.insulation_C), 10));

/** Strands in the words of the rows. */
const strands: Readonly<Record<string, string>> = {
  'class2.plain': 'stiff-plain',
  'class2.tinned': 'stiff-tinned',
  'class5.plain': 'fine-plain',
  'class5.tinned': 'fine-tinned',
};

const resistance = (row: OutsideRow, inputs: Inputs): Asking => {
  const [, , first, second] = row.id.split('.');
  const wanted = strands[`${first}.${second}`];
  return wanted
    ? {
        question: 'wiring.resistance',
        fields: { size: mm2(row, inputs), strands: wanted, temperature: numberIn(row, inputs, 'temp_C') },
        pick: 'R',
      }
    : { unmapped: `no strands of ours are ${first} ${second}` };
};

const oneSize = (temperature_C: number, pick: string): Asking => ({
  question: 'wiring.resistance',
  fields: { size: '2.5mm2', temperature: temperature_C },
  pick,
});

const capacity =
  (size: (row: OutsideRow, inputs: Inputs) => string, pick: string, extra: Readonly<Record<string, string>> = {}) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'wiring.current-capacity',
    fields: { size: size(row, inputs), insulation: insulation(inputs), ...extra },
    pick,
  });

const bundle = (conductors: unknown): number =>
  ({ upto3: 3, '4-6': 5, '7-24': 12, '25plus': 30, '3': 3 })[String(conductors)] ?? Number.NaN;

/** Whole path: the question gives the smallest conductor by drop, current, fuse and rule, and the table must come out. */
const wholePath = (row: OutsideRow, inputs: Inputs): Asking => ({
  question: 'wiring.conductor',
  fields: {
    current: numberIn(row, inputs, 'I_A'),
    'length-there-and-back': `${numberIn(row, inputs, 'L_ft_round')} ft`,
    insulation: '105',
    system: 'gauge',
  },
  pick: 'S',
});

const anyConductor = (pick: string, extra: Readonly<Record<string, string>> = {}): Asking => ({
  question: 'wiring.conductor',
  fields: { current: 2, 'length-there-and-back': 10, ...extra },
  pick,
});

const anyFuse = (pick: string): Asking => ({
  question: 'wiring.fuse',
  fields: { load: 2, capacity: 18 },
  pick,
});

const heldFast = (pick: string): Asking => ({ question: 'wiring.held-fast', fields: { battery: 30 }, pick });

export const wiringMappings: readonly FamilyMapping[] = [
  { family: 'wiring.iec', kind: 'transcription', asking: resistance },
  {
    family: 'wiring.kt',
    kind: 'outside answer',
    asking: (row, inputs) => oneSize(numberIn(row, inputs, 'temp_C'), 'Kt'),
  },
  { family: 'wiring.rho', kind: 'transcription', asking: () => oneSize(20, 'ρ') },
  { family: 'wiring.alpha', kind: 'transcription', asking: () => oneSize(20, 'α') },
  { family: 'wiring.r.50C', kind: 'outside answer', asking: () => oneSize(50, 'R') },
  ...(
    [
      ['area', 'S', 'outside answer'],
      ['r', 'R', 'outside answer'],
      ['cm', 'CM', 'transcription'],
    ] as const
  ).map(
    ([figure, pick, kind]): FamilyMapping => ({
      family: `wiring.awg.${figure}`,
      kind,
      asking: (row, inputs) => ({
        question: 'wiring.gauge',
        fields: { gauge: String(numberIn(row, inputs, 'awg')) },
        pick,
      }),
    }),
  ),
  { family: 'wiring.cfr', kind: 'transcription', asking: capacity(awg, 'I') },
  {
    family: 'wiring.cfr.engine',
    kind: 'transcription',
    asking: capacity(() => 'awg10', 'k engine', { 'engine-space': 'yes' }),
  },
  {
    family: 'wiring.ul1426',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'wiring.current-capacity',
      fields: { size: awg(row, inputs), insulation: '105', bundled: bundle(inputs.bundle) },
      pick: 'I',
    }),
  },
  { family: 'wiring.iso', kind: 'transcription', asking: capacity(mm2, 'I') },
  { family: 'wiring.iso.alt105', kind: 'transcription', asking: capacity(mm2, 'I of a manual') },
  {
    family: 'wiring.iso.engine',
    kind: 'transcription',
    asking: capacity(() => '2.5mm2', 'k engine', { 'engine-space': 'yes' }),
  },
  {
    family: 'wiring.iso.bundle',
    kind: 'transcription',
    asking: (_row, inputs) => ({
      question: 'wiring.current-capacity',
      fields: { size: '2.5mm2', bundled: bundle(inputs.conductors) },
      pick: 'k bundle',
    }),
  },
  { family: 'wiring.vd.critical', kind: 'transcription', asking: () => anyConductor('share') },
  { family: 'wiring.vd.other', kind: 'transcription', asking: () => anyConductor('share', { needs: 'other' }) },
  { family: 'wiring.vd.iso.list', kind: 'transcription', asking: () => anyConductor('where it matters') },
  {
    family: 'wiring.vd.cm',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'wiring.conductor',
      fields: {
        current: numberIn(row, inputs, 'I_A'),
        'length-there-and-back': `${numberIn(row, inputs, 'L_ft_round')} ft`,
        volts: numberIn(row, inputs, 'V'),
        needs: inputs.pct === 10 ? 'other' : 'critical',
        system: 'gauge',
      },
      pick: 'CM',
    }),
  },
  { family: 'wiring.vd.table', kind: 'outside answer', asking: wholePath },
  {
    family: 'wiring.vd.iso',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'wiring.volt-drop',
      fields: {
        current: numberIn(row, inputs, 'I_A'),
        'length-there-and-back': numberIn(row, inputs, 'L_m_total'),
        size: mm2(row, inputs),
      },
      pick: 'E of ISO',
    }),
  },
  {
    family: 'wiring.vd.iso.t',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'wiring.volt-drop',
      fields: {
        current: 1,
        'length-there-and-back': numberIn(row, inputs, 'L_m_total'),
        size: mm2(row, inputs),
        volts: numberIn(row, inputs, 'V'),
        needs: inputs.drop_pct === 10 ? 'other' : 'critical',
      },
      pick: 'I of ISO',
    }),
  },
  {
    family: 'wiring.vd.iec',
    kind: 'outside answer',
    asking: (row, inputs) => {
      const size = { 13.7: '1.5mm2', 8.21: '2.5mm2', 26.7: '0.75mm2' }[numberIn(row, inputs, 'ohm_per_km')];
      return size
        ? {
            question: 'wiring.volt-drop',
            fields: {
              current: numberIn(row, inputs, 'I_A'),
              'length-there-and-back': numberIn(row, inputs, 'L_m_total'),
              size,
              temperature: 20,
            },
            pick: 'E',
          }
        : { unmapped: `no conductor of ours has ${String(inputs.ohm_per_km)} Ω/km` };
    },
  },
  {
    family: 'wiring.vd.area',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'wiring.conductor',
      fields: {
        current: numberIn(row, inputs, 'I_A'),
        'length-there-and-back': numberIn(row, inputs, 'L_m_total'),
      },
      pick: 'S of ISO',
    }),
  },
  { family: 'wiring.min.single', kind: 'transcription', asking: () => anyConductor('S least', { run: 'singly' }) },
  { family: 'wiring.min.sheath', kind: 'transcription', asking: () => anyConductor('S least') },
  { family: 'wiring.min.awg', kind: 'transcription', asking: () => anyConductor('least gauges') },
  { family: 'wiring.support.max', kind: 'transcription', asking: () => heldFast('support') },
  { family: 'wiring.support.battery', kind: 'transcription', asking: () => heldFast('support at battery') },
  { family: 'wiring.battery.move', kind: 'transcription', asking: () => heldFast('may move') },
  { family: 'wiring.battery.move.us', kind: 'transcription', asking: () => heldFast('may move, American rule') },
  { family: 'wiring.battery.pull.us', kind: 'transcription', asking: () => heldFast('pull most') },
  { family: 'wiring.battery.fuelmetal', kind: 'transcription', asking: () => heldFast('above the battery') },
  { family: 'wiring.fuse.max', kind: 'transcription', asking: () => anyFuse('k capacity') },
  { family: 'wiring.fuse.max.us', kind: 'transcription', asking: () => anyFuse('k of the American rule') },
  { family: 'wiring.fuse.min', kind: 'transcription', asking: () => anyFuse('k load') },
  { family: 'wiring.fuse.dist.iso', kind: 'transcription', asking: () => anyFuse('reach by ISO') },
  { family: 'wiring.fuse.dist.us', kind: 'transcription', asking: () => anyFuse('reach, American rule') },
  {
    family: 'wiring.fuse.dist.us.enclosed',
    kind: 'transcription',
    asking: () => anyFuse('reach sheathed, American rule'),
  },
  {
    family: 'wiring.fuse.blade',
    kind: 'transcription',
    asking: (row, inputs) => ({
      question: 'wiring.fuse',
      fields: { load: numberIn(row, inputs, 'A') / 1.25, capacity: 100 },
      pick: 'colour',
    }),
  },
  {
    family: 'wiring.fuse.pick',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'wiring.fuse',
      fields: { load: numberIn(row, inputs, 'load_A'), capacity: numberIn(row, inputs, 'ampacity_A') },
      pick: 'In',
    }),
  },
];
