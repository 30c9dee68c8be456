import { inBase } from '#units';
import {
  amount,
  assuming,
  choice,
  count,
  type Field,
  number,
  type Question,
  question,
  temperature,
  type WorkingLine,
} from '#working';
import { compensation_mV, equalise_V, gassing_V, lithiumLimits } from '../tables/charging.read-2026-11.ts';
import { dataPages } from '../tables/data-pages.read-2026-11.ts';
import {
  cautions,
  chargeField,
  chargingCautions,
  chemistryField,
  heatField,
  sizeField,
  sources,
} from './battery-fields.ts';
import { chargingVolts, compensatedVolts, floatFigures, meanStoredShare, storedShare } from './charging.ts';
import { airPerGas_m3_Ah, explosiveFrom_pct, gassing_mA_Ah, opening_cm2, ventilation_m3_h } from './hydrogen.ts';

/** The questions about charging. A function, so that an app that asks none carries none. */
export function chargingQuestions(): readonly Question[] {
  return [chargeVoltagesQuestion(), compensatedVoltsQuestion(), efficiencyQuestion(), hydrogenQuestion()];
}

const compensationLines: WorkingLine[] = [
  {
    symbol: 'vendors',
    meaning: 'two vendors, one cell',
    value: compensation_mV.vendors,
    unit: 'mV/°C per cell',
    formula: 'as printed',
  },
  {
    symbol: 'encyclopedia',
    meaning: 'an encyclopedia’s copy, one cell',
    value: compensation_mV.encyclopedia,
    unit: 'mV/°C per cell',
    formula: 'as printed',
  },
  {
    symbol: 'note',
    meaning: 'a hobby note, six cells',
    value: 6 * compensation_mV.note,
    unit: 'mV/°C',
    formula: 'as printed',
  },
];

function chargeVoltagesQuestion() {
  return question({
    id: 'battery.charge-voltages',
    title: 'What voltages is it charged with?',
    fields: { chemistry: chemistryField(), temperature: heatField('what sheets give them for') },
    answer: ({ chemistry, temperature: battery_C }) => {
      const { absorb_V, float_V, compensation_mV_C } = chargingVolts(chemistry, battery_C);
      const band = (
        symbol: string,
        meaning: string,
        { low, likely, high }: { low: number; likely: number; high: number },
        unit: string,
      ) => ({ symbol, meaning, value: likely, low, high, unit });
      const absorb = band('absorption', 'held until the current has fallen off, 12 V battery', absorb_V, 'V');
      if (chemistry === 'lifepo4') {
        const { lowest_cell, nominal_cell, highest_cell } = lithiumLimits;
        return {
          kind: 'found',
          results: [
            absorb,
            { symbol: 'coldest charge', meaning: 'no charging below', value: 0, unit: '°C' },
            { symbol: 'lowest cell', meaning: 'no cell is let below', value: lowest_cell, unit: 'V/cell' },
            { symbol: 'highest cell', meaning: 'nor above', value: highest_cell, unit: 'V/cell' },
          ],
          working: [
            {
              symbol: 'nominal cell',
              meaning: 'nominal volts',
              value: nominal_cell,
              unit: 'V/cell',
              formula: 'the chemistry’s',
            },
          ],
          sources: [
            { title: 'trade pages: 14.6 ± 0.2 V for four cells, 2.5 to 3.65 V a cell', seen: 'read second-hand' },
            { title: 'no charging below 0 °C: lithium plating', seen: 'recalled' },
          ],
          limits: ['Not floated and not compensated for temperature. A lead charger’s equalising stage is off.'],
          cautions: chargingCautions(chemistry),
        };
      }
      const cyclicPages = chemistry === 'agm' ? (['agm14', 'agm40'] as const) : [];
      return {
        kind: 'found',
        results: [
          absorb,
          ...(float_V ? [band('float', 'held for days when full', float_V, 'V')] : []),
          band('compensation', 'for each °C of the battery over 25 °C, six cells', compensation_mV_C, 'mV/°C'),
          {
            symbol: 'bulk',
            meaning: 'current to start with, as a part of the capacity for an hour',
            value: 0.1,
            low: 0.05,
            high: 0.25,
            unit: '× capacity',
          },
          ...(chemistry === 'flooded'
            ? [
                { symbol: 'gassing', meaning: 'where it begins to gas, 20 °C', value: gassing_V, unit: 'V' },
                {
                  symbol: 'equalise',
                  meaning: 'flooded only, now and then, 2 h at most',
                  value: equalise_V,
                  low: equalise_V,
                  high: 16,
                  unit: 'V',
                },
              ]
            : []),
        ],
        working: [
          ...floatFigures(chemistry).flatMap(({ source, printed_V, printed_C, at25_V }): WorkingLine[] => [
            {
              symbol: `float ${source}`,
              meaning: `as printed, for ${printed_C} °C`,
              value: printed_V,
              unit: 'V',
              formula: 'as printed',
            },
            {
              symbol: `float ${source} now`,
              meaning: 'at this temperature by its own change',
              value: compensatedVolts(at25_V, 25, battery_C, 6, compensation_mV[source]),
              unit: 'V',
              formula: `printed + 6·${compensation_mV[source].toFixed(1)} mV·(T − ${printed_C})`,
            },
          ]),
          ...cyclicPages.map((page): WorkingLine => {
            const [low, high] = dataPages[page].cyclic_V;
            return {
              symbol: `absorption ${page} page`,
              meaning: `of a ${dataPages[page].nominal_Ah} Ah AGM battery, 25 °C`,
              value: (low + high) / 2,
              low,
              high,
              unit: 'V',
              formula: 'middle of what is printed',
            };
          }),
          ...compensationLines,
        ],
        sources: [
          {
            title: 'float and compensation: a hobby note, an encyclopedia’s copy, two vendors’ lines (tables/charging)',
            seen: 'read second-hand',
          },
          ...(chemistry === 'agm' ? [sources.dataPages] : []),
          { title: 'absorption: data sheets', seen: 'recalled' },
          { title: 'first current C/20 to C/4 (C/20 to C/10 at donsnotes.com)', seen: 'read second-hand' },
        ],
        limits: [
          'For a battery whose label is lost.',
          ...(chemistry === 'agm' ? ['Sheets differ by 0.6 V for AGM: take the lower, it only takes longer.'] : []),
          ...(chemistry === 'gel' ? ['Gel is spoilt for good by an AGM or flooded setting.'] : []),
        ],
        cautions: [...chargingCautions(chemistry), ...(chemistry === 'flooded' ? [cautions.acid] : [])],
      };
    },
  });
}

