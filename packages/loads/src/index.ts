export { cautions as loadCautions } from './cautions.ts';
export { baseChoices } from './fastenings/base-material.ts';
export { patternCounts } from './fastenings/bolt-pattern.ts';
export { fasteningQuestions } from './fastenings/fastening-questions.ts';
export {
  type CardScale,
  cardScale,
  checkLines,
  type GaugeCard,
  type GaugeThread,
  gaugeCard,
} from './fastenings/gauge-card.ts';
export { type ScrewSize, screwNames, sizeCell } from './fastenings/size-cell.ts';
export { type BoatAtAnchor, usualDragCoefficient, usualSurge, windOfLoad_kn } from './ground/bow-load.ts';
export { groundQuestions } from './ground/ground-questions.ts';
export { type RodeOut, type RodePiece, type RodePoint, rodeLines, rodeLying } from './ground/rode.ts';
export {
  type ChainSize,
  chainPiece,
  chainSizes,
  type RodeFibre,
  type RopeSize,
  ropePiece,
  ropeSizes,
} from './ground/rode-gear.ts';
export { assumedCarried_m, veered } from './ground/veer.ts';
export { type HoistPoint, handLimit_N } from './hoist/board-hoist.ts';
export {
  type BoardLine,
  endingsOf,
  isWire,
  type LineEnding,
  lineSizes_mm,
} from './hoist/board-line.ts';
export { feltSheaveFactor, pullAtHand_N } from './hoist/felt-sheaves.ts';
export {
  type HoistChange,
  type HoistThatDoes,
  hoistChanges,
  hoistThatDoes,
  newCord,
  reevingOf,
} from './hoist/hoist-changes.ts';
export { hoistQuestions } from './hoist/hoist-questions.ts';
export { placeAt, plateMass_kg, seaWater_kg_m3 } from './hoist/plate.ts';
export { assumedCaseFriction } from './hoist/sliding-board.ts';
export { slip } from './hoist/slip.ts';
export { type Bearing as SheaveBearing, bearings, type Handling, type Reeving, rove } from './hoist/tackle.ts';
export {
  type CannotHoist,
  gripLimit_N,
  type HoistFigures,
  hoistFigures,
  type LineUnderLoad,
  lastLine,
  type WholeHoist,
} from './hoist/whole-hoist.ts';
export { endingQuestions } from './path/ending-questions.ts';
export { type Use as PathUse, uses as pathUses } from './path/factor.ts';
export type { Misfit } from './path/fit.ts';
export { type CaseBorne, caseBorne, type PathBears, pathBears, placesUnknown } from './path/load-path.ts';
export type { PartOfPath, PartState } from './path/part.ts';
export { partInWords } from './path/part-in-words.ts';
export type { LoadPart, PartStrength } from './path/part-strength.ts';
export { pathQuestions } from './path/path-questions.ts';
export { shacklesThatFit } from './path/shackle-that-fits.ts';
export { stepped } from './path/step-size.ts';
export { strengthQuestions } from './path/strength-questions.ts';
export { unmarkedQuestions } from './path/unmarked-questions.ts';
export { signsFor } from './path/wear.ts';
export { type MastRaising, mastRaising, type RaisingPoint } from './rig/mast-raising.ts';
export { type ShroudPoint, shroudSlack } from './rig/mast-sideways.ts';
export { rigCautions } from './rig/rig-fields.ts';
export { rigQuestions } from './rig/rig-questions.ts';
export { type RiggingScrew, type ScrewThread, screwThreadTitles, takenUpByTurn_mm } from './rig/rigging-screw.ts';
export { slackBySway_m, stayLoadByPull } from './rig/stay-sideways.ts';
export { type Vang, type VangForces, vangForces } from './rig/vang.ts';
export {
  type Laid,
  type StayLoad,
  shareSays,
  stayLoadByStretch,
  stayLoadByTension,
  stiffness_N,
} from './rig/wire-stretch.ts';
