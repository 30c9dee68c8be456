/** The limits of the papers and plates that were entered. */
import type { TrailerRecord } from '#boat-book';
import { ballLimit, type PaperLimits, tyreLoad } from '#trailer';
import { listInWords } from '../when-in-words.ts';
import { kgSaid } from './trailer-words.ts';

/** What all tyres together may carry by their index; null: it is not read, or the table has none such. [kg] */
export function tyresCarry_kg({ tyres }: TrailerRecord): number | null {
  if (tyres === null || tyres.loadIndex === null) return null;
  const each = tyreLoad(tyres.loadIndex);
  return each && each.kg * tyres.count;
}

/** The limits that were entered, as they are looked at. */
export function paperLimits(record: TrailerRecord): PaperLimits {
  const fields = [
    'carBall_kg',
    'barBall_kg',
    'couplingBall_kg',
    'gross_kg',
    'axle_kg',
    'train_kg',
    'carKerb_kg',
    'carLaden_kg',
  ] as const;
  const tyres_kg = tyresCarry_kg(record);
  return {
    braked: record.braked,
    ...Object.fromEntries(fields.flatMap((field) => (record[field] === null ? [] : [[field, record[field]]]))),
    ...(tyres_kg === null ? {} : { tyres_kg }),
  };
}

const ballNames = { car: 'car', bar: 'tow bar', coupling: 'coupling' } as const;

/** `the tow bar’s 50 kg, the lowest of car, tow bar and coupling`; null: none was entered */
export function ballLimitSaid(record: TrailerRecord): string | null {
  const lowest = ballLimit(paperLimits(record));
  if (!lowest) return null;
  const entered = (['car', 'bar', 'coupling'] as const).filter((of) => record[`${of}Ball_kg`] !== null);
  const among = entered.length > 1 ? `, the lowest of ${listInWords(entered.map((of) => ballNames[of]))}` : '';
  return `the ${ballNames[lowest.of]}’s ${kgSaid(lowest.kg)}${among}`;
}
