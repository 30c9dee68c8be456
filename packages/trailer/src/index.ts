export { balanceOf, type Carried, mendsOf } from './balance.ts';
export { balanceQuestions } from './balance-questions.ts';
export { lashingQuestions } from './lashing-questions.ts';
export { tyreQuestions } from './tyre-questions.ts';
