/** A thing that a job of ours asks to get: what it is with its size, and how much of it, so that doubles become one. */
import type { Book, Id, NewStep, OperationFields, StepTake, StoreUnit } from '#boat-book';
import { hasWords, plain } from './recipe-stores.ts';
import { amountInWords, converted } from './store-amounts.ts';
import { sizeFit, sizeInWords } from './thing-size.ts';

export interface ThingToGet {
  /** what it is, its size among it: `Twin cable, 1.5 mm²`. Never how much */
  readonly name: string;
  /** in `unit`; null: not known */
  readonly amount: number | null;
  readonly unit: StoreUnit;
  readonly note: string;
}

/** `Twin cable, 1.5 mm², 4.5 m`; pieces are counted before: `Fuse with holder, 3 A`, `4 M6 bolts` */
export function thingInWords({ name, amount, unit }: Pick<ThingToGet, 'name' | 'amount' | 'unit'>): string {
  if (amount === null) return name;
  if (unit === '') return amount === 1 ? name : `${amountInWords(amount, unit)} × ${name}`;
  return `${name}, ${amountInWords(amount, unit)}`;
}

/**
 * What of the stores is that very thing, on hand or on the list: of the same name; or with all its words and just its
 * sizes, no more and no fewer. A name that says no size is that of no other thing. null: nothing is.
 */
export function thingInStores({ stores }: Pick<Book, 'stores'>, { name }: Pick<ThingToGet, 'name'>): Id | null {
  const same = Object.entries(stores).find(([, store]) => plain(store.name) === plain(name));
  if (same) return same[0];
  if (sizeInWords(name) === null) return null;
  const fits = (asked: string, there: string) => {
    const fit = sizeFit(asked, there);
    return fit.kind === 'fits' && fit.unsaid.length === 0;
  };
  const words = plain(name)
    .replace(/\([^)]*\)/g, ' ')
    .match(/(?<![\p{L}\p{N}])\p{L}{3,}/gu);
  const found = Object.entries(stores).find(
    ([, store]) => words !== null && hasWords(store.name, words) && fits(name, store.name) && fits(store.name, name),
  );
  return found?.[0] ?? null;
}

/** It on the list to get, for where the stores do not have it. */
export const storeToGet = ({ name, unit, note }: ThingToGet): OperationFields<'addStore'> => ({
  name,
  keptAt: '',
  onHand: false,
  expected: null,
  lead_days: null,
  note,
  unit,
});

/** A thing as a step takes it out of the stores. */
export interface ThingTaken {
  readonly store: Id;
  readonly take: StepTake | null;
}

/**
 * @param store  what it is in the stores (`thingInStores`), or the new one of `storeToGet`
 * @returns      what a step takes of it, in the store's own unit where the two can be held together
 */
export function thingTaken(book: Pick<Book, 'stores'>, { amount, unit, name }: ThingToGet, store: Id): ThingTaken {
  if (amount === null) return { store, take: null };
  const there = book.stores[store];
  const own = there?.unit ?? unit;
  const same = converted(amount, { from: unit, to: own, name: there?.name ?? name, pack: there?.pack ?? null });
  return {
    store,
    take: same.kind === 'amount' ? { store, amount: same.amount, unit: own } : { store, amount, unit },
  };
}

/** What a step takes of things to get, as its fields. */
export const stepTaking = (things: readonly ThingTaken[]): Pick<NewStep, 'stores' | 'takes'> => ({
  stores: things.map(({ store }) => store),
  takes: things.flatMap(({ take }) => (take === null ? [] : [take])),
});
