export { groundQuestions } from './ground/ground-questions.ts';
export { hoistQuestions } from './hoist/hoist-questions.ts';
export { endingQuestions } from './path/ending-questions.ts';
export type { Use as PathUse } from './path/factor.ts';
export type { PartOfPath, PartState } from './path/part.ts';
export { strengthQuestions } from './path/strength-questions.ts';
export { unmarkedQuestions } from './path/unmarked-questions.ts';
export { rigQuestions } from './rig/rig-questions.ts';
