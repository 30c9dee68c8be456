import { daysBetween, type Instant, inBase, localAt } from '#units';
import {
  angle,
  assuming,
  choice,
  count,
  day,
  duration,
  type Figure,
  instant,
  length,
  pressure,
  type Question,
  question,
  type Source,
  temperature,
  timeZone,
  type Values,
  type WorkingLine,
} from '#working';
import { cooperDeclination_deg } from './sun-outside-air.ts';
import { assumedDeltaT_s, incidenceAngle, type SunPosition, sunPosition } from './sun-position.ts';
import { type Light, type LightTimes, lightLimits_deg, sunTimes } from './sun-times.ts';

const report: Source = {
  title: 'I. Reda and A. Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302 (2008)',
  seen: 'read second-hand',
};
const almanacs: Source = {
  title: 'definitions of sunrise and the twilights of the US Naval Observatory and the almanacs',
  seen: 'recalled',
};

/** The questions about the sun. A function, so that an app that asks none carries none. */
export function sunQuestions(): readonly Question[] {
  return [sunPositionQuestion(), sunTimesQuestion(), sunOnSlopeQuestion(), lightLimitQuestion(), cooperQuestion()];
}

const placeFields = () => ({
  latitude: angle('°', -90, 90, 'latitude, north positive'),
  longitude: angle('°', -180, 180, 'longitude, east positive'),
});

const sunFields = () => ({
  at: instant('moment to look at the sun'),
  ...placeFields(),
  elevation: assuming(
    length('m', -500, 10_000, 'height above the sea'),
    inBase('length', 0, 'm'),
    '0 m',
    'boats lie at the sea',
  ),
  pressure: assuming(
    pressure('hPa', 300, 1100, 'mean pressure of the air over the year'),
    inBase('pressure', 1013.25, 'hPa'),
    '1013.25 hPa',
    'standard atmosphere at the sea; it bears on refraction only',
  ),
  air: assuming(
    temperature('°C', -60, 60, 'mean temperature of the air over the year'),
    inBase('temperature', 10, '°C'),
    '10 °C',
    'it bears on refraction only',
  ),
  'delta-t': assuming(
    duration('s', -7000, 7000, 'terrestrial time less universal time, ΔT'),
    inBase('duration', assumedDeltaT_s, 's'),
    `${assumedDeltaT_s} s`,
    '100 s of error here move the sun by 0.001°',
  ),
  'horizon-refraction': assuming(
    angle('°', 0, 2, 'refraction at sunrise and sunset'),
    inBase('angle', 0.5667, '°'),
    '0.5667°',
    'the value of the source',
  ),
});

type SunValues = Values<ReturnType<typeof sunFields>>;

const sunOf = (given: SunValues): SunPosition =>
  sunPosition({
    instant: given.at,
    latitude_deg: given.latitude,
    longitude_deg: given.longitude,
    elevation_m: given.elevation,
    pressure_hPa: given.pressure,
    air_C: given.air,
    deltaT_s: given['delta-t'] * 60,
    horizonRefraction_deg: given['horizon-refraction'],
  });

function sunPositionQuestion() {
  return question({
    id: 'sky.sun-position',
    title: 'Where does the sun stand?',
    fields: sunFields(),
    answer: (given) => {
      const sun = sunOf(given);
      return {
        kind: 'found',
        results: [
          { symbol: 'altitude', meaning: 'of the sun’s centre over the level horizon', value: sun.altitude, unit: '°' },
          { symbol: 'azimuth', meaning: 'true, from north, eastward', value: sun.azimuth, unit: '°' },
        ],
        working: sunWorking(sun),
        sources: [report],
        limits: [
          'Refraction is that of average air; near the horizon the real air may bend the light by 0.1° more or less.',
          'Stated accuracy of the source ±0.0003°, years −2000 to 6000.',
        ],
        cautions: ['Never look at the sun through a sextant, glass or camera without its shades.'],
      };
    },
  });
}

