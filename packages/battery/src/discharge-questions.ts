import { inBase, inUnit } from '#units';
import { amount, assuming, choice, duration, type Field, number, type Question, question } from '#working';
import { type DataPageName, dataPages } from '../tables/data-pages.read-2026-11.ts';
import { cautions, chemistryField, heatField, sizeField, sources } from './battery-fields.ts';
import { capacityShare_pct } from './battery-heat.ts';
import {
  capacityInHours_Ah,
  exponentOfTests,
  hoursAtCurrent,
  hoursByOldForm,
  pageCapacity_Ah,
  usualExponent,
} from './discharge-rate.ts';
import { restCoefficient_V_C } from './rest-charge.ts';
import { tableValue } from './table-value.ts';

/** The questions about what a battery gives when asked fast or cold. A function, so that an app that asks none carries none. */
export function dischargeQuestions(): readonly Question[] {
  return [peukertQuestion(), exponentQuestion(), rateQuestion(), temperatureQuestion()];
}

type Reading = 'rated hours' | 'one ampere';

function peukertQuestion() {
  return question({
    id: 'battery.peukert',
    title: 'How long does it last at this current, by Peukert’s law?',
    fields: {
      capacity: amount('charge', 'Ah', 0.5, 5000, 'capacity'),
      reading: assuming(
        choice(
          [
            { id: 'rated hours', title: 'the capacity is for so many hours, as labels give it: t = H·(C/(I·H))^k' },
            { id: 'one ampere', title: 'the capacity is that at one ampere, as in the old form: t = C/I^k' },
          ],
          'how the law is read',
        ) as Field<Reading>,
        'rated hours',
        'rated hours',
        'labels give the capacity for 20 hours',
      ),
      rated: assuming(
        duration('h', 0.5, 200, 'hours the capacity is given for'),
        inBase('duration', 20, 'h'),
        '20 h',
        'the usual label; some give 10 or 100 h',
      ),
      current: amount('current', 'A', 0.01, 5000, 'current drawn'),
      exponent: number('', 1, 2, 'Peukert’s exponent'),
    },
    answer: ({ capacity, reading, rated, current, exponent }) => {
      const rated_h = inUnit('duration', rated, 'h');
      const byRated = hoursAtCurrent(capacity, rated_h, current, exponent);
      const byOld = hoursByOldForm(capacity, current, exponent);
      const hours = reading === 'rated hours' ? byRated : byOld;
      return {
        kind: 'found',
        results: [
          { symbol: 't', meaning: 'time to empty', value: hours, unit: 'h' },
          { symbol: 'I·t', meaning: 'given at this current', value: hours * current, unit: 'Ah' },
        ],
        working: [
          {
            symbol: 't rated',
            meaning: 'with the capacity for the rated hours',
            value: byRated,
            unit: 'h',
            formula: 'H·(C/(I·H))^k',
          },
          { symbol: 't old', meaning: 'with the capacity at one ampere', value: byOld, unit: 'h', formula: 'C/I^k' },
        ],
        sources: [{ title: 'W. Peukert (1897) in both forms met in print', seen: 'read second-hand' }],
        limits: [
          'The trap: many pages put the 20-hour capacity into the old form. That makes 14.5 h of 100 Ah at 5 A, which the label says last 20 h.',
          'Only for one steady current, warm, and near the rates the exponent was found at. After a fast discharge and a rest more can be had.',
        ],
        cautions: [],
      };
    },
  });
}

function exponentQuestion() {
  return question({
    id: 'battery.peukert-exponent',
    title: 'What exponent do two discharges give?',
    fields: {
      'first-current': amount('current', 'A', 0.001, 5000, 'current of the first'),
      'first-time': duration('h', 0.01, 1000, 'time it took'),
      'second-current': amount('current', 'A', 0.001, 5000, 'current of the second'),
      'second-time': duration('h', 0.01, 1000, 'time it took'),
    },
    conflict: (given) =>
      given['first-current'] === given['second-current']
        ? {
            where: 'second-current',
            wrong: 'both currents are the same',
            right: 'give two discharges at different currents',
          }
        : null,
    answer: (given) => {
      const test = (current: number, minutes: number) => ({ amps: current, hours: minutes / 60 });
      const k = exponentOfTests(
        test(given['first-current'], given['first-time']),
        test(given['second-current'], given['second-time']),
      );
      return {
        kind: 'found',
        results: [{ symbol: 'k', meaning: 'Peukert’s exponent', value: k, unit: '' }],
        working: [
          ...(['flooded', 'agm', 'gel', 'lifepo4'] as const).map((chemistry) => {
            const { low, likely, high } = usualExponent[chemistry];
            return {
              symbol: `usual ${chemistry}`,
              meaning: 'what the trade gives',
              value: likely,
              low,
              high,
              unit: '',
              formula: 'trade range',
            };
          }),
        ],
        sources: [{ title: 'k = ln(t2/t1)/ln(I1/I2)', seen: 'read second-hand' }, sources.recalledSheets],
        limits: [
          'Both from the same battery, charged the same way, not far apart in time or temperature. It grows towards fast rates in small batteries.',
        ],
        cautions: [],
      };
    },
  });
}

