/**
 * The records of a boat book, as plain values. This is the open form: `book.json` in a boat file is one `Book`.
 *
 * A `YYYY-MM-DD` is a day at the boat's place, a `HH:MM` a clock time there, an `At` an instant in UTC
 * (ISO 8601, with Z). Units stand in the names. Lists keyed by id are objects, so that two devices can add to them.
 * Records marked *fixed* never change: their id is the hash of their content. They stand in the book in the order they
 * were known in, oldest first; `order` says the same as a number (1 + the highest known when it was written). Clocks may
 * be wrong by years, so which of two counts is settled by `order`, then by id, never by an instant.
 */
import type { RecipeFollowUp, RecipeProof } from '#jobs';
import type { CureLaw } from '#materials';
import type { BowKind, KeelKind, RigKind, SternKind } from '#picture';
import type { Conditions } from '#sky';
import type { PlaceFeature } from '#workplan';
import type { DueMeasure, DueRecord, SeasonTick, UseRecord } from './due-records.ts';
import type { ForecastRecord } from './forecast-records.ts';
import type { BoardHoistRecord, HoistForceRecord } from './hoist-records.ts';
import type { RigTrustRecord } from './jury-rig-records.ts';
import type { LoadPathRecord } from './load-records.ts';
import type { LogEntry } from './log-records.ts';
import type { MorningLineRecord, MorningTick } from './morning-records.ts';
import type { PaperRecord } from './paper-records.ts';
import type { PhotoRecord } from './photo-records.ts';
import type {
  BatteryRecord,
  ChargerRecord,
  CircuitRecord,
  LoadTest,
  NightAheadRecord,
  PanelRecord,
  ReadingBlock,
  ReadingRecord,
} from './power-records.ts';
import type { RecipeRecord } from './recipe-records.ts';
import type { MastRecord, StayReading, StayRecord } from './rig-records.ts';
import type { RodeRecord } from './rode-records.ts';
import type { StepTake, StoreRecord, Stowage, ToolRecord } from './store-records.ts';
import type { TimerRecord } from './timer-records.ts';
import type { MixSaid, TinRecord, WaitSaid } from './tin-records.ts';
import type { BallWeighing, CarriedRecord, TrailerRecord } from './trailer-records.ts';

export type Id = string;
export type Day = string;
export type Clock = string;
export type At = string;

export interface Book {
  readonly format: 'fettle-boat-book';
  readonly version: 5;
  readonly id: Id;
  // the document `boat`: the keeper writes
  readonly boat: Boat;
  readonly places: Readonly<Record<Id, Place>>;
  readonly zones: Readonly<Record<Id, Zone>>;
  readonly fittings: Readonly<Record<Id, Fitting>>;
  readonly setUps: Readonly<Record<Id, SetUp>>;
  readonly tools: Readonly<Record<Id, ToolRecord>>;
  readonly mixes: Readonly<Record<Id, MixRecord>>;
  readonly tins: Readonly<Record<Id, TinRecord>>;
  readonly weights: Weights;
  readonly batteries: Readonly<Record<Id, BatteryRecord>>;
  readonly panels: Readonly<Record<Id, PanelRecord>>;
  readonly chargers: Readonly<Record<Id, ChargerRecord>>;
  readonly circuits: Readonly<Record<Id, CircuitRecord>>;
  readonly loadPaths: Readonly<Record<Id, LoadPathRecord>>;
  readonly stays: Readonly<Record<Id, StayRecord>>;
  readonly masts: Readonly<Record<Id, MastRecord>>;
  readonly rodes: Readonly<Record<Id, RodeRecord>>;
  readonly boardHoists: Readonly<Record<Id, BoardHoistRecord>>;
  readonly trailers: Readonly<Record<Id, TrailerRecord>>;
  readonly carried: Readonly<Record<Id, CarriedRecord>>;
  readonly papers: Readonly<Record<Id, PaperRecord>>;
  readonly dues: Readonly<Record<Id, DueRecord>>;
  readonly recipes: Readonly<Record<Id, RecipeRecord>>;
  // the document `work`: hands write too
  readonly jobs: Readonly<Record<Id, Job>>;
  readonly steps: Readonly<Record<Id, Step>>;
  readonly juryRigs: Readonly<Record<Id, JuryRig>>;
  readonly rigTrusts: Readonly<Record<Id, RigTrustRecord>>;
  readonly jobDays: Readonly<Record<Id, JobDay>>;
  readonly weather: Readonly<Record<Id, WeatherEntry>>;
  readonly forecasts: Readonly<Record<Id, ForecastRecord>>;
  readonly outings: Readonly<Record<Id, Outing>>;
  readonly morningLines: Readonly<Record<Id, MorningLineRecord>>;
  readonly morningTicks: Readonly<Record<Id, MorningTick>>;
  readonly stowages: Readonly<Record<Id, Stowage>>;
  readonly stores: Readonly<Record<Id, StoreRecord>>;
  readonly readings: Readonly<Record<Id, ReadingRecord>>;
  readonly readingBlocks: Readonly<Record<Id, ReadingBlock>>;
  readonly loadTests: Readonly<Record<Id, LoadTest>>;
  readonly nightsAhead: Readonly<Record<Id, NightAheadRecord>>;
  readonly stayReadings: Readonly<Record<Id, StayReading>>;
  readonly hoistForces: Readonly<Record<Id, HoistForceRecord>>;
  readonly ballWeighings: Readonly<Record<Id, BallWeighing>>;
  readonly timers: Readonly<Record<Id, TimerRecord>>;
  readonly uses: Readonly<Record<Id, UseRecord>>;
  readonly dueMeasures: Readonly<Record<Id, DueMeasure>>;
  readonly seasonTicks: Readonly<Record<Id, SeasonTick>>;
  readonly photos: Readonly<Record<Id, PhotoRecord>>;
  readonly plans: Readonly<Record<Id, KeptPlan>>;
  readonly log: Readonly<Record<Id, LogEntry>>;
}

