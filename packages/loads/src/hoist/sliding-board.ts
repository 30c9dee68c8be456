import { hangingWeight_N, type PlatePull } from './plate.ts';
import type { Handling } from './tackle.ts';

/** A plate that slides up and down in its case, of one thickness all over. */
export interface SlidingPlate {
  readonly mass_kg: number;
  readonly density_kg_m3: number;
  /** from its top to its foot. > 0 */
  readonly length_m: number;
  /** of its top above the water, all the way down; below it: minus */
  readonly topAboveWater_m: number;
  /** of the wire from its middle, fore and aft */
  readonly offMiddle_m: number;
  /** of its length that the case still holds, all the way down. > 0 */
  readonly held_m: number;
  /** between plate and case. 0 to 1 */
  readonly friction: number;
}

/** Friction of a wet plate in its case, our assumption: wet metal on glass laminate or timber. */
export const assumedCaseFriction = 0.3;

/**
 * Tension in the wire of a plate that slides, by what is done with it. A wire off its middle cocks the plate: it presses
 * on the case at the top of one edge and the foot of the other, N = T·e/h, and rubs there. Hoisting, T = W + 2µN, so
 * T = W/(1 − 2µe/h); lowering, T = W/(1 + 2µe/h); holding, no friction is counted. Our derivation. Above the water it
 * weighs more: what has come out is no longer borne.
 *
 * @param hauled_m     since it was all the way down. ≥ 0
 * @param water_kg_m3  null: in air
 * @returns            tensions [N], or that it jams
 */
export function slidingPull(
  plate: SlidingPlate,
  hauled_m: number,
  water_kg_m3: number | null,
):
  | { readonly kind: 'pull'; readonly wire_N: Readonly<Record<Handling, number>> }
  | Extract<PlatePull, { readonly kind: 'no pull' }> {
  const { mass_kg, density_kg_m3, length_m, topAboveWater_m, offMiddle_m, held_m, friction } = plate;
  const rub = (2 * friction * Math.abs(offMiddle_m)) / held_m;
  if (rub >= assumedJam)
    return {
      kind: 'no pull',
      at: 'attachment',
      wrong: `the wire pulls ${round_mm(Math.abs(offMiddle_m))} mm off the middle of a plate that its case holds over ${round_mm(held_m)} mm: it jams like a drawer`,
      right: `attach it within ${Math.floor((1000 * assumedJam * held_m) / (2 * friction))} mm of the middle`,
    };
  const outOfWater = Math.min(1, Math.max(0, (topAboveWater_m + hauled_m) / length_m));
  const inAir_N = hangingWeight_N(mass_kg, density_kg_m3, null);
  const under_N = hangingWeight_N(mass_kg, density_kg_m3, water_kg_m3);
  // what floats hangs on no wire
  const weight_N = Math.max(0, under_N + (inAir_N - under_N) * outOfWater);
  return {
    kind: 'pull',
    wire_N: { hoisting: weight_N / (1 - rub), holding: weight_N, lowering: weight_N / (1 + rub) },
  };
}

/** Nearer to jamming than this nothing is reckoned: friction is not known so well. Our assumption. */
const assumedJam = 0.8;
const round_mm = (length_m: number) => Math.round(1000 * length_m);
