/** A recipe made from a job that was done: its steps with the minutes they really took, and all they asked for. */
import type { Book, Id, Job, RecipeRecord, SetUpNeedRecord, Step, WaitRecord } from '#boat-book';
import {
  asksOf,
  type Recipe,
  type RecipeAsk,
  type RecipeFollowUp,
  type RecipeLaw,
  type RecipeProof,
  type RecipeSetUp,
  type RecipeStep,
  type RecipeStore,
  type RecipeWait,
} from '#jobs';
import { type CureLaw, cureLaws } from '#materials';
import { daysBetween } from '#units';
import { familyOfWait } from './product-tin.ts';
import { recipeIdNow, recipesOfBook } from './recipes-of-book.ts';
import { takesByTin } from './takes-by-tin.ts';
import { minutesSpent } from './tuned-minutes.ts';

/** What the keeper says of it; the job says the rest. */
export interface RecipeSaid {
  readonly title: string;
  readonly group: Recipe['group'];
  /** when it is needed */
  readonly when: string;
  /** words to find it by */
  readonly words: readonly string[];
  /** how the finished job is shown to hold: the last of its steps, or a step of its own */
  readonly proof:
    | { readonly kind: RecipeProof['kind']; readonly step: 'last' }
    | { readonly kind: RecipeProof['kind']; readonly step: Pick<RecipeStep, 'title' | 'minutes'> };
}

/** The steps of a job in order; those ticked as done where any was, else all. */
export function stepsForRecipe(book: Book, jobId: Id): readonly (readonly [Id, Step])[] {
  const all = Object.entries(book.steps)
    .filter(([, { job }]) => job === jobId)
    .sort(([idA, a], [idB, b]) => a.order - b.order || (idA < idB ? -1 : 1));
  const done = all.filter(([, { progress }]) => progress.kind === 'done');
  return done.length > 0 ? done : all;
}

/**
 * The minutes of a step for the next time: what it really took is the likely one, and low and high keep their distance
 * from it: 20, 30, 60 that took 45 become 30, 45, 90. As it was thought where nobody wrote down what it took.
 */
export function minutesFor(thought: Step['minutes'], spent_min: number | null): Step['minutes'] {
  if (spent_min === null || spent_min < 1) return thought;
  const whole = (minutes: number) => Math.min(1440, Math.max(1, Math.round(minutes)));
  const factor = spent_min / thought.likely;
  return { low: whole(thought.low * factor), likely: whole(spent_min), high: whole(thought.high * factor) };
}

/**
 * The recipe of a job, as the record of one of the keeper's own; null where the job has too few steps for it: one
 * besides its proof.
 *
 * Steps that came from a recipe keep its rules for amounts. Of what else was taken from the stores the amount stands
 * as it was; where nobody said how much, it is asked when the recipe is taken.
 *
 * @throws RangeError where there is no such job
 */
export function recipeFromJob(book: Book, jobId: Id, said: RecipeSaid): RecipeRecord | null {
  const job = book.jobs[jobId];
  if (job === undefined) throw new RangeError(`there is no job ${jobId}`);
  const from = job.recipe === undefined ? null : recipeIdNow(book, job.recipe);
  const origin = from === null ? undefined : recipesOfBook(book)[from];
  const asks = new Map<string, RecipeAsk>();
  const steps = stepsForRecipe(book, jobId).map((entry, index, all) =>
    recipeStep(book, job, entry, all[index - 1] ?? null, { origin, asks }),
  );
  const last = said.proof.step === 'last' ? steps.pop() : { ...bareStep, ...said.proof.step };
  if (last === undefined || steps.length === 0) return null;
  const zone = job.zone === null ? undefined : book.zones[job.zone];
  return {
    title: said.title,
    group: said.group,
    words: said.words,
    when: said.when,
    consequence: job.consequence,
    zones: origin?.zones ?? (zone === undefined ? [] : [zone.name.toLowerCase()]),
    asks: [...asks.values()],
    steps,
    proof: { kind: said.proof.kind, step: last },
    followUps: [...(job.followUps ?? []), ...jobsThatFollowed(book, jobId, job)],
    writeDown: job.writeDown ?? [],
    standsFor: null,
    fromJob: jobId,
  };
}

const bareStep: Omit<RecipeStep, 'title' | 'minutes'> = {
  hands: 1,
  notAlone: false,
  needs: {},
  features: [],
  tools: [],
  setUps: [],
  stores: [],
  dusty: false,
  wet: false,
  mix: null,
  waits: [],
  window: null,
  cautions: [],
};

