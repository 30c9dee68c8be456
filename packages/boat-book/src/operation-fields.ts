/**
 * What each named operation is told. Fields are those of `records.ts`; what may be left out says `?`.
 *
 * No quantity is ever filled in: minutes, hands, sizes, wind and dates that the work depends on must be given. Only
 * what is truly empty when nothing is said (a note, a list, "no date") may be left out.
 */
import type { DueMeasure, DueRecord, SeasonTick, UseRecord } from './due-records.ts';
import type { ForecastRecord } from './forecast-records.ts';
import type { BoardHoistRecord, HoistForceRecord } from './hoist-records.ts';
import type { LoadPathRecord } from './load-records.ts';
import type { NewLogEntry } from './log-entry.ts';
import type { Cost } from './log-records.ts';
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
import type {
  At,
  Boat,
  Clock,
  Consequence,
  Day,
  Fitting,
  FittingBedding,
  Id,
  Job,
  JobDay,
  JuryRig,
  KeptPlan,
  MixRecord,
  Outing,
  Place,
  SetUp,
  Spot,
  Step,
  WaitRecord,
  WeatherEntry,
  Zone,
} from './records.ts';
import type { MastRecord, StayReading, StayRecord } from './rig-records.ts';
import type { RodeRecord } from './rode-records.ts';
import type { StoreRecord, StoreUnit, Stowage, ToolRecord } from './store-records.ts';
import type { TimerRecord } from './timer-records.ts';
import type { TinRecord } from './tin-records.ts';
import type { BallWeighing, CarriedRecord, MassBand, TrailerRecord } from './trailer-records.ts';

/** A new record may bring its own id (so that others put in with it can name it); otherwise one is made. */
type New<T> = T & { readonly id?: Id };
type Changed<T> = Partial<T> & { readonly id: Id };
type One = { readonly id: Id };

/** What must be said of a step; the rest is empty, `keeper` true, and `order` the place in the list. */
export type NewStep = New<
  Pick<Step, 'title' | 'minutes' | 'hands'> & Partial<Omit<Step, 'job' | 'title' | 'minutes' | 'hands' | 'progress'>>
>;

/** What must be said of a job; the rest is empty and `opened` today. */
export type NewJob = New<
  Pick<Job, 'title' | 'consequence'> & Partial<Omit<Job, 'title' | 'consequence' | 'state' | 'closed'>>
> & { readonly steps?: readonly NewStep[] };

/** Something was got: it is added to what is there. */
interface GotStore extends Pick<StoreRecord, 'stowage' | 'expires'> {
  readonly id: Id;
  /** how much, in `unit`; null: not counted, it is there */
  readonly amount: number | null;
  /** the store's own, where it has one */
  readonly unit: StoreUnit | null;
  readonly keptAt?: string;
  /** what was paid for all of it */
  readonly cost?: Cost | null;
  /** the part of it that each job bears, together at most 1; what is left over is stock */
  readonly jobs?: readonly { readonly job: Id; readonly share: number }[];
  readonly who?: string;
}

/** What a step took of a store; null: all that was there of it. */
export interface UsedStore {
  readonly store: Id;
  /** in the store's unit */
  readonly amount: number | null;
}

/** How far a jury rig is trusted. */
type RigTrust = Pick<JuryRig, 'trustedUntil' | 'wind_max_kn' | 'sails_max' | 'notOnRoad'>;

/** What is said of where a job comes from when it is put in, and never changed. */
type JobsOrigin = 'recipe' | 'followUps' | 'writeDown' | 'followsJob';

/** How a job was shown to hold, and what was found, with its figure: `dry inside after 10 min`. */
export interface JobProof {
  readonly by: NonNullable<Step['proof']>;
  readonly found: string;
}

