import {
  assuming,
  choice,
  duration,
  type Figure,
  mass,
  number,
  type Question,
  question,
  type Source,
  temperature,
} from '#working';
import { cureLawOf } from './cure-laws.ts';
import {
  assumedMostInCup_g,
  assumedUsableShare,
  batchesWithin,
  catalystAdvice,
  catalystAmount,
  catalystChart,
  catalystDensity_g_ml,
  hottestPot_C,
  leastCatalyst_pct,
  mostCatalyst_pct,
  partsOf,
  potLife_min,
  potLives,
  pumpStrokes,
} from './mixing.ts';

/** The questions about what goes into a pot. A function, so that an app that asks none carries none. */
export function mixingQuestions(): readonly Question[] {
  return [catalystShare(), catalyst(), hardener(), potLife(), batches()];
}

const chart: Source = {
  title: 'a resin seller’s guide to quantities, medium-reactivity catalyst; charts differ by resin',
  seen: 'read second-hand',
};
const tinWins = 'The tin wins over this figure.';
const peroxideCautions = [
  'Gloves and goggles: catalyst in an eye burns it for good. Rinse at once with much water, then a doctor.',
  'Never mix catalyst with accelerator: explosion.',
];
const potCaution = `What is left in a pot can pass ${hottestPot_C} °C, smoke and set fire: spread it out flat, and stand the pot outdoors in water.`;

function catalystShare() {
  return question({
    id: 'materials.catalyst-share',
    title: 'How much catalyst at this temperature?',
    fields: {
      air: temperature('°C', -20, 50, 'temperature of resin and place'),
      resin: choice(
        [
          { id: 'laminating', title: 'polyester laminating resin' },
          { id: 'gelcoat', title: 'gelcoat or topcoat' },
        ],
        'what it is put into',
      ),
    },
    answer: ({ air, resin }) => {
      const advice = catalystAdvice(air, resin);
      const shown = {
        working: catalystChart.map((row, i) => ({
          symbol: `${i + 1}.`,
          meaning: `laminating resin from ${row.from_C} to ${row.to_C} °C`,
          value: row.pct,
          unit: '%',
          formula: 'chart',
        })),
        sources: [chart],
        limits: [tinWins, `Never under ${leastCatalyst_pct} % nor over ${mostCatalyst_pct} %: it cures badly.`],
        cautions: peroxideCautions,
      };
      const pct = (value: number): Figure => ({
        symbol: 'share',
        meaning: 'catalyst, of the weight of the resin',
        value,
        low: resin === 'gelcoat' ? value : Math.max(leastCatalyst_pct, value - 1),
        high: resin === 'gelcoat' ? value : Math.min(mostCatalyst_pct, value + 1),
        unit: '%',
      });
      const danger: Figure = {
        symbol: 'with accelerator',
        meaning: 'what comes of catalyst mixed with accelerator',
        value: 'explosion',
        unit: '',
      };
      if (advice.kind === 'found') return { kind: 'found', results: [pct(advice.pct), danger], ...shown };
      return {
        kind: 'truth',
        statement: advice.kind === 'too cold' ? 'too cold to mix' : 'too warm to mix',
        because:
          advice.kind === 'too cold'
            ? `below ${advice.least_C} °C no catalyst makes up for the cold, and it may never reach its strength`
            : `above ${advice.most_C} °C it goes off before it is laid`,
        results: [danger],
        ...shown,
      };
    },
  });
}

function catalyst() {
  return question({
    id: 'materials.catalyst',
    title: 'How much catalyst for this much resin?',
    fields: {
      resin: mass('g', 1, 20_000, 'resin'),
      share: number('%', leastCatalyst_pct, mostCatalyst_pct, 'catalyst, of the weight of the resin'),
    },
    answer: (given) => {
      const found = catalystAmount(given.resin * 1000, given.share);
      return {
        kind: 'found',
        results: [
          { symbol: 'm', meaning: 'catalyst by weight', value: found.mass_g, unit: 'g' },
          {
            symbol: 'V',
            meaning: 'catalyst by measure, 1 ml for 1 g as the sellers count',
            value: found.byChart_ml,
            low: found.byDensity_ml,
            high: found.byChart_ml,
            unit: 'ml',
          },
          {
            symbol: 'drops',
            meaning: 'drops, if there is nothing better',
            value: (found.drops.low + found.drops.high) / 2,
            low: found.drops.low,
            high: found.drops.high,
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'by density',
            meaning: `at ${catalystDensity_g_ml} g/ml`,
            value: found.byDensity_ml,
            unit: 'ml',
            formula: 'm/density',
          },
        ],
        sources: [
          chart,
          { title: `density of catalyst ${catalystDensity_g_ml} g/ml, sheets`, seen: 'recalled' },
          { title: 'drops in a millilitre: two hobby pages that differ twofold', seen: 'read second-hand' },
        ],
        limits: [tinWins, 'Droppers differ twofold: weigh it, or use a syringe.'],
        cautions: [...peroxideCautions, potCaution],
      };
    },
  });
}

