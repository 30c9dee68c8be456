import { choice, type Question, question } from '#working';
import { cautions } from '../cautions.ts';

/** The questions about gear that carries no mark. */
export function unmarkedQuestions(): readonly Question[] {
  return [unmarkedQuestion()];
}

const takenFor = {
  chain: { value: 30, unit: 'grade', meaning: 'grade to reckon with: proof coil, the weakest sold' },
  wire: { value: 0.25, unit: '', meaning: 'share of its nominal strength that it may work at' },
  rope: { value: 'polypropylene', unit: '', meaning: 'fibre to reckon with: the weakest of the synthetic ones' },
} as const;

function unmarkedQuestion() {
  return question({
    id: 'loads.unmarked',
    title: 'What is gear without a mark taken for?',
    fields: {
      gear: choice(
        [
          { id: 'chain', title: 'chain' },
          { id: 'wire', title: 'wire' },
          { id: 'rope', title: 'synthetic rope' },
        ],
        'what carries no mark',
      ),
    },
    answer: ({ gear }) => ({
      kind: 'found',
      results: [{ symbol: 'taken for', ...takenFor[gear] }],
      working: [
        {
          symbol: 'rule',
          meaning: 'the weakest that it could be; a mark on the gear wins',
          value: '49 CFR 393.108 (c) to (e)',
          unit: '',
          formula: 'printed',
        },
      ],
      sources: [{ title: '49 CFR 393.108 (c), (d), (e)(1)', seen: 'read second-hand' }],
      limits: [
        'The rule is for tie-downs on the road. A load path of ours leaves unmarked gear unknown until you say.',
      ],
      cautions: [cautions.guidance],
    }),
  });
}
