/** The schema of every record, held to the types of `records.ts` in both directions at the foot of this file. */
import { z } from 'zod/mini';
import type { Recipe } from '#jobs';
import type { CureLaw } from '#materials';
import type { Conditions } from '#sky';
import type { DueMeasure, DueRecord, SeasonTick, UseRecord } from './due-records.ts';
import { dueMeasureSchema, dueSchema, seasonTickSchema, useSchema } from './due-schemas.ts';
import { at, clock, day, id, list, mixRatio, number, text, timeZone, title, whole, yes } from './field-schemas.ts';
import type { ForecastRecord } from './forecast-records.ts';
import { forecastSchema } from './forecast-schemas.ts';
import type { BoardHoistRecord, HoistForceRecord } from './hoist-records.ts';
import { boardHoistSchema, hoistForceSchema } from './hoist-schemas.ts';
import type { RigTrustRecord } from './jury-rig-records.ts';
import { juryRigSchema, rigTrustSchema } from './jury-rig-schemas.ts';
import { conditionsSchema, cureLawSchema, minutesSchema, stepMinutes } from './law-schemas.ts';
import type { LoadPathRecord } from './load-records.ts';
import { loadPathSchema } from './load-schemas.ts';
import type { LogEntry } from './log-records.ts';
import { currency, logSchema } from './log-schemas.ts';
import type { MorningLineRecord, MorningTick } from './morning-records.ts';
import { morningLineSchema, morningTickSchema } from './morning-schemas.ts';
import type { PaperRecord } from './paper-records.ts';
import { paperSchema } from './paper-schemas.ts';
import type { PhotoRecord } from './photo-records.ts';
import { photoSchema } from './photo-schemas.ts';
import { keptPlanSchema } from './plan-schemas.ts';
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
import {
  batterySchema,
  chargerSchema,
  circuitSchema,
  loadTestSchema,
  nightAheadSchema,
  panelSchema,
  readingBlockSchema,
  readingSchema,
} from './power-schemas.ts';
import type { RecipeRecord } from './recipe-records.ts';
import { followUpSchema, proofKind, recipeRecordSchema, type recipeSchema } from './recipe-schemas.ts';
import type {
  Boat,
  Fitting,
  Follow,
  Job,
  JobDay,
  JuryRig,
  MixRecord,
  Outing,
  Place,
  SetUp,
  SetUpNeedRecord,
  Step,
  WaitRecord,
  WeatherEntry,
  Weights,
  Zone,
} from './records.ts';
import type { MastRecord, StayReading, StayRecord } from './rig-records.ts';
import { mastSchema, stayReadingSchema, staySchema } from './rig-schemas.ts';
import type { RodeRecord } from './rode-records.ts';
import { rodeSchema } from './rode-schemas.ts';
import type { StepTake, StoreRecord, Stowage, ToolRecord } from './store-records.ts';
import { stepTakeSchema, storeSchema, stowageSchema, toolSchema } from './store-schemas.ts';
import type { TimerRecord } from './timer-records.ts';
import { timerSchema } from './timer-schemas.ts';
import type { TinRecord } from './tin-records.ts';
import { tinSchema } from './tin-schemas.ts';
import type { BallWeighing, CarriedRecord, TrailerRecord } from './trailer-records.ts';
import { ballWeighingSchema, carriedSchema, trailerSchema } from './trailer-schemas.ts';

const feature = z.enum(['water', 'mains', 'level', 'slope']);

export const setUpNeedSchema = z.strictObject({
  setUp: id,
  states: list(id).check(z.minLength(1)),
});

export const boatBuildSchema = z.strictObject({
  keel: z.exactOptional(z.enum(['pivoting', 'vertical', 'lifting keel', 'bilge keels', 'fixed keel'])),
  bow: z.exactOptional(z.enum(['raked', 'plumb', 'spoon'])),
  stern: z.exactOptional(z.enum(['upright', 'reversed', 'counter'])),
  rig: z.exactOptional(z.enum(['masthead', 'fractional', 'gaff', 'unstayed'])),
  mastStep: z.exactOptional(z.enum(['deck', 'keel'])),
  rudder: z.exactOptional(z.enum(['on the transom', 'under the hull'])),
  outboard: z.exactOptional(z.enum(['on the transom', 'none'])),
  cabinHeight_m: z.exactOptional(number(0, 3)),
});

