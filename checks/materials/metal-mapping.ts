import type { Asking, FamilyMapping } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

/** Metals in the words of the rows. */
const metals: Readonly<Record<string, string>> = {
  stainless316_passive: 'stainless-316',
  '316p': 'stainless-316',
  stainless304_passive: 'stainless-304',
  stainless316_active: 'stainless-316-crevice',
  stainless304_active: 'stainless-304-crevice',
  nickel_copper_400: 'nickel-copper',
  nickel_al_bronze: 'nickel-aluminium-bronze',
  cuni_70_30: 'cupronickel-30',
  cuni_90_10: 'cupronickel-10',
  tin_bronze: 'tin-bronze',
  silicon_bronze: 'silicon-bronze',
  manganese_bronze: 'manganese-bronze',
  naval_yellow_red_brass: 'brass',
  naval_brass: 'brass',
  aluminium_bronze: 'aluminium-bronze',
  aluminium_alloys: 'aluminium',
  aluminium_marine: 'aluminium',
  galvanised_iron: 'galvanised',
  mild_steel: 'mild-steel',
  mildsteel: 'mild-steel',
};
const called = (name: string) => metals[name] ?? name;
const last = (row: OutsideRow) => row.id.split('.').at(-1) ?? '';

const touching = (a: string, b: string, pick: string, wet = 'harsh'): Asking => ({
  question: 'materials.metals-together',
  fields: { a, b, wet },
  pick,
});

/** Rows about metals in sea water. */
export const metalMappings: readonly FamilyMapping[] = [
  {
    family: 'materials.galv.sce',
    kind: 'transcription',
    asking: (row) => touching(called(last(row)), 'zinc', 'a in flowing water'),
  },
  {
    family: 'materials.galv.agcl',
    kind: 'transcription',
    asking: (row) => touching(called(last(row)), 'zinc', 'a on the chart'),
  },
  {
    family: 'materials.galv.rule',
    kind: 'transcription',
    asking: () => touching('copper', 'zinc', 'rule of the chart'),
  },
  {
    family: 'materials.galv.milstd',
    kind: 'transcription',
    asking: (row) => touching('copper', 'zinc', 'limit', last(row)),
  },
  {
    family: 'materials.galv.diff',
    kind: 'outside answer',
    asking: (row) => {
      const [a = '', b = ''] = last(row).split('_vs_');
      return touching(called(a), called(b), 'difference');
    },
  },
];