function hardener() {
  return question({
    id: 'materials.hardener',
    title: 'How much resin and hardener for this much of the mix?',
    fields: {
      total: mass('g', 1, 20_000, 'all of it, mixed'),
      resin: number('parts', 0.01, 1000, 'parts of resin by weight: the tin says'),
      hardener: number('parts', 0.01, 1000, 'parts of hardener by weight: the tin says'),
      pair: mass('g', 0.1, 1000, 'what one stroke of each pump gives together; weighed once'),
    },
    answer: (given) => {
      const grams = given.total * 1000;
      const parts = partsOf(grams, given.resin, given.hardener);
      const strokes = pumpStrokes(grams, given.pair * 1000);
      return {
        kind: 'found',
        results: [
          { symbol: 'resin', meaning: 'resin', value: parts.resin, unit: 'g' },
          { symbol: 'hardener', meaning: 'hardener', value: parts.hardener, unit: 'g' },
          { symbol: 'strokes', meaning: 'strokes of each pump', value: strokes, unit: '' },
        ],
        working: [
          {
            symbol: 'made',
            meaning: 'what so many strokes make',
            value: strokes * given.pair * 1000,
            unit: 'g',
            formula: 'strokes·pair',
          },
        ],
        sources: [{ title: 'parts of a whole', seen: 'our derivation' }],
        limits: ['More hardener does not make it quicker: what is over stays soft in it.'],
        cautions: ['Gloves: skin that takes to epoxy never leaves it.', potCaution],
      };
    },
  });
}

const mixedProducts = () =>
  choice(
    Object.keys(potLives).map((id) => ({ id, title: cureLawOf(id).title })),
    'kind of product',
  );
const sharePutIn = () =>
  assuming(
    number('%', leastCatalyst_pct, mostCatalyst_pct, 'catalyst, where it takes any'),
    2,
    '2 %',
    'the share its pot life is said of',
  );
const sourceOf = (product: string): Source => {
  const { figure, source, seen } = potLives[product]!.source;
  return { title: `${figure}: ${source}`, seen: seen === 'read' ? 'read second-hand' : seen };
};
const massLimit =
  'A bigger pot lasts less, as 1/√mass: our fit between 100 g and a gallon that goes off in about 5 min.';

function potLife() {
  return question({
    id: 'materials.pot-life',
    title: 'How long may a pot of it be used?',
    fields: {
      product: mixedProducts(),
      temperature: temperature('°C', -10, 50, 'temperature of pot and place'),
      mass: mass('g', 1, 20_000, 'how much is in the one pot'),
      catalyst: sharePutIn(),
    },
    answer: ({ product, temperature: at_C, mass: mass_kg, catalyst: pct }) => {
      const life = potLives[product]!;
      const minutes = potLife_min(life, at_C, mass_kg * 1000, pct);
      const [low, high] = life.source.band!;
      const { law, cautions } = cureLawOf(product);
      const cup = assumedMostInCup_g[product];
      return {
        kind: 'found',
        results: [
          {
            symbol: 't',
            meaning: 'pot life',
            value: minutes,
            low: (minutes * low) / life.minutes,
            high: (minutes * high) / life.minutes,
            unit: 'min',
          },
          ...(cup === undefined ? [] : [{ symbol: 'cup', meaning: 'most to mix in one cup', value: cup, unit: 'g' }]),
          { symbol: 'hottest', meaning: 'a left-over pot can pass this', value: hottestPot_C, unit: '°C' },
        ],
        working: [
          {
            symbol: 't/t0',
            meaning: `over that of ${life.minutes} min at ${life.at_C} °C`,
            value: minutes / life.minutes,
            unit: '',
            formula: `2^((${life.at_C} − T)/${life.doublesPer_C})${life.of_g === null ? '' : `·√(${life.of_g} g/m)`}${life.catalyst_pct === null ? '' : `·${life.catalyst_pct} %/share`}`,
          },
        ],
        sources: [
          sourceOf(product),
          ...(cup === undefined ? [] : [{ title: 'most in one cup', seen: 'our assumption' } as const]),
        ],
        limits: [tinWins, ...(life.of_g === null ? [] : [massLimit])],
        cautions: [
          ...cautions,
          potCaution,
          ...('minimum_C' in law && at_C < law.minimum_C
            ? [`Below ${law.minimum_C} °C it makes no progress and may never reach its strength.`]
            : []),
        ],
      };
    },
  });
}

function batches() {
  return question({
    id: 'materials.batches',
    title: 'In how many batches is it to be mixed?',
    fields: {
      product: mixedProducts(),
      temperature: temperature('°C', -10, 50, 'temperature of pot and place'),
      total: mass('g', 1, 20_000, 'all that is to be mixed'),
      using: duration('min', 0, 600, 'time to use all of it'),
      mixing: duration('min', 0, 60, 'time to mix one batch'),
      catalyst: sharePutIn(),
    },
    answer: (given) => {
      const life = potLives[given.product]!;
      const found = batchesWithin(
        given.total * 1000,
        given.using,
        given.mixing,
        assumedMostInCup_g[given.product] ?? null,
        (mass_g) => potLife_min(life, given.temperature, mass_g, given.catalyst),
      );
      const shown = {
        working: [
          {
            symbol: 'pot life',
            meaning: 'of one batch',
            value: found.potLife_min,
            unit: 'min',
            formula: 'materials.pot-life',
          },
          {
            symbol: 'usable',
            meaning: 'share of it that is worked in',
            value: 100 * assumedUsableShare,
            unit: '%',
            formula: 'our assumption',
          },
        ],
        sources: [sourceOf(given.product), { title: 'usable share, most in one cup', seen: 'our assumption' } as const],
        limits: [tinWins, massLimit],
        cautions: [...cureLawOf(given.product).cautions, potCaution],
      };
      if (found.kind === 'goes off first')
        return {
          kind: 'truth',
          statement: 'it goes off before it is used',
          because: 'mixing alone takes what there is of its pot life: wait until it is cooler, or take a slower one',
          results: [],
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          { symbol: 'n', meaning: 'batches', value: found.count, unit: '' },
          { symbol: 'each', meaning: 'in each', value: found.each_g, unit: 'g' },
          { symbol: 'use', meaning: 'time to mix and use one', value: found.use_min, unit: 'min' },
        ],
        ...shown,
      };
    },
  });
}
