/** The planner in a Worker of its own: the book becomes a problem, the search runs in slices and can be stopped. */
import { expose } from 'comlink';
import { obstacleInWords, problemFrom, verdictInWords } from '#reckoning';
import {
  checkProblem,
  compareWorth,
  type Problem,
  type Progress,
  type Search,
  startSearch,
  type Verdict,
  type Worth,
} from '#workplan';
import type { LeftOutJob, PlanPicture, PlanRequest, PlanTelling, PlanWorker, SearchProgress } from './plan-report.ts';

/** between two slices the Worker hears a stop. [ms] */
const slice_ms = 30;
/** a better plan is shown no sooner than this after the one before. [ms] */
const showEvery_ms = 120;
/** how often it says how far it is. [ms] */
const sayEvery_ms = 250;
/** once the gap is this small, a search that finds nothing better for `patience_ms` has settled */
const smallGap = 0.02;
const patience_ms = 700;

/** the request in hand; an older one ends when it sees another number here */
let current = 0;
let stopped = false;

async function plan(request: PlanRequest, tell: (telling: PlanTelling) => void): Promise<void> {
  current++;
  const mine = current;
  stopped = false;
  const matter = problemFrom(request.book, { now: request.now });
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
  const search = startSearch(problem, { seed: request.seed });

  const began = performance.now();
  let iterations = 1;
  let shown: Worth | null = null;
  let shownAt = 0;
  let betterAt = began;
  let saidAt = 0;
  let best: Worth | null = null;
  for (;;) {
    const from = performance.now();
    const progress = search.advance(iterations);
    const at = performance.now();
    iterations = nextSlice(iterations, at - from);
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
      tell({ kind: 'settled', picture: pictureOf(search, problem, stopped), progress: told, stopped });
      return;
    }
    if (best !== null && best !== shown && (shown === null || at - shownAt > showEvery_ms)) {
      shown = best;
      shownAt = at;
      const picture = pictureOf(search, problem);
      tell({ kind: 'plan', picture: { ...picture, verdict: soFar(picture.verdict) }, progress: told });
    } else if (at - saidAt > sayEvery_ms) {
      saidAt = at;
      tell({ kind: 'progress', progress: told });
    }
    await breath();
    if (mine !== current) return;
  }
}

function settledEnough({ worth, bound }: Progress): boolean {
  return worth !== null && bound > 0 && (bound - worth.weight) / bound <= smallGap;
}

/** How many iterations take about one slice, going by how long the last ones took. */
function nextSlice(iterations: number, took_ms: number): number {
  const fitting = (iterations * slice_ms) / Math.max(took_ms, 0.1);
  return Math.max(1, Math.min(Math.round(fitting), iterations * 4, 100_000));
}

function searchProgress({ iterations, worth, bound }: Progress, elapsed_ms: number): SearchProgress {
  return { iterations, elapsed_ms, weight: worth?.weight ?? null, bound };
}

function pictureOf(search: Search, problem: Problem, cutShort = false): PlanPicture {
  const found = search.outcome();
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

/** Lets messages in: a stop, or a newer request. */
function breath(): Promise<void> {
  return new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      channel.port1.close();
      resolve();
    };
    channel.port2.postMessage(null);
  });
}

const worker: PlanWorker = {
  plan,
  stop() {
    stopped = true;
  },
};
expose(worker);
