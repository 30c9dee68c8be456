import { inBase, type Kind, kinds, type QuantityOf, unitsOf, unitWritten } from './quantity.ts';

/** What was read, or what is wrong with the text and what would be right. */
export type ReadQuantity<K extends Kind> =
  | { readonly kind: 'read'; readonly value: QuantityOf<K>; readonly unit: string }
  | { readonly kind: 'not clear'; readonly wrong: string; readonly right: string };

/**
 * Reads a quantity as people write it: `8 mm`, `5/16 in`, `1 3/8 in`, `5 ft 6 in`, `12 kn`, `54 °F`, `90 min`, `1 h 30`,
 * `2 d 3 h`, `12,5 m`.
 *
 * @param kind      what it should be a quantity of
 * @param text      what was typed
 * @param bareUnit  the unit that a number without one is in, where the field states it; without it a bare number is
 *                  not clear
 */
export function readQuantity<K extends Kind>(kind: K, text: string, bareUnit?: string): ReadQuantity<K> {
  const { name } = kinds[kind];
  const example = exampleOf(kind);
  const unclear = (wrong: string, right = `write ${name} as in ${example}`): ReadQuantity<K> => ({
    kind: 'not clear',
    wrong,
    right,
  });
  const trimmed = text
    .trim()
    .replaceAll(/[\u00a0\u2009\u202f]/g, ' ')
    .replaceAll('−', '-')
    .replaceAll('⁄', '/');
  if (trimmed === '') return unclear(`no ${name} given`);

  const negative = trimmed.startsWith('-');
  let rest = negative ? trimmed.slice(1).trim() : trimmed;
  let sum: number | null = null;
  let lastFactor = Number.POSITIVE_INFINITY;
  let shown = '';
  while (rest !== '') {
    const number = /^(\d+\s+\d+\/\d+|\d+-\d+\/\d+|\d+\/\d+|[\d.,]+(?:[eE][+-]?\d+)?)\s*/.exec(rest);
    if (!number) return unclear(`'${rest}' does not start with a number`);
    const value = readNumber(number[1]!);
    if (typeof value === 'string') return unclear(value);
    rest = rest.slice(number[0].length);
    const word = /^[^\d\s][^\d]*?(?=\s*\d|\s*$)/.exec(rest);
    let found = word ? unitWritten(kind, unspaced(word[0])) : undefined;
    if (word) {
      if (!found)
        return unclear(
          `'${word[0].trim()}' is not a unit of ${name}`,
          `write it in ${unitsOf(kind)
            .map((u) => u.symbol)
            .join(', ')}, as in ${example}`,
        );
      rest = rest.slice(word[0].length).trim();
    } else if (sum !== null) {
      found = below(kind, lastFactor);
      if (!found) return unclear(`'${number[1]}' has no unit`);
    } else if (bareUnit !== undefined) {
      found = unitWritten(kind, bareUnit);
      if (!found) throw new RangeError(`'${bareUnit}' is not a unit of ${name}`);
    } else {
      return unclear(`'${number[1]}' has no unit`, `add the unit, as in ${example}`);
    }
    if (sum === null) {
      sum = inBase(kind, negative ? -value : value, found!.symbol);
      shown = found!.symbol;
      // a second part only adds to the first where both count from the same nothing
      if (rest !== '' && found!.offset !== 0) return unclear(`'${text.trim()}' is two temperatures`);
    } else {
      if (found!.offset !== 0 || found!.factor >= lastFactor)
        return unclear(`in '${text.trim()}' the second part must be in a smaller unit than the first`);
      sum += (negative ? -1 : 1) * value * found!.factor;
    }
    lastFactor = found!.factor;
  }
  if (sum === null || !Number.isFinite(sum)) return unclear(`'${text.trim()}' is not a ${name}`);
  return { kind: 'read', value: inBase(kind, sum, kinds[kind].units.find((u) => u.factor === 1)!.symbol), unit: shown };
}

/** A number with a decimal point or comma, or a fraction; or what is wrong with it. */
function readNumber(text: string): number | string {
  const fraction = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(text);
  if (fraction) {
    const [, whole = '0', top, bottom] = fraction;
    if (Number(bottom) === 0) return `'${text}' divides by nothing`;
    return Number(whole) + Number(top) / Number(bottom);
  }
  if (/^\d{1,3},\d{3}$/.test(text)) return `'${text}' may mean ${text.replace(',', '')} or ${text.replace(',', '.')}`;
  const plain = text.replace(',', '.');
  if (!/^(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(plain)) return `'${text}' is not a number`;
  return Number(plain);
}

/** The unit that follows in compound writing when none is named: 1 h 30 is 30 min, 5 ft 6 is 6 in. */
function below(kind: Kind, factor: number): ReturnType<typeof unitWritten> {
  if (kind === 'duration')
    return factor === 60 ? unitWritten('duration', 'min') : factor === 1440 ? unitWritten('duration', 'h') : undefined;
  if (kind === 'length')
    return factor === unitWritten('length', 'ft')!.factor ? unitWritten('length', 'in') : undefined;
  return undefined;
}

const unspaced = (word: string) => word.trim().replaceAll(/\s+/g, ' ');

/** How a quantity of a kind is written, for a message: '8 mm or 5/16 in'. */
export function exampleOf(kind: Kind): string {
  return examples[kind];
}

const examples: Readonly<Record<Kind, string>> = {
  length: '8 mm, 1.2 m or 5/16 in',
  area: '2.5 m² or 16 mm²',
  volume: '0.75 L or 250 ml',
  mass: '35 kg or 77 lb',
  force: '450 N or 1.2 kN',
  torque: '8 N·m',
  pressure: '1013 hPa',
  temperature: '12 °C or 54 °F',
  'temperature difference': '3 °C',
  speed: '12 kn or 6 m/s',
  angle: '30°',
  humidity: '75 %',
  duration: '90 min, 1 h 30 or 2 d',
  voltage: '12.6 V',
  current: '2.5 A',
  charge: '80 Ah',
  power: '50 W',
  energy: '600 Wh',
  resistance: '12 mΩ or 0.5 Ω',
};
