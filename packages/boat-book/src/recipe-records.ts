/** The keeper's own recipes, as records of the boat book. */
import type { Recipe } from '#jobs';
import type { Id } from './records.ts';

/** A recipe of the keeper's own: made from a job, or one of the house changed. */
export interface RecipeRecord extends Recipe {
  /** the recipe of the house that it was changed from and stands in the place of; null: of none */
  readonly standsFor: string | null;
  /** the job it was made from */
  readonly fromJob: Id | null;
}
