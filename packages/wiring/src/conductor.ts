import { boatCable_cmil, iecResistance, type PrintedRow } from '../tables/conductor-resistance.read-2026-11.ts';

/** Metric areas of the tables, in mm². */
export const areas_mm2 = iecResistance.map(({ size }) => Number(size));
/** Gauges (AWG) of boat cable, thinnest first. */
export const gauges = boatCable_cmil.map(({ size }) => String(size));

/** The size of a conductor, as it is sold. */
export type ConductorSize =
  | { readonly kind: 'metric'; readonly area_mm2: number }
  | { readonly kind: 'gauge'; readonly awg: string };

/** One conductor as it lies in the boat. */
export interface Conductor {
  readonly size: ConductorSize;
  /** what its insulation bears */
  readonly insulation_C: number;
  /** whole way of the current: out to the device and back again */
  readonly lengthThereAndBack_m: number;
  /** conductors that carry current in the same bundle, itself among them */
  readonly bundled: number;
  readonly engineSpace: boolean;
}

export type Stranding = 'class5 tinned' | 'class5 plain' | 'class2 tinned' | 'class2 plain';

/** A figure out of a printed table: whether it was read or is recalled. */
export interface TableFigure {
  readonly value: number;
  readonly recalled: boolean;
}

/** The figure of a row in a column; null: the table has none. */
export function tableFigure(row: PrintedRow, column: string | number): TableFigure | null {
  const found = row.found[column];
  if (found !== undefined) return { value: found, recalled: false };
  const recalled = row.recalled[column];
  return recalled === undefined ? null : { value: recalled, recalled: true };
}

/** Resistivity of annealed copper at 20 °C (IEC 60028). [Ω·mm²/km] */
export const copper_ohm_mm2_km = 17.241;
/** Its change by temperature, at 20 °C (IEC 60028, recalled). [1/K] */
export const copperPer_K = 0.00393;

/** Factor by which copper’s resistance at 20 °C becomes that at a temperature. */
export const warmer = (conductor_C: number): number => 1 + copperPer_K * (conductor_C - 20);

/** The factor that brings a measured resistance back to 20 °C (IEC 60228 annex B, 0.004 a kelvin). */
export const backTo20C = (conductor_C: number): number => 1 / (1 + 0.004 * (conductor_C - 20));

/** Number of a gauge in ASTM B258: 1/0 is 0, 2/0 is −1. */
const gaugeNumber = (awg: string): number => (awg.includes('/') ? 1 - Number.parseInt(awg, 10) : Number(awg));

/** Diameter of a solid wire of the gauge, ASTM B258: d = 0.127·92^((36−n)/39). [mm] */
export const gaugeDiameter_mm = (awg: string): number => 0.127 * 92 ** ((36 - gaugeNumber(awg)) / 39);
/** Area of a solid wire of the gauge. [mm²] */
export const gaugeArea_mm2 = (awg: string): number => (Math.PI / 4) * gaugeDiameter_mm(awg) ** 2;

/** Circular mils of boat cable of a gauge. @throws RangeError when the table has no such gauge */
export function gauge_cmil(awg: string): TableFigure {
  const row = boatCable_cmil.find(({ size }) => size === awg);
  const found = row && tableFigure(row, 'area');
  if (!found) throw new RangeError(`boat cable of ${awg} AWG is not in the table; it has ${gauges.join(', ')}`);
  return found;
}

/** 1 circular mil in mm². */
const cmil_mm2 = (Math.PI / 4) * 0.0254 ** 2;

/** Copper of a conductor. [mm²] */
export const copperArea_mm2 = (size: ConductorSize): number =>
  size.kind === 'metric' ? size.area_mm2 : gauge_cmil(size.awg).value * cmil_mm2;

/**
 * Resistance of a conductor. [Ω/km]
 *
 * Metric: the greatest that IEC 60228 allows at 20 °C; an area between two of the table takes the row below and its share of
 * area. Gauge: 10.75 Ω·circular mil/ft of boat cable (the trade's constant, about 29 °C) brought back to 20 °C.
 * @throws RangeError when the conductor is thinner than the table begins
 */
export function resistance_ohm_km(size: ConductorSize, stranding: Stranding, conductor_C: number): TableFigure {
  if (size.kind === 'gauge') {
    const cmil = gauge_cmil(size.awg);
    return {
      value: (((cmilConstant / 0.3048) * 1000) / cmil.value) * (warmer(conductor_C) / warmer(constantHolds_C)),
      recalled: cmil.recalled,
    };
  }
  const row = iecResistance.findLast((each) => Number(each.size) <= size.area_mm2 + 1e-9);
  const printed = row && tableFigure(row, stranding);
  if (!row || !printed)
    throw new RangeError(
      `a conductor of ${size.area_mm2} mm² is thinner than ${areas_mm2[0]} mm², where the table begins`,
    );
  return {
    value: printed.value * (Number(row.size) / size.area_mm2) * warmer(conductor_C),
    recalled: printed.recalled,
  };
}

/** The K of CM = K·I·L/E, length there and back in feet. [Ω·circular mil/ft] */
export const cmilConstant = 10.75;
/** Temperature at which copper has that K: 10.371 at 20 °C. [°C] */
const constantHolds_C = 20 + (cmilConstant / 10.371 - 1) / copperPer_K;

/** Whether the tables of resistance have a size: metric from 0.5 mm² up, and the gauges of boat cable. */
export const isInTable = (size: ConductorSize): boolean =>
  size.kind === 'metric' ? size.area_mm2 >= areas_mm2[0]! - 1e-9 : gauges.includes(size.awg);

/** A size as it is said: `1.5 mm²`, `14 AWG`. */
export const sizeInWords = (size: ConductorSize): string =>
  size.kind === 'metric' ? `${size.area_mm2} mm²` : `${size.awg} AWG`;

/**
 * The size that an area in mm² stands for: boat cable of a gauge where it is that gauge's copper to a hundredth and no metric
 * size, else metric. So cable bought by gauge goes by the tables for gauges.
 */
export function sizeOfArea(area_mm2: number): ConductorSize {
  const near = (other: number) => Math.abs(area_mm2 / other - 1) < 0.01;
  const awg = areas_mm2.some(near)
    ? undefined
    : gauges.find((each) => near(copperArea_mm2({ kind: 'gauge', awg: each })));
  return awg === undefined ? { kind: 'metric', area_mm2 } : { kind: 'gauge', awg };
}

/** Every size of a system, thinnest first. */
export const sizesOf = (kind: ConductorSize['kind']): readonly ConductorSize[] =>
  kind === 'metric' ? areas_mm2.map((area_mm2) => ({ kind, area_mm2 })) : gauges.map((awg) => ({ kind, awg }));
