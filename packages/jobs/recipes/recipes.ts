/** Every recipe of the house, by id. */
import { standingRigging } from './standing-rigging.ts';
import { recipesOf } from './writing.ts';

export const recipes = recipesOf({
  ...standingRigging,
});
