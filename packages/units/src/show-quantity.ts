import { inUnit, type Kind, kinds, type QuantityOf, required, type System } from './quantity.ts';

/** How a quantity should be written. */
export interface Showing {
  /** the unit by name; else the usual one of the system */
  readonly unit?: string;
  readonly system?: System;
  /** decimals; else the usual ones of the unit */
  readonly decimals?: number;
}

/**
 * Writes a quantity with its unit: `8.0 mm`, `12 kn`, `54 °F`, `1 h 30`. What `readQuantity` reads back is within half of
 * the last decimal written.
 *
 * A length of time is written in days, hours and minutes unless a unit is named; whole minutes.
 * The minus is '−' (U+2212), the space before the unit does not break (U+00A0).
 */
export function showQuantity<K extends Kind>(kind: K, value: QuantityOf<K>, showing: Showing = {}): string {
  if (kind === 'duration' && showing.unit === undefined) return showMinutes(value);
  const symbol = showing.unit ?? kinds[kind].shown[showing.system ?? 'metric'];
  const unit = required(kind, symbol);
  return `${showNumber(inUnit(kind, value, symbol), showing.decimals ?? unit.decimals)}${unit.symbol === '°' ? '' : '\u00a0'}${unit.symbol}`;
}

/** A number with so many decimals and the true minus sign; never '−0'. @param decimals whole, 0–12 */
export function showNumber(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/**
 * Writes a length in inches with a fraction, as drills, screws and rope are sold: `5/16 in`, `1 3/8 in`.
 * @param parts the finest part of an inch. 2, 4, 8, 16, 32 or 64
 */
export function showInches(value: QuantityOf<'length'>, parts: 2 | 4 | 8 | 16 | 32 | 64 = 64): string {
  let top = Math.round(Math.abs(inUnit('length', value, 'in')) * parts);
  let bottom: number = parts;
  const whole = Math.floor(top / bottom);
  top -= whole * bottom;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const number = top === 0 ? `${whole}` : whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
  return `${value < 0 && number !== '0' ? '−' : ''}${number}\u00a0in`;
}

function showMinutes(value: number): string {
  const minutes = Math.round(Math.abs(value));
  const sign = value < 0 && minutes > 0 ? '−' : '';
  const d = Math.floor(minutes / 1440);
  const h = Math.floor((minutes % 1440) / 60);
  const min = minutes % 60;
  if (d === 0 && h === 0) return `${sign}${min}\u00a0min`;
  const days = d > 0 ? [`${d}\u00a0d`] : [];
  const hours = h > 0 ? [`${h}\u00a0h`] : [];
  const rest = min > 0 ? [h > 0 ? String(min).padStart(2, '0') : `${min}\u00a0min`] : [];
  return `${sign}${[...days, ...hours, ...rest].join('\u00a0')}`;
}
