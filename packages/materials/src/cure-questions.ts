import type { WeatherHour } from '#sky';
import { quantity, showQuantity } from '#units';
import {
  type Answer,
  assuming,
  choice,
  duration,
  type Fields,
  type Figure,
  number,
  type Question,
  question,
  type Source,
  series,
  temperature,
  temperatureDifference,
  type Values,
  type WorkingLine,
} from '#working';
import { belowMinimum, cureFinish, curePerMinute } from './cure-finish.ts';
import { cureLawOf, cureLaws, type FigureSource, type ProductLaw } from './cure-laws.ts';
import { activationEnergy_kJ_mol, rateRatio, timeAtTemperature } from './reaction-rate.ts';
import { recoatFigures, recoatWindow } from './recoat-window.ts';

/** The questions about curing. A function, so that an app that asks none carries none. */
export function cureQuestions(): readonly Question[] {
  return [cureLawQuestion(), cureTimeQuestion(), recoatQuestion(), timeQuestion(), ratioQuestion(), energyQuestion()];
}

const tin = 'The tin wins over this figure.';
const productField = () =>
  choice(
    cureLaws.map(({ id, title }) => ({ id, title })),
    'kind of product',
  );
/** one figure holds throughout */
const hours = { least: 1, most: 24 * 90 };
const weatherFields = () =>
  ({
    product: productField(),
    air: series(
      'temperature',
      '°C',
      -45,
      60,
      hours,
      'temperature hour by hour from the start; one figure holds throughout',
    ),
    humidity: series('humidity', '%', 1, 100, hours, 'relative humidity hour by hour; one figure holds throughout'),
  }) satisfies Fields;

const unequal = (given: Values<ReturnType<typeof weatherFields>>) =>
  given.air.length === given.humidity.length || given.air.length === 1 || given.humidity.length === 1
    ? null
    : {
        where: 'air, humidity',
        wrong: `temperatures for ${given.air.length} hours, humidity for ${given.humidity.length}`,
        right: 'give one of each for every hour, or one that holds throughout',
      };

function weatherOf(given: Values<ReturnType<typeof weatherFields>>): WeatherHour[] {
  const both = given.air.length === 1 && given.humidity.length === 1;
  const length = both ? hours.most : Math.max(given.air.length, given.humidity.length);
  return Array.from({ length }, (_, i) => ({
    rain: false,
    wind_kn: 0,
    air_C: given.air.length === 1 ? given.air[0]! : given.air[i]!,
    surface_C: null,
    humidity_pct: given.humidity.length === 1 ? given.humidity[0]! : given.humidity[i]!,
    basis: 'typed',
  }));
}

const sourcesOf = (figures: readonly FigureSource[]): Source[] =>
  figures.map(({ figure, source, seen }) => ({
    title: `${figure}: ${source}`,
    seen: seen === 'read' ? 'read second-hand' : seen,
  }));

const inTime = (minutes: number) => showQuantity('duration', quantity('duration', minutes));

function lawFigures({ law, figures }: ProductLaw): Figure[] {
  const band = figures.find((figure) => figure.band)?.band;
  const ends = band ? { low: band[0], high: band[1] } : {};
  const coldest = (minimum_C: number): Figure => ({
    symbol: 'coldest',
    meaning: 'below this it makes no progress and may never reach its strength',
    value: minimum_C,
    unit: '°C',
  });
  switch (law.kind) {
    case 'set time':
      return [{ symbol: 't', meaning: 'time it takes in any weather', value: law.minutes / 60, unit: 'h' }];
    case 'never cures':
      return [{ symbol: 't', meaning: 'time to wait: it stays soft', value: 0, unit: 'h' }];
    case 'moisture':
      return [
        {
          symbol: 'first day',
          meaning: `depth cured in the first 24 h at ${law.reference_C} °C and ${law.reference_pct} %`,
          value: law.firstDay_mm,
          ...ends,
          unit: 'mm',
        },
        { symbol: 'depth', meaning: 'depth of the bead', value: law.depth_mm, unit: 'mm' },
        coldest(law.minimum_C),
      ];
    case 'reacts':
    case 'dries':
      return [
        {
          symbol: 't',
          meaning: `time at ${law.reference_C} °C`,
          value: law.atReference_min / 60,
          unit: 'h',
          inWords: inTime(law.atReference_min),
        },
        coldest(law.minimum_C),
        { symbol: 'doubles', meaning: 'degrees that double its rate', value: law.doublesPer_C, unit: '°C' },
        ...(law.kind === 'dries'
          ? [
              {
                symbol: 'stops',
                meaning: 'humidity from which it makes no progress',
                value: law.stopsAt_pct,
                unit: '%',
              },
            ]
          : []),
      ];
  }
}

