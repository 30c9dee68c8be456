/** How much of a product a piece of work takes, from its sizes. Plain geometry; what stays in the pot comes on top. */

/** Areas and volumes are worked out in metres; 1 m³ = 1,000 l = 1,000,000 ml. */
const mlInCubicMetre = 1_000_000;

/**
 * How far a litre goes in one coat: 10 × share of solids by volume in percent ÷ dry film in µm. [m²/l]
 *
 * @param solids_pct  share of the paint that stays when it is dry. [%], > 0
 * @param film_um     dry film of one coat. [µm], > 0
 *
 * By geometry: a litre spread d µm thick covers 1,000/d m². From 70 to 90 % of it is had in practice.
 */
export const theoreticalSpread_m2_l = (solids_pct: number, film_um: number) => (10 * solids_pct) / film_um;

/** Litres for an area, so many coats, at what a litre covers in one coat. [l] */
export const coatVolume_l = (area_m2: number, coats: number, spread_m2_l: number) => (area_m2 * coats) / spread_m2_l;

/** How full the bottom is: share of length × (beam + draft). Paint-tin practice, from memory. */
export const bottomFullness = { light: 0.5, full: 0.75, deep: 1 } as const;

/** Bottom below the waterline: k · waterline length · (beam + draft). [m²]; paint-tin practice, from memory */
export const bottomArea_m2 = (length_m: number, beam_m: number, draft_m: number, k: number) =>
  k * length_m * (beam_m + draft_m);

/** Sealant under so many feet, a layer thick all over. [ml] */
export const beddingVolume_ml = (length_m: number, width_m: number, layer_m: number, count: number) =>
  length_m * width_m * layer_m * count * mlInCubicMetre;

/**
 * A bead: round with a diameter, a fillet with two equal sides, or a seam so wide and deep. [ml]
 *
 * @param depth_m  of a seam only
 */
export const beadVolume_ml = (length_m: number, shape: BeadShape, size_m: number, depth_m: number) =>
  length_m * beadSection_m2(shape, size_m, depth_m) * mlInCubicMetre;
export type BeadShape = 'round' | 'fillet' | 'seam';

function beadSection_m2(shape: BeadShape, size_m: number, depth_m: number): number {
  if (shape === 'seam') return size_m * depth_m;
  return shape === 'round' ? (Math.PI * size_m ** 2) / 4 : size_m ** 2 / 2;
}

/**
 * What a hole is drilled out to before it is filled: twice what went through it, and 5 mm of filling all round at the
 * least. [m] Our assumption: boatbuilders say 'well oversize'.
 */
export const drilledOut_m = (through_m: number): number => Math.max(2 * through_m, through_m + 2 * 0.005);

/** Round holes filled through, each so wide as it is filled. [ml] */
export const plugVolume_ml = (count: number, wide_m: number, depth_m: number) =>
  ((count * Math.PI * wide_m ** 2) / 4) * depth_m * mlInCubicMetre;

/** Deck, cockpit and coachroof openings left out: three quarters of length × beam. [m²]; paint-tin practice, from memory */
export const deckArea_m2 = (length_m: number, beam_m: number) => 0.75 * length_m * beam_m;

/** How thick a volume lies on an area, wet. [m] */
export const filmThickness_m = (volume_l: number, area_m2: number) => volume_l / 1000 / area_m2;

/** Resin for cloth. [kg] */
export const clothResin_kg = (area_m2: number, weight_kg_m2: number, layers: number, ratio: number) =>
  area_m2 * weight_kg_m2 * layers * ratio;
