import { assuming, choice, count, day, type Field, length, mass, number, type Question, question } from '#working';
import { cautions, sources } from './trailer-fields.ts';
import {
  indexRange,
  leastIndex,
  leastTread_mm,
  speedSymbols,
  type TyreMade,
  tyreAge_years,
  tyreLoad,
  tyreMade,
  tyreSpeed,
  tyreYears,
} from './tyre.ts';

/** The questions about tyres: what they carry, how fast, and how old they are. */
export function tyreQuestions(): readonly Question[] {
  return [tyreLoadQuestion(), tyreNeededQuestion(), tyreSpeedQuestion(), tyreAgeQuestion()];
}

const ofPressure = 'At the pressure its maker gives for that load.';
const tyresField = () => assuming(count(1, 8, 'tyres on the axle or axles'), 2, '2', 'one axle, single wheels');

function tyreLoadQuestion() {
  return question({
    id: 'trailer.tyre-load',
    title: 'What may the tyres carry?',
    fields: {
      index: count(indexRange.low, indexRange.high, 'load index on the tyre; the first of two is for single wheels'),
      tyres: tyresField(),
    },
    answer: ({ index, tyres }) => {
      const { kg, recalled } = tyreLoad(index)!;
      return {
        kind: 'found',
        results: [
          { symbol: 'each', meaning: `one tyre${recalled ? ', recalled' : ''}`, value: kg, unit: 'kg' },
          { symbol: 'all', meaning: `${tyres} tyres`, value: tyres * kg, unit: 'kg' },
        ],
        working: [
          { symbol: 'LI', meaning: 'load index', value: index, unit: '', formula: 'given' },
          { symbol: 'all tyres', meaning: 'on the axle', value: tyres * kg, unit: 'kg', formula: 'tyres × each' },
          {
            symbol: 'twin',
            meaning: 'of a marking with two figures: single wheels first, twin wheels second',
            value: '94/92',
            unit: 'index',
            formula: 'printed',
          },
        ],
        sources: [recalled ? sources.indexRecalled : sources.index, sources.twin],
        limits: [ofPressure, 'The load is not always shared alike between the wheels of two axles.'],
        cautions: [cautions.tyres, cautions.guidance],
      };
    },
  });
}

function tyreNeededQuestion() {
  return question({
    id: 'trailer.tyre-needed',
    title: 'What load index must the tyres have?',
    fields: {
      axle: mass('kg', 1, 5000, 'axle load'),
      tyres: tyresField(),
      spare: assuming(
        number('', 1, 2, 'load allowed for over the load there is'),
        1.1,
        '1.1',
        'a tenth for water, gear and a load that sits to one side: our assumption',
      ),
    },
    answer: ({ axle, tyres, spare }) => {
      const each = (axle * spare) / tyres;
      const index = leastIndex(each);
      const shown = {
        working: [
          { symbol: 'each', meaning: 'a tyre must carry', value: each, unit: 'kg', formula: 'axle·spare/tyres' },
        ],
        limits: [ofPressure],
        cautions: [cautions.tyres, cautions.guidance],
      };
      if (index === null)
        return {
          kind: 'truth',
          statement: 'No index of the table carries it',
          because: `${each.toFixed(0)} kg a tyre is asked for, the table ends at ${tyreLoad(indexRange.high)!.kg} kg`,
          results: [],
          sources: [sources.index],
          ...shown,
        };
      const { kg, recalled } = tyreLoad(index)!;
      return {
        kind: 'found',
        results: [
          { symbol: 'LI', meaning: 'least load index', value: index, unit: 'index' },
          { symbol: 'carries', meaning: `a tyre of that index${recalled ? ', recalled' : ''}`, value: kg, unit: 'kg' },
        ],
        sources: [recalled ? sources.indexRecalled : sources.index],
        ...shown,
      };
    },
  });
}

