/** The smallest single changes that would let a job in, each with a plan that shows it. */
import type { Conditions } from '#sky';
import type { Obstacle, Plan } from '../plan.ts';
import type { Minute, PlaceFeature, Problem, ProblemDay, ProblemStep } from '../problem.ts';
import { attempt, type Footing, type Work, withAllItWaitsFor } from './attempt.ts';
import { allHoursFit, conditionsOf, fewestFitHours, oneByOne } from './fit-hours.ts';
import { type Found, type Ladder, lowestRung } from './ladder.ts';
import {
  anotherDay,
  earlierStart,
  freeDates,
  laterDate,
  laterEnd,
  moreOfTool,
  secondHand,
  storesBy,
  storesNotThere,
} from './ladders.ts';
import { compareEase, type Relaxation, type RelaxationKind, sizeOf } from './relaxation.ts';

/** A change that lets a job in: verified by a plan of the changed problem that also does all the plan in hand does. */
export interface WayIn {
  readonly job: string;
  /** the job with those it waits for that are left out too: they come in together */
  readonly letsIn: readonly string[];
  readonly relaxation: Relaxation;
  readonly plan: Plan;
  /** the bound shows that a step less of the same kind does not do; false: none was found that does */
  readonly leastProved: boolean;
}

/** ways shown for one job */
export const mostWays = 3;
/** job days, and other jobs, that one kind is tried on at most */
const mostDays = 5;
const mostOthers = 5;

/** What may help against each obstacle, the likeliest first; the other kinds are tried where none of these does. */
const helpsAgainst: Readonly<Record<Obstacle['kind'], readonly RelaxationKind[]>> = {
  'not in stores': ['stores by', 'another day'],
  'no second hand': ['second hand', 'earlier start', 'later end'],
  'no hands': ['second hand', 'earlier start', 'later end'],
  'no tool': ['tool'],
  'no such place': ['place'],
  weather: ['fit hours', 'earlier start', 'later end', 'under a roof', 'another day'],
  'set-up out of reach': ['second hand', 'fit hours', 'earlier start', 'later end', 'another day'],
  'longer than any day': ['later end', 'earlier start', 'another day'],
  'wait not over in time': ['later date', 'earlier start', 'fit hours', 'another day'],
  'wait needs not kept': ['fit hours', 'earlier start', 'later end', 'under a roof', 'another day'],
  deadline: ['earlier start', 'later end', 'later date', 'another day'],
  'window missed': ['earlier start', 'later end', 'another day'],
  'waits for a job left out': [],
  'steps wait for each other': [],
  'held elsewhere': ['freed'],
  'no room left': ['later end', 'earlier start', 'second hand', 'without job', 'fit hours', 'another day'],
};

/** obstacles that nothing but the kinds named against them can help, as the bound of the search shows by itself */
const byItself: ReadonlySet<Obstacle['kind']> = new Set<Obstacle['kind']>([
  'not in stores',
  'no tool',
  'no such place',
  'held elsewhere',
  'steps wait for each other',
]);

/** what is left to try where the obstacle's own kinds do not help */
const otherKinds: readonly RelaxationKind[] = [
  'freed',
  'stores by',
  'tool',
  'earlier start',
  'later end',
  'second hand',
  'fit hours',
  'under a roof',
  'without job',
  'later date',
  'another day',
];

export interface JobLeftOut {
  readonly job: string;
  readonly obstacles: readonly Obstacle[];
}

/**
 * Ways in for one job, told as they are found; the easiest of each kind.
 *
 * @param tries          of the search for each change
 * @param arrival_clock  from when on its day a store that comes is counted on. `HH:MM`
 * @param tell           is given each way as it is found; a later one of the same kind takes the place of an earlier
 * @returns              a plan of the problem as it stands that holds the job beside all the rest, where one was come upon
 */
export function* waysIn(
  footing: Footing,
  { job, obstacles }: JobLeftOut,
  { tries, arrival_clock }: { readonly tries: number; readonly arrival_clock: string },
  tell: (way: WayIn) => void,
): Work<Plan | null> {
  const { problem } = footing;
  const { inPlan, wanted, steps } = wantedFor(footing, job);
  const found = new Map<RelaxationKind, WayIn>();
  const take = (one: Found) => {
    const { relaxation, plan, leastProved } = one;
    const before = found.get(relaxation.kind);
    if (before !== undefined && compareEase(before.relaxation, relaxation, problem) <= 0) return;
    const way: WayIn = { job, letsIn: wanted, relaxation, plan, leastProved };
    found.set(relaxation.kind, way);
    tell(way);
  };
  const about = obstacles.flatMap((obstacle) =>
    obstacle.kind === 'waits for a job left out' ? [] : helpsAgainst[obstacle.kind],
  );
  const first = obstacles.some(({ kind }) => kind === 'waits for a job left out') && about.length === 0;
  const kinds = first ? otherKinds : [...new Set(about)];
  const weather = obstacles.find((obstacle) => obstacle.kind === 'weather');
  const condition = weather?.kind === 'weather' ? weather.condition : null;
  const matter: Matter = { footing, job, wanted, steps, inPlan, tries, arrival_clock, condition };
  const also = obstacles.some(({ kind }) => byItself.has(kind))
    ? []
    : otherKinds.filter((kind) => !kinds.includes(kind));
  for (const [at, kind] of [...kinds, ...also].entries()) {
    if (found.size >= mostWays || (at >= kinds.length && found.size > 0)) break;
    yield* tryKind(matter, kind, take);
    const better = footing.fitsAsItIs.get(wanted.join());
    if (better !== undefined) return better;
  }
  return null;
}

