import { requireBetween } from './sun-position.ts';

/** Formulas for how much air the sunlight crosses, most trusted first. */
export type AirMassForm = 'Kasten and Young' | 'Pickering' | 'Kasten' | 'flat earth';

/**
 * How much air the sunlight crosses, in amounts of air straight overhead: 1 at the zenith, about 38 at the horizon.
 *
 * @param zenith  of the sun as seen, refraction and all. [°], 0–90
 * @param form    Kasten and Young 1989 unless named. 'flat earth' is 1/cos z: good to 1 % down to 15° of altitude, without end
 *                at the horizon
 * @returns       relative air mass, at sea level
 * @throws RangeError outside the range; 'flat earth' at 90°
 *
 * Source: F. Kasten and A. Young, Applied Optics 28 (1989) 4735–4738, as carried in the handbook (sky.am.ky.*); F. Kasten (1966)
 * and K. Pickering (2002) from memory. Checked in checks/sky, and against light followed through a standard atmosphere.
 */
export function airMass(zenith: number, form: AirMassForm = 'Kasten and Young'): number {
  requireBetween('zenith angle of the sun', zenith, 0, 90, '°');
  const altitude = 90 - zenith;
  const cosine = Math.cos(zenith * radian);
  switch (form) {
    case 'Kasten and Young':
      return 1 / (cosine + 0.50572 * (altitude + 6.07995) ** -1.6364);
    case 'Kasten':
      return 1 / (cosine + 0.15 * (altitude + 3.885) ** -1.253);
    case 'Pickering':
      return 1 / Math.sin((altitude + 244 / (165 + 47 * altitude ** 1.1)) * radian);
    case 'flat earth':
      if (altitude < 0.01) throw new RangeError(`1/cos z has no value at the horizon, got ${zenith}°`);
      return 1 / cosine;
  }
}

/**
 * Air crossed where the air above is thinner than at sea level.
 *
 * @param relative      air mass at sea level
 * @param pressure_hPa  of the air at the place. [hPa], 300–1100
 */
export function airMassAtPressure(relative: number, pressure_hPa: number): number {
  requireBetween('pressure', pressure_hPa, 300, 1100, 'hPa');
  return (relative * pressure_hPa) / seaPressure_hPa;
}

/** Standard atmosphere at sea level. [hPa] */
export const seaPressure_hPa = 1013.25;

/**
 * Mean pressure of the air at a height above the sea.
 *
 * @param elevation_m  [m], −500–10 000
 * @returns            [hPa]
 * Source: ICAO standard atmosphere (Doc 7488), lowest layer, from memory: 15 °C at the sea, 6.5 °C a kilometre.
 */
export function pressureAtHeight_hPa(elevation_m: number): number {
  requireBetween('elevation', elevation_m, -500, 10_000, 'm');
  return seaPressure_hPa * (1 - (0.0065 * elevation_m) / 288.15) ** 5.25588;
}

const radian = Math.PI / 180;