function tyreSpeedQuestion() {
  return question({
    id: 'trailer.tyre-speed',
    title: 'How fast may the tyre go?',
    fields: {
      symbol: choice(
        speedSymbols.map((id) => ({ id, title: id })),
        'letter after the load index',
      ),
    },
    answer: ({ symbol }) => {
      const { km_h, recalled } = tyreSpeed(symbol)!;
      return {
        kind: 'found',
        results: [{ symbol: 'v', meaning: `highest speed${recalled ? ', recalled' : ''}`, value: km_h, unit: 'km/h' }],
        working: [{ symbol: 'v printed', meaning: 'of the symbol', value: km_h, unit: 'km/h', formula: 'printed' }],
        sources: [recalled ? sources.symbolRecalled : sources.symbol],
        limits: ['The speed limit for trailers is lower almost everywhere.'],
        cautions: [cautions.law, cautions.tyres, cautions.guidance],
      };
    },
  });
}

/** The last figures of the code as typed. */
function codeField(): Field<Exclude<TyreMade, { kind: 'not a date' }>> {
  const meaning = 'the last figures of the code that begins with DOT, week and year';
  return {
    meaning,
    read: (raw) => {
      const made = tyreMade(String(raw));
      return made.kind === 'not a date'
        ? {
            kind: 'not clear',
            wrong: `'${String(raw)}' is no such code: ${made.because}`,
            right: 'give four figures, as in 3519',
          }
        : { kind: 'read', value: made };
    },
    // typed as a whole number would lose the nought of the first weeks
    control: { control: 'text' },
    reference: { meaning, unit: '', takes: 'three or four figures', example: '3519' },
    raw: (fc) => fc.constantFrom('0114', '3513', '5221', '328'),
  };
}

function tyreAgeQuestion() {
  return question({
    id: 'trailer.tyre-age',
    title: 'How old is the tyre?',
    fields: {
      code: codeField(),
      today: day('the day it is asked'),
      tread: assuming<number | null>(
        length('mm', 0, 20, 'tread left at its shallowest'),
        null,
        'not measured',
        'nothing is said of the tread',
      ),
    },
    answer: ({ code, today, tread }) => {
      const age = tyreAge_years(code, today);
      const tread_mm = tread === null ? null : 1000 * tread;
      const verdict =
        age < -0.1
          ? 'made after today: read the code again'
          : age > tyreYears.most
            ? 'past its age: do not use it'
            : age >= tyreYears.replace
              ? 'change it now'
              : tread_mm !== null && tread_mm < leastTread_mm
                ? 'worn out'
                : `good for ${(tyreYears.replace - age).toFixed(1)} years yet by its age`;
      const made =
        code.kind === 'week'
          ? `week ${code.week} of ${code.year}`
          : `week ${code.week} of a year before 2000 that ends in ${code.endsIn}`;
      return {
        kind: 'found',
        results: [
          { symbol: 'verdict', meaning: 'by its age and tread', value: verdict, unit: '' },
          { symbol: 'made', meaning: 'when', value: made, unit: '' },
          {
            symbol: 'age',
            meaning: code.kind === 'week' ? 'of the tyre' : 'of the tyre, at least',
            value: age,
            unit: 'years',
          },
          ...(tread_mm === null ? [] : [{ symbol: 'tread', meaning: 'left', value: tread_mm, unit: 'mm' }]),
        ],
        working: [
          { symbol: 'change at', meaning: 'best', value: tyreYears.replace, unit: 'years', formula: 'advice' },
          { symbol: 'never past', meaning: 'at most', value: tyreYears.most, unit: 'years', formula: 'advice' },
          { symbol: 'least tread', meaning: 'by law in Europe', value: leastTread_mm, unit: 'mm', formula: 'printed' },
        ],
        sources: [
          sources.dot,
          ...(code.kind === 'week' ? [] : [sources.threeFigures]),
          sources.years,
          sources.ageLaw,
          sources.tread,
        ],
        limits: ['A boat trailer stands more than it rolls: its tyres age in the sun before their tread is gone.'],
        cautions: [cautions.tyres, cautions.guidance],
      };
    },
  });
}
