import { freezing_F, gravityHalfRange, gravityOfCharge } from '../tables/acid.read-2026-11.ts';
import type { Band } from './rest-charge.ts';
import { requireBetween, tableValue } from './table-value.ts';

/** Temperature that hydrometers and their tables hold for: 80 °F. [°C] */
export const gravityAt_C = (80 - 32) / 1.8;

/** What a reading is put right by for each °C above 80 °F: 0.004 for 10 °F, US Army TM 5-3820-256-24-4 and hydrometer practice. */
export const gravityCorrection_1_C = 0.004 / (10 / 1.8);

/** Volts of a cell over its specific gravity. Found: electrapk.com; 0.845 is printed too and adds 0.03 V to six cells. */
export const voltsOverGravity = 0.84;

/** A hydrometer's reading put right for the temperature of the acid. @param acid_C [°C], −30–60 */
export function correctedGravity(reading: number, acid_C: number): number {
  requireBetween('specific gravity', reading, 1, 1.35, '');
  requireBetween('acid temperature', acid_C, -30, 60, '°C');
  return reading + gravityCorrection_1_C * (acid_C - gravityAt_C);
}

/**
 * Specific gravity at a charge, 80 °F.
 *
 * @param charge_pct  [%], 0–100
 * @param full        what this battery's full charge reads: 1.24–1.31; makers fill with 1.265 or 1.280, in the tropics less
 * @returns           the middle and the range the table prints
 *
 * Between the two tables, and past them, in proportion (our derivation). Source: tables/acid.
 */
export function chargeGravity(charge_pct: number, full: number): Band {
  requireBetween('charge', charge_pct, 0, 100, '%');
  requireBetween('specific gravity when full', full, 1.22, 1.31, '');
  const likely = tableValue(rowsFor(full), charge_pct);
  return { low: likely - gravityHalfRange, likely, high: likely + gravityHalfRange };
}

/** Charge at a specific gravity that is put right for temperature. [%]; 0 and 100 past the ends */
export function gravityCharge_pct(corrected: number, full: number): Band {
  requireBetween('specific gravity when full', full, 1.22, 1.31, '');
  const rows = rowsFor(full).map(([pct, gravity]) => [gravity, pct] as const);
  return {
    low: tableValue(rows, corrected - gravityHalfRange),
    likely: tableValue(rows, corrected),
    high: tableValue(rows, corrected + gravityHalfRange),
  };
}

/** The table for a full charge: mixed of the two in print, or moved with its top. */
function rowsFor(full: number): (readonly [number, number])[] {
  const low = gravityOfCharge['1.265'];
  const high = gravityOfCharge['1.280'];
  const share = Math.min(1, Math.max(0, (full - 1.265) / (1.28 - 1.265)));
  return low.map(([pct, gravity], i) => {
    const mixed = gravity + share * (high[i]![1] - gravity);
    const top = 1.265 + share * (1.28 - 1.265);
    // less acid at the top is less in proportion all the way down
    return [pct, 1 + ((mixed - 1) * (full - 1)) / (top - 1)] as const;
  });
}

/** Rested volts of so many cells from the specific gravity at 80 °F. [V] */
export function gravityVolts(corrected: number, cells: number): number {
  return cells * (corrected + voltsOverGravity);
}

/** Temperature at which acid of this specific gravity begins to freeze. [°C] @param gravity 1–1.28 */
export function freezingPoint_C(gravity: number): number {
  requireBetween('specific gravity', gravity, 1, 1.3, '');
  return (tableValue(freezing_F, gravity) - 32) / 1.8;
}
