/** What the plan worker is asked and what it tells. Plain data, so that it can cross to the Worker and back. */
import type { Book } from '#boat-book';
import type { PlanNote } from '#reckoning';
import type { Obstacle, Outcome, Problem } from '#workplan';

export interface PlanRequest {
  readonly book: Book;
  /** the instant the plan is made at, ISO 8601 in UTC */
  readonly now: string;
  readonly seed: number;
  /** the longest it may search. [ms] */
  readonly spend_ms: number;
}

/** A job that is not in the plan: why, and what would let it in. */
export interface LeftOutJob {
  readonly job: string;
  readonly title: string;
  readonly reasons: readonly { readonly why: string; readonly gain: string | null; readonly obstacle: Obstacle }[];
}

export interface PlanPicture {
  readonly outcome: Outcome;
  /** the verdict in words */
  readonly verdict: string;
  readonly leftOut: readonly LeftOutJob[];
}

export interface SearchProgress {
  readonly iterations: number;
  readonly elapsed_ms: number;
  /** weight of what is done in the best plan so far; null: no plan yet */
  readonly weight: number | null;
  /** no plan can do more than this in weight */
  readonly bound: number;
}

export type PlanTelling =
  | {
      readonly kind: 'nothing to plan';
      readonly words: string;
      readonly because: string;
      readonly notes: readonly PlanNote[];
    }
  | { readonly kind: 'problem'; readonly problem: Problem; readonly notes: readonly PlanNote[] }
  | { readonly kind: 'plan'; readonly picture: PlanPicture; readonly progress: SearchProgress }
  | { readonly kind: 'progress'; readonly progress: SearchProgress }
  | {
      readonly kind: 'settled';
      readonly picture: PlanPicture;
      readonly progress: SearchProgress;
      readonly stopped: boolean;
    };

export interface PlanWorker {
  /** Plans a book; tells as it goes; resolves when it has settled, was stopped, or another request took its place. */
  plan(request: PlanRequest, tell: (telling: PlanTelling) => void): Promise<void>;
  /** Ends the search now; the best plan so far is told as settled. */
  stop(): void;
}
