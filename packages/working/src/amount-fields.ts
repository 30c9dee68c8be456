import { exampleOf, inBase, inUnit, type Kind, kinds, type QuantityOf, quantity, readQuantity, unitsOf } from '#units';
import { type Field, type Reading, readAs, unclear } from './field.ts';

/**
 * A field that takes a quantity of a kind.
 *
 * @param kind     what it is a quantity of
 * @param unit     the unit of `low`, `high` and of a bare number typed
 * @param low      least value taken. [unit]
 * @param high     greatest value taken. [unit]
 * @param meaning  in trade words, as the form says it
 */
export function amount<K extends Kind>(
  kind: K,
  unit: string,
  low: number,
  high: number,
  meaning: string,
): Field<QuantityOf<K>> {
  const range = `${low} to ${high} ${unit}`;
  const read = (raw: unknown): Reading<QuantityOf<K>> => {
    if (typeof raw !== 'string' && typeof raw !== 'number')
      return unclear(
        `${typeof raw === 'object' ? 'a list or nothing' : String(raw)} is not a ${kinds[kind].name}`,
        `give ${range}`,
      );
    const reading: ReturnType<typeof readQuantity<K>> =
      typeof raw === 'number' && !Number.isFinite(raw)
        ? unclear(`${raw} is not a number`, `give ${range}`)
        : readQuantity(kind, String(raw), unit);
    if (reading.kind === 'not clear') return reading;
    const inOwn = inUnit(kind, reading.value, unit);
    const slack = 1e-9 * Math.max(1, Math.abs(low), Math.abs(high));
    if (inOwn < low - slack || inOwn > high + slack)
      return unclear(`${String(raw).trim()} is out of range`, `give ${range}`);
    return readAs(reading.value);
  };
  return {
    meaning,
    read,
    control: { control: 'number', unit, units: unitsOf(kind).map((u) => u.symbol), low, high },
    reference: { meaning, unit, takes: `${range}; or with its unit, as in ${exampleOf(kind)}`, example: String(low) },
    raw: (fc) => {
      const number = fc.double({ min: low, max: high, noNaN: true });
      return fc.oneof(
        number,
        number.map((n) => `${n} ${unit}`),
      );
    },
  };
}

/** A bare number of the field's unit as the quantity it reads to, for what is assumed. */
export function amountOf<K extends Kind>(kind: K, value: number, unit: string): QuantityOf<K> {
  return inBase(kind, value, unit);
}

type Amount<K extends Kind> = (unit: string, low: number, high: number, meaning: string) => Field<QuantityOf<K>>;
const of =
  <K extends Kind>(kind: K): Amount<K> =>
  (unit, low, high, meaning) =>
    amount(kind, unit, low, high, meaning);

export const length = of('length');
export const area = of('area');
export const volume = of('volume');
export const mass = of('mass');
export const force = of('force');
export const temperature = of('temperature');
export const temperatureDifference = of('temperature difference');
export const speed = of('speed');
export const angle = of('angle');
export const humidity = of('humidity');
export const duration = of('duration');
export const pressure = of('pressure');

/** A plain number without a unit: a share, a count that need not be whole, a ratio. `unit` is for show. */
export function number(unit: string, low: number, high: number, meaning: string): Field<number> {
  const range = `${low} to ${high}${unit === '' ? '' : ` ${unit}`}`;
  return {
    meaning,
    read: (raw) => {
      const value =
        typeof raw === 'string' && raw.trim() !== '' ? Number(raw.trim().replace('−', '-').replace(',', '.')) : raw;
      if (typeof value !== 'number' || !Number.isFinite(value))
        return unclear(`'${String(raw)}' is not a number`, `give ${range}`);
      if (value < low || value > high) return unclear(`${value} is out of range`, `give ${range}`);
      return readAs(value);
    },
    control: { control: 'number', unit, units: [unit], low, high },
    reference: { meaning, unit, takes: range, example: String(low) },
    raw: (fc) => fc.double({ min: low, max: high, noNaN: true }),
  };
}

/** A list of quantities, one after another in time: `20 18 15`, `20, 18, 15` or a list. Each in `unit`. */
export function series<K extends Kind>(
  kind: K,
  unit: string,
  low: number,
  high: number,
  { least, most }: { readonly least: number; readonly most: number },
  meaning: string,
): Field<readonly QuantityOf<K>[]> {
  const takes = `${least} to ${most} numbers from ${low} to ${high} ${unit}`;
  return {
    meaning,
    read: (raw) => {
      const parts = Array.isArray(raw) ? raw : typeof raw === 'string' ? raw.trim().split(/[\s;,]+/) : [raw];
      if (parts.length < least || parts.length > most)
        return unclear(`${parts.length} numbers given`, `give ${takes}, parted by spaces`);
      const values: QuantityOf<K>[] = [];
      for (const [i, part] of parts.entries()) {
        const value = typeof part === 'number' ? part : Number(String(part).replace('−', '-'));
        if (String(part) === '' || !Number.isFinite(value) || value < low || value > high)
          return unclear(
            `number ${i + 1}, '${String(part)}', is not from ${low} to ${high} ${unit}`,
            `give ${takes}, parted by spaces`,
          );
        values.push(quantity(kind, inBase(kind, value, unit)));
      }
      return readAs(values);
    },
    control: { control: 'series', each: unit, least, most },
    reference: { meaning, unit, takes: `${takes}, parted by spaces`, example: `'${low} ${high}'` },
    raw: (fc) =>
      fc.array(fc.double({ min: low, max: high, noNaN: true }), {
        minLength: least,
        maxLength: Math.min(most, least + 20),
      }),
  };
}
