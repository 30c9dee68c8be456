/**
 * A recipe: a kind of job written down once. Plain data, so that a keeper can change it and a book can hold it.
 *
 * It knows no particular boat. Zones, set-ups, tools and stores are named in the trade's words; what stands for them
 * on one boat is found when the recipe is taken (`#reckoning`). Minutes are common practice; real ones tune them.
 */
import type { CureLaw } from '#materials';
import type { LineConditions, LineConsequence } from './read-line-parts.ts';

export type RecipeGroup =
  | 'ground tackle'
  | 'standing rigging'
  | 'running rigging'
  | 'sails and covers'
  | 'board and case'
  | 'rudder and steering'
  | 'hull and deck'
  | 'through-hulls, drains and leaks'
  | 'paint and varnish'
  | 'electrics'
  | 'trailer'
  | 'outboard'
  | 'safety gear'
  | 'cabin'
  | 'lay-up and fit-out';

export interface Recipe {
  readonly title: string;
  readonly group: RecipeGroup;
  /** words a keeper would say when it is wanted, for finding it */
  readonly words: readonly string[];
  /** what shows that it is needed */
  readonly when: string;
  /** what usually happens if it is left */
  readonly consequence: LineConsequence;
  /** words for the zone it is done in, the likeliest first */
  readonly zones: readonly string[];
  readonly asks: readonly RecipeAsk[];
  /** in the order they are done */
  readonly steps: readonly RecipeStep[];
  readonly proof: RecipeProof;
  readonly followUps: readonly RecipeFollowUp[];
  /** what belongs in the log when it is done */
  readonly writeDown: readonly string[];
}

/** A size or number the amounts hang on. Nothing stands in for it: the keeper measures. */
export interface RecipeAsk {
  readonly id: string;
  readonly words: string;
  /** empty for a number of things */
  readonly unit: '' | 'mm' | 'm' | 'm²' | 'l' | 'h';
  readonly low: number;
  readonly high: number;
  /** for a number of things: whole ones only */
  readonly whole: boolean;
}

