import { latitudeTerms, longitudeTerms, radiusTerms, type Term } from '../tables/earth-orbit.nrel-2008.ts';
import { nutationTerms } from '../tables/nutation.nrel-2008.ts';

/** Who looks at the sun, from where, through what air. */
export interface SunCase {
  /** [ms since 1970-01-01T00:00Z] */
  readonly instant: number;
  /** north positive. −90–90 */
  readonly latitude_deg: number;
  /** east positive. −180–180 */
  readonly longitude_deg: number;
  /** above the sea. [m], −500–10 000 */
  readonly elevation_m: number;
  /** mean pressure of the air over the year. [hPa], 300–1100 */
  readonly pressure_hPa: number;
  /** mean temperature of the air over the year. [°C], −60–60 */
  readonly air_C: number;
  /** terrestrial time less universal time. [s]; see `assumedDeltaT_s` */
  readonly deltaT_s: number;
  /** refraction at sunrise and sunset. [°]; 0.5667 in the source */
  readonly horizonRefraction_deg: number;
}

/** Where the sun's centre stands as seen from the earth's centre, with the values on the way there. Angles in degrees. */
export interface GeocentricSun {
  readonly julianDay: number;
  readonly julianEphemerisDay: number;
  readonly julianEphemerisCentury: number;
  readonly julianEphemerisMillennium: number;
  readonly julianCentury: number;
  /** earth's heliocentric longitude, latitude; radius in astronomical units */
  readonly earthLongitude: number;
  readonly earthLatitude: number;
  readonly earthRadius_au: number;
  readonly geocentricLongitude: number;
  readonly geocentricLatitude: number;
  readonly moonElongation: number;
  readonly sunAnomaly: number;
  readonly moonAnomaly: number;
  readonly moonLatitudeArgument: number;
  readonly moonNode: number;
  readonly nutationInLongitude: number;
  readonly nutationInObliquity: number;
  readonly meanObliquity_arcsec: number;
  readonly obliquity: number;
  readonly aberration: number;
  readonly apparentLongitude: number;
  readonly meanSiderealTime: number;
  readonly meanLongitude: number;
  /** apparent sidereal time at Greenwich */
  readonly siderealTime: number;
  readonly rightAscension: number;
  readonly declination: number;
  readonly equationOfTime_min: number;
}

/** The same for the place on the surface. Angles in degrees. */
export interface SunPosition extends GeocentricSun {
  /** from the meridian, westward */
  readonly hourAngle: number;
  readonly parallax: number;
  /** by parallax */
  readonly shiftInRightAscension: number;
  readonly topocentricRightAscension: number;
  readonly topocentricDeclination: number;
  readonly topocentricHourAngle: number;
  readonly altitudeWithoutAir: number;
  readonly refraction: number;
  readonly altitude: number;
  readonly zenith: number;
  /** from south, westward. 0–360 */
  readonly azimuthFromSouth: number;
  /** true, from north, eastward. 0–360 */
  readonly azimuth: number;
}

/**
 * Terrestrial time less universal time, taken as 69 s (about its value since 2017).
 *
 * An assumption of ours: 100 s of error move the sun by 0.001° and sunrise by under half a second, so one figure serves
 * for the years this project plans in.
 */
export const assumedDeltaT_s = 69;

/**
 * The sun's centre as seen from the earth's centre.
 *
 * @param instant   [ms since 1970-01-01T00:00Z], years 1900–2199
 * @param deltaT_s  terrestrial time less universal time. [s], −8000–8000
 *
 * Source: Reda & Andreas, Solar Position Algorithm, NREL/TP-560-34302 (2008): ±0.0003°. Checked in checks/sky.
 */
