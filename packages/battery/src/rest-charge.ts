import type { Source } from '#working';
import { type RestTable, type RestTableName, restTables } from '../tables/rest-volts.read-2026-11.ts';
import type { Chemistry } from './chemistry.ts';
import { requireBetween, tableValue } from './table-value.ts';

/** A value with the ends of its band. */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A charge read from rested volts. */
export interface RestCharge extends Band {
  /** the reading lies past the ends of every table: not rested, on charge, another battery or a wrong meter */
  readonly beyond: 'above' | 'below' | null;
}

/**
 * Rested volts of a 12 V battery at 25 °C against charge: the middle of the published tables and the ends of their spread.
 * All three lists rise with `charge_pct`.
 */
export interface RestCurve {
  readonly charge_pct: Float64Array;
  readonly low: Float64Array;
  readonly likely: Float64Array;
  readonly high: Float64Array;
}

/** The tables that speak of each chemistry. The ten-step table is printed for lead batteries of any kind. */
export const tablesOf: Readonly<Record<Chemistry, readonly RestTableName[]>> = {
  flooded: ['flooded-rounded', 'lead-ten-step', 'flooded-gravity'],
  agm: ['agm-owners', 'lead-ten-step', 'agm-data-sheet'],
  gel: ['gel-data-sheet', 'lead-ten-step'],
  lifepo4: ['lfp-measured', 'lfp-trade'],
};

/** Where the rested volts of a chemistry come from, each table by its title. */
export const restSources = (chemistry: Chemistry): Source[] => [
  ...tablesOf[chemistry].map((name): Source => {
    const { title, provenance } = restTables[name];
    return { title, seen: provenance === 'found' ? 'read second-hand' : 'recalled' };
  }),
  { title: 'change with temperature: textbooks', seen: 'recalled' },
];

export const tableTemperature_C = 25;

/**
 * Change of rested volts with temperature, 12 V battery. [V/°C]
 * Lead: 0.2 to 0.3 mV/°C a cell in textbooks, from memory. LiFePO4: the change of its volts with heat is up to about
 * 0.2 mV/°C a cell of either sign with the charge, from memory; so none in the middle.
 */
export const restCoefficient_V_C = (chemistry: Chemistry): Band =>
  chemistry === 'lifepo4' ? { low: -0.0008, likely: 0, high: 0.0008 } : { low: 0.001, likely: 0.0015, high: 0.002 };

/**
 * Assumed: a battery like the tables lies this far to either side of them at least. [V] Lead tables are rounded to 0.05 or
 * 0.1 V; a LiFePO4 cell differs by 0.02 to 0.03 V between coming up and going down and from cell to cell.
 */
export const assumedOwnSpread_V = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 0.1 : 0.05);

/**
 * The measured LiFePO4 curve is the better of the two (the trade's is recalled), but its last rise, from here on, is that of
 * a cell on charge. Assumed: at rest it ends at the trade's figure. [%, V]
 */
const lastAtRest_pct = 98.33;
const restedFull_V = 13.5;

/** Volts of one table for a 12 V battery; past its first row its first slope is drawn on (our derivation, not printed). */
export function tableVolts(name: RestTableName, charge_pct: number): number {
  const table: RestTable = restTables[name];
  return tableValue(table.rows, charge_pct, 'slope drawn on') * (table.volts_of === 'one cell' ? 4 : 1);
}

/**
 * The charge that the ten-step table gives for the volts at which another lead table has its 0 %. [%]
 *
 * Tables do not count to the same end. The ten-step table prints the loaded cut-off (10.5 V) as its 0 %, so its percent is of
 * what comes out down to a cut-off, as ours is. The others end at 11.6 to 11.9 V rested, which the ten-step table passes at 20
 * to 40 %: they count that much of the charge as not there.
 */
