import { inBase, inUnit } from '#units';
import { amount, assuming, choice, duration, type Field, type Figure, type Question, question } from '#working';
import { type RestTableName, restTables } from '../tables/rest-volts.read-2026-11.ts';
import {
  cautions,
  cellsOf,
  chargeField,
  chemistryField,
  heatField,
  nominalField,
  nominalVolts,
} from './battery-fields.ts';
import type { Chemistry } from './chemistry.ts';
import {
  restCharge,
  restCoefficient_V_C,
  restSources,
  restVolts,
  tablesOf,
  tableTemperature_C,
  tableVolts,
} from './rest-charge.ts';
import { excessAfterCharge_V, type LastUse, restHours } from './rest-hours.ts';

/** The questions about a rested battery. A function, so that an app that asks none carries none. */
export function restQuestions(): readonly Question[] {
  return [restChargeQuestion(), restVoltsQuestion(), restHoursQuestion()];
}

const limitsFor = (chemistry: Chemistry): string[] => [
  'Rested means loads off and panel dark or disconnected for hours: before sunrise is the time. Under load or on charge ask the estimate instead.',
  chemistry === 'lifepo4'
    ? 'Between about 30 and 90 % the volts hardly change: they tell little there, whatever the meter.'
    : 'Tables in print differ by 0.1 V and more; a meter good to 1 % is worth 15 % of charge by itself.',
  'A worn battery holds less: percent is of what it holds now, not of its label.',
];

const lastUseField = () =>
  choice(
    [
      { id: 'charge', title: 'it was charged last' },
      { id: 'load', title: 'it fed a load last' },
    ],
    'what it did last',
  ) as Field<LastUse>;

function restChargeQuestion() {
  return question({
    id: 'battery.rest-charge',
    title: 'How full is a rested battery?',
    fields: {
      chemistry: chemistryField(),
      volts: amount('voltage', 'V', 3, 32, 'volts at the terminals, rested'),
      temperature: heatField(),
      nominal: nominalField(),
    },
    answer: ({ chemistry, volts, temperature, nominal }) => {
      const nominal_V = nominalVolts(nominal);
      const found = restCharge(chemistry, volts, temperature, nominal_V);
      const charge: Figure = {
        symbol: 'charge',
        meaning: 'of what the battery holds',
        value: found.likely,
        low: found.low,
        high: found.high,
        unit: '%',
      };
      const shown = {
        working: tablesOf[chemistry].map((name) => ({
          symbol: `by ${name}`,
          meaning: restTables[name].provenance === 'found' ? 'one table in print' : 'one table, recalled',
          value: tableCharge_pct(name, (volts * 12) / nominal_V - coefficientShift_V(chemistry, temperature)),
          unit: '%',
          formula: 'the charge at which this table has these volts, at 25 °C',
        })),
        sources: restSources(chemistry),
        limits: limitsFor(chemistry),
        cautions: [cautions.shortCircuit],
      };
      if (found.beyond === null) return { kind: 'found', results: [charge], ...shown };
      return {
        kind: 'truth',
        statement:
          found.beyond === 'above'
            ? 'no rested battery of this kind reads so high'
            : 'no rested battery of this kind in order reads so low',
        because:
          found.beyond === 'above'
            ? 'it is on charge or was so not long ago, or the meter or the kind is wrong'
            : 'it is flat beyond any table, a load is on, a cell is dead, or the meter or the kind is wrong',
        results: [charge],
        ...shown,
      };
    },
  });
}

const coefficientShift_V = (chemistry: Chemistry, battery_C: number) =>
  restCoefficient_V_C(chemistry).likely * (battery_C - tableTemperature_C);

