export type { Bearing, Finding, InBook, NotLooked, Reason, Remedy, Subject } from './finding.ts';
export { type FitAnswer, fitAnswer, type Verdict } from './fit-answer.ts';
export type { LeastWork, Mend } from './to-make-fit.ts';
