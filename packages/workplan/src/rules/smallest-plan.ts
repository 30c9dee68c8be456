/**
 * For tests: the smallest problem there is, to which a test adds the one thing it is about, and plans for it.
 *
 * One job day, minutes 600 to 720 of a fair day of 24 hours; the keeper there all day; nothing else.
 */
import type { Plan, PlannedChange, PlannedStep } from '../plan.ts';
import type { PlanHour, Problem, ProblemDay, ProblemJob, ProblemStep, SetUpAspect, Wait } from '../problem.ts';
import type { Rule } from '../rules.ts';
import { violations } from '../violations.ts';
import { waitAfter } from '../wait-after.ts';

export const fairHour: PlanHour = {
  rain: false,
  wind_kn: 5,
  air_C: 20,
  surface_C: null,
  humidity_pct: 50,
  basis: 'typed',
  sheltered: false,
};

/** 24 fair hours but for those named by their number. */
export function hoursBut(other: Record<number, Partial<PlanHour>>): PlanHour[] {
  return Array.from({ length: 24 }, (_, hour) => ({ ...fairHour, ...other[hour] }));
}

export const theDay: ProblemDay = {
  id: 'day',
  label: 'the day',
  from: 600,
  to: 720,
  setOut_min: 0,
  clearUp_min: 0,
  breaks: [],
  features: [],
  endsIn: [],
};

/** A step of 10 minutes for one hand that needs nothing. */
export function aStep(id: string, but: Partial<ProblemStep> = {}): ProblemStep {
  return {
    id,
    job: 'job',
    title: id,
    minutes: 10,
    hands: 1,
    keeper: false,
    notAlone: false,
    zone: null,
    needs: {},
    features: [],
    tools: [],
    setUps: [],
    stores: [],
    dusty: false,
    wet: false,
    mix: null,
    waits: [],
    held: null,
    progress: { kind: 'open' },
    ...but,
  };
}

/** A wait of 30 minutes whatever the weather that needs nothing. */
export function aWait(id: string, but: Partial<Wait> = {}): Wait {
  return {
    id,
    title: id,
    law: { kind: 'set time', minutes: 30, from: 'common practice' },
    needs: {},
    setUps: [],
    still: [],
    wet: false,
    ...but,
  };
}

/** A mast that goes up and down in 5 minutes by one hand in any weather. */
export const theMast: SetUpAspect = {
  id: 'mast',
  name: 'mast',
  states: [
    { id: 'up', name: 'up', shelters: false },
    { id: 'down', name: 'down', shelters: false },
  ],
  initial: 'up',
  changes: [
    { from: 'up', to: 'down', minutes: 5, hands: 1, needs: {}, setUps: [] },
    { from: 'down', to: 'up', minutes: 5, hands: 1, needs: {}, setUps: [] },
  ],
};

/** A cover that shelters when on, on and off in 5 minutes by one hand. */
export const theCover: SetUpAspect = {
  id: 'cover',
  name: 'cover',
  states: [
    { id: 'on', name: 'on', shelters: true },
    { id: 'off', name: 'off', shelters: false },
  ],
  initial: 'on',
  changes: [
    { from: 'on', to: 'off', minutes: 5, hands: 1, needs: {}, setUps: [] },
    { from: 'off', to: 'on', minutes: 5, hands: 1, needs: {}, setUps: [] },
  ],
};

/** The smallest problem with these steps. Each of their jobs weighs 10, is optional and has no deadline. */
export function problemWith(steps: readonly ProblemStep[], but: Partial<Problem> = {}): Problem {
  const jobs = [...new Set(steps.map((step) => step.job))].map(
    (id): ProblemJob => ({ id, title: id, weight: 10, deadline: null, optional: true }),
  );
  return {
    format: 1,
    startsAt: '2026-05-02T00:00:00Z',
    timeZone: 'UTC',
    horizon: 1440,
    now: 0,
    days: [theDay],
    hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 1440 }] }],
    tools: [],
    zones: [],
    aspects: [],
    mixes: [],
    stores: [],
    hours: hoursBut({}),
    daylight: [{ from: 300, to: 1260 }],
    jobs,
    steps,
    precedence: [],
    previous: [],
    ...but,
  };
}

/**
 * A plan with each open step at the start given, in its minutes, by the first hands there are, its waits after it;
 * a step may be given other figures. What has begun stands as it was. Jobs without a start are left out.
 */
export function planWith(
  problem: Problem,
  starts: Record<string, number | (Partial<PlannedStep> & { readonly start: number })>,
  changes: readonly (Partial<PlannedChange> & Pick<PlannedChange, 'aspect' | 'from' | 'to' | 'start'>)[] = [],
): Plan {
  const steps: PlannedStep[] = [];
  for (const step of problem.steps) {
    const { progress } = step;
    if (progress.kind !== 'open') {
      const finish = progress.kind === 'done' ? progress.finish : progress.expectedFinish;
      const hands = progress.kind === 'done' ? [] : progress.hands;
      steps.push({ step: step.id, start: progress.start, finish, hands, day: null, batchOf: null, abrade_min: 0 });
      continue;
    }
    const given = starts[step.id];
    if (given === undefined) continue;
    const but = typeof given === 'number' ? { start: given } : given;
    const hands = problem.hands.slice(0, step.hands).map((hand) => hand.id);
    const finish = but.start + step.minutes;
    steps.push({ step: step.id, finish, hands, day: problem.days[0]!.id, batchOf: null, abrade_min: 0, ...but });
  }
  const stepOf = new Map(problem.steps.map((step) => [step.id, step]));
  return {
    steps,
    waits: steps.flatMap(({ step, finish: start }) =>
      stepOf.get(step)!.waits.map((wait) => {
        const { finish, tooCold } = waitAfter(wait, start, problem.hours);
        return { step, wait: wait.id, start, finish: finish ?? problem.horizon, tooCold };
      }),
    ),
    changes: changes.map((change) => ({
      finish: change.start + 5,
      hands: ['keeper'],
      day: problem.days[0]!.id,
      ...change,
    })),
    leftOut: problem.jobs
      .filter(({ id }) => problem.steps.some((step) => step.job === id && step.progress.kind === 'open'))
      .filter(({ id }) => !problem.steps.some((step) => step.job === id && starts[step.id] !== undefined))
      .map(({ id }) => id),
  };
}

/** The names of the rules a plan breaks, each once. */
export function broken(plan: Plan, problem: Problem): Rule[] {
  return [...new Set(violations(plan, problem).map(({ rule }) => rule))];
}
