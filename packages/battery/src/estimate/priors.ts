import { assumedLoadedResistance_mohm } from '../battery-card.ts';
import type { BatteryKnown } from '../battery-history.ts';
import type { Chemistry } from '../chemistry.ts';
import { selfDischarge_pct_month } from '../keeping.ts';

/**
 * What one battery may be, before anything was read of it. Every unknown is a standard normal number z; `drawn` says what
 * the battery is for a list of them, and how it lies over what is thought of batteries of its kind and size.
 *
 * Sources, none of them a run that an estimate is later held against: resistance, self-discharge and rest volts from the
 * tables of this package; the two wells of charge after J. Manwell and J. McGowan, Solar Energy 50 (1993) 399–405, from
 * memory, their size and rate such that capacity falls with current as usual exponents say; the rest are assumptions of
 * ours, named below.
 */
export const unknowns = [
  'capacity',
  'charge at first',
  'rest volts, level',
  'rest volts, slope',
  'resistance',
  'resistance near empty',
  'wells, share at hand',
  'wells, rate',
  'surface charge, most',
  'surface charge at first',
  'charge stored',
  'self-discharge',
] as const;

export const z = Object.fromEntries(unknowns.map((name, index) => [name, index])) as Readonly<
  Record<(typeof unknowns)[number], number>
>;

/** Assumed: a battery gives this much more than its label when new, on the whole, and as a spread (of its logarithm). */
const overLabel = { mean: 0.02, spread: 0.09 };
/** Assumed: share of capacity lost in a year, and how far owners differ (of its logarithm). */
const lossPerYear: Readonly<Record<'lead' | 'lifepo4', number>> = { lead: 0.04, lifepo4: 0.015 };
/** Assumed where the age is not known: capacity over label on the whole, and its spread. */
const ageUnknown = { mean: 0.02, spread: 0.13 };

/** The most and the least a meter, a wire and a hurried look are off, as one standard deviation. [V, 12 V battery] Assumed. */
export const meterSpread_V = 0.035;

/** What is assumed of batteries before one is read, as it is told to people. */
export const assumedOfBatteries = {
  overLabel: overLabel.mean,
  lossPerYear,
  meter_V: meterSpread_V,
} as const;

/** What a battery is, one array a property, an entry a draw. Volts and ohms are those of a 12 V battery. */
export interface Draws {
  readonly count: number;
  /** to the cut-off at the 20-hour current, 25 °C. [Ah] */
  readonly capacity_Ah: Float64Array;
  /** charge in both wells when full. [Ah] */
  readonly held_Ah: Float64Array;
  /** share of it still in the wells when the 20-hour current has brought it to the cut-off */
  readonly stranded: Float64Array;
  readonly first: Float64Array;
  readonly level_V: Float64Array;
  readonly slope_V: Float64Array;
  readonly ohms: Float64Array;
  readonly emptyOhms: Float64Array;
  readonly atHand: Float64Array;
  readonly rate_1_h: Float64Array;
  readonly surfaceMost_V: Float64Array;
  readonly surfaceFirst_V: Float64Array;
  readonly stored: Float64Array;
  readonly loss_1_h: Float64Array;
}

export function emptyDraws(count: number): Draws {
  const one = () => new Float64Array(count);
  return {
    count,
    capacity_Ah: one(),
    held_Ah: one(),
    stranded: one(),
    first: one(),
    level_V: one(),
    slope_V: one(),
    ohms: one(),
    emptyOhms: one(),
    atHand: one(),
    rate_1_h: one(),
    surfaceMost_V: one(),
    surfaceFirst_V: one(),
    stored: one(),
    loss_1_h: one(),
  };
}

