import type { Question } from '#working';
import { boardHoistQuestion } from './board-hoist-question.ts';
import { plateQuestion } from './plate-question.ts';
import { tackleQuestions } from './tackle-questions.ts';
import { winchQuestion } from './winch-question.ts';

/** The questions about hoisting: tackles, turns round a post, winches, plates. */
export function hoistQuestions(): readonly Question[] {
  return [...tackleQuestions(), winchQuestion(), plateQuestion(), boardHoistQuestion()];
}
