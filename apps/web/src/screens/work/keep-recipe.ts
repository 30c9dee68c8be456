/** Keeps a change of a recipe: in the keeper's own, or in a copy of the house's that stands in its place. */
import type { RecipeRecord } from '#boat-book';
import type { Recipe } from '#jobs';
import type { Run } from '../../parts/use-run.ts';
import { address, goTo } from '../../shell/route.ts';

export interface RecipeKept {
  readonly id: string;
  readonly recipe: Recipe;
  /** null: one of the house */
  readonly own: RecipeRecord | null;
}

export async function keepRecipe({ id, recipe, own }: RecipeKept, parts: Partial<Recipe>, run: Run): ReturnType<Run> {
  if (own !== null) return run('changeRecipe', { id, ...parts });
  const outcome = await run('addRecipe', { ...recipe, ...parts, standsFor: id, fromJob: null });
  if (outcome.kind === 'done' && outcome.id !== null) goTo(address('work', 'recipe', outcome.id), true);
  return outcome;
}

/** One to a line, without empty ones. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
