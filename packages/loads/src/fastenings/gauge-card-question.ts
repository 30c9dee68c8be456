import { inUnit } from '#units';
import { type Answer, length, question } from '#working';
import { cardScale, checkLines } from './gauge-card.ts';

const { across_mm, down_mm } = checkLines;

export function gaugeCardQuestion() {
  return question({
    id: 'loads.gauge-card',
    title: 'Is a printed gauge card true?',
    fields: {
      across: length('mm', 50, 450, `the check line across, ${across_mm} mm when true, measured with a steel rule`),
      down: length('mm', 50, 600, `the check line down, ${down_mm} mm when true`),
    },
    answer: ({ across, down }): Answer => {
      const scale = cardScale(inUnit('length', across, 'mm'), inUnit('length', down, 'mm'));
      const mean = (scale.across + scale.down) / 2;
      const verdict = {
        true: 'true: measure with it',
        scaled: 'printed at another size: print it again',
        'drawn out': 'drawn out one way: print it on another printer',
      }[scale.kind];
      return {
        kind: 'found',
        results: [
          { symbol: 'verdict', meaning: 'whether to measure with it', value: verdict, unit: '' },
          { symbol: 's', meaning: 'size of what is printed, of its true size', value: 100 * mean, unit: '%' },
          ...(scale.kind === 'scaled'
            ? [{ symbol: 'print at', meaning: 'what to set the printer to', value: scale.printAt_pct, unit: '%' }]
            : []),
          ...(scale.kind === 'drawn out'
            ? []
            : [{ symbol: '10', meaning: 'a thing the card says is 10 mm', value: 10 * mean, unit: 'mm' }]),
        ],
        working: [
          {
            symbol: 's across',
            meaning: 'across the page',
            value: 100 * scale.across,
            unit: '%',
            formula: `measured/${across_mm}`,
          },
          {
            symbol: 's down',
            meaning: 'down the page',
            value: 100 * scale.down,
            unit: '%',
            formula: `measured/${down_mm}`,
          },
        ],
        sources: [
          {
            title: 'within 0.4 % on both lines counts as true; 0.8 % between them as drawn out',
            seen: 'our assumption',
          },
        ],
        limits: ['Paper swells in the damp by up to a hundredth: measure the lines again on the day.'],
        cautions: ['A size read from paper finds the part; what carries a load is measured with a calliper.'],
      };
    },
  });
}