function rateQuestion() {
  return question({
    id: 'battery.rate',
    title: 'What does it give when emptied in so many hours?',
    fields: {
      chemistry: chemistryField(),
      size: sizeField(),
      hours: duration('h', 0.5, 100, 'time in which it is emptied'),
    },
    answer: ({ chemistry, size, hours }) => {
      const h = inUnit('duration', hours, 'h');
      const { low, likely, high } = capacityInHours_Ah(chemistry, size, h);
      return {
        kind: 'found',
        results: [
          { symbol: 'C', meaning: 'given in that time, new and at 25 °C', value: likely, low, high, unit: 'Ah' },
          {
            symbol: 'I',
            meaning: 'current that empties it in that time',
            value: likely / h,
            low: low / h,
            high: high / h,
            unit: 'A',
          },
        ],
        working: [
          {
            symbol: 'k',
            meaning: 'usual exponent',
            value: usualExponent[chemistry].likely,
            low: usualExponent[chemistry].low,
            high: usualExponent[chemistry].high,
            unit: '',
            formula: 'trade range',
          },
          ...(Object.keys(dataPages) as DataPageName[]).map((page) => ({
            symbol: `${page} page`,
            meaning: `what the data page of a ${dataPages[page].nominal_Ah} Ah AGM battery says of that one`,
            value: pageCapacity_Ah(page, h),
            unit: 'Ah',
            formula: 'straight line between its figures, as logarithms',
          })),
        ],
        sources: [sources.dataPages, sources.recalledSheets],
        limits: ['New and full at 25 °C. AGM by the two data pages, others by their exponent alone.'],
        cautions: [],
      };
    },
  });
}

function temperatureQuestion() {
  return question({
    id: 'battery.temperature',
    title: 'What does the cold take?',
    fields: { chemistry: chemistryField(), temperature: heatField('what labels are for') },
    answer: ({ chemistry, temperature }) => {
      const { low, likely, high } = capacityShare_pct(chemistry, temperature);
      const coefficient = restCoefficient_V_C(chemistry);
      const pastPage = (page: DataPageName) =>
        tableValue(dataPages[page].heat, temperature, temperature < 25 ? 'slope drawn on' : 'end value');
      return {
        kind: 'found',
        results: [
          { symbol: 'share', meaning: 'of the capacity at 25 °C', value: likely, low, high, unit: '%' },
          {
            symbol: 'dU/dT',
            meaning: 'change of the rested volts, 12 V battery',
            value: 1000 * coefficient.likely,
            low: 1000 * coefficient.low,
            high: 1000 * coefficient.high,
            unit: 'mV/°C',
          },
        ],
        working: [
          {
            symbol: 'share of rated',
            meaning: 'the same as a part of one',
            value: likely / 100,
            low: low / 100,
            high: high / 100,
            unit: 'of rated',
            formula: 'share/100',
          },
          ...(chemistry === 'lifepo4'
            ? []
            : (Object.keys(dataPages) as DataPageName[]).map((page) => ({
                symbol: `${page} page`,
                meaning: `a ${dataPages[page].nominal_Ah} Ah AGM battery`,
                value: pastPage(page),
                unit: '%',
                formula: 'straight line between its figures',
              }))),
        ],
        sources: [
          ...(chemistry === 'lifepo4' ? [] : [sources.dataPages]),
          {
            title: 'about 1 % for each °C below 25 °C; rested volts 0.2 to 0.3 mV/°C a cell; LiFePO4',
            seen: 'recalled',
          },
        ],
        limits: [
          'What the cold keeps back is there again when it is warm. The change of rested volts is small and upward; that of charging volts is ten times as large and downward.',
          ...(chemistry === 'flooded' || chemistry === 'gel' ? ['By AGM pages: no page for this kind was found.'] : []),
        ],
        cautions:
          chemistry === 'lifepo4'
            ? [cautions.coldLithium]
            : ['An empty lead battery freezes below about −10 °C and bursts: keep it charged in the cold.'],
      };
    },
  });
}
