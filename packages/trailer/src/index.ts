export { type Balance, type Band, balanceOf, ballByScale_kg, type Carried, mendsOf } from './balance.ts';
export { balanceQuestions } from './balance-questions.ts';
export { type Lashing, restraint, shareAsked, type WayHeld } from './lashing.ts';
export { lashingQuestions } from './lashing-questions.ts';
export {
  advised_pct,
  ballLimit,
  type LimitFinding,
  ladenOverKerb_pct,
  least_pct,
  limitsLooked,
  type PaperLimits,
} from './limits.ts';
export { cautions as trailerCautions, sources as trailerSources } from './trailer-fields.ts';
export { leastTread_mm, tyreAge_years, tyreLoad, tyreMade, tyreSpeed, tyreYears } from './tyre.ts';
export { tyreQuestions } from './tyre-questions.ts';
