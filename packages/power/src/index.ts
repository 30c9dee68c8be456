export { drawQuestions } from './draw-questions.ts';
export { nightQuestions } from './night-questions.ts';
