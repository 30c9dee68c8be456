import { inBase } from '#units';
import {
  angle,
  assuming,
  choice,
  count,
  type Field,
  number,
  pressure,
  type Question,
  question,
  type Source,
} from '#working';
import { type AirMassForm, airMass, airMassAtPressure, seaPressure_hPa } from './air-mass.ts';
import {
  cooperDeclination_deg,
  levelOutsideAir_MJ_m2,
  nearnessOfSun,
  solarConstant_W_m2,
  sunsetHourAngle,
} from './sun-outside-air.ts';
import { incidenceAngle } from './sun-position.ts';

/** The questions about the sun outside the air, its place by a sum in the head, and how much air its light crosses. */
export function sunlightQuestions(): readonly Question[] {
  return [outsideAirQuestion(), dayOutsideAirQuestion(), pocketSunQuestion(), airMassQuestion()];
}

const textbook: Source = {
  title: 'Duffie and Beckman, Solar Engineering of Thermal Processes, chapters 1 and 2',
  seen: 'recalled',
};
const spencer: Source = {
  title: 'J. Spencer, Fourier series representation of the position of the sun (1971)',
  seen: 'recalled',
};
const constantSource: Source = {
  title: `sun outside the air ${solarConstant_W_m2} W/m²: G. Kopp and J. Lean (2011)`,
  seen: 'recalled',
};

const dayOfYearField = () => count(1, 366, 'day of the year, 1 for 1 January');
const constantField = () =>
  assuming(
    number('W/m²', 1300, 1400, 'sun outside the air at its mean distance, on a surface square to it'),
    solarConstant_W_m2,
    `${solarConstant_W_m2} W/m²`,
    'as satellites measure it; older books have 1367',
  );

function outsideAirQuestion() {
  return question({
    id: 'sky.outside-air',
    title: 'How strong is the sun outside the air?',
    fields: {
      'day-of-year': dayOfYearField(),
      constant: constantField(),
      form: assuming(
        choice(
          [
            { id: 'Spencer', title: spencer.title },
            { id: 'Duffie and Beckman', title: `one cosine, as in ${textbook.title}` },
          ],
          'by whose formula the sun is nearer in January',
        ) as Field<'Spencer' | 'Duffie and Beckman'>,
        'Spencer',
        'Spencer',
        'the two differ by less than 0.4 %',
      ),
    },
    answer: ({ 'day-of-year': day, constant, form }) => {
      const nearness = nearnessOfSun(day, form);
      return {
        kind: 'found',
        results: [
          { symbol: 'E0', meaning: 'on a surface square to the sun', value: constant * nearness, unit: 'W/m²' },
        ],
        working: [
          {
            symbol: 'near',
            meaning: 'how much stronger than in the mean, for being nearer',
            value: nearness,
            unit: '',
            formula:
              form === 'Spencer'
                ? '1.00011 + 0.034221·cos x + 0.00128·sin x + 0.000719·cos 2x + 0.000077·sin 2x, x = 360°·(n − 1)/365'
                : '1 + 0.033·cos(360°·n/365)',
          },
          {
            symbol: 'constant',
            meaning: 'at the mean distance',
            value: constant,
            unit: 'W/m²',
            formula: 'E0 = constant·near',
          },
        ],
        sources: [form === 'Spencer' ? spencer : textbook, constantSource],
        limits: ['By the day of the year: leap years shift it by a quarter of a day, under 0.02 %.'],
        cautions: [],
      };
    },
  });
}

