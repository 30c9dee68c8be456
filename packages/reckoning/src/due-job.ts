/** A due made into a job by its recipe, in good time, once. */
import { type Book, contentId, type DueRecord, type OperationFields } from '#boat-book';
import { type DueOfBook, recipeOfDue } from './due-of-book.ts';
import { dueWhy } from './dues-told.ts';
import { recipeTaken, zoneOfRecipe } from './recipe-job.ts';

/** What a due without a recipe takes, so that it can be planned: our guess, said with the job, for the keeper to change. [min] */
const assumedDueMinutes = { low: 15, likely: 30, high: 60 };

const noteOf = ({ note }: DueRecord): string =>
  `${note === '' ? '' : `${note.replace(/[.\s]+$/, '')}. `}No recipe is named for it: its minutes are a guess.`;

/**
 * What `makeJobOfDue` is told. The ids of the job, its steps and its stores are made of the due and of how often it has
 * been answered before, so that two devices that make the same job apart have made one.
 */
export function dueJob(book: Book, dueOf: DueOfBook, today: string): OperationFields<'makeJobOfDue'> {
  const { id, due, falls } = dueOf;
  const answered = Object.values(book.jobs).filter(({ fromDue }) => fromDue === id).length;
  let made = 0;
  const newId = () => `due-${contentId({ due: id, answered, nth: ++made })}`;
  const recipe = recipeOfDue(book, due);
  const day = falls.day?.likely ?? null;
  const job = {
    title: due.title,
    consequence: due.consequence,
    zone: due.zone ?? (recipe === null ? null : zoneOfRecipe(recipe, book)),
    fitting: due.fitting,
    // a day that is past can be met by no plan; that it is past stands in the reason
    due: day !== null && day >= today ? day : null,
    why: dueWhy(dueOf, today),
    ...(due.recipe === null || recipe === null ? {} : { recipe: due.recipe }),
  };
  const jobId = newId();
  if (recipe === null) {
    const step = { id: newId(), title: due.title, minutes: assumedDueMinutes, hands: 1 };
    return {
      due: id,
      tools: [],
      mixes: [],
      stores: [],
      job: { ...job, id: jobId, note: noteOf(due), steps: [step] },
    };
  }
  const { take } = recipeTaken(recipe, book, { job, sizes: {}, newId });
  return { due: id, ...take, job: { ...take.job, id: jobId } };
}

/** The jobs of several dues, each with what those before it brought: a tool or a store is put in for all of them once. */
export function dueJobs(book: Book, dues: readonly DueOfBook[], today: string): OperationFields<'makeJobOfDue'>[] {
  let sofar = book;
  return dues.map((dueOf) => {
    const made = dueJob(sofar, dueOf, today);
    const keyed = <T extends { readonly id?: string }>(records: readonly T[]) =>
      Object.fromEntries(records.map(({ id, ...record }) => [id, record]));
    sofar = {
      ...sofar,
      tools: { ...sofar.tools, ...(keyed(made.tools) as Book['tools']) },
      mixes: { ...sofar.mixes, ...(keyed(made.mixes) as Book['mixes']) },
      stores: { ...sofar.stores, ...(keyed(made.stores) as Book['stores']) },
    };
    return made;
  });
}

/** The dues that are past, or come within the days it takes to plan them, and have no job yet. A paper is renewed, not worked at. */
export function duesToMake(dues: readonly DueOfBook[]): readonly DueOfBook[] {
  return dues.filter(
    ({ stage, job, paper }) => (stage === 'past' || stage === 'soon') && job === null && paper === null,
  );
}
