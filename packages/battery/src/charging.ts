import { compensation_mV, floatVolts, lithiumLimits } from '../tables/charging.read-2026-11.ts';
import { dataPages } from '../tables/data-pages.read-2026-11.ts';
import type { Chemistry } from './chemistry.ts';
import type { Band } from './rest-charge.ts';
import { requireBetween } from './table-value.ts';

/** Volts a charger holds a 12 V battery at, and what the temperature does to them. */
export interface ChargingVolts {
  /** until it is nearly full */
  readonly absorb_V: Band;
  /** after that, for days; null: this kind is not floated */
  readonly float_V: Band | null;
  /** change for each °C of the battery away from 25 °C. [mV/°C], all cells */
  readonly compensation_mV_C: Band;
}

export const chargingTable_C = 25;

/**
 * Charging volts of a 12 V battery without a label at a temperature. The label wins.
 *
 * @param battery_C   [°C], −20–50
 * @throws RangeError outside the range
 *
 * Absorption: lead from data sheets recalled and two pages read, of which the lower is taken for the middle where the label is
 * lost: too little takes longer, too much dries a sealed battery out. Source: tables/charging, tables/data-pages.
 */
export function chargingVolts(chemistry: Chemistry, battery_C: number): ChargingVolts {
  requireBetween('battery temperature', battery_C, -20, 50, '°C');
  if (chemistry === 'lifepo4') {
    const [low, high] = lithiumLimits.charge;
    return { absorb_V: { low, likely: 14.4, high }, float_V: null, compensation_mV_C: { low: 0, likely: 0, high: 0 } };
  }
  const cells = 6;
  const perCell = Object.values(compensation_mV);
  const compensation = {
    low: cells * Math.min(...perCell),
    likely: cells * compensation_mV.note,
    high: cells * Math.max(...perCell),
  };
  const shift = (compensation.likely / 1000) * (battery_C - chargingTable_C);
  const moved = ({ low, likely, high }: Band): Band => ({
    low: low + shift,
    likely: likely + shift,
    high: high + shift,
  });
  const floats = floatFigures(chemistry).map(({ at25_V }) => at25_V);
  return {
    absorb_V: moved(absorbAt25_V[chemistry]),
    float_V: moved({
      low: Math.min(...floats),
      likely: floats.reduce((sum, each) => sum + each, 0) / floats.length,
      high: Math.max(...floats),
    }),
    compensation_mV_C: compensation,
  };
}

/** Flooded and gel from memory of data sheets; AGM: the ends of two pages read and the recalled 14.4 to 14.7 between. [V] */
const absorbAt25_V: Readonly<Record<Exclude<Chemistry, 'lifepo4'>, Band>> = {
  flooded: { low: 14.4, likely: 14.6, high: 14.8 },
  agm: { low: dataPages.agm14.cyclic_V[0], likely: dataPages.agm14.cyclic_V[1], high: dataPages.agm40.cyclic_V[1] },
  gel: { low: 14.1, likely: 14.2, high: 14.4 },
};

/** One source's float voltage: as it prints it, and at 25 °C. */
export interface FloatFigure {
  readonly source: 'note' | 'encyclopedia' | 'vendors';
  readonly printed_V: number;
  readonly printed_C: number;
  readonly at25_V: number;
}

/** What each source says a lead battery is floated at. */
export function floatFigures(chemistry: Exclude<Chemistry, 'lifepo4'>): FloatFigure[] {
  const figures: FloatFigure[] = [];
  const add = (source: FloatFigure['source'], printed_V: number, printed_C: number) =>
    figures.push({
      source,
      printed_V,
      printed_C,
      at25_V: printed_V + ((6 * compensation_mV[source]) / 1000) * (chargingTable_C - printed_C),
    });
  if (chemistry !== 'flooded') {
    add('note', floatVolts.note[chemistry].volts, floatVolts.note[chemistry].at_C);
    add('vendors', 6 * floatVolts.vendors[chemistry].cell, floatVolts.vendors[chemistry].at_C);
  }
  const { volts, at_C } = floatVolts.encyclopedia[chemistry];
  add('encyclopedia', volts, at_C);
  return figures;
}

/** Charging volts put right for the temperature of the battery. @param mV_C change of one cell for each °C, mostly −3 to −5 */
export function compensatedVolts(
  volts: number,
  from_C: number,
  battery_C: number,
  cells: number,
  mV_C: number,
): number {
  return volts + (cells * mV_C * (battery_C - from_C)) / 1000;
}

/**
 * Share of a charging current that is stored, at a charge. [–]
 * Lead: 0.97 up to 65 %, falling to 0.55 at 81.5 % and 0.3 when nearly full, so that the means are those of J. Stevens and
 * G. Corey, A study of lead-acid battery efficiency near top-of-charge (1996): 0.95 or more when low (read), 0.91 from 0 to
 * 84 %, 0.55 from 79 to 84 %, under 0.5 above 90 % (recalled). LiFePO4: 0.99 to 1 in a review article.
 */
export function storedShare(chemistry: Chemistry, charge_pct: number): number {
  requireBetween('charge', charge_pct, 0, 100, '%');
  if (chemistry === 'lifepo4') return 0.995;
  for (let i = 1; i < storedKnots.length; i++) {
    const [p0, s0] = storedKnots[i - 1]!;
    const [p1, s1] = storedKnots[i]!;
    if (charge_pct <= p1) return s0 + ((charge_pct - p0) / (p1 - p0)) * (s1 - s0);
  }
  return storedKnots.at(-1)![1];
}
const storedKnots = [
  [0, 0.97],
  [65, 0.97],
  [81.5, 0.55],
  [92, 0.35],
  [100, 0.3],
] as const;

/** Charging ampere-hours for one of capacity between two charges, as a share stored of what is put in. [–] */
export function meanStoredShare(chemistry: Chemistry, from_pct: number, to_pct: number): number {
  if (!(to_pct > from_pct)) throw new RangeError(`to must be over from, got ${from_pct} and ${to_pct} %`);
  const parts = 400;
  let sum = 0;
  for (let i = 0; i < parts; i++) sum += storedShare(chemistry, from_pct + ((i + 0.5) / parts) * (to_pct - from_pct));
  return sum / parts;
}
