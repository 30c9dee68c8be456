import type { Conditions } from '#sky';
import type { Obstacle } from '../plan.ts';
import type { Minute } from '../problem.ts';
import { type Alone, shortest, unitIsLate, windowAlone } from './alone.ts';
import { type Compiled, type CompiledStep, runNeeds, suitsHour } from './compiled.ts';
import type { Placing } from './placing.ts';

/** Why a job that is in no plan at all can be in none. */
export function obstaclesToUnit(compiled: Compiled, placing: Placing, alone: Alone, unit: number): Obstacle[] {
  const { units, steps, problem } = compiled;
  const { ring, jobs, waitsFor, open } = units[unit]!;
  const id = (job: number) => problem.jobs[job]!.id;
  const stuck = alone.stuckAt[unit]!;
  if (ring !== null)
    return jobs.map((job) => ({
      kind: 'steps wait for each other',
      job: id(job),
      steps: ring.map((step) => steps[step]!.source.id),
    }));
  if (stuck >= 0) {
    const step = steps[stuck]!;
    const obstacle = obstacleToStep(compiled, placing, alone, step);
    return jobs.map((job) =>
      job === step.job
        ? obstacle
        : {
            kind: 'waits for a job left out',
            job: id(job),
            step: firstTo(compiled, job, step.job),
            other: id(step.job),
          },
    );
  }
  if (unitIsLate(compiled, unit))
    return jobs.map((job) => ({
      kind: 'deadline',
      job: id(job),
      earliest: null,
      deadline: compiled.jobs[job]!.deadline,
    }));
  const other = waitsFor.find((candidate) => !alone.possible[candidate]);
  return jobs.map((job) => waitsForLeftOut(compiled, job, open, other ?? waitsFor[0]!));
}

/** That a job waits for one of another unit that is left out. */
export function waitsForLeftOut(compiled: Compiled, job: number, open: readonly number[], otherUnit: number): Obstacle {
  const { steps, problem, units } = compiled;
  for (const index of open)
    for (const tie of steps[index]!.before) {
      const before = steps[tie.before]!;
      if (before.fixed === null && units[otherUnit]!.jobs.includes(before.job))
        return {
          kind: 'waits for a job left out',
          job: problem.jobs[job]!.id,
          step: steps[index]!.source.id,
          other: problem.jobs[before.job]!.id,
        };
    }
  throw new RangeError(`job ${problem.jobs[job]!.id} waits for nothing of the unit named`);
}

function firstTo(compiled: Compiled, job: number, other: number): string {
  const { steps } = compiled;
  const own = steps.filter((step) => step.job === job && step.fixed === null);
  const tied = own.find((step) => step.before.some((tie) => steps[tie.before]!.job === other));
  return (tied ?? own[0]!).source.id;
}

