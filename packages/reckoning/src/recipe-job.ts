/** A recipe taken for this boat: a job with its steps, and what of tools and stores the book does not have yet. */
import type { Book, Id, NewStep, OperationFields, SetUpNeedRecord, StepTake, WaitRecord } from '#boat-book';
import type { Recipe, RecipeLaw, RecipeMix, RecipeSetUp, RecipeStep, RecipeWait } from '#jobs';
import { cureLawOf } from '#materials';
import { type RecipeAmount, type RecipeSizes, recipeAmount } from './recipe-amounts.ts';
import { hasWords, plain, sizedName, storeFor, storeUnitOf } from './recipe-stores.ts';
import { converted } from './store-amounts.ts';

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
    const found = Object.entries(book.tools).find(([, tool]) => hasWords(tool.name, name.split(' ')));
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
    const { name, family, mixing_min, potLife_min, ratio } = mix;
    if (!found) addMixes.push({ id, name, family, mixing_min, potLife_min, ...(ratio ? { ratio } : {}) });
  }
  const stores = new Map<string, StoreOfRecipe & { readonly id: Id }>();
  const addStores: OperationFields<'takeRecipe'>['stores'][number][] = [];
  for (const asked of all.flatMap((step) => step.stores)) {
    if (stores.has(asked.name)) continue;
    const name = sizedName(asked, recipe, sizes);
    const store = storeFor(book, asked, name);
    const amount = recipeAmount(asked, recipe, sizes, book, store);
    const id = store ?? newId();
    stores.set(asked.name, { name, amount, store, id });
    if (store !== null) continue;
    const unit = storeUnitOf(asked.amount.unit);
    addStores.push({
      id,
      name,
      keptAt: '',
      onHand: false,
      expected: null,
      lead_days: null,
      note: amount.kind === 'not known' ? `How much: ${amount.because}.` : '',
      unit,
      pack: unit === null ? null : asked.pack,
    });
  }
  /** How much of each of its stores a step takes, in the store's own unit where that is known. */
  const takesOf = (step: RecipeStep): StepTake[] =>
    step.stores.flatMap((asked) => {
      const { id, store } = stores.get(asked.name)!;
      const worked = recipeAmount(asked, recipe, sizes, book, store);
      const own = storeUnitOf(asked.amount.unit);
      if (worked.kind === 'not known' || own === null || worked.amount <= 0) return [];
      const amount = atOurCoverage(worked);
      const coverage = worked.coverage === null ? {} : { coverage: worked.coverage.ours };
      const there = store === null ? undefined : book.stores[store];
      const unit = there?.unit ?? own;
      const { name, pack } = there ?? asked;
      const inStores = converted(amount, { from: own, to: unit, name, pack: pack ?? null });
      // what cannot be held together is kept as it was asked for
      return [
        inStores.kind === 'amount'
          ? { store: id, amount: inStores.amount, unit, ...coverage }
          : { store: id, amount, unit: own, ...coverage },
      ];
    });
  const mixOf = (step: RecipeStep, mix: RecipeMix): Pick<NewStep, 'mix' | 'mix_g'> => {
    const asked = step.stores.find(({ name }) => name === mix.of);
    const amount = asked === undefined ? null : recipeAmount(asked, recipe, sizes, book, stores.get(asked.name)!.store);
    const grams = amount?.kind === 'known' ? gramsOf(atOurCoverage(amount), amount.unit, mix.density_g_ml) : null;
    return { mix: mixes.get(mix.name)!, mix_g: grams };
  };
  const ids = all.map(() => newId());
  const missing = new Set<string>();
  const needs = (setUps: readonly RecipeSetUp[]) => setUpNeeds(book, setUps, missing);
  const steps = all.map((step, index): NewStep => {
    const waits = step.waits.map((wait, n) => waitInBook(book, wait, `${ids[index]}-wait-${n + 1}`, missing));
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
      takes: onceEach(takesOf(step)),
      dusty: step.dusty,
      wet: step.wet,
      ...(step.mix === null ? {} : mixOf(step, step.mix)),
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

/** An amount as it is kept: at our coverage, which a tin's takes the place of wherever it is read (`takesByTin`). */
const atOurCoverage = ({ amount, coverage }: Extract<RecipeAmount, { kind: 'known' }>): number =>
  coverage === null ? amount : (amount * coverage.m2_l) / coverage.ours.ours_m2_l;

/** The zone a recipe is done in on this boat: the first whose name or other words fit; null where none does. */
export function zoneOfRecipe(recipe: Recipe, book: Book): Id | null {
  for (const word of recipe.zones) {
    const found = Object.entries(book.zones).find(([, { name, words }]) =>
      [name, ...words].some((each) => plain(each) === plain(word) || hasWords(each, word.split(' '))),
    );
    if (found) return found[0];
  }
  return null;
}

/** Grams of a mix; null for an amount that is neither weighed nor poured. */
function gramsOf(amount: number, unit: string, density_g_ml: number): number | null {
  const inUnit = (to: 'g' | 'ml') => {
    const known = converted(amount, { from: storeUnitOf(unit) ?? '', to, name: '', pack: null });
    return known.kind === 'amount' ? known.amount : null;
  };
  const millilitres = inUnit('ml');
  const found = inUnit('g') ?? (millilitres === null ? null : millilitres * density_g_ml);
  return found === null || found < 0.1 ? null : Math.round(found * 10) / 10;
}

/** A store that two lines of a step come out of is taken from once, for both. */
function onceEach(takes: readonly StepTake[]): StepTake[] {
  const byStore = new Map<Id, StepTake>();
  for (const take of takes)
    byStore.set(take.store, { ...take, amount: take.amount + (byStore.get(take.store)?.amount ?? 0) });
  return [...byStore.values()];
}

/**
 * A wait of a recipe as one of the book.
 *
 * @param missing  takes the set-ups that the book does not have
 * @throws RangeError for a product there is not (`cureLawOf`)
 */
export function waitInBook(book: Book, wait: RecipeWait, id: Id, missing: Set<string> = new Set()): WaitRecord {
  return {
    id,
    title: wait.title,
    law: cureLaw(wait.law),
    ...(wait.law.kind === 'product' ? { family: wait.law.product } : {}),
    needs: wait.needs,
    setUps: setUpNeeds(book, wait.setUps, missing),
    still: wait.still.flatMap((name) => setUpNamed(book, name)?.[0] ?? []),
    wet: wait.wet,
  };
}

const setUpNamed = (book: Pick<Book, 'setUps'>, name: string) =>
  Object.entries(book.setUps).find(([id, setUp]) => id === plain(name) || plain(setUp.name) === plain(name));

/** One thing that stands one way or another, as a recipe may ask for it. */
export interface RecipeSetUpChoice {
  /** as the recipe names it, or as this boat does in small letters */
  readonly setUp: string;
  /** false: this boat has none of that name */
  readonly inBook: boolean;
  readonly states: readonly string[];
  /** the one asked for; '': it does not matter */
  readonly state: string;
}

/** What may be asked of how she stands: every set-up of the boat, and what the recipe asks for that she does not have. */
export function recipeSetUpChoices(
  book: Pick<Book, 'setUps'>,
  setUps: readonly RecipeSetUp[],
): readonly RecipeSetUpChoice[] {
  const ofBoat = Object.entries(book.setUps).map(([id, { name, states }]): RecipeSetUpChoice => {
    const asked = setUps.find(({ setUp }) => setUpNamed(book, setUp)?.[0] === id);
    const names = states.map((each) => plain(each.name));
    // a state asked for by its id is the one of that id
    const known = states.find((each) => each.id === plain(asked?.state ?? ''));
    const state =
      asked === undefined
        ? ''
        : names.includes(plain(asked.state))
          ? plain(asked.state)
          : known
            ? plain(known.name)
            : asked.state;
    return {
      setUp: asked?.setUp ?? plain(name),
      inBook: true,
      states: state === '' || names.includes(state) ? names : [...names, state],
      state,
    };
  });
  const others = setUps.filter(({ setUp }) => setUpNamed(book, setUp) === undefined);
  return [...ofBoat, ...others.map(({ setUp, state }) => ({ setUp, inBook: false, states: [state], state }))];
}

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