export interface RecipeMinutes {
  /** [min], 1 ≤ low ≤ likely ≤ high ≤ 1440 */
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** The keys and units of a step's conditions. */
export interface RecipeConditions extends LineConditions {
  readonly surface_min_C?: number;
  readonly dewMargin_min_C?: number;
}

export interface RecipeSetUp {
  /** such as 'mast' */
  readonly setUp: string;
  /** such as 'down' */
  readonly state: string;
}

export interface RecipeStep {
  readonly title: string;
  readonly minutes: RecipeMinutes;
  readonly hands: number;
  readonly notAlone: boolean;
  readonly needs: RecipeConditions;
  readonly features: readonly ('water' | 'mains' | 'level' | 'slope')[];
  readonly tools: readonly string[];
  readonly setUps: readonly RecipeSetUp[];
  readonly stores: readonly RecipeStore[];
  readonly dusty: boolean;
  readonly wet: boolean;
  /** what is mixed for it; steps with the same mix may share a batch. null: nothing */
  readonly mix: RecipeMix | null;
  readonly waits: readonly RecipeWait[];
  /** how long after the step before it, and its waits, this one may start; null: at any time */
  readonly window: RecipeWindow | null;
  readonly cautions: readonly string[];
}

/** A batch of something mixed, known in the book by its name. */
export interface RecipeMix {
  readonly name: string;
  /** the family of product it is (`cureLaws` of #materials), whose pot life follows the temperature; null: of none there */
  readonly family: string | null;
  /** minutes of the step's time that the mixing takes at its start; a step that shares the batch saves them. 0 to 1440 */
  readonly mixing_min: number;
  /** from the end of mixing at 20 °C; what the tin says wins. 1 to 10,080 */
  readonly potLife_min: number;
  /** the thing of the step's stores whose amount it is, by its name; null: nobody says how much */
  readonly of: string | null;
  /** mixed, for an amount in ml or l. [g/ml] */
  readonly density_g_ml: number;
  /** parts of resin to parts of hardener, where no tin says it; left out or null: its tin says it */
  readonly ratio?: MixRatio | null;
}

/** How the two parts of a mix go together; each over 0. */
export interface MixRatio {
  readonly by: 'weight' | 'volume';
  readonly resin: number;
  readonly hardener: number;
}

/** The next coat's window: past it the coat below is abraded first, or it may not go on at all. */
export interface RecipeWindow {
  readonly greatest_min: number;
  readonly past: { readonly kind: 'forbidden' } | { readonly kind: 'abrade'; readonly minutes: number };
}

export interface RecipeWait {
  readonly title: string;
  readonly law: RecipeLaw;
  readonly needs: { readonly dry?: true; readonly air_min_C?: number };
  readonly setUps: readonly RecipeSetUp[];
  /** set-ups that may not be changed while it lasts */
  readonly still: readonly string[];
  /** dust keeps away while it lasts */
  readonly wet: boolean;
}

export type RecipeLaw =
  /** gets hard by the law of this family of products; `depth_mm` for a bead that is not 6 mm deep */
  | { readonly kind: 'product'; readonly product: string; readonly depth_mm?: number }
  | { readonly kind: 'set time'; readonly minutes: number; readonly because: string }
  /** the keeper's own law, by the tin's figures mostly: where they are from stands in it */
  | { readonly kind: 'own law'; readonly law: CureLaw };

export interface RecipeStore {
  readonly name: string;
  /** words that the name of a thing in the stores must all have to be this */
  readonly words: readonly string[];
  readonly amount: AmountRule;
  /** the size asked for that is part of what it is, a bolt's thickness; null: its name says all */
  readonly size: string | null;
  /** what it is sold in, in the amount's unit; null: by the piece or cut to length */
  readonly pack: { readonly holds: number; readonly word: string } | null;
}

/** The ids of the sizes that a thing, or how much of it, hangs on. */
export function asksOf({ amount, size }: Pick<RecipeStore, 'amount' | 'size'>): string[] {
  const own = size === null ? [] : [size];
  if (amount.kind === 'each') return [amount.of, ...own];
  if (amount.kind === 'set') return own;
  return [...Object.values(amount.inputs).flatMap((input) => (input.from === 'asked' ? [input.ask] : [])), ...own];
}

/** How much of a thing it takes. Data: what it says is worked out where the questions are known. */
export type AmountRule =
  /** so many for each of what is asked, and spares over */
  | {
      readonly kind: 'each';
      readonly of: string;
      readonly times: number;
      readonly spare: number;
      readonly unit: string;
    }
  /** the answer of a question of the trade, and how much more for waste */
  | {
      readonly kind: 'question';
      readonly question: string;
      readonly inputs: Readonly<Record<string, AmountInput>>;
      /** symbol of the figure in the answer that is the amount */
      readonly figure: string;
      /** more, for what stays in the pot or on the brush. [%] */
      readonly waste_pct: number;
      readonly unit: string;
    }
  /** the same whatever the size, and why */
  | { readonly kind: 'set'; readonly amount: number; readonly unit: string; readonly because: string };

export type AmountInput =
  | { readonly from: 'asked'; readonly ask: string; readonly times?: number }
  | { readonly from: 'boat'; readonly size: 'length_m' | 'beam_m' | 'draft_m' | 'mastHeight_m' }
  | { readonly from: 'set'; readonly value: number | string }
  /** how far a litre goes: our figure for this family (`cureLaws` of #materials), unless its tin says another. [m²/l] */
  | { readonly from: 'coverage'; readonly family: string; readonly ours_m2_l: number };

/** How the finished job is shown to hold: its last step. */
export interface RecipeProof {
  readonly kind: 'load' | 'hoist' | 'hose' | 'continuity' | 'pull' | 'photograph' | 'measure' | 'run' | 'look' | 'soak';
  readonly step: RecipeStep;
}

/** A job that this one leaves to be done, and when. */
export interface RecipeFollowUp {
  readonly title: string;
  readonly because: string;
  readonly minutes: RecipeMinutes;
  /** what happens if it is left */
  readonly consequence: LineConsequence;
  readonly after: FollowUpTime;
}

export type FollowUpTime =
  /** no sooner than `least_days` after the job is done, and no later than `most_days`. 0 ≤ least ≤ most ≤ 400 */
  | { readonly kind: 'days'; readonly least_days: number; readonly most_days: number }
  /** after the next outing; where none is in the book, in so many days. 1 to 400 */
  | { readonly kind: 'next outing'; readonly else_days: number };
