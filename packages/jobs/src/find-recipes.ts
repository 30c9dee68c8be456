import { recipes } from '../recipes/recipes.ts';
import type { Recipe } from './recipe.ts';
import { spokenOf, stemsOf } from './trade-thesaurus.ts';

export type RecipeId = keyof typeof recipes;

/** Words that say nothing of which job it is. */
const idle = new Set(
  stemsOf(
    'a an and the of in on at to for with its it is are was has have had be by from as so that this these when where who not no do does did done will would could can i my me we she her under over up down off out back put look make set let get gone go goes going one two three more other all new old boat good bad port starboard left right side and or into onto about',
  ),
);

/** What a word counts for by where in a recipe it stands. Tuned on the open half of `corpus/recipe-lines`. */
const weightOf = { words: 2, title: 2, when: 1, zones: 0.5, steps: 0.3 } as const;
type Where = keyof typeof weightOf;
const wheres = Object.keys(weightOf) as Where[];
/** A word that only means the same counts for so much of one that is the same. Tuned likewise. */
const kinShare = 0.6;
/** Less than this is no likeness. Tuned likewise. */
const leastScore = 3;

interface Indexed {
  readonly id: string;
  readonly phrases: readonly (readonly string[])[];
  /** stems and meanings, each with the weight of the best place it stands in */
  readonly stems: ReadonlyMap<string, number>;
  readonly meanings: ReadonlyMap<number, number>;
}

interface Index {
  readonly recipes: readonly Indexed[];
  /** in how many of the recipes a stem or a meaning stands in words, title or 'when' */
  readonly stemIn: ReadonlyMap<string, number>;
  readonly meaningIn: ReadonlyMap<number, number>;
}

const indexes = new WeakMap<object, Index>();

function indexOf(among: Readonly<Record<string, Recipe>>): Index {
  const known = indexes.get(among);
  if (known) return known;
  const stemIn = new Map<string, number>();
  const meaningIn = new Map<number, number>();
  const all = Object.entries(among).map(([id, recipe]): Indexed => {
    const texts: Readonly<Record<Where, string>> = {
      words: recipe.words.join(' . '),
      title: recipe.title,
      when: recipe.when,
      zones: recipe.zones.join(' '),
      steps: [...recipe.steps, recipe.proof.step].map(({ title }) => title).join(' '),
    };
    const stems = new Map<string, number>();
    const meanings = new Map<number, number>();
    for (const where of wheres) {
      const spoken = spokenOf(texts[where]);
      for (const word of spoken.stems) stems.set(word, Math.max(stems.get(word) ?? 0, weightOf[where]));
      for (const of of spoken.meanings.keys()) meanings.set(of, Math.max(meanings.get(of) ?? 0, weightOf[where]));
    }
    for (const [word, weight] of stems) if (weight >= 1) stemIn.set(word, (stemIn.get(word) ?? 0) + 1);
    for (const [of, weight] of meanings) if (weight >= 1) meaningIn.set(of, (meaningIn.get(of) ?? 0) + 1);
    return { id, phrases: recipe.words.map(stemsOf), stems, meanings };
  });
  const index = { recipes: all, stemIn, meaningIn };
  indexes.set(among, index);
  return index;
}

/** The rarer, the more it says: 1 for what stands in every recipe, log₂ of all for what stands in one. */
const rarity = (all: number, holding: number) => Math.log2((all + 1) / (holding + 0.5)) / 2;

/**
 * The recipes that words about a job may want, the likeliest first, at most three.
 *
 * Each word said counts by the best place in a recipe where it stands, itself or by a word that means the same
 * (`trade-thesaurus.ts`), and the more the fewer recipes speak of it. A phrase of the recipe's own words that is said
 * whole counts more, the longer it is.
 *
 * @param among  the recipes to look through: the house's where it is left out
 */
export function recipesFor(words: string): RecipeId[];
export function recipesFor(words: string, among: Readonly<Record<string, Recipe>>): string[];
export function recipesFor(words: string, among: Readonly<Record<string, Recipe>> = recipes): string[] {
  const index = indexOf(among);
  const all = index.recipes.length;
  const { stems, meanings } = spokenOf(words);
  const said = new Set(stems);
  const scored = index.recipes.map((recipe) => {
    const byPlace = stems.map((word) =>
      idle.has(word) ? 0 : (recipe.stems.get(word) ?? 0) * rarity(all, index.stemIn.get(word) ?? 0),
    );
    for (const [of, places] of meanings) {
      const weight = recipe.meanings.get(of) ?? 0;
      if (weight === 0) continue;
      const worth = (kinShare * weight * rarity(all, index.meaningIn.get(of) ?? 0)) / places.size;
      for (const place of places) byPlace[place] = Math.max(byPlace[place] ?? 0, worth);
    }
    // a word said twice says no more
    const once = new Map<string, number>();
    stems.forEach((word, place) => void once.set(word, Math.max(once.get(word) ?? 0, byPlace[place]!)));
    const phrases = recipe.phrases
      .filter((phrase) => phrase.every((word) => said.has(word)))
      .reduce((sum, phrase) => sum + 2 * phrase.length ** 2, 0);
    return { id: recipe.id, score: phrases + [...once.values()].reduce((sum, each) => sum + each, 0) };
  });
  return scored
    .filter(({ score }) => score >= leastScore)
    .sort((a, b) => b.score - a.score)
    .slice(0, 3)
    .map(({ id }) => id);
}
