import { inBase } from '#units';
import { assuming, number, type Question, question, type Source, temperature } from '#working';
import {
  chargeGravity,
  correctedGravity,
  freezingPoint_C,
  gravityAt_C,
  gravityCharge_pct,
  gravityCorrection_1_C,
  gravityVolts,
} from './acid.ts';
import { cautions, chargeField } from './battery-fields.ts';

/** The questions about the acid of a flooded battery. A function, so that an app that asks none carries none. */
export function acidQuestions(): readonly Question[] {
  return [gravityQuestion(), chargeGravityQuestion()];
}

const tables: Source[] = [
  { title: 'a battery seller’s table of specific gravity, 1.265 full (tables/acid)', seen: 'read second-hand' },
  { title: 'US Army TM 5-1185, table II: 1.280 full', seen: 'read' },
];
const fullField = () =>
  assuming(
    number('', 1.22, 1.31, 'specific gravity of this battery when full'),
    1.265,
    '1.265',
    'makers fill with 1.265 or 1.280, less in the tropics: read yours once after a full charge',
  );
const handling = [cautions.acid, cautions.hydrogen];
const limits = [
  'Flooded batteries only: nobody can read a sealed one.',
  'Not within hours of topping up with water, nor before gassing has stirred the acid.',
  'A cell 0.025 under its neighbours is failing, whatever the others say.',
];

function gravityQuestion() {
  return question({
    id: 'battery.gravity',
    title: 'What does the hydrometer say?',
    fields: {
      reading: number('', 1, 1.3, 'specific gravity read'),
      acid: assuming(
        temperature('°C', -30, 60, 'temperature of the acid'),
        inBase('temperature', 80, '°F'),
        '80 °F (26.7 °C)',
        'the temperature the tables hold for',
      ),
      full: fullField(),
    },
    answer: ({ reading, acid, full }) => {
      const corrected = correctedGravity(reading, acid);
      const charge = gravityCharge_pct(corrected, full);
      return {
        kind: 'found',
        results: [
          {
            symbol: 'charge',
            meaning: 'of a battery that is full at the gravity given',
            value: charge.likely,
            low: charge.low,
            high: charge.high,
            unit: '%',
          },
          {
            symbol: 'U',
            meaning: 'volts it should read when rested, six cells',
            value: gravityVolts(corrected, 6),
            unit: 'V',
          },
          {
            symbol: 'Tf',
            meaning: 'temperature at which this acid begins to freeze',
            value: freezingPoint_C(Math.min(1.3, Math.max(1, corrected))),
            unit: '°C',
          },
        ],
        working: [
          {
            symbol: 'SG',
            meaning: 'reading put right to 80 °F',
            value: corrected,
            unit: 'SG',
            formula: `reading + 0.00072·(T − ${gravityAt_C.toFixed(1)})`,
          },
          {
            symbol: 'per 10 °F',
            meaning: 'what is added for each 10 °F above 80 °F and taken off below',
            value: gravityCorrection_1_C * (10 / 1.8),
            unit: 'SG per 10 °F',
            formula: 'hydrometer practice',
          },
          {
            symbol: 'U6',
            meaning: 'rested volts of six cells',
            value: gravityVolts(corrected, 6),
            unit: 'V',
            formula: '6·(SG + 0.84)',
          },
        ],
        sources: [
          ...tables,
          { title: 'correction: US Army TM 5-3820-256-24-4', seen: 'read second-hand' },
          {
            title: 'volts: V of a cell ≈ SG + 0.84 (electrapk.com); 0.845 is printed too and gives 0.03 V more',
            seen: 'read second-hand',
          },
          { title: 'freezing: US Army OD1002 and TM 5-1185, table III', seen: 'read' },
        ],
        limits,
        cautions: handling,
      };
    },
  });
}

function chargeGravityQuestion() {
  return question({
    id: 'battery.charge-gravity',
    title: 'What should the hydrometer read at a charge?',
    fields: { charge: chargeField(), full: fullField() },
    answer: ({ charge, full }) => {
      const { low, likely, high } = chargeGravity(charge, full);
      return {
        kind: 'found',
        results: [{ symbol: 'SG', meaning: 'specific gravity at 80 °F', value: likely, low, high, unit: 'SG' }],
        working: [],
        sources: tables,
        limits,
        cautions: handling,
      };
    },
  });
}
