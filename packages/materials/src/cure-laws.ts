import type { CureLaw, FigureFrom } from './cure-law.ts';

/** One figure of a law and where it was had. `seen` says whether the source itself was read or only recalled. */
export interface FigureSource {
  readonly figure: string;
  /** the values in use, where the source gives a band; ours lies within it */
  readonly band: readonly [number, number] | null;
  readonly unit: string;
  readonly source: string;
  readonly seen: 'read' | 'recalled' | 'common practice' | 'our assumption';
}

/** How one family of products gets hard when nobody has read the tin. */
export interface ProductLaw {
  readonly id: string;
  readonly title: string;
  /** what may be done once the wait is over */
  readonly until: string;
  readonly law: CureLaw;
  readonly figures: readonly FigureSource[];
  readonly cautions: readonly string[];
}

const hour = 60;
const day = 24 * hour;

const tenDegreeRule: FigureSource = {
  figure: 'rate doubles for every 10 °C',
  band: null,
  unit: '°C',
  source:
    "ten-degree rule (van 't Hoff); activation energies of 40–60 kJ/mol (J. Appl. Polym. Sci. 102, 2006, 1870–1876) make it 1.7 to 2.3 times",
  seen: 'read',
};
const epoxyRule: FigureSource = {
  figure: 'rate doubles for every 8.75 °C',
  band: null,
  unit: '°C',
  source:
    'activation energy of 58.6 kJ/mol for an epoxy with an aliphatic amine (handbook row materials.cure.Ea.epoxy, from an abstract)',
  seen: 'read',
};
const practice = (figure: string, unit: string, low: number, high: number): FigureSource => ({
  figure,
  band: [low, high],
  unit,
  source: 'tins on the shelf',
  seen: 'common practice',
});
const recalled = (figure: string, unit: string, low: number, high: number): FigureSource => ({
  figure,
  band: [low, high],
  unit,
  source: 'data sheets of several makers',
  seen: 'recalled',
});
const assumed = (figure: string, unit: string, why: string): FigureSource => ({
  figure,
  band: null,
  unit,
  source: why,
  seen: 'our assumption',
});
const coldest = (least_C: number, seen: FigureSource['seen'] = 'common practice'): FigureSource => ({
  figure: `no progress below ${least_C} °C`,
  band: null,
  unit: '°C',
  source: seen === 'common practice' ? 'trade practice' : 'data sheets of several makers',
  seen,
});

const reacts = (atReference_min: number, minimum_C: number, from: FigureFrom = 'common practice'): CureLaw => ({
  kind: 'reacts',
  atReference_min,
  reference_C: 20,
  doublesPer_C: 10,
  minimum_C,
  from,
});
/** Epoxies feel the cold more than the ten-degree rule says: see `epoxyRule`. */
const epoxy = (atReference_min: number, minimum_C: number): CureLaw => ({
  kind: 'reacts',
  atReference_min,
  reference_C: 20,
  doublesPer_C: 8.75,
  minimum_C,
  from: 'common practice',
});
const dries = (atReference_min: number, minimum_C: number, stopsAt_pct: number): CureLaw => ({
  kind: 'dries',
  atReference_min,
  reference_C: 20,
  doublesPer_C: 10,
  stopsAt_pct,
  minimum_C,
  from: 'common practice',
});
/** A bead 6 mm deep: the least depth of a joint in sealant practice (depth to width 1 : 2, at least 6 mm). */
const moisture = (firstDay_mm: number): CureLaw => ({
  kind: 'moisture',
  depth_mm: 6,
  firstDay_mm,
  reference_C: 23,
  reference_pct: 50,
  minimum_C: 5,
  from: 'our assumption',
});

const resin = [
  'Gloves and goggles; skin that takes to epoxy never leaves it.',
  'Do not leave a full pot standing: it heats itself until it smokes.',
];
const peroxide = [
  'Styrene: air through, or a mask for organic vapour.',
  'Peroxide catalyst burns eyes for good: goggles. Never mix it with cobalt accelerator: the two explode.',
];
const solvent = ['Solvent vapour: air through, no flame, no motor that sparks.'];
const twoPot = [
  ...solvent,
  'The hardener holds isocyanates: brush only, and not without air through; spraying needs supplied air.',
];
const rags = 'Lay oily rags out flat outdoors or under water: in a heap they catch fire by themselves.';

/**
 * Default cure laws by family of product. The tin wins: a keeper's own figure replaces ours and is marked so.
 * Bands and their provenance are those of the handbook rows materials.cure, materials.recoat, materials.seal and
 * materials.temp; a figure none of them has is marked recalled or assumed.
 */
