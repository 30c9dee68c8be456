/** Operations on recipes of the keeper's own, and on the jobs that come of a recipe. */
import { z } from 'zod/mini';
import { asksOf } from '#jobs';
import { plainThree } from './boat-operations.ts';
import { type Edit, refuse } from './edit.ts';
import { id, list } from './field-schemas.ts';
import { newJobSchema, putJob } from './job-operations.ts';
import type { Operations } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import type { RecipeRecord } from './recipe-records.ts';
import type { Id } from './records.ts';
import { mixSchema } from './schemas.ts';
import { storeSchema, toolSchema } from './store-schemas.ts';

/** Refuses a recipe that hangs on a size nobody is asked for, or a second one in the place of the same recipe of the house. */
function checkRecipe(recipe: RecipeRecord, edit: Edit, recipeId: Id): void {
  const asked = recipe.asks.map((ask) => ask.id);
  if (new Set(asked).size !== asked.length) refuse('asks', 'two sizes have the same id', 'an id of its own for each');
  for (const { low, high, words } of recipe.asks)
    if (low > high) refuse('asks', `${asGiven(words)} is from ${low} to ${high}`, 'the least first, then the most');
  for (const step of [...recipe.steps, recipe.proof.step])
    for (const store of step.stores)
      for (const ask of asksOf(store))
        if (!asked.includes(ask))
          refuse(
            'steps',
            `the amount of ${asGiven(store.name)} hangs on ${asGiven(ask)}, which is not asked for`,
            'one of the sizes that are asked for',
          );
  if (recipe.standsFor === null) return;
  for (const [otherId, other] of edit.all('recipes'))
    if (otherId !== recipeId && other.standsFor === recipe.standsFor)
      refuse(
        'standsFor',
        `your recipe ${asGiven(other.title)} stands in that place already`,
        'change that one, or take it out first',
      );
}

const [addRecipe, changeRecipe, removeRecipe] = plainThree<'addRecipe', 'changeRecipe', 'removeRecipe'>(
  'recipes',
  (recipe, edit, recipeId) => checkRecipe(recipe as RecipeRecord, edit, recipeId),
);

const newOne = <S extends z.ZodMiniObject>(schema: S) =>
  list(z.strictObject({ ...schema.shape, id: z.exactOptional(id) }));

/** Puts records in under the ids they bring. */
function putEach<C extends 'tools' | 'mixes' | 'stores'>(
  edit: Edit,
  collection: C,
  records: OperationFields<'takeRecipe'>[C],
): void {
  for (const { id: given, ...record } of records) edit.put(collection, record as never, given);
}

/** What a recipe brings: the job, and what it names that the book does not have. */
export const takenFields = {
  tools: newOne(toolSchema),
  mixes: newOne(mixSchema),
  stores: newOne(storeSchema),
  job: newJobSchema,
};

/** Puts in a job with what its recipe takes; the id of the job. */
export function putTaken(edit: Edit, { tools, mixes, stores, job }: OperationFields<'takeRecipe'>): Id {
  // the job first, so that undo is called by its name
  const made = putJob(edit, job);
  putEach(edit, 'tools', tools);
  putEach(edit, 'mixes', mixes);
  putEach(edit, 'stores', stores);
  return made;
}

export const recipeOperations = {
  addRecipe,
  changeRecipe,
  removeRecipe,
  takeRecipe: {
    title: 'Put in a job by a recipe',
    does: 'Puts a job in by a recipe, with the tools, mixes and stores it names that the book does not have.',
    undoes: true,
    fields: z.strictObject(takenFields),
    run: (fields: OperationFields<'takeRecipe'>, edit) => putTaken(edit, fields),
  },
  putInFollowUps: {
    title: 'Put in what follows',
    does: 'Puts in the jobs that a job leaves to be done, each linked to it.',
    undoes: true,
    fields: z.strictObject({ job: id, followUps: list(newJobSchema).check(z.minLength(1)) }),
    run({ job, followUps }: OperationFields<'putInFollowUps'>, edit) {
      edit.need('jobs', job, 'job');
      for (const followUp of followUps) putJob(edit, { ...followUp, followsJob: job });
      return null;
    },
  },
} satisfies Partial<Operations>;
