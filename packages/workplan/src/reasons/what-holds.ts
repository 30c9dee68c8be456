/** What keeps a step of a plan from starting sooner, and how much later it could start. */
import type { Condition } from '#sky';
import type { Plan, PlannedStep } from '../plan.ts';
import type { Minute, Problem, ProblemStep } from '../problem.ts';
import type { Rule } from '../rules.ts';
import { violations } from '../violations.ts';
import { touchDryAfter, waitAfter } from '../wait-after.ts';

/** One thing that keeps a step from starting a minute sooner than it does, everything else staying where it is. */
export type Holder =
  /** work on its day begins then */
  | { readonly kind: 'day begins'; readonly at: Minute }
  | { readonly kind: 'break'; readonly until: Minute }
  /** the plan is made at this minute */
  | { readonly kind: 'now' }
  /** it comes after a step, or its wait; `lag_min` more after the end of that */
  | {
      readonly kind: 'comes after';
      readonly step: string;
      readonly wait: string | null;
      readonly until: Minute;
      readonly lag_min: Minute;
    }
  /** weather or light it needs is there only from `from` on */
  | { readonly kind: 'weather'; readonly condition: Condition; readonly from: Minute }
  /** hands it needs are at something else: a step, or a change of a set-up */
  | {
      readonly kind: 'hands busy';
      readonly hands: readonly string[];
      readonly step: string | null;
      readonly aspect: string | null;
      readonly until: Minute;
    }
  | { readonly kind: 'hand not there'; readonly hand: string; readonly from: Minute }
  | { readonly kind: 'alone'; readonly from: Minute }
  | { readonly kind: 'set-up'; readonly aspect: string; readonly until: Minute }
  | { readonly kind: 'tool'; readonly tool: string }
  | { readonly kind: 'room'; readonly zone: string }
  /** dust and a wet finish are kept apart */
  | { readonly kind: 'dust'; readonly other: string | null }
  | { readonly kind: 'held'; readonly from: Minute }
  | { readonly kind: 'stores'; readonly store: string; readonly from: Minute }
  /** the batch it shares is mixed then */
  | { readonly kind: 'batch'; readonly of: string }
  /** sooner, its wait would not stay as it must: dry, warm, clear of dew, still, in its set-up */
  | { readonly kind: 'its wait'; readonly wait: string | null; readonly need: 'dry' | 'warm' | 'before dew' | 'set-up' }
  /** sooner, what follows it would come too late after it */
  | { readonly kind: 'what follows'; readonly step: string };

export interface StepHeld {
  readonly step: string;
  /** empty: it could start sooner as far as the rest goes */
  readonly by: readonly Holder[];
  /**
   * how much later it could start, on its day and with everything else as it is in the plan, and by every minute up to
   * that: nothing missed, no weight lost, no set-up changed, no other step moved. It may make the last finish later. [min]
   */
  readonly roomToSpare_min: Minute;
}

/**
 * What holds an open step of a plan where it is, and its room to spare. Exact: both are read off `violations` on the
 * plan with this one step moved.
 *
 * @param plan  one in which `violations` finds nothing; it holds the step
 */
export function stepHeld(problem: Problem, plan: Plan, id: string): StepHeld {
  const step = problem.steps.find((each) => each.id === id);
  const planned = plan.steps.find((each) => each.step === id);
  if (step === undefined || planned === undefined) throw new RangeError(`the plan has no step '${id}'`);
  return {
    step: id,
    by: holders(problem, plan, step, planned),
    roomToSpare_min: roomToSpare(problem, plan, step, planned),
  };
}

/** The plan with one step, and its waits, so many minutes later; below 0 sooner. */
function moved(problem: Problem, plan: Plan, step: ProblemStep, by: Minute): Plan {
  return {
    ...plan,
    steps: plan.steps.map((each) =>
      each.step === step.id ? { ...each, start: each.start + by, finish: each.finish + by } : each,
    ),
    waits: plan.waits.map((each) => {
      if (each.step !== step.id) return each;
      const wait = step.waits.find(({ id }) => id === each.wait);
      if (wait === undefined) return each;
      const start = each.start + by;
      const { finish, tooCold } = waitAfter(wait, start, problem.hours);
      return { ...each, start, finish: finish ?? problem.horizon, tooCold };
    }),
  };
}

const conditionOf: Partial<Record<Rule, Condition>> = {
  dry: 'dry',
  wind: 'wind_max_kn',
  surface: 'surface_min_C',
  humidity: 'humidity_max_pct',
  'dew margin': 'dewMargin_min_C',
  daylight: 'daylight',
};

