export {
  amountOfUse,
  type ConditionRule,
  type DueRule,
  type Interval,
  type IntervalUnit,
  intervalInWords,
  type UseKind,
  type UseRule,
  useKinds,
} from './due-rule.ts';
export { type DatedPart, type DuePart, type DueStage, dueStage, type FallsDue, fallsDue } from './falls-due.ts';
export { forecastQuestions } from './forecast-questions.ts';
export type { DayBand, UseAhead } from './use-rate.ts';
export { allUsual, dueCautions, type Usual, usualInWords, usualOf, usualRule, usualSource } from './usual-interval.ts';
export { usualQuestions } from './usual-questions.ts';
