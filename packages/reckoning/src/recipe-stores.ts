/** What in the stores a thing of a recipe is: by its words, and by its size where it has one. */
import type { Book, Id, StoreUnit } from '#boat-book';
import type { Recipe, RecipeStore } from '#jobs';
import type { RecipeSizes } from './recipe-amounts.ts';
import { isStoreUnit } from './store-amounts.ts';
import { sizeFit } from './thing-size.ts';

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

/**
 * The store that a thing of a recipe is: its words in the store's name, and no other size. One on hand comes before
 * one that is not, one that says the size before one that says none. null: the book has none.
 *
 * @param name  the thing with its measured size (`sizedName`)
 */
export function storeFor(book: Pick<Book, 'stores'>, { words }: RecipeStore, name: string): Id | null {
  const fits = Object.entries(book.stores).flatMap(([id, store]) => {
    if (!hasWords(store.name, words)) return [];
    const fit = sizeFit(name, store.name);
    return fit.kind === 'fits' ? [{ id, rank: (store.onHand ? 100 : 0) - fit.unsaid.length }] : [];
  });
  return fits.sort((a, b) => b.rank - a.rank)[0]?.id ?? null;
}

/** The unit of a store that a recipe's unit is; null: stores are not counted in it. */
export const storeUnitOf = (unit: string): StoreUnit | null => (isStoreUnit(unit) ? unit : null);