function holders(problem: Problem, plan: Plan, step: ProblemStep, planned: PlannedStep): Holder[] {
  const found: Holder[] = [];
  const { start } = planned;
  const add = (...more: Holder[]) => {
    for (const holder of more)
      if (!found.some((each) => JSON.stringify(each) === JSON.stringify(holder))) found.push(holder);
  };
  for (const { rule, where } of violations(moved(problem, plan, step, -1), problem)) {
    const condition = conditionOf[rule];
    if (condition !== undefined) add({ kind: 'weather', condition, from: start });
    else if (rule === 'air') add({ kind: 'weather', condition: airCondition(problem, step, start - 1), from: start });
    else if (rule === 'job day' || rule === 'set-out and clear-up') add({ kind: 'day begins', at: start });
    else if (rule === 'break') add({ kind: 'break', until: start });
    else if (rule === 'not before now') add({ kind: 'now' });
    else if (rule === 'least lag' && where.step === step.id) add(...whatComesBefore(problem, plan, step, start));
    else if (rule === 'one thing at a time') add(...whatHandsDo(plan, planned));
    else if (rule === 'hand present') add({ kind: 'hand not there', hand: where.hand ?? '', from: start });
    else if (rule === 'not alone') add({ kind: 'alone', from: start });
    else if (rule === 'step set-up' && where.step === step.id) add(...setUpsBy(plan, step, start));
    else if (rule === 'tools') add({ kind: 'tool', tool: where.tool ?? '' });
    else if (rule === 'room in the zone') add({ kind: 'room', zone: where.zone ?? '' });
    else if (rule === 'dust and wet')
      add({ kind: 'dust', other: where.step === step.id ? null : (where.step ?? null) });
    else if (rule === 'held') add({ kind: 'held', from: start });
    else if (rule === 'stores') add(...storesFrom(problem, step, start));
    else if (rule === 'batch' && planned.batchOf !== null) add({ kind: 'batch', of: planned.batchOf });
    else if (rule === 'wait dry') add({ kind: 'its wait', wait: where.wait ?? null, need: 'dry' });
    else if (rule === 'wait warm') add({ kind: 'its wait', wait: where.wait ?? null, need: 'warm' });
    else if (rule === 'before dew') add({ kind: 'its wait', wait: where.wait ?? null, need: 'before dew' });
    else if (rule === 'wait set-up' || rule === 'still')
      add({ kind: 'its wait', wait: where.wait ?? null, need: 'set-up' });
    else if ((rule === 'greatest lag' || rule === 'abrading' || rule === 'pot life') && where.step !== undefined)
      add({ kind: 'what follows', step: where.step });
  }
  return found;
}

/** Which of the two air limits the hour before the start does not keep. */
function airCondition(problem: Problem, step: ProblemStep, minute: Minute): Condition {
  const hour = problem.hours[Math.floor(minute / 60)];
  const { air_max_C } = step.needs;
  return hour !== undefined && air_max_C !== undefined && hour.air_C > air_max_C ? 'air_max_C' : 'air_min_C';
}

function whatComesBefore(problem: Problem, plan: Plan, step: ProblemStep, start: Minute): Holder[] {
  return problem.precedence.flatMap(({ before, wait, after, least_min }): Holder[] => {
    if (after !== step.id) return [];
    const end =
      wait === null
        ? plan.steps.find((each) => each.step === before)?.finish
        : plan.waits.find((each) => each.step === before && each.wait === wait)?.finish;
    return end !== undefined && start - 1 < end + least_min
      ? [{ kind: 'comes after', step: before, wait, until: end + least_min, lag_min: least_min }]
      : [];
  });
}

/** What the hands of a step are busy with until it starts. */
function whatHandsDo(plan: Plan, planned: PlannedStep): Holder[] {
  const { start } = planned;
  const until = (work: { readonly start: Minute; readonly finish: Minute; readonly hands: readonly string[] }) =>
    work.start < start && work.finish >= start ? work.hands.filter((hand) => planned.hands.includes(hand)) : [];
  return [
    ...plan.steps.flatMap((work): Holder[] => {
      const hands = work.step === planned.step ? [] : until(work);
      return hands.length === 0
        ? []
        : [{ kind: 'hands busy', hands, step: work.step, aspect: null, until: work.finish }];
    }),
    ...plan.changes.flatMap((work): Holder[] => {
      const hands = until(work);
      return hands.length === 0
        ? []
        : [{ kind: 'hands busy', hands, step: null, aspect: work.aspect, until: work.finish }];
    }),
  ];
}

function setUpsBy(plan: Plan, step: ProblemStep, start: Minute): Holder[] {
  return step.setUps.flatMap(({ aspect }): Holder[] => {
    const change = plan.changes.find((each) => each.aspect === aspect && each.finish === start);
    return change === undefined ? [] : [{ kind: 'set-up', aspect, until: change.finish }];
  });
}

function storesFrom(problem: Problem, step: ProblemStep, start: Minute): Holder[] {
  return problem.stores.flatMap(({ id, from }): Holder[] =>
    step.stores.includes(id) && from !== null && from > start - 1 ? [{ kind: 'stores', store: id, from }] : [],
  );
}

/**
 * The first delay that breaks a rule, less one. A rule that a delay breaks because the step, or a wait of it, runs into
 * something stays broken for at least as many minutes of delay as that step or wait is long; so delays that far apart
 * miss no breach, and between two of them what is broken once stays broken.
 */
function roomToSpare(problem: Problem, plan: Plan, step: ProblemStep, planned: PlannedStep): Minute {
  const day = problem.days.find(({ id }) => id === planned.day);
  if (day === undefined) return 0;
  const most = day.to - day.clearUp_min - planned.finish;
  // a wait's length hangs on the hours it runs through: half of it is never passed over
  const waits = plan.waits
    .filter((wait) => wait.step === step.id)
    .map(({ wait, start, finish }) => {
      const beforeDew = step.waits.find(({ id }) => id === wait)?.needs.beforeDew;
      const to = beforeDew === undefined ? finish : touchDryAfter(beforeDew, start, finish, problem.hours);
      return Math.floor((to - start) / 2);
    });
  const stride = Math.max(1, Math.min(planned.finish - planned.start, ...waits));
  const keeps = (by: Minute) => violations(moved(problem, plan, step, by), problem).length === 0;
  let good = 0;
  while (good < most) {
    const next = Math.min(most, good + stride);
    if (keeps(next)) {
      good = next;
      continue;
    }
    let bad = next;
    while (bad - good > 1) {
      const middle = Math.floor((good + bad) / 2);
      if (keeps(middle)) good = middle;
      else bad = middle;
    }
    return good;
  }
  return good;
}