export interface OperationFieldsByName {
  readonly setBoat: Partial<Boat>;
  readonly setWeights: Partial<Record<Consequence, number>>;
  readonly addPlace: New<Place>;
  readonly changePlace: Changed<Place>;
  readonly removePlace: One;
  readonly addZone: New<Zone>;
  readonly changeZone: Changed<Zone>;
  readonly removeZone: One;
  readonly addFitting: New<Fitting>;
  readonly changeFitting: Changed<Fitting>;
  readonly removeFitting: One;
  /** what it was bedded, sealed or glued with; `on`: the day; `store`: what of the stores it was */
  readonly bedFitting: FittingBedding & { readonly fitting: Id; readonly store?: Id | null; readonly who?: string };
  readonly addSetUp: New<SetUp>;
  readonly changeSetUp: Changed<SetUp>;
  readonly removeSetUp: One;
  /** how she stands now */
  readonly placeFitting: Spot & { readonly fitting: Id };
  readonly placeZone: Spot & { readonly zone: Id };
  readonly setUpStands: { readonly setUp: Id; readonly state: Id };
  readonly addTool: New<ToolRecord>;
  readonly changeTool: Changed<ToolRecord>;
  readonly removeTool: One;
  readonly addMix: New<MixRecord>;
  readonly changeMix: Changed<MixRecord>;
  readonly removeMix: One;
  readonly addTin: New<TinRecord>;
  readonly changeTin: Changed<TinRecord>;
  readonly removeTin: One;
  readonly addBattery: New<BatteryRecord>;
  readonly changeBattery: Changed<BatteryRecord>;
  readonly removeBattery: One;
  readonly addPanel: New<PanelRecord>;
  readonly changePanel: Changed<PanelRecord>;
  readonly removePanel: One;
  readonly addCharger: New<ChargerRecord>;
  readonly changeCharger: Changed<ChargerRecord>;
  readonly removeCharger: One;
  readonly addCircuit: New<CircuitRecord>;
  readonly changeCircuit: Changed<CircuitRecord>;
  readonly removeCircuit: One;
  readonly addLoadPath: New<LoadPathRecord>;
  readonly changeLoadPath: Changed<LoadPathRecord>;
  readonly removeLoadPath: One;
  readonly addStay: New<StayRecord>;
  readonly changeStay: Changed<StayRecord>;
  readonly removeStay: One;
  readonly addMast: New<MastRecord>;
  readonly changeMast: Changed<MastRecord>;
  readonly removeMast: One;
  readonly enterStayReading: Omit<StayReading, 'order'>;
  readonly removeStayReading: One;
  readonly addRode: New<RodeRecord>;
  readonly changeRode: Changed<RodeRecord>;
  readonly removeRode: One;
  readonly addLoadTest: New<LoadTest>;
  readonly changeLoadTest: Changed<LoadTest>;
  readonly removeLoadTest: One;
  /** its readings with it, so that they are taken back together */
  readonly enterLoadTest: Omit<LoadTest, 'readings'> & { readonly readings: readonly Omit<ReadingRecord, 'order'>[] };
  readonly enterReadings: { readonly readings: readonly Omit<ReadingRecord, 'order'>[] };
  readonly removeReading: One;
  readonly keepReadingBlock: Omit<ReadingBlock, 'order'>;
  readonly removeReadingBlock: One;
  readonly keepNightAhead: Omit<NightAheadRecord, 'made' | 'order'>;
  readonly addBoardHoist: New<BoardHoistRecord>;
  readonly changeBoardHoist: Changed<BoardHoistRecord>;
  readonly removeBoardHoist: One;
  readonly enterHoistForce: Omit<HoistForceRecord, 'order'>;
  readonly removeHoistForce: One;
  readonly addTrailer: New<TrailerRecord>;
  readonly changeTrailer: Changed<TrailerRecord>;
  readonly removeTrailer: One;
  readonly addCarried: New<CarriedRecord>;
  readonly changeCarried: Changed<CarriedRecord>;
  readonly removeCarried: One;
  /** things moved or weighed anew, together; the mass of a board goes to its hoist too */
  readonly changeLoad: {
    readonly things: readonly { readonly carried: Id; readonly ahead_m?: number; readonly mass?: MassBand }[];
  };
  readonly enterBallWeighing: Omit<BallWeighing, 'order'>;
  readonly removeBallWeighing: One;
  /** a thing never stood where the table had it: its place put right, also in the weighing that showed it */
  readonly putTableRight: { readonly weighing: Id; readonly carried: Id; readonly ahead_m: number };
  /** its blob is kept first: see `blobs-named.ts` */
  readonly keepPhoto: Omit<PhotoRecord, 'order'>;
  /** it is kept anew, under another id */
  readonly changePhoto: One & Partial<Pick<PhotoRecord, 'words' | 'shows' | 'position'>>;
  readonly removePhoto: One;

  /** the blob is kept first, beside the book */
  readonly addDue: New<DueRecord>;
  readonly changeDue: Changed<DueRecord>;
  readonly removeDue: One;
  readonly dueWasDone: { readonly id: Id; readonly on: Day; readonly who?: string };
  readonly makeJobOfDue: { readonly due: Id } & OperationFieldsByName['takeRecipe'];
  readonly makeJobsOfDues: { readonly jobs: readonly OperationFieldsByName['makeJobOfDue'][] };
  readonly enterUses: { readonly uses: readonly Omit<UseRecord, 'entered' | 'order'>[] };
  readonly removeUse: One;
  readonly enterDueMeasure: Omit<DueMeasure, 'entered' | 'order'>;
  readonly removeDueMeasure: One;
  /** `text`: the line as it reads, for the log */
  readonly tickSeason: Omit<SeasonTick, 'at' | 'order'> & { readonly text: string };
  readonly untickSeason: { readonly id: Id; readonly text: string };
  readonly keepPaper: Omit<PaperRecord, 'added'>;
  readonly changePaper: Changed<Omit<PaperRecord, 'blob' | 'bytes' | 'type' | 'file' | 'added'>>;
  readonly removePaper: One;
  readonly addRecipe: New<RecipeRecord>;
  readonly changeRecipe: Changed<RecipeRecord>;
  readonly removeRecipe: One;

