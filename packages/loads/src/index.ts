export { unmarkedQuestions } from './path/unmarked-questions.ts';
