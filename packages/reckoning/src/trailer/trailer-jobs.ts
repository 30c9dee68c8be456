/** The jobs a trailer brings: what would mend a finding. Minutes are our guess, the keeper’s to change. */
import type { Book, Id, OperationFields } from '#boat-book';
import { recipeTaken } from '../recipe-job.ts';
import { recipesOfBook } from '../recipes-of-book.ts';
import type { TrailerFinding } from './trailer-finding.ts';

/** The job of mending a finding, by its recipe or of its own steps; null: there is nothing to do about it. */
export function trailerJob(
  book: Book,
  { gravity, wrong, right, mend }: TrailerFinding,
  zone: Id | null,
  newId: () => Id,
): OperationFields<'takeRecipe'> | null {
  if (mend === null) return null;
  const job = {
    title: mend.title,
    why: right === null ? wrong : `${wrong} ${right}`,
    consequence: gravity === 'unknown' ? 'worsens' : gravity,
    zone,
  } as const;
  if (mend.kind === 'steps')
    return {
      tools: [],
      mixes: [],
      stores: [],
      job: { ...job, steps: mend.steps.map((step) => ({ ...step, hands: 1 })) },
    };
  const recipe = recipesOfBook(book)[mend.recipe];
  return recipe === undefined
    ? { tools: [], mixes: [], stores: [], job }
    : recipeTaken(recipe, book, { job: { ...job, recipe: mend.recipe }, sizes: mend.sizes, newId }).take;
}
