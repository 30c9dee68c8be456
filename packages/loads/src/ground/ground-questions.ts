import type { Question } from '#working';
import { bowLoadQuestion } from './bow-load-question.ts';
import { rodeQuestion, rodeToVeerQuestion } from './rode-question.ts';

/** The questions about ground tackle: what pulls at the bow, how a rode lies, how much of it to veer. */
export function groundQuestions(): readonly Question[] {
  return [bowLoadQuestion(), rodeQuestion(), rodeToVeerQuestion()];
}
