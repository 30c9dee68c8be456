import type { Plan } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { startSearch } from '../search.ts';
import { violations } from '../violations.ts';
import { type Relaxation, relaxed, withoutJobs } from './relaxation.ts';

/** Whether a changed problem has a plan that holds every job wanted. */
export type Attempt =
  /** it has: a plan of the changed problem in which `violations` finds nothing */
  | { readonly kind: 'found'; readonly plan: Plan }
  /** it has, and so has the problem as it stands: the plan in hand can be bettered without any change */
  | { readonly kind: 'fits as it is'; readonly plan: Plan }
  /** the bound shows that it has none */
  | { readonly kind: 'proved not' }
  /** so many tries found none */
  | { readonly kind: 'not found' };

/** Work that is done a little at a time: it stops at every `yield`, each about one try of a search. */
export type Work<T> = Generator<undefined, T, undefined>;

/** tries of one search before another is begun from another seed: where one finds a plan, it mostly does so soon */
const triesInARow = 200;

/** What every attempt starts from. */
export interface Footing {
  readonly problem: Problem;
  /** the plan in hand */
  readonly plan: Plan;
  readonly seed: number;
  /** jobs with an open step that are in the plan */
  readonly held: ReadonlySet<string>;
  /** answers so far, by what was asked */
  readonly known: Map<string, { readonly attempt: Attempt; readonly tries: number }>;
  /** by jobs wanted: the plan found last that holds them, where the next search for them starts */
  readonly lastFound: Map<string, Plan>;
  /** by jobs wanted: a plan of the problem as it stands that holds them */
  readonly fitsAsItIs: Map<string, Plan>;
}

export function footingOf(problem: Problem, plan: Plan, seed: number): Footing {
  const left = new Set(plan.leftOut);
  const open = new Set(problem.steps.filter(({ progress }) => progress.kind === 'open').map(({ job }) => job));
  return {
    problem,
    plan,
    seed,
    held: new Set([...open].filter((job) => !left.has(job))),
    known: new Map(),
    lastFound: new Map(),
    fitsAsItIs: new Map(),
  };
}

/**
 * Looks for a plan of a changed problem that holds the jobs wanted beside all that the plan in hand does, less the
 * job that the change does without. Every other open job is taken out of what is searched, so that none of the tries
 * goes to it, and all that is wanted is made needed. What is found is laid back over the whole changed problem and
 * judged there by `violations`.
 *
 * @param relaxations  the change, or several at once, to see whether any of them may help
 * @param wanted  jobs left out by the plan in hand, with all they wait for
 * @param tries   of the search, at most. A plan is taken at once when it is found
 */
export function* attempt(
  footing: Footing,
  relaxations: readonly Relaxation[],
  wanted: readonly string[],
  tries: number,
): Work<Attempt> {
  const key = JSON.stringify([relaxations, wanted]);
  const before = footing.known.get(key);
  if (before !== undefined && (before.attempt.kind !== 'not found' || before.tries >= tries)) return before.attempt;
  const answer = yield* lookFor(footing, relaxations, wanted, before?.tries ?? 0, tries);
  footing.known.set(key, { attempt: answer, tries });
  if (answer.kind === 'fits as it is') footing.fitsAsItIs.set(wanted.join(), answer.plan);
  if (answer.kind === 'found') footing.lastFound.set(wanted.join(), answer.plan);
  return answer;
}

function* lookFor(
  { problem, plan, seed, held, lastFound }: Footing,
  relaxations: readonly Relaxation[],
  wanted: readonly string[],
  before: number,
  tries: number,
): Work<Attempt> {
  const changed = relaxations.reduce(relaxed, problem);
  const all = new Set([...held, ...wanted].filter((id) => changed.jobs.some((job) => job.id === id)));
  const others = new Set(
    changed.steps.filter(({ job, progress }) => progress.kind === 'open' && !all.has(job)).map(({ job }) => job),
  );
  const narrowed = withoutJobs(changed, others, true);
  // a day more is best begun with what is planned left where it is
  const near = relaxations[0]?.kind === 'another day' ? undefined : lastFound.get(wanted.join());
  const from = near === undefined ? { ...plan, leftOut: wanted.filter((id) => all.has(id)) } : { ...near, leftOut: [] };
  const sum = narrowed.jobs.reduce((total, job) => total + job.weight, 0);
  // what was searched before is not searched again
  for (let start = Math.floor(before / triesInARow); start * triesInARow < tries; start++) {
    // every other search begins with the wanted jobs in and looks which of the rest to let go, down to none
    const more = start % 2 === 0 ? sum : 0;
    const asked: Problem = {
      ...narrowed,
      jobs: narrowed.jobs.map((job) => {
        if (others.has(job.id)) return { ...job, deadline: null };
        if (!all.has(job.id)) return job;
        return { ...job, optional: false, weight: job.weight + (wanted.includes(job.id) ? more : 0) };
      }),
    };
    const weight = asked.jobs.reduce((total, job) => total + job.weight, 0);
    const search = startSearch(asked, { seed: seed + start, plan: from });
    yield;
    const most = Math.min(triesInARow, tries - start * triesInARow);
    for (let tried = 0; tried <= most; tried++) {
      const { worth, bound, finished } = search.advance(tried === 0 ? 0 : 1);
      if (worth !== null && worth.missed === 0) {
        const found = search.outcome('as it stands').plan;
        yield;
        const leftOut = changed.jobs.filter(({ id }) => others.has(id)).map(({ id }) => id);
        const whole: Plan = { ...found, leftOut };
        if (found.leftOut.length > 0 || violations(whole, changed).length > 0) return { kind: 'not found' };
        const asItIs = violations(whole, problem).length === 0;
        return { kind: asItIs ? 'fits as it is' : 'found', plan: whole };
      }
      // the bound may differ from the sum of weights in its last digits
      if (bound < weight - 1e-6 || finished) return { kind: 'proved not' };
      yield;
    }
  }
  return { kind: 'not found' };
}

/** The jobs a job waits for by its open steps, and theirs, it among them: in a plan only together. In the problem's order. */
export function withAllItWaitsFor(problem: Problem, job: string): string[] {
  const jobOf = new Map(problem.steps.map((step) => [step.id, step] as const));
  const chosen = new Set([job]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const { before, after } of problem.precedence) {
      const [first, next] = [jobOf.get(before), jobOf.get(after)];
      if (first?.progress.kind !== 'open' || next?.progress.kind !== 'open') continue;
      if (!chosen.has(next.job) || chosen.has(first.job)) continue;
      chosen.add(first.job);
      grown = true;
    }
  }
  return problem.jobs.filter(({ id }) => chosen.has(id)).map(({ id }) => id);
}
