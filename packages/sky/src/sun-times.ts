import { type Instant, instantAt, type Span } from '#units';
import { assumedDeltaT_s, geocentricSun, requirePlace } from './sun-position.ts';

/**
 * Altitude of the sun's centre, without air, at which each kind of light begins and ends. [°]
 *
 * Sunrise and sunset: the upper edge on a level horizon, 34′ of refraction and 16′ of half width. The twilights: the
 * usual definitions of almanacs. Source: sky.def.* of the handbook, definitions of the US Naval Observatory.
 */
export const lightLimits_deg = {
  sun: -(34 + 16) / 60,
  civil: -6,
  nautical: -12,
  astronomical: -18,
} as const;

/** The sun's edge, or a twilight. */
export type Light = keyof typeof lightLimits_deg;

/** When a light comes and goes between one solar midnight and the next. */
export type LightTimes =
  | { readonly kind: 'comes and goes'; readonly from: Instant; readonly to: Instant }
  /** it was there at the solar midnight before, and goes */
  | { readonly kind: 'only goes'; readonly to: Instant }
  /** it comes, and is still there at the solar midnight after */
  | { readonly kind: 'only comes'; readonly from: Instant }
  | { readonly kind: 'stays' }
  | { readonly kind: 'never comes' };

export interface SunTimes {
  /** the sun is due south or north, at its highest (within a minute) */
  readonly noon: Instant;
  /** above the horizon */
  readonly sun: LightTimes;
  readonly civil: LightTimes;
  readonly nautical: LightTimes;
  readonly astronomical: LightTimes;
}

export interface PlaceDay {
  /** YYYY-MM-DD at the place */
  readonly day: string;
  /** north positive. −90–90 */
  readonly latitude_deg: number;
  /** east positive. −180–180 */
  readonly longitude_deg: number;
  /** IANA zone of the place's clocks: the noon nearest to their 12:00 is taken. Without it, the noon nearest to 12:00 of the local mean sun. */
  readonly zone?: string;
}

const hour = 3_600_000;
/** a solar half day, near enough to look for its midnights. [ms] */
const halfDay = 12 * hour;

/**
 * Sunrise, sunset and the twilights of one day at one place, for a level horizon at sea level.
 *
 * Times are good to some seconds from 65° south to 65° north. Nearer the poles the sun crosses the horizon at a slant, and
 * the real air can move a time by minutes. Hills are not known here.
 *
 * @throws RangeError for a place off the globe, or a day or zone that is not one
 *
 * Source: sun's place after Reda & Andreas, NREL/TP-560-34302 (2008); search by ourselves. Checked in checks/sky.
 */
export function sunTimes({ day, latitude_deg, longitude_deg, zone }: PlaceDay): SunTimes {
  requirePlace(latitude_deg, longitude_deg);
  const about =
    zone === undefined ? instantAt(day, '12:00', 'UTC') - longitude_deg * 240_000 : instantAt(day, '12:00', zone);
  return timesAbout(about, latitude_deg, longitude_deg);
}

/**
 * The spans in which a light is there, in order, within [from, to).
 *
 * @param light  'sun' for sunrise to sunset, 'civil' for the light one can work by
 */
export function lightSpans(
  { latitude_deg, longitude_deg }: Omit<PlaceDay, 'day' | 'zone'>,
  light: Light,
  { start, end }: Span,
): Span[] {
  requirePlace(latitude_deg, longitude_deg);
  const spans: Span[] = [];
  const add = (from: Instant, to: Instant) => {
    const last = spans.at(-1);
    const begins = Math.max(start, from);
    const ends = Math.min(end, to);
    if (begins >= ends) return;
    if (last && begins - last.end < 1000) spans[spans.length - 1] = { start: last.start, end: ends };
    else spans.push({ start: begins, end: ends });
  };
  let about = Math.floor(start / (24 * hour)) * 24 * hour + halfDay - longitude_deg * 240_000 - 24 * hour;
  let before = midnightBefore(about, longitude_deg);
  while (before < end) {
    const sky = skyAbout(about, longitude_deg);
    const times = lightTimes(sky, latitude_deg, lightLimits_deg[light]);
    const after = sky.midnightAfter;
    if (times.kind === 'comes and goes') add(times.from, times.to);
    else if (times.kind === 'only goes') add(before, times.to);
    else if (times.kind === 'only comes') add(times.from, after);
    else if (times.kind === 'stays') add(before, after);
    before = after;
    about += 24 * hour;
  }
  return spans;
}

