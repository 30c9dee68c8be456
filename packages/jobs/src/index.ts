export { recipes } from '../recipes/recipes.ts';
export { type RecipeId, recipesFor } from './find-recipes.ts';
export { primeReader } from './prime-reader.ts';
export { readLine } from './read-line.ts';
export type {
  Lexicon,
  LineConditions,
  LineConsequence,
  LineMinutes,
  ReadLine,
  Understood,
} from './read-line-parts.ts';
export { readWalkRound } from './read-walk-round.ts';
export type {
  AmountInput,
  AmountRule,
  FollowUpTime,
  MixRatio,
  Recipe,
  RecipeAsk,
  RecipeFollowUp,
  RecipeLaw,
  RecipeMix,
  RecipeProof,
  RecipeSetUp,
  RecipeStep,
  RecipeStore,
  RecipeWait,
  RecipeWindow,
} from './recipe.ts';
export { asksOf } from './recipe.ts';
export { recipeFaults } from './recipe-lint.ts';
export { spokenOf } from './trade-thesaurus.ts';
export { makeshifts, type UsualTrust, usualTrust } from './usual-trust.ts';
export type { Proposal, WalkRound } from './walk-round.ts';
