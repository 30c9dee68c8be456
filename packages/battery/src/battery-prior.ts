/**
 * What is believed of a battery before any reading, by chemistry, size and age: from tables and literature only. Each figure is
 * a function of a standard normal number, so that the estimate works on those alone.
 */
import type { BatteryKnown } from './battery-history.ts';
import { type FigureName, figureCount, figureNames } from './circuit-model.ts';
import { usualExponent } from './discharge-rate.ts';
import { newResistance_mohm } from './keeping.ts';
import { assumedRecount } from './rest-charge.ts';

/** How a figure follows from a standard normal z. */
type Spread =
  | { readonly by: 'logarithm'; readonly middle: number; readonly spread: number }
  | { readonly by: 'itself'; readonly middle: number; readonly spread: number }
  /** anything from `low` to `high`, all alike */
  | { readonly by: 'evenly'; readonly low: number; readonly high: number }
  /** between 0 and 1, by the logistic function */
  | { readonly by: 'share'; readonly middle: number; readonly spread: number }
  /** from nothing up */
  | { readonly by: 'size'; readonly spread: number };

export type BatteryPrior = readonly Spread[];

const log = (middle: number, spread: number): Spread => ({ by: 'logarithm', middle, spread });
const plain = (middle: number, spread: number): Spread => ({ by: 'itself', middle, spread });

/**
 * The prior of one battery.
 *
 * Capacity: makers rate with some room (new ones give 1.0 to 1.15 of the label in published runs); 4 % a year for lead and 2 %
 * for LiFePO4, very different from owner to owner (cycle life of tables/data-pages, cruising practice). Resistance at 1 kHz by
 * `newResistance_mohm`, growing some 6 % a year; under load the charge transfer (seconds to minutes) and the acid that must
 * follow (an hour) each add about as much again: textbook orders of magnitude, recalled. Surface charge: a quarter of a volt,
 * gone in hours, by the log of `rest-hours`.
 */
export function batteryPrior({ chemistry, nominal_Ah, age_years }: BatteryKnown): BatteryPrior {
  const lead = chemistry !== 'lifepo4';
  const age = age_years ?? 2.5;
  const unknownAge = age_years === null ? 0.1 : 0;
  const yearly = lead ? 0.04 : 0.02;
  const ohms = (newResistance_mohm(chemistry, nominal_Ah).likely / 1000) * (1 + 0.06 * age);
  const figures: Readonly<Record<FigureName, Spread>> = {
    capacity_Ah: log(
      nominal_Ah * 1.06 * Math.exp(-yearly * age),
      Math.sqrt(0.09 ** 2 + (0.03 * age) ** 2 + unknownAge ** 2) * (lead ? 1 : 0.8),
    ),
    charge: { by: 'evenly', low: 0.02, high: 1 },
    ohms: log(ohms, 0.35),
    nearEmpty: log(lead ? 1 : 0.5, 0.6),
    fast_ohms: log(ohms * (lead ? 1 : 0.7), 0.5),
    fast_h: log(100 / 3600, 0.7),
    slow_ohms: log(ohms * (lead ? 1.2 : 0.7), 0.6),
    slow_h: log(lead ? 0.8 : 0.5, 0.6),
    surface_V: lead ? { by: 'size', spread: 0.2 } : { by: 'size', spread: 0.03 },
    surface_h: log(3.5, 0.6),
    surfaceMost_V: lead ? log(0.35, 0.4) : log(0.02, 0.5),
    rise_V: log(1.2, 0.3),
    stored: log(chemistry === 'flooded' ? 0.8 : 0.5, 0.6),
    taper_h: log(lead ? 2 : 0.3, 0.4),
    memory_V: lead ? plain(0, 0) : log(0.05, 0.5),
    tilt_V: plain(0, lead ? 0.12 : 0.05),
    // how far a table's percent is recounted, round `assumedRecount`
    recount: { by: 'share', middle: logit(assumedRecount[chemistry]), spread: lead ? 1.2 : 0 },
    bow_V: plain(0, lead ? 0.06 : 0.02),
    weight0: plain(lead ? 0 : 1, 1.2),
    // the ten-step table alone counts its percent to the loaded cut-off, as ours is counted
    weight1: plain(0.7, 1.2),
    exponentOver1: log(0.7 * (usualExponent[chemistry].likely - 1), 0.6),
  };
  return figureNames.map((name) => figures[name]);
}

const logit = (share: number) => Math.log(Math.max(1e-3, share) / (1 - Math.max(1e-3, share)));

/** Writes the figures that a list of standard normal numbers stands for. */
export function writeFigures(prior: BatteryPrior, z: Float64Array, figures: Float64Array): void {
  for (let i = 0; i < figureCount; i++) {
    const spread = prior[i]!;
    const value = z[i]!;
    figures[i] =
      spread.by === 'logarithm'
        ? spread.middle * Math.exp(spread.spread * value)
        : spread.by === 'itself'
          ? spread.middle + spread.spread * value
          : spread.by === 'size'
            ? spread.spread * Math.abs(value)
            : spread.by === 'share'
              ? 1 / (1 + Math.exp(-(spread.middle + spread.spread * value)))
              : spread.low + (spread.high - spread.low) * normalShare(value);
  }
}

/** Share of a standard normal below x, to 1e-7. Abramowitz and Stegun 26.2.17 by its error function 7.1.26, from memory. */
export function normalShare(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    0.3989422804 *
    Math.exp((-x * x) / 2) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x > 0 ? 1 - tail : tail;
}
