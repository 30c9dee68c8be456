import { type Band, Dice } from '#battery';
import { lightSpans } from '#sky';
import type { Instant } from '#units';
import type { PowerPlace } from './circuit-times.ts';
import type { SunDraws } from './night-runs.ts';

/**
 * Assumed: how much of a day's luck the next day keeps, as a correlation of what the sun brings. Dull days and fair ones come
 * in spells; where the weather of the place is known, the draws of `solar` are taken in place of these.
 */
export const assumedSpell = 0.5;

/**
 * Draws of the sun where all that is known is what the panel brings in a day: from a dull day to a fair one.
 *
 * @param perDay_Ah  one in twenty days brings less than low, one in twenty more than high. [Ah], ≥ 0
 * @param from       a whole hour
 * @returns          amps by the hour: most about noon, none from sunset to sunrise; a day's luck goes on into the next
 * @throws RangeError for ends out of order
 */
export function sunByDays(
  perDay_Ah: Band,
  {
    place,
    from,
    days,
    draws,
    seed,
  }: {
    readonly place: PowerPlace;
    readonly from: Instant;
    readonly days: number;
    readonly draws: number;
    readonly seed: number;
  },
): SunDraws {
  const { low, likely, high } = perDay_Ah;
  if (!(low >= 0 && likely >= low && high >= likely))
    throw new RangeError(`what the sun brings goes from low over likely to high, got ${low}, ${likely}, ${high} Ah`);
  const hours = 24 * days;
  const hour = 3_600_000;
  const shape = new Float64Array(hours);
  const dayOf = new Int32Array(hours).fill(-1);
  const suns = lightSpans(place, 'sun', { start: from - 24 * hour, end: from + (hours + 24) * hour });
  suns.forEach(({ start, end }, day) => {
    let sum = 0;
    const height = (at: number) => Math.max(0, Math.sin((Math.PI * (at - start)) / (end - start)));
    const first = Math.floor((start - from) / hour);
    const last = Math.floor((end - from) / hour);
    for (let i = first; i <= last; i++) sum += height(from + (i + 0.5) * hour);
    // a sun that only shows its edge between two half hours brings nothing
    if (sum === 0) return;
    for (let i = Math.max(0, first); i <= Math.min(hours - 1, last); i++) {
      shape[i] = height(from + (i + 0.5) * hour) / sum;
      dayOf[i] = day;
    }
  });
  const amps = new Float64Array(draws * hours);
  const dice = new Dice(seed);
  const rest = Math.sqrt(1 - assumedSpell ** 2);
  const brought = new Float64Array(suns.length);
  for (let draw = 0; draw < draws; draw++) {
    let luck = dice.normal();
    for (let day = 0; day < suns.length; day++) {
      if (day > 0) luck = assumedSpell * luck + rest * dice.normal();
      brought[day] = Math.max(0, likely + (luck / 1.645) * (luck < 0 ? likely - low : high - likely));
    }
    for (let i = 0; i < hours; i++) if (dayOf[i]! >= 0) amps[draw * hours + i] = shape[i]! * brought[dayOf[i]!]!;
  }
  return { draws, hours, amps, from };
}