/** The way to the sun's place, line by line, in the symbols of the report. */
function sunWorking(sun: SunPosition): WorkingLine[] {
  const line = (symbol: string, meaning: string, value: number, unit: string, formula: string): WorkingLine => ({
    symbol,
    meaning,
    value,
    unit,
    formula,
  });
  return [
    line('JD', 'Julian day', sun.julianDay, 'd', 'days since noon of 1 January 4713 BC'),
    line('JC', 'Julian century', sun.julianCentury, '', '(JD − 2 451 545)/36 525'),
    line('JDE', 'Julian ephemeris day', sun.julianEphemerisDay, 'd', 'JD + ΔT/86 400'),
    line('JCE', 'Julian ephemeris century', sun.julianEphemerisCentury, '', '(JDE − 2 451 545)/36 525'),
    line('JME', 'Julian ephemeris millennium', sun.julianEphemerisMillennium, '', 'JCE/10'),
    line('L', 'heliocentric longitude of the earth', sun.earthLongitude, '°', 'sum of the terms L0–L5'),
    line('B', 'heliocentric latitude of the earth', sun.earthLatitude, '°', 'sum of the terms B0–B1'),
    line('R', 'distance of the sun', sun.earthRadius_au, 'au', 'sum of the terms R0–R4'),
    line('Θ', 'geocentric longitude', sun.geocentricLongitude, '°', 'L + 180°'),
    line('β', 'geocentric latitude', sun.geocentricLatitude, '°', '−B'),
    line('X0', 'mean elongation of the moon', sun.moonElongation, '°', 'cubic in JCE'),
    line('X1', 'mean anomaly of the sun', sun.sunAnomaly, '°', 'cubic in JCE'),
    line('X2', 'mean anomaly of the moon', sun.moonAnomaly, '°', 'cubic in JCE'),
    line('X3', 'argument of latitude of the moon', sun.moonLatitudeArgument, '°', 'cubic in JCE'),
    line('X4', 'ascending node of the moon', sun.moonNode, '°', 'cubic in JCE'),
    line('Δψ', 'nutation in longitude', sun.nutationInLongitude, '°', 'sum of (a + b·JCE)·sin(ΣXᵢYᵢ)'),
    line('Δε', 'nutation in obliquity', sun.nutationInObliquity, '°', 'sum of (c + d·JCE)·cos(ΣXᵢYᵢ)'),
    line('ε0', 'mean obliquity of the ecliptic', sun.meanObliquity_arcsec, '″', 'polynomial in JME/10'),
    line('ε', 'true obliquity of the ecliptic', sun.obliquity, '°', 'ε0/3600 + Δε'),
    line('Δτ', 'aberration', sun.aberration, '°', '−20.4898/(3600·R)'),
    line('λ', 'apparent longitude of the sun', sun.apparentLongitude, '°', 'Θ + Δψ + Δτ'),
    line('ν0', 'mean sidereal time at Greenwich', sun.meanSiderealTime, '°', 'quadratic in JD and JC'),
    line('M', 'mean longitude of the sun', sun.meanLongitude, '°', 'polynomial in JME'),
    line('ν', 'apparent sidereal time at Greenwich', sun.siderealTime, '°', 'ν0 + Δψ·cos ε'),
    line('α', 'right ascension', sun.rightAscension, '°', 'arctan((sin λ·cos ε − tan β·sin ε)/cos λ)'),
    line('δ', 'declination', sun.declination, '°', 'arcsin(sin β·cos ε + cos β·sin ε·sin λ)'),
    line('H', 'hour angle, westward', sun.hourAngle, '°', 'ν + longitude − α'),
    line('ξ', 'equatorial parallax', sun.parallax, '°', '8.794/(3600·R)'),
    line('Δα', 'parallax in right ascension', sun.shiftInRightAscension, '°', 'arctan of the place’s share of ξ'),
    line('α′', 'right ascension from the place', sun.topocentricRightAscension, '°', 'α + Δα'),
    line('δ′', 'declination from the place', sun.topocentricDeclination, '°', 'parallax taken off'),
    line('H′', 'hour angle from the place', sun.topocentricHourAngle, '°', 'H − Δα'),
    line('e0', 'altitude without air', sun.altitudeWithoutAir, '°', 'arcsin(sin φ·sin δ′ + cos φ·cos δ′·cos H′)'),
    line('Δe', 'refraction', sun.refraction, '°', '(P/1010)·(283/(273 + T))·1.02/(60·tan(e0 + 10.3/(e0 + 5.11)))'),
    line('e', 'altitude', sun.altitude, '°', 'e0 + Δe'),
    line('θ', 'zenith angle', sun.zenith, '°', '90° − e'),
    line(
      'Γ',
      'azimuth from south, westward',
      sun.azimuthFromSouth,
      '°',
      'arctan(sin H′/(cos H′·sin φ − tan δ′·cos φ))',
    ),
    line('Φ', 'azimuth from north, eastward', sun.azimuth, '°', 'Γ + 180°'),
    line('E', 'equation of time', sun.equationOfTime_min, 'min', '4·(M − 0.0057183° − α + Δψ·cos ε)'),
  ];
}

