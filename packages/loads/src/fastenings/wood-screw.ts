/** N and mm from the pounds and inches of wood rules. */
const newtonsInPound = 4.4482216152605;
const mmInInch = 25.4;
/** pounds per square inch in N/mm² */
const psi_N_mm2 = newtonsInPound / mmInInch ** 2;

/**
 * The figures of withdrawal for wood screws: mean load at which they fail, as printed in N and mm and in lbf/in², and what
 * design rules allow, in lbf/in².
 */
export const withdrawalFigures = { failing_N_mm2: 108.25, failing_psi: 15_700, allowed_psi: 2850 } as const;

/** A screw must stand at least so many of its diameters deep for the rule to hold. Wood Handbook, chapter 8. */
export const leastDepth = 7;

export interface WoodGrip {
  /** mean load at which it pulls out. [N] */
  readonly failing_N: number;
  /** what the American timber design rule allows, dry. [N] */
  readonly allowed_N: number;
}

/**
 * What holds a wood screw in side grain, K·G²·D·L.
 *
 * @param gravity    G, specific gravity of the wood at 12 % moisture. 0.2–1.1
 * @param across_mm  D over the shank. [mm]
 * @param depth_mm   L, thread in the wood, point left out. [mm]
 *
 * Source: USDA Wood Handbook FPL-GTR-190 chapter 8 (15 700, or 108.25 in N and mm) and the American timber design rule
 * (2850); read second-hand. Never for end grain. Checked in checks/loads.
 */
export function woodScrewGrip(gravity: number, across_mm: number, depth_mm: number): WoodGrip {
  const shape = gravity ** 2 * across_mm * depth_mm;
  const { failing_N_mm2, allowed_psi } = withdrawalFigures;
  return { failing_N: failing_N_mm2 * shape, allowed_N: allowed_psi * psi_N_mm2 * shape };
}

/**
 * The same of a coach screw, k·G^1.5·D^0.75 for each inch of thread: 1800 allowed (American timber design rule, read
 * second-hand), 8100 failing (Wood Handbook, recalled).
 */
export function coachScrewGrip(gravity: number, across_mm: number, depth_mm: number): WoodGrip {
  const anInch = gravity ** 1.5 * (across_mm / mmInInch) ** 0.75 * newtonsInPound;
  const inches = depth_mm / mmInInch;
  return { failing_N: 8100 * anInch * inches, allowed_N: 1800 * anInch * inches };
}

/** The failing figure turned from lbf/in², beside the printed one. [N/mm²] */
export const failingTurned_N_mm2 = withdrawalFigures.failing_psi * psi_N_mm2;

/** Diameter of a wood screw by its gauge number, 0.060 in and 0.013 in a number (ASME B18.6.1, recalled). [mm] */
export const gaugeAcross_mm = (gauge: number): number => (0.06 + 0.013 * gauge) * mmInInch;

/** Holes for a wood screw: its shank, and its thread at 70 % of the root in softwood, 90 % in hardwood (Wood Handbook, recalled). */
export function woodScrewHoles_mm(across_mm: number) {
  // the root is about two thirds of the shank
  const root = (2 / 3) * across_mm;
  return { shank: across_mm, softwood: 0.7 * root, hardwood: 0.9 * root };
}
