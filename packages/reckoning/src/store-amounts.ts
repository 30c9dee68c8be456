/** Amounts of things: in words, in another unit, and in what they are sold in. */
import type { StorePack, StoreUnit } from '#boat-book';

/** What each unit measures, and how much of the smallest of its kind one is. */
const kinds: Readonly<Record<StoreUnit, readonly [kind: string, times: number]>> = {
  '': ['pieces', 1],
  mm: ['length', 1],
  m: ['length', 1000],
  'm²': ['area', 1],
  ml: ['volume', 1],
  l: ['volume', 1000],
  g: ['mass', 1],
  kg: ['mass', 1000],
  pair: ['pairs', 1],
  set: ['sets', 1],
  pack: ['packs', 1],
  roll: ['rolls', 1],
  tube: ['tubes', 1],
  tin: ['tins', 1],
};

export const storeUnits = Object.keys(kinds) as StoreUnit[];

/** Whether a text is a unit that the stores can hold. */
export const isStoreUnit = (unit: string): unit is StoreUnit => Object.hasOwn(kinds, unit);

/** What one unit of a stuff is in another kind: how heavy a litre, how much a metre. */
const stuffs: readonly {
  readonly said: RegExp;
  readonly ml: number;
  readonly is: readonly [StoreUnit, number];
  readonly why: string;
}[] = [
  {
    said: /epoxy/i,
    ml: 1000,
    is: ['kg', 1.1],
    why: 'epoxy with its hardener weighs about 1.1 kg a litre (common practice)',
  },
  {
    said: /butyl/i,
    ml: 28,
    is: ['m', 1],
    why: 'a metre of butyl tape of the usual section is about 28 ml (common practice)',
  },
];

export type Converted =
  | { readonly kind: 'amount'; readonly amount: number; readonly assumed: string | null }
  /** one is counted and the other measured, or the like */
  | { readonly kind: 'not comparable' };

/**
 * An amount of a thing in another unit. Length to length and so on by plain figures; a tube to what a tube of it holds;
 * litres of epoxy to kilograms and the like by what such stuff commonly is, which is then said (`assumed`).
 */
export function converted(
  amount: number,
  {
    from,
    to,
    name,
    pack,
  }: { readonly from: StoreUnit; readonly to: StoreUnit; readonly name: string; readonly pack: StorePack | null },
): Converted {
  const [[fromKind, fromTimes], [toKind, toTimes]] = [kinds[from], kinds[to]];
  if (fromKind === toKind) return { kind: 'amount', amount: (amount * fromTimes) / toTimes, assumed: null };
  if (pack !== null && pack.word === from) return { kind: 'amount', amount: amount * pack.holds, assumed: null };
  const stuff = stuffs.find(({ said }) => said.test(name));
  if (stuff === undefined) return { kind: 'not comparable' };
  const [unit, each] = stuff.is;
  const [otherKind, otherTimes] = kinds[unit];
  const assumed = stuff.why;
  if (fromKind === 'volume' && toKind === otherKind)
    return { kind: 'amount', amount: ((amount * fromTimes) / stuff.ml) * each * (otherTimes / toTimes), assumed };
  if (fromKind === otherKind && toKind === 'volume')
    return { kind: 'amount', amount: ((amount * fromTimes) / otherTimes / each) * (stuff.ml / toTimes), assumed };
  return { kind: 'not comparable' };
}

/** `4`, `22 ml`, `1.3 kg`: things by the piece are whole ones, everything else has two figures, rounded up from a hundred on. */
export function amountInWords(amount: number, unit: string): string {
  if (unit === '') return String(Math.ceil(amount - 1e-9));
  const shown = amount >= 100 ? Math.ceil(amount - 1e-9) : Number(amount.toPrecision(2));
  return `${shown} ${counts.has(unit) && shown !== 1 ? `${unit}s` : unit}`;
}
const counts = new Set<string>(['pair', 'set', 'pack', 'roll', 'tube', 'tin']);

/** What is there, to the last figure that was counted: `0.35 l`. */
export function countInWords(amount: number, unit: StoreUnit): string {
  const shown = Number(amount.toPrecision(4));
  return unit === '' ? String(shown) : `${shown} ${counts.has(unit) && shown !== 1 ? `${unit}s` : unit}`;
}

export interface Bought {
  /** what is got, in the unit: whole packs, or whole pieces, or just what is wanted */
  readonly amount: number;
  /** null: not in packs */
  readonly packs: number | null;
  /** `22 ml: 1 tube of 290 ml` */
  readonly words: string;
}

/** An amount rounded up to what it is sold in. */
export function bought(amount: number, unit: StoreUnit, pack: StorePack | null): Bought {
  const shown = amountInWords(amount, unit);
  if (pack === null) {
    const whole = unit === '' || counts.has(unit) ? Math.ceil(amount - 1e-9) : amount;
    return { amount: whole, packs: null, words: unit === '' || !counts.has(unit) ? shown : amountInWords(whole, unit) };
  }
  const packs = Math.ceil(amount / pack.holds - 1e-9);
  const holds = countInWords(pack.holds, unit);
  const word = `${pack.word}${packs === 1 ? '' : 's'}`;
  return { amount: packs * pack.holds, packs, words: `${shown}: ${packs} ${word} of ${holds}` };
}
