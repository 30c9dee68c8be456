import type { Question } from '#working';
import { boltPatternQuestion } from './bolt-pattern-question.ts';
import { boltTorqueQuestion } from './bolt-torque-question.ts';
import { drillQuestion, pilotHoleQuestion } from './drill-question.ts';
import { fasteningQuestion } from './fastening-question.ts';
import { filledHoleQuestion } from './filled-hole-question.ts';
import { gaugeCardQuestion } from './gauge-card-question.ts';
import { timberQuestion, woodScrewQuestion } from './wood-screw-question.ts';

/** The questions about screws, bolts and what they hold in, and about the card they are measured on. */
export function fasteningQuestions(): readonly Question[] {
  return [
    drillQuestion(),
    pilotHoleQuestion(),
    boltTorqueQuestion(),
    timberQuestion(),
    woodScrewQuestion(),
    fasteningQuestion(),
    boltPatternQuestion(),
    filledHoleQuestion(),
    gaugeCardQuestion(),
  ];
}
