import type { Question } from '#working';
import { choiceQuestion } from './bedding-choice-question.ts';
import { jointMovement, movingJoint, sealantQuestion } from './sealant-questions.ts';

/** The questions about bedding, sealants and glue. A function, so that an app that asks none carries none. */
export function beddingQuestions(): readonly Question[] {
  return [choiceQuestion(), sealantQuestion(), movingJoint(), jointMovement()];
}
