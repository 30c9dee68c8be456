/** A recipe taken for this boat: a job with its steps, and what of tools and stores the book does not have yet. */
import type { Book, Id, NewStep, OperationFields, SetUpNeedRecord, WaitRecord } from '#boat-book';
import type { Recipe, RecipeLaw, RecipeSetUp, RecipeStep, RecipeStore } from '#jobs';
import { cureLawOf } from '#materials';
import { type RecipeAmount, type RecipeSizes, recipeAmount } from './recipe-amounts.ts';

/** One thing a recipe takes, how much of it, and what stands for it in the stores. */
export interface StoreOfRecipe {
  readonly name: string;
  readonly amount: RecipeAmount;
  /** the store of the book it is; null: it is to be got */
  readonly store: Id | null;
}

export interface RecipeTaken {
  /** what it asks of the stores, in order of use, each name once */
  readonly stores: readonly StoreOfRecipe[];
  /** tools the book does not have */
  readonly tools: readonly string[];
  /** what of the recipe has no place on this boat, in whole sentences */
  readonly notes: readonly string[];
  /** the fields of `takeRecipe`: the job, and the tools, mixes and stores she does not have */
  readonly take: OperationFields<'takeRecipe'>;
}

/** What is said of the job itself; the recipe gives the rest. `recipe`: the id of the recipe it is put in by. */
type JobSaid = Pick<OperationFields<'addJob'>, 'title' | 'consequence' | 'zone'> &
  Partial<Pick<OperationFields<'addJob'>, 'fitting' | 'due' | 'outing' | 'said' | 'why' | 'recipe'>>;

/**
 * Take a recipe for this boat. Its set-ups, tools, mixes and stores are known by their names; a set-up the boat does not
 * have is left out with a note, a tool, mix or store she does not have is put in, the store as to be got.
 *
 * @param sizes  what was measured; amounts that hang on others are told as not known
 * @param newId  makes an id that the book does not have
 * @throws RangeError for a wait by a product there is not (`cureLawOf`)
 */
export function recipeTaken(
  recipe: Recipe,
  book: Book,
  { job, sizes, newId }: { readonly job: JobSaid; readonly sizes: RecipeSizes; readonly newId: () => Id },
): RecipeTaken {
  const all = [...recipe.steps, recipe.proof.step];
  const notes: string[] = [];
  const tools = new Map<string, Id>();
  const addTools: OperationFields<'takeRecipe'>['tools'][number][] = [];
  for (const name of new Set(all.flatMap((step) => step.tools))) {
    const found = Object.entries(book.tools).find(([, tool]) => named(tool.name, name.split(' ')));
    const id = found?.[0] ?? newId();
    tools.set(name, id);
    if (!found) addTools.push({ id, name, count: 1, keptAt: '' });
  }
  const mixes = new Map<string, Id>();
  const addMixes: OperationFields<'takeRecipe'>['mixes'][number][] = [];
  for (const { mix } of all) {
    if (mix === null || mixes.has(mix.name)) continue;
    const found = Object.entries(book.mixes).find(([, { name }]) => plain(name) === plain(mix.name));
    const id = found?.[0] ?? newId();
    mixes.set(mix.name, id);
    if (!found) addMixes.push({ id, ...mix });
  }
  const stores = new Map<string, StoreOfRecipe & { readonly id: Id }>();
  const addStores: OperationFields<'takeRecipe'>['stores'][number][] = [];
  for (const asked of all.flatMap((step) => step.stores)) {
    if (stores.has(asked.name)) continue;
    const amount = recipeAmount(asked, recipe, sizes, book.boat);
    const store = storeFor(book, asked);
    const id = store ?? newId();
    stores.set(asked.name, { name: asked.name, amount, store, id });
    if (store === null)
      addStores.push({
        id,
        name: amount.kind === 'known' ? `${asked.name}, ${amount.words}` : asked.name,
        keptAt: '',
        onHand: false,
        expected: null,
        lead_days: null,
        note: `For ‘${job.title}’.${amount.kind === 'not known' ? ` How much: ${amount.because}.` : ''}`,
      });
  }
  const ids = all.map(() => newId());
  const missing = new Set<string>();
  const needs = (setUps: readonly RecipeSetUp[]) => setUpNeeds(book, setUps, missing);
  const steps = all.map((step, index): NewStep => {
    const waits = step.waits.map(
      (wait, n): WaitRecord => ({
        id: `${ids[index]}-wait-${n + 1}`,
        title: wait.title,
        law: cureLaw(wait.law),
        needs: wait.needs,
        setUps: needs(wait.setUps),
        still: wait.still.flatMap((name) => setUpNamed(book, name)?.[0] ?? []),
        wet: wait.wet,
      }),
    );
    return {
      id: ids[index]!,
      title: step.title,
      minutes: step.minutes,
      hands: step.hands,
      notAlone: step.notAlone,
      needs: step.needs,
      features: step.features,
      tools: step.tools.map((name) => ({ tool: tools.get(name)!, count: 1 })),
      setUps: needs(step.setUps),
      stores: [...new Set(step.stores.map(({ name }) => stores.get(name)!.id))],
      dusty: step.dusty,
      wet: step.wet,
      mix: step.mix === null ? null : mixes.get(step.mix.name)!,
      waits,
      ...(step.window && index > 0 ? { follows: follows(all[index - 1]!, ids[index - 1]!, step.window) } : {}),
      cautions: step.cautions,
      ...(step === recipe.proof.step ? { proof: recipe.proof.kind } : {}),
    };
  });
  for (const name of missing)
    notes.push(`The boat book has no set-up ‘${name}’: the steps that want it do not ask for it.`);
  return {
    stores: [...stores.values()].map(({ name, amount, store }) => ({ name, amount, store })),
    tools: addTools.map(({ name }) => name),
    notes,
    take: {
      tools: addTools,
      mixes: addMixes,
      stores: addStores,
      job: {
        ...job,
        why: job.why ?? recipe.when,
        note: noteOf(stores),
        followUps: recipe.followUps,
        writeDown: recipe.writeDown,
        steps,
      },
    },
  };
}