export interface Boat {
  readonly name: string;
  readonly keeper: string;
  /** true: the invented boat that comes with the program */
  readonly demo: boolean;
  readonly length_m: number;
  readonly beam_m: number;
  readonly mastHeight_m: number;
  /** from the stem to the front of the mast */
  readonly mastFromBow_m: number;
  readonly boom_m: number;
  readonly freeboard_m: number;
  /** hull below the waterline, board up */
  readonly draft_m: number;
  /** below the waterline with the board down */
  readonly draftBoardDown_m: number;
  readonly cabin: boolean;
  readonly board: 'pivoting' | 'vertical' | 'keel';
  /** how else she is built, as far as it was said; left out or null: drawn as is usual on a boat of her length */
  readonly build?: BoatBuild | null;
  /** which of the sizes above nobody gave: they were guessed from her length, only to draw her by */
  readonly guessed?: readonly GuessableSize[] | null;
  /** what prices are in, three letters of ISO 4217; left out or null: not said */
  readonly currency?: string | null;
}

export type GuessableSize =
  | 'beam_m'
  | 'mastHeight_m'
  | 'mastFromBow_m'
  | 'boom_m'
  | 'freeboard_m'
  | 'draft_m'
  | 'draftBoardDown_m';

/** What she is drawn by besides her sizes. A field left out: nobody said. */
export interface BoatBuild {
  /** says more than `board`, and agrees with it: a lifting keel, bilge keels and a fixed keel are all `keel` there */
  readonly keel?: KeelKind;
  readonly bow?: BowKind;
  readonly stern?: SternKind;
  readonly rig?: RigKind;
  readonly mastStep?: 'deck' | 'keel';
  readonly rudder?: 'on the transom' | 'under the hull';
  readonly outboard?: 'on the transom' | 'none';
  /** top of the cabin over the sheer beside it */
  readonly cabinHeight_m?: number;
}

/** Where a thing is on her, in shares of her sizes, so that it stays where it was when they are put right. */
export interface Spot {
  /** from the stem 0 to the stern 1 */
  readonly along: number;
  /** from the waterline, in freeboards */
  readonly up: number;
  /** from the centreline, in half beams, starboard positive; left out: nobody said on which side */
  readonly across?: number;
}

export interface Place {
  readonly name: string;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  /** IANA zone */
  readonly timeZone: string;
  readonly features: readonly PlaceFeature[];
  /** the boat lies under a roof there */
  readonly sheltered: boolean;
}

