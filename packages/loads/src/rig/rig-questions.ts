import type { Question } from '#working';
import { mastRaisingQuestion } from './mast-raising-question.ts';
import { mastSidewaysQuestion } from './mast-sideways-question.ts';
import { sparQuestions } from './spar-questions.ts';
import { stayScrewQuestions } from './stay-screw-questions.ts';
import { stayStretchQuestions } from './stay-stretch-questions.ts';
import { vangQuestion } from './vang-question.ts';

/** The questions about the rig: stays, the mast on its way up, spars and the vang. */
export function rigQuestions(): readonly Question[] {
  return [
    ...stayStretchQuestions(),
    ...stayScrewQuestions(),
    mastRaisingQuestion(),
    mastSidewaysQuestion(),
    vangQuestion(),
    ...sparQuestions(),
  ];
}
