export { type BeddingAsked, type BeddingTold, beddingStore, beddingTold } from './bedding-told.ts';
export { waitsBeddedWith } from './bedding-wait.ts';
export { calendarEvents, type GivenEvent, givenIn } from './calendar-of-book.ts';
export { type CardFigure, type CardTable, type CardTold, cardTold } from './card-told.ts';
export { type Carried, type CarryStop, carriedInWords, carryDown } from './carry-down.ts';
export { cautiousClimate } from './cautious-climate.ts';
export { changeInWords, setUpChangeInWords, setUpInWords } from './change-in-words.ts';
export { circuitDrawTold } from './circuit-draw-told.ts';
export { mendJob, outletJob, outletToGet } from './circuit-jobs.ts';
export { bothSizesInWords, type Finding, figureSaid } from './circuits-in-words.ts';
export { type CircuitTold, circuitsTold, type WorkingTold } from './circuits-told.ts';
export { conditionInWords, conditionsInWords } from './condition-in-words.ts';
export { dueJob, dueJobs, duesToMake } from './due-job.ts';
export { type DueOfBook, dueBefore, duesOfBook, recipeOfDue } from './due-of-book.ts';
export {
  dueAway,
  dueBesideOuting,
  dueCautionsOf,
  dueDay,
  dueParts,
  dueRenewal,
  dueUsual,
  dueWhen,
} from './dues-told.ts';
export type { Beside } from './fit-to-go/beside.ts';
export { fitInWords, leastWorkInWords, mendNotes, plannedOfInWords } from './fit-to-go/fit-in-words.ts';
export { gearFindings } from './fit-to-go/gear-findings.ts';
export { jobsOfOuting } from './fit-to-go/job-findings.ts';
export { type LookedBeside, type OutingFit, outingFit } from './fit-to-go/outing-fit.ts';
export { outingSets } from './fit-to-go/outing-sets.ts';
export type { PlannerKnows } from './fit-to-go/planner-knows.ts';
export { powerFindings } from './fit-to-go/power-findings.ts';
export { type FittingAsked, type FittingTold, fittingJob, fittingToGet, fittingTold } from './fitting-told.ts';
export { type FollowUpTold, followUpsOf } from './follow-ups.ts';
export { fibreInWords, type GroundFigure, rodeLength_m } from './ground-figures.ts';
export {
  assumedWindage_m2,
  type GroundDrawing,
  type GroundTelling,
  type GroundTold,
  groundTold,
} from './ground-told.ts';
export {
  bearingSaid,
  endingNames,
  forceSaid,
  handlingNames,
  lineNames,
  lineSaid,
  sentenceOf,
} from './hoist-in-words.ts';
export { type HoistNeedsTold, hoistJob, hoistNeedsTold } from './hoist-needs.ts';
export { type HoistedIn, massOf_kg } from './hoist-of-book.ts';
export { foretoldPull_N, type PullsTold, pullsTold, stiffHoistJob } from './hoist-pulls.ts';
export { type HoistChangeTold, type HoistFigureTold, type HoistTold, hoistTold } from './hoist-told.ts';
export { type CostOfHoldWords, costOfHoldInWords, holdInWords } from './hold-cost-in-words.ts';
export { type HeldWords, heldInWords } from './holds-in-words.ts';
export { jobWeight } from './job-weight.ts';
export {
  isPastTrust,
  type RigsOfBook,
  type RigTrust,
  rigHistory,
  rigLimitsInWords,
  rigsOfBook,
  seenFirst,
  standingRigs,
} from './jury-rig/rig-trust.ts';
export { caseInWind, type PathMending, pathJob, pathMendings, pathToGet, pathWantsInWords } from './load-path-jobs.ts';
export {
  type LoadPathTold,
  loadPathsTold,
  loadPathTold,
  type PathCaseTold,
  type PathFinding,
  type PathPartTold,
} from './load-path-told.ts';
export type { LoadTestResult, LoadTestTrend } from './load-test-trend.ts';
export {
  type RaisingTold,
  type RigPartTold,
  raisingTold,
  type SidewaysTold,
  sidewaysTold,
  vangTold,
} from './mast-told.ts';
export { type MixAsked, type MixingAir, type MixNow, type MixPart, mixNow } from './mix-now.ts';
export { type LineMove, lineFailed, lineMove, listDone, listTitles, tickOf } from './morning/change-morning.ts';
export { listsOf, type MorningItem, type MorningListTold, morningList } from './morning/morning-list.ts';
export { type MovesWords, moveInWords, movesInWords, movesSince, type PlanMoves } from './moves-in-words.ts';
export { type NewOutlet, newOutletTold, type OutletTold } from './new-outlet.ts';
export { type ObstacleWords, obstacleInWords } from './obstacle-in-words.ts';
export { oddsBandInWords, oddsInWords } from './odds-in-words.ts';
export { assumedToRenew_d, duesAndPapers } from './paper-dues.ts';
export { drawnBoat, keelOf, type SaidOfBoat, sizesOfBoat } from './picture/sizes-of-boat.ts';
export { planInForce, planInMinutesOf } from './plan-in-force.ts';
export type { PlanNote } from './plan-note.ts';
export { type OddsLine, oddsWorking, type PlanOdds, planOddsInWords } from './plan-odds-in-words.ts';
export { assumedArrival_clock, storeOfLine } from './plan-stores.ts';
export { readBlocks } from './power-blocks.ts';
export { assumedLookBack_days } from './power-history.ts';
export { comparedInWords, loadTestInWords, trendInWords } from './power-in-words.ts';
export type { NightCompared, NightForetold } from './power-night.ts';
export { type PowerCourse, type PowerTold, powerTold } from './power-told.ts';
export { type PlanMatter, problemFrom } from './problem-from.ts';
export { familyOfWait, potLifeOfMix } from './product-tin.ts';
export { type NoCourse, type ReadingsCourse, readingsCourse } from './readings-course.ts';
export { gainInWords, leastInWords, relaxationInWords, wayInWords } from './reason-in-words.ts';
export { type RecipeSaid, recipeFromJob, stepsForRecipe, waitOf } from './recipe-from-job.ts';
export { recipeSetUpChoices, recipeTaken, waitInBook, zoneOfRecipe } from './recipe-job.ts';
export { recipeIdNow, recipesOfBook } from './recipes-of-book.ts';
export {
  type FilledHolesTold,
  filledHolesTold,
  type ScrewTold,
  screwsTold,
  type TableFigure,
} from './screw-told.ts';
export { type SeasonLine, type SeasonName, seasonJob, seasonList, seasonYear } from './season-list.ts';
export {
  type FoundWindow,
  jobsByWeight,
  type StandingWindow,
  standingWindow,
  type WindowAsk,
} from './standing-window.ts';
export { foretoldInWords, foundInWords, sinceInWords, stayInWords } from './stay-in-words.ts';
export { stayJob } from './stay-job.ts';
export { aim_N, type StayOfBook, type StayReadingTold, staysOfBook } from './stay-told.ts';
export { stepReasonsInWords } from './step-reasons-in-words.ts';
export { amountInWords, isStoreUnit, storeUnits } from './store-amounts.ts';
export {
  carryText,
  getByInWords,
  priceInWords,
  standingInWords,
  toGetByShop,
  toGetName,
  toGetText,
  unitInWords,
} from './store-in-words.ts';
export { type StoreStanding, storeStandings } from './store-standing.ts';
export { keptInWords, type StowageInOrder, stowageNamed, stowagePath, stowagesInOrder } from './stowage-path.ts';
export { coverageInWords, takeInWords, takesByTin } from './takes-by-tin.ts';
export { sizeInWords } from './thing-size.ts';
export {
  storeToGet,
  type ThingTaken,
  type ThingToGet,
  thingInStores,
  thingInWords,
  thingTaken,
} from './thing-to-get.ts';
export { tinInWords, tinUses } from './tin-told.ts';
export { type ToGet, toGet } from './to-get.ts';
export { dayNear, leadInWords, type ToGetWords, toGetAtAGlance, toGetInWords } from './to-get-in-words.ts';
export {
  type FigureOf,
  type FigureWorking,
  lineInWords,
  type ToldFigure,
  type ToldLine,
  type WorkingRow,
} from './told-line.ts';
export { stoodNow } from './trailer/ball-load.ts';
export { type LoadChange, massOfCarried, type Standing } from './trailer/standing.ts';
export type { TrailerFinding } from './trailer/trailer-finding.ts';
export { trailerJob } from './trailer/trailer-jobs.ts';
export { trailersLooked } from './trailer/trailer-looked.ts';
export {
  changeSaid as loadChangeSaid,
  type TrailerFigure,
  type TrailerTold,
  trailerTold,
} from './trailer/trailer-told.ts';
export { kgFigure, kgSaid, placeAlong } from './trailer/trailer-words.ts';
export { type TunedMinutes, tunedInWords, tunerOf } from './tuned-minutes.ts';
export { effortInWords, verdictInWords } from './verdict-in-words.ts';
export { waitCourseInWords } from './wait-told.ts';
export { forecastHours, forecastOf, weatherInForce } from './weather/weather-in-force.ts';
export { dayInWords, lengthInWords, localMinute, minuteInWords } from './when-in-words.ts';
export { assumedWilling, liesAt, type WillingHours } from './window-hours.ts';
export { type WindowWords, windowInWords } from './window-in-words.ts';
export { followByTin, waitsByTin } from './with-tins.ts';
