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
  'drain, since',
  'drain, amps',
  'charge lost, since',
  'charge lost, share',
  'charge unlogged, when',
  'charge unlogged, hours',
] as const;

const place = (name: (typeof unknowns)[number]) => unknowns.indexOf(name);
/** Where each stands in the list. */
const at = {
  capacity: place('capacity'),
  first: place('charge at first'),
  level: place('rest volts, level'),
  slope: place('rest volts, slope'),
  ohms: place('resistance'),
  emptyOhms: place('resistance near empty'),
  atHand: place('wells, share at hand'),
  rate: place('wells, rate'),
  surfaceMost: place('surface charge, most'),
  surfaceFirst: place('surface charge at first'),
  stored: place('charge stored'),
  loss: place('self-discharge'),
  drainSince: place('drain, since'),
  drain: place('drain, amps'),
  lostSince: place('charge lost, since'),
  lost: place('charge lost, share'),
  extraWhen: place('charge unlogged, when'),
  extra: place('charge unlogged, hours'),
} as const;

/** Assumed: a battery gives this much more than its label when new, on the whole, and as a spread (of its logarithm). */
const overLabel = { mean: 0.02, spread: 0.09 };
/** Assumed: share of capacity lost in a year, and how far owners differ (of its logarithm). */
const lossPerYear: Readonly<Record<'lead' | 'lifepo4', number>> = { lead: 0.04, lifepo4: 0.015 };
/** Assumed where the age is not known: capacity over label on the whole, and its spread. */
const ageUnknown = { mean: 0.02, spread: 0.13 };

/** The most and the least a meter, a wire and a hurried look are off, as one standard deviation. [V, 12 V battery] Assumed. */
export const meterSpread_V = 0.035;

/**
 * What a keeper's log leaves out. Assumed, no source: in one history of ten something draws from its start that nobody wrote
 * down, and once in three months something is left on: a lamp, a radio's memory, a wet lead. What it takes is this part of the
 * label an hour, and how far that differs (of its logarithm).
 */
const unloggedDrain = { already: 0.1, apart_days: 90, ofLabel_1_h: 1 / 200, spread: 0.9 };
/** Assumed: one panel in twenty brings less than it should from the start, once in four months one ceases to: cover, shade, fuse. */
const lostCharge = { already: 0.05, apart_days: 120 };
/** Assumed: once in four months somebody charges it and does not write it down: at a tenth of the label, for so long. [h] */
const unloggedCharge = { apart_days: 120, ofLabel_1_h: 0.1, hours: 4, spread: 0.7 };

/** One thing that a log leaves out: its unknowns, the first of them the one that says from when on; and how often it comes. */
export interface UnloggedEvent {
  readonly places: readonly number[];
  /** it leaves more in the battery, not less */
  readonly fills: boolean;
  readonly already: number;
  readonly apart_days: number;
  /** of a draw: from when on. [h] of the history */
  readonly since: 'drainFrom_h' | 'lostFrom_h' | 'extraFrom_h';
  /** Fills what of draw `n` hangs on it, from the standard normal numbers from `row` on of `zs`. */
  readonly fill: (draws: Draws, n: number, zs: Float64Array, row: number, prior: Prior) => void;
}

/** How likely it is thought to have begun by an hour of the history. 0–1 */
export const begunBy = ({ already, apart_days }: UnloggedEvent, hours: number): number =>
  1 - (1 - already) * Math.exp(-hours / (24 * apart_days));

/** What is assumed of batteries before one is read, as it is told to people. */
export const assumedOfBatteries = {
  overLabel: overLabel.mean,
  lossPerYear,
  meter_V: meterSpread_V,
  unloggedDrain,
  lostCharge,
  unloggedCharge,
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
  /** what draws unlogged, from an hour of the history on; and from when on only a share of the charge that was stated came */
  readonly drainFrom_h: Float64Array;
  readonly drain_A: Float64Array;
  readonly lostFrom_h: Float64Array;
  readonly kept: Float64Array;
  /** when it was charged unlogged, and at what. [h] of the history */
  readonly extraFrom_h: Float64Array;
  readonly extraTo_h: Float64Array;
  readonly extra_A: Float64Array;
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
    drainFrom_h: one(),
    drain_A: one(),
    lostFrom_h: one(),
    kept: one(),
    extraFrom_h: one(),
    extraTo_h: one(),
    extra_A: one(),
  };
}

