export type { Bearing, Finding, NotLooked, Reason, Remedy, Subject } from './finding.ts';
export { type FitAnswer, fitAnswer, type Verdict } from './fit-answer.ts';
