/**
 * The plan problem: complete, self-contained, plain JSON. Everything the planner knows stands here, so that a
 * problem can be stored, replayed and handed to another solver.
 *
 * Times are whole minutes after `startsAt`. A span is half-open: [from, to).
 * The rules a plan must keep are in `violations.ts`, each under the name used in the comments here.
 */
import type { CureLaw } from '#materials';
import type { Conditions, WeatherHour } from '#sky';

export type Minute = number;

export interface MinuteSpan {
  readonly from: Minute;
  readonly to: Minute;
}

export interface Problem {
  readonly format: 1;
  /** minute 0, an instant on a whole hour, ISO 8601 in UTC */
  readonly startsAt: string;
  /** IANA zone of the place, for showing times */
  readonly timeZone: string;
  /** end of what is planned. whole hours, at most 90 days */
  readonly horizon: Minute;
  /** nothing that is still open may start before this. 0 when planning ahead */
  readonly now: Minute;
  /** in order of time, not overlapping */
  readonly days: readonly ProblemDay[];
  /** the first is the keeper */
  readonly hands: readonly Hand[];
  readonly tools: readonly Tool[];
  readonly zones: readonly WorkZone[];
  readonly aspects: readonly SetUpAspect[];
  readonly mixes: readonly Mix[];
  readonly stores: readonly StoreLine[];
  /** one for each hour from `startsAt`; horizon / 60 of them. Where the boat lies. */
  readonly hours: readonly PlanHour[];
  /** sunrise to sunset, in order */
  readonly daylight: readonly MinuteSpan[];
  readonly jobs: readonly ProblemJob[];
  readonly steps: readonly ProblemStep[];
  readonly precedence: readonly Precedence[];
  /** starts of the plan now in force, for steadiness; empty when there is none */
  readonly previous: readonly { readonly step: string; readonly start: Minute }[];
}

export interface PlanHour extends WeatherHour {
  /** the boat lies under a roof this hour, so rain does not reach it */
  readonly sheltered: boolean;
  /**
   * chance of rain in this hour, as a forecast gives it; only the odds read it. Missing: for weather typed or
   * forecast, what forecasts of that age are worth (`odds/weather-draws.ts`). [%], 0–100
   */
  readonly rainOdds_pct?: number;
}

export type PlaceFeature = 'water' | 'mains' | 'level' | 'slope';

/** A job day. Work goes into [from + setOut_min, to − clearUp_min) less the breaks. */
export interface ProblemDay {
  readonly id: string;
  readonly label: string;
  readonly from: Minute;
  readonly to: Minute;
  readonly setOut_min: number;
  readonly clearUp_min: number;
  readonly breaks: readonly MinuteSpan[];
  readonly features: readonly PlaceFeature[];
  /** the set-ups the day must end in, as they stand at its last minute */
  readonly endsIn: readonly SetUpState[];
}

export interface Hand {
  readonly id: string;
  readonly name: string;
  /** in order; work also needs a job day */
  readonly present: readonly MinuteSpan[];
}

/** A tool or any other thing there are only so many of at a time. */
export interface Tool {
  readonly id: string;
  readonly name: string;
  /** how many there are, over time; outside these spans none */
  readonly capacity: readonly { readonly from: Minute; readonly to: Minute; readonly count: number }[];
}

export interface WorkZone {
  readonly id: string;
  readonly name: string;
  /** how many hands find room in it at once. ≥ 1 */
  readonly room: number;
  /** rain does not reach it */
  readonly inside: boolean;
  /** zones whose dust reaches this one, and the other way round (given on either side) */
  readonly near: readonly string[];
}

export interface SetUpState {
  readonly aspect: string;
  readonly state: string;
}

/** A step or wait asks for one of these states throughout. */
export interface SetUpNeed {
  readonly aspect: string;
  readonly states: readonly string[];
}

/** One thing about the boat that steps need one way or another: the mast, the cover, the board. */
export interface SetUpAspect {
  readonly id: string;
  readonly name: string;
  readonly states: readonly {
    readonly id: string;
    readonly name: string;
    /** in this state a wait stays dry whatever the weather (a cover on) */
    readonly shelters: boolean;
  }[];
  /** the state at `now`, or where a change is under way the state it leaves */
  readonly initial: string;
  /** the direct changes there are; a missing pair cannot be done in one go */
  readonly changes: readonly SetUpChange[];
}

