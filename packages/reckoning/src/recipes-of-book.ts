/** The recipes a keeper has: the house's, less those that one of the keeper's own stands in the place of, and the own ones. */
import type { Book } from '#boat-book';
import { type Recipe, recipes } from '#jobs';

const known = new WeakMap<object, Readonly<Record<string, Recipe>>>();

/** By id: the house's own names, and the ids of the book. The same object while the book's recipes stay the same. */
export function recipesOfBook(book: Pick<Book, 'recipes'>): Readonly<Record<string, Recipe>> {
  const before = known.get(book.recipes);
  if (before) return before;
  const own = Object.entries(book.recipes);
  const replaced = new Set(own.map(([, { standsFor }]) => standsFor));
  const all: Readonly<Record<string, Recipe>> = Object.fromEntries([
    ...Object.entries<Recipe>(recipes).filter(([id]) => !replaced.has(id)),
    ...own,
  ]);
  known.set(book.recipes, all);
  return all;
}

/** The id under which a recipe now stands: its own, or that of the keeper's that stands in its place; null: it is gone. */
export function recipeIdNow(book: Pick<Book, 'recipes'>, id: string): string | null {
  if (Object.hasOwn(book.recipes, id)) return id;
  const own = Object.entries(book.recipes).find(([, { standsFor }]) => standsFor === id);
  return own?.[0] ?? (Object.hasOwn(recipes, id) ? id : null);
}
