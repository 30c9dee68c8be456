/** The planner in a Worker of its own: the book becomes a problem, the search runs in slices and can be stopped. */
import { expose } from 'comlink';
import { obstacleInWords, planInForce, planInMinutesOf, problemFrom, verdictInWords } from '#reckoning';
import {
  checkProblem,
  compareWorth,
  type Outcome,
  type Problem,
  type Progress,
  startSearch,
  type Verdict,
  type Worth,
} from '#workplan';
import { tellHolds, tryHold } from './holds-telling.ts';
import { oddsToTell } from './odds-telling.ts';
import type { LeftOutJob, PlanPicture, PlanRequest, PlanTelling, PlanWorker, SearchProgress } from './plan-report.ts';
import { tellWindows } from './plan-windows.ts';
import { tellReasons } from './reasons-telling.ts';
import { besideLine, restBeside } from './search-beside.ts';
import { breath, nextSlice, rest, type SettledPlan } from './worker-slices.ts';

/** a better plan is shown no sooner than this after the one before. [ms] */
const showEvery_ms = 120;
/** how often it says how far it is. [ms] */
const sayEvery_ms = 250;
/** once the gap is this small, a search that finds nothing better for `patience_ms` has settled */
const smallGap = 0.02;
const patience_ms = 700;
/** tries of the search from a better plan come upon after it had settled */
const triesAfterBetter = 40;
/** runs for the odds before the reasons are worked out, and in all */
const firstRuns = 200;
const allRuns = 1000;

/** the request in hand; an older one ends when it sees another number here */
let current = 0;
let stopped = false;

async function plan(request: PlanRequest, tell: (telling: PlanTelling) => void): Promise<void> {
  current++;
  const mine = current;
  stopped = false;
  besideLine.end();
  restBoth(0);
  const matter = problemFrom(request.book, { now: request.now, afresh: request.afresh });
  if (matter.kind === 'nothing to plan') {
    tell({ kind: matter.kind, words: matter.words, because: matter.because, notes: matter.notes });
    return;
  }
  const { problem, notes } = matter;
  const checked = checkProblem(problem);
  if (checked.kind === 'refused')
    throw new RangeError(
      checked.faults.map(({ where, wrong, right }) => `${where}: ${wrong}; right would be ${right}`).join('. '),
    );
  tell({ kind: 'problem', problem, notes });
  const { seed } = request;
  const before = request.from ?? (request.afresh ? null : planInForce(request.book));
  const from = before === null ? null : planInMinutesOf(before, problem);
  const start = from === null ? { seed } : { seed, plan: from };
  const search = startSearch(problem, start);

  const began = performance.now();
  let iterations = 1;
  let shown: Worth | null = null;
  let shownAt = 0;
  let betterAt = began;
  let saidAt = 0;
  let best: Worth | null = null;
  for (;;) {
    besideLine.swap();
    const slice = performance.now();
    const progress = search.advance(iterations);
    const at = performance.now();
    iterations = nextSlice(iterations, at - slice);
    if (progress.worth && (best === null || compareWorth(progress.worth, best) < 0)) {
      best = progress.worth;
      betterAt = at;
    }
    const told = searchProgress(progress, at - began);
    const over =
      progress.finished ||
      stopped ||
      at - began > request.spend_ms ||
      (settledEnough(progress) && at - betterAt > patience_ms);
    if (over) {
      besideLine.end();
      const picture = pictureOf(search.outcome(), problem, stopped);
      tell({ kind: 'settled', picture, progress: told, stopped });
      await breath();
      const { book } = request;
      const isCurrent = () => mine === current;
      await tellMore({ book, problem, outcome: picture.outcome, seed, stopped, tell, isCurrent }, told);
      return;
    }
    if (best !== null && best !== shown && (shown === null || at - shownAt > showEvery_ms)) {
      const isFirst = shown === null;
      shown = best;
      shownAt = at;
      const picture = pictureOf(search.outcome('as it stands'), problem);
      tell({ kind: 'plan', picture: { ...picture, verdict: soFar(picture.verdict) }, progress: told });
      if (isFirst) besideLine.begin(search, problem, start);
    } else if (at - saidAt > sayEvery_ms) {
      saidAt = at;
      tell({ kind: 'progress', progress: told });
    }
    await breath();
    if (mine !== current) return;
  }
}

/**
 * What is worked out once the plan has settled. Where a better plan is come upon, that one is shown and all is worked
 * out for it; this ends, for each better plan does more than the one before.
 */
async function tellMore(settled: SettledPlan, progress: SearchProgress): Promise<void> {
  const { problem, seed, tell, isCurrent } = settled;
  const tellOdds = oddsToTell(settled);
  await tellOdds(firstRuns);
  if (!isCurrent()) return;
  const better = await tellReasons(settled);
  if (!isCurrent()) return;
  if (better === null) {
    await tellHolds(settled);
    if (!isCurrent()) return;
    await tellOdds(allRuns);
    return;
  }
  const search = startSearch(problem, { seed, plan: better });
  search.advance(triesAfterBetter);
  const picture = pictureOf(search.outcome(), problem);
  if (compareWorth(picture.outcome.worth, settled.outcome.worth) >= 0) return;
  tell({ kind: 'settled', picture, progress, stopped: false });
  await tellMore({ ...settled, outcome: picture.outcome }, progress);
}

function restBoth(for_ms: number): void {
  rest(for_ms);
  restBeside(for_ms);
}

function settledEnough({ worth, bound }: Progress): boolean {
  return worth !== null && bound > 0 && (bound - worth.weight) / bound <= smallGap;
}

function searchProgress({ iterations, worth, bound }: Progress, elapsed_ms: number): SearchProgress {
  return { iterations, elapsed_ms, weight: worth?.weight ?? null, bound };
}

function pictureOf(found: Outcome, problem: Problem, cutShort = false): PlanPicture {
  const outcome = cutShort ? { ...found, verdict: cutShortVerdict(found.verdict) } : found;
  const leftOut = outcome.plan.leftOut.map((job): LeftOutJob => {
    const reasons = outcome.obstacles
      .filter((obstacle) => obstacle.job === job)
      .map((obstacle) => ({ ...obstacleInWords(obstacle, problem), obstacle }));
    return { job, title: problem.jobs.find((j) => j.id === job)?.title ?? job, reasons };
  });
  return { outcome, verdict: verdictInWords(outcome, problem), leftOut };
}

/** Only what is in the plan by now: how good it is can be said when the search is over. */
function soFar(verdict: string): string {
  return `${verdict.split('. ')[0]!.replace(/\.$/, '')}, so far.`;
}

/** The verdict on a plan whose search the keeper ended: what was not proved by then might have been bettered. */
function cutShortVerdict(verdict: Verdict): Verdict {
  if (verdict.kind === 'good, gap known') return { kind: 'stopped early', bound: verdict.bound, gap: verdict.gap };
  if (verdict.kind === 'impossible, because' && verdict.rest === 'good, gap known')
    return { ...verdict, rest: 'stopped early' };
  return verdict;
}

const worker: PlanWorker = {
  plan,
  windows: tellWindows,
  tryHold,
  stop() {
    stopped = true;
    restBoth(0);
  },
  rest: restBoth,
};
expose(worker);
