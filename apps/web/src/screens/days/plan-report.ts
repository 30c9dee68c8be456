/** What the plan worker is asked and what it tells. Plain data, so that it can cross to the Worker and back. */
import type { Book } from '#boat-book';
import type { CostOfHoldWords, HeldWords, PlanNote, PlanOdds } from '#reckoning';
import type { Obstacle, Outcome, Plan, Problem, Relaxation } from '#workplan';
import type { WindowRequest, WindowTelling } from './window-report.ts';

export interface PlanRequest {
  readonly book: Book;
  /** the instant the plan is made at, ISO 8601 in UTC */
  readonly now: string;
  readonly seed: number;
  /** the longest it may search. [ms] */
  readonly spend_ms: number;
  /** a plan to begin the search with, and the instant of its minute 0; it need not keep the rules any more */
  readonly from: { readonly startsAt: string; readonly plan: Plan } | null;
  /** the plan kept in the book is forgotten: sooner is better, wherever things stood */
  readonly afresh: boolean;
}

/** What a hold would cost, asked before it is made. */
export interface HoldTrialRequest {
  readonly book: Book;
  /** the instant the plan in hand was made at */
  readonly now: string;
  readonly seed: number;
  readonly job: string;
  readonly hold: { readonly heldTo: string; readonly heldAt: string | null };
  /** the plan in hand, with the holds there are now, and the instant of its minute 0 */
  readonly inHand: { readonly startsAt: string; readonly outcome: Outcome };
}

export interface HoldTrialTelling {
  readonly words: string;
  /** true: no more is looked for */
  readonly finished: boolean;
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

/** A change that would let more be done: in words, as data, and with the plan that shows it. */
export interface ChangeTold {
  readonly words: string;
  /** that nothing less does, where that is proved */
  readonly least: string | null;
  readonly relaxation: Relaxation;
  /** the job it is told of */
  readonly job: string | null;
  readonly plan: Plan;
}

/** What is known by now of why a plan is as it is. */
export interface PlanReasons {
  /** for every job left out the changes that would let it in, the easiest first */
  readonly ways: readonly {
    readonly job: string;
    readonly ways: readonly ChangeTold[];
    /** all that may help has been looked at */
    readonly finished: boolean;
  }[];
  /** the one change that would gain most */
  readonly gain: ChangeTold | null;
  /** by step of the plan: what holds it where it is, and its room to spare */
  readonly held: Readonly<Record<string, HeldWords>>;
  /** parts looked at, of so many */
  readonly done: number;
  readonly of: number;
  readonly finished: boolean;
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
  /** after the plan has settled; told again as more is known */
  | { readonly kind: 'reasons'; readonly reasons: PlanReasons }
  /** after the plan has settled; told again as more runs are made */
  | { readonly kind: 'odds'; readonly odds: PlanOdds }
  /** after the reasons: what each hold costs; told again as more are known */
  | { readonly kind: 'holds'; readonly holds: readonly CostOfHoldWords[] }
  | {
      readonly kind: 'settled';
      readonly picture: PlanPicture;
      readonly progress: SearchProgress;
      readonly stopped: boolean;
    };

export interface PlanWorker {
  /**
   * Plans a book; tells as it goes, and once the plan has settled what can be said of it; resolves when all is told,
   * or another request took its place.
   */
  plan(request: PlanRequest, tell: (telling: PlanTelling) => void): Promise<void>;
  /** The next hours that would suit each job, told one by one, the heaviest first; a newer request ends it. */
  windows(request: WindowRequest, tell: (telling: WindowTelling) => void): Promise<void>;
  /** What a hold would cost, told as it is looked for, within a second; a newer trial ends it. */
  tryHold(request: HoldTrialRequest, tell: (telling: HoldTrialTelling) => void): Promise<void>;
  /** Ends the search now; the best plan so far is told as settled. */
  stop(): void;
  /** Lets the search stand still for so long, so that the page has the device to itself. [ms] */
  rest(for_ms: number): void;
}
