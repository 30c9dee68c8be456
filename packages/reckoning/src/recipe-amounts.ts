/** How much of each thing a recipe takes on this boat: its amount rules put as questions of the trade. */
import type { Book } from '#boat-book';
import type { AmountInput, Recipe, RecipeStore } from '#jobs';
import { amountQuestions } from '#materials';
import { ask, figureOf } from '#working';

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
    }
  | { readonly kind: 'not known'; readonly because: string };

/**
 * How much of a store a recipe takes.
 *
 * @param sizes  what is measured so far; a size that is missing makes what hangs on it 'not known', by name
 * @returns      the amount with its waste, and in words with the packs it comes in
 */
export function recipeAmount(store: RecipeStore, recipe: Recipe, sizes: RecipeSizes, boat: Book['boat']): RecipeAmount {
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
  for (const [field, input] of Object.entries(rule.inputs)) {
    const value = inputValue(input, recipe, sizes, boat);
    if (value === null) return notMeasured(recipe, input.from === 'asked' ? input.ask : field);
    given[field] = value;
  }
  const asked = ask(question, given);
  if (asked.kind === 'refused')
    return { kind: 'not known', because: asked.faults.map(({ wrong, right }) => `${wrong}; ${right}`).join('. ') };
  const figure = figureOf(asked.answer, rule.figure);
  if (typeof figure?.value !== 'number' || figure.unit !== rule.unit)
    return { kind: 'not known', because: `${rule.question} has no figure ${rule.figure} in ${rule.unit}` };
  return known(figure.value * (1 + rule.waste_pct / 100), rule.unit, store.pack);
}

function inputValue(
  input: AmountInput,
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

function known(amount: number, unit: string, pack: RecipeStore['pack']): RecipeAmount {
  const shown = amountInWords(amount, unit);
  if (pack === null) return { kind: 'known', amount, unit, words: shown };
  const packs = Math.ceil(amount / pack.holds - 1e-9);
  const holds = amountInWords(pack.holds, unit);
  return { kind: 'known', amount, unit, words: `${shown}: ${packs} ${pack.word}${packs === 1 ? '' : 's'} of ${holds}` };
}

/** Things by the piece are whole ones; everything else has two figures. */
function amountInWords(amount: number, unit: string): string {
  if (unit === '') return String(Math.ceil(amount - 1e-9));
  const shown = amount >= 100 ? Math.ceil(amount) : Number(amount.toPrecision(2));
  return `${shown} ${unit}`;
}