function timesAbout(about: Instant, latitude_deg: number, longitude_deg: number): SunTimes {
  const first = skyAbout(about, longitude_deg);
  // a zone's clocks may run hours off the sun: look again about the noon found
  const sky = Math.abs(first.noon - about) > hour ? skyAbout(first.noon, longitude_deg) : first;
  const times = (light: Light) => lightTimes(sky, latitude_deg, lightLimits_deg[light]);
  return {
    noon: Math.round(sky.noon),
    sun: times('sun'),
    civil: times('civil'),
    nautical: times('nautical'),
    astronomical: times('astronomical'),
  };
}

/** The sun through one solar day over one meridian. */
interface DaySky {
  readonly midnightBefore: Instant;
  readonly noon: Instant;
  readonly midnightAfter: Instant;
  /** [°] */
  readonly declination: (instant: Instant) => number;
  /** from the meridian, westward, −360–360 through the day. [°] */
  readonly hourAngle: (instant: Instant) => number;
}

function skyAbout(about: Instant, longitude_deg: number): DaySky {
  // The sun's own place changes slowly: three exact places a half day apart, and a parabola between them (< 0.1″).
  const at = [-16, 0, 16].map((h) => about + h * hour);
  const suns = at.map((instant) => geocentricSun(instant, assumedDeltaT_s));
  const declinations = suns.map((sun) => sun.declination);
  const hourAngles = suns.map((sun, i) => {
    const angle = sun.siderealTime + longitude_deg - sun.rightAscension;
    const expected = ((at[i]! - about) / hour) * 15;
    return expected + halfTurn(angle - expected);
  });
  const parabola = (values: readonly number[]) => (instant: Instant) => {
    const x = (instant - about) / (16 * hour);
    const [a, b, c] = values as [number, number, number];
    return b + (x * (c - a)) / 2 + (x * x * (a - 2 * b + c)) / 2;
  };
  const hourAngle = parabola(hourAngles);
  const when = (angle: number) => {
    let instant = about + (angle / 15) * hour;
    for (let i = 0; i < 4; i++) instant -= ((hourAngle(instant) - angle) / 15) * hour;
    return instant;
  };
  return {
    midnightBefore: when(-180),
    noon: when(0),
    midnightAfter: when(180),
    declination: parabola(declinations),
    hourAngle,
  };
}

const midnightBefore = (about: Instant, longitude_deg: number) => skyAbout(about, longitude_deg).midnightBefore;

function lightTimes(sky: DaySky, latitude_deg: number, limit_deg: number): LightTimes {
  const sinLatitude = Math.sin(latitude_deg / degree);
  const cosLatitude = Math.cos(latitude_deg / degree);
  const sinLimit = Math.sin(limit_deg / degree);
  const above = (instant: Instant) => {
    const declination = sky.declination(instant) / degree;
    return (
      sinLatitude * Math.sin(declination) +
      cosLatitude * Math.cos(declination) * Math.cos(sky.hourAngle(instant) / degree) -
      sinLimit
    );
  };
  const comes = crossing(above, sky.midnightBefore, sky.noon, 1);
  const goes = crossing(above, sky.noon, sky.midnightAfter, -1);
  if (comes !== null && goes !== null) return { kind: 'comes and goes', from: Math.round(comes), to: Math.round(goes) };
  if (goes !== null) return { kind: 'only goes', to: Math.round(goes) };
  if (comes !== null) return { kind: 'only comes', from: Math.round(comes) };
  return { kind: above(sky.noon) > 0 ? 'stays' : 'never comes' };
}

/** Where a function that rises (sense 1) or falls (sense −1) once from `low` to `high` passes 0, or null. To 0.05 s. */
function crossing(above: (instant: Instant) => number, low: Instant, high: Instant, sense: 1 | -1): number | null {
  if (sense * above(low) >= 0 || sense * above(high) <= 0) return null;
  let before = low;
  let after = high;
  while (after - before > 50) {
    const middle = (before + after) / 2;
    if (sense * above(middle) < 0) before = middle;
    else after = middle;
  }
  return (before + after) / 2;
}

const degree = 180 / Math.PI;
const halfTurn = (deg: number) => ((((deg + 180) % 360) + 360) % 360) - 180;
