/**
 * One thing changed about a problem so that more can be done: what the keeper, the weather or the post might bring.
 * `relaxed` makes the changed problem, which any search and `violations` take like any other.
 */
import { type Conditions, unmetConditions } from '#sky';
import type { Minute, MinuteSpan, PlaceFeature, PlanHour, Problem, ProblemDay } from '../problem.ts';

export type Relaxation =
  /** steps of a job are held no longer to what they are held to */
  | { readonly kind: 'freed'; readonly job: string }
  /** stores are on hand from a minute on */
  | { readonly kind: 'stores by'; readonly stores: readonly string[]; readonly by: Minute }
  /** so many more of a tool, all the time */
  | { readonly kind: 'tool'; readonly tool: string; readonly more: number }
  /** a job day begins so much sooner */
  | { readonly kind: 'earlier start'; readonly day: string; readonly minutes: Minute; readonly from: Minute }
  /** a job day ends so much later */
  | { readonly kind: 'later end'; readonly day: string; readonly minutes: Minute; readonly to: Minute }
  /** one hand more on a job day, from a minute to the day's end */
  | { readonly kind: 'second hand'; readonly day: string; readonly from: Minute; readonly to: Minute }
  /** the hours of a stretch meet the conditions; `hours` of them did not before. whole hours, in or after a job day */
  | {
      readonly kind: 'fit hours';
      readonly day: string;
      readonly from: Minute;
      readonly to: Minute;
      readonly hours: number;
      readonly needs: Conditions;
    }
  /** she lies under a roof from a job day's beginning until the next one begins, or to the end */
  | { readonly kind: 'under a roof'; readonly day: string }
  /** the place of a job day has what it had not */
  | { readonly kind: 'place'; readonly day: string; readonly feature: PlaceFeature }
  /** another job is not to be done */
  | { readonly kind: 'without job'; readonly job: string }
  /** a job's date is so many days later */
  | { readonly kind: 'later date'; readonly job: string; readonly days: number; readonly deadline: Minute }
  /** one job day more, like one there is, in weather as known, or in hours that meet `needs` where given */
  | {
      readonly kind: 'another day';
      readonly like: string;
      readonly from: Minute;
      readonly to: Minute;
      readonly needs: Conditions | null;
    };

export type RelaxationKind = Relaxation['kind'];

/** ids of what a relaxation adds to a problem */
export const addedHand = 'another-hand';
export const addedDay = 'another-day';

const minutesInDay = 1440;

/**
 * The problem with one thing changed.
 *
 * @param problem     one that `checkProblem` finds sound
 * @param relaxation  names only things of it; times within its horizon, but for a day just after it
 * @throws RangeError where it names a job day the problem has not
 */
export function relaxed(problem: Problem, relaxation: Relaxation): Problem {
  switch (relaxation.kind) {
    case 'freed':
      return {
        ...problem,
        steps: problem.steps.map((step) => (step.job === relaxation.job ? { ...step, held: null } : step)),
      };
    case 'stores by': {
      const named = new Set(relaxation.stores);
      return {
        ...problem,
        stores: problem.stores.map((line) => (named.has(line.id) ? { ...line, from: relaxation.by } : line)),
      };
    }
    case 'tool':
      return {
        ...problem,
        tools: problem.tools.map((tool) =>
          tool.id === relaxation.tool ? { ...tool, capacity: withMore(tool.capacity, relaxation.more, problem) } : tool,
        ),
      };
    case 'earlier start':
      return withDay(problem, relaxation.day, (day) => ({ ...day, from: relaxation.from }));
    case 'later end':
      return withDay(problem, relaxation.day, (day) => ({ ...day, to: relaxation.to }));
    case 'second hand':
      return withHand(problem, { from: relaxation.from, to: relaxation.to });
    case 'fit hours':
      return { ...problem, hours: fitHours(problem.hours, relaxation, relaxation.needs) };
    case 'under a roof':
      return withRoof(problem, relaxation.day);
    case 'place':
      return withDay(problem, relaxation.day, (day) => ({ ...day, features: [...day.features, relaxation.feature] }));
    case 'without job':
      return withoutJobs(problem, new Set([relaxation.job]), false);
    case 'later date':
      return {
        ...problem,
        jobs: problem.jobs.map((job) => (job.id === relaxation.job ? { ...job, deadline: relaxation.deadline } : job)),
      };
    case 'another day':
      return withAnotherDay(problem, relaxation);
  }
}

