import { drilledOut_m } from '#materials';
import { requiredCell, type ScrewSize, screwSize_mm } from './size-cell.ts';

/** A hole drilled too big through a cored deck, filled, and drilled again through the filling. */
export interface FilledHole {
  /** through the upper skin and the core. [mm] */
  readonly drill_mm: number;
  /** through the filling and the lower skin. [mm] */
  readonly again_mm: number;
  /** filling for one hole, nothing lost. [ml] */
  readonly fill_ml: number;
  /** what the ring of filling bears between head and washer. [N] */
  readonly bears_N: number;
}

/** Epoxy thickened with fibres or silica, in compression: a working figure, half of what is printed for it. Our assumption. */
const assumedFilling_N_mm2 = 40;
/** Filling mixed over what the holes take: cups, brushes, what sinks into the core. Our assumption. */
export const assumedFillingOver = 1.3;

/**
 * Drill, fill, drill again.
 *
 * @param size      bolt that goes through
 * @param upper_mm  upper skin. [mm]
 * @param core_mm   core. [mm]
 */
export function filledHole(size: ScrewSize, upper_mm: number, core_mm: number): FilledHole {
  const d = screwSize_mm(size);
  const drill_mm = Math.ceil(1000 * drilledOut_m(d / 1000) - 1e-9);
  const again_mm = requiredCell('clearance medium', size).value;
  return {
    drill_mm,
    again_mm,
    fill_ml: ((Math.PI / 4) * drill_mm ** 2 * (upper_mm + core_mm)) / 1000,
    bears_N: (Math.PI / 4) * (drill_mm ** 2 - again_mm ** 2) * assumedFilling_N_mm2,
  };
}