function compensatedVoltsQuestion() {
  return question({
    id: 'battery.compensated-volts',
    title: 'What does a charging voltage become at another temperature?',
    fields: {
      volts: amount('voltage', 'V', 1, 64, 'charging volts'),
      for: assuming(
        temperature('°C', -20, 60, 'temperature they are given for'),
        inBase('temperature', 25, '°C'),
        '25 °C',
        'what sheets give them for',
      ),
      temperature: temperature('°C', -20, 60, 'temperature of the battery'),
      cells: assuming(count(1, 24, 'cells in series'), 6, '6', 'a 12 V lead battery'),
      change: assuming(
        number('mV/°C', -8, 0, 'change of one cell for each °C'),
        -4,
        '−4 mV/°C',
        'sources run from −3 to −5',
      ),
    },
    answer: ({ volts, for: from, temperature: battery_C, cells, change }) => ({
      kind: 'found',
      results: [
        {
          symbol: 'U',
          meaning: 'charging volts at the battery’s temperature',
          value: compensatedVolts(volts, from, battery_C, cells, change),
          low: Math.min(
            compensatedVolts(volts, from, battery_C, cells, -3),
            compensatedVolts(volts, from, battery_C, cells, -5),
          ),
          high: Math.max(
            compensatedVolts(volts, from, battery_C, cells, -3),
            compensatedVolts(volts, from, battery_C, cells, -5),
          ),
          unit: 'V',
        },
      ],
      working: compensationLines,
      sources: [{ title: 'tables/charging', seen: 'read second-hand' }],
      limits: ['Lead only: LiFePO4 is charged with the same volts at every temperature it may be charged at.'],
      cautions: [cautions.hydrogen, cautions.label],
    }),
  });
}