/** The one thing that keeps a step from every start there is: the first whose lifting leaves it one. */
function obstacleToStep(compiled: Compiled, placing: Placing, alone: Alone, step: CompiledStep): Obstacle {
  const { problem, horizon } = compiled;
  const { source } = step;
  const named = { job: source.job, step: source.id };

  for (const store of source.stores)
    if ((problem.stores.find((line) => line.id === store)?.from ?? null) === null)
      return { kind: 'not in stores', ...named, store, from: null };
  for (const { tool, count } of source.tools) {
    const most = Math.max(0, ...problem.tools.find(({ id }) => id === tool)!.capacity.map((span) => span.count));
    if (count > most) return { kind: 'no tool', ...named, tool };
  }
  const feature = source.features.find((wanted) => !problem.days.some((day) => day.features.includes(wanted)));
  if (feature !== undefined) return { kind: 'no such place', ...named, feature };
  for (const need of step.setUps) {
    const { minutes, initial } = compiled.aspects[need.aspect]!;
    if (!minutes[initial]!.some((way, state) => way < Number.POSITIVE_INFINITY && (need.mask & (1 << state)) !== 0)) {
      const asked = source.setUps.find(({ aspect }) => aspect === problem.aspects[need.aspect]!.id)!;
      return { kind: 'set-up out of reach', ...named, aspect: asked.aspect, states: asked.states };
    }
  }
  if (source.hands > problem.hands.length) return { kind: 'no hands', ...named, need: source.hands };
  if (source.notAlone && problem.hands.length < 2) return { kind: 'no second hand', ...named };

  const lasts = shortest(compiled, step);
  const longest = Math.max(0, ...compiled.stretches.map(({ from, to }) => to - from));
  if (lasts > longest) return { kind: 'longer than any day', ...named, minutes: lasts, longest_min: longest };

  // Lift one thing at a time; the first that leaves the step a start stands in the way.
  const window = windowAlone(compiled, step, alone.earliest);
  const starts = { from: Math.max(0, window.from), to: window.to };
  const kind = runNeeds(problem, source);
  const runWith = (needs: Conditions, present = kind.present, keeper = kind.keeper) =>
    compiled.runs.of({ ...kind, needs, present, keeper });
  const fits = (change: Partial<CompiledStep>, from = starts.from, to = starts.to) =>
    placing.earliestAlone({ ...step, ...change }, from, lasts, to) >= 0;

  const storeFrom = Math.max(
    0,
    ...source.stores.map((store) => problem.stores.find((line) => line.id === store)?.from ?? 0),
  );
  if (storeFrom > compiled.now) {
    const early = withoutStores(compiled, step);
    const earlier = windowAlone(compiled, early, alone.earliest);
    if (earlier.from >= 0 && placing.earliestAlone(early, earlier.from, lasts, earlier.to) >= 0) {
      const store = source.stores.find(
        (candidate) => problem.stores.find((line) => line.id === candidate)?.from === storeFrom,
      )!;
      return { kind: 'not in stores', ...named, store, from: storeFrom };
    }
  }
  if (source.held !== null) {
    const deadline = problem.jobs[step.job]!.deadline ?? horizon;
    const free = { ...step, earliest: Math.max(compiled.now, storeFrom), latestFinish: deadline };
    const { from, to } = windowAlone(compiled, free, alone.earliest);
    if (from >= 0 && placing.earliestAlone(free, from, lasts, to) >= 0) return { kind: 'held elsewhere', ...named };
  }
  const weather = ({ condition, ...run }: LimitedRun): Obstacle => ({
    kind: 'weather',
    ...named,
    condition,
    need_min: lasts,
    ...run,
  });
  const conditions = Object.keys(source.needs) as (keyof Conditions)[];
  const lifted = conditions.flatMap((condition) => {
    const { [condition]: _, ...rest } = source.needs;
    const run = runWith(rest);
    return fits({ run }) ? [{ condition, run }] : [];
  });
  if (lifted.length > 0) return weather(limitedRun(compiled, step, lasts, starts.from, lifted));
  if (conditions.length > 1 && fits({ run: runWith({}) })) {
    const best = longestRun(compiled, step, starts.from);
    return weather({ ...best, condition: hardest(compiled, step, conditions, best.bestDay) });
  }
  if (source.notAlone && fits({ run: runWith(source.needs, source.hands) }))
    return { kind: 'no second hand', ...named };
  if (source.hands > 1 && fits({ run: runWith(source.needs, 1), hands: 1, notAlone: false }))
    return { kind: 'no second hand', ...named };
  if (source.hands > 0 && fits({ run: runWith(source.needs, 0, false), hands: 0, keeper: false, notAlone: false }))
    return { kind: 'no hands', ...named, need: source.hands };
  for (const { tool } of source.tools) {
    const index = problem.tools.findIndex(({ id }) => id === tool);
    if (fits({ tools: step.tools.filter((use) => use.tool !== index) })) return { kind: 'no tool', ...named, tool };
  }
  for (const [index, wait] of step.waits.entries()) {
    const eased = (change: object) => step.waits.map((other, at) => (at === index ? { ...other, ...change } : other));
    const name = { ...named, wait: wait.id };
    if (wait.nextCold !== null && fits({ waits: eased({ nextCold: null }) }))
      return { kind: 'wait needs not kept', ...name, need: 'air_min_C' };
    if (wait.beforeDew !== null && fits({ waits: eased({ beforeDew: null }) }))
      return { kind: 'wait needs not kept', ...name, need: 'beforeDew' };
    if (wait.dry && fits({ waits: eased({ dry: false }) }))
      return { kind: 'wait needs not kept', ...name, need: 'dry' };
    if (wait.wet && fits({ waits: eased({ wet: false }) }))
      return { kind: 'wait needs not kept', ...name, need: 'no dust near it' };
    if (fits({ waits: step.waits.filter((_, at) => at !== index) }))
      return { kind: 'wait not over in time', ...name, by: problem.jobs[step.job]!.deadline ?? horizon };
  }
  for (const need of step.setUps)
    if (fits({ setUps: step.setUps.filter((other) => other !== need) })) {
      const asked = source.setUps.find(({ aspect }) => aspect === problem.aspects[need.aspect]!.id)!;
      return { kind: 'set-up out of reach', ...named, aspect: asked.aspect, states: asked.states };
    }
  const begun = step.before.find(
    (tie) => compiled.steps[tie.before]!.fixed !== null && tie.greatest >= 0 && tie.abrade < 0,
  );
  if (begun !== undefined && fits({}, starts.from, horizon))
    return { kind: 'window missed', ...named, before: problem.steps[begun.before]!.id };
  const { deadline } = problem.jobs[step.job]!;
  if (deadline !== null) {
    const later = { ...step, latestFinish: Math.min(horizon, source.held?.to ?? horizon) };
    const start = window.from < 0 ? -1 : placing.earliestAlone(later, starts.from, lasts, starts.to);
    return { kind: 'deadline', job: source.job, earliest: start < 0 ? null : start + lasts, deadline };
  }
  for (const tie of step.before) {
    const before = compiled.steps[tie.before]!;
    if (tie.wait >= 0 && window.from < 0)
      return {
        kind: 'wait not over in time',
        ...named,
        step: before.source.id,
        wait: before.waits[tie.wait]!.id,
        by: horizon,
      };
  }
  if (conditions.length > 0) {
    const best = longestRun(compiled, step, starts.from);
    return weather({ ...best, condition: hardest(compiled, step, conditions, best.bestDay) });
  }
  return {
    kind: 'longer than any day',
    ...named,
    minutes: lasts,
    longest_min: longestRun(compiled, step, starts.from).best_min,
  };
}

