import { amount, assuming, type Figure, type Question, question, series, type WorkingLine } from '#working';
import { assumedLoadedResistance_mohm, batteryCard, cardCondition } from './battery-card.ts';
import { cautions, chemistryField, nominalField, nominalVolts, sizeField } from './battery-fields.ts';
import { floor_pct } from './keeping.ts';
import type { Band } from './rest-charge.ts';

/** The question behind the printed card. A function, so that an app that asks none carries none. */
export function cardQuestions(): readonly Question[] {
  return [cardQuestion()];
}

function cardQuestion() {
  return question({
    id: 'battery.card',
    title: 'The card of this battery: what do its volts mean?',
    fields: {
      chemistry: chemistryField(),
      size: sizeField(),
      nominal: nominalField(),
      load: amount('current', 'A', 0, 100, 'usual load at anchor'),
      resistance: assuming<number | null>(
        amount('resistance', 'mΩ', 0.1, 5000, 'resistance it shows under that load after an hour'),
        null,
        'by kind and size',
        'no load test was made',
      ),
      temperatures: assuming(
        series('temperature', '°C', -20, 50, { least: 1, most: 6 }, 'temperatures of the battery'),
        [0, 10, 20, 30].map((heat) => heat as never),
        '0, 10, 20, 30 °C',
        'the four columns of the card',
      ),
    },
    answer: ({ chemistry, size, nominal, load, resistance, temperatures }) => {
      const nominal_V = nominalVolts(nominal);
      const own = resistance === null ? null : 1000 * resistance;
      const loaded_mohm =
        own === null
          ? assumedLoadedResistance_mohm(chemistry, size, nominal_V)
          : { low: 0.85 * own, likely: own, high: 1.15 * own };
      const card = batteryCard({
        chemistry,
        nominal_V,
        load_A: load,
        loaded_mohm,
        temperatures_C: temperatures,
        floor_pct: floor_pct(chemistry),
        step_V: 0.1,
      });
      const figure = (symbol: string, meaning: string, { low, likely, high }: Band, unit: string): Figure => ({
        symbol,
        meaning,
        value: likely,
        low,
        high,
        unit,
      });
      const results: Figure[] = card.rows.flatMap(({ volts, cells }) =>
        cells.flatMap(({ battery_C, rested, underLoad }) => [
          figure(`${volts.toFixed(2)} V, ${battery_C} °C, rested`, beyondInWords[rested.beyond ?? 'in'], rested, '%'),
          figure(
            `${volts.toFixed(2)} V, ${battery_C} °C, under load`,
            beyondInWords[underLoad.beyond ?? 'in'],
            underLoad,
            '%',
          ),
        ]),
      );
      return {
        kind: 'found',
        results: [
          ...card.floor.map(({ battery_C, rested_V }) =>
            figure(
              `floor, ${battery_C} °C, rested`,
              `volts at ${card.floor_pct} %, the lowest charge planned for`,
              rested_V,
              'V',
            ),
          ),
          ...card.floor.map(({ battery_C, underLoad_V }) =>
            figure(`floor, ${battery_C} °C, under load`, `the same with ${load} A drawn`, underLoad_V, 'V'),
          ),
          ...results,
        ] as [Figure, ...Figure[]],
        working: [
          {
            ...figure(
              'R',
              own === null ? 'under load, by kind and size' : 'under load, as given, 15 % either way',
              loaded_mohm,
              'mΩ',
            ),
            formula: own === null ? 'two to five times that of a new battery at 1 kHz' : 'load test',
          },
          ...card.sag.map(
            ({ battery_C, volts }): WorkingLine => ({
              ...figure(`sag, ${battery_C} °C`, 'what the load takes off the volts', volts, 'V'),
              formula: 'I·R, more in the cold',
            }),
          ),
        ],
        sources: [
          { title: 'rested volts: the tables in print (tables/rest-volts)', seen: 'read second-hand' },
          { title: 'resistance under load by kind and size', seen: 'our assumption' },
        ],
        limits: [
          cardCondition,
          'For this load only: at twice the load the volts fall twice as far.',
          'Percent is of what the battery holds now, not of its label.',
        ],
        cautions: [cautions.shortCircuit],
      };
    },
  });
}

const beyondInWords = {
  in: 'charge, of what the battery holds',
  above: 'reads higher than a rested battery can: it has been on charge',
  below: 'flat, or not in order',
} as const;