/**
 * The problem without the open steps of some jobs; with `keepsJobs` the jobs themselves, and what is begun of them,
 * stand.
 */
export function withoutJobs(problem: Problem, jobs: ReadonlySet<string>, keepsJobs: boolean): Problem {
  const steps = problem.steps.filter(({ job, progress }) => !jobs.has(job) || (keepsJobs && progress.kind !== 'open'));
  const left = new Set(steps.map(({ id }) => id));
  return {
    ...problem,
    jobs: keepsJobs ? problem.jobs : problem.jobs.filter(({ id }) => !jobs.has(id)),
    steps,
    precedence: problem.precedence.filter(({ before, after }) => left.has(before) && left.has(after)),
    previous: problem.previous.filter(({ step }) => left.has(step)),
  };
}

/** An hour changed no more than the conditions ask. */
export function fitHour(hour: PlanHour, needs: Conditions): PlanHour {
  if (unmetConditions(needs, hour).length === 0) return hour;
  let { rain, wind_kn, air_C, surface_C, humidity_pct } = hour;
  if (needs.dry) rain = false;
  if (needs.wind_max_kn !== undefined) wind_kn = Math.min(wind_kn, needs.wind_max_kn);
  if (needs.air_min_C !== undefined) air_C = Math.max(air_C, needs.air_min_C);
  if (needs.air_max_C !== undefined) air_C = Math.min(air_C, needs.air_max_C);
  if (needs.surface_min_C !== undefined && (surface_C ?? air_C) < needs.surface_min_C) surface_C = needs.surface_min_C;
  if (needs.humidity_max_pct !== undefined) humidity_pct = Math.min(humidity_pct, needs.humidity_max_pct);
  let fit: PlanHour = { ...hour, rain, wind_kn, air_C, surface_C, humidity_pct };
  // a margin over the dew point comes of drier air
  while (fit.humidity_pct > 1 && unmetConditions(needs, fit).includes('dewMargin_min_C'))
    fit = { ...fit, humidity_pct: Math.max(1, fit.humidity_pct - 1) };
  return fit;
}

function fitHours(hours: readonly PlanHour[], { from, to }: MinuteSpan, needs: Conditions): PlanHour[] {
  return hours.map((hour, index) => (index * 60 < to && index * 60 + 60 > from ? fitHour(hour, needs) : hour));
}

function withRoof(problem: Problem, id: string): Problem {
  const at = problem.days.findIndex((day) => day.id === id);
  if (at < 0) throw new RangeError(`the problem has no job day '${id}'`);
  const { from } = problem.days[at]!;
  const to = problem.days[at + 1]?.from ?? problem.horizon;
  const hours = problem.hours.map((hour, index) =>
    index * 60 + 60 > from && index * 60 < to ? { ...hour, sheltered: true } : hour,
  );
  return { ...problem, hours };
}

function withDay(problem: Problem, id: string, change: (day: ProblemDay) => ProblemDay): Problem {
  if (!problem.days.some((day) => day.id === id)) throw new RangeError(`the problem has no job day '${id}'`);
  return { ...problem, days: problem.days.map((day) => (day.id === id ? change(day) : day)) };
}

/** One hand more for a time; taken to be the same one where one was added for another time. */
function withHand(problem: Problem, span: MinuteSpan): Problem {
  const added = problem.hands.find(({ id }) => id === addedHand);
  const present = [...(added?.present ?? []), span].sort((a, b) => a.from - b.from);
  const others = problem.hands.filter(({ id }) => id !== addedHand);
  return { ...problem, hands: [...others, { id: addedHand, name: 'a second hand', present }] };
}

