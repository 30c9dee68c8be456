import { standardGravity_m_s2 } from '#units';

/** A place beside the pivot: along the plate from it, and square to it, above positive where the plate lies level. */
export interface PlacePlate {
  readonly along_m: number;
  readonly square_m: number;
}

/** A pivoting plate. */
export interface HingedPlate {
  readonly mass_kg: number;
  /** ≥ that of water, where it hangs afloat */
  readonly density_kg_m3: number;
  readonly centreOfMass: PlacePlate;
  readonly attachment: PlacePlate;
  /** where the wire leaves the plate for: aft of the pivot and above it. [m] */
  readonly lead: { readonly aft_m: number; readonly up_m: number };
}

/** Density of sea water at 15 °C [kg/m³], recalled. */
export const seaWater_kg_m3 = 1025;

/** Weight that hangs on what carries it: in air, or wholly under water. [N] */
export function hangingWeight_N(mass_kg: number, density_kg_m3: number, water_kg_m3: number | null): number {
  return mass_kg * standardGravity_m_s2 * (water_kg_m3 === null ? 1 : 1 - water_kg_m3 / density_kg_m3);
}

/** Mass of a plate of one thickness. [kg] */
export function plateMass_kg(length_m: number, breadth_m: number, thickness_m: number, density_kg_m3: number): number {
  return length_m * breadth_m * thickness_m * density_kg_m3;
}

/** Where a place on the plate is when it hangs `down_deg` below level: aft of the pivot, and above it. [m] */
export function placeAt({ along_m, square_m }: PlacePlate, down_deg: number): { aft_m: number; up_m: number } {
  const angle = (-down_deg * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { aft_m: along_m * c - square_m * s, up_m: along_m * s + square_m * c };
}

/** The pull that balances the plate at one angle, or why none does. */
export type PlatePull =
  | {
      readonly kind: 'pull';
      readonly tension_N: number;
      /** from the pivot square to the wire. [m] */
      readonly arm_m: number;
      /** wire between attachment and lead. [m] */
      readonly wire_m: number;
      /** what the pivot bears, aft and up of the boat. [N] */
      readonly pivot_N: { readonly aft: number; readonly up: number };
    }
  | {
      readonly kind: 'no pull';
      /** what is to be moved */
      readonly at: 'attachment' | 'lead';
      readonly wrong: string;
      readonly right: string;
    };

/**
 * Tension in the wire that balances a pivoting plate, by moments about the pivot. No friction at the pivot or in the
 * case, and no water flowing past, is counted.
 *
 * @param down_deg  below level. −20 to 120
 * @param weight_N  what of it hangs, in air or in water. ≥ 0
 */
export function platePull(plate: HingedPlate, down_deg: number, weight_N: number): PlatePull {
  const mass = placeAt(plate.centreOfMass, down_deg);
  const { aft_m: x, up_m: y } = placeAt(plate.attachment, down_deg);
  const [dx, dy] = [plate.lead.aft_m - x, plate.lead.up_m - y];
  const wire_m = Math.hypot(dx, dy);
  if (wire_m < 1e-6)
    return {
      kind: 'no pull',
      at: 'lead',
      wrong: `at ${round(down_deg)}° the wire's attachment is at the lead block`,
      right: 'end the travel before the two meet, or set the lead higher',
    };
  if (Math.hypot(x, y) < 1e-6)
    return {
      kind: 'no pull',
      at: 'attachment',
      wrong: 'the wire is attached at the pivot: no pull there turns the plate',
      right: 'attach it away from the pivot, towards the far end',
    };
  // lifting is what brings the plate up: against its own weight's turn
  const arm_m = (x * dy - y * dx) / wire_m;
  if (arm_m < 0.005)
    return {
      kind: 'no pull',
      at: 'lead',
      wrong:
        arm_m > -0.005
          ? `at ${round(down_deg)}° the wire runs past the pivot: no pull turns the plate`
          : `at ${round(down_deg)}° pulling the wire lowers the plate`,
      right:
        'move the lead so that the wire leaves the attachment upwards of the line to the pivot through the whole travel',
    };
  // past upright the plate falls up by itself: the wire is slack
  const tension_N = Math.max(0, (weight_N * mass.aft_m) / arm_m);
  return {
    kind: 'pull',
    tension_N,
    arm_m,
    wire_m,
    pivot_N: { aft: -(tension_N * dx) / wire_m, up: weight_N - (tension_N * dy) / wire_m },
  };
}

const round = (value: number) => Math.round(value * 10) / 10;
