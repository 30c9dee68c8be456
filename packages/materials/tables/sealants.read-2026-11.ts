/**
 * What a handbook prints of the kinds of sealant, and what articles and the trade say of them in a few words. Source:
 * sealants.source.md. `takes_pct`: the largest movement of the joint, either way, in percent of its width; `wide`: how many
 * times the movement a joint is to be wide; `shrinks_pct`, `tackFree_h`, `water` (standing under it) and `paint` as printed.
 */
// biome-ignore format: one kind, one line
export const sealantBook = {
  acrylic: { takes_pct: 7, wide: 12, shrinks_pct: 12, tackFree_h: 72, water: 'no', paint: 'yes' },
  butyl: { takes_pct: 5, wide: 20, shrinks_pct: 18, tackFree_h: 24, water: 'no', paint: 'yes' },
  latex: { takes_pct: 7, wide: 12, shrinks_pct: 20, tackFree_h: 1, water: 'no', paint: 'yes' },
  polysulphide: { takes_pct: 25, wide: 6, shrinks_pct: 10, tackFree_h: 72, water: 'yes', paint: 'no' },
  polyurethane: { takes_pct: 25, wide: 4, shrinks_pct: 5, tackFree_h: 72, water: 'some', paint: 'no' },
  silicone: { takes_pct: 50, wide: 4, shrinks_pct: 3, tackFree_h: 3, water: 'no', paint: 'no' },
} as const;

/** Hours till marine kinds, one part, are dry to the touch: data sheets, recalled. */
export const skinRecalled_h = {
  polysulphide: [24, 72],
  polyurethane: [1, 24],
  hybrid: [0.3, 2],
  silicone: [0.2, 1],
} as const;

/** Movement that sheets give, in percent either way: [least, most]. The hybrid's is recalled; the others' most is the handbook's. */
export const movementSheets_pct = {
  butyl: [5, 10],
  polysulphide: [20, 25],
  polyurethane: [12.5, 25],
  hybrid: [20, 25],
  silicone: [25, 50],
} as const;

/** Classes of sealant by the movement they take, in percent either way: ISO 11600, recalled. */
export const movementClasses_pct = { 'class-25': 25, 'class-20': 20, 'class-12-5': 12.5, 'class-7-5': 7.5 } as const;

/** Said in a few words; the order is the order of telling. */
export const saidOfSealants = {
  butyl: {
    cure: {
      words: 'butyl tape: never cures; removable; squeezes for weeks; not for solvents or below water',
      seen: 'common practice',
    },
  },
  polysulphide: {
    attacks: { words: 'acrylic, polycarbonate, ABS, PVC', seen: 'read' },
    safe: { words: 'epoxy, nylon, acetal; metals; teak (primed)', seen: 'read' },
    removable: { words: 'yes, can be parted later', seen: 'read' },
  },
  polyurethane: {
    attacks: { words: 'ABS and polycarbonate', seen: 'read' },
    removable: { words: 'no, treat as permanent', seen: 'read' },
  },
  hybrid: {
    plastics: {
      words: 'silane-hybrid: usually safe on plastics when primed; semi-permanent; paintable',
      seen: 'common practice',
    },
  },
  silicone: {
    plastics: { words: 'safe on plastics; weaker bond; good insulator between metals', seen: 'read' },
    paint: { words: 'silicone: nothing sticks over it; keep away before painting', seen: 'common practice' },
    acetoxy: {
      words: 'acetoxy-cure silicone corrodes copper and may mark metal: neutral cure preferred',
      seen: 'common practice',
    },
  },
} as const;
