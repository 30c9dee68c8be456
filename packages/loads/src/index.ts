export { hoistQuestions } from './hoist/hoist-questions.ts';
export { endingQuestions } from './path/ending-questions.ts';
export { strengthQuestions } from './path/strength-questions.ts';
export { unmarkedQuestions } from './path/unmarked-questions.ts';
