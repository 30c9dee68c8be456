import { assuming, humidity, number, type Question, question } from '#working';
import { type DataPageName, dataPages } from '../tables/data-pages.read-2026-11.ts';
import { cautions, chemistryField, heatField, sizeField, sources } from './battery-fields.ts';
import {
  cycleLife,
  floor_pct,
  gravityFall_per_day,
  leftAfterMonths_pct,
  newResistance_mohm,
  rechargeFlooded_days,
  selfDischarge_pct_month,
} from './keeping.ts';
import { tableValue } from './table-value.ts';

/** The questions about keeping a battery and what it lasts. A function, so that an app that asks none carries none. */
export function keepingQuestions(): readonly Question[] {
  return [selfDischargeQuestion(), lifeQuestion(), resistanceQuestion()];
}

const pages = Object.keys(dataPages) as DataPageName[];

function selfDischargeQuestion() {
  return question({
    id: 'battery.self-discharge',
    title: 'What is left after a winter on the shelf?',
    fields: {
      chemistry: chemistryField(),
      months: assuming(
        number('months', 0, 24, 'months since it was full, nothing connected'),
        6,
        '6 months',
        'a winter',
      ),
      temperature: heatField('about what sheets give it for; the cold keeps it longer'),
    },
    answer: ({ chemistry, months, temperature }) => {
      const left = leftAfterMonths_pct(chemistry, months, temperature);
      const rate = selfDischarge_pct_month[chemistry];
      return {
        kind: 'found',
        results: [
          { symbol: 'left', meaning: 'of the charge', value: left.likely, low: left.low, high: left.high, unit: '%' },
          {
            symbol: 'rate',
            meaning: 'lost in a month at 20 °C',
            value: rate.likely,
            low: rate.low,
            high: rate.high,
            unit: '% per month',
          },
          ...(chemistry === 'flooded'
            ? [
                { symbol: 'recharge', meaning: 'recharge a stored one every', value: rechargeFlooded_days, unit: 'd' },
                {
                  symbol: 'gravity',
                  meaning: 'fall of the specific gravity in its first month',
                  value: gravityFall_per_day,
                  unit: 'SG per day',
                },
              ]
            : []),
        ],
        working: pages.map((page) => ({
          symbol: `${page} page`,
          meaning: `a ${dataPages[page].nominal_Ah} Ah AGM battery at ${dataPages[page].stored_C} °C`,
          value: tableValue(dataPages[page].stored, months, 'slope drawn on'),
          unit: '%',
          formula: 'straight line between its figures',
        })),
        sources: [
          sources.dataPages,
          { title: 'US Army TM 5-1185 for flooded batteries in storage', seen: 'read' },
          { title: 'data sheets for flooded and LiFePO4; twice as fast for each 10 °C', seen: 'recalled' },
        ],
        limits: ['Nothing connected: a bilge switch, a radio’s memory or an alarm takes more than the battery itself.'],
        cautions:
          chemistry === 'lifepo4'
            ? [cautions.coldLithium]
            : ['A lead battery left low freezes in the winter and sulphates for good.'],
      };
    },
  });
}

function lifeQuestion() {
  return question({
    id: 'battery.life',
    title: 'How many times can it be taken so far down?',
    fields: { chemistry: chemistryField(), depth: humidity('%', 10, 100, 'how far it is taken down each time') },
    answer: ({ chemistry, depth }) => {
      const { low, likely, high } = cycleLife(chemistry, depth);
      return {
        kind: 'found',
        results: [
          { symbol: 'n', meaning: 'times until it holds 80 % of its label', value: likely, low, high, unit: 'cycles' },
          { symbol: 'floor', meaning: 'lowest charge that is planned for', value: floor_pct(chemistry), unit: '%' },
        ],
        working: [],
        sources: [
          ...(chemistry === 'lifepo4'
            ? [{ title: 'a seller’s page: 2000 to 5000, depth not stated', seen: 'read second-hand' as const }]
            : [sources.dataPages]),
          sources.recalledSheets,
          sources.practice,
        ],
        limits: [
          'Very different from one product to the next. Standing low, heat and never coming full end most boats’ batteries before cycles do.',
        ],
        cautions: [],
      };
    },
  });
}

function resistanceQuestion() {
  return question({
    id: 'battery.resistance',
    title: 'What resistance has a new battery of this size?',
    fields: { chemistry: chemistryField(), size: sizeField() },
    answer: ({ chemistry, size }) => {
      const { low, likely, high } = newResistance_mohm(chemistry, size);
      const at_A = size / 20;
      return {
        kind: 'found',
        results: [
          { symbol: 'R', meaning: 'of a 12 V battery, new, full, 25 °C', value: likely, low, high, unit: 'mΩ' },
          {
            symbol: 'sag',
            meaning: 'of the volts at the 20-hour current, from this alone',
            value: (likely * at_A) / 1000,
            low: (low * at_A) / 1000,
            high: (high * at_A) / 1000,
            unit: 'V',
          },
          {
            symbol: 'short',
            meaning: 'current into a dead short, about',
            value: 12_600 / likely,
            low: 12_600 / high,
            high: 12_600 / low,
            unit: 'A',
          },
        ],
        working: [
          {
            symbol: 'R·C',
            meaning: 'much the same over the small sizes of a kind',
            value: (likely * size) / 1000,
            unit: 'Ω·Ah',
            formula: 'R·C',
          },
        ],
        sources: [
          { title: 'data pages: 13.5 mΩ of 14 Ah, 20 mΩ of 7.5 Ah', seen: 'read' },
          { title: 'ranges for 12 to 20 Ah, gel, flooded and LiFePO4', seen: 'recalled' },
        ],
        limits: [
          'By a meter at 1 kHz. Over seconds and minutes under load it looks two to four times as much. Grows with age, cold and towards empty.',
        ],
        cautions: [cautions.shortCircuit, 'A fuse at the battery itself, that can break this current.'],
      };
    },
  });
}
