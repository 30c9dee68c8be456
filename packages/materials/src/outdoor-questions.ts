import {
  choice,
  count,
  humidity,
  number,
  type Question,
  question,
  type Source,
  series,
  speed,
  temperature,
} from '#working';
import { leastDewMargin_C } from './coating-margin.ts';
import { timberFit, timberLimits, usualCoats, usualSpread_m2_l } from './coats-practice.ts';
import { type DewHour, eveningStop, nightSurface_C, skyMargin_C, stopBeforeDew_h } from './evening-dew.ts';

/** The questions about coating out of doors. A function, so that an app that asks none carries none. */
export function outdoorQuestions(): readonly Question[] {
  return [nightSurface(), stopBeforeDew(), timber(), coatsWanted(), spreadUsual()];
}

const skyModel: Source = {
  title: 'clear sky: Berdahl and Martin (1984); air: McAdams; a balance of heat',
  seen: 'recalled',
};
const practice: Source = { title: 'stop 2 to 3 h before the dew: trade practice', seen: 'common practice' };
const three: Source = { title: 'ISO 8502-4: 3 °C over the dew point', seen: 'read second-hand' };
const cloudField = () => number('eighths', 0, 8, 'low cloud, in eighths of the sky; 0 is the cautious one');
const skyLimits = [
  'A level surface with nothing warm under it: what faces the side, or lies under a roof or a tree, stays warmer.',
  'A heavy deck keeps the day’s warmth for the first hours of the night.',
];

function nightSurface() {
  return question({
    id: 'materials.night-surface',
    title: 'Does dew fall on what faces the night sky?',
    fields: {
      air: temperature('°C', -40, 50, 'temperature of the air'),
      humidity: humidity('%', 1, 100, 'relative humidity'),
      wind: speed('kn', 0, 100, 'wind'),
      cloud: cloudField(),
    },
    answer: (given) => {
      const hour: DewHour = {
        air_C: given.air,
        humidity_pct: given.humidity,
        wind_kn: (given.wind * 3600) / 1852,
        surface_C: null,
        dark: true,
      };
      const surface = nightSurface_C(hour, given.cloud / 8);
      const margin = skyMargin_C(hour, given.cloud / 8);
      return {
        kind: 'found',
        results: [
          { symbol: 'Ts', meaning: 'temperature of the surface', value: surface, unit: '°C' },
          { symbol: 'below', meaning: 'how far below the air', value: given.air - surface, unit: '°C' },
          { symbol: 'margin', meaning: 'of the surface over the dew point', value: margin, unit: '°C' },
          {
            symbol: 'verdict',
            meaning: 'what falls on it',
            value:
              margin <= 0
                ? surface < 0
                  ? 'frost'
                  : 'dew'
                : margin < leastDewMargin_C
                  ? 'no dew, but do not coat'
                  : 'no dew',
            unit: '',
          },
        ],
        working: [{ symbol: 'Td', meaning: 'dew point', value: surface - margin, unit: '°C', formula: 'Magnus form' }],
        sources: [skyModel],
        limits: skyLimits,
        cautions: [],
      };
    },
  });
}

const hours = { least: 1, most: 48 };