function dayOutsideAirQuestion() {
  return question({
    id: 'sky.day-outside-air',
    title: 'How much sun would a level surface get with no air above?',
    fields: {
      'day-of-year': dayOfYearField(),
      latitude: angle('°', -90, 90, 'latitude, north positive'),
      from: assuming(
        angle('°', -180, 180, 'hour angle it starts at, morning negative, 15° an hour'),
        inBase('angle', -180, '°'),
        '−180°',
        'the whole day',
      ),
      to: assuming(angle('°', -180, 180, 'hour angle it ends at'), inBase('angle', 180, '°'), '180°', 'the whole day'),
      constant: constantField(),
    },
    conflict: ({ from, to }) =>
      from > to
        ? { where: 'from, to', wrong: `it starts at ${from}° and ends at ${to}°`, right: 'give an end after the start' }
        : null,
    answer: ({ 'day-of-year': day, latitude, from, to, constant }) => {
      const declination_deg = cooperDeclination_deg(day);
      const outside_W_m2 = constant * nearnessOfSun(day, 'Duffie and Beckman');
      const sunset = sunsetHourAngle(latitude, declination_deg);
      const MJ = levelOutsideAir_MJ_m2({
        latitude_deg: latitude,
        declination_deg,
        outside_W_m2,
        from_deg: from,
        to_deg: to,
      });
      return {
        kind: 'found',
        results: [
          { symbol: 'H0', meaning: 'on a level square metre', value: MJ, unit: 'MJ/m²' },
          { symbol: 'H0 in kWh', meaning: 'the same', value: MJ / 3.6, unit: 'kWh/m²' },
        ],
        working: [
          {
            symbol: 'δ',
            meaning: 'declination of the sun',
            value: declination_deg,
            unit: '°',
            formula: '23.45°·sin(360°·(284 + n)/365)',
          },
          {
            symbol: 'E0',
            meaning: 'on a surface square to the sun',
            value: outside_W_m2,
            unit: 'W/m²',
            formula: 'constant·(1 + 0.033·cos(360°·n/365))',
          },
          {
            symbol: 'ωs',
            meaning: 'hour angle of sunset without air; 0 in polar night, 180° where the sun stays up',
            value: sunset,
            unit: '°',
            formula: 'arccos(−tan φ·tan δ)',
          },
          {
            symbol: 'sum',
            meaning: 'sine of the sun’s altitude, summed from start to end between sunrise and sunset',
            value: (MJ * 1e6) / outside_W_m2,
            unit: 's',
            formula: '(86 400/2π)·[sin φ·sin δ·(ω2 − ω1) + cos φ·cos δ·(sin ω2 − sin ω1)]',
          },
        ],
        sources: [textbook, constantSource],
        limits: ['Cooper’s declination is out by up to 1°, in October: 3 % of the day at 43° of latitude, 6 % at 55°.'],
        cautions: [],
      };
    },
  });
}

function pocketSunQuestion() {
  return question({
    id: 'sky.pocket-sun',
    title: 'Roughly where does the sun stand, by the day of the year and the hours from noon?',
    fields: {
      'day-of-year': dayOfYearField(),
      latitude: angle('°', -90, 90, 'latitude, north positive'),
      'hour-angle': angle('°', -180, 180, 'hours from the sun’s noon at 15° each, morning negative'),
      slope: assuming(
        angle('°', 0, 180, 'slope of a surface from level'),
        inBase('angle', 0, '°'),
        '0°',
        'a level surface',
      ),
      facing: assuming(
        angle('°', -180, 360, 'the way it looks down its slope, true, from north'),
        inBase('angle', 180, '°'),
        '180°',
        'south; it does not matter on the level',
      ),
    },
    answer: ({ 'day-of-year': day, latitude, 'hour-angle': hour, slope, facing }) => {
      const declination = cooperDeclination_deg(day);
      const up = sine(latitude) * sine(declination) + cosine(latitude) * cosine(declination) * cosine(hour);
      const zenith = Math.acos(Math.max(-1, Math.min(1, up))) / radian;
      const fromSouth =
        Math.atan2(
          sine(hour) * cosine(declination),
          cosine(hour) * sine(latitude) * cosine(declination) - sine(declination) * cosine(latitude),
        ) / radian;
      return {
        kind: 'found',
        results: [
          { symbol: 'θz', meaning: 'zenith angle; over 90° the sun is down', value: zenith, unit: '°' },
          { symbol: 'γ', meaning: 'azimuth from south, morning negative', value: fromSouth, unit: '°' },
          {
            symbol: 'θ',
            meaning: 'between the sun’s rays and square on the surface',
            value: incidenceAngle(zenith, fromSouth + 180, slope, facing),
            unit: '°',
          },
        ],
        working: [
          {
            symbol: 'δ',
            meaning: 'declination of the sun',
            value: declination,
            unit: '°',
            formula: '23.45°·sin(360°·(284 + n)/365)',
          },
          {
            symbol: 'cos θz',
            meaning: 'sine of the altitude',
            value: up,
            unit: '',
            formula: 'sin φ·sin δ + cos φ·cos δ·cos ω',
          },
          {
            symbol: 'tan γ',
            meaning: 'azimuth',
            value: Math.tan(fromSouth * radian),
            unit: '',
            formula: 'sin ω·cos δ/(cos ω·sin φ·cos δ − sin δ·cos φ)',
          },
          {
            symbol: 'cos θ',
            meaning: 'share of the direct sun the surface catches',
            value: cosine(incidenceAngle(zenith, fromSouth + 180, slope, facing)),
            unit: '',
            formula: 'cos θz·cos slope + sin slope·sin θz·cos(γ + 180° − facing)',
          },
        ],
        sources: [textbook],
        limits: ['No refraction; out by up to a degree, most in October. sky.sun-position has the true place.'],
        cautions: ['Never look at the sun through a sextant, glass or camera without its shades.'],
      };
    },
  });
}