export function tableZero_pct(name: RestTableName): number {
  if (name === 'lead-ten-step' || restTables[name].volts_of !== 'six cells') return 0;
  const end = tableVolts(name, 0);
  let low = 0;
  let high = 100;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (tableVolts('lead-ten-step', middle) < end) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A table's volts when its percent is counted to the loaded cut-off, as ours is; below its own 0 % by the ten-step table. */
export function recountedVolts(name: RestTableName, charge_pct: number): number {
  const zero = tableZero_pct(name);
  return charge_pct >= zero
    ? tableVolts(name, (100 * (charge_pct - zero)) / (100 - zero))
    : tableVolts('lead-ten-step', charge_pct);
}

/**
 * How much of the way a table is recounted for the middle of the curve. Assumed: sealed batteries run out of acid and are rested
 * at 11.2 to 11.6 V at their end, so nearly all; flooded plates give out while there is acid left, so a third.
 */
export const assumedRecount: Readonly<Record<Chemistry, number>> = { flooded: 0.35, agm: 0.75, gel: 0.75, lifepo4: 0 };

const curves = new Map<Chemistry, RestCurve>();

/** The rest curve of a chemistry, 12 V at 25 °C. Worked out once; not to be written to. */
export function restCurve(chemistry: Chemistry): RestCurve {
  const known = curves.get(chemistry);
  if (known) return known;
  const names = tablesOf[chemistry];
  const knots = new Set(Array.from({ length: 101 }, (_, pct) => pct));
  for (const name of names) for (const [pct] of restTables[name].rows) knots.add(pct);
  const charge_pct = Float64Array.from([...knots].sort((a, b) => a - b));
  const own = assumedOwnSpread_V(chemistry);
  const printed = (name: RestTableName, pct: number) => {
    if (name !== 'lfp-measured' || pct <= lastAtRest_pct) return tableVolts(name, pct);
    const from = tableVolts(name, lastAtRest_pct);
    return from + ((pct - lastAtRest_pct) / (100 - lastAtRest_pct)) * (restedFull_V - from);
  };
  const recounted = (name: RestTableName, pct: number) =>
    chemistry === 'lifepo4' ? printed(name, pct) : recountedVolts(name, pct);
  const share = assumedRecount[chemistry];
  const averaged = chemistry === 'lifepo4' ? (['lfp-measured'] as const) : names;
  const middle = (pct: number) =>
    averaged.reduce((sum, name) => sum + (1 - share) * printed(name, pct) + share * recounted(name, pct), 0) /
    averaged.length;
  const both = (pct: number) => names.flatMap((name) => [printed(name, pct), recounted(name, pct)]);
  const curve: RestCurve = {
    charge_pct,
    low: charge_pct.map((pct) => Math.min(...both(pct)) - own),
    likely: charge_pct.map(middle),
    high: charge_pct.map((pct) => Math.max(...both(pct)) + own),
  };
  curves.set(chemistry, curve);
  return curve;
}

/**
 * Volts of a rested battery: loads off and panel dark long enough for them to stand still.
 *
 * @param charge_pct  share of the battery's own 20-hour capacity. [%], 0–100
 * @param battery_C   temperature of the battery. [°C], −20–60
 * @param nominal_V   6, 12 or 24
 * @returns           middle of the published tables, and their spread with what a single battery lies off them. [V]
 * @throws RangeError outside these ranges
 *
 * Not covered: age (a sulphated battery reads lower for its charge), a weak cell, acid that was topped up wrongly.
 * Source: tables/rest-volts; the temperature from memory. Checked in checks/power.
 */
export function restVolts(
  chemistry: Chemistry,
  charge_pct: number,
  battery_C: number,
  nominal_V: 6 | 12 | 24 = 12,
): Band {
  requireBetween('charge', charge_pct, 0, 100, '%');
  requireBetween('battery temperature', battery_C, -20, 60, '°C');
  const curve = restCurve(chemistry);
  const { low, likely, high } = temperatureShift_V(chemistry, battery_C);
  const at = (volts: Float64Array, shift: number) =>
    (nominal_V / 12) * (along(curve.charge_pct, volts, charge_pct) + shift);
  return { low: at(curve.low, low), likely: at(curve.likely, likely), high: at(curve.high, high) };
}

/**
 * Charge of a rested battery from its volts, the other way round.
 *
 * @param volts       at the terminals, rested. [V], 0–40
 * @param battery_C   temperature of the battery. [°C], −20–60
 * @returns           percent with the ends the tables' spread allows, and whether the volts lie past every table
 * @throws RangeError outside these ranges
 */
export function restCharge(
  chemistry: Chemistry,
  volts: number,
  battery_C: number,
  nominal_V: 6 | 12 | 24 = 12,
): RestCharge {
  requireBetween('volts', volts, 0, 40, 'V');
  requireBetween('battery temperature', battery_C, -20, 60, '°C');
  const curve = restCurve(chemistry);
  const shift = temperatureShift_V(chemistry, battery_C);
  const as12V = (volts * 12) / nominal_V;
  const last = curve.charge_pct.length - 1;
  return {
    low: along(curve.high, curve.charge_pct, as12V - shift.high),
    likely: along(curve.likely, curve.charge_pct, as12V - shift.likely),
    high: along(curve.low, curve.charge_pct, as12V - shift.low),
    beyond: as12V > curve.high[last]! + shift.high ? 'above' : as12V < curve.low[0]! + shift.low ? 'below' : null,
  };
}

/** What the temperature adds to the volts at 25 °C; the ends are ordered as volts. [V] */
function temperatureShift_V(chemistry: Chemistry, battery_C: number): Band {
  const { low, likely, high } = restCoefficient_V_C(chemistry);
  const off = battery_C - tableTemperature_C;
  return { low: Math.min(low * off, high * off), likely: likely * off, high: Math.max(low * off, high * off) };
}

/** Value of `ys` where `xs` (rising) reaches `x`, straight between; the end values past the ends. */
function along(xs: Float64Array, ys: Float64Array, x: number): number {
  const last = xs.length - 1;
  if (x <= xs[0]!) return ys[0]!;
  if (x >= xs[last]!) return ys[last]!;
  let below = 0;
  let above = last;
  while (above - below > 1) {
    const middle = (below + above) >> 1;
    if (xs[middle]! <= x) below = middle;
    else above = middle;
  }
  const run = xs[above]! - xs[below]!;
  return run === 0 ? ys[above]! : ys[below]! + ((x - xs[below]!) / run) * (ys[above]! - ys[below]!);
}
