/** The plan in hand, for every screen that shows it: asked for once for a state of the book, told as it gets better. */
import { proxy, wrap } from 'comlink';
import { useLayoutEffect, useSyncExternalStore } from 'react';
import type { Book, KeptPlan } from '#boat-book';
import type { CostOfHoldWords, PlanNote, PlanOdds } from '#reckoning';
import type { Plan, Problem } from '#workplan';
import { bookClient } from '../../offline/book-client.ts';
import { whenAnswered } from '../../shell/when.ts';
import type { PlanPicture, PlanReasons, PlanTelling, PlanWorker, SearchProgress } from './plan-report.ts';
import { rememberFirst, rememberSeen } from './seen-plan.ts';

/** the longest a search runs on this device. [ms] */
const longest_ms = 8000;
/** a plan older than this is made again when a screen that shows it is opened. [ms] */
const stale_ms = 10 * 60_000;
/** the search stands still for so long after a finger came down. [ms] */
const rest_ms = 400;
/** a plan of the book asked of is there, and the search goes on or is over */
let isImproving = false;
/** what the benchmark of the app reads */
const marks = { asked: 'plan asked', firstPlan: 'first plan' };
/** the same book gives the same plan, and the same odds */
export const seed = 1;

export interface PlanInHand {
  readonly state: 'none' | 'planning' | 'settled' | 'stopped' | 'nothing to plan' | 'failed';
  readonly problem: Problem | null;
  readonly picture: PlanPicture | null;
  readonly progress: SearchProgress | null;
  /** why the plan is as it is, as far as it is known; null: nothing yet */
  readonly reasons: PlanReasons | null;
  /** how likely it is that it is done in time, from the runs made so far; null: none yet */
  readonly odds: PlanOdds | null;
  /** what each hold costs, as far as it is known; null: nothing yet */
  readonly holds: readonly CostOfHoldWords[] | null;
  readonly notes: readonly PlanNote[];
  /** why there is nothing to plan, or what failed */
  readonly words: string | null;
  /** true: there is nothing to plan because there is no work; false: because there are no days, or there is a plan */
  readonly noWork: boolean;
}

const nothing: PlanInHand = {
  state: 'none',
  problem: null,
  picture: null,
  progress: null,
  reasons: null,
  odds: null,
  holds: null,
  notes: [],
  words: null,
  noWork: false,
};

/** Whether what is in hand is of the book asked for, though the search may go on: till then the plan before is shown. */
export const isOfBookAsked = ({ state, progress }: PlanInHand): boolean =>
  state !== 'none' && (state !== 'planning' || (progress !== null && progress.weight !== null));

let inHand: PlanInHand = nothing;
let asked: string | null = null;
let askedAt = 0;
let round = 0;
let nextFrom: { readonly startsAt: string; readonly plan: Plan } | null = null;
// started with this module, so that it is up by the time the screen asks
export const planWorker = wrap<PlanWorker>(
  new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' }),
);
const listeners = new Set<() => void>();

function tellAll(next: PlanInHand): void {
  inHand = next;
  for (const listener of listeners) listener();
}

/** Everything of the book that a plan hangs on, as one text; what is only remembered (log, kept plans) is left out. */
function matterOf(book: Book): string {
  const { plans: _plans, log: _log, stowages: _stowages, juryRigs: _rigs, fittings: _fittings, ...rest } = book;
  const { readings: _read, readingBlocks: _blocks, loadTests: _tests, nightsAhead: _nights, ...others } = rest;
  const { loadPaths: _paths, stays: _stays, masts: _masts, stayReadings: _taut, ...loaded } = others;
  const {
    boardHoists: _hoists,
    hoistForces: _forces,
    photos: _photos,
    timers: _timers,
    papers: _papers,
    trailers: _trailers,
    carried: _carried,
    ballWeighings: _ball,
    ...matter
  } = loaded;
  return JSON.stringify(matter);
}

/**
 * Plans the book as from now, unless the plan in hand is of this very book. The plan shown stays until the first new
 * one is there.
 *
 * @param afresh    plans again even so: the clock has moved on
 * @param forget    the plan before is forgotten: what stood where does not count
 * @param spend_ms  the longest the search may run. [ms]
 */
