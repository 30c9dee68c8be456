/** How much of each thing a recipe takes on this boat: its amount rules put as questions of the trade. */
import type { Book, Id, StepTake } from '#boat-book';
import type { AmountInput, Recipe, RecipeStore } from '#jobs';
import { amountQuestions } from '#materials';
import { ask, figureOf } from '#working';
import { amountInWords, bought, isStoreUnit } from './store-amounts.ts';
import { type Coverage, coverageInWords, coverageOf } from './takes-by-tin.ts';

/** What was measured and counted for a recipe, by the id of what it asks, each in the unit it is asked in. */
export type RecipeSizes = Readonly<Record<string, number>>;

export type RecipeAmount =
  | {
      readonly kind: 'known';
      /** in `unit`, waste counted in */
      readonly amount: number;
      readonly unit: string;
      /** `22 ml: 1 tube of 290 ml` */
      readonly words: string;
      /** of an area that is coated: at whose coverage; null: it hangs on none */
      readonly coverage: (Coverage & { readonly ours: NonNullable<StepTake['coverage']> }) | null;
    }
  | { readonly kind: 'not known'; readonly because: string };

/**
 * How much of a store a recipe takes.
 *
 * @param sizes  what is measured so far; a size that is missing makes what hangs on it 'not known', by name
 * @param is     the thing in the stores that it is, whose tin says how far it goes; null: none yet
 * @returns      the amount with its waste, and in words with the packs it comes in
 */
export function recipeAmount(
  store: RecipeStore,
  recipe: Recipe,
  sizes: RecipeSizes,
  book: Pick<Book, 'boat' | 'tins'>,
  is: Id | null,
): RecipeAmount {
  const { amount: rule } = store;
  if (rule.kind === 'set') return known(rule.amount, rule.unit, store.pack);
  if (rule.kind === 'each') {
    const of = sizes[rule.of];
    if (of === undefined) return notMeasured(recipe, rule.of);
    return known(of * rule.times + rule.spare, rule.unit, store.pack);
  }
  const question = amountQuestions().find(({ id }) => id === rule.question);
  if (!question) return { kind: 'not known', because: `no question ${rule.question} is known here` };
  const given: Record<string, string | number> = {};
  let coverage: Extract<RecipeAmount, { kind: 'known' }>['coverage'] = null;
  for (const [field, input] of Object.entries(rule.inputs)) {
    if (input.from === 'coverage') {
      const { family, ours_m2_l } = input;
      coverage = { ...coverageOf(book, input, is), ours: { family, ours_m2_l } };
      given[field] = coverage.m2_l;
      continue;
    }
    const value = inputValue(input, recipe, sizes, book.boat);
    if (value === null) return notMeasured(recipe, input.from === 'asked' ? input.ask : field);
    given[field] = value;
  }
  const asked = ask(question, given);
  if (asked.kind === 'refused')
    return { kind: 'not known', because: asked.faults.map(({ wrong, right }) => `${wrong}; ${right}`).join('. ') };
  const figure = figureOf(asked.answer, rule.figure);
  if (typeof figure?.value !== 'number' || figure.unit !== rule.unit)
    return { kind: 'not known', because: `${rule.question} has no figure ${rule.figure} in ${rule.unit}` };
  const found = known(figure.value * (1 + rule.waste_pct / 100), rule.unit, store.pack);
  return coverage === null ? found : { ...found, words: `${found.words}, at ${coverageInWords(coverage)}`, coverage };
}

function inputValue(
  input: Exclude<AmountInput, { from: 'coverage' }>,
  recipe: Recipe,
  sizes: RecipeSizes,
  boat: Book['boat'],
): string | number | null {
  if (input.from === 'set') return input.value;
  if (input.from === 'boat') return `${boat[input.size]} m`;
  const value = sizes[input.ask];
  if (value === undefined) return null;
  const unit = recipe.asks.find(({ id }) => id === input.ask)?.unit ?? '';
  const times = value * (input.times ?? 1);
  return unit === '' ? times : `${times} ${unit}`;
}

function notMeasured(recipe: Recipe, ask: string): RecipeAmount {
  const words = recipe.asks.find(({ id }) => id === ask)?.words ?? ask;
  return { kind: 'not known', because: `not measured yet: ${words}` };
}

function known(amount: number, unit: string, pack: RecipeStore['pack']): Extract<RecipeAmount, { kind: 'known' }> {
  const words = isStoreUnit(unit) ? bought(amount, unit, pack).words : amountInWords(amount, unit);
  return { kind: 'known', amount, unit, words, coverage: null };
}
