import { addDays, type Day, daysBetween } from '#units';
import {
  assuming,
  choice,
  count,
  day,
  type Fault,
  type Field,
  number,
  type Question,
  question,
  type Source,
} from '#working';
import { countBand } from './beta-share.ts';
import { type DueRule, dayAfter, type IntervalUnit, intervalInWords } from './due-rule.ts';
import { daysUntilUse, furthestAhead_d } from './use-rate.ts';
import { dueCautions } from './usual-interval.ts';
import { wearOf } from './wear.ts';

/** The questions about when a thing falls due. A function, so that an app that asks none carries none. */
export function forecastQuestions(): readonly Question[] {
  return [byDateQuestion(), byUseQuestion(), paceQuestion(), wearQuestion()];
}

const ours: Source = { title: 'README of dues', seen: 'our derivation' };

/** What is wrong where the years after a day run past the last year that days are known of. */
function withinCalendar(where: string, from: Day, years: number): Fault | null {
  const last = 2199;
  return Number(from.slice(0, 4)) + years < last
    ? null
    : { where, wrong: `${years} years after ${from} lie past ${last}`, right: `a day in or before ${last}` };
}

const todayField = () => day('today');

function byDateQuestion() {
  return question({
    id: 'dues.by-date',
    title: 'When does it fall due by date?',
    fields: {
      done: day('the day it was last done, made or fitted'),
      every: count(1, 1000, 'how many of the unit from one time to the next'),
      unit: assuming(
        choice<IntervalUnit>(
          (['days', 'weeks', 'months', 'years'] as const).map((id) => ({ id, title: id })),
          'its unit',
        ),
        'months' as IntervalUnit,
        'months',
        'most intervals are told in months',
      ),
      printed: assuming<Day | null>(day('the last day printed on the thing'), null, 'none', 'no date is printed on it'),
    },
    conflict: ({ done, every, unit }) =>
      withinCalendar('every', done, Math.ceil(every / ({ days: 365, weeks: 52, months: 12, years: 1 } as const)[unit])),
    answer: ({ done, every, unit, printed }) => {
      const byInterval = dayAfter(done, { count: every, unit });
      return {
        kind: 'found',
        results: [
          { symbol: 'due', meaning: 'the day it falls due', value: printed ?? byInterval, unit: '' },
          {
            symbol: 'by',
            meaning: 'what makes it due',
            value: printed === null ? intervalInWords({ count: every, unit }) : 'the date printed on it',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'by the interval',
            meaning: printed === null ? 'the day' : 'the day, which does not count beside a printed one',
            value: byInterval,
            unit: '',
            formula: `${done} and ${every} ${unit}; the month’s last day where it has none such`,
          },
        ],
        sources: [ours],
        limits: ['By date alone: use and wear may bring it sooner.'],
        cautions: [dueCautions.printed],
      };
    },
  });
}

function byUseQuestion() {
  return question({
    id: 'dues.by-use',
    title: 'When does it fall due by use?',
    fields: {
      after: number('', 0.1, 100_000, 'use from one time to the next: sails, tows, launches, hours, kilometres'),
      used: number('', 0, 100_000, 'used since it was last done'),
      times: count(0, 10_000, 'times such use was written down'),
      total: number('', 0, 1_000_000, 'and how much it was in all'),
      days: count(1, 3660, 'in how many days'),
      today: todayField(),
    },
    conflict: ({ times, total, today }) =>
      (times === 0) === (total === 0)
        ? withinCalendar('today', today, furthestAhead_d / 365)
        : {
            where: 'total',
            wrong: `${times} times cannot come to ${total}`,
            right: 'both nought, or neither',
          },
    answer: ({ after, used, times, total, days, today }) => {
      const shown = {
        sources: [
          ours,
          { title: 'predictive distribution of a Poisson process under Jeffreys’ prior', seen: 'recalled' } as const,
        ],
        limits: [
          'The pace of the days looked at is taken to go on: a season is faster than its year, a winter slower.',
          'Use that nobody wrote down is not counted.',
        ],
        cautions: [dueCautions.custom],
      };
      const left = after - used;
      const until = daysUntilUse(
        left,
        { use: 'sail', entries: times, total, days, squares: times === 0 ? 0 : (total * total) / times },
        [],
        today,
      );
      const working = [
        { symbol: 'r', meaning: 'use still to come', value: Math.max(0, left), unit: '', formula: 'after − used' },
      ];
      if (until === null)
        return {
          kind: 'truth',
          statement: 'It cannot be foretold',
          because: 'no such use was written down',
          results: [],
          working,
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          {
            symbol: 'n',
            meaning: 'days until it falls due',
            value: until.likely,
            low: until.low,
            high: until.high,
            unit: 'd',
          },
          { symbol: 'due', meaning: 'likely day', value: addDays(today, until.likely), unit: '' },
          { symbol: 'from', meaning: '1 of 10 before', value: addDays(today, until.low), unit: '' },
          { symbol: 'to', meaning: '1 of 10 after', value: addDays(today, until.high), unit: '' },
        ],
        working: [
          ...working,
          {
            symbol: 'n at p',
            meaning: 'days by which it has come, in p of 10',
            value: `${until.low}, ${until.likely}, ${until.high}`,
            unit: 'd',
            formula:
              'days · x/(1−x), x where the beta distribution (r/u, total/u + ½) has p below; u the usual size of one entry',
          },
        ],
        ...shown,
      };
    },
  });
}