/** The charge at which one table has these volts, by halving; 0 or 100 past its ends. */
function tableCharge_pct(name: RestTableName, volts: number): number {
  let low = 0;
  let high = 100;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (tableVolts(name, middle) < volts) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function restVoltsQuestion() {
  return question({
    id: 'battery.rest-volts',
    title: 'What does a battery of this charge read when rested?',
    fields: {
      chemistry: chemistryField(),
      charge: chargeField(),
      temperature: heatField(),
      nominal: nominalField(),
    },
    answer: ({ chemistry, charge, temperature, nominal }) => {
      const nominal_V = nominalVolts(nominal);
      const { low, likely, high } = restVolts(chemistry, charge, temperature, nominal_V);
      const cells = cellsOf(chemistry, nominal_V);
      const coefficient = restCoefficient_V_C(chemistry);
      const mV = 1000 * (nominal_V / 12);
      return {
        kind: 'found',
        results: [
          { symbol: 'U', meaning: 'rested volts at the terminals', value: likely, low, high, unit: 'V' },
          {
            symbol: 'u',
            meaning: 'of one cell',
            value: likely / cells,
            low: low / cells,
            high: high / cells,
            unit: 'V/cell',
          },
        ],
        working: [
          ...tablesOf[chemistry].flatMap((name) => {
            const { provenance, volts_of } = restTables[name];
            const meaning = `${provenance === 'found' ? 'one table in print' : 'one table, recalled'}, at 25 °C`;
            const volts = tableVolts(name, charge);
            const of12V = {
              symbol: name,
              meaning,
              value: volts,
              unit: 'V',
              formula: 'straight line between its rows, 12 V battery',
            };
            return volts_of === 'one cell'
              ? [
                  of12V,
                  {
                    ...of12V,
                    symbol: `${name} cell`,
                    value: volts / 4,
                    unit: 'V/cell',
                    formula: 'straight line between its rows',
                  },
                ]
              : [of12V];
          }),
          {
            symbol: 'dU/dT',
            meaning: 'change of the rested volts with temperature',
            value: mV * coefficient.likely,
            low: mV * coefficient.low,
            high: mV * coefficient.high,
            unit: 'mV/°C',
            formula: `counted from ${tableTemperature_C} °C`,
          },
        ],
        sources: restSources(chemistry),
        limits: limitsFor(chemistry),
        cautions: [cautions.shortCircuit],
      };
    },
  });
}

function restHoursQuestion() {
  return question({
    id: 'battery.rest-hours',
    title: 'How long must a battery stand before its volts mean anything?',
    fields: {
      last: lastUseField(),
      stood: assuming(
        duration('h', 0, 2000, 'time it has stood with loads off and panel dark'),
        inBase('duration', 0, 'h'),
        '0 h',
        'counted from now',
      ),
    },
    answer: ({ last, stood }) => {
      const { least_h, note_h, cautious_h } = restHours[last];
      const stood_h = inUnit('duration', stood, 'h');
      const excess = last === 'charge' ? excessAfterCharge_V(Math.max(1 / 60, stood_h)) : null;
      const left = Math.max(0, cautious_h - stood_h);
      return {
        kind: 'found',
        results: [
          {
            symbol: 'left',
            meaning: 'still to stand for the cautious figure',
            value: left,
            low: Math.max(0, least_h - stood_h),
            high: left,
            unit: 'h',
          },
          ...(excess === null
            ? []
            : [
                {
                  symbol: 'U of the log',
                  meaning: 'what one 35 Ah sealed battery read so long after a charge that ended at 15 V',
                  value: excess.read_V,
                  unit: 'V',
                },
                {
                  symbol: 'too high',
                  meaning: 'over what that battery came to in the end',
                  value: excess.over_V,
                  unit: 'V',
                },
              ]),
        ],
        working: [
          { symbol: 'least', meaning: 'least time in print', value: least_h, unit: 'h', formula: 'a list’s advice' },
          ...(note_h === null
            ? []
            : [
                {
                  symbol: 'note',
                  meaning: 'another source’s time',
                  value: note_h,
                  unit: 'h',
                  formula: 'a hobby battery note',
                },
              ]),
          {
            symbol: 'cautious',
            meaning: 'the longest in use',
            value: cautious_h,
            unit: 'h',
            formula: last === 'charge' ? 'trade practice' : 'as the least: no other is known',
          },
        ],
        sources: [
          { title: 'advice on a list for radio owners: 6 h or more after charge, 1 h after a load', seen: 'read' },
          { title: 'hobby battery note (ichimusai.org/tag/accumulator/): 20 h', seen: 'read second-hand' },
          { title: 'trade practice: 24 h after charge', seen: 'common practice' },
          {
            title: 'one owner’s log of a 35 Ah sealed battery (donsnotes.com/tech/charging-auto.html)',
            seen: 'read second-hand',
          },
        ],
        limits: [
          'Lead batteries. A small load for an hour takes the surface charge off sooner.',
          'The log is of one battery; yours may come down faster.',
        ],
        cautions: [],
      };
    },
  });
}
