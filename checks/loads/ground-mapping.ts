import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;

/** A boat so narrow that her length chooses the row, in a wind that changes nothing. */
const boat = { wind: 30, length: 5.5, beam: 1.1, windage: 3 };
const columns: Readonly<Record<number, string>> = { 15: 'lunch', 30: 'working', 42: 'storm' };

const byTable = (row: OutsideRow, inputs: Inputs): Asking => {
  const pick = columns[numberIn(row, inputs, 'wind_kn')];
  return pick
    ? { question: 'loads.bow-load', fields: { ...boat, length: `${numberIn(row, inputs, 'loa_ft')} ft` }, pick }
    : { unmapped: `the table has no column for ${String(inputs.wind_kn)} kn` };
};

/** Chain of the rows: 1.45 kg/m is 8 mm, 0.85 is 6 mm. */
const chains: Readonly<Record<number, string>> = { 1.45: '8', 0.85: '6' };
const chain = (row: OutsideRow, inputs: Inputs): Asking => {
  const size = chains[numberIn(row, inputs, 'chain_kg_m')];
  const fields = {
    load: numberIn(row, inputs, 'T_N'),
    depth: numberIn(row, inputs, 'h_m'),
    bow: 0,
    chain: size ?? 'none',
    'chain-length': 100,
    rope: 'none',
    boat: 6,
  };
  return row.id.endsWith('.bow')
    ? { question: 'loads.rode', fields, pick: 'T bow' }
    : { question: 'loads.rode-to-veer', fields: { ...fields, limit: 0 }, pick: 'L' };
};

export const groundMappings: readonly FamilyMapping[] = [
  { family: 'loads.h40', kind: 'transcription', asking: byTable },
  {
    family: 'loads.h40.32',
    kind: 'transcription',
    asking: () => ({
      question: 'loads.bow-load',
      fields: { ...boat, length: '32 ft', beam: '12 ft', kind: 'motor' },
      pick: 'working',
    }),
  },
  {
    family: 'loads.h40.v2',
    kind: 'transcription',
    asking: () => ({ question: 'loads.bow-load', fields: boat, pick: 'working over lunch' }),
  },
  {
    family: 'loads.wind',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.bow-load',
      fields: {
        ...boat,
        wind: numberIn(row, inputs, 'kn'),
        windage: numberIn(row, inputs, 'A_m2'),
        coefficient: numberIn(row, inputs, 'Cd'),
      },
      pick: 'F wind',
    }),
  },
  {
    family: 'loads.wind.pressure',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.bow-load',
      fields: { ...boat, wind: numberIn(row, inputs, 'kn') },
      pick: 'q',
    }),
  },
  {
    family: 'loads.wind.psf',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'loads.bow-load',
      fields: { ...boat, wind: `${numberIn(row, inputs, 'mph')} mph` },
      pick: 'q foot',
    }),
  },
  { family: 'loads.cat', kind: 'outside answer', asking: chain },
  {
    family: 'loads.cat.lead',
    kind: 'default in its band',
    asking: () => ({
      question: 'loads.rode-to-veer',
      fields: { load: 400, depth: 4, chain: '8', 'chain-length': 60, rope: 'none', boat: 6 },
      pick: 'α limit',
    }),
  },
];
