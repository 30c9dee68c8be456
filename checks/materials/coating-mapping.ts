/** Rows of what is mixed, coated and kept dry: catalyst, coats, spread, wet wood, the evening's dew. */
import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

const last = (row: OutsideRow) => row.id.split('.').at(-1)!;

const catalyst = (what: string, kind: FamilyMapping['kind'], asking: FamilyMapping['asking']): FamilyMapping => ({
  family: `materials.mekp.${what}`,
  kind,
  asking,
});

const coats: Readonly<Record<string, string>> = {
  new: 'varnish-bare',
  maint: 'varnish-yearly',
  thin: 'first-thinning',
  oil: 'oil',
};
const spreads: Readonly<Record<string, string>> = {
  varnish: 'varnish-one-pot',
  one_pack_enamel: 'paint-one-pot',
  two_pack_pu: 'paint-two-pot',
  epoxy_primer: 'epoxy-primer',
  antifouling: 'antifouling',
  bilge_paint: 'bilge-paint',
  teak_oil: 'teak-oil',
};

function named(table: Readonly<Record<string, string>>, question: string, field: string, pick: string) {
  return (row: OutsideRow): Asking => {
    const id = table[last(row)];
    return id
      ? { question, fields: { [field]: id }, pick }
      : { unmapped: `nothing of ours stands for ${row.quantity}` };
  };
}

export const coatingMappings: readonly FamilyMapping[] = [
  catalyst('temp', 'transcription', (row, inputs) => ({
    question: 'materials.catalyst-share',
    fields: { air: (numberIn(row, inputs, 'temp_from') + numberIn(row, inputs, 'temp_to')) / 2, resin: 'laminating' },
    pick: 'share',
  })),
  catalyst('range', 'default in its band', () => ({
    question: 'materials.catalyst-share',
    fields: { air: 18, resin: 'laminating' },
    pick: 'share',
  })),
  catalyst('gelcoat', 'transcription', () => ({
    question: 'materials.catalyst-share',
    fields: { air: 18, resin: 'gelcoat' },
    pick: 'share',
  })),
  catalyst('ml', 'outside answer', (row, inputs) => ({
    question: 'materials.catalyst',
    fields: { resin: `${numberIn(row, inputs, 'kg')} kg`, share: numberIn(row, inputs, 'pct') },
    pick: 'V',
  })),
  catalyst('potlife', 'default in its band', (row, inputs) => ({
    question: 'materials.pot-life',
    fields: {
      product: 'polyester-resin',
      temperature: numberIn(row, inputs, 'T'),
      mass: 500,
      catalyst: numberIn(row, inputs, 'pct'),
    },
    pick: 't',
  })),
  catalyst('exotherm', 'transcription', () => ({
    question: 'materials.pot-life',
    fields: { product: 'polyester-resin', temperature: 20, mass: 500 },
    pick: 'hottest',
  })),
  catalyst('cobalt', 'transcription', () => ({
    question: 'materials.catalyst-share',
    fields: { air: 18, resin: 'laminating' },
    pick: 'with accelerator',
  })),
  {
    family: 'materials.sun',
    kind: 'default in its band',
    asking: () => ({
      question: 'materials.stop-before-dew',
      fields: { air: 15, humidity: 50, wind: 5, dark: 1, cloud: 0 },
      pick: 'before',
    }),
  },
  {
    family: 'materials.wood.mc',
    kind: 'default in its band',
    asking: () => ({ question: 'materials.timber-moisture', fields: { moisture: 12, for: 'varnish' }, pick: 'most' }),
  },
  {
    family: 'materials.coats',
    kind: 'default in its band',
    asking: named(coats, 'materials.usual-coats', 'work', 'n'),
  },
  {
    family: 'materials.spread',
    kind: 'default in its band',
    asking: named(spreads, 'materials.usual-spread', 'product', 's'),
  },
];
