import { movementClasses_pct, sealantBook } from '../tables/sealants.read-2026-11.ts';

/** Kinds of sealant whose joints are sized, and the classes a tube may be of. */
export const movingJointKinds = {
  butyl: sealantBook.butyl,
  acrylic: sealantBook.acrylic,
  latex: sealantBook.latex,
  polysulphide: sealantBook.polysulphide,
  polyurethane: sealantBook.polyurethane,
  // the handbook has no column for it: class 20 of the standard, recalled
  hybrid: { takes_pct: 20, wide: 5 },
  silicone: sealantBook.silicone,
  ...classes(),
} as const;

/** By its class a joint is to be as wide as takes its movement, no wider. */
function classes() {
  const wide = (takes_pct: number) => ({ takes_pct, wide: 100 / takes_pct });
  return {
    'class-25': wide(movementClasses_pct['class-25']),
    'class-20': wide(movementClasses_pct['class-20']),
    'class-12-5': wide(movementClasses_pct['class-12-5']),
    'class-7-5': wide(movementClasses_pct['class-7-5']),
  };
}

export type MovingJointKind = keyof typeof movingJointKinds;

/** A bead shallower than this tears; sealant practice. [mm] */
export const leastBead_mm = 6;

/** Least width of a joint that moves so far: so many times the movement as its sealant wants. [mm] */
export const jointWidth_mm = (kind: MovingJointKind, movement_mm: number): number =>
  movingJointKinds[kind].wide * movement_mm;

/** Depth of the bead in a joint so wide: half the width, and never under 6 mm. [mm] */
export const beadDepth_mm = (width_mm: number): number => Math.max(leastBead_mm, width_mm / 2);

/**
 * Growth of materials with heat, in millionths of their length for each °C. From memory of data sheets; timber along the
 * grain, and it moves far more across it with damp than with heat.
 */
export const growth_per_MK = {
  grp: 30,
  acrylic: 70,
  polycarbonate: 67,
  abs: 90,
  pvc: 70,
  nylon: 90,
  polyethylene: 180,
  glass: 9,
  timber: 5,
  'oily-timber': 5,
  stainless: 16,
  aluminium: 23,
  bronze: 18,
  galvanised: 12,
} as const;
export type GrowingMaterial = keyof typeof growth_per_MK;

/** How far two parts, fast at their middle, move against each other at their ends. [mm], ≥ 0 */
export const endMovement_mm = (a: GrowingMaterial, b: GrowingMaterial, length_mm: number, span_C: number): number =>
  (Math.abs(growth_per_MK[a] - growth_per_MK[b]) * 1e-6 * length_mm * span_C) / 2;
