import { type Band, type Chemistry, storedShare } from '#battery';

/**
 * Hours in which a battery held at its charging volts would take what it still lacks, if it went on as it began. [h]
 * Assumed: lead takes at most the amps that it lacks in ampere-hours in so many hours (the ampere-hour rule of old
 * charging practice says one, from memory; small sealed batteries on small chargers take longer); LiFePO4 tapers only in its
 * last minutes.
 */
export const assumedTaper_h: Readonly<Record<Chemistry, Band>> = {
  flooded: { low: 2, likely: 3, high: 5 },
  agm: { low: 1.5, likely: 2, high: 4 },
  gel: { low: 2, likely: 3, high: 5 },
  lifepo4: { low: 0.2, likely: 0.3, high: 0.5 },
};

/** Steps of charge in the tables below, 0.5 % each. */
export const chargeSteps = 200;

/**
 * What a battery takes of a charging current, by its charge.
 * Both lists go from 0 to 100 % in half percents: the greatest amps it takes for each ampere-hour of capacity, and the share
 * of them it stores.
 */
export interface Acceptance {
  readonly most_A_Ah: Float64Array;
  readonly stored: Float64Array;
}

/**
 * The acceptance of a kind of battery.
 *
 * @param taper_h  hours as in `assumedTaper_h`. > 0
 * @throws RangeError for a taper of no hours
 *
 * Not covered: a lead battery that has stood half charged for weeks takes less; LiFePO4 below 0 °C must take none.
 */
export function acceptance(chemistry: Chemistry, taper_h: number): Acceptance {
  if (!(taper_h > 0)) throw new RangeError(`the taper must be over 0 h, got ${taper_h} h`);
  const most_A_Ah = new Float64Array(chargeSteps + 1);
  const stored = new Float64Array(chargeSteps + 1);
  for (let i = 0; i <= chargeSteps; i++) {
    most_A_Ah[i] = (1 - i / chargeSteps) / taper_h;
    stored[i] = storedShare(chemistry, (100 * i) / chargeSteps);
  }
  return { most_A_Ah, stored };
}
