export { amountQuestions } from './amount-questions.ts';
export { drilledOut_m } from './amounts.ts';
export { beddingChoice, beddingNames } from './bedding-choice.ts';
export { beddingKinds } from './bedding-kinds.ts';
export { beddingQuestions } from './bedding-questions.ts';
export { coatingMargin, leastDewMargin_C, mostCoatingHumidity_pct } from './coating-margin.ts';
export { coatingQuestions } from './coating-questions.ts';
export { belowMinimum, cureFinish, curePerMinute } from './cure-finish.ts';
export type { CureLaw, FigureFrom } from './cure-law.ts';
export { cureLawOf, cureLaws, type FigureSource, type ProductLaw } from './cure-laws.ts';
export { cureQuestions } from './cure-questions.ts';
export { type DewHour, type EveningStop, eveningStop, nightSurface_C } from './evening-dew.ts';
export { type BeddingKind, type Joint, type JointMaterial, jointMaterialNames, materialSaid } from './joint.ts';
export { metalsQuestions } from './metals-questions.ts';
export { boatMetalThatGoes, isBoatMetal } from './metals-together.ts';
export {
  assumedMostInCup_g,
  type Batches,
  batchesWithin,
  catalystAdvice,
  catalystAmount,
  epoxyDensity_g_ml,
  hottestPot_C,
  type PotLife,
  partsOf,
  polyesterDensity_g_ml,
  potLife_min,
  potLives,
  pumpStrokes,
} from './mixing.ts';
export { mixingQuestions } from './mixing-questions.ts';
export { outdoorQuestions } from './outdoor-questions.ts';
export { activationEnergy_kJ_mol, rateRatio, timeAtTemperature } from './reaction-rate.ts';
export { type RecoatFigures, type RecoatWindow, recoatFigures, recoatWindow } from './recoat-window.ts';
export { type ShelfLife, shelfLifeOf } from './shelf-life.ts';
export { cureStage, lawFromTin, type TinFigures, tinSpeaksFor } from './tin-figures.ts';
export { touchDryFigure, touchDryLaw } from './touch-dry.ts';