export const spotSchema = z.strictObject({
  along: number(-1, 2),
  up: number(-10, 30),
  across: z.exactOptional(number(-3, 3)),
});

export const boatSchema = z.strictObject({
  name: title,
  keeper: text,
  demo: z.boolean(),
  length_m: number(2, 30),
  beam_m: number(0.5, 12),
  mastHeight_m: number(0, 45),
  mastFromBow_m: number(0, 30),
  boom_m: number(0, 15),
  freeboard_m: number(0.1, 4),
  draft_m: number(0, 6),
  draftBoardDown_m: number(0, 6),
  cabin: z.boolean(),
  board: z.enum(['pivoting', 'vertical', 'keel']),
  build: z.exactOptional(z.nullable(boatBuildSchema)),
  guessed: z.exactOptional(
    z.nullable(
      list(z.enum(['beam_m', 'mastHeight_m', 'mastFromBow_m', 'boom_m', 'freeboard_m', 'draft_m', 'draftBoardDown_m'])),
    ),
  ),
  currency: z.exactOptional(z.nullable(currency)),
});

export const placeSchema = z.strictObject({
  name: title,
  latitude_deg: number(-90, 90),
  longitude_deg: number(-180, 180),
  timeZone,
  features: list(feature),
  sheltered: z.boolean(),
});

export const zoneSchema = z.strictObject({
  name: title,
  words: list(title),
  room: whole(1, 20),
  inside: z.boolean(),
  near: list(id),
  along: number(-1, 2),
  up: number(-10, 30),
  across: z.exactOptional(number(-3, 3)),
});

export const fittingBeddingSchema = z.strictObject({
  kind: z.nullable(id),
  product: title,
  on: day,
  job: z.nullable(id),
});

export const fittingSchema = z.strictObject({
  name: title,
  zone: id,
  size: text,
  beddedWith: text,
  note: text,
  bedding: z.exactOptional(z.nullable(fittingBeddingSchema)),
  spot: z.exactOptional(z.nullable(spotSchema)),
});

export const setUpSchema = z.strictObject({
  name: title,
  states: list(z.strictObject({ id, name: title, shelters: z.boolean() })).check(z.minLength(1)),
  now: id,
  changes: list(
    z.strictObject({
      from: id,
      to: id,
      minutes: whole(1, 1440),
      hands: whole(1, 20),
      needs: conditionsSchema,
      setUps: list(setUpNeedSchema),
      cautions: list(text),
    }),
  ),
});

/** Said by some waits and mixes only. */
const ofProduct = {
  family: z.exactOptional(z.nullable(id)),
  tin: z.exactOptional(z.nullable(id)),
};

export const mixSchema = z.strictObject({
  name: title,
  mixing_min: whole(0, 1440),
  potLife_min: whole(1, 10_080),
  ...ofProduct,
  ratio: z.exactOptional(z.nullable(mixRatio)),
});

/** What a job is worth. Above 0, at most a million. */
const weight = z.number().check(z.gt(0), z.lte(1_000_000));
export const weightsSchema = z.strictObject({
  danger: weight,
  unlawful: weight,
  'stops-sailing': weight,
  worsens: weight,
  comfort: weight,
});

export const jobSchema = z.strictObject({
  title,
  why: text,
  zone: z.nullable(id),
  fitting: z.nullable(id),
  consequence: z.enum(['danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort']),
  opened: day,
  due: z.nullable(day),
  outing: z.nullable(id),
  state: z.enum(['open', 'done', 'dropped']),
  closed: z.nullable(day),
  note: text,
  said: text,
  heldTo: z.nullable(id),
  heldAt: z.nullable(clock),
  afterJobs: list(id),
  recipe: z.exactOptional(title),
  followUps: z.exactOptional(list(followUpSchema)),
  writeDown: z.exactOptional(list(title)),
  followsJob: z.exactOptional(id),
  fromDue: z.exactOptional(id),
});

export const waitSchema = z.strictObject({
  id,
  title,
  law: cureLawSchema,
  needs: z.strictObject({ dry: z.exactOptional(yes), air_min_C: z.exactOptional(number(-60, 60)) }),
  setUps: list(setUpNeedSchema),
  still: list(id),
  wet: z.boolean(),
  ...ofProduct,
});

