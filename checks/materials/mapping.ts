import { threadMappings, timberUnasked } from '../loads/fastening-mapping.ts';
import { type Asking, type FamilyMapping, numberIn, type UnaskedFamily } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';
import { beddingMappings, layUpMappings } from './bedding-mapping.ts';
import { coatingMappings } from './coating-mapping.ts';
import { metalMappings } from './metal-mapping.ts';

type Inputs = Readonly<Record<string, unknown>>;

const law = (product: string, pick: string): Asking => ({ question: 'materials.cure-law', fields: { product }, pick });

/** Rows of the recoat family by the last part of their id: the product's law and which of its figures. */
const recoat: Readonly<Record<string, readonly [product: string, pick: string]>> = {
  varnish_1k_min_20C: ['varnish-one-pot', 't'],
  varnish_1k_max_unsanded: ['varnish-one-pot', 'latest'],
  varnish_2k_min_20C: ['varnish-two-pot', 't'],
  varnish_2k_max_unsanded: ['varnish-two-pot', 'latest'],
  epoxy_primer_min_20C: ['epoxy-primer', 't'],
  epoxy_to_pu_max: ['epoxy-primer', 'latest'],
  antifoul_min: ['antifouling', 't'],
  paint_1k_min_20C: ['paint-one-pot', 't'],
  paint_2k_min_20C: ['paint-two-pot', 't'],
};

const sealants: Readonly<Record<string, string>> = {
  polyurethane: 'polyurethane-sealant',
  hybrid: 'hybrid-sealant',
  silicone: 'silicone-sealant',
  polysulfide_1k: 'polysulphide-sealant',
};
const coldest: Readonly<Record<string, string>> = {
  pu: 'paint-two-pot',
  epoxy: 'epoxy-slow',
  alkyd: 'varnish-one-pot',
};

function curing(row: OutsideRow, inputs: Inputs): Asking {
  const n = (name: string) => numberIn(row, inputs, name);
  const [, , what, which] = row.id.split('.');
  if (what === 'double')
    return {
      question: 'materials.time-at-temperature',
      fields: { time: n('t0'), reference: n('T0'), temperature: n('T') },
      pick: 't',
    };
  if (what === 'ratio')
    return { question: 'materials.rate-ratio', fields: { energy: n('Ea_kJ_mol'), from: 20, to: 30 }, pick: 'k' };
  if (what === 'Ea' && which === undefined)
    return { question: 'materials.activation-energy', fields: { from: n('T1'), to: n('T2') }, pick: 'Ea' };
  if (what === 'Ea' && which === 'up') return law('polyester-resin', 'Ea');
  if (what === 'Ea' && which === 'epoxy') return law('epoxy-slow', 'Ea');
  return { unmapped: `no question answers ${row.quantity}` };
}

function byLast(table: Readonly<Record<string, string>>, pick: string) {
  return (row: OutsideRow): Asking => {
    const product = table[row.id.split('.').at(-1)!];
    return product ? law(product, pick) : { unmapped: `no product of ours stands for ${row.quantity}` };
  };
}

/** Rows of the amounts: sizes in the row's own words. */
const amounts: readonly FamilyMapping[] = [
  {
    family: 'materials.cover',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'materials.spread',
      fields: { solids: numberIn(row, inputs, 'vol_solids_pct'), film: numberIn(row, inputs, 'dft_um') },
      pick: 's',
    }),
  },
  {
    family: 'materials.hull.bottom',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'materials.bottom-coats',
      fields: {
        length: numberIn(row, inputs, 'LWL'),
        beam: numberIn(row, inputs, 'B'),
        draft: numberIn(row, inputs, 'T'),
        hull: { 0.5: 'light', 0.75: 'full', 1: 'deep' }[numberIn(row, inputs, 'k')] ?? '',
        coats: 1,
        spread: 10,
      },
      pick: 'A',
    }),
  },
  ...(['round', 'tri'] as const).map(
    (shape): FamilyMapping => ({
      family: `materials.bead.${shape}`,
      kind: 'outside answer',
      asking: (row, inputs) => ({
        question: 'materials.bead',
        fields: { length: 1, shape: shape === 'tri' ? 'fillet' : shape, size: numberIn(row, inputs, 'mm') },
        pick: 'per metre',
      }),
    }),
  ),
  {
    family: 'materials.bead.bed',
    kind: 'outside answer',
    asking: (row, inputs) => {
      const [length, width, layer] = Array.isArray(inputs.mm) ? inputs.mm.map(Number) : [];
      if (length === undefined || width === undefined || layer === undefined)
        return { unmapped: `${row.id}: its input mm is not three numbers` };
      return { question: 'materials.bedding', fields: { length, width, layer }, pick: 'V' };
    },
  },
  ...(['resin', 'total'] as const).map(
    (what): FamilyMapping => ({
      family: `materials.csm.${what}`,
      kind: 'outside answer',
      asking: (row, inputs) => ({
        question: 'materials.cloth-resin',
        fields: { area: 1, weight: numberIn(row, inputs, 'gsm'), layers: 1, ratio: numberIn(row, inputs, 'ratio') },
        pick: what === 'resin' ? 'resin' : 'laminate',
      }),
    }),
  ),
];

export const materialsMappings: readonly FamilyMapping[] = [
  ...amounts,
  ...beddingMappings,
  ...layUpMappings,
  { family: 'materials.cure', kind: 'outside answer', asking: curing },
  {
    family: 'materials.recoat.temp',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'materials.time-at-temperature',
      fields: {
        time: `${numberIn(row, inputs, 'h')} h`,
        reference: numberIn(row, inputs, 'T0'),
        temperature: numberIn(row, inputs, 'T'),
      },
      pick: 't',
    }),
  },
  {
    family: 'materials.recoat',
    kind: 'default in its band',
    asking: (row) => {
      const known = recoat[row.id.split('.').at(-1)!];
      return known ? law(...known) : { unmapped: `no product of ours stands for ${row.quantity}` };
    },
  },
  { family: 'materials.seal.cure', kind: 'default in its band', asking: byLast(sealants, 'first day') },
  { family: 'materials.temp.min', kind: 'default in its band', asking: byLast(coldest, 'coldest') },
  {
    family: 'materials.dp.margin',
    kind: 'transcription',
    asking: () => ({
      question: 'materials.dew-margin',
      fields: { air: 20, humidity: 50, surface: 20 },
      pick: 'least margin',
    }),
  },
  {
    family: 'materials.dp.case',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'materials.dew-margin',
      fields: {
        air: numberIn(row, inputs, 'T'),
        humidity: numberIn(row, inputs, 'RH'),
        surface: numberIn(row, inputs, 'surface'),
      },
      pick: 'margin',
    }),
  },
  {
    family: 'materials.rh',
    kind: 'transcription',
    asking: () => ({
      question: 'materials.dew-margin',
      fields: { air: 20, humidity: 50, surface: 20 },
      pick: 'most humidity',
    }),
  },
  ...coatingMappings,
  ...threadMappings,
  ...metalMappings,
];

export const materialsUnasked: readonly UnaskedFamily[] = [
  { family: 'materials.galv.zincref', because: 'a note of the chart that does not go with its own figure for zinc' },
  ...timberUnasked,
];