function efficiencyQuestion() {
  return question({
    id: 'battery.charge-efficiency',
    title: 'How much of what goes in is stored?',
    fields: {
      chemistry: chemistryField(),
      from: chargeField('charge to begin with'),
      to: chargeField('charge to end with'),
    },
    conflict: ({ from, to }) =>
      to > from
        ? null
        : {
            where: 'to',
            wrong: `the charge ends at ${to} % and begins at ${from} %`,
            right: 'give a higher charge to end with',
          },
    answer: ({ chemistry, from, to }) => {
      const share = meanStoredShare(chemistry, from, to);
      const lithium = chemistry === 'lifepo4';
      return {
        kind: 'found',
        results: [
          { symbol: 'η', meaning: 'ampere-hours stored of those put in', value: share, unit: '' },
          { symbol: 'factor', meaning: 'ampere-hours to put in for one stored', value: 1 / share, unit: '' },
          {
            symbol: 'round trip',
            meaning: 'watt-hours back of those put in, all over',
            value: lithium ? 0.95 : 0.78,
            low: lithium ? 0.92 : 0.7,
            high: lithium ? 0.98 : 0.85,
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'η at the start',
            meaning: 'stored at the charge it begins with',
            value: storedShare(chemistry, from),
            unit: '',
            formula: 'line through the sources’ means',
          },
          {
            symbol: 'η at the end',
            meaning: 'stored at the charge it ends with',
            value: storedShare(chemistry, to),
            unit: '',
            formula: 'line through the sources’ means',
          },
          {
            symbol: 'whole system',
            meaning: 'watt-hours used of those a small solar system made, one measured for 2.5 years',
            value: 0.62,
            unit: '',
            formula: 'as logged',
          },
        ],
        sources: [
          {
            title:
              'J. Stevens and G. Corey, A study of lead-acid battery efficiency near top-of-charge (1996): over 0.95 when low',
            seen: 'read second-hand',
          },
          { title: 'the same: 0.91 from 0 to 84 %, 0.55 from 79 to 84 %, under 0.5 above 90 %', seen: 'recalled' },
          {
            title:
              'round trip: a seller’s comparison; whole system: a physicist’s log (energybulletin.net/print/64424)',
            seen: 'read second-hand',
          },
        ],
        limits: [
          'At the moderate currents of a panel. The last tenth of a lead battery takes at least twice its ampere-hours and most of a day.',
        ],
        cautions: chargingCautions(chemistry),
      };
    },
  });
}

type Plates = keyof typeof gassing_mA_Ah;
type Stage = 'float' | 'boost';

function hydrogenQuestion() {
  return question({
    id: 'battery.hydrogen',
    title: 'How much air must a lead battery have while it charges?',
    fields: {
      plates: choice(
        [
          { id: 'sealed', title: 'valve-regulated: AGM or gel' },
          { id: 'vented', title: 'flooded, with caps' },
        ],
        'how the cells are closed',
      ) as Field<Plates>,
      stage: assuming(
        choice(
          [
            { id: 'boost', title: 'bulk and absorption' },
            { id: 'float', title: 'float' },
          ],
          'stage of the charge',
        ) as Field<Stage>,
        'boost',
        'boost',
        'it gases most then',
      ),
      size: sizeField(),
      cells: assuming(count(1, 24, 'cells in series'), 6, '6', 'a 12 V battery'),
      gassing: assuming<number | null>(
        number('mA/Ah', 0.1, 50, 'gassing current for each Ah'),
        null,
        'by the standard',
        'EN 50272-2 gives it by plates and stage',
      ),
    },
    answer: ({ plates, stage, size, cells, gassing }) => {
      const gas = gassing ?? gassing_mA_Ah[plates][stage];
      const air = ventilation_m3_h(cells, gas, size);
      return {
        kind: 'found',
        results: [
          { symbol: 'Q', meaning: 'air that must pass', value: air, unit: 'm³/h' },
          {
            symbol: 'A',
            meaning: 'free opening, low for inlet and as much high for outlet',
            value: opening_cm2(air),
            unit: 'cm²',
          },
        ],
        working: [
          {
            symbol: 'Igas',
            meaning: 'gassing current',
            value: gas,
            unit: 'mA/Ah',
            formula: gassing === null ? 'by plates and stage' : 'as given',
          },
          {
            symbol: 'q',
            meaning: 'air for an ampere-hour of gas',
            value: airPerGas_m3_Ah,
            unit: 'm³/Ah',
            formula: '24 × 0.42·10⁻³ × 5',
          },
          {
            symbol: 'LEL',
            meaning: 'hydrogen in air that can explode',
            value: explosiveFrom_pct,
            unit: '% by volume',
            formula: 'safety data',
          },
        ],
        sources: [{ title: 'IEC 62485-2 / EN 50272-2: Q = 0.05·n·Igas·C·10⁻³, A = 28·Q', seen: 'read second-hand' }],
        limits: ['Where air moves by itself. A broken regulator makes many times the gas.'],
        cautions: [cautions.hydrogen, ...(plates === 'vented' ? [cautions.acid] : []), cautions.shortCircuit],
      };
    },
  });
}
