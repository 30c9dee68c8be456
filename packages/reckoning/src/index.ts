export { cautiousClimate } from './cautious-climate.ts';
export { changeInWords, setUpChangeInWords, setUpInWords } from './change-in-words.ts';
export { conditionInWords, conditionsInWords } from './condition-in-words.ts';
export { type HeldWords, heldInWords } from './holds-in-words.ts';
export { jobWeight } from './job-weight.ts';
export { type ObstacleWords, obstacleInWords } from './obstacle-in-words.ts';
export { oddsBandInWords, oddsInWords } from './odds-in-words.ts';
export type { PlanNote } from './plan-note.ts';
export { assumedArrival_clock } from './plan-stores.ts';
export { type PlanMatter, problemFrom } from './problem-from.ts';
export { gainInWords, leastInWords, relaxationInWords, wayInWords } from './reason-in-words.ts';
export { stepReasonsInWords } from './step-reasons-in-words.ts';
export {
  kindOfStep,
  type Minutes,
  type TimeSpent,
  type TunedMinutes,
  timesSpent,
  tunedMinutes,
} from './tuned-minutes.ts';
export { effortInWords, verdictInWords } from './verdict-in-words.ts';
export { dayInWords, lengthInWords, localMinute, minuteInWords } from './when-in-words.ts';
