/** What fastenings hold in. Strengths are of dry, sound, new material. */
export type BaseMaterial =
  | { readonly kind: 'laminate'; readonly title: string }
  | {
      readonly kind: 'ply' | 'timber';
      readonly title: string;
      readonly density_kg_m3: number;
      readonly seen: 'read second-hand' | 'recalled';
    }
  | { readonly kind: 'aluminium'; readonly title: string; readonly tensile_N_mm2: number };

/** Timber and ply at 12 % moisture: the lower of the densities that handbooks print, which is the one for strength. */
export const baseMaterials = {
  laminate: { kind: 'laminate', title: 'glass laminate, laid by hand' },
  'okoume-ply': { kind: 'ply', title: 'okoume ply', density_kg_m3: 450, seen: 'recalled' },
  'birch-ply': { kind: 'ply', title: 'birch ply', density_kg_m3: 650, seen: 'recalled' },
  'western-red-cedar': { kind: 'timber', title: 'western red cedar', density_kg_m3: 380, seen: 'read second-hand' },
  gaboon: { kind: 'timber', title: 'gaboon', density_kg_m3: 430, seen: 'read second-hand' },
  'douglas-fir': { kind: 'timber', title: 'Douglas fir', density_kg_m3: 530, seen: 'read second-hand' },
  'african-mahogany': { kind: 'timber', title: 'African mahogany', density_kg_m3: 530, seen: 'recalled' },
  teak: { kind: 'timber', title: 'teak', density_kg_m3: 650, seen: 'recalled' },
  iroko: { kind: 'timber', title: 'iroko', density_kg_m3: 660, seen: 'read second-hand' },
  oak: { kind: 'timber', title: 'oak', density_kg_m3: 710, seen: 'recalled' },
  ash: { kind: 'timber', title: 'ash', density_kg_m3: 710, seen: 'read second-hand' },
  'aluminium-plate': { kind: 'aluminium', title: 'aluminium plate, 5083', tensile_N_mm2: 275 },
  'aluminium-spar': { kind: 'aluminium', title: 'aluminium spar, 6063-T6', tensile_N_mm2: 205 },
} as const satisfies Readonly<Record<string, BaseMaterial>>;
export type BaseName = keyof typeof baseMaterials;

/** What there is to choose from, by its word and what people call it. */
export const baseChoices: readonly { readonly id: BaseName; readonly title: string }[] = (
  Object.keys(baseMaterials) as BaseName[]
).map((id) => ({ id, title: baseMaterials[id].title }));

/** Specific gravity as wood rules take it, dry weight over volume at 12 % moisture: ρ = 1000·G·1.12. */
export const specificGravity = (density_kg_m3: number): number => density_kg_m3 / 1120;

/** Share of their dry strength that wood and screws in it keep in the damp (American timber design rule, recalled). */
export const dampShare = 0.7;

/** Glass by mass of a laminate of chopped strand mat laid by hand. Our assumption: the lower of 30 to 34 %. */
export const assumedGlassShare = 0.3;

/**
 * Strengths of a laminate of mat by its share of glass w: between the plies 22.5 − 17.5·w, in compression 150·w + 72.
 * ISO 12215-5, recalled. [N/mm²]
 */
export const laminateStrength = (glassShare: number) => ({
  betweenPlies_N_mm2: 22.5 - 17.5 * glassShare,
  compression_N_mm2: 150 * glassShare + 72,
});
