import { requiredCell, type ScrewSize, screwSize_mm } from './size-cell.ts';

/** Stainless bolts by the class on their head: tensile strength and 0.2 % proof stress, N/mm² (ISO 3506-1, recalled). */
export const boltClasses = {
  '50': { tensile_N_mm2: 500, proof_N_mm2: 210 },
  '70': { tensile_N_mm2: 700, proof_N_mm2: 450 },
  '80': { tensile_N_mm2: 800, proof_N_mm2: 600 },
} as const;
export type BoltClass = keyof typeof boltClasses;

/** Share of the proof stress a bolt is tightened to (VDI 2230, recalled). */
export const tightenedTo = 0.9;

/** Stress area of a metric coarse thread, π/4·(d − 0.9382·P)². ISO 898-1, recalled. [mm²] */
export function stressArea_mm2(size: ScrewSize): number {
  return (Math.PI / 4) * (screwSize_mm(size) - 0.9382 * requiredCell('pitch', size).value) ** 2;
}

export interface Tightening {
  /** pull in the bolt. [N] */
  readonly preload_N: number;
  /** at the spanner. [N·m] */
  readonly torque_Nm: number;
}

/**
 * What a bolt may be tightened to: the pull that, with the twist of tightening, brings it to 90 % of its proof stress.
 *
 * @param size      coarse thread
 * @param ofClass   class of stainless, on the head
 * @param friction  µ in the thread and under the head. 0.05–0.4
 * @returns         preload and torque, with a hexagon head on a clearance hole
 *
 * Not covered: bolts that gall, nuts with a locking ring, soft things under the head.
 * Source: VDI 2230, recalled. Checked in checks/materials.
 */
export function tightening(size: ScrewSize, ofClass: BoltClass, friction: number): Tightening {
  const pitch = requiredCell('pitch', size).value;
  const d = screwSize_mm(size);
  const flank = d - 0.6495 * pitch;
  const stressed = (flank + (d - 1.2269 * pitch)) / 2;
  const twist = 1.5 * (flank / stressed) * (pitch / (Math.PI * flank) + 1.155 * friction);
  const preload_N =
    (tightenedTo * boltClasses[ofClass].proof_N_mm2 * stressArea_mm2(size)) / Math.sqrt(1 + 3 * twist ** 2);
  return { preload_N, torque_Nm: torqueFor_Nm(size, preload_N, friction) };
}

/** Torque that pulls a bolt by so much: the slope of the thread, its friction, and the friction under the head. [N·m] */
export function torqueFor_Nm(size: ScrewSize, preload_N: number, friction: number): number {
  const pitch = requiredCell('pitch', size).value;
  const flank = screwSize_mm(size) - 0.6495 * pitch;
  // a hexagon bears on about nine tenths of its width across flats
  const underHead = (0.9 * requiredCell('across flats', size).value + requiredCell('clearance medium', size).value) / 2;
  return (preload_N * (pitch / (2 * Math.PI) + 0.577 * flank * friction + (underHead / 2) * friction)) / 1000;
}