  readonly addJob: NewJob;
  /** a job by a recipe, with the tools, mixes and stores that it names and the book does not have: put in and taken back together */
  readonly takeRecipe: {
    readonly tools: readonly New<ToolRecord>[];
    readonly mixes: readonly New<MixRecord>[];
    readonly stores: readonly New<StoreRecord>[];
    readonly job: NewJob;
  };
  /** jobs that follow up a job, put in and taken back together */
  readonly putInFollowUps: { readonly job: Id; readonly followUps: readonly NewJob[] };
  readonly changeJob: Changed<Omit<Job, 'state' | 'closed' | JobsOrigin>>;
  /** `closed`: the day; today where left out */
  readonly finishJob: {
    readonly id: Id;
    readonly closed?: Day;
    readonly who?: string;
    /** a job whose recipe names a proof is finished with it, or with why it is `notProved` */
    readonly proof?: JobProof;
    readonly notProved?: string;
    /** what belongs in the log besides: `butyl tape, 3 mm` */
    readonly writtenDown?: string;
    readonly followUps?: readonly NewJob[];
    /** jury rigs that stood in for it and are out; only with its proof */
    readonly rigsOut?: readonly Id[];
  };
  readonly failProof: { readonly id: Id; readonly proof: JobProof; readonly who?: string };
  readonly startTimer: Omit<TimerRecord, 'started'>;
  readonly stopTimer: One;
  readonly dropJob: { readonly id: Id; readonly closed?: Day };
  readonly reopenJob: One;
  /** `day` null: let go; `at`: the time its first open step starts at, left out or null: at any time of the day */
  readonly holdJob: { readonly job: Id; readonly day: Id | null; readonly at?: Clock | null };
  readonly addStep: NewStep & { readonly job: Id };
  readonly changeStep: Changed<Omit<Step, 'job' | 'progress' | 'proof'>>;
  readonly removeStep: One;
  /** what a step is bedded or glued with: a store of the book, or one put in with it and taken back with it */
  readonly stepTakes: {
    readonly step: Id;
    readonly store: Id;
    readonly put: StoreRecord | null;
    /** in `unit`; null: not worked out */
    readonly amount: number | null;
    readonly unit: StoreUnit;
    /** its waits, where what it takes sets in another way; left out: as they are */
    readonly waits?: readonly WaitRecord[];
  };
  /** `to`: its new place among the job's steps, counted from 0 */
  readonly moveStep: { readonly id: Id; readonly to: number };
  /** left out: started now, expected after its likely minutes, by the keeper */
  readonly startStep: {
    readonly id: Id;
    readonly started?: At;
    readonly expected?: At;
    readonly hands?: readonly Id[];
  };
  /**
   * Left out: finished now; started when it was started, or else its spent (or likely) minutes before. `spent_min`
   * left out: the minutes between, where it was started; otherwise not known.
   */
  readonly tickStep: {
    readonly id: Id;
    readonly started?: At;
    readonly finished?: At;
    readonly spent_min?: number | null;
    readonly who?: string;
    readonly text?: string;
    /** what of the stores it took; undo puts it back with the rest */
    readonly used?: readonly UsedStore[];
  };
  readonly stepTookLonger: { readonly id: Id; readonly expected: At };
  readonly untickStep: One;

  /** `trustedBecause`: why so far, such as that it is usual for its kind */
  readonly addJuryRig: New<Omit<JuryRig, 'state'>> & { readonly trustedBecause?: string };
  readonly changeJuryRig: Changed<Omit<JuryRig, 'state' | keyof RigTrust>>;
  readonly trustJuryRig: Changed<RigTrust> & { readonly trustedUntil: Day; readonly reason: string };
  /** left out: the proof of its job speaks for it */
  readonly removeJuryRig: { readonly id: Id; readonly because?: string };

