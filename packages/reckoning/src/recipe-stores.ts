/** What in the stores a thing of a recipe is: by its words, and by its size where it has one. */
import type { Book, Id, StoreRecord } from '#boat-book';
import type { Recipe, RecipeStore } from '#jobs';
import type { RecipeSizes } from './recipe-amounts.ts';

type StoreUnit = NonNullable<StoreRecord['unit']>;

export const plain = (words: string) => words.toLowerCase().trim();

/** Whether a name has all these words in it, each at the start of a word of it. */
export function hasWords(name: string, words: readonly string[]): boolean {
  const said = plain(name).match(/[\p{L}\p{N}]+/gu) ?? [];
  return words.every((word) => said.some((each) => each.startsWith(plain(word))));
}

/** The name of a thing with the size that was measured for it: `Bolts and nuts for the plate, A4, 8 mm`. */
export function sizedName({ name, size }: RecipeStore, recipe: Recipe, sizes: RecipeSizes): string {
  const value = size === null ? undefined : sizes[size];
  if (value === undefined) return name;
  const unit = recipe.asks.find(({ id }) => id === size)?.unit ?? '';
  return `${name}, ${value}${unit && ` ${unit}`}`;
}

/** The sizes that a name says, by what they are in: M8 is 8 mm. */
function sizesSaid(name: string): Map<string, number[]> {
  const found = new Map<string, number[]>();
  const put = (unit: string, figure: string) =>
    found.set(unit, [...(found.get(unit) ?? []), Number(figure.replace(',', '.'))]);
  for (const [, figure] of name.matchAll(/\bM(\d{1,2})\b/g)) put('mm', figure!);
  for (const [, figure, unit] of name.matchAll(/(\d+(?:[.,]\d+)?) ?(mm²|g\/m²|mm|A)(?![\p{L}\p{N}²])/gu))
    put(unit!, figure!);
  return found;
}

/** Whether two names speak of one size: they differ where both give a figure in one unit and no figure is in both. */
function sameSize(one: string, other: string): boolean {
  const others = sizesSaid(other);
  return [...sizesSaid(one)].every(([unit, figures]) => {
    const there = others.get(unit);
    return there === undefined || figures.some((figure) => there.includes(figure));
  });
}

/**
 * The store that a thing of a recipe is: its words in the store's name, and no other size. One on hand comes before
 * one that is not, one that says the size before one that says none. null: the book has none.
 *
 * @param name  the thing with its measured size (`sizedName`)
 */
export function storeFor(book: Book, { words }: RecipeStore, name: string): Id | null {
  const wanted = sizesSaid(name);
  const fits = Object.entries(book.stores)
    .filter(([, store]) => hasWords(store.name, words) && sameSize(name, store.name))
    .map(([id, store]) => ({
      id,
      rank: (store.onHand ? 2 : 0) + ([...wanted.keys()].some((unit) => sizesSaid(store.name).has(unit)) ? 1 : 0),
    }));
  return fits.sort((a, b) => b.rank - a.rank)[0]?.id ?? null;
}

const units: readonly StoreUnit[] = [
  '',
  'mm',
  'm',
  'm²',
  'ml',
  'l',
  'g',
  'kg',
  'pair',
  'set',
  'pack',
  'roll',
  'tube',
  'tin',
];

/** The unit of a store that a recipe's unit is; null: stores are not counted in it. */
export const storeUnitOf = (unit: string): StoreUnit | null => units.find((each) => each === unit) ?? null;

/** How much of the small unit is one of the large. */
const thousands: Readonly<Partial<Record<StoreUnit, StoreUnit>>> = { m: 'mm', l: 'ml', kg: 'g' };

/** An amount in another unit of the same kind; null where neither comes of the other. */
export function inUnitOf(amount: number, from: StoreUnit, to: StoreUnit): number | null {
  if (from === to) return amount;
  if (thousands[from] === to) return amount * 1000;
  if (thousands[to] === from) return amount / 1000;
  return null;
}