function stopBeforeDew() {
  return question({
    id: 'materials.stop-before-dew',
    title: 'When must a coat be on before the dew?',
    fields: {
      air: series('temperature', '°C', -40, 50, hours, 'temperature hour by hour from now'),
      humidity: series('humidity', '%', 1, 100, hours, 'relative humidity hour by hour'),
      wind: series('speed', 'kn', 0, 100, hours, 'wind hour by hour; one figure holds throughout'),
      dark: count(0, 48, 'hours from now to sunset'),
      cloud: cloudField(),
    },
    conflict: ({ air, humidity: damp, wind }) =>
      air.length === damp.length && (wind.length === 1 || wind.length === air.length)
        ? null
        : {
            where: 'air, humidity, wind',
            wrong: `temperatures for ${air.length} hours, humidity for ${damp.length}, wind for ${wind.length}`,
            right: 'give one of each for every hour; one wind may hold throughout',
          },
    answer: (given) => {
      const course = given.air.map(
        (air_C, i): DewHour => ({
          air_C,
          humidity_pct: given.humidity[i]!,
          wind_kn: ((given.wind[given.wind.length === 1 ? 0 : i] as number) * 3600) / 1852,
          surface_C: null,
          dark: i >= given.dark,
        }),
      );
      const found = eveningStop(course, given.cloud / 8);
      const least = {
        symbol: 'before',
        meaning: 'hours before the dew to stop at',
        value: (stopBeforeDew_h.least + stopBeforeDew_h.most) / 2,
        low: stopBeforeDew_h.least,
        high: stopBeforeDew_h.most,
        unit: 'h',
      };
      const shown = {
        working: course.map((hour, i) => ({
          symbol: `${i + 1}.`,
          meaning: `margin over the dew point in hour ${i + 1}, at ${hour.air_C.toFixed(1)} °C`,
          value: skyMargin_C(hour, given.cloud / 8),
          unit: '°C',
          formula: hour.dark ? 'facing the night sky' : 'air less dew point',
        })),
        sources: [practice, three, skyModel],
        limits: [...skyLimits, 'Not in full sun either: it skins over and wrinkles.'],
        cautions: [],
      };
      const inHours = (symbol: string, meaning: string, minutes: number) => ({
        symbol,
        meaning,
        value: minutes / 60,
        unit: 'h',
      });
      if (found.kind === 'no dew')
        return {
          kind: 'truth',
          statement: 'no dew in the hours given',
          because: `the surface stays ${leastDewMargin_C} °C over the dew point for all ${found.hours} h`,
          results: [least],
          ...shown,
        };
      if (found.kind === 'too late')
        return { kind: 'truth', statement: 'too late to coat', because: found.because, results: [least], ...shown };
      return {
        kind: 'found',
        results: [
          inHours('stop', 'stop at the latest, from now', found.by),
          ...(found.kind === 'stop' ? [inHours('better', 'better stop, from now', found.better)] : []),
          ...(found.dew === null ? [] : [inHours('dew', 'dew falls, from now', found.dew)]),
          least,
        ],
        ...shown,
      };
    },
  });
}

function timber() {
  return question({
    id: 'materials.timber-moisture',
    title: 'Is this wood dry enough?',
    fields: {
      moisture: number('%', 1, 60, 'water in the wood, of its dry weight, by a meter'),
      for: choice(
        [
          { id: 'varnish', title: 'varnish or paint' },
          { id: 'epoxy', title: 'epoxy' },
        ],
        'what is to go on it',
      ),
    },
    answer: (given) => {
      const limits = timberLimits[given.for];
      return {
        kind: 'found',
        results: [
          { symbol: 'verdict', meaning: 'whether it may go on', value: timberFit(given.moisture, given.for), unit: '' },
          {
            symbol: 'most',
            meaning: 'water in the wood at the most',
            value: limits.most_pct,
            low: limits.low_pct,
            high: limits.high_pct,
            unit: '%',
          },
        ],
        working: [],
        sources: [{ title: 'varnish 12 to 16 %, epoxy under 12 to 18 %: sources vary', seen: 'common practice' }],
        limits: ['A meter with pins reads the skin; salt in the wood makes it read too high.', 'The tin wins.'],
        cautions: [],
      };
    },
  });
}

function coatsWanted() {
  return question({
    id: 'materials.usual-coats',
    title: 'How many coats does it usually take?',
    fields: {
      work: choice(
        Object.entries(usualCoats).map(([id, { title }]) => ({ id, title })),
        'what is coated',
      ),
    },
    answer: ({ work }) => {
      const { low, high, unit, meaning } = usualCoats[work]!;
      return {
        kind: 'found',
        results: [{ symbol: 'n', meaning, value: (low + high) / 2, low, high, unit }],
        working: [],
        sources: [{ title: 'varnishing practice', seen: 'common practice' }],
        limits: ['The tin wins.'],
        cautions: [],
      };
    },
  });
}

function spreadUsual() {
  return question({
    id: 'materials.usual-spread',
    title: 'How far does a litre of it usually go?',
    fields: {
      product: choice(
        Object.entries(usualSpread_m2_l).map(([id, { title }]) => ({ id, title })),
        'what is spread',
      ),
    },
    answer: ({ product }) => {
      const { low, high } = usualSpread_m2_l[product]!;
      return {
        kind: 'found',
        results: [
          {
            symbol: 's',
            meaning: 'area a litre covers in one coat',
            value: (low + high) / 2,
            low,
            high,
            unit: 'm²/l',
          },
        ],
        working: [],
        sources: [{ title: 'tins on the shelf', seen: 'common practice' }],
        limits: ['The tin wins. Rough or bare surfaces drink more.'],
        cautions: [],
      };
    },
  });
}
