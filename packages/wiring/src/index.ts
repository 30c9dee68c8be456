export { conductorQuestions } from './conductor-questions.ts';
export { dropQuestions } from './drop-questions.ts';
export { fuseQuestions } from './fuse-questions.ts';
