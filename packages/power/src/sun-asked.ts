/** The sun of a question about nights: as it is told in ampere-hours a day, else worked out from a panel of the place. */
import { Dice } from '#battery';
import { type Clouds, keptBand, type PanelCase, panelDay, type SolarPanel, sunDraws } from '#solar';
import { inBase, localAt } from '#units';
import { angle, assuming, choice, type Field, humidity, series } from '#working';
import type { PowerPlace } from './circuit-times.ts';
import type { SunDraws } from './night-runs.ts';
import { sunByDays } from './sun-by-days.ts';

/** How a panel lies and what stands between it and the battery. */
export const panelFields = () => ({
  tilt: assuming(
    angle('°', 0, 90, 'tilt of the panel from level'),
    inBase('angle', 0, '°'),
    '0°',
    'at anchor the boat swings',
  ),
  heading: assuming(
    angle('°', 0, 360, 'the way it faces, true, from north'),
    inBase('angle', 180, '°'),
    '180°',
    'it does not matter to a level panel',
  ),
  regulator: assuming(
    choice(
      [
        { id: 'none', title: 'none' },
        { id: 'simple', title: 'simple' },
        { id: 'tracking', title: 'tracking' },
      ],
      'its regulator',
    ) as Field<SolarPanel['regulator']>,
    'simple',
    'simple',
    'most small panels have one',
  ),
  'sun-kept': assuming<number | null>(
    humidity('%', 0, 100, 'of the sun that gets past mast, boom and ropes'),
    null,
    '55 to 97 %, likely 80',
    'nobody has said; our assumption',
  ),
});

/** Told days go before what is worked out. */
export const sunField = (because: string) =>
  assuming<readonly number[] | null>(
    series('charge', 'Ah', 0, 500, { least: 3, most: 3 }, 'what the panel brings in a dull, a usual and a fair day'),
    null,
    'by the panel, place and season (solar.day)',
    because,
  );

/** What is wrong with days told, or null. */
export const daysDoNotRise = ({ sun }: { readonly sun: readonly number[] | null }) =>
  sun === null || (sun[0]! <= sun[1]! && sun[1]! <= sun[2]!)
    ? null
    : {
        where: 'sun',
        wrong: `${sun.join(', ')} Ah do not rise`,
        right: 'give the dull day first, then the usual, then the fair',
      };

/** Assumed: the air at a panel by day, where only a question is asked. [°C] */
const assumedAir_C = 18;
const hour = 3_600_000;
const season: Clouds = { kind: 'season' };

export interface SunAsked {
  readonly sun: readonly number[] | null;
  readonly panel_W: number;
  readonly tilt: number;
  readonly heading: number;
  readonly regulator: SolarPanel['regulator'];
  readonly 'sun-kept': number | null;
}

/** Courses of the sun for what is asked; null: no panel. */
export function sunAsked(
  asked: SunAsked,
  {
    place,
    from,
    days,
    draws,
    seed,
  }: {
    readonly place: PowerPlace;
    readonly from: number;
    readonly days: number;
    readonly draws: number;
    readonly seed: number;
  },
): SunDraws | null {
  const start = Math.floor(from / hour) * hour;
  const { sun } = asked;
  if (sun !== null) {
    const [low, likely, high] = sun as [number, number, number];
    return high > 0 ? sunByDays({ low, likely, high }, { place, from: start, days, draws, seed }) : null;
  }
  const panel = panelCase(asked, place);
  if (panel === null) return null;
  return sunDraws([panel], {
    from: start,
    days,
    draws,
    clouds: () => season,
    clockHour: (at) => Math.floor(localAt(at, place.zone).minuteOfDay / 60),
    dice: new Dice(seed),
  });
}

/** What it brings on a day, in 9 of 10, before the battery says what it takes, and whose figure that is; null: no panel. */
export function sunDayAsked(asked: SunAsked, place: PowerPlace, day: string) {
  const { sun } = asked;
  if (sun !== null) {
    const [low, likely, high] = sun as [number, number, number];
    return high > 0 ? { low, likely, high, formula: 'as told: dull, usual and fair' } : null;
  }
  const panel = panelCase(asked, place);
  return panel === null
    ? null
    : { ...panelDay(panel, day, place.zone, season).brought_Ah, formula: 'solar.day, the season’s days' };
}

function panelCase(
  { panel_W, tilt, heading, regulator, 'sun-kept': kept }: SunAsked,
  { latitude_deg, longitude_deg }: PowerPlace,
): PanelCase | null {
  if (panel_W === 0) return null;
  return {
    panel: {
      peak_W: panel_W,
      tilt_deg: tilt,
      heading_deg: heading,
      regulator,
      coefficient_pct_C: null,
      leads: null,
    },
    nominal_V: 12,
    place: { latitude_deg, longitude_deg, elevation_m: 0 },
    kept: keptBand(kept),
    air_C: () => assumedAir_C,
  };
}