function cureLawQuestion() {
  return question({
    id: 'materials.cure-law',
    title: 'How does this kind of product get hard?',
    fields: { product: productField() },
    answer: ({ product }): Answer => {
      const found = cureLawOf(product);
      const { law } = found;
      const coat = recoatFigures.find((row) => row.product === product);
      const working: WorkingLine[] =
        law.kind === 'reacts' || law.kind === 'dries'
          ? [
              {
                symbol: 'Ea',
                meaning: 'activation energy that this doubling means from 20 to 30 °C',
                value: activationEnergy_kJ_mol(2 ** (10 / law.doublesPer_C), 20, 30),
                unit: 'kJ/mol',
                formula: 'R·ln(2^(10/doubles))/(1/293.15 K − 1/303.15 K)',
              },
            ]
          : [];
      const latest: Figure[] =
        coat?.latest_h == null
          ? []
          : [
              {
                symbol: 'latest',
                meaning: 'latest time for the next coat without abrading, at 20 °C',
                value: coat.latest_h,
                ...(coat.figure.band ? { low: coat.figure.band[0], high: coat.figure.band[1] } : {}),
                unit: 'h',
              },
            ];
      return {
        kind: 'found',
        results: [...lawFigures(found), ...latest] as [Figure, ...Figure[]],
        working,
        sources: sourcesOf([...found.figures, ...(coat ? [coat.figure] : [])]),
        limits: [tin, `The wait is over when ${found.until}.`],
        cautions: found.cautions,
      };
    },
  });
}

function cureTimeQuestion() {
  return question({
    id: 'materials.cure-time',
    title: 'How long until it has cured in this weather?',
    fields: weatherFields(),
    conflict: unequal,
    answer: (given): Answer => {
      const product = cureLawOf(given.product);
      const weather = weatherOf(given);
      const { finish, tooCold } = cureFinish(product.law, weather, 0);
      const shown = {
        working: progress(product, weather, finish),
        sources: sourcesOf(product.figures),
        limits: [tin, 'Heat of a thick pour (quicker) and a thin cold film (slower) are not counted.'],
        cautions: [
          ...product.cautions,
          ...(tooCold ? ['It met hours below its least temperature and may never reach its strength.'] : []),
        ],
      };
      if (finish === null)
        return {
          kind: 'truth',
          statement: 'not cured in the hours given',
          because: weather.some((hour) => belowMinimum(product.law, hour))
            ? `${weather.filter((hour) => belowMinimum(product.law, hour)).length} of ${weather.length} h are below its least temperature`
            : `${weather.length} h are not enough, or too damp`,
          results: [],
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          { symbol: 't', meaning: `until ${product.until}`, value: finish / 60, unit: 'h', inWords: inTime(finish) },
        ],
        ...shown,
      };
    },
  });
}

/** Share of the cure done at the end of each hour, at most the first 48. */
function progress({ law }: ProductLaw, weather: readonly WeatherHour[], finish: number | null): WorkingLine[] {
  if (law.kind === 'never cures') return [];
  let done = 0;
  const lines: WorkingLine[] = [];
  for (let i = 0; i < Math.min(48, weather.length, Math.ceil((finish ?? 48 * 60) / 60)); i++) {
    done += curePerMinute(law, weather[i]!) * 60;
    lines.push({
      symbol: `p${i + 1}`,
      meaning: `share done after hour ${i + 1}, at ${weather[i]!.air_C} °C`,
      value: Math.min(1, done),
      unit: '',
      formula: 'sum of the rate of each hour',
    });
  }
  return lines;
}

