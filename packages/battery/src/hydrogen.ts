import { requireBetween } from './table-value.ts';

/** Lower explosive limit of hydrogen in air. [% by volume], IEC 62485-2 */
export const explosiveFrom_pct = 4;

/** Gassing current for ventilation. [mA for each Ah] EN 50272-2: 1 and 8 for valve-regulated, 5 and 20 for vented cells. */
export const gassing_mA_Ah = {
  sealed: { float: 1, boost: 8 },
  vented: { float: 5, boost: 20 },
} as const;

/** What the 0.05 of the ventilation formula is made of: 24 × 0.42·10⁻³ m³/Ah × 5 (dilution, gas of an Ah, safety). */
export const airPerGas_m3_Ah = 24 * 0.42e-3 * 5;

/**
 * Air that must pass to keep hydrogen far below what burns, Q = 0.05·n·Igas·C·10⁻³.
 *
 * @param cells       n, cells in series
 * @param gas_mA_Ah   Igas. [mA for each Ah]
 * @param capacity_Ah C. [Ah]
 * @returns           [m³/h]
 *
 * Source: IEC 62485-2 / EN 50272-2, read second-hand.
 */
export function ventilation_m3_h(cells: number, gas_mA_Ah: number, capacity_Ah: number): number {
  requireBetween('cells', cells, 1, 400, '');
  requireBetween('gassing current', gas_mA_Ah, 0, 1000, 'mA/Ah');
  requireBetween('capacity', capacity_Ah, 0.1, 1e5, 'Ah');
  return (0.05 * cells * gas_mA_Ah * capacity_Ah) / 1000;
}

/** Free opening of inlet and of outlet each where air moves by itself, A = 28·Q. [cm²] Same source. */
export const opening_cm2 = (air_m3_h: number): number => 28 * air_m3_h;