  readonly addJobDay: New<JobDay>;
  /** job days put in together, and taken back together */
  readonly bookHours: { readonly days: readonly JobDay[] };
  readonly changeJobDay: Changed<JobDay>;
  readonly removeJobDay: One;
  readonly enterWeather: { readonly entries: readonly Omit<WeatherEntry, 'entered' | 'order'>[] };
  readonly keepForecast: Omit<ForecastRecord, 'taken' | 'order'>;
  readonly goByForecast: { readonly place: Id; readonly date: Day };
  readonly addOuting: New<Outing>;
  readonly changeOuting: Changed<Outing>;
  readonly removeOuting: One;
  /** a line of the keeper's own: where it stands is said, or it stands at the end */
  readonly addMorningLine: Pick<MorningLineRecord, 'list' | 'outing' | 'place'> & { readonly text: string };
  /** what is left out stays as it is; `of` names the line, of the house or (by its own id) of the keeper */
  readonly changeMorningLines: {
    readonly list: MorningLineRecord['list'];
    readonly lines: readonly ({ readonly of: string; readonly outing: Id | null } & Partial<
      Pick<MorningLineRecord, 'text' | 'out' | 'place' | 'setAside'>
    >)[];
  };
  readonly tickMorningLine: Omit<MorningTick, 'line' | 'came' | 'job' | 'at' | 'order'> & { readonly line: string };
  readonly untickMorningLine: One;
  /** a line that is not right: the job of it, and where it is mended for now, the jury rig that stands in for that */
  readonly failMorningLine: Omit<MorningTick, 'line' | 'came' | 'job' | 'at' | 'order'> &
    OperationFieldsByName['takeRecipe'] & {
      readonly line: string;
      readonly juryRig: Omit<OperationFieldsByName['addJuryRig'], 'id' | 'job'> | null;
    };
  /** `text`: what was ticked, when, and what was left, for the log */
  readonly finishMorningList: Omit<MorningTick, 'line' | 'came' | 'job' | 'at' | 'order'>;
  readonly addStowage: New<Stowage>;
  readonly changeStowage: Changed<Stowage>;
  readonly removeStowage: One;
  readonly addStore: New<StoreRecord>;
  readonly changeStore: Changed<StoreRecord>;
  readonly removeStore: One;
  readonly gotStore: GotStore;
  readonly useStores: { readonly step: Id; readonly used: readonly UsedStore[]; readonly who?: string };
  readonly keepPlan: Omit<KeptPlan, 'made' | 'order'>;
  readonly writeLog: NewLogEntry;

  /**
   * Settles a field of a record that was answered differently on two devices. For a record that came back after it
   * was removed, `field` is `removed` and `answer` is `keep` or `remove`.
   */
  readonly chooseAnswer: {
    readonly collection: CollectionName;
    readonly id: Id;
    readonly field: string;
    readonly answer: Json;
  };
}

export type OperationName = keyof OperationFieldsByName;
export type OperationFields<N extends OperationName> = OperationFieldsByName[N];

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

export type CollectionName =
  | 'boat'
  | 'weights'
  | 'places'
  | 'zones'
  | 'fittings'
  | 'setUps'
  | 'tools'
  | 'mixes'
  | 'tins'
  | 'batteries'
  | 'panels'
  | 'chargers'
  | 'circuits'
  | 'loadPaths'
  | 'stays'
  | 'masts'
  | 'rodes'
  | 'boardHoists'
  | 'trailers'
  | 'carried'
  | 'papers'
  | 'dues'
  | 'recipes'
  | 'jobs'
  | 'steps'
  | 'juryRigs'
  | 'rigTrusts'
  | 'jobDays'
  | 'weather'
  | 'forecasts'
  | 'outings'
  | 'morningLines'
  | 'morningTicks'
  | 'stowages'
  | 'stores'
  | 'readings'
  | 'readingBlocks'
  | 'loadTests'
  | 'nightsAhead'
  | 'stayReadings'
  | 'hoistForces'
  | 'ballWeighings'
  | 'uses'
  | 'dueMeasures'
  | 'seasonTicks'
  | 'photos'
  | 'timers'
  | 'plans'
  | 'log';

/** Something that was answered differently on two devices, and waits for the keeper to choose. */
export interface OpenQuestion {
  readonly collection: CollectionName;
  readonly id: Id;
  /** the field, or `removed`: it was taken out on one device while it was changed or used on another */
  readonly field: string;
  /** what each said; the first is the one the book goes by until the keeper chooses */
  readonly answers: readonly Json[];
}

/** What was not taken, in plain words: where, what is wrong with it, and what would be right. */
export interface Refusal {
  readonly where: string;
  readonly wrong: string;
  readonly right: string;
}

export type OperationOutcome =
  | { readonly kind: 'done'; readonly id: Id | null }
  | ({ readonly kind: 'refused' } & Refusal);
