/** One row of the table: boats up to this long, and up to this broad. Feet and pounds, as printed. */
export interface BowLoadRow {
  readonly length_ft: number;
  /** a sailing boat, a motor boat; recalled */
  readonly beam_ft: { readonly sail: number; readonly motor: number };
  /** at 15, 30 and 42 knots */
  readonly load_lbf: readonly [lunch: number, working: number, storm: number];
  /** whether the three loads were seen, or are recalled */
  readonly seen: readonly ['read' | 'recalled', 'read' | 'recalled', 'read' | 'recalled'];
}

/** Wind of the table's three columns: lunch hook, working anchor, storm anchor. [kn] */
export const columnWinds_kn = [15, 30, 42] as const;

/** Horizontal load at the bow of an anchored boat (ABYC H-40, table 1). Source: ground.source.md. */
// biome-ignore format: one printed row, one line here
export const bowLoadRows: readonly BowLoadRow[] = [
  { length_ft: 10, beam_ft: { sail: 4, motor: 5 }, load_lbf: [40, 160, 320], seen: ['recalled', 'recalled', 'recalled'] },
  { length_ft: 15, beam_ft: { sail: 5, motor: 6 }, load_lbf: [60, 250, 500], seen: ['recalled', 'recalled', 'recalled'] },
  { length_ft: 20, beam_ft: { sail: 7, motor: 8 }, load_lbf: [90, 360, 720], seen: ['read', 'read', 'read'] },
  { length_ft: 25, beam_ft: { sail: 8, motor: 9 }, load_lbf: [125, 490, 980], seen: ['read', 'read', 'recalled'] },
  { length_ft: 30, beam_ft: { sail: 9, motor: 11 }, load_lbf: [175, 700, 1400], seen: ['read', 'read', 'read'] },
  { length_ft: 35, beam_ft: { sail: 10, motor: 13 }, load_lbf: [225, 900, 1800], seen: ['read', 'read', 'recalled'] },
  { length_ft: 40, beam_ft: { sail: 11, motor: 14 }, load_lbf: [300, 1200, 2400], seen: ['read', 'read', 'read'] },
];
