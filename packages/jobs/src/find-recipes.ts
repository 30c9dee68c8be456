import { recipes } from '../recipes/recipes.ts';
import type { Recipe } from './recipe.ts';

export type RecipeId = keyof typeof recipes;

/** Words that say nothing of which job it is. */
const idle = new Set(
  'a an and the of in on at to for with its it is are under over up down off out back by from put look change renew replace new check clean make set old boat good'.split(
    ' ',
  ),
);

/** A word without the endings that talk gives it, so that `leaks`, `leaking` and `leak` are one. */
const stem = (word: string) =>
  word
    .replace(/(?<=..)(?:es|s)$/, '')
    .replace(/(?<=..)(?:ing|ed)$/, '')
    .replace(/(.)\1$/, '$1');
const stems = (words: string) => (words.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).map(stem);

/**
 * The recipes that words about a job may want, the likeliest first, at most three.
 *
 * A recipe's own words count when all of a phrase are said, the more the longer it is; a word of its title counts a
 * little. Fewer than a whole phrase or two words of a title is no likeness.
 */
export function recipesFor(words: string): RecipeId[] {
  const said = new Set(stems(words));
  const scored = (Object.entries(recipes) as [RecipeId, Recipe][]).map(([id, recipe]) => {
    const phrases = recipe.words
      .map(stems)
      .filter((phrase) => phrase.every((word) => said.has(word)))
      .reduce((sum, phrase) => sum + 2 * phrase.length ** 2, 0);
    const title = stems(recipe.title).filter((word) => !idle.has(word) && said.has(word)).length;
    return { id, score: phrases + title };
  });
  return scored
    .filter(({ score }) => score >= 2)
    .sort((a, b) => b.score - a.score)
    .slice(0, 3)
    .map(({ id }) => id);
}
