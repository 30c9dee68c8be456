import { inUnit, localAt, type Span } from '#units';
import {
  angle,
  assuming,
  choice,
  duration,
  type Field,
  type Figure,
  humidity,
  instant,
  type Question,
  question,
  type Source,
  series,
  speed,
  temperature,
  temperatureDifference,
  timeZone,
} from '#working';
import { dewPoint_C, humidity_pct, type MagnusForm, magnusForms, saturationPressure_hPa } from './dew-point.ts';
import { suitableSpans } from './suitable-spans.ts';
import type { Conditions, WeatherHour } from './weather-hour.ts';

/** The questions about damp air and about spans of hours that suit. A function, so that an app that asks none carries none. */
export function airQuestions(): readonly Question[] {
  return [dewPointQuestion(), humidityQuestion(), saturationQuestion(), suitableSpansQuestion()];
}

const sourceOf: Readonly<Record<MagnusForm, Source>> = {
  WMO: {
    title: 'Magnus form with the constants of WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B',
    seen: 'read second-hand',
  },
  'Alduchov and Eskridge': {
    title: 'O. Alduchov and R. Eskridge, Improved Magnus form approximation, J. Appl. Meteor. 35 (1996) 601–609',
    seen: 'read second-hand',
  },
};

const formField = () =>
  assuming(
    choice(
      [
        { id: 'WMO', title: sourceOf.WMO.title },
        { id: 'Alduchov and Eskridge', title: sourceOf['Alduchov and Eskridge'].title },
      ],
      'whose constants',
    ) as Field<MagnusForm>,
    'WMO',
    'WMO',
    'the two differ by less than 0.02 °C',
  );
const airField = () => temperature('°C', -45, 60, 'temperature of the air');
const overWater = ['Over water; below 0 °C frost forms on a surface somewhat warmer than this.'];

function dewPointQuestion() {
  return question({
    id: 'sky.dew-point',
    title: 'At what temperature does a surface start to wet?',
    fields: { air: airField(), humidity: humidity('%', 1, 100, 'relative humidity'), form: formField() },
    answer: ({ air, humidity: share, form }) => {
      const { a, b_C } = magnusForms[form];
      return {
        kind: 'found',
        results: [
          { symbol: 'Td', meaning: 'dew point', value: dewPoint_C(air, share, form), unit: '°C' },
          {
            symbol: 'margin',
            meaning: 'of the air over its dew point',
            value: air - dewPoint_C(air, share, form),
            unit: '°C',
          },
        ],
        working: [
          {
            symbol: 'γ',
            meaning: 'share of the vapour the air could hold, as a logarithm',
            value: Math.log(share / 100) + (a * air) / (b_C + air),
            unit: '',
            formula: `ln(humidity/100) + ${a}·T/(${b_C} + T)`,
          },
          {
            symbol: 'Td from γ',
            meaning: 'dew point',
            value: dewPoint_C(air, share, form),
            unit: '°C',
            formula: `${b_C}·γ/(${a} − γ)`,
          },
        ],
        sources: [sourceOf[form]],
        limits: overWater,
        cautions: [],
      };
    },
  });
}

function humidityQuestion() {
  return question({
    id: 'sky.humidity',
    title: 'How damp is air of this dew point?',
    fields: {
      air: airField(),
      'dew-point': temperature('°C', -100, 60, 'dew point of the air'),
      form: formField(),
    },
    conflict: (given) =>
      given['dew-point'] > given.air
        ? {
            where: 'dew-point',
            wrong: `the dew point, ${given['dew-point']} °C, is above the air's temperature, ${given.air} °C`,
            right: 'give a dew point at or below the temperature of the air',
          }
        : null,
    answer: (given) => {
      const { a, b_C } = magnusForms[given.form];
      return {
        kind: 'found',
        results: [
          {
            symbol: 'RH',
            meaning: 'relative humidity',
            value: humidity_pct(given.air, given['dew-point'], given.form),
            unit: '%',
          },
        ],
        working: [
          {
            symbol: 'ln(RH/100)',
            meaning: 'logarithm of the humidity',
            value: Math.log(humidity_pct(given.air, given['dew-point'], given.form) / 100),
            unit: '',
            formula: `${a}·Td/(${b_C} + Td) − ${a}·T/(${b_C} + T)`,
          },
        ],
        sources: [sourceOf[given.form]],
        limits: overWater,
        cautions: [],
      };
    },
  });
}

function saturationQuestion() {
  return question({
    id: 'sky.saturation-pressure',
    title: 'How much water vapour can the air hold?',
    fields: { air: airField(), form: formField() },
    answer: ({ air, form }) => {
      const { e0_hPa, a, b_C } = magnusForms[form];
      return {
        kind: 'found',
        results: [
          {
            symbol: 'es',
            meaning: 'pressure of saturated water vapour',
            value: saturationPressure_hPa(air, form),
            unit: 'hPa',
          },
        ],
        working: [
          {
            symbol: 'e0',
            meaning: 'the same at 0 °C',
            value: e0_hPa,
            unit: 'hPa',
            formula: `es = e0·exp(${a}·T/(${b_C} + T))`,
          },
        ],
        sources: [sourceOf[form]],
        limits: ['Steam tables give up to 0.3 % more.'],
        cautions: [],
      };
    },
  });
}

const yesNo = (meaning: string) =>
  choice(
    [
      { id: 'yes', title: 'yes' },
      { id: 'no', title: 'no' },
    ],
    meaning,
  );