/** What one job needs to come in: the jobs left out that come in with it, their open steps, and what it waits for. */
export function wantedFor({ problem, held }: Footing, job: string) {
  const all = withAllItWaitsFor(problem, job);
  const wanted = all.filter((id) => !held.has(id));
  const steps = problem.steps.filter((step) => step.progress.kind === 'open' && wanted.includes(step.job));
  return { wanted, steps, inPlan: new Set(all.filter((id) => held.has(id))) };
}

interface Matter {
  readonly footing: Footing;
  readonly job: string;
  readonly wanted: readonly string[];
  readonly steps: readonly ProblemStep[];
  /** jobs in the plan that the wanted ones wait for */
  readonly inPlan: ReadonlySet<string>;
  readonly tries: number;
  readonly arrival_clock: string;
  /** the weather condition that stands in the way, where one is named */
  readonly condition: string | null;
}

type Take = (found: Found) => void;

function* tryKind(matter: Matter, kind: RelaxationKind, take: Take): Work<void> {
  const { problem } = matter.footing;
  switch (kind) {
    case 'freed':
      if (matter.steps.some(({ held }) => held !== null)) yield* tryOne(matter, { kind, job: matter.job }, take);
      return;
    case 'stores by':
      yield* tryStores(matter, take);
      return;
    case 'tool':
      for (const { tool, count } of matter.steps.flatMap(({ tools }) => tools))
        yield* tryLadder(matter, moreOfTool(tool, count), take);
      return;
    case 'earlier start':
      yield* tryDays(matter, (day) => earlierStart(problem, day), take);
      return;
    case 'later end':
      yield* tryDays(matter, (day) => laterEnd(problem, day), take);
      return;
    case 'second hand':
      yield* tryDays(matter, (day) => secondHand(problem, day), take);
      return;
    case 'fit hours':
      yield* tryFitHours(matter, take);
      return;
    case 'under a roof':
      if (matter.steps.some(({ waits }) => waits.some(({ needs }) => needs.beforeDew !== undefined)))
        for (const day of daysAhead(problem)) yield* tryOne(matter, { kind, day: day.id }, take);
      return;
    case 'place':
      for (const feature of missingFeatures(problem, matter.steps))
        for (const day of daysAhead(problem)) yield* tryOne(matter, { kind, day: day.id, feature }, take);
      return;
    case 'without job':
      yield* tryWithout(matter, take);
      return;
    case 'later date':
      yield* tryLadder(matter, laterDate(problem, matter.job), take);
      return;
    case 'another day':
      yield* tryAnotherDay(matter, take);
  }
}

function* tryLadder({ footing, wanted, tries }: Matter, ladder: Ladder, take: Take): Work<Found | null> {
  const found = yield* lowestRung(footing, ladder, wanted, tries);
  if (found !== null) take(found);
  return found;
}

function* tryOne({ footing, wanted, tries }: Matter, relaxation: Relaxation, take: Take): Work<void> {
  const looked = yield* attempt(footing, [relaxation], wanted, tries);
  if (looked.kind === 'found') take({ relaxation, plan: looked.plan, leastProved: false });
}

/**
 * One kind on each job day: first on all of them at once, to see whether it may help at all; then on each, and once
 * one works, the other days are asked for less only.
 */
function* tryDays(matter: Matter, ladderOf: (day: ProblemDay) => Ladder, take: Take): Work<void> {
  const { footing, wanted, tries } = matter;
  const { problem } = footing;
  const ladders = daysAhead(problem)
    .map(ladderOf)
    .filter(({ rungs }) => rungs > 0);
  const tops = ladders.map(({ at, rungs }) => at(rungs - 1));
  if (tops.length > 1 && (yield* attempt(footing, tops, wanted, tries)).kind !== 'found') return;
  let least = Number.POSITIVE_INFINITY;
  for (const ladder of ladders) {
    let { rungs } = ladder;
    while (rungs > 0 && sizeOf(ladder.at(rungs - 1), problem) >= least) rungs--;
    const found = yield* tryLadder(matter, { ...ladder, rungs }, take);
    if (found !== null) least = sizeOf(found.relaxation, problem);
  }
}

