/** Density of chain steel [kg/m³], handbooks, recalled. */
export const chainSteel_kg_m3 = 7850;

export interface FibreOfRope {
  readonly title: string;
  /** of the fibre [kg/m³]: a rope maker’s table of specific gravities, read second-hand */
  readonly density_kg_m3: number;
  /** mass of dry rope over the square of its diameter [kg/m per mm²]: the rope standards’ linear densities, recalled */
  readonly mass_kg_per_m_mm2: number;
  /** how much longer it is at `atShare` of its breaking load, straight up to there. Source: ground.source.md */
  readonly stretch_pct: number;
  readonly atShare_pct: number;
  readonly stretchSeen: 'read second-hand' | 'recalled';
}

/** What rope of a rode weighs in water and how it stretches. Source: ground.source.md. */
// biome-ignore format: one fibre, one line
export const rodeFibres = {
  nylon: { title: 'nylon, three-strand', density_kg_m3: 1140, mass_kg_per_m_mm2: 6.2e-4, stretch_pct: 16, atShare_pct: 15, stretchSeen: 'read second-hand' },
  polyester: { title: 'polyester, three-strand', density_kg_m3: 1380, mass_kg_per_m_mm2: 7.9e-4, stretch_pct: 6, atShare_pct: 15, stretchSeen: 'recalled' },
  'polyester-braid': { title: 'polyester, double braid', density_kg_m3: 1380, mass_kg_per_m_mm2: 8e-4, stretch_pct: 3, atShare_pct: 15, stretchSeen: 'recalled' },
  polypropylene: { title: 'polypropylene, three-strand: it floats', density_kg_m3: 910, mass_kg_per_m_mm2: 4.5e-4, stretch_pct: 8, atShare_pct: 15, stretchSeen: 'recalled' },
} as const satisfies Readonly<Record<string, FibreOfRope>>;