/** Fills draw `n` from the standard normal numbers at `at` of `zs`. */
export function fillDraw(draws: Draws, n: number, zs: Float64Array, at: number, prior: Prior): void {
  const lead = prior.chemistry !== 'lifepo4';
  const of = (name: (typeof unknowns)[number]) => zs[at + z[name]]!;
  const capacity = prior.nominal_Ah * Math.exp(prior.logCapacity.mean + prior.logCapacity.spread * of('capacity'));
  // a share at hand from a third to two thirds; of LiFePO4 nearly all is
  const atHand = lead ? 0.35 + 0.35 * normalShare(of('wells, share at hand')) : 0.9;
  const rate = (lead ? 1.6 : 4) * Math.exp(0.45 * of('wells, rate'));
  const stranded = ((1 - atHand) * 0.05) / (atHand * rate);
  draws.capacity_Ah[n] = capacity;
  draws.held_Ah[n] = capacity / (1 - stranded);
  draws.stranded[n] = stranded;
  draws.atHand[n] = atHand;
  draws.rate_1_h[n] = rate;
  // keepers mostly start with much in it; three in ten start full
  draws.first[n] = Math.min(1, 1.25 * normalShare(of('charge at first')) ** 0.6);
  draws.level_V[n] = of('rest volts, level');
  draws.slope_V[n] = (lead ? 0.2 : 0.03) * of('rest volts, slope');
  draws.ohms[n] = (prior.ohms * Math.exp(prior.ohmsSpread * of('resistance'))) / (capacity / prior.nominal_Ah) ** 0.5;
  draws.emptyOhms[n] = draws.ohms[n]! * 0.5 * Math.exp(0.6 * of('resistance near empty'));
  draws.surfaceMost_V[n] = (lead ? 0.35 : 0.05) * Math.exp(0.5 * of('surface charge, most'));
  draws.surfaceFirst_V[n] = draws.surfaceMost_V[n]! * Math.max(0, normalShare(of('surface charge at first')) - 0.4);
  draws.stored[n] = lead
    ? 0.88 + 0.12 * normalShare(of('charge stored'))
    : 0.985 + 0.015 * normalShare(of('charge stored'));
  draws.loss_1_h[n] = prior.loss_1_h * Math.exp(0.5 * of('self-discharge'));
}

/** What is thought of a battery of this kind, size and age. */
export interface Prior {
  readonly chemistry: Chemistry;
  readonly nominal_Ah: number;
  readonly logCapacity: { readonly mean: number; readonly spread: number };
  /** all that a current takes off at once and within some minutes, full, 25 °C */
  readonly ohms: number;
  readonly ohmsSpread: number;
  /** share of the capacity lost of itself in an hour at 20 °C */
  readonly loss_1_h: number;
}

/** Assumed: a battery that still works is past this age no worse known, nor worse. [years] */
const oldest_years = 12;

export function priorOf({ chemistry, nominal_Ah, age_years: age }: BatteryKnown): Prior {
  const age_years = age === null ? null : Math.min(oldest_years, age);
  const { low, likely, high } = assumedLoadedResistance_mohm(chemistry, nominal_Ah);
  const yearly = lossPerYear[chemistry === 'lifepo4' ? 'lifepo4' : 'lead'];
  const logCapacity =
    age_years === null
      ? ageUnknown
      : {
          mean: overLabel.mean + Math.log(Math.max(0.35, 1 - yearly * age_years)),
          // what is lost is known to about half of itself
          spread: Math.hypot(overLabel.spread, 0.6 * yearly * age_years),
        };
  // resistance grows as a battery ages; how far is not known
  const worn = age_years === null ? 1.2 : 1 + 0.05 * age_years;
  return {
    chemistry,
    nominal_Ah,
    logCapacity,
    ohms: (worn * likely) / 1000,
    ohmsSpread: Math.log(high / low) / 2 / 1.645,
    loss_1_h: selfDischarge_pct_month[chemistry].likely / 100 / (30 * 24),
  };
}

/** The share of a standard normal distribution under z, to 1e-7 (W. J. Cody's erfc in the form of Abramowitz and Stegun 7.1.26, from memory). */
export function normalShare(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail =
    0.5 *
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    Math.exp(-x * x);
  return z > 0 ? 1 - tail : tail;
}
