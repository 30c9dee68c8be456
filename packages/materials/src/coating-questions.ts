import { humidity, type Question, question, type Source, temperature } from '#working';
import { coatingMargin, leastDewMargin_C, mostCoatingHumidity_pct } from './coating-margin.ts';

/** The questions about whether a coat may go on. A function, so that an app that asks none carries none. */
export function coatingQuestions(): readonly Question[] {
  return [dewMarginQuestion()];
}

const standards: Source[] = [
  { title: 'ISO 8502-4 and ISO 12944-7: 3 °C over the dew point, 85 % of humidity', seen: 'read second-hand' },
  { title: 'dew point: Magnus form, WMO-No. 8', seen: 'read second-hand' },
];

function dewMarginQuestion() {
  return question({
    id: 'materials.dew-margin',
    title: 'Is the surface warm enough over the dew point to paint?',
    fields: {
      air: temperature('°C', -45, 60, 'temperature of the air'),
      humidity: humidity('%', 1, 100, 'relative humidity'),
      surface: temperature('°C', -45, 90, 'temperature of the surface'),
    },
    answer: (given) => {
      const { dewPoint_C, margin_C, mayCoat } = coatingMargin(given.air, given.humidity, given.surface);
      return {
        kind: 'found',
        results: [
          { symbol: 'margin', meaning: 'of the surface over the dew point', value: margin_C, unit: '°C' },
          {
            symbol: 'verdict',
            meaning: 'whether a coat may go on',
            value: mayCoat ? 'paint' : 'do not paint',
            unit: '',
          },
        ],
        working: [
          { symbol: 'Td', meaning: 'dew point', value: dewPoint_C, unit: '°C', formula: 'Magnus form' },
          {
            symbol: 'least margin',
            meaning: 'needed over the dew point',
            value: leastDewMargin_C,
            unit: '°C',
            formula: 'standard',
          },
          {
            symbol: 'most humidity',
            meaning: 'for paint',
            value: mostCoatingHumidity_pct,
            unit: '%',
            formula: 'standard',
          },
        ],
        sources: standards,
        limits: [
          'It must stay so until the film is past harm: stop 2 to 3 h before the dew.',
          'Varnish tins often ask for 80 % or less. The tin wins.',
        ],
        cautions: [],
      };
    },
  });
}
