import { choice, count, type Question, question, type Source } from '#working';
import {
  allUsual,
  dueCautions,
  throwAwayExtinguisherOut,
  type Usual,
  type UsualId,
  usualOf,
  usualSource,
} from './usual-interval.ts';

/** The questions about what is usual. A function, so that an app that asks none carries none. */
export function usualQuestions(): readonly Question[] {
  return [usualQuestion(), atOnceQuestion(), extinguisherQuestion(), overheadQuestion()];
}

const shown = (usual: Usual) => ({
  sources: [usualSource(usual)],
  limits: ['Custom for the most part, not law: salt, sun, hard use and neglect shorten it.'],
  cautions: [dueCautions.custom, ...(usual.group === 'safety gear' ? [dueCautions.printed, dueCautions.safety] : [])],
});

function usualQuestion() {
  return question({
    id: 'dues.usual',
    title: 'How often is it usually done?',
    fields: {
      of: choice<UsualId>(
        allUsual().map(({ id, title }) => ({ id: id as UsualId, title })),
        'what it is',
      ),
    },
    answer: ({ of }) => {
      const usual = usualOf(of)!;
      const gone = usual.unit === '%';
      return {
        kind: 'found',
        results: [
          {
            symbol: gone ? 'gone' : 'every',
            meaning: gone ? 'of it gone, at which it is due' : 'from one time to the next: the short end of the band',
            value: usual.low,
            low: usual.low,
            high: usual.high,
            unit: usual.unit,
          },
          ...(usual.engine_h === null
            ? []
            : [{ symbol: 'or', meaning: 'of running, whichever comes first', value: usual.engine_h, unit: 'h' }]),
          ...(usual.note === '' ? [] : [{ symbol: 'note', meaning: 'besides', value: usual.note, unit: '' }]),
        ],
        working: [],
        ...shown(usual),
      };
    },
  });
}

/** What waits for no date. */
const atOnce = {
  'broken-strand': {
    title: 'one broken strand in a wire',
    when: 'immediately',
    because: 'the next go quickly: the load is on fewer wires',
    source: { title: 'a reference of seamanship on standing rigging', seen: 'read' },
  },
  'navigation-lights': {
    title: 'navigation lights',
    when: 'each trip at dusk',
    because: 'a lamp fails between one trip and the next',
    source: { title: 'custom', seen: 'common practice' },
  },
} as const satisfies Readonly<Record<string, { title: string; when: string; because: string; source: Source }>>;

function atOnceQuestion() {
  return question({
    id: 'dues.at-once',
    title: 'When is it due, if by no date?',
    fields: {
      seen: choice<keyof typeof atOnce>(
        (Object.keys(atOnce) as (keyof typeof atOnce)[]).map((id) => ({ id, title: atOnce[id].title })),
        'what it is',
      ),
    },
    answer: ({ seen }) => {
      const { when, because, source } = atOnce[seen];
      return {
        kind: 'found',
        results: [
          { symbol: 'when', meaning: 'when it is due', value: when, unit: '' },
          { symbol: 'because', meaning: 'why', value: because, unit: '' },
        ],
        working: [],
        sources: [source],
        limits: [],
        cautions:
          seen === 'broken-strand'
            ? ['Broken strands cut to the bone: leather gloves, and never run a hand along wire.']
            : [],
      };
    },
  });
}

function extinguisherQuestion() {
  return question({
    id: 'dues.throw-away-extinguisher',
    title: 'When does a throw-away extinguisher leave service?',
    fields: { made: count(1950, 2180, 'the year stamped on it') },
    answer: ({ made }) => ({
      kind: 'found',
      results: [
        { symbol: 'out', meaning: 'its last day', value: throwAwayExtinguisherOut(made), unit: '' },
        { symbol: 'rule', meaning: 'as the rule has it', value: '31 December of its twelfth year', unit: '' },
      ],
      working: [
        { symbol: 'year', meaning: 'its twelfth year', value: made + 12, unit: '', formula: 'year stamped + 12' },
      ],
      sources: [{ title: 'US Coast Guard ACN 002/22', seen: 'read' }],
      limits: ['The rule of the United States. Other countries go by the maker, or by a service each year.'],
      cautions: [
        'Sooner when it has been used, when its gauge is low, or its seal is broken.',
        dueCautions.printed,
        dueCautions.safety,
      ],
    }),
  });
}

/** Least distance of a mast from overhead lines, as network operators tell sailors. [m] */
const overhead_m = { 'northern-ireland': 5, 'new-zealand': 4 } as const;

function overheadQuestion() {
  const operator = 'network operators on sailing and on tall things near their lines';
  return question({
    id: 'dues.overhead-lines',
    title: 'What is looked at each time, before the mast goes up?',
    fields: {
      rule: choice<'largest' | keyof typeof overhead_m>(
        [
          { id: 'largest', title: 'not known: the largest of those found' },
          { id: 'northern-ireland', title: 'Northern Ireland' },
          { id: 'new-zealand', title: 'New Zealand' },
        ],
        'whose rule',
      ),
    },
    answer: ({ rule }) => ({
      kind: 'found',
      results: [
        {
          symbol: 'd',
          meaning: 'from the lines to the nearest of mast and rigging, at least',
          value: rule === 'largest' ? Math.max(...Object.values(overhead_m)) : overhead_m[rule],
          unit: 'm',
        },
        {
          symbol: 'look',
          meaning: 'each time, first',
          value: 'look up, rig clear of lines, check the whole path to the ramp and the tide',
          unit: '',
        },
      ],
      working: [],
      sources: [{ title: operator, seen: 'read' }],
      limits: ['The least distance differs by country and by voltage: your own network’s rule comes first.'],
      cautions: ['Masts conduct, and high voltage jumps gaps. Nothing is worth a try under a line.'],
    }),
  });
}
