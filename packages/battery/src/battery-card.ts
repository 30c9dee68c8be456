import type { Chemistry } from './chemistry.ts';
import { newResistance_mohm } from './keeping.ts';
import { type Band, type RestCharge, restCharge, restVolts } from './rest-charge.ts';
import { requireBetween } from './table-value.ts';

/** What the printed card says above its figures. */
export const cardCondition = 'Read before sunrise, panel dark. Not while charging, nor for a day after a full charge.';

/** What the card is for. */
export interface CardFor {
  readonly chemistry: Chemistry;
  readonly nominal_V: 6 | 12 | 24;
  /** the usual load at anchor. [A] */
  readonly load_A: number;
  /**
   * Resistance this battery shows under that load after an hour or more, at 25 °C: its own, from the estimate, or
   * `assumedLoadedResistance_mohm`. [mΩ]
   */
  readonly loaded_mohm: Band;
  /** temperatures of the battery, one column each. [°C], −20–50 */
  readonly temperatures_C: readonly number[];
  /** the lowest charge planned for. [%], 0–100 */
  readonly floor_pct: number;
  /** from one line to the next, of a 12 V battery. [V] */
  readonly step_V: number;
}

/** Charge by one reading at one temperature. */
export interface CardCell {
  readonly battery_C: number;
  readonly rested: RestCharge;
  readonly underLoad: RestCharge;
}

export interface BatteryCard {
  /** highest volts first */
  readonly rows: readonly { readonly volts: number; readonly cells: readonly CardCell[] }[];
  /** the lowest charge planned for, and what it reads at each temperature */
  readonly floor_pct: number;
  readonly floor: readonly { readonly battery_C: number; readonly rested_V: Band; readonly underLoad_V: Band }[];
  /** what the load takes off the volts at each temperature. [V] */
  readonly sag: readonly { readonly battery_C: number; readonly volts: Band }[];
}

/**
 * What a new battery shows under a small load for an hour or more, where nothing of its own is known. [mΩ]
 * Assumed: three times what a meter at 1 kHz reads, two to five, because over an hour the acid and the plates take part as
 * well as the metal.
 */
export function assumedLoadedResistance_mohm(
  chemistry: Chemistry,
  nominal_Ah: number,
  nominal_V: 6 | 12 | 24 = 12,
): Band {
  const { low, likely, high } = newResistance_mohm(chemistry, nominal_Ah);
  const size = nominal_V / 12;
  return { low: 2 * low * size, likely: 3 * likely * size, high: 5 * high * size };
}

/** Assumed: resistance of lead grows by 1.2 % for each °C below 25 °C, of LiFePO4 by 2.2 % (conductance of the acid; trade curves, recalled). */
const coldFactor = (chemistry: Chemistry, battery_C: number): number =>
  Math.exp(-(chemistry === 'lifepo4' ? 0.022 : 0.012) * (battery_C - 25));

/**
 * The card of one battery: volts to charge, rested and under its usual load at anchor, at some temperatures.
 *
 * @returns            charge in percent of what the battery holds, with the ends of its band
 * @throws RangeError  for a load under 0 A or over 500 A, no temperature or one outside −20–50 °C, a floor outside 0–100 %,
 *                     a step outside 0.01–0.5 V
 *
 * Not covered: reading on charge or within a day of it; another load than the one stated; percent is of what it holds now.
 */
export function batteryCard(given: CardFor): BatteryCard {
  const { chemistry, nominal_V, load_A, loaded_mohm, temperatures_C, floor_pct, step_V } = given;
  requireBetween('floor', floor_pct, 0, 100, '%');
  requireBetween('step', step_V, 0.01, 0.5, 'V');
  requireBetween('load', load_A, 0, 500, 'A');
  if (temperatures_C.length === 0) throw new RangeError('a card needs one temperature at least');
  for (const heat of temperatures_C) requireBetween('battery temperature', heat, -20, 50, '°C');
  const scale = nominal_V / 12;
  const sagAt = (battery_C: number): Band => {
    const times = (load_A / 1000) * coldFactor(chemistry, battery_C);
    return { low: times * loaded_mohm.low, likely: times * loaded_mohm.likely, high: times * loaded_mohm.high };
  };
  const [top, bottom] = chemistry === 'lifepo4' ? [13.6, 12.2] : [13, 11.4];
  const steps = Math.round((top - bottom) / step_V);
  const read = (volts: number, battery_C: number) =>
    restCharge(chemistry, Math.min(40, Math.max(0, volts)), battery_C, nominal_V);
  return {
    rows: Array.from({ length: steps + 1 }, (_, i) => {
      const volts = Math.round(100 * scale * (top - i * step_V)) / 100;
      return {
        volts,
        cells: temperatures_C.map((battery_C): CardCell => {
          const sag = sagAt(battery_C);
          const likely = read(volts + sag.likely, battery_C);
          return {
            battery_C,
            rested: read(volts, battery_C),
            underLoad: {
              low: read(volts + sag.low, battery_C).low,
              likely: likely.likely,
              high: read(volts + sag.high, battery_C).high,
              beyond: likely.beyond,
            },
          };
        }),
      };
    }),
    floor_pct,
    floor: temperatures_C.map((battery_C) => {
      const rested_V = restVolts(chemistry, floor_pct, battery_C, nominal_V);
      const sag = sagAt(battery_C);
      return {
        battery_C,
        rested_V,
        underLoad_V: {
          low: rested_V.low - sag.high,
          likely: rested_V.likely - sag.likely,
          high: rested_V.high - sag.low,
        },
      };
    }),
    sag: temperatures_C.map((battery_C) => ({ battery_C, volts: sagAt(battery_C) })),
  };
}
