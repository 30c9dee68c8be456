import type { Question } from '#working';
import { boardHoistQuestion } from './board-hoist-question.ts';
import { cascadeQuestion } from './cascade-question.ts';
import { plateQuestion } from './plate-question.ts';
import { tackleQuestions } from './tackle-questions.ts';
import { verticalBoardQuestion } from './vertical-board-question.ts';
import { winchQuestion } from './winch-question.ts';

/** The questions about hoisting: tackles, turns round a post, winches, plates. */
export function hoistQuestions(): readonly Question[] {
  return [
    ...tackleQuestions(),
    cascadeQuestion(),
    winchQuestion(),
    plateQuestion(),
    boardHoistQuestion(),
    verticalBoardQuestion(),
  ];
}
