import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

/** Kinds of sealant in the words of the rows. */
const kinds: Readonly<Record<string, string>> = { polysulfide: 'polysulphide', polysulfide_1k: 'polysulphide' };
const called = (name: string) => kinds[name] ?? name;
const parts = (row: OutsideRow) => row.id.split('.');
const last = (row: OutsideRow) => parts(row).at(-1)!;

const like = (sealant: string, pick: string): Asking => ({
  question: 'materials.sealant',
  fields: { sealant: called(sealant) },
  pick,
});

/** Figures of the handbook of sealants by the last word but one of the row. */
const printed: Readonly<Record<string, string>> = {
  move: 'takes',
  tackfree: 'tack-free',
  joint: 'wide',
  shrink: 'shrinks',
  water: 'water',
  paint: 'paintable',
};

/** Rows about sealants, the joints they fill and how far a tube of them goes. */
export const beddingMappings: readonly FamilyMapping[] = [
  {
    family: 'materials.seal.book',
    kind: 'transcription',
    asking: (row) => {
      const [, , , what = '', sealant = ''] = parts(row);
      const pick = printed[what];
      return pick ? like(sealant, pick) : { unmapped: `no figure of ours is the handbook's ${what}` };
    },
  },
  // materials.seal.<kind>.<what is said of it>
  ...['polysulfide', 'polyurethane', 'silicone', 'hybrid', 'butyl'].map(
    (sealant): FamilyMapping => ({
      family: `materials.seal.${sealant}`,
      kind: 'transcription',
      asking: (row) => like(sealant, last(row)),
    }),
  ),
  { family: 'materials.seal.acetoxy', kind: 'transcription', asking: () => like('silicone', 'acetoxy') },
  { family: 'materials.seal.move', kind: 'default in its band', asking: (row) => like(last(row), 'takes') },
  { family: 'materials.seal.tackfree', kind: 'default in its band', asking: (row) => like(last(row), 'skin') },
  {
    family: 'materials.seal.iso11600',
    kind: 'transcription',
    asking: (_, inputs) => ({
      question: 'materials.moving-joint',
      fields: { movement: 1, sealant: `class-${String(inputs.class).replace('.', '-')}` },
      pick: 'takes',
    }),
  },
  {
    family: 'materials.joint.ratio',
    kind: 'default in its band',
    asking: () => ({
      question: 'materials.moving-joint',
      fields: { movement: 1, sealant: 'polysulphide' },
      pick: 'ratio',
    }),
  },
  {
    family: 'materials.bead.310',
    kind: 'outside answer',
    asking: (row) => ({
      question: 'materials.bead',
      fields: { length: 1, shape: 'round', size: Number(last(row).replace('round', '')), tube: '310 ml' },
      pick: 'reach',
    }),
  },
  {
    family: 'materials.bead.290.joint',
    kind: 'outside answer',
    // its inputs stand in its words: 'joint 8 × 6 mm'
    asking: (row) => {
      const size = /(\d+) × (\d+) mm/.exec(row.quantity);
      if (!size) return { unmapped: `${row.id}: the words do not say width × depth` };
      return {
        question: 'materials.bead',
        fields: { length: 1, shape: 'seam', size: Number(size[1]), depth: Number(size[2]), tube: '290 ml' },
        pick: 'reach',
      };
    },
  },
];

const ratio = (cloth: string, resin: string, pick: string): Asking => ({
  question: 'materials.cloth-ratio',
  fields: { cloth, resin },
  pick,
});

const thickeners: Readonly<Record<string, string>> = {
  colloidal_silica: 'silica',
  glass_microballoons: 'microballoons',
  wood_flour: 'wood-flour',
  microfibres: 'microfibres',
};

/** Rows about cloth and resin, what thickens it, and how thick it lies. */
export const layUpMappings: readonly FamilyMapping[] = [
  { family: 'materials.csm.ratio', kind: 'default in its band', asking: () => ratio('mat', 'polyester', 'ratio') },
  { family: 'materials.csm.glass', kind: 'outside answer', asking: () => ratio('mat', 'polyester', 'glass') },
  { family: 'materials.csm.us.example', kind: 'transcription', asking: () => ratio('mat', 'polyester', 'seller') },
  {
    family: 'materials.csm.thick',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'materials.cloth-resin',
      fields: { area: 1, weight: numberIn(row, inputs, 'gsm'), layers: 1, ratio: numberIn(row, inputs, 'ratio') },
      pick: 'thickness',
    }),
  },
  { family: 'materials.cloth.ratio', kind: 'default in its band', asking: () => ratio('woven', 'polyester', 'ratio') },
  { family: 'materials.epoxy.ratio', kind: 'default in its band', asking: () => ratio('woven', 'epoxy', 'ratio') },
  { family: 'materials.epoxy.density', kind: 'default in its band', asking: () => ratio('woven', 'epoxy', 'density') },
  {
    family: 'materials.polyester.density',
    kind: 'default in its band',
    asking: () => ratio('woven', 'polyester', 'density'),
  },
  {
    family: 'materials.gelcoat.us',
    kind: 'outside answer',
    // 'gelcoat thickness at 100 ft² per US gallon'
    asking: () => ({
      question: 'materials.film-thickness',
      fields: { volume: '1 US gal', area: '100 ft²' },
      pick: 'wet',
    }),
  },
  {
    family: 'materials.hull.deck',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'materials.deck-coats',
      fields: { length: numberIn(row, inputs, 'LOA'), beam: numberIn(row, inputs, 'B'), coats: 1, spread: 10 },
      pick: 'A',
    }),
  },
  {
    family: 'materials.filler',
    kind: 'default in its band',
    asking: (row) => {
      const thickener = thickeners[last(row)];
      if (!thickener) return { unmapped: `no thickener of ours is ${last(row)}` };
      return {
        question: 'materials.thickener',
        fields: { volume: 100, thickener, thickness: 'stands' },
        pick: 'bulk',
      };
    },
  },
];