export interface Zone {
  readonly name: string;
  /** other words the keeper calls it by */
  readonly words: readonly string[];
  readonly room: number;
  readonly inside: boolean;
  readonly near: readonly Id[];
  /** where it is on the boat: along from the stem 0 to the transom 1, height from the waterline in hull heights */
  readonly along: number;
  readonly up: number;
  /** from the centreline, in half beams, starboard positive; left out: on both sides, or nobody said */
  readonly across?: number;
}

export interface Fitting {
  readonly name: string;
  readonly zone: Id;
  readonly size: string;
  /** in the keeper's words, as it is now; empty: not known */
  readonly beddedWith: string;
  readonly note: string;
  /** when that was done, and as what work; null or left out: nobody wrote it down when it was */
  readonly bedding?: FittingBedding | null;
  /** where it is on the boat; left out or null: nobody placed it, it is somewhere in its zone */
  readonly spot?: Spot | null;
}

/** How a fitting came to be bedded, sealed or glued as it is. */
export interface FittingBedding {
  /** a kind of #materials, `butyl-tape`; null: not said */
  readonly kind: string | null;
  /** as the keeper calls it: what stands on the tube */
  readonly product: string;
  readonly on: Day;
  readonly job: Id | null;
}

/** One thing about the boat that is one way or another (the mast, the cover), and the work of changing it. */
export interface SetUp {
  readonly name: string;
  readonly states: readonly { readonly id: Id; readonly name: string; readonly shelters: boolean }[];
  /** as she stands now */
  readonly now: Id;
  readonly changes: readonly {
    readonly from: Id;
    readonly to: Id;
    readonly minutes: number;
    readonly hands: number;
    readonly needs: Conditions;
    readonly setUps: readonly SetUpNeedRecord[];
    readonly cautions: readonly string[];
  }[];
}

export interface SetUpNeedRecord {
  readonly setUp: Id;
  readonly states: readonly Id[];
}

export interface MixRecord extends MixSaid {
  readonly name: string;
  readonly mixing_min: number;
  readonly potLife_min: number;
}

export type Consequence = 'danger' | 'unlawful' | 'stops-sailing' | 'worsens' | 'comfort';

/** Our judgement, the keeper's to change. Defaults 100, 30, 30, 10, 3. */
export type Weights = Readonly<Record<Consequence, number>>;

export interface Job {
  readonly title: string;
  readonly why: string;
  readonly zone: Id | null;
  readonly fitting: Id | null;
  readonly consequence: Consequence;
  readonly opened: Day;
  /** a date of its own, and the outing it is needed for; null: none */
  readonly due: Day | null;
  readonly outing: Id | null;
  readonly state: 'open' | 'done' | 'dropped';
  readonly closed: Day | null;
  readonly note: string;
  /** the keeper's own words it came from */
  readonly said: string;
  /** held to a job day; null: free */
  readonly heldTo: Id | null;
  /** the time on that day its first open step starts at; null: at any time of it. Only with `heldTo` */
  readonly heldAt: Clock | null;
  /** jobs that must be done before it */
  readonly afterJobs: readonly Id[];
  /** the recipe it was put in by: the id of one of the house or of the book; left out: by none */
  readonly recipe?: string;
  /** what it usually leaves to be done, offered when it is finished; left out: nothing is known of */
  readonly followUps?: readonly RecipeFollowUp[];
  /** what belongs in the log when it is done; left out: nothing is asked for */
  readonly writeDown?: readonly string[];
  /** the job that it follows up; left out: none */
  readonly followsJob?: Id;
  /** the due it answers, also when that is gone; left out: none */
  readonly fromDue?: Id;
}