export const followSchema = z.strictObject({
  step: id,
  wait: z.nullable(id),
  // up to 400 days: what looks again at a job a year on
  least_min: whole(0, 576_000),
  greatest_min: z.nullable(whole(0, 129_600)),
  past: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('forbidden') }),
    z.strictObject({ kind: z.literal('abrade'), minutes: stepMinutes }),
  ]),
});

export const stepSchema = z.strictObject({
  job: id,
  order: number(-1_000_000, 1_000_000),
  title,
  minutes: minutesSchema,
  hands: whole(0, 20),
  keeper: z.boolean(),
  notAlone: z.boolean(),
  zone: z.nullable(id),
  needs: conditionsSchema,
  features: list(feature),
  tools: list(z.strictObject({ tool: id, count: whole(1, 1000) })),
  setUps: list(setUpNeedSchema),
  stores: list(id),
  takes: z.exactOptional(z.nullable(list(stepTakeSchema))),
  dusty: z.boolean(),
  wet: z.boolean(),
  mix: z.nullable(id),
  mix_g: z.exactOptional(z.nullable(number(0.1, 100_000))),
  waits: list(waitSchema),
  follows: z.nullable(list(followSchema)),
  cautions: list(text),
  proof: z.exactOptional(proofKind),
  progress: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('open') }),
    z.strictObject({ kind: z.literal('under way'), started: at, expected: at, hands: list(id) }),
    z.strictObject({ kind: z.literal('done'), started: at, finished: at }),
  ]),
});

export const jobDaySchema = z.strictObject({
  date: day,
  from: clock,
  to: clock,
  place: id,
  setOut_min: whole(0, 720),
  clearUp_min: whole(0, 720),
  breaks: list(z.strictObject({ from: clock, minutes: whole(1, 720) })),
  hands: list(z.strictObject({ id, name: title, from: clock, to: clock })),
  endsIn: list(z.strictObject({ setUp: id, state: id })),
});

const order = z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER));

export const weatherSchema = z.strictObject({
  place: id,
  date: day,
  fromHour: whole(0, 23),
  toHour: whole(1, 24),
  rain: z.boolean(),
  rainOdds_pct: z.nullable(whole(0, 100)),
  wind_kn: number(0, 120),
  air_C: number(-60, 60),
  surface_C: z.nullable(number(-60, 100)),
  humidity_pct: number(1, 100),
  basis: z.enum(['typed', 'forecast']),
  entered: at,
  order,
});

export const outingSchema = z.strictObject({
  title,
  date: day,
  from: clock,
  nights: whole(0, 365),
  place: text,
  wind_kn: z.nullable(number(0, 120)),
  windLeast_kn: z.exactOptional(z.nullable(number(0, 120))),
  gust_kn: z.exactOptional(z.nullable(number(0, 120))),
  crew: z.exactOptional(z.nullable(whole(1, 20))),
  way: z.exactOptional(z.enum(['water', 'road'])),
});

/** The schema of the records of each collection. */
export const recordSchemas = {
  boat: boatSchema,
  weights: weightsSchema,
  places: placeSchema,
  zones: zoneSchema,
  fittings: fittingSchema,
  setUps: setUpSchema,
  tools: toolSchema,
  mixes: mixSchema,
  tins: tinSchema,
  batteries: batterySchema,
  panels: panelSchema,
  chargers: chargerSchema,
  circuits: circuitSchema,
  loadPaths: loadPathSchema,
  stays: staySchema,
  masts: mastSchema,
  rodes: rodeSchema,
  boardHoists: boardHoistSchema,
  trailers: trailerSchema,
  carried: carriedSchema,
  papers: paperSchema,
  dues: dueSchema,
  recipes: recipeRecordSchema,
  jobs: jobSchema,
  steps: stepSchema,
  juryRigs: juryRigSchema,
  rigTrusts: rigTrustSchema,
  jobDays: jobDaySchema,
  weather: weatherSchema,
  forecasts: forecastSchema,
  outings: outingSchema,
  morningLines: morningLineSchema,
  morningTicks: morningTickSchema,
  stowages: stowageSchema,
  stores: storeSchema,
  readings: readingSchema,
  readingBlocks: readingBlockSchema,
  loadTests: loadTestSchema,
  nightsAhead: nightAheadSchema,
  stayReadings: stayReadingSchema,
  hoistForces: hoistForceSchema,
  ballWeighings: ballWeighingSchema,
  timers: timerSchema,
  uses: useSchema,
  dueMeasures: dueMeasureSchema,
  seasonTicks: seasonTickSchema,
  photos: photoSchema,
  plans: keptPlanSchema,
  log: logSchema,
};