function recipeStep(
  book: Book,
  job: Job,
  [id, step]: readonly [Id, Step],
  before: readonly [Id, Step] | null,
  { origin, asks }: { readonly origin: Recipe | undefined; readonly asks: Map<string, RecipeAsk> },
): RecipeStep {
  const same = origin && [...origin.steps, origin.proof.step].find(({ title }) => title === step.title);
  const stores = same?.stores ?? storesOf(book, job, step, asks);
  const hangsOn = new Set(same?.stores.flatMap(asksOf));
  for (const ask of origin?.asks ?? []) if (hangsOn.has(ask.id)) asks.set(ask.id, ask);
  const mix = step.mix === null ? undefined : book.mixes[step.mix];
  const follow = before === null ? undefined : step.follows?.find((each) => each.step === before[0]);
  return {
    title: step.title,
    minutes: minutesFor(step.minutes, minutesSpent(book).get(id) ?? null),
    hands: Math.min(8, step.hands),
    notAlone: step.notAlone,
    needs: step.needs,
    features: step.features,
    tools: step.tools.flatMap(({ tool }) => book.tools[tool]?.name ?? []),
    setUps: setUpsOf(book, step.setUps),
    stores,
    dusty: step.dusty,
    wet: step.wet,
    mix:
      same?.mix ??
      (mix === undefined
        ? null
        : {
            name: mix.name,
            family: mix.family ?? null,
            mixing_min: mix.mixing_min,
            potLife_min: mix.potLife_min,
            of: null,
            density_g_ml: 1.1,
            ...(mix.ratio ? { ratio: mix.ratio } : {}),
          }),
    waits: step.waits.map((wait) => waitOf(book, job, wait)),
    window:
      follow === undefined || follow.greatest_min === null || follow.greatest_min < 1
        ? null
        : { greatest_min: follow.greatest_min, past: follow.past },
    cautions: step.cautions,
  };
}

function storesOf(book: Book, job: Job, step: Step, asks: Map<string, RecipeAsk>): RecipeStore[] {
  return step.stores.flatMap((id): RecipeStore[] => {
    const store = book.stores[id];
    if (store === undefined) return [];
    const words = store.name.match(/[\p{L}\p{N}]+/gu)?.slice(0, 2) ?? [store.name];
    const take = takesByTin(book, step).find((each) => each.store === id);
    const common = { name: store.name, words, size: null, pack: store.pack ?? null };
    if (take !== undefined && take.amount >= 0.001) {
      const because = `what ‘${job.title}’ took`;
      return [{ ...common, amount: { kind: 'set', amount: Math.min(10_000, take.amount), unit: take.unit, because } }];
    }
    const ask = `amount-${asks.size + 1}`;
    const unit =
      store.unit === 'mm' || store.unit === 'm' || store.unit === 'm²' || store.unit === 'l' ? store.unit : '';
    asks.set(ask, { id: ask, words: `how much: ${store.name}`, unit, low: 0, high: 10_000, whole: false });
    return [{ ...common, pack: null, amount: { kind: 'each', of: ask, times: 1, spare: 0, unit: store.unit ?? '' } }];
  });
}

const setUpsOf = (book: Book, needs: readonly SetUpNeedRecord[]): RecipeSetUp[] =>
  needs.flatMap(({ setUp, states }) => {
    const known = book.setUps[setUp];
    const state = known?.states.find(({ id }) => id === states[0]);
    return known && state ? [{ setUp: known.name.toLowerCase(), state: state.name.toLowerCase() }] : [];
  });

/** A wait of the book as one of a recipe: by its product where the figures are ours, else by its own law. */
export function waitOf(book: Book, job: Pick<Job, 'title'>, wait: WaitRecord): RecipeWait {
  return {
    title: wait.title,
    law: lawOf(wait, job.title),
    needs: wait.needs,
    setUps: setUpsOf(book, wait.setUps),
    still: wait.still.flatMap((id) => book.setUps[id]?.name.toLowerCase() ?? []),
    wet: wait.wet,
  };
}

function lawOf(wait: WaitRecord, job: string): RecipeLaw {
  const { law } = wait;
  if (law.kind === 'set time' && law.minutes >= 1)
    return { kind: 'set time', minutes: law.minutes, because: `as it was at ‘${job}’` };
  const product = law.from === 'the tin' ? undefined : cureLaws.find(({ id }) => id === familyOfWait(wait));
  if (product === undefined || !isLawOf(product.law, law)) return { kind: 'own law', law };
  const own = law.kind === 'moisture' && product.law.kind === 'moisture' && law.depth_mm !== product.law.depth_mm;
  return { kind: 'product', product: product.id, ...(own ? { depth_mm: law.depth_mm } : {}) };
}

/** Whether a law is a product's own, whatever the depth of the bead. */
function isLawOf(known: CureLaw, law: CureLaw): boolean {
  const plain = (one: CureLaw) =>
    JSON.stringify(Object.entries({ ...one, depth_mm: 0 }).sort(([a], [b]) => (a < b ? -1 : 1)));
  return plain(known) === plain(law);
}

/** Jobs that were put in after this one as following it, besides those it knew of. */
function jobsThatFollowed(book: Book, jobId: Id, job: Job): RecipeFollowUp[] {
  const known = new Set((job.followUps ?? []).map(({ title }) => title));
  return Object.entries(book.jobs).flatMap(([id, other]): RecipeFollowUp[] => {
    if (other.followsJob !== jobId || known.has(other.title)) return [];
    const step = Object.values(book.steps).find((each) => each.job === id);
    if (step === undefined) return [];
    if (job.closed === null || other.due === null) return [];
    const days = Math.min(400, Math.max(0, daysBetween(job.closed, other.due)));
    return [
      {
        title: other.title,
        because: other.why || `It followed ‘${job.title}’.`,
        minutes: step.minutes,
        consequence: other.consequence,
        after: { kind: 'days', least_days: 0, most_days: days },
      },
    ];
  });
}
