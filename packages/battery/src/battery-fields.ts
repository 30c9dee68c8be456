import { inBase } from '#units';
import { amount, assuming, choice, type Field, humidity, type Source, temperature } from '#working';
import { type Chemistry, chemistries } from './chemistry.ts';

/** The fields that questions about a battery share, each made anew. */
export const chemistryField = (): Field<Chemistry> =>
  choice(chemistries, 'what the battery is made of') as Field<Chemistry>;

export const sizeField = () => amount('charge', 'Ah', 1, 1000, 'capacity on the label, at the 20-hour rate');

export const heatField = (why = 'the tables in print hold for 25 °C') =>
  assuming(temperature('°C', -20, 50, 'temperature of the battery'), inBase('temperature', 25, '°C'), '25 °C', why);

export const chargeField = (meaning = 'charge, of what the battery holds') => humidity('%', 0, 100, meaning);

type NominalVolts = '6' | '12' | '24';
export const nominalField = (): Field<NominalVolts> =>
  assuming(
    choice(
      [
        { id: '6', title: '6 V' },
        { id: '12', title: '12 V' },
        { id: '24', title: '24 V' },
      ],
      'nominal volts of the battery',
    ),
    '12',
    '12 V',
    'small boats have 12 V',
  );
export const nominalVolts = (nominal: NominalVolts): 6 | 12 | 24 => (nominal === '6' ? 6 : nominal === '12' ? 12 : 24);

/** Cells in series. */
export const cellsOf = (chemistry: Chemistry, nominal_V: number): number =>
  Math.round(nominal_V / (chemistry === 'lifepo4' ? 3 : 2));

/** What can hurt at a battery, by the work. */
export const cautions = {
  hydrogen:
    'A lead battery on charge gives off hydrogen: open the locker, vent it high, no flame and no spark near it, no sealed box.',
  acid: 'The acid burns skin, eyes and sails: goggles and gloves on, much water at hand before a cap comes off.',
  shortCircuit:
    'A spanner across the terminals glows in a second: rings and watch off, the negative lead off first and on last, the other terminal covered.',
  coldLithium: 'Never charge LiFePO4 below 0 °C: it is damaged inside and can fail later without a sign.',
  label: 'The label and the maker’s sheet win over these figures.',
} as const;

/** What can hurt while this kind of battery is charged. */
export const chargingCautions = (chemistry: Chemistry): string[] =>
  chemistry === 'lifepo4' ? [cautions.coldLithium, cautions.label] : [cautions.hydrogen, cautions.label];

export const sources = {
  dataPages: {
    title: 'data pages of a 14 Ah and a 40 Ah AGM battery (tables/data-pages)',
    seen: 'read',
  },
  recalledSheets: { title: 'usual figures of data sheets and the trade', seen: 'recalled' },
  practice: { title: 'cruising and trade practice', seen: 'common practice' },
} as const satisfies Readonly<Record<string, Source>>;
