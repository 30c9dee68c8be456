export { blobsNamed } from './blobs-named.ts';
export { type BoatFileContents, boatFileLimits, type ReadBoatFile, readBoatFile, writeBoatFile } from './boat-file.ts';
export { contentId } from './canonical.ts';
export { type BookFault, checkBook } from './check-book.ts';
export type { RecordOf } from './collections.ts';
export type { BookStates, KeyChange } from './documents.ts';
export type { DueMeasure, DueRecord, SeasonTick, UseRecord } from './due-records.ts';
export { assumedWeights, emptyBook } from './empty-book.ts';
export type { ForecastRecord } from './forecast-records.ts';
export type {
  BoardHoistRecord,
  HoistForceRecord,
  LineRecord,
  PlateRecord,
  TackleRecord,
  WinchRecord,
} from './hoist-records.ts';
export type { RigTrustRecord } from './jury-rig-records.ts';
export type { LoadCaseRecord, LoadPathRecord, PathPartRecord } from './load-records.ts';
export { proofOf, standingLog } from './log-entry.ts';
export type { Cost, LogEntry, LoggedWith, LogKind } from './log-records.ts';
export type { MorningLineRecord, MorningTick } from './morning-records.ts';
export {
  type BookSurroundings,
  beginBook,
  type OpenBook,
  openBook,
  type StoredChange,
  type TurnedBack,
} from './open-book.ts';
export type { Operation, Operations } from './operation.ts';
export type {
  CollectionName,
  JobProof,
  Json,
  NewJob,
  NewStep,
  OpenQuestion,
  OperationFields,
  OperationFieldsByName,
  OperationName,
  OperationOutcome,
  Refusal,
  UsedStore,
} from './operation-fields.ts';
export { operations } from './operations.ts';
export type { PaperRecord } from './paper-records.ts';
export { mostPaper_bytes } from './paper-schemas.ts';
export type { PhotoRecord } from './photo-records.ts';
export { mostPhoto_bytes } from './photo-schemas.ts';
export type {
  BatteryRecord,
  ChargerRecord,
  CircuitRecord,
  CircuitUseRecord,
  LoadTest,
  NightAheadRecord,
  PanelRecord,
  ReadingBlock,
  ReadingRecord,
} from './power-records.ts';
export type { RecipeRecord } from './recipe-records.ts';
export type {
  At,
  Boat,
  BoatBuild,
  Book,
  Clock,
  Consequence,
  Day,
  Fitting,
  Follow,
  Id,
  Job,
  JobDay,
  JuryRig,
  KeptPlan,
  MixRecord,
  Outing,
  Place,
  SetUp,
  SetUpNeedRecord,
  Spot,
  Step,
  WaitRecord,
  WeatherEntry,
  Weights,
  Zone,
} from './records.ts';
export type { MastRecord, StayReading, StayRecord } from './rig-records.ts';
export type { AnchorageRecord, RodeRecord } from './rode-records.ts';
export { sha256 } from './sha256.ts';
export type { RecordPatch } from './shown-book.ts';
export type {
  StepTake,
  StorePack,
  StoreRecord,
  StoreUnit,
  Stowage,
  ToolLent,
  ToolRecord,
} from './store-records.ts';
export type { TimerRecord } from './timer-records.ts';
export type { TinRecord } from './tin-records.ts';
export type {
  BallWeighing,
  CarriedRecord,
  LashingRecord,
  MassBand,
  TrailerRecord,
  TyresRecord,
} from './trailer-records.ts';
export { zoneOfBook } from './zone-of-book.ts';
