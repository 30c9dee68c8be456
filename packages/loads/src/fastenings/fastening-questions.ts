import type { Question } from '#working';
import { gaugeCardQuestion } from './gauge-card-question.ts';

/** The questions about screws, bolts and what they hold in, and about the card they are measured on. */
export function fasteningQuestions(): readonly Question[] {
  return [gaugeCardQuestion()];
}
