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

/** A boat at anchor, with what wind and current meet of her. */
export interface BoatAtAnchor extends AnchoredBoat {
  /** of boat and rig that the wind sees from ahead. [m²], > 0 */
  readonly windage_m2: number;
  /** of the wind’s drag on it. 0.2–2 */
  readonly coefficient: number;
  readonly draught_m: number;
  readonly below_m2: number;
  /** times the steady drag, for sheering about and seas. ≥ 1 */
  readonly surge: number;
}

/** Of the wind’s drag on a boat seen from ahead: between 1.2 for flat and 0.7 for rounded. */
export const usualDragCoefficient = 1;
/** Times the steady drag, for a boat that sheers about: the upper end of what a magazine measured. */
export const usualSurge = 2;

export interface BowLoad {
  readonly table: TableLoad;
  readonly wind_N: number;
  readonly current: CurrentDrag;
  readonly current_N: number;
  /** surge × (wind + current) */
  readonly drag_N: number;
  /** the greater of the table’s load with the current on top, and the drag */
  readonly taken_N: number;
}

/**
 * Level pull at the bow of a boat at anchor: by the table, which knows no current, so that its pull comes on top, and by
 * drag with surge; the greater is taken.
 *
 * @param wind_kn      ≥ 0
 * @param current_m_s  from ahead. ≥ 0
 */
export function bowLoad(boat: BoatAtAnchor, wind_kn: number, current_m_s: number): BowLoad {
  const table = tableLoad(boat, wind_kn);
  const wind_N = windDrag_N(boat.windage_m2, boat.coefficient, (wind_kn * 1852) / 3600);
  const current = currentDrag(boat, current_m_s);
  const current_N = current.form_N + current.friction_N + current.below_N;
  const drag_N = boat.surge * (wind_N + current_N);
  const byTable_N = table.kind === 'found' ? table.load_N + current_N : 0;
  return { table, wind_N, current, current_N, drag_N, taken_N: Math.max(drag_N, byTable_N) };
}

/**
 * The wind in which she pulls so hard, found by halving: more wind never pulls less.
 *
 * @param load_N  > 0
 * @returns       [kn]; 0 where the current alone pulls as much; null past `most_kn`
 */
export function windOfLoad_kn(boat: BoatAtAnchor, load_N: number, current_m_s: number, most_kn: number): number | null {
  const pulls = (wind_kn: number) => bowLoad(boat, wind_kn, current_m_s).taken_N;
  if (pulls(0) >= load_N) return 0;
  if (pulls(most_kn) < load_N) return null;
  let [low, high] = [0, most_kn];
  for (let n = 0; n < 50; n++) {
    const middle = (low + high) / 2;
    if (pulls(middle) < load_N) low = middle;
    else high = middle;
  }
  return high;
}