function withoutStores(compiled: Compiled, step: CompiledStep): CompiledStep {
  return { ...step, earliest: Math.max(compiled.now, step.source.held?.from ?? 0) };
}

interface LongestRun {
  readonly best_min: Minute;
  readonly bestDay: string | null;
}

interface LimitedRun extends LongestRun {
  readonly condition: string;
}

/** The longest stretch of minutes from some minute on that allows a step, and the day it is on. */
function longestRun(compiled: Compiled, step: CompiledStep, from: Minute): LongestRun {
  let best_min = 0;
  let bestDay: string | null = null;
  compiled.problem.days.forEach(({ id }, day) => {
    const run_min = longestOnDay(compiled, step.run, day, from);
    if (run_min <= best_min) return;
    best_min = run_min;
    bestDay = id;
  });
  return { best_min, bestDay };
}

function longestOnDay(compiled: Compiled, run: Int32Array, day: number, from: Minute): Minute {
  let best_min = 0;
  for (const stretch of compiled.stretches) {
    if (stretch.day !== day) continue;
    for (let minute = Math.max(from, stretch.from); minute < stretch.to; minute += Math.max(1, run[minute]!))
      best_min = Math.max(best_min, run[minute]!);
  }
  return best_min;
}

/**
 * Of the conditions whose lifting gives a step a start the one that limits the day that comes nearest: the longest
 * stretch there is now on a day on which, with that condition lifted, the step would find its time.
 *
 * @param lifted  each with the minutes in a row that are left to the step without it
 */
function limitedRun(
  compiled: Compiled,
  step: CompiledStep,
  lasts: Minute,
  from: Minute,
  lifted: readonly { readonly condition: keyof Conditions; readonly run: Int32Array }[],
): LimitedRun {
  let best: LimitedRun | null = null;
  for (const { condition, run } of lifted)
    compiled.problem.days.forEach(({ id }, day) => {
      if (longestOnDay(compiled, run, day, from) < lasts) return;
      const best_min = longestOnDay(compiled, step.run, day, from);
      if (best === null || best_min > best.best_min) best = { condition, best_min, bestDay: best_min > 0 ? id : null };
    });
  return best ?? { condition: lifted[0]!.condition, ...longestRun(compiled, step, from) };
}

/** Of a step's conditions the one that the fewest hours of a job day meet; of all job days where none is named. */
function hardest(
  compiled: Compiled,
  step: CompiledStep,
  conditions: readonly (keyof Conditions)[],
  onDay: string | null,
): string {
  const { inside } = runNeeds(compiled.problem, step.source);
  const met = (condition: keyof Conditions) => {
    const needs = { [condition]: step.source.needs[condition] } as Conditions;
    let minutes = 0;
    for (const { day, from, to } of compiled.stretches) {
      if (onDay !== null && compiled.problem.days[day]!.id !== onDay) continue;
      for (let minute = from; minute < to; minute += 60 - (minute % 60))
        if (suitsHour({ needs, inside }, compiled.problem.hours[Math.floor(minute / 60)]!))
          minutes += Math.min(to, minute + 60 - (minute % 60)) - minute;
    }
    return minutes;
  };
  return conditions.reduce((worst, condition) => (met(condition) < met(worst) ? condition : worst));
}