const airMassSources: Readonly<Record<AirMassForm, Source>> = {
  'Kasten and Young': {
    title: 'F. Kasten and A. Young, Applied Optics 28 (1989) 4735–4738',
    seen: 'read second-hand',
  },
  Pickering: { title: 'K. Pickering, DIO 12 (2002)', seen: 'recalled' },
  Kasten: { title: 'F. Kasten (1966)', seen: 'recalled' },
  'flat earth': { title: 'air in level layers: 1/cos z', seen: 'our derivation' },
};
const airMassFormulas: Readonly<Record<AirMassForm, string>> = {
  'Kasten and Young': '1/(cos z + 0.50572·(96.07995 − z)^−1.6364)',
  Pickering: '1/sin(h + 244/(165 + 47·h^1.1))',
  Kasten: '1/(cos z + 0.15·(93.885 − z)^−1.253)',
  'flat earth': '1/cos z',
};

function airMassQuestion() {
  return question({
    id: 'sky.air-mass',
    title: 'How much air does the sunlight cross?',
    fields: {
      zenith: angle('°', 0, 90, 'zenith angle of the sun as seen: 90° less its altitude'),
      pressure: assuming(
        pressure('hPa', 300, 1100, 'pressure of the air at the place'),
        inBase('pressure', seaPressure_hPa, 'hPa'),
        `${seaPressure_hPa} hPa`,
        'standard atmosphere at the sea',
      ),
      form: assuming(
        choice(
          (Object.keys(airMassSources) as AirMassForm[]).map((id) => ({ id, title: airMassSources[id].title })),
          'by whose formula',
        ),
        'Kasten and Young',
        'Kasten and Young',
        'the one most used; they part only under 5° of altitude',
      ),
    },
    conflict: ({ zenith, form }) =>
      form === 'flat earth' && zenith > 89.99
        ? {
            where: 'zenith, form',
            wrong: 'level layers of air have no end towards the horizon',
            right: 'give a zenith angle up to 89.99° or another formula',
          }
        : null,
    answer: ({ zenith, pressure: air, form }) => {
      const relative = airMass(zenith, form);
      return {
        kind: 'found',
        results: [
          { symbol: 'AM', meaning: 'in amounts of air straight overhead, at the sea', value: relative, unit: '' },
          {
            symbol: 'AMp',
            meaning: 'the same for the pressure of the place',
            value: airMassAtPressure(relative, air),
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'z',
            meaning: 'zenith angle',
            value: zenith,
            unit: '°',
            formula: `AM = ${airMassFormulas[form]}`,
          },
          {
            symbol: 'p/p0',
            meaning: 'share of the sea’s air left above',
            value: air / seaPressure_hPa,
            unit: '',
            formula: `p/${seaPressure_hPa}; AMp = AM·p/p0`,
          },
        ],
        sources: [airMassSources[form]],
        limits: ['Average air; within a degree of the horizon the real air may make it a tenth more or less.'],
        cautions: [],
      };
    },
  });
}

const radian = Math.PI / 180;
const sine = (deg: number) => Math.sin(deg * radian);
const cosine = (deg: number) => Math.cos(deg * radian);
