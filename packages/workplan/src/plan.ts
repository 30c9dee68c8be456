/** The answer to a `Problem`: what happens when, how good it is and how sure that is. Plain JSON. */
import type { Minute } from './problem.ts';

export interface Plan {
  readonly steps: readonly PlannedStep[];
  readonly waits: readonly PlannedWait[];
  readonly changes: readonly PlannedChange[];
  /** ids of the jobs not in the plan, in the problem's order */
  readonly leftOut: readonly string[];
}

export interface PlannedStep {
  readonly step: string;
  readonly start: Minute;
  readonly finish: Minute;
  /** ids of the hands busy with it */
  readonly hands: readonly string[];
  /** the job day it is in; null for a step that was done or under way before */
  readonly day: string | null;
  /** the step whose batch of the mix it shares; null: it mixes its own */
  readonly batchOf: string | null;
  /** minutes of abrading in its time, because a recoat window was missed. 0: none */
  readonly abrade_min: number;
}

export interface PlannedWait {
  readonly step: string;
  readonly wait: string;
  readonly start: Minute;
  readonly finish: Minute;
  /** it met hours below the product's minimum: it may never reach its strength */
  readonly tooCold: boolean;
}

export interface PlannedChange {
  readonly aspect: string;
  readonly from: string;
  readonly to: string;
  readonly start: Minute;
  readonly finish: Minute;
  readonly hands: readonly string[];
  readonly day: string;
}

/**
 * What a plan is worth, compared in this order: `missed` (less is better), `weight` (more), `setUp_min` (less),
 * `moved_min` (less), `lastFinish` (less).
 */
export interface Worth {
  /** weight of the needed jobs (a deadline, or not optional) that are left out */
  readonly missed: number;
  /** weight of all jobs done */
  readonly weight: number;
  /** minutes spent changing set-ups */
  readonly setUp_min: number;
  /**
   * how far the open steps that `problem.previous` names start from there, summed: how steady the plan is. A step that
   * is left out now counts by its job's weight, not here. 0 with nothing before. [min]
   */
  readonly moved_min: number;
  /** when the last open step is finished; 0 if there is none */
  readonly lastFinish: Minute;
}

export type Verdict =
  /** nothing misses less, does more weight, or does the same with less set-up changing; `finishToo`: nor sooner */
  | { readonly kind: 'proved best'; readonly finishToo: boolean }
  /** no plan can do more than `bound` in weight; `gap` = (bound − weight) / bound */
  | { readonly kind: 'good, gap known'; readonly bound: number; readonly gap: number }
  /** a needed job can be in no plan; `best` says how the plan of the rest stands */
  | {
      readonly kind: 'impossible, because';
      readonly because: readonly Obstacle[];
      readonly rest: 'proved best' | 'good, gap known' | 'stopped early';
      readonly bound: number;
      readonly gap: number;
    }
  | { readonly kind: 'stopped early'; readonly bound: number; readonly gap: number };

/** Why a job is not in the plan, as data; screens put it into a sentence. */
export type Obstacle =
  | {
      readonly kind: 'not in stores';
      readonly job: string;
      readonly step: string;
      readonly store: string;
      readonly from: Minute | null;
    }
  | { readonly kind: 'no second hand'; readonly job: string; readonly step: string }
  | { readonly kind: 'no hands'; readonly job: string; readonly step: string; readonly need: number }
  | { readonly kind: 'no tool'; readonly job: string; readonly step: string; readonly tool: string }
  | { readonly kind: 'no such place'; readonly job: string; readonly step: string; readonly feature: string }
  /** no stretch of weather long enough; `condition` is the one that stands in the way, `best_min` the longest there is */
  | {
      readonly kind: 'weather';
      readonly job: string;
      readonly step: string;
      readonly condition: string;
      readonly need_min: number;
      readonly best_min: number;
      readonly bestDay: string | null;
    }
  | {
      readonly kind: 'set-up out of reach';
      readonly job: string;
      readonly step: string;
      readonly aspect: string;
      readonly states: readonly string[];
    }
  | {
      readonly kind: 'longer than any day';
      readonly job: string;
      readonly step: string;
      readonly minutes: number;
      readonly longest_min: number;
    }
  | {
      readonly kind: 'wait not over in time';
      readonly job: string;
      readonly step: string;
      readonly wait: string;
      readonly by: Minute;
    }
  | {
      readonly kind: 'wait needs not kept';
      readonly job: string;
      readonly step: string;
      readonly wait: string;
      readonly need: string;
    }
  | { readonly kind: 'deadline'; readonly job: string; readonly earliest: Minute | null; readonly deadline: Minute }
  | { readonly kind: 'window missed'; readonly job: string; readonly step: string; readonly before: string }
  | { readonly kind: 'waits for a job left out'; readonly job: string; readonly step: string; readonly other: string }
  | { readonly kind: 'steps wait for each other'; readonly job: string; readonly steps: readonly string[] }
  | { readonly kind: 'held elsewhere'; readonly job: string; readonly step: string }
  /** it fits alone, but not beside the rest: least worth for its time */
  | { readonly kind: 'no room left'; readonly job: string; readonly need_min: number; readonly free_min: number };

export interface Outcome {
  readonly plan: Plan;
  readonly worth: Worth;
  readonly verdict: Verdict;
  /** for every job left out, at least one */
  readonly obstacles: readonly Obstacle[];
  /** what the search did; the same seed and count give the same plan */
  readonly effort: { readonly seed: number; readonly iterations: number };
}