/** `Same` is true where each of two types takes the other; a field added to one side alone fails here. */
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : false) : false;
type Loose<T> = T extends readonly (infer E)[]
  ? readonly Loose<E>[]
  : T extends object
    ? { readonly [K in keyof T]: Loose<T[K]> }
    : T;
type Holds<S extends z.core.SomeType, T> = Same<Loose<z.output<S>>, Loose<T>>;

type AllTrue<T extends readonly true[]> = T;
/** @public read by nobody: it is the place where the types are held together */
export type SchemasHoldRecords = AllTrue<
  [
    Holds<typeof conditionsSchema, Conditions>,
    Holds<typeof cureLawSchema, CureLaw>,
    Holds<typeof setUpNeedSchema, SetUpNeedRecord>,
    Holds<typeof boatSchema, Boat>,
    Holds<typeof placeSchema, Place>,
    Holds<typeof zoneSchema, Zone>,
    Holds<typeof fittingSchema, Fitting>,
    Holds<typeof setUpSchema, SetUp>,
    Holds<typeof toolSchema, ToolRecord>,
    Holds<typeof mixSchema, MixRecord>,
    Holds<typeof tinSchema, TinRecord>,
    Holds<typeof weightsSchema, Weights>,
    Holds<typeof jobSchema, Job>,
    Holds<typeof waitSchema, WaitRecord>,
    Holds<typeof followSchema, Follow>,
    Holds<typeof stepSchema, Step>,
    Holds<typeof juryRigSchema, JuryRig>,
    Holds<typeof rigTrustSchema, RigTrustRecord>,
    Holds<typeof jobDaySchema, JobDay>,
    Holds<typeof weatherSchema, WeatherEntry>,
    Holds<typeof forecastSchema, ForecastRecord>,
    Holds<typeof outingSchema, Outing>,
    Holds<typeof morningLineSchema, MorningLineRecord>,
    Holds<typeof morningTickSchema, MorningTick>,
    Holds<typeof stowageSchema, Stowage>,
    Holds<typeof storeSchema, StoreRecord>,
    Holds<typeof stepTakeSchema, StepTake>,
    Holds<typeof logSchema, LogEntry>,
    Holds<typeof paperSchema, PaperRecord>,
    Holds<typeof batterySchema, BatteryRecord>,
    Holds<typeof panelSchema, PanelRecord>,
    Holds<typeof chargerSchema, ChargerRecord>,
    Holds<typeof circuitSchema, CircuitRecord>,
    Holds<typeof loadPathSchema, LoadPathRecord>,
    Holds<typeof staySchema, StayRecord>,
    Holds<typeof stayReadingSchema, StayReading>,
    Holds<typeof mastSchema, MastRecord>,
    Holds<typeof rodeSchema, RodeRecord>,
    Holds<typeof readingSchema, ReadingRecord>,
    Holds<typeof readingBlockSchema, ReadingBlock>,
    Holds<typeof loadTestSchema, LoadTest>,
    Holds<typeof nightAheadSchema, NightAheadRecord>,
    Holds<typeof boardHoistSchema, BoardHoistRecord>,
    Holds<typeof hoistForceSchema, HoistForceRecord>,
    Holds<typeof trailerSchema, TrailerRecord>,
    Holds<typeof carriedSchema, CarriedRecord>,
    Holds<typeof ballWeighingSchema, BallWeighing>,
    Holds<typeof dueSchema, DueRecord>,
    Holds<typeof useSchema, UseRecord>,
    Holds<typeof dueMeasureSchema, DueMeasure>,
    Holds<typeof seasonTickSchema, SeasonTick>,
    Holds<typeof photoSchema, PhotoRecord>,
    Holds<typeof timerSchema, TimerRecord>,
    Holds<typeof recipeSchema, Recipe>,
    Holds<typeof recipeRecordSchema, RecipeRecord>,
  ]
>;
