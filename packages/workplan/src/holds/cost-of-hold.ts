/**
 * What it costs that a job is held: the same problem with that hold let go is searched too, and the two plans are
 * compared by their worth. A resumable machine like the search: it reads no clock, and the same seed and number of tries
 * give the same answer everywhere.
 */
import type { Outcome, Plan, Verdict, Worth } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { type Search, startSearch } from '../search.ts';
import { compareWorth, worthOf } from '../worth.ts';

export interface CostOfHold {
  readonly job: string;
  /** with the hold, and with it let go; the plan before counts in neither, so that only the hold is between them */
  readonly held: Worth;
  readonly free: Worth;
  readonly heldPlan: Plan;
  /** a plan with the hold let go, never worse than `heldPlan` */
  readonly freePlan: Plan;
  /** jobs left out for it: in the free plan and not in the held one; the held job itself may be among them */
  readonly lost: readonly string[];
  /** jobs that are in the held plan only */
  readonly won: readonly string[];
  /** both plans are proved best (in weight and set-up changing), so that the cost in these is exact */
  readonly proved: boolean;
}

export interface HoldCosts {
  /** of the holds looked at by now, in the order of the problem's jobs */
  readonly costs: readonly CostOfHold[];
  readonly done: number;
  readonly of: number;
  readonly finished: boolean;
}

export interface HoldCostRun {
  /** Goes on for so many tries of a search. whole, ≥ 0 */
  advance(tries: number): HoldCosts;
}

/** a search that finds nothing better for so many tries has settled */
const patience = 150;
const most = 1500;

/** Jobs that are held, in the problem's order. */
export function heldJobs(problem: Problem): string[] {
  const held = new Set(
    problem.steps.filter((step) => step.held !== null && step.progress.kind === 'open').map((step) => step.job),
  );
  return problem.jobs.filter(({ id }) => held.has(id)).map(({ id }) => id);
}

/** The problem with one job's hold let go. */
export function letGo(problem: Problem, job: string): Problem {
  return { ...problem, steps: problem.steps.map((step) => (step.job === job ? { ...step, held: null } : step)) };
}

/**
 * Starts to work out what each hold of a problem costs.
 *
 * @param problem  one that `checkProblem` finds sound
 * @param outcome  of this very problem: the plan with all its holds
 */
export function startHoldCosts(
  problem: Problem,
  outcome: Pick<Outcome, 'plan' | 'verdict'>,
  { seed }: { readonly seed: number },
): HoldCostRun {
  const jobs = heldJobs(problem);
  // what was planned before would count against letting go, and is no cost of the hold
  const bare: Problem = { ...problem, previous: [] };
  const costs: CostOfHold[] = [];
  const settled = problem.previous.length === 0 ? settledOf(outcome, bare) : null;
  let held: Settled | null = jobs.length === 0 ? settledOf(outcome, bare) : settled;
  let search: Settling | null = null;
  const run = (tries: number): HoldCosts => {
    for (let left = tries; left > 0 && costs.length < jobs.length; left--) {
      if (held === null) {
        search ??= settling(startSearch(bare, { seed, plan: outcome.plan }));
        if (!search.step()) continue;
        held = better(search.settled(), settledOf(outcome, bare));
        search = null;
        continue;
      }
      const job = jobs[costs.length]!;
      search ??= settling(startSearch(letGo(bare, job), { seed, plan: held.plan }));
      if (!search.step()) continue;
      costs.push(costBetween(job, held, better(search.settled(), held), bare));
      search = null;
    }
    return { costs: [...costs], done: costs.length, of: jobs.length, finished: costs.length === jobs.length };
  };
  return { advance: run };
}

export interface HoldTrial {
  readonly finished: boolean;
  /** as far as is known by now */
  readonly cost: CostOfHold;
}

export interface HoldTrialRun {
  /** Goes on for so many tries of a search. whole, ≥ 0 */
  advance(tries: number): HoldTrial;
}

/**
 * Starts to work out what a new hold would cost, before it is made.
 *
 * @param problem  with the hold
 * @param inHand   the plan in hand, where the search begins
 * @param isFree   the plan in hand is of the problem without the hold. false: the job is held otherwise now, and what
 *                 letting it go would give is searched too, so that the cost is against a job let go and not against
 *                 the hold it has
 */
export function startHoldTrial(
  problem: Problem,
  job: string,
  inHand: Pick<Outcome, 'plan' | 'verdict'>,
  { seed, isFree }: { readonly seed: number; readonly isFree: boolean },
): HoldTrialRun {
  const bare: Problem = { ...problem, previous: [] };
  const without = letGo(bare, job);
  const search = settling(startSearch(bare, { seed, plan: inHand.plan }));
  const freed = isFree ? null : settling(startSearch(without, { seed, plan: inHand.plan }));
  let finished = false;
  return {
    advance(tries) {
      for (let left = tries; left > 0 && !finished; left--) {
        // the two by turns; one that has settled stands
        const [over, freeOver] = [search.step(), freed === null || freed.step()];
        finished = over && freeOver;
      }
      const held = search.settled();
      const freely = better(freed === null ? settledOf(inHand, without) : freed.settled(), held);
      return { finished, cost: costBetween(job, held, freely, bare) };
    },
  };
}

interface Settled {
  readonly plan: Plan;
  readonly worth: Worth;
  readonly proved: boolean;
}

const isProved = (verdict: Verdict): boolean =>
  verdict.kind === 'proved best' || (verdict.kind === 'impossible, because' && verdict.rest === 'proved best');

const settledOf = ({ plan, verdict }: Pick<Outcome, 'plan' | 'verdict'>, problem: Problem): Settled => ({
  plan,
  worth: worthOf(plan, problem),
  proved: isProved(verdict),
});

/** The first, unless the second is worth more; a plan with the hold is one without it too. */
const better = (one: Settled, other: Settled): Settled =>
  compareWorth(one.worth, other.worth) <= 0 ? one : { ...other, proved: one.proved && other.proved };

interface Settling {
  /** One more try. Returns true once the search has settled. */
  step(): boolean;
  settled(): Settled;
}

function settling(search: Search): Settling {
  let best: Worth | null = null;
  let since = 0;
  let over = false;
  return {
    step() {
      if (over) return true;
      const { worth, iterations, finished } = search.advance(1);
      if (worth !== null && (best === null || compareWorth(worth, best) < 0)) {
        best = worth;
        since = 0;
      } else since++;
      over ||= finished || since >= patience || iterations >= most;
      return over;
    },
    settled() {
      const { plan, worth, verdict } = search.outcome();
      return { plan, worth, proved: isProved(verdict) };
    },
  };
}

function costBetween(job: string, held: Settled, free: Settled, problem: Problem): CostOfHold {
  const [outHeld, outFree] = [new Set(held.plan.leftOut), new Set(free.plan.leftOut)];
  const jobs = problem.jobs.map(({ id }) => id);
  return {
    job,
    held: held.worth,
    free: free.worth,
    heldPlan: held.plan,
    freePlan: free.plan,
    lost: jobs.filter((id) => outHeld.has(id) && !outFree.has(id)),
    won: jobs.filter((id) => outFree.has(id) && !outHeld.has(id)),
    proved: held.proved && free.proved,
  };
}
