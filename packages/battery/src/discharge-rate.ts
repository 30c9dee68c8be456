import { type DataPageName, dataPages } from '../tables/data-pages.read-2026-11.ts';
import type { Chemistry } from './chemistry.ts';
import type { Band } from './rest-charge.ts';
import { requireBetween } from './table-value.ts';

/**
 * Hours a battery lasts at a steady current by Peukert's law in its rated-hour form, t = H·(C/(I·H))^k.
 *
 * @param capacity_Ah  C, given at the rated hours. [Ah], > 0
 * @param rated_h      H, hours the capacity is given for, 20 on most labels. [h], > 0
 * @param amps         I. [A], > 0
 * @param exponent     k. 1–2
 * @throws RangeError  outside these ranges
 *
 * Not covered: cold, age, a load that comes and goes. Source: Peukert 1897 in the form that holds for the rated hours.
 */
export function hoursAtCurrent(capacity_Ah: number, rated_h: number, amps: number, exponent: number): number {
  requireBetween('capacity', capacity_Ah, 1e-6, 1e5, 'Ah');
  requireBetween('rated hours', rated_h, 1e-3, 1000, 'h');
  requireBetween('current', amps, 1e-6, 1e5, 'A');
  requireBetween('exponent', exponent, 1, 2, '');
  return rated_h * (capacity_Ah / (amps * rated_h)) ** exponent;
}

/**
 * The same by the old form, t = C/I^k. Right only when C is the capacity at one ampere, which no label gives: with the 20-hour
 * capacity it comes out far too short.
 */
export function hoursByOldForm(capacity_Ah: number, amps: number, exponent: number): number {
  requireBetween('capacity', capacity_Ah, 1e-6, 1e5, 'Ah');
  requireBetween('current', amps, 1e-6, 1e5, 'A');
  requireBetween('exponent', exponent, 1, 2, '');
  return capacity_Ah / amps ** exponent;
}

/** The exponent that two discharges of one battery give, k = ln(t2/t1)/ln(I1/I2). @throws RangeError for equal currents */
export function exponentOfTests(
  first: { readonly amps: number; readonly hours: number },
  second: { readonly amps: number; readonly hours: number },
): number {
  if (!(first.amps > 0 && second.amps > 0 && first.hours > 0 && second.hours > 0 && first.amps !== second.amps))
    throw new RangeError(
      `two tests at different currents are needed, all over 0; got ${first.amps} and ${second.amps} A for ${first.hours} and ${second.hours} h`,
    );
  return Math.log(second.hours / first.hours) / Math.log(first.amps / second.amps);
}

/** Usual exponents, from memory of trade ranges; the middle for AGM leans to what two data pages give (1.12 to 1.13 down to 5 h). */
export const usualExponent: Readonly<Record<Chemistry, Band>> = {
  flooded: { low: 1.2, likely: 1.3, high: 1.4 },
  agm: { low: 1.05, likely: 1.12, high: 1.15 },
  gel: { low: 1.1, likely: 1.15, high: 1.25 },
  lifepo4: { low: 1.01, likely: 1.03, high: 1.05 },
};

/**
 * What an AGM battery gives at a rate, by a data page: on the straight line between its figures, both as logarithms.
 *
 * @param hours  how long the discharge takes. [h], 0.5–100; past the page its last exponent is taken on
 */
export function pageCapacity_Ah(page: DataPageName, hours: number): number {
  requireBetween('hours of discharge', hours, 0.5, 100, 'h');
  const { rates } = dataPages[page];
  let i = 1;
  while (i < rates.length - 1 && hours > rates[i]![0]) i++;
  const [h0, c0] = rates[i - 1]!;
  const [h1, c1] = rates[i]!;
  return c0 * (c1 / c0) ** (Math.log(hours / h0) / Math.log(h1 / h0));
}

/** What a battery of a size gives when emptied in so many hours, by its usual exponents. [Ah] */
export function capacityInHours_Ah(chemistry: Chemistry, nominal_Ah: number, hours: number): Band {
  requireBetween('capacity', nominal_Ah, 0.1, 1e4, 'Ah');
  requireBetween('hours of discharge', hours, 0.5, 100, 'h');
  const given = (k: number) => nominal_Ah * (hours / 20) ** (1 - 1 / k);
  const { low, likely, high } = usualExponent[chemistry];
  const ends = [given(low), given(high)];
  // AGM below 5 h: the pages' own figures fall faster than one exponent says
  const page =
    chemistry === 'agm'
      ? (nominal_Ah * (pageCapacity_Ah('agm14', hours) / 14 + pageCapacity_Ah('agm40', hours) / 40)) / 2
      : given(likely);
  return { low: Math.min(page, ...ends), likely: page, high: Math.max(page, ...ends) };
}