/** The work of changing a set-up. It is done within a job day, out of breaks, like a step. */
export interface SetUpChange {
  readonly from: string;
  readonly to: string;
  readonly minutes: number;
  /** hands busy with it, the keeper always among them. ≥ 1 */
  readonly hands: number;
  readonly needs: Conditions;
  /** other aspects that must hold still in one of these states while it is done */
  readonly setUps: readonly SetUpNeed[];
}

/** A batch of something mixed: steps that use it may share one mixing within its pot life. */
export interface Mix {
  readonly id: string;
  readonly name: string;
  /** minutes of a step's time that the mixing takes at its start; a sharing step saves them */
  readonly mixing_min: number;
  /** from the end of mixing; a sharing step must be finished by then */
  readonly potLife_min: number;
}

export interface StoreLine {
  readonly id: string;
  readonly name: string;
  /** when it is on hand; null: not in sight */
  readonly from: Minute | null;
}

export interface ProblemJob {
  readonly id: string;
  readonly title: string;
  /** what doing it is worth. > 0 */
  readonly weight: number;
  /** all its steps and waits must be over by then; null: no date */
  readonly deadline: Minute | null;
  /** false: counts as needed even without a deadline */
  readonly optional: boolean;
}

export type StepProgress =
  | { readonly kind: 'open' }
  /** started and not finished: it keeps its hands until `expectedFinish`, whatever the conditions */
  | {
      readonly kind: 'under way';
      readonly start: Minute;
      readonly expectedFinish: Minute;
      readonly hands: readonly string[];
    }
  | { readonly kind: 'done'; readonly start: Minute; readonly finish: Minute };

export interface ProblemStep {
  readonly id: string;
  readonly job: string;
  readonly title: string;
  /** hands-on time, the likely one. whole, ≥ 1 (0 only where hands is 0) */
  readonly minutes: number;
  /**
   * hands-on time when all goes well, and when it does not: one time in ten it lies outside the two. Only the odds
   * read them. Missing: as `minutes`. low ≤ minutes ≤ high
   */
  readonly minutes_low?: number;
  readonly minutes_high?: number;
  /** hands busy with it. ≥ 0 */
  readonly hands: number;
  /** the keeper must be one of them */
  readonly keeper: boolean;
  /** a second hand must be present throughout, busy with it or not */
  readonly notAlone: boolean;
  readonly zone: string | null;
  readonly needs: Conditions;
  readonly features: readonly PlaceFeature[];
  readonly tools: readonly { readonly tool: string; readonly count: number }[];
  readonly setUps: readonly SetUpNeed[];
  readonly stores: readonly string[];
  /** makes dust: keeps away from wet finishes in its zone and the zones near it */
  readonly dusty: boolean;
  /** leaves a wet finish: itself and those of its waits marked `wet` keep away from dust */
  readonly wet: boolean;
  readonly mix: string | null;
  readonly waits: readonly Wait[];
  /** held by the keeper: must start and finish within; null: free */
  readonly held: MinuteSpan | null;
  readonly progress: StepProgress;
}

/** Time after a step that nobody works on it. Starts in the minute the step finishes. */
export interface Wait {
  readonly id: string;
  readonly title: string;
  readonly law: CureLaw;
  readonly needs: {
    readonly dry?: true;
    readonly air_min_C?: number;
    readonly beforeDew?: BeforeDew;
  };
  /** states that must hold throughout the wait */
  readonly setUps: readonly SetUpNeed[];
  /** aspects that may not be changed while it lasts (it must stay still) */
  readonly still: readonly string[];
  /** dust keeps away while it lasts */
  readonly wet: boolean;
}

/**
 * A coat that must be dry to the touch before dew comes near it: until `touchDry` is over (or the wait, if that is
 * sooner) every hour keeps the margin. A roof or a zone inside exempts it; a cover does not, for it cannot lie on a coat
 * that still sticks.
 */
export interface BeforeDew {
  /** as in the conditions of a step. [°C] */
  readonly dewMargin_min_C: number;
  readonly touchDry: CureLaw;
}

/**
 * `after` starts no sooner than `least_min`, and no later than `greatest_min`, after the end of `before`, or of
 * its wait where one is named. With `past: abrade` it may start later but then takes `minutes` more at its start,
 * dusty for those. If `before` is neither done nor in the plan, `after` cannot be.
 */
export interface Precedence {
  readonly before: string;
  readonly wait: string | null;
  readonly after: string;
  readonly least_min: number;
  readonly greatest_min: number | null;
  readonly past: { readonly kind: 'forbidden' } | { readonly kind: 'abrade'; readonly minutes: number };
}