export interface Step {
  readonly job: Id;
  /** steps of a job are done in this order unless `follows` says otherwise */
  readonly order: number;
  readonly title: string;
  readonly minutes: { readonly low: number; readonly likely: number; readonly high: number };
  readonly hands: number;
  readonly keeper: boolean;
  readonly notAlone: boolean;
  /** null: the job's zone */
  readonly zone: Id | null;
  readonly needs: Conditions;
  readonly features: readonly PlaceFeature[];
  readonly tools: readonly { readonly tool: Id; readonly count: number }[];
  readonly setUps: readonly SetUpNeedRecord[];
  readonly stores: readonly Id[];
  /** how much of those stores it takes, as far as that is known */
  readonly takes?: readonly StepTake[] | null;
  readonly dusty: boolean;
  readonly wet: boolean;
  readonly mix: Id | null;
  /** how much of its mix it takes, mixed; null or left out: nobody said. [g] */
  readonly mix_g?: number | null;
  readonly waits: readonly WaitRecord[];
  /** null: after the step before it in the job and all its waits */
  readonly follows: readonly Follow[] | null;
  readonly cautions: readonly string[];
  /** how the finished job is shown to hold, where this step is its proof; left out: it is none */
  readonly proof?: RecipeProof['kind'];
  readonly progress:
    | { readonly kind: 'open' }
    | { readonly kind: 'under way'; readonly started: At; readonly expected: At; readonly hands: readonly Id[] }
    | { readonly kind: 'done'; readonly started: At; readonly finished: At };
}

export interface WaitRecord extends WaitSaid {
  readonly id: Id;
  readonly title: string;
  readonly law: CureLaw;
  readonly needs: { readonly dry?: true; readonly air_min_C?: number };
  readonly setUps: readonly SetUpNeedRecord[];
  readonly still: readonly Id[];
  readonly wet: boolean;
}

export interface Follow {
  readonly step: Id;
  readonly wait: Id | null;
  readonly least_min: number;
  readonly greatest_min: number | null;
  readonly past: { readonly kind: 'forbidden' } | { readonly kind: 'abrade'; readonly minutes: number };
}

/** A temporary fix that stands in for a job. */
export interface JuryRig {
  readonly title: string;
  readonly job: Id | null;
  readonly zone: Id | null;
  readonly reason: string;
  readonly made: Day;
  /** trusted until this day, and within these limits, whichever comes first */
  readonly trustedUntil: Day;
  readonly wind_max_kn: number | null;
  readonly sails_max: number | null;
  readonly notOnRoad: boolean;
  readonly state: 'standing' | 'removed';
}

export interface JobDay {
  readonly date: Day;
  readonly from: Clock;
  readonly to: Clock;
  readonly place: Id;
  readonly setOut_min: number;
  readonly clearUp_min: number;
  readonly breaks: readonly { readonly from: Clock; readonly minutes: number }[];
  /** hands besides the keeper */
  readonly hands: readonly { readonly id: Id; readonly name: string; readonly from: Clock; readonly to: Clock }[];
  readonly endsIn: readonly { readonly setUp: Id; readonly state: Id }[];
}

/** Fixed. What was expected of one stretch of a day at a place; a later entry for the same hours is used instead. */
export interface WeatherEntry {
  readonly place: Id;
  readonly date: Day;
  /** whole hours, [from, to) */
  readonly fromHour: number;
  readonly toHour: number;
  readonly rain: boolean;
  /** the chance of rain in each of the hours, as a forecast gives it. 0 to 100; null: not given */
  readonly rainOdds_pct: number | null;
  readonly wind_kn: number;
  readonly air_C: number;
  readonly surface_C: number | null;
  readonly humidity_pct: number;
  readonly basis: 'typed' | 'forecast';
  readonly entered: At;
  /** set when it is put in the book */
  readonly order?: number;
}

export interface Outing {
  readonly title: string;
  readonly date: Day;
  readonly from: Clock;
  readonly nights: number;
  readonly place: string;
  /** the most that is expected to blow steadily; null: not said */
  readonly wind_kn: number | null;
  /** the least, and the gusts: never less, and never more, than `wind_kn`; null or left out: not said */
  readonly windLeast_kn?: number | null;
  readonly gust_kn?: number | null;
  /** how many go, the keeper counted: 1 is alone; null or left out: not said */
  readonly crew?: number | null;
  /** `road`: she is only towed, and does not get wet; left out: by water */
  readonly way?: 'water' | 'road';
}

/** Fixed. A plan as it was made: the problem is rebuilt from the book, so only the answer is kept. */
export interface KeptPlan {
  readonly made: At;
  /** instant of minute 0 of the times below */
  readonly startsAt: At;
  readonly plan: import('#workplan').Plan;
  readonly verdict: import('#workplan').Verdict;
  /** set when it is put in the book */
  readonly order?: number;
}