/** Fills draw `n` from the standard normal numbers from `row` on of `zs`. */
export function fillDraw(draws: Draws, n: number, zs: Float64Array, row: number, prior: Prior): void {
  const lead = prior.chemistry !== 'lifepo4';
  const { nominal_Ah } = prior;
  const capacity = nominal_Ah * Math.exp(prior.logCapacity.mean + prior.logCapacity.spread * zs[row + at.capacity]!);
  // a share at hand from a third to two thirds; of LiFePO4 nearly all is
  const atHand = lead ? 0.35 + 0.35 * normalShare(zs[row + at.atHand]!) : 0.9;
  const rate = (lead ? 1.6 : 4) * Math.exp(0.45 * zs[row + at.rate]!);
  const stranded = ((1 - atHand) * 0.05) / (atHand * rate);
  draws.capacity_Ah[n] = capacity;
  draws.held_Ah[n] = capacity / (1 - stranded);
  draws.stranded[n] = stranded;
  draws.atHand[n] = atHand;
  draws.rate_1_h[n] = rate;
  // keepers mostly start with much in it; three in ten start full
  draws.first[n] = Math.min(1, 1.25 * normalShare(zs[row + at.first]!) ** 0.6);
  draws.level_V[n] = zs[row + at.level]!;
  draws.slope_V[n] = (lead ? 0.2 : 0.03) * zs[row + at.slope]!;
  draws.ohms[n] = (prior.ohms * Math.exp(prior.ohmsSpread * zs[row + at.ohms]!)) / Math.sqrt(capacity / nominal_Ah);
  draws.emptyOhms[n] = draws.ohms[n]! * 0.5 * Math.exp(0.6 * zs[row + at.emptyOhms]!);
  draws.surfaceMost_V[n] = (lead ? 0.35 : 0.05) * Math.exp(0.5 * zs[row + at.surfaceMost]!);
  draws.surfaceFirst_V[n] = draws.surfaceMost_V[n]! * Math.max(0, normalShare(zs[row + at.surfaceFirst]!) - 0.4);
  draws.stored[n] = lead
    ? 0.88 + 0.12 * normalShare(zs[row + at.stored]!)
    : 0.985 + 0.015 * normalShare(zs[row + at.stored]!);
  draws.loss_1_h[n] = prior.loss_1_h * Math.exp(0.5 * zs[row + at.loss]!);
  fillDrain(draws, n, zs, row, prior);
  fillLost(draws, n, zs, row, prior);
  fillExtra(draws, n, zs, row, prior);
}

const fillDrain: UnloggedEvent['fill'] = (draws, n, zs, row, { nominal_Ah }) => {
  draws.drainFrom_h[n] = since_h(zs[row + at.drainSince]!, unloggedDrain.already, unloggedDrain.apart_days);
  draws.drain_A[n] = nominal_Ah * unloggedDrain.ofLabel_1_h * Math.exp(unloggedDrain.spread * zs[row + at.drain]!);
};

const fillLost: UnloggedEvent['fill'] = (draws, n, zs, row) => {
  draws.lostFrom_h[n] = since_h(zs[row + at.lostSince]!, lostCharge.already, lostCharge.apart_days);
  draws.kept[n] = normalShare(zs[row + at.lost]!);
};

const fillExtra: UnloggedEvent['fill'] = (draws, n, zs, row, { nominal_Ah }) => {
  const from_h = since_h(zs[row + at.extraWhen]!, 0, unloggedCharge.apart_days);
  draws.extraFrom_h[n] = from_h;
  draws.extraTo_h[n] = from_h + unloggedCharge.hours * Math.exp(unloggedCharge.spread * zs[row + at.extra]!);
  draws.extra_A[n] = nominal_Ah * unloggedCharge.ofLabel_1_h;
};

export const unlogged: readonly UnloggedEvent[] = [
  { places: [at.drainSince, at.drain], fills: false, since: 'drainFrom_h', fill: fillDrain, ...unloggedDrain },
  { places: [at.lostSince, at.lost], fills: false, since: 'lostFrom_h', fill: fillLost, ...lostCharge },
  {
    places: [at.extraWhen, at.extra],
    fills: true,
    since: 'extraFrom_h',
    fill: fillExtra,
    already: 0,
    ...unloggedCharge,
  },
];

/** Makes draw `n` what draw `from` of `others` is. */
export function copyDraw(others: Draws, from: number, draws: Draws, n: number): void {
  draws.capacity_Ah[n] = others.capacity_Ah[from]!;
  draws.held_Ah[n] = others.held_Ah[from]!;
  draws.stranded[n] = others.stranded[from]!;
  draws.first[n] = others.first[from]!;
  draws.level_V[n] = others.level_V[from]!;
  draws.slope_V[n] = others.slope_V[from]!;
  draws.ohms[n] = others.ohms[from]!;
  draws.emptyOhms[n] = others.emptyOhms[from]!;
  draws.atHand[n] = others.atHand[from]!;
  draws.rate_1_h[n] = others.rate_1_h[from]!;
  draws.surfaceMost_V[n] = others.surfaceMost_V[from]!;
  draws.surfaceFirst_V[n] = others.surfaceFirst_V[from]!;
  draws.stored[n] = others.stored[from]!;
  draws.loss_1_h[n] = others.loss_1_h[from]!;
  draws.drainFrom_h[n] = others.drainFrom_h[from]!;
  draws.drain_A[n] = others.drain_A[from]!;
  draws.lostFrom_h[n] = others.lostFrom_h[from]!;
  draws.kept[n] = others.kept[from]!;
  draws.extraFrom_h[n] = others.extraFrom_h[from]!;
  draws.extraTo_h[n] = others.extraTo_h[from]!;
  draws.extra_A[n] = others.extra_A[from]!;
}

/** From when on: from the start in a share of cases, else after a time that knows nothing of what was before. [h] */
function since_h(z: number, already: number, apart_days: number): number {
  const left = Math.max(1e-9, 1 - normalShare(z));
  return left >= 1 - already ? 0 : -24 * apart_days * Math.log(left / (1 - already));
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

/** The other way round, by halving. @param share over 0 and under 1 */
export function normalOfShare(share: number): number {
  let low = -6;
  let high = 6;
  for (let i = 0; i < 32; i++) {
    const middle = (low + high) / 2;
    if (normalShare(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
