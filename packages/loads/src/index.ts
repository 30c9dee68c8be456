export { fasteningQuestions } from './fastenings/fastening-questions.ts';
export {
  type CardScale,
  cardScale,
  checkLines,
  type GaugeCard,
  type GaugeThread,
  gaugeCard,
} from './fastenings/gauge-card.ts';
export { groundQuestions } from './ground/ground-questions.ts';
export type { ChainSize, RodeFibre, RopeSize } from './ground/rode-gear.ts';
export { hoistQuestions } from './hoist/hoist-questions.ts';
export { endingQuestions } from './path/ending-questions.ts';
export type { Use as PathUse } from './path/factor.ts';
export type { PartOfPath, PartState } from './path/part.ts';
export { strengthQuestions } from './path/strength-questions.ts';
export { unmarkedQuestions } from './path/unmarked-questions.ts';
export { rigQuestions } from './rig/rig-questions.ts';
export type { RiggingScrew } from './rig/rigging-screw.ts';
export type { Laid } from './rig/wire-stretch.ts';