function withMore(capacity: Problem['tools'][number]['capacity'], more: number, { horizon }: Problem) {
  const spans = [...capacity].sort((a, b) => a.from - b.from);
  const all: { from: Minute; to: Minute; count: number }[] = [];
  let at = 0;
  for (const { from, to, count } of spans) {
    if (from > at) all.push({ from: at, to: from, count: more });
    all.push({ from, to, count: count + more });
    at = Math.max(at, to);
  }
  if (at < horizon) all.push({ from: at, to: horizon, count: more });
  return all;
}

/**
 * The problem with one job day more. A day past the horizon moves that on by a day, whose hours are those of the last
 * day again (they are the cautious climate value as a rule) and whose light is that day's.
 */
function withAnotherDay(problem: Problem, wanted: Extract<Relaxation, { kind: 'another day' }>): Problem {
  const like = problem.days.find(({ id }) => id === wanted.like);
  if (like === undefined) throw new RangeError(`the problem has no job day '${wanted.like}'`);
  const longer = wanted.to > problem.horizon ? withLaterHorizon(problem) : problem;
  const shift = wanted.from - like.from;
  const breaks = like.breaks
    .map(({ from, to }) => ({ from: from + shift, to: to + shift }))
    .filter(({ to }) => to < wanted.to - like.clearUp_min);
  // what every job day ends in, this one ends in too
  const endsIn = like.endsIn.filter(({ aspect, state }) =>
    problem.days.every((day) => day.endsIn.some((end) => end.aspect === aspect && end.state === state)),
  );
  const day: ProblemDay = { ...like, id: addedDay, label: addedDay, from: wanted.from, to: wanted.to, breaks, endsIn };
  const hours = wanted.needs === null ? longer.hours : fitHours(longer.hours, wanted, wanted.needs);
  return { ...longer, hours, days: [...longer.days, day].sort((a, b) => a.from - b.from) };
}

function withLaterHorizon(problem: Problem): Problem {
  const { horizon } = problem;
  const later = horizon + minutesInDay;
  const onward = <S extends MinuteSpan>(span: S): S => (span.to === horizon ? { ...span, to: later } : span);
  const lastLight = problem.daylight.filter(({ from }) => from >= horizon - minutesInDay);
  return {
    ...problem,
    horizon: later,
    hours: [...problem.hours, ...problem.hours.slice(-24)],
    daylight: [
      ...problem.daylight,
      ...lastLight.map(({ from, to }) => ({ from: from + minutesInDay, to: to + minutesInDay })),
    ],
    hands: problem.hands.map((hand) => ({ ...hand, present: hand.present.map(onward) })),
    tools: problem.tools.map((tool) => ({ ...tool, capacity: tool.capacity.map(onward) })),
  };
}

/**
 * How easy a change is for a keeper, the easiest first: a word said, a thing got, some of one's own time, someone
 * else's time, the weather's grace, another place, another job's turn, another date, another day. Our judgement.
 */
const easeOrder: readonly RelaxationKind[] = [
  'freed',
  'stores by',
  'tool',
  'earlier start',
  'later end',
  'second hand',
  'fit hours',
  'under a roof',
  'place',
  'without job',
  'later date',
  'another day',
];

/** How much of its kind a relaxation asks, for comparing two of one kind: less is easier. */
export function sizeOf(relaxation: Relaxation, problem: Problem): number {
  switch (relaxation.kind) {
    case 'stores by':
      return relaxation.stores.length * problem.horizon - relaxation.by;
    case 'tool':
      return relaxation.more;
    case 'earlier start':
    case 'later end':
      return relaxation.minutes;
    case 'second hand':
    case 'another day':
      return relaxation.to - relaxation.from;
    case 'fit hours':
      return relaxation.hours;
    case 'later date':
      return relaxation.days;
    case 'without job':
      return problem.jobs.find(({ id }) => id === relaxation.job)?.weight ?? 0;
    case 'freed':
    case 'under a roof':
    case 'place':
      return 0;
  }
}

/** Which of two relaxations is easier for a keeper: under 0 when the first is. */
export function compareEase(a: Relaxation, b: Relaxation, problem: Problem): number {
  return easeOrder.indexOf(a.kind) - easeOrder.indexOf(b.kind) || sizeOf(a, problem) - sizeOf(b, problem);
}
