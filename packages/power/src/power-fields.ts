import { type Chemistry, chemistries, floor_pct } from '#battery';
import { inBase } from '#units';
import {
  amount,
  angle,
  assuming,
  choice,
  day,
  type Field,
  type Figure,
  humidity,
  number,
  type Source,
  timeZone,
} from '#working';
import type { Chance } from './spread.ts';

/** The fields that questions about power share, each made anew. */
export const chemistryField = (): Field<Chemistry> =>
  choice(chemistries, 'what the battery is made of') as Field<Chemistry>;
export const chargeField = () => humidity('%', 0, 100, 'charge it has now, of what it holds');
export const holdsField = () =>
  amount('charge', 'Ah', 1, 2000, 'what the battery holds now at the 20-hour rate, less with age');
export const offField = () =>
  assuming(
    number('%', 0, 50, 'how far the charge may be off, either way'),
    10,
    '10 %',
    'a rested reading is worth about that',
  );
export const floorField = () =>
  assuming<number | null>(
    humidity('%', 0, 100, 'lowest charge planned for'),
    null,
    '50 % for lead, 20 % for LiFePO4',
    'cruising practice; below it a lead battery wears fast',
  );
export const floorOf = (given: number | null, chemistry: Chemistry): number => given ?? floor_pct(chemistry);
export const placeFields = () => ({
  day: day('day the night begins on'),
  latitude: angle('°', -90, 90, 'latitude, north positive'),
  longitude: angle('°', -180, 180, 'longitude, east positive'),
  zone: timeZone('time zone of the clocks there'),
});
export const wattsField = (meaning: string) =>
  assuming(amount('power', 'W', 0, 2000, meaning), inBase('power', 0, 'W'), '0 W', 'none stated');

export const powerSources = {
  sun: {
    title: 'the sun of the place and season on the panel (solar.day, with its sources)',
    seen: 'our assumption',
  },
  runs: { title: 'many runs of the night, minute by minute (README)', seen: 'our derivation' },
  lamps: {
    title: 'what is drawn may be 20 % off its label either way, hours told by the day 50 %',
    seen: 'our assumption',
  },
  floor: { title: 'floor of 50 % for lead and 20 % for LiFePO4', seen: 'common practice' },
  taper: { title: 'amps a battery takes near full: what it lacks, in so many hours', seen: 'our assumption' },
  stored: {
    title: 'J. Stevens and G. Corey, A study of lead-acid battery efficiency near top-of-charge (1996)',
    seen: 'recalled',
  },
} as const satisfies Readonly<Record<string, Source>>;

/** What can hurt at a battery that is worked on or charged. */
export const powerCautions = (chemistry: Chemistry): string[] => [
  'A fuse stands at the battery, in each lead that leaves it. A spanner across the terminals glows in a second.',
  chemistry === 'lifepo4'
    ? 'Never charge LiFePO4 below 0 °C.'
    : 'A lead battery on charge gives off hydrogen: open the locker, no flame and no spark near it; acid burns skin and eyes.',
  'Shore power is for a licensed person.',
];

export const chanceFigure = (symbol: string, meaning: string, { chance_pct, low_pct, high_pct }: Chance): Figure => ({
  symbol,
  meaning,
  value: chance_pct,
  low: low_pct,
  high: high_pct,
  unit: '%',
});
export const bandFigure = (
  symbol: string,
  meaning: string,
  { low, likely, high }: { readonly low: number; readonly likely: number; readonly high: number },
  unit: string,
): Figure => ({ symbol, meaning, value: likely, low, high, unit });
