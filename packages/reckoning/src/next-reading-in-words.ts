/** What further look at the meter would say most of a battery, with what it would bring. */
import { type NextReading, type NextReadingKind, nextReadings } from '#battery';
import { usualVolts } from '#power';
import { showNumber } from '#units';
import type { BatteryOfBook } from './power-history.ts';
import { Ah, bandInWords, usualHeat_C, volts } from './power-in-words.ts';
import type { BatteryNow } from './power-night.ts';
import { figureOf, type ToldLine, told } from './told-line.ts';

const next = figureOf('next reading');

/** From the least trouble to the most. */
const trouble: readonly NextReadingKind[] = [
  'rested',
  'under load',
  'load test',
  'after a full charge',
  'load test from full',
];
/** A reading that narrows the band to within this of the best is as good, if it is less trouble. */
const asGood = 0.06;
/** A band that stays wider than this share of itself is not narrowed. */
const hardly = 0.93;
/** A test that the meter stops this soon says nothing. [h] */
const shortest_h = 0.5;

const share = ({ wide_Ah, wideNow_Ah }: NextReading) => (wideNow_Ah > 0 ? wide_Ah / wideNow_Ah : 1);

/**
 * The reading to make next: of those that narrow the band of the ampere-hours left by nearly the greatest share, the least
 * trouble; null: none would narrow it.
 *
 * @param testTo_V  a load test stops there, rested volts of the floor
 */
export function readingToMake(known: BatteryNow, { record }: BatteryOfBook, testTo_V: number): NextReading | null {
  const { chemistry, nominal_Ah, nominal_V } = record;
  const worths = nextReadings(known.estimate, { chemistry, nominal_Ah, nominal_V, battery_C: usualHeat_C, testTo_V });
  const sound = worths.filter(({ hours }) => hours === null || hours >= shortest_h);
  const best = sound[0];
  if (best === undefined || share(best) > hardly) return null;
  return sound
    .filter((each) => share(each) <= Math.min(hardly, share(best) + asGood))
    .reduce((chosen, each) => (trouble.indexOf(each.kind) < trouble.indexOf(chosen.kind) ? each : chosen), best);
}

/** The reading to make next and what it would bring; or that none would say much. */
export function furtherReadingInWords(known: BatteryNow, battery: BatteryOfBook, testTo_V: number): ToldLine {
  const { record } = battery;
  const { left_Ah } = known.estimate;
  const flat =
    record.chemistry === 'lifepo4'
      ? 'The volts of LiFePO4 hardly move between 20 and 90 %: one reading says little. '
      : '';
  const reading = readingToMake(known, battery, testTo_V);
  if (reading === null)
    return told`${flat}No one reading would say much more: what it can still give is known to ${next(`${bandInWords(left_Ah, Ah)} Ah`)}.`;
  const { kind, amps, hours, wide_Ah, wideNow_Ah } = reading;
  const lamp =
    amps === null ? '' : `${Ah(amps)} A (${Math.round(amps * usualVolts(record.chemistry, record.nominal_V))} W)`;
  const until = `read the volts every hour until the meter shows ${volts(testTo_V)} V${hours === null ? '' : `, in some ${showNumber(hours, hours < 3 ? 1 : 0)} h`}, then rested next morning`;
  const how: Readonly<Record<NextReadingKind, string>> = {
    rested: 'Read it rested: loads off, before sunrise, panel dark.',
    'under load': `Read it under a load that is known: panel dark, a lamp of about ${lamp} on for 20 minutes, then read.`,
    'after a full charge': 'Charge it full, let it stand overnight with loads off and panel dark, then read it.',
    'load test': `A load test would say most: with the panel dark put a lamp of about ${lamp} on and ${until}.`,
    'load test from full': `A load test from full would say most: charge it full and let it stand, then with the panel dark put a lamp of about ${lamp} on and ${until}.`,
  };
  const full = kind === 'after a full charge' || kind === 'load test from full';
  return told`${flat}${how[kind]} ${full ? 'What it holds' : 'What it can still give'} is known within ${next(`${Ah(wideNow_Ah)} Ah`)} from end to end; that should bring it to about ${next(`${Ah(wide_Ah)} Ah`)}.`;
}