export const cureLaws: readonly ProductLaw[] = [
  {
    id: 'epoxy-fast',
    title: 'Epoxy, fast hardener',
    until: 'it can be sanded and the clamps come off',
    law: epoxy(10 * hour, 5),
    figures: [recalled('10 h at 20 °C', 'h', 6, 12), epoxyRule, coldest(5)],
    cautions: [...resin, 'Wash the blush off with water before the next coat or glass.'],
  },
  {
    id: 'epoxy-slow',
    title: 'Epoxy, slow hardener',
    until: 'it can be sanded and the clamps come off',
    law: epoxy(20 * hour, 10),
    figures: [recalled('20 h at 20 °C', 'h', 16, 24), epoxyRule, coldest(10)],
    cautions: [...resin, 'Wash the blush off with water before the next coat or glass.'],
  },
  {
    id: 'epoxy-full-strength',
    title: 'Epoxy, full strength',
    until: 'it can carry its full load',
    law: epoxy(7 * day, 10),
    figures: [recalled('7 days at 20 °C', 'd', 4, 10), epoxyRule, coldest(10)],
    cautions: resin,
  },
  {
    id: 'polyester-resin',
    title: 'Polyester resin with peroxide catalyst',
    until: 'it can be sanded or trimmed',
    law: reacts(6 * hour, 13),
    figures: [
      recalled('6 h at 20 °C with 1 to 2 % of catalyst', 'h', 3, 24),
      tenDegreeRule,
      {
        figure: 'no progress below 13 °C',
        band: null,
        unit: '°C',
        source: "a resin seller's guide gives catalyst amounts from 13 °C up",
        seen: 'read',
      },
    ],
    cautions: peroxide,
  },
  {
    id: 'gelcoat',
    title: 'Gelcoat',
    until: 'it can be sanded and polished',
    law: reacts(12 * hour, 13),
    figures: [
      recalled('12 h at 20 °C, waxed or covered with film', 'h', 6, 24),
      tenDegreeRule,
      coldest(13, 'recalled'),
    ],
    cautions: peroxide,
  },
  {
    id: 'polyester-filler',
    title: 'Polyester filler',
    until: 'it can be sanded',
    law: reacts(30, 10),
    figures: [recalled('30 min at 20 °C', 'min', 20, 60), tenDegreeRule, coldest(10, 'recalled')],
    cautions: [...peroxide, 'Sanding dust: a mask.'],
  },
  {
    id: 'polyurethane-sealant',
    title: 'Polyurethane sealant, one part',
    until: 'a bead 6 mm deep is cured through',
    law: moisture(3),
    figures: [recalled('3 mm in the first day at 23 °C and 50 %', 'mm', 2, 4), coldest(5, 'recalled')],
    cautions: [
      'Treat as permanent: the fitting may not come off again without damage.',
      'Attacks ABS and polycarbonate.',
    ],
  },
  {
    id: 'hybrid-sealant',
    title: 'Hybrid (silane) sealant, one part',
    until: 'a bead 6 mm deep is cured through',
    law: moisture(3),
    figures: [recalled('3 mm in the first day at 23 °C and 50 %', 'mm', 2, 4), coldest(5, 'recalled')],
    cautions: [],
  },
  {
    id: 'silicone-sealant',
    title: 'Silicone sealant, neutral cure',
    until: 'a bead 6 mm deep is cured through',
    law: moisture(3),
    figures: [recalled('3 mm in the first day at 23 °C and 50 %', 'mm', 2, 4), coldest(5, 'recalled')],
    cautions: ['Nothing sticks over it: keep it away from what is to be painted.', 'Not for standing under water.'],
  },
  {
    id: 'polysulphide-sealant',
    title: 'Polysulphide sealant, one part',
    until: 'a bead 6 mm deep is cured through',
    law: moisture(1.5),
    figures: [recalled('1.5 mm in the first day at 23 °C and 50 %', 'mm', 1, 2), coldest(5, 'recalled')],
    cautions: ['Attacks acrylic, polycarbonate, ABS and PVC.'],
  },
  {
    id: 'butyl-tape',
    title: 'Butyl tape',
    until: 'at once: it never cures; nip the screws up again over the weeks',
    law: { kind: 'never cures', from: 'common practice' },
    figures: [{ figure: 'never cures', band: null, unit: '', source: 'trade knowledge', seen: 'common practice' }],
    cautions: ['Not where solvents reach it, nor below water.'],
  },
  {
    id: 'acrylic-sealant',
    title: 'Acrylic or latex sealant, water-based',
    until: 'a bead 6 mm deep has dried through',
    law: dries(24 * hour, 5, 90),
    figures: [
      recalled('24 h at 20 °C', 'h', 12, 72),
      tenDegreeRule,
      coldest(5, 'recalled'),
      assumed('no progress from 90 % of humidity', '%', 'it dries by giving off its water'),
    ],
    cautions: ['Not outdoors, and not where it stays wet.'],
  },
  {
    id: 'contact-adhesive',
    title: 'Contact adhesive',
    until: 'both faces are dry to the touch and may meet',
    law: dries(15, 5, 85),
    figures: [
      recalled('15 min at 20 °C', 'min', 10, 30),
      tenDegreeRule,
      coldest(5, 'recalled'),
      assumed('no progress from 85 % of humidity', '%', 'damp condenses on a face that its solvent has cooled'),
    ],
    cautions: [...solvent, 'Vapour makes dizzy in a cabin: both hatches open, and out again.'],
  },
  {
    id: 'methacrylate',
    title: 'Methacrylate adhesive, two part',
    until: 'it can carry its load',
    law: reacts(24 * hour, 5),
    figures: [
      recalled('24 h at 20 °C; it holds itself within the hour', 'h', 12, 48),
      tenDegreeRule,
      coldest(5, 'recalled'),
    ],
    cautions: [...solvent, 'Goggles and gloves. A cartridge left half mixed gets hot.'],
  },
  {
    id: 'varnish-one-pot',
    title: 'Varnish, one pot',
    until: 'it takes the next coat',
    law: dries(16 * hour, 8, 80),
    figures: [
      practice('16 h at 20 °C', 'h', 12, 24),
      tenDegreeRule,
      coldest(8),
      practice('no progress from 80 % of humidity', '%', 80, 85),
    ],
    cautions: [...solvent, rags],
  },
  {
    id: 'varnish-two-pot',
    title: 'Varnish, two pot',
    until: 'it takes the next coat',
    law: reacts(8 * hour, 10),
    figures: [practice('8 h at 20 °C', 'h', 4, 12), tenDegreeRule, coldest(10)],
    cautions: twoPot,
  },
  {
    id: 'paint-one-pot',
    title: 'Paint or enamel, one pot',
    until: 'it takes the next coat',
    law: dries(16 * hour, 8, 85),
    figures: [
      practice('16 h at 20 °C', 'h', 12, 24),
      tenDegreeRule,
      coldest(8),
      {
        figure: 'no progress from 85 % of humidity',
        band: null,
        unit: '%',
        source: 'ISO 12944-7 practice, from secondary pages',
        seen: 'read',
      },
    ],
    cautions: [...solvent, rags],
  },
  {
    id: 'paint-two-pot',
    title: 'Paint, two pot polyurethane',
    until: 'it takes the next coat',
    law: reacts(10 * hour, 10),
    figures: [practice('10 h at 20 °C', 'h', 4, 12), tenDegreeRule, coldest(10)],
    cautions: twoPot,
  },
  {
    id: 'epoxy-primer',
    title: 'Epoxy primer',
    until: 'it takes the next coat',
    law: epoxy(8 * hour, 10),
    figures: [practice('8 h at 20 °C', 'h', 5, 12), epoxyRule, coldest(10)],
    cautions: [...solvent, ...resin.slice(0, 1)],
  },
  {
    id: 'antifouling',
    title: 'Antifouling',
    until: 'it takes the next coat',
    law: dries(8 * hour, 5, 90),
    figures: [
      practice('8 h at 20 °C', 'h', 4, 16),
      tenDegreeRule,
      coldest(5, 'recalled'),
      assumed('no progress from 90 % of humidity', '%', 'thin films of it dry in damp sheds, and not in dew'),
    ],
    cautions: [...solvent, 'Poisonous: gloves; scrape old coats wet, never dry.'],
  },
  {
    id: 'wood-glue',
    title: 'White or yellow wood glue',
    until: 'the clamps come off',
    law: dries(2 * hour, 8, 95),
    figures: [
      recalled('2 h at 20 °C', 'h', 0.5, 4),
      tenDegreeRule,
      coldest(8, 'recalled'),
      assumed('no progress from 95 % of humidity', '%', 'the wood takes up the water, so damp air matters little'),
    ],
    cautions: ['Not for joints that stay wet.'],
  },
  {
    id: 'threadlocker',
    title: 'Threadlocker',
    until: 'it holds its full strength',
    law: reacts(24 * hour, 5),
    figures: [
      recalled('24 h at 20 °C; stainless steel is slower without primer', 'h', 12, 48),
      tenDegreeRule,
      coldest(5, 'recalled'),
    ],
    cautions: [],
  },
];

/** The default law of a family of products. @throws RangeError when there is none of that id; the message lists them */
export function cureLawOf(id: string): ProductLaw {
  const found = cureLaws.find((product) => product.id === id);
  if (!found)
    throw new RangeError(`no product '${id}'; there are: ${cureLaws.map((product) => product.id).join(', ')}`);
  return found;
}