function recoatQuestion() {
  return question({
    id: 'materials.recoat-window',
    title: 'From when until when may the next coat go on?',
    fields: weatherFields(),
    conflict: unequal,
    answer: (given): Answer => {
      const product = cureLawOf(given.product);
      const window = recoatWindow(given.product, weatherOf(given), 0);
      const coat = recoatFigures.find((row) => row.product === given.product);
      const shown = {
        working: [],
        sources: sourcesOf([...product.figures, ...(coat ? [coat.figure] : [])]),
        limits: [tin, 'Past the latest time the coat must be abraded first.'],
        cautions: product.cautions,
      };
      const at = (symbol: string, meaning: string, minutes: number): Figure => ({
        symbol,
        meaning,
        value: minutes / 60,
        unit: 'h',
        inWords: inTime(minutes),
      });
      if (window.kind === 'no window')
        return { kind: 'truth', statement: 'no window', because: window.because, results: [], ...shown };
      const earliest = at('earliest', 'next coat from', window.earliest);
      if (window.kind === 'open window')
        return {
          kind: 'truth',
          statement: 'no latest time known',
          because: window.because,
          results: [earliest],
          ...shown,
        };
      return {
        kind: 'found',
        results: [earliest, at('latest', 'next coat before, or abrade', window.latest)],
        ...shown,
      };
    },
  });
}

const rule: Source = {
  title: "ten-degree rule (van 't Hoff), checked against activation energies of 40–60 kJ/mol",
  seen: 'read second-hand',
};
const arrhenius: Source = { title: 'Arrhenius; molar gas constant 8.314462618 J/(mol·K)', seen: 'recalled' };

function timeQuestion() {
  return question({
    id: 'materials.time-at-temperature',
    title: 'How long does it take when it is colder or warmer than the tin says?',
    fields: {
      time: duration('min', 0.01, 60 * 24 * 60, 'time on the tin'),
      reference: temperature('°C', -10, 60, 'temperature on the tin'),
      temperature: temperature('°C', -10, 60, 'temperature where it cures'),
      'doubles-per': assuming(
        temperatureDifference('°C', 1, 30, 'degrees that double its rate'),
        quantity('temperature difference', 10),
        '10 °C',
        'the usual rule; published activation energies mean 8 to 13 °C',
      ),
    },
    answer: (given) => {
      const minutes = timeAtTemperature(given.time, given.reference, given.temperature, given['doubles-per']);
      return {
        kind: 'found',
        results: [{ symbol: 't', meaning: 'time it takes', value: minutes, unit: 'min', inWords: inTime(minutes) }],
        working: [
          {
            symbol: 't/t0',
            meaning: 'times as long',
            value: minutes / given.time,
            unit: '',
            formula: '2^((T0 − T)/doubles)',
          },
        ],
        sources: [rule],
        limits: [tin, 'Not below the least temperature of the product.'],
        cautions: [],
      };
    },
  });
}

function ratioQuestion() {
  return question({
    id: 'materials.rate-ratio',
    title: 'How much faster does it react when warmer?',
    fields: {
      energy: number('kJ/mol', 1, 300, 'activation energy'),
      from: temperature('°C', -40, 100, 'the one temperature'),
      to: temperature('°C', -40, 100, 'the other temperature'),
    },
    answer: (given) => ({
      kind: 'found',
      results: [
        {
          symbol: 'k',
          meaning: 'rate at the other over the one',
          value: rateRatio(given.energy, given.from, given.to),
          unit: '',
        },
      ],
      working: [
        {
          symbol: 'ln k',
          meaning: 'its logarithm',
          value: Math.log(rateRatio(given.energy, given.from, given.to)),
          unit: '',
          formula: 'Ea/R·(1/T1 − 1/T2), T in kelvin',
        },
      ],
      sources: [arrhenius],
      limits: ['One reaction with one energy; a gelled resin is slower than this.'],
      cautions: [],
    }),
  });
}

function energyQuestion() {
  return question({
    id: 'materials.activation-energy',
    title: 'What activation energy does a doubling mean?',
    fields: {
      from: temperature('°C', -40, 100, 'the one temperature'),
      to: temperature('°C', -40, 100, 'the temperature at which the rate is double'),
    },
    conflict: ({ from, to }) =>
      to - from >= 0.1
        ? null
        : { where: 'to', wrong: 'it is not the warmer of the two', right: 'give at least 0.1 °C more than from' },
    answer: (given) => ({
      kind: 'found',
      results: [
        {
          symbol: 'Ea',
          meaning: 'activation energy',
          value: activationEnergy_kJ_mol(2, given.from, given.to),
          unit: 'kJ/mol',
        },
      ],
      working: [
        {
          symbol: '1/T1 − 1/T2',
          meaning: 'step in inverse temperature',
          value: 1 / (given.from + 273.15) - 1 / (given.to + 273.15),
          unit: '1/K',
          formula: 'Ea = R·ln 2/(1/T1 − 1/T2)',
        },
      ],
      sources: [arrhenius],
      limits: ['One reaction with one energy.'],
      cautions: [],
    }),
  });
}
