import { type BowLoadRow, bowLoadRows, columnWinds_kn } from '../../tables/bow-load.read-2026-11.ts';
import { newtonsIn } from '../path/printed.ts';

/** A boat as wind and current meet her. */
export interface AnchoredBoat {
  readonly length_m: number;
  readonly beam_m: number;
  readonly kind: 'sail' | 'motor';
}

export type TableLoad =
  | {
      readonly kind: 'found';
      readonly load_N: number;
      readonly row: BowLoadRow;
      /** whether length or beam asks for that row */
      readonly by: 'length' | 'beam';
      readonly seen: 'read second-hand' | 'recalled';
    }
  | { readonly kind: 'off the table'; readonly longest_ft: number; readonly broadest_ft: number };

const feet = (metres: number) => metres / 0.3048;
/** A boat sold as of so many feet is a finger more or less. */
const about_ft = 0.02;

/**
 * Load at the bow by the table: the first row that is as long and as broad as she is. Between the table's winds the load
 * follows the square of the wind from column to column, below and above them from the nearest.
 *
 * @param wind_kn  steady wind. ≥ 0
 * Source: ABYC H-40 table 1 (tables/ground.source.md); it means to hold yaw and surge with moderate shelter.
 */
export function tableLoad({ length_m, beam_m, kind }: AnchoredBoat, wind_kn: number): TableLoad {
  const byLength = bowLoadRows.findIndex(({ length_ft }) => feet(length_m) <= length_ft + about_ft);
  const byBeam = bowLoadRows.findIndex(({ beam_ft }) => feet(beam_m) <= beam_ft[kind] + about_ft);
  const row = bowLoadRows[Math.max(byLength, byBeam)];
  if (byLength < 0 || byBeam < 0 || !row) {
    const last = bowLoadRows.at(-1)!;
    return { kind: 'off the table', longest_ft: last.length_ft, broadest_ft: last.beam_ft[kind] };
  }
  const used = columnWinds_kn.map((_, n) => n).filter((n) => usesColumn(wind_kn, n));
  return {
    kind: 'found',
    load_N: bySquare(wind_kn, row.load_lbf) * newtonsIn.lbf,
    row,
    by: byBeam > byLength ? 'beam' : 'length',
    seen: byBeam <= byLength && used.every((n) => row.seen[n] === 'read') ? 'read second-hand' : 'recalled',
  };
}

/** The wind at which the table's load for a boat is this. [kn]; the table's own law, turned round */
export function windAtLoad_kn(row: BowLoadRow, load_N: number): number {
  let [low, high] = [0, 400];
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    if (bySquare(middle, row.load_lbf) * newtonsIn.lbf < load_N) low = middle;
    else high = middle;
  }
  return high;
}

const usesColumn = (wind_kn: number, n: number) => {
  const [lunch, working, storm] = columnWinds_kn;
  if (wind_kn <= lunch) return n === 0;
  if (wind_kn <= working) return wind_kn === working ? n === 1 : n <= 1;
  return wind_kn >= storm ? n === 2 : n >= 1;
};

function bySquare(wind_kn: number, loads: BowLoadRow['load_lbf']): number {
  const [v1, v2, v3] = columnWinds_kn;
  if (wind_kn <= v1) return loads[0] * (wind_kn / v1) ** 2;
  if (wind_kn >= v3) return loads[2] * (wind_kn / v3) ** 2;
  const [from, to, low, high] = wind_kn <= v2 ? [v1, v2, loads[0], loads[1]] : [v2, v3, loads[1], loads[2]];
  return low + ((high - low) * (wind_kn ** 2 - from ** 2)) / (to ** 2 - from ** 2);
}

/** Density of air [kg/m³] at 15 °C and of sea water; its kinematic viscosity [m²/s] at 15 °C. Recalled. */
export const air_kg_m3 = 1.225;
const sea_kg_m3 = 1025;
const seaViscosity_m2_s = 1.19e-6;

/** Pressure of wind brought to rest, ½ρV². [Pa] */
export function windPressure_Pa(wind_m_s: number): number {
  return (air_kg_m3 * wind_m_s ** 2) / 2;
}

/** Drag of wind on an area, ½ρ·C·A·V². [N] */
export function windDrag_N(area_m2: number, coefficient: number, wind_m_s: number): number {
  return coefficient * area_m2 * windPressure_Pa(wind_m_s);
}

/** A hull as a current meets it, and what hangs below it. */
export interface HullInCurrent {
  /** at the waterline. [m], > 0 */
  readonly length_m: number;
  readonly beam_m: number;
  /** of the hull, board up. [m], > 0 */
  readonly draught_m: number;
  /** board, rudder and outboard leg, seen from ahead. [m²], ≥ 0 */
  readonly below_m2: number;
}

export interface CurrentDrag {
  readonly form_N: number;
  readonly friction_N: number;
  readonly below_N: number;
  readonly wetted_m2: number;
}

/** Coefficients of a hull that lies head to a current, as the moorings manual takes them for ships. */
export const formInCurrent = 0.1;
const belowInCurrent = 1;
/** Share of the box of length, beam and draught that a boat's hull fills. Our assumption: small boats 0.35 to 0.45. */
export const assumedBlock = 0.4;

/**
 * Drag of a current from ahead: form ½ρV²·B·T·0.1, friction ½ρV²·S·0.075/(log₁₀ Rn − 2)² over the wetted skin
 * S = 1.7·T·L + ∇/T, and ½ρV² times the area of what hangs below.
 *
 * @param current_m_s  ≥ 0
 * Source: UFC 4-159-03 (2005) 4-5.2, equations 15 to 21, read second-hand; its propeller's coefficient stands for board and leg.
 */
export function currentDrag(
  { length_m, beam_m, draught_m, below_m2 }: HullInCurrent,
  current_m_s: number,
): CurrentDrag {
  const pressure_Pa = (sea_kg_m3 * current_m_s ** 2) / 2;
  const wetted_m2 = 1.7 * draught_m * length_m + assumedBlock * length_m * beam_m;
  // below a crawl the friction line has no meaning, and the friction is nothing
  const reynolds = Math.max(1e4, (current_m_s * length_m) / seaViscosity_m2_s);
  return {
    form_N: pressure_Pa * beam_m * draught_m * formInCurrent,
    friction_N: (pressure_Pa * wetted_m2 * 0.075) / (Math.log10(reynolds) - 2) ** 2,
    below_N: pressure_Pa * below_m2 * belowInCurrent,
    wetted_m2,
  };
}
