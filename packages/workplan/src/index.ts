export { BesideLine, type FoundBeside, SearchBeside, type ToldBeside } from './beside.ts';
export { type CheckedProblem, checkProblem } from './check-problem.ts';
export {
  type CostOfHold,
  type HoldCostRun,
  type HoldCosts,
  type HoldTrial,
  type HoldTrialRun,
  heldJobs,
  letGo,
  startHoldCosts,
  startHoldTrial,
} from './holds/cost-of-hold.ts';
export { type Chance, chanceOf } from './odds/chance.ts';
export { type Odds, type OddsRun, startOdds, type WantedSet } from './odds/odds.ts';
export { type ExecutedRun, executedRuns } from './odds/run-as-plan.ts';
export type {
  Obstacle,
  Outcome,
  Plan,
  PlannedChange,
  PlannedStep,
  PlannedWait,
  Verdict,
  Worth,
} from './plan.ts';
export type {
  BeforeDew,
  Hand,
  Minute,
  MinuteSpan,
  Mix,
  PlaceFeature,
  PlanHour,
  Precedence,
  Problem,
  ProblemDay,
  ProblemJob,
  ProblemStep,
  SetUpAspect,
  SetUpChange,
  SetUpNeed,
  SetUpState,
  StepProgress,
  StoreLine,
  Tool,
  Wait,
  WorkZone,
} from './problem.ts';
export type { Fault } from './problem-faults.ts';
export { readPsplib } from './psplib.ts';
export { type Gain, type Reasons, type ReasonsRun, startReasons, type WaysIn } from './reasons/reasons.ts';
export {
  addedDay,
  addedHand,
  compareEase,
  fitHour,
  type Relaxation,
  type RelaxationKind,
  relaxed,
} from './reasons/relaxation.ts';
export type { WayIn } from './reasons/ways-in.ts';
export { type Holder, type StepHeld, stepHeld } from './reasons/what-holds.ts';
export { type Rule, ruleMeanings, rules, type Violation } from './rules.ts';
export { type Progress, type Search, type SearchStart, startSearch } from './search.ts';
export { violations } from './violations.ts';
export { touchDryAfter, waitAfter } from './wait-after.ts';
export { compareWorth, worthOf } from './worth.ts';
