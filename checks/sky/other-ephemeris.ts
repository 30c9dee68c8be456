import { Body, Equator, Horizon, Observer, SearchAltitude, SearchRiseSet } from 'astronomy-engine';
import { assumedDeltaT_s, type LightTimes, sunPosition, sunTimes } from '#sky';
import { addDays } from '#units';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

const against = 'astronomy-engine 2.1.19, an independent ephemeris (good to 1′ by its own account)';

/** The sun of a year of random places, one a day, beside another program's. */
export function otherEphemeris(seed: number, days: number): OtherCheck[] {
  const random = seeded(seed);
  const altitudes: number[] = [];
  const azimuths: number[] = [];
  const crossings: number[] = [];
  const twilights: number[] = [];
  const stays: number[] = [];
  for (let n = 0; n < days; n++) {
    const latitude_deg = -89 + 178 * random();
    const longitude_deg = -180 + 360 * random();
    const day = addDays('2026-01-01', n);
    const instant = Date.parse(`${day}T00:00Z`) + Math.floor(random() * 86_400_000);
    const observer = new Observer(latitude_deg, longitude_deg, 0);

    const ours = sunPosition({
      instant,
      latitude_deg,
      longitude_deg,
      elevation_m: 0,
      pressure_hPa: 1010,
      air_C: 10,
      deltaT_s: assumedDeltaT_s,
      horizonRefraction_deg: 0.5667,
    });
    const place = Equator(Body.Sun, new Date(instant), observer, true, true);
    const theirs = Horizon(new Date(instant), observer, place.ra, place.dec);
    altitudes.push(ours.altitudeWithoutAir - theirs.altitude);
    const turned = ((ours.azimuth - theirs.azimuth + 540) % 360) - 180;
    // sideways on the sky: near the zenith an azimuth means little
    azimuths.push(turned * Math.cos((ours.altitudeWithoutAir * Math.PI) / 180));

    const times = sunTimes({ day, latitude_deg, longitude_deg });
    const before = new Date(times.noon - 12.5 * 3_600_000);
    const noon = new Date(times.noon);
    if (Math.abs(latitude_deg) <= 60) {
      const rise = SearchRiseSet(Body.Sun, observer, 1, before, 1)?.date.getTime() ?? Number.NaN;
      const set = SearchRiseSet(Body.Sun, observer, -1, noon, 1)?.date.getTime() ?? Number.NaN;
      crossings.push((from(times.sun) - rise) / 1000, (to(times.sun) - set) / 1000);
    } else {
      const rises = SearchRiseSet(Body.Sun, observer, 1, before, 0.52) !== null;
      const ourRise = times.sun.kind === 'comes and goes' || times.sun.kind === 'only comes';
      stays.push(rises === ourRise ? 0 : 1);
    }
    if (Math.abs(latitude_deg) <= 45) {
      const dawn = SearchAltitude(Body.Sun, observer, 1, before, 1, -6)?.date.getTime() ?? Number.NaN;
      const dusk = SearchAltitude(Body.Sun, observer, -1, noon, 1, -6)?.date.getTime() ?? Number.NaN;
      twilights.push((from(times.civil) - dawn) / 1000, (to(times.civil) - dusk) / 1000);
    }
  }
  const stated = { subject: 'sky', kind: 'another program', against } as const;
  return [
    errorsOf(
      {
        ...stated,
        what: 'altitude of the sun without air',
        unit: '°',
        allowed: 0.002,
        why: 'both shorten the series of the earth’s path; well inside the 1′ the other states',
      },
      altitudes,
    ),
    errorsOf(
      {
        ...stated,
        what: 'azimuth of the sun, measured on the sky',
        unit: '°',
        allowed: 0.002,
        why: 'as for the altitude',
      },
      azimuths,
    ),
    errorsOf(
      {
        ...stated,
        what: 'sunrise and sunset within 60° of the equator',
        unit: 's',
        allowed: 10,
        why: 'the other takes the sun’s true half width of the day (15.7′ to 16.3′), almanacs 16′',
      },
      crossings,
    ),
    errorsOf(
      {
        ...stated,
        what: 'civil dawn and dusk within 45° of the equator',
        unit: 's',
        allowed: 2,
        why: 'the other looks from the surface (parallax, 9″), almanacs from the centre',
      },
      twilights,
    ),
    errorsOf(
      {
        ...stated,
        what: 'whether the sun rises at all, beyond 60°',
        unit: 'days that differ',
        allowed: 1,
        why: 'on the edge of midnight sun or polar night the half width decides',
      },
      stays.length > 0 ? [stays.reduce((sum, one) => sum + one, 0)] : [],
    ),
  ].map((check) => (check.unit === 'days that differ' ? { ...check, compared: stays.length } : check));
}

const from = (light: LightTimes) => ('from' in light ? light.from : Number.NaN);
const to = (light: LightTimes) => ('to' in light ? light.to : Number.NaN);
