/**
 * Cloth and resin, and resin thickened: weights into thickness and volume. Densities are those of data sheets, recalled, with
 * the band they lie in.
 */

/** Density of what is poured, mixed. [kg/l] */
export const resinDensity_kg_l = {
  polyester: { value: 1.11, low: 1.08, high: 1.15 },
  epoxy: { value: 1.13, low: 1.08, high: 1.18 },
} as const;
export type Resin = keyof typeof resinDensity_kg_l;

/** Density of the fibre and of the resin when it has cured. [kg/m³]; recalled */
const glass_kg_m3 = 2560;
const curedResin_kg_m3 = 1200;

/**
 * Thickness of a laminate: the volumes of its glass and resin, added. [m]
 *
 * @param cloth_kg_m2  all layers together. [kg/m²], > 0
 * @param ratio        resin to cloth by weight. > 0
 */
export const laminateThickness_m = (cloth_kg_m2: number, ratio: number): number =>
  cloth_kg_m2 / glass_kg_m3 + (cloth_kg_m2 * ratio) / curedResin_kg_m3;

/** Resin to cloth by weight, laid up by hand: chopped mat as read in lay-up notes, the rest recalled. */
export const resinToCloth = {
  mat: { polyester: { value: 2.5, low: 2, high: 3 }, epoxy: { value: 2, low: 1.5, high: 2.5 } },
  woven: { polyester: { value: 1.25, low: 1, high: 1.5 }, epoxy: { value: 1, low: 0.8, high: 1.2 } },
} as const;
export type Cloth = keyof typeof resinToCloth;

/** Share of glass in a laminate by weight. [0–1] */
export const glassShare = (ratio: number): number => 1 / (1 + ratio);

/**
 * What thickens epoxy. `bulk`: as it lies in its tub; `solid`: of the stuff itself, both kg/m³ and recalled. `stiff`: tubs of it
 * to one of mixed epoxy till it stands in peaks, recalled too: it is stirred in till it stands as wanted.
 */
export const thickeners = {
  silica: { title: 'colloidal silica', bulk: [40, 60], solid: 2200, stiff: [1, 2] },
  microballoons: { title: 'glass microballoons', bulk: [120, 200], solid: 250, stiff: [2, 3] },
  'wood-flour': { title: 'wood flour', bulk: [150, 300], solid: 1400, stiff: [1.5, 2.5] },
  microfibres: { title: 'microfibres', bulk: [60, 200], solid: 1500, stiff: [0.8, 1.6] },
} as const;
export type Thickener = keyof typeof thickeners;

/** Share of what makes it stand in peaks, for a thinner one. Our assumption. */
export const assumedThickness = { runs: 0.25, sags: 0.5, stands: 1 } as const;
export type Thickness = keyof typeof assumedThickness;

export interface ThickMix {
  /** mixed epoxy before anything is stirred in. [ml] */
  readonly resin_ml: number;
  /** as it lies in its tub. [ml] */
  readonly filler_ml: number;
  readonly filler_g: number;
  /** of the mix. [kg/l] */
  readonly density_kg_l: number;
}

/** What goes into so much thickened epoxy. `mix_ml` > 0 */
export function thickMix(thickener: Thickener, thickness: Thickness, mix_ml: number): ThickMix {
  const { bulk, solid, stiff } = thickeners[thickener];
  const tubs = middle(stiff) * assumedThickness[thickness];
  const bulk_kg_m3 = middle(bulk);
  const resin_ml = mix_ml / (1 + (tubs * bulk_kg_m3) / solid);
  const filler_ml = tubs * resin_ml;
  const filler_g = (filler_ml * bulk_kg_m3) / 1000;
  return {
    resin_ml,
    filler_ml,
    filler_g,
    density_kg_l: (resin_ml * resinDensity_kg_l.epoxy.value + filler_g) / mix_ml,
  };
}

export const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