function sunTimesQuestion() {
  return question({
    id: 'sky.sun-times',
    title: 'When does the sun rise and set, and how long is the twilight?',
    fields: { day: day('day at the place'), ...placeFields(), zone: timeZone('time zone of the place’s clocks') },
    answer: (given) => {
      const times = sunTimes({
        day: given.day,
        latitude_deg: given.latitude,
        longitude_deg: given.longitude,
        zone: given.zone,
      });
      const clock = (symbol: string, meaning: string, at: Instant): Figure => {
        const local = localAt(at, given.zone);
        const hours = 24 * daysBetween(given.day, local.day) + local.minuteOfDay / 60 + (at % 60_000) / 3_600_000;
        const seconds = String(Math.floor((at % 60_000) / 1000)).padStart(2, '0');
        const other = local.day === given.day ? '' : ` on ${local.day}`;
        return { symbol, meaning, value: hours, unit: 'h', inWords: `${local.clock}:${seconds}${other}` };
      };
      const pair = (comes: string, goes: string, meaning: string, light: LightTimes): Figure[] => [
        ...('from' in light ? [clock(comes, `start of ${meaning}, local clock`, light.from)] : []),
        ...('to' in light ? [clock(goes, `end of ${meaning}, local clock`, light.to)] : []),
      ];
      const noon = clock('noon', 'the sun at its highest, local clock', times.noon);
      const results = [
        ...pair('sunrise', 'sunset', 'sun above the horizon', times.sun),
        noon,
        ...pair('civil dawn', 'civil dusk', 'light to work by', times.civil),
        ...pair('nautical dawn', 'nautical dusk', 'horizon to be seen', times.nautical),
        ...pair('astronomical dawn', 'astronomical dusk', 'any light of the sun', times.astronomical),
      ];
      const shown = {
        working: lightWorking(),
        sources: [report, almanacs],
        limits: [
          'Level horizon at sea level: a hill to the west takes its light away earlier.',
          'Average air; north of 65° N and south of 65° S the times may be minutes out.',
        ],
        cautions: [],
      };
      if (times.sun.kind === 'stays' || times.sun.kind === 'never comes')
        return {
          kind: 'truth',
          statement: times.sun.kind === 'stays' ? 'the sun stays up' : 'the sun does not rise',
          because: `at ${given.latitude}° of latitude on ${given.day} it does not cross the horizon`,
          results,
          ...shown,
        };
      return { kind: 'found', results: results as [Figure, ...Figure[]], ...shown };
    },
  });
}

const lightMeanings: Readonly<Record<Light, string>> = {
  sun: 'sunrise and sunset: 34′ of refraction and 16′ of the sun’s half width',
  civil: 'civil twilight',
  nautical: 'nautical twilight',
  astronomical: 'astronomical twilight',
};

const lightWorking = (): WorkingLine[] =>
  Object.entries(lightLimits_deg).map(([light, limit]) => ({
    symbol: `h0 ${light}`,
    meaning: `altitude of the sun’s centre at ${lightMeanings[light as Light]}`,
    value: limit,
    unit: '°',
    formula: light === 'sun' ? '−(34′ + 16′)' : 'by definition',
  }));

function lightLimitQuestion() {
  return question({
    id: 'sky.light-limit',
    title: 'How high is the sun’s centre when a light begins and ends?',
    fields: {
      light: choice(
        (Object.keys(lightLimits_deg) as Light[]).map((id) => ({ id, title: lightMeanings[id] })),
        'which light',
      ),
    },
    answer: ({ light }) => ({
      kind: 'found',
      results: [{ symbol: 'h0', meaning: lightMeanings[light], value: lightLimits_deg[light], unit: '°' }],
      working: lightWorking().filter((line) => line.symbol === `h0 ${light}`),
      sources: [almanacs],
      limits: ['Without air: refraction is in the definition.'],
      cautions: [],
    }),
  });
}

function sunOnSlopeQuestion() {
  return question({
    id: 'sky.sun-on-slope',
    title: 'How squarely does the sun fall on a sloping surface?',
    fields: {
      ...sunFields(),
      slope: angle('°', 0, 180, 'slope of the surface from level'),
      facing: angle('°', 0, 360, 'the way it looks down its slope, true, from north'),
    },
    answer: (given) => {
      const sun = sunOf(given);
      const incidence = incidenceAngle(sun.zenith, sun.azimuth, given.slope, given.facing);
      return {
        kind: 'found',
        results: [
          {
            symbol: 'I',
            meaning: 'angle between the sun’s rays and square on; over 90° the sun is behind',
            value: incidence,
            unit: '°',
          },
        ],
        working: [
          ...sunWorking(sun),
          {
            symbol: 'cos I',
            meaning: 'share of the direct sun it catches',
            value: Math.cos((incidence * Math.PI) / 180),
            unit: '',
            formula: 'cos θ·cos slope + sin slope·sin θ·cos(Φ − facing)',
          },
        ],
        sources: [report],
        limits: ['Direct sun only: nothing of shade, cloud or light from the sky.'],
        cautions: [],
      };
    },
  });
}

function cooperQuestion() {
  return question({
    id: 'sky.pocket-declination',
    title: 'Roughly how far north is the sun, by the day of the year?',
    fields: { 'day-of-year': count(1, 366, 'day of the year, 1 for 1 January') },
    answer: (given) => ({
      kind: 'found',
      results: [
        {
          symbol: 'δ',
          meaning: 'declination of the sun, by Cooper’s formula',
          value: cooperDeclination_deg(given['day-of-year']),
          unit: '°',
        },
      ],
      working: [
        {
          symbol: 'n',
          meaning: 'day of the year',
          value: given['day-of-year'],
          unit: '',
          formula: 'δ = 23.45°·sin(360°·(284 + n)/365)',
        },
      ],
      sources: [{ title: 'Duffie and Beckman, Solar Engineering of Thermal Processes, chapter 1', seen: 'recalled' }],
      limits: ['Out by up to 1°, most in October: for a sum in the head. sky.sun-position has the true one.'],
      cautions: [],
    }),
  });
}
