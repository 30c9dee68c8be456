import { assuming, choice, type Question, question, type WorkingLine } from '#working';
import { galvanicLimits_V, galvanicSeries } from '../tables/galvanic-series.read-2026-11.ts';
import { metalPair, type SeaMetal, seaMetals, seaPotential_V } from './metals-together.ts';

/** The question which metals go together. A function, so that an app that asks none carries none. */
export function metalsQuestions(): readonly Question[] {
  return [metalsTogether()];
}

const metalField = (meaning: string) =>
  choice<SeaMetal>(
    seaMetals.map((id) => ({ id, title: galvanicSeries[id].title })),
    meaning,
  );

function metalsTogether() {
  return question({
    id: 'materials.metals-together',
    title: 'May these two metals touch?',
    fields: {
      a: metalField('one metal'),
      b: metalField('the other'),
      wet: assuming(
        choice<'harsh' | 'normal' | 'controlled'>(
          [
            { id: 'harsh', title: 'salt water, spray or salt air' },
            { id: 'normal', title: 'under a roof, now and then damp' },
            { id: 'controlled', title: 'indoors, dry' },
          ],
          'how wet they get',
        ),
        'harsh',
        'salt',
        'a boat on the sea',
      ),
      small: assuming(
        choice<'a' | 'b' | 'alike'>(
          [
            { id: 'a', title: 'the first' },
            { id: 'b', title: 'the other' },
            { id: 'alike', title: 'neither' },
          ],
          'which of them is much the smaller',
        ),
        'alike',
        'neither',
        'not said',
      ),
    },
    answer: ({ a, b, wet, small }) => {
      const { goes, difference_V, limit_V, apart } = metalPair(a, b, wet);
      const smallOne = small === 'alike' ? null : small === 'a' ? a : b;
      const pace =
        smallOne === null
          ? 'by their areas: not said'
          : smallOne === goes
            ? 'fast: what goes is the small one'
            : 'slowly: what goes is the large one';
      return {
        kind: 'found',
        results: [
          {
            symbol: 'verdict',
            meaning: 'bare, touching and wet so',
            value: apart ? 'keep them apart' : 'may touch',
            unit: '',
          },
          {
            symbol: 'goes',
            meaning: 'the one that corrodes',
            value: goes === null ? 'neither' : galvanicSeries[goes].title,
            unit: '',
          },
          { symbol: 'difference', meaning: 'between them', value: difference_V, unit: 'V' },
          { symbol: 'limit', meaning: 'what is let be', value: limit_V, unit: 'V' },
          { symbol: 'pace', meaning: 'how fast', value: goes === null ? 'not at all' : pace, unit: '' },
        ],
        working: [
          ...figuresOf('a', a),
          ...figuresOf('b', b),
          {
            symbol: 'rule of the chart',
            meaning: 'difference under water that calls for protection',
            value: 1000 * galvanicLimits_V.chart,
            unit: 'mV',
            formula: 'printed',
          },
        ],
        sources: [
          {
            title: 'galvanic series in flowing sea water, student resources of a corrosion association',
            seen: 'read second-hand',
          },
          { title: 'a boat association’s chart of potentials against silver chloride', seen: 'read second-hand' },
          { title: 'an anodic-index rule drawn from MIL-F-14072 and MIL-STD-889', seen: 'read second-hand' },
          ...(a === 'mild-steel' || b === 'mild-steel'
            ? [{ title: 'mild steel in flowing sea water', seen: 'recalled' as const }]
            : []),
        ],
        limits: [
          'Bare metal in salt water. Sealant, plastic washers or paint on the nobler one part them; paint on what goes alone makes it worse at each scratch.',
          'Stainless shut off from air under sealant or in wet wood is another metal: ask with its other name.',
        ],
        cautions: [
          'A fastening that corrodes where it cannot be seen is drawn and looked at, not judged from outside.',
        ],
      };
    },
  });
}

function figuresOf(symbol: string, metal: SeaMetal): WorkingLine[] {
  const { title, flowing_V, chart_mV } = galvanicSeries[metal];
  return [
    {
      symbol,
      meaning: title,
      value: seaPotential_V(metal),
      unit: 'V vs SCE',
      formula: flowing_V ? 'middle of the range' : 'the chart',
    },
    ...(flowing_V
      ? [
          {
            symbol: `${symbol} in flowing water`,
            meaning: metal === 'mild-steel' ? 'range recalled, not read again' : 'range printed',
            value: (flowing_V[0] + flowing_V[1]) / 2,
            low: flowing_V[0],
            high: flowing_V[1],
            unit: 'V vs SCE',
            formula: 'printed',
          },
        ]
      : []),
    ...(chart_mV === null
      ? []
      : [
          {
            symbol: `${symbol} on the chart`,
            meaning: 'at 25 °C',
            value: chart_mV,
            unit: 'mV vs Ag/AgCl',
            formula: 'printed',
          },
        ]),
  ];
}