export function geocentricSun(instant: number, deltaT_s: number): GeocentricSun {
  if (!Number.isFinite(instant)) throw new RangeError(`an instant is a number of milliseconds, got ${instant}`);
  requireBetween('ΔT', deltaT_s, -8000, 8000, 's');
  const julianDay = instant / 86_400_000 + 2440587.5;
  const julianEphemerisDay = julianDay + deltaT_s / 86_400;
  const century = (julianDay - 2451545) / 36525;
  const T = (julianEphemerisDay - 2451545) / 36525;
  const millennium = T / 10;

  const earthLongitude = turn((series(longitudeTerms, millennium) / 1e8) * degree);
  const earthLatitude = (series(latitudeTerms, millennium) / 1e8) * degree;
  const earthRadius_au = series(radiusTerms, millennium) / 1e8;
  const geocentricLongitude = turn(earthLongitude + 180);
  const geocentricLatitude = -earthLatitude;

  const moonElongation = polynomial(T, [297.85036, 445267.11148, -0.0019142, 1 / 189474]);
  const sunAnomaly = polynomial(T, [357.52772, 35999.05034, -0.0001603, -1 / 300000]);
  const moonAnomaly = polynomial(T, [134.96298, 477198.867398, 0.0086972, 1 / 56250]);
  const moonLatitudeArgument = polynomial(T, [93.27191, 483202.017538, -0.0036825, 1 / 327270]);
  const moonNode = polynomial(T, [125.04452, -1934.136261, 0.0020708, 1 / 450000]);

  let inLongitude = 0;
  let inObliquity = 0;
  for (const [x0, x1, x2, x3, x4, a, b, c, d] of nutationTerms) {
    const argument =
      x0 * moonElongation + x1 * sunAnomaly + x2 * moonAnomaly + x3 * moonLatitudeArgument + x4 * moonNode;
    inLongitude += (a + b * T) * sin(argument);
    inObliquity += (c + d * T) * cos(argument);
  }
  const nutationInLongitude = inLongitude / 36e6;
  const nutationInObliquity = inObliquity / 36e6;
  const meanObliquity_arcsec = polynomial(
    millennium / 10,
    [84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67, -39.05, 7.12, 27.87, 5.79, 2.45],
  );
  const obliquity = meanObliquity_arcsec / 3600 + nutationInObliquity;
  const aberration = -20.4898 / (3600 * earthRadius_au);
  const apparentLongitude = geocentricLongitude + nutationInLongitude + aberration;

  const meanSiderealTime = turn(
    280.46061837 + 360.98564736629 * (julianDay - 2451545) + century ** 2 * (0.000387933 - century / 38710000),
  );
  const siderealTime = meanSiderealTime + nutationInLongitude * cos(obliquity);
  const rightAscension = turn(
    arctan(sin(apparentLongitude) * cos(obliquity) - tan(geocentricLatitude) * sin(obliquity), cos(apparentLongitude)),
  );
  const declination = arcsin(
    sin(geocentricLatitude) * cos(obliquity) + cos(geocentricLatitude) * sin(obliquity) * sin(apparentLongitude),
  );
  const meanLongitude = polynomial(millennium, [
    280.4664567,
    360007.6982779,
    0.03032028,
    1 / 49931,
    -1 / 15300,
    -1 / 2000000,
  ]);
  const equationOfTime_min =
    4 * halfTurn(meanLongitude - 0.0057183 - rightAscension + nutationInLongitude * cos(obliquity));

  return {
    julianDay,
    julianEphemerisDay,
    julianEphemerisCentury: T,
    julianEphemerisMillennium: millennium,
    julianCentury: century,
    earthLongitude,
    earthLatitude,
    earthRadius_au,
    geocentricLongitude,
    geocentricLatitude,
    moonElongation,
    sunAnomaly,
    moonAnomaly,
    moonLatitudeArgument,
    moonNode,
    nutationInLongitude,
    nutationInObliquity,
    meanObliquity_arcsec,
    obliquity,
    aberration,
    apparentLongitude,
    meanSiderealTime,
    meanLongitude: turn(meanLongitude),
    siderealTime,
    rightAscension,
    declination,
    equationOfTime_min,
  };
}

/**
 * Where the sun stands in the sky of a place: altitude over the level horizon and true azimuth, with every value on
 * the way.
 *
 * Refraction is that of average air for the pressure and temperature given, and is left out where the whole sun is
 * below the horizon; close to the horizon the real air may bend it by 0.1° more or less.
 *
 * @throws RangeError when a value is outside its range; the message gives value, range and unit
 *
 * Source: Reda & Andreas, Solar Position Algorithm, NREL/TP-560-34302 (2008). Checked in checks/sky.
 */