const orAny = <T>(field: Field<T>): Field<T | null> => assuming<T | null>(field, null, 'any', 'no limit was given');
const hours = { least: 1, most: 24 * 90 };

function suitableSpansQuestion() {
  return question({
    id: 'sky.suitable-spans',
    title: 'Which hours suit the work?',
    fields: {
      start: instant('start of the first hour of weather, on a whole hour'),
      latitude: angle('°', -90, 90, 'latitude, north positive'),
      longitude: angle('°', -180, 180, 'longitude, east positive'),
      zone: timeZone('time zone of the place’s clocks'),
      rain: series('length', 'mm', 0, 200, hours, 'rain in each hour; any at all counts as wet'),
      wind: series('speed', 'kn', 0, 120, hours, 'mean wind in each hour'),
      air: series('temperature', '°C', -45, 60, hours, 'air temperature in each hour'),
      humidity: series('humidity', '%', 1, 100, hours, 'relative humidity in each hour'),
      shortest: duration('min', 0, 60 * 24 * 90, 'least length of a span'),
      dry: yesNo('must it be dry'),
      daylight: yesNo('must it be between sunrise and sunset'),
      'wind-most': orAny(speed('kn', 0, 120, 'most wind')),
      'air-least': orAny(temperature('°C', -45, 60, 'least air temperature')),
      'air-most': orAny(temperature('°C', -45, 60, 'most air temperature')),
      'humidity-most': orAny(humidity('%', 1, 100, 'most relative humidity')),
      'dew-margin-least': orAny(temperatureDifference('°C', 0, 30, 'least margin of the surface over the dew point')),
    },
    conflict: (given) => {
      if (given.start % 3_600_000 !== 0)
        return {
          where: 'start',
          wrong: 'the weather does not start on a whole hour',
          right: 'give a start such as 08:00',
        };
      const lengths = [given.rain, given.wind, given.air, given.humidity].map((list) => list.length);
      return lengths.every((n) => n === lengths[0])
        ? null
        : {
            where: 'rain, wind, air, humidity',
            wrong: `they are for ${lengths.join(', ')} hours`,
            right: 'give one figure of each for every hour',
          };
    },
    answer: (given) => {
      const weather: WeatherHour[] = given.rain.map((rain, i) => ({
        rain: rain > 0,
        wind_kn: inUnit('speed', given.wind[i]!, 'kn'),
        air_C: given.air[i]!,
        surface_C: null,
        humidity_pct: given.humidity[i]!,
        basis: 'typed',
      }));
      const needs: Conditions = {
        ...(given.dry === 'yes' ? { dry: true as const } : {}),
        ...(given.daylight === 'yes' ? { daylight: true as const } : {}),
        ...(given['wind-most'] === null ? {} : { wind_max_kn: inUnit('speed', given['wind-most'], 'kn') }),
        ...(given['air-least'] === null ? {} : { air_min_C: given['air-least'] }),
        ...(given['air-most'] === null ? {} : { air_max_C: given['air-most'] }),
        ...(given['humidity-most'] === null ? {} : { humidity_max_pct: given['humidity-most'] }),
        ...(given['dew-margin-least'] === null ? {} : { dewMargin_min_C: given['dew-margin-least'] }),
      };
      const found = suitableSpans(
        needs,
        { start: given.start, hours: weather, latitude_deg: given.latitude, longitude_deg: given.longitude },
        given.shortest,
      );
      const shown = {
        working: [],
        sources: [
          sourceOf.WMO,
          {
            title: 'margin over the dew point: coating practice after ISO 8502-4',
            seen: 'read second-hand',
          } satisfies Source,
        ],
        limits: ['The surface is taken as warm as the air: sun and night sky change that.'],
        cautions: [],
      };
      if (found.kind === 'no span')
        return {
          kind: 'truth',
          statement: 'no span suits',
          because: [
            `the longest stretch is ${Math.round(found.longest_min)} min of the ${Math.round(given.shortest)} min asked`,
            ...found.because.map(
              (each) => `${conditionInWords[each.condition]} leaves out ${Math.round(each.hours * 10) / 10} h`,
            ),
          ].join('; '),
          results: [
            { symbol: 'longest', meaning: 'longest stretch that suits', value: found.longest_min, unit: 'min' },
          ],
          ...shown,
        };
      const clock = (span: Span) => {
        const from = localAt(span.start, given.zone);
        const to = localAt(span.end, given.zone);
        return `${from.day} ${from.clock} to ${to.day === from.day ? '' : `${to.day} `}${to.clock}`;
      };
      const results = found.spans.map(
        (span, i): Figure => ({
          symbol: `span ${i + 1}`,
          meaning: 'suits throughout',
          value: (span.end - span.start) / 60_000,
          unit: 'min',
          inWords: clock(span),
        }),
      );
      return { kind: 'found', results: results as [Figure, ...Figure[]], ...shown };
    },
  });
}

const conditionInWords: Readonly<Record<keyof Conditions, string>> = {
  dry: 'rain',
  wind_max_kn: 'wind over the most',
  air_min_C: 'air under the least temperature',
  air_max_C: 'air over the most temperature',
  surface_min_C: 'a surface under the least temperature',
  humidity_max_pct: 'humidity over the most',
  dewMargin_min_C: 'too small a margin over the dew point',
  daylight: 'darkness',
};