function* tryStores(matter: Matter, take: Take): Work<void> {
  const { problem } = matter.footing;
  const stores = storesNotThere(problem, matter.steps);
  if (stores.length === 0) return;
  const notInSight = stores.filter((id) => problem.stores.some((line) => line.id === id && line.from === null));
  const sets = [notInSight, ...(notInSight.length === 0 ? stores.map((id) => [id]) : []), stores];
  const asked = new Set<string>();
  for (const set of sets) {
    if (set.length === 0 || asked.has(set.join())) continue;
    asked.add(set.join());
    const found = yield* tryLadder(matter, storesBy(problem, set, matter.arrival_clock), take);
    if (found !== null) return;
  }
}

function* tryFitHours(matter: Matter, take: Take): Work<void> {
  const { footing, steps, wanted, tries, condition } = matter;
  const { problem } = footing;
  const needs = conditionsOf(problem, steps);
  const overnight = steps.some(({ waits }) =>
    waits.some(({ needs }) => needs.dry || needs.air_min_C !== undefined || needs.beforeDew !== undefined),
  );
  const days = daysAhead(problem);
  const everywhere = (wants: Conditions) => days.flatMap((day) => allHoursFit(problem, day, wants, overnight) ?? []);
  const whole = everywhere(needs);
  if (whole.length === 0) return;
  if ((yield* attempt(footing, whole, wanted, tries)).kind !== 'found') return;
  // one condition at a time, then all together
  const conditions = oneByOne(needs, condition).filter((wants) => everywhere(wants).length > 0);
  const asked = conditions.length > 1 ? [...conditions, needs] : conditions;
  let below = Number.POSITIVE_INFINITY;
  for (const wants of asked) {
    if (wants === needs && below < Number.POSITIVE_INFINITY) return;
    const all = everywhere(wants);
    if (all.length > 1 && wants !== needs && (yield* attempt(footing, all, wanted, tries)).kind !== 'found') continue;
    for (const day of days) {
      const found = yield* fewestFitHours(footing, day, wants, wanted, { tries, overnight, below });
      if (found === null) continue;
      below = sizeOf(found.relaxation, problem);
      take(found);
    }
  }
}

/** Jobs of the plan that nothing begun or needed hangs on, the least worth first. */
function* tryWithout(matter: Matter, take: Take): Work<void> {
  const { footing, wanted, tries, inPlan } = matter;
  const { problem, held } = footing;
  const jobOf = new Map(problem.steps.map((step) => [step.id, step.job]));
  const others = problem.jobs
    .filter(
      ({ id, optional, deadline }) =>
        held.has(id) &&
        optional &&
        deadline === null &&
        !inPlan.has(id) &&
        problem.steps.every((step) => step.job !== id || step.progress.kind === 'open') &&
        problem.precedence.every(({ before, after }) => jobOf.get(before) !== id || jobOf.get(after) === id),
    )
    .sort((a, b) => a.weight - b.weight);
  for (const { id } of others.slice(0, mostOthers)) {
    const relaxation: Relaxation = { kind: 'without job', job: id };
    const looked = yield* attempt(footing, [relaxation], wanted, tries);
    if (looked.kind !== 'found') continue;
    take({ relaxation, plan: looked.plan, leastProved: false });
    return;
  }
}

/** The weather as it is known or assumed first; then hours that meet what the jobs ask. */
function* tryAnotherDay(matter: Matter, take: Take): Work<void> {
  const { problem } = matter.footing;
  const deadline = Math.min(
    ...problem.jobs
      .filter(({ id }) => matter.wanted.includes(id))
      .map((job) => job.deadline ?? Number.POSITIVE_INFINITY),
  );
  const needs = conditionsOf(problem, matter.steps);
  const notBefore = Math.max(
    0,
    ...problem.stores
      .filter(({ id }) => matter.steps.some((step) => step.stores.includes(id)))
      .map(({ from }) => from ?? 0),
  );
  const dates = freeDates(problem, { notBefore, before: deadline, most: 3 });
  for (const asks of Object.keys(needs).length === 0 ? [null] : [null, needs])
    for (const { like, days } of dates) {
      const found = yield* tryLadder(matter, anotherDay(problem, like, days, asks), take);
      if (found !== null) return;
    }
}

function missingFeatures(problem: Problem, steps: readonly ProblemStep[]): PlaceFeature[] {
  const wanted = new Set(steps.flatMap(({ features }) => features));
  return [...wanted].filter((feature) => !problem.days.every((day) => day.features.includes(feature)));
}

function daysAhead(problem: Problem): ProblemDay[] {
  const isAhead = (minute: Minute) => minute > problem.now;
  return problem.days.filter(({ to }) => isAhead(to)).slice(0, mostDays);
}