export function sunPosition(sun: SunCase): SunPosition {
  const { latitude_deg, longitude_deg, elevation_m, pressure_hPa, air_C, horizonRefraction_deg } = sun;
  requirePlace(latitude_deg, longitude_deg);
  requireBetween('elevation', elevation_m, -500, 10_000, 'm');
  requireBetween('pressure', pressure_hPa, 300, 1100, 'hPa');
  requireBetween('air temperature', air_C, -60, 60, '°C');
  requireBetween('refraction at the horizon', horizonRefraction_deg, 0, 2, '°');
  const geocentric = geocentricSun(sun.instant, sun.deltaT_s);
  const { siderealTime, rightAscension, declination, earthRadius_au } = geocentric;

  const hourAngle = turn(siderealTime + longitude_deg - rightAscension);
  const parallax = 8.794 / (3600 * earthRadius_au);
  // distance from the earth's axis and from the equator's plane, in equatorial radii (flattened earth)
  const flattened = 0.99664719;
  const reduced = Math.atan(flattened * tan(latitude_deg)) * degree;
  const fromAxis = cos(reduced) + (elevation_m / 6378140) * cos(latitude_deg);
  const fromEquator = flattened * sin(reduced) + (elevation_m / 6378140) * sin(latitude_deg);

  const toAxis = cos(declination) - fromAxis * sin(parallax) * cos(hourAngle);
  const inRightAscension = arctan(-fromAxis * sin(parallax) * sin(hourAngle), toAxis);
  const topocentricDeclination = arctan(
    (sin(declination) - fromEquator * sin(parallax)) * cos(inRightAscension),
    toAxis,
  );
  const topocentricHourAngle = hourAngle - inRightAscension;

  const altitudeWithoutAir = arcsin(
    sin(latitude_deg) * sin(topocentricDeclination) +
      cos(latitude_deg) * cos(topocentricDeclination) * cos(topocentricHourAngle),
  );
  const refraction = refractionOf(altitudeWithoutAir, pressure_hPa, air_C, horizonRefraction_deg);
  const altitude = altitudeWithoutAir + refraction;
  const azimuthFromSouth = turn(
    arctan(
      sin(topocentricHourAngle),
      cos(topocentricHourAngle) * sin(latitude_deg) - tan(topocentricDeclination) * cos(latitude_deg),
    ),
  );
  return {
    ...geocentric,
    hourAngle,
    parallax,
    shiftInRightAscension: inRightAscension,
    topocentricRightAscension: rightAscension + inRightAscension,
    topocentricDeclination,
    topocentricHourAngle,
    altitudeWithoutAir,
    refraction,
    altitude,
    zenith: 90 - altitude,
    azimuthFromSouth,
    azimuth: turn(azimuthFromSouth + 180),
  };
}

/**
 * How much higher average air makes the sun seem. [°]; 0 where the whole sun is below the horizon
 *
 * @param altitudeWithoutAir  [°], −90–90
 * Source: the same report, §3.14.2.
 */
export function refractionOf(
  altitudeWithoutAir: number,
  pressure_hPa: number,
  air_C: number,
  horizonRefraction_deg: number,
): number {
  const sunHalfWidth_deg = 0.26667;
  return altitudeWithoutAir < -(sunHalfWidth_deg + horizonRefraction_deg)
    ? 0
    : ((pressure_hPa / 1010) * (283 / (273 + air_C)) * 1.02) /
        (60 * tan(altitudeWithoutAir + 10.3 / (altitudeWithoutAir + 5.11)));
}

/**
 * Angle between the sun's rays and the perpendicular of a sloping surface: 0 when it faces the sun square on, over 90
 * when the sun is behind it. [°]
 *
 * @param zenith   of the sun. [°]
 * @param azimuth  of the sun, true, from north. [°]
 * @param slope    of the surface from level. [°], 0–180
 * @param facing   the way the surface looks down its slope, true, from north. [°]
 *
 * Source: Reda & Andreas, NREL/TP-560-34302 (2008), §3.16 of the report, angle between two directions.
 */
export function incidenceAngle(zenith: number, azimuth: number, slope: number, facing: number): number {
  requireBetween('slope', slope, 0, 180, '°');
  return arccos(cos(zenith) * cos(slope) + sin(slope) * sin(zenith) * cos(azimuth - facing));
}

/** @throws RangeError when a place is not on the globe */
export function requirePlace(latitude_deg: number, longitude_deg: number): void {
  requireBetween('latitude', latitude_deg, -90, 90, '°');
  requireBetween('longitude', longitude_deg, -180, 180, '°');
}

export function requireBetween(name: string, value: number, low: number, high: number, unit: string): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${name} must be ${low} to ${high} ${unit}, got ${value}`);
}

const degree = 180 / Math.PI;
const sin = (deg: number) => Math.sin(deg / degree);
const cos = (deg: number) => Math.cos(deg / degree);
const tan = (deg: number) => Math.tan(deg / degree);
const arcsin = (x: number) => Math.asin(Math.max(-1, Math.min(1, x))) * degree;
const arccos = (x: number) => Math.acos(Math.max(-1, Math.min(1, x))) * degree;
const arctan = (y: number, x: number) => Math.atan2(y, x) * degree;
/** The same direction from 0 up to 360. */
const turn = (deg: number) => ((deg % 360) + 360) % 360;
/** The same direction from −180 up to 180. */
const halfTurn = (deg: number) => turn(deg + 180) - 180;

function polynomial(x: number, coefficients: readonly number[]): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) sum = sum * x + coefficients[power]!;
  return sum;
}

function series(powers: readonly (readonly Term[])[], millennium: number): number {
  return polynomial(
    millennium,
    powers.map((terms) => {
      let sum = 0;
      for (const [amplitude, phase, frequency] of terms) sum += amplitude * Math.cos(phase + frequency * millennium);
      return sum;
    }),
  );
}
