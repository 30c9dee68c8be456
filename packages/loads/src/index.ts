export { hoistQuestions } from './hoist/hoist-questions.ts';
export { unmarkedQuestions } from './path/unmarked-questions.ts';