export function planBook(book: Book, { afresh = false, forget = false, spend_ms = longest_ms } = {}): void {
  const matter = matterOf(book);
  if (!afresh && !forget && matter === asked) return;
  rememberSeen(book);
  asked = matter;
  askedAt = Date.now();
  round++;
  const mine = round;
  const from = nextFrom;
  nextFrom = null;
  tellAll({ ...inHand, state: 'planning', progress: null, words: null });
  performance.mark(marks.asked);
  let problem: Problem | null = null;
  let notes: readonly PlanNote[] = [];
  isImproving = false;
  const told: PlanTelling[] = [];
  const hear = (telling: PlanTelling) => {
    if (mine !== round) return;
    told.push(telling);
    // a plan of this book that is there stays as it is while a finger is on its way to a step of it
    if (isImproving) {
      whenAnswered(showTold);
      return;
    }
    if (telling.kind === 'plan' || telling.kind === 'settled') {
      isImproving = true;
      performance.measure(marks.firstPlan, marks.asked);
    }
    showTold();
  };
  const showTold = () => {
    for (const telling of told.splice(0)) if (mine === round) show(telling);
  };
  const show = (telling: PlanTelling) => {
    switch (telling.kind) {
      case 'nothing to plan':
        tellAll({
          ...nothing,
          state: 'nothing to plan',
          words: telling.words,
          noWork: telling.because === 'no open jobs',
          notes: telling.notes,
        });
        return;
      case 'problem':
        problem = telling.problem;
        notes = telling.notes;
        return;
      case 'progress':
        tellAll({ ...inHand, progress: telling.progress });
        return;
      case 'reasons':
        tellAll({ ...inHand, reasons: telling.reasons });
        return;
      case 'odds':
        tellAll({ ...inHand, odds: telling.odds });
        return;
      case 'holds':
        tellAll({ ...inHand, holds: telling.holds });
        return;
      case 'plan':
        tellAll({
          ...inHand,
          state: 'planning',
          problem,
          notes,
          picture: telling.picture,
          progress: telling.progress,
          reasons: null,
          odds: null,
          holds: null,
        });
        return;
      case 'settled':
        tellAll({
          ...inHand,
          state: telling.stopped ? 'stopped' : 'settled',
          problem,
          notes,
          picture: telling.picture,
          progress: telling.progress,
          reasons: null,
          odds: null,
          holds: null,
        });
        if (problem) void keep(problem, telling.picture, mine);
    }
  };
  planWorker
    .plan({ book, now: new Date().toISOString(), seed, spend_ms, from, afresh: forget }, proxy(hear))
    .catch((error: unknown) => {
      if (mine !== round) return;
      asked = null;
      tellAll({ ...inHand, state: 'failed', words: error instanceof Error ? error.message : String(error) });
    });
}

/**
 * Has the next plan begin from this one: after a change, the plan that showed what the change would bring.
 *
 * @param from  the plan with the instant of its minute 0; null: from none after all
 */
export function planNextFrom(from: { readonly startsAt: string; readonly plan: Plan } | null): void {
  nextFrom = from;
}

/** Ends the search; what it has by then is the plan and is kept. */
export function stopPlanning(): void {
  void planWorker.stop();
}

/** Writes the plan to the book, unless the one kept last says the same. */
async function keep(problem: Problem, { outcome }: PlanPicture, round: number): Promise<void> {
  const book = bookClient.snapshot().book;
  if (!book || bookClient.snapshot().readOnly !== null) return;
  const [lastId, last] = Object.entries(book.plans).at(-1) ?? [];
  const startsAt = new Date(problem.startsAt).toISOString();
  if (last && lastId && saysTheSame(last, { startsAt, plan: outcome.plan })) {
    rememberFirst(book.id, lastId, round);
    return;
  }
  const kept = await bookClient.run('keepPlan', { startsAt, plan: outcome.plan, verdict: outcome.verdict });
  if (kept.kind === 'done' && kept.id !== null) rememberFirst(book.id, kept.id, round);
}

/** True where every step still to do starts as the kept plan has it, and the same jobs are left out. */
function saysTheSame(kept: KeptPlan, made: Pick<KeptPlan, 'startsAt' | 'plan'>): boolean {
  const starts = (of: Pick<KeptPlan, 'startsAt' | 'plan'>) =>
    new Map(
      of.plan.steps.flatMap((step) =>
        step.day === null ? [] : [[step.step, Date.parse(of.startsAt) + step.start * 60_000] as const],
      ),
    );
  const before = starts(kept);
  return (
    [...starts(made)].every(([step, start]) => before.get(step) === start) &&
    [...kept.plan.leftOut].sort().join() === [...made.plan.leftOut].sort().join()
  );
}

/**
 * The plan of a book; made when a screen that shows it is opened, and again when what it hangs on changes.
 *
 * @param book  null: none is asked for
 * @param after_ms  asked only then, where something else is to be seen first. [ms]
 */
export function usePlan(book: Book | null, spend_ms = longest_ms, after_ms = 0): PlanInHand {
  // in the same breath as it is drawn: what was planned of the book before is never taken for the plan of this one
  useLayoutEffect(() => {
    if (book === null) return;
    const begin = () => planBook(book, { afresh: Date.now() - askedAt > stale_ms, spend_ms });
    if (after_ms === 0) {
      begin();
      return;
    }
    const timer = setTimeout(begin, after_ms);
    return () => clearTimeout(timer);
  }, [book, spend_ms, after_ms]);
  return usePlanInHand();
}

/** A finger that comes down has the device to itself, once there is a plan of this book to look at. */
function letAnswer(): void {
  if (isImproving) void planWorker.rest(rest_ms);
}
globalThis.addEventListener?.('pointerdown', letAnswer, { capture: true, passive: true });

/** The plan there is, with none asked for. */
export function usePlanInHand(): PlanInHand {
  return useSyncExternalStore(subscribe, () => inHand);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