/** The zone a recipe is done in on this boat: the first whose name or other words fit; null where none does. */
export function zoneOfRecipe(recipe: Recipe, book: Book): Id | null {
  for (const word of recipe.zones) {
    const found = Object.entries(book.zones).find(([, { name, words }]) =>
      [name, ...words].some((each) => plain(each) === plain(word) || named(each, word.split(' '))),
    );
    if (found) return found[0];
  }
  return null;
}

const plain = (words: string) => words.toLowerCase().trim();

/** Whether a name has all these words in it, each at the start of a word of it. */
function named(name: string, words: readonly string[]): boolean {
  const said = plain(name).match(/[\p{L}\p{N}]+/gu) ?? [];
  return words.every((word) => said.some((each) => each.startsWith(plain(word))));
}

/** The store that a thing of a recipe is: one on hand before one that is not. */
function storeFor(book: Book, { words }: RecipeStore): Id | null {
  const fits = Object.entries(book.stores).filter(([, { name }]) => named(name, words));
  return (fits.find(([, { onHand }]) => onHand) ?? fits[0])?.[0] ?? null;
}

const setUpNamed = (book: Book, name: string) =>
  Object.entries(book.setUps).find(([id, setUp]) => id === plain(name) || plain(setUp.name) === plain(name));

function setUpNeeds(book: Book, setUps: readonly RecipeSetUp[], missing: Set<string>): SetUpNeedRecord[] {
  return setUps.flatMap(({ setUp, state }) => {
    const known = setUpNamed(book, setUp);
    const wanted = known?.[1].states.find(({ id, name }) => id === plain(state) || plain(name) === plain(state));
    if (known && wanted) return [{ setUp: known[0], states: [wanted.id] }];
    missing.add(`${setUp}: ${state}`);
    return [];
  });
}

function cureLaw(law: RecipeLaw): WaitRecord['law'] {
  if (law.kind === 'set time') return { kind: 'set time', minutes: law.minutes, from: 'common practice' };
  if (law.kind === 'own law') return law.law;
  const known = cureLawOf(law.product).law;
  return law.depth_mm !== undefined && known.kind === 'moisture' ? { ...known, depth_mm: law.depth_mm } : known;
}

/** After each wait of the step before, or after that step, within the window. */
function follows(before: RecipeStep, step: Id, { greatest_min, past }: NonNullable<RecipeStep['window']>) {
  const link = { step, least_min: 0, greatest_min, past };
  return before.waits.length === 0
    ? [{ ...link, wait: null }]
    : before.waits.map((_, n) => ({ ...link, wait: `${step}-wait-${n + 1}` }));
}

function noteOf(stores: ReadonlyMap<string, StoreOfRecipe>): string {
  return [...stores.values()]
    .map(({ name, amount }) => `${name}: ${amount.kind === 'known' ? amount.words : amount.because}.`)
    .join(' ');
}