function paceQuestion() {
  return question({
    id: 'dues.use-rate',
    title: 'How often is she used?',
    fields: {
      times: count(0, 10_000, 'times it was written down'),
      days: assuming(count(1, 3660, 'in how many days'), 365, '365', 'a year'),
      confidence: assuming(number('%', 50, 99, 'how sure the band is to be'), 80, '80 %', 'eight of ten'),
    },
    answer: ({ times, days, confidence }) => {
      const band = countBand(times, confidence / 100);
      const a_year = 365 / days;
      return {
        kind: 'found',
        results: [
          {
            symbol: 'a year',
            meaning: 'times a year, at that pace',
            value: times * a_year,
            low: band.low * a_year,
            high: band.high * a_year,
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'low',
            meaning: 'least mean count',
            value: band.low,
            unit: '',
            formula: 'P(this or more) = ½(1 − sure)',
          },
          {
            symbol: 'high',
            meaning: 'greatest mean count',
            value: band.high,
            unit: '',
            formula: 'P(this or fewer) = ½(1 − sure)',
          },
        ],
        sources: [
          {
            title: 'F. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28 (1936)',
            seen: 'read second-hand',
          },
        ],
        limits: ['Uses are taken to come one at a time by chance; a week’s cruise is not.'],
        cautions: [],
      };
    },
  });
}

function wearQuestion() {
  return question({
    id: 'dues.wear',
    title: 'When is it worn to its limit?',
    fields: {
      first: number('', -10_000, 100_000, 'what was measured first, or its size when new'),
      'first-day': day('on which day'),
      last: number('', -10_000, 100_000, 'what was measured last, in the same unit'),
      'last-day': day('on which day'),
      limit: number('', -10_000, 100_000, 'the limit, in the same unit'),
      way: assuming(
        choice<'falls' | 'rises'>(
          [
            { id: 'falls', title: 'it wears down to the limit' },
            { id: 'rises', title: 'it grows up to the limit' },
          ],
          'which way it goes',
        ) as Field<'falls' | 'rises'>,
        'falls' as 'falls' | 'rises',
        'down',
        'most things wear down',
      ),
      within: assuming(
        number('', 0, 1000, 'how near it is measured'),
        0,
        'exactly',
        'not said: the band is then a line',
      ),
    },
    conflict: (values) =>
      daysBetween(values['first-day'], values['last-day']) > 0
        ? withinCalendar('last-day', values['last-day'], furthestAhead_d / 365)
        : { where: 'last-day', wrong: 'it is not after the first', right: `a day after ${values['first-day']}` },
    answer: (values) => {
      const rule: NonNullable<DueRule['condition']> = {
        measure: 'measure',
        unit: '',
        limit: values.limit,
        way: values.way,
        within: values.within,
      };
      const wear = wearOf(
        rule,
        [
          { on: values['first-day'], value: values.first },
          { on: values['last-day'], value: values.last },
        ],
        null,
      );
      const shown = {
        sources: [{ title: 'a straight line through two measures', seen: 'our assumption' } as const],
        limits: ['Wear that quickens, as of broken strands or salt in a bearing, comes sooner than its line.'],
        cautions: [dueCautions.custom],
      };
      if (wear.kind === 'at its limit')
        return {
          kind: 'truth',
          statement: 'It is due now',
          because: `${wear.value} is at the limit of ${values.limit} or past it`,
          results: [{ symbol: 'due', meaning: 'since', value: wear.since, unit: '' }],
          working: [],
          ...shown,
        };
      if (wear.kind !== 'on its way')
        return {
          kind: 'truth',
          statement: 'No wear is seen',
          because: 'it does not move toward its limit, as near as it was measured',
          results: [],
          working: [],
          ...shown,
        };
      const { days, a_year } = wear;
      return {
        kind: 'found',
        results: [
          {
            symbol: 'n',
            meaning: 'days from the last measure',
            value: days.likely,
            low: days.low,
            high: days.high,
            unit: 'd',
          },
          { symbol: 'due', meaning: 'likely day', value: addDays(wear.last.on, days.likely), unit: '' },
        ],
        working: [
          {
            symbol: 'w',
            meaning: 'wear a year',
            value: a_year,
            unit: '',
            formula: '365.25 · |last − first| / days between',
          },
        ],
        ...shown,
      };
    },
  });
}
