/**
 * A problem changed so that one rule cannot bite, all others as they were: what a planner that forgot the rule would
 * take the problem for. Where a rule is too tied up with others to be taken out whole, it is taken out in part; each
 * such case says so.
 */
import type { Problem, ProblemStep, Rule, SetUpChange, Wait } from '#workplan';

type Conditions = ProblemStep['needs'];

/** A rule of what a plan may name, not of what may be done: there is no problem without it. */
export const notSwitchable: readonly Rule[] = ['known things'];

/** @returns the problem without the rule, or null where in this problem it cannot be taken out by itself */
export function withoutRule(problem: Problem, rule: Rule): Problem | null {
  const change = switches[rule];
  return change ? change(problem) : null;
}

type Switch = (problem: Problem) => Problem | null;

const steps =
  (change: (step: ProblemStep, problem: Problem) => ProblemStep): Switch =>
  (problem) => ({ ...problem, steps: problem.steps.map((step) => change(step, problem)) });

const openSteps = (change: (step: ProblemStep, problem: Problem) => ProblemStep): Switch =>
  steps((step, problem) => (step.progress.kind === 'open' ? change(step, problem) : step));

const waits = (change: (wait: Wait) => Wait): Switch => steps((step) => ({ ...step, waits: step.waits.map(change) }));

const changes = (problem: Problem, change: (change: SetUpChange) => SetUpChange): Problem => ({
  ...problem,
  aspects: problem.aspects.map((aspect) => ({ ...aspect, changes: aspect.changes.map(change) })),
});

const days =
  (change: (day: Problem['days'][number]) => Problem['days'][number]): Switch =>
  (problem) => ({ ...problem, days: problem.days.map(change) });

/** Steps and set-up changes do not ask for these conditions. */
const conditions =
  (...keys: (keyof Conditions)[]): Switch =>
  (problem) => {
    const less = <T extends { readonly needs: Conditions }>(work: T): T => ({
      ...work,
      needs: Object.fromEntries(Object.entries(work.needs).filter(([key]) => !keys.some((one) => one === key))),
    });
    return changes({ ...problem, steps: problem.steps.map(less) }, less);
  };

const switches: Partial<Record<Rule, Switch>> = {
  // a job counts once its first open step is in the plan
  'whole job': (problem) => {
    const seen = new Set<string>();
    const kept = problem.steps.filter(({ job, progress }) => {
      if (progress.kind !== 'open') return true;
      if (seen.has(job)) return false;
      seen.add(job);
      return true;
    });
    return withSteps(problem, kept);
  },
  'already begun': steps((step) => ({ ...step, progress: { kind: 'open' } })),
  // as far back as what has begun allows
  'not before now': (problem) => {
    const begun = problem.steps.map(({ progress }) => {
      if (progress.kind === 'done') return progress.finish;
      return progress.kind === 'under way' ? progress.start : 0;
    });
    return { ...problem, now: Math.max(0, ...begun) };
  },
  'step time': openSteps((step) => ({ ...step, minutes: 1, mix: null })),
  'job day': days((day) => ({
    ...day,
    from: Math.floor(day.from / 1440) * 1440,
    to: Math.floor(day.from / 1440) * 1440 + 1440,
  })),
  'set-out and clear-up': days((day) => ({ ...day, setOut_min: 0, clearUp_min: 0 })),
  break: days((day) => ({ ...day, breaks: [] })),
  place: days((day) => ({ ...day, features: ['water', 'mains', 'level', 'slope'] })),
  hands: (problem) => {
    const fewer = openSteps((step) => ({ ...step, hands: Math.min(step.hands, 1) }))(problem);
    return fewer && changes(fewer, (change) => ({ ...change, hands: 1 }));
  },
  'hand present': (problem) => ({
    ...problem,
    hands: problem.hands.map((hand) => ({ ...hand, present: [{ from: 0, to: problem.horizon }] })),
  }),
  // in part: each hand can be at three things at a time; the keeper, where asked for, stays one
  'one thing at a time': (problem) => {
    if (problem.steps.some(({ hands, notAlone }) => hands > 1 || notAlone)) return null;
    if (problem.aspects.some((aspect) => aspect.changes.some(({ hands }) => hands > 1))) return null;
    const doubles = ['second', 'third'].flatMap((time) =>
      problem.hands.map((hand) => ({ ...hand, id: `${hand.id}-a-${time}-time` })),
    );
    return { ...problem, hands: [...problem.hands, ...doubles] };
  },
  // in part: set-up changes go on asking for the keeper
  keeper: openSteps((step) => ({ ...step, keeper: false })),
  'not alone': openSteps((step) => ({ ...step, notAlone: false })),
  tools: (problem) => ({
    ...problem,
    tools: problem.tools.map((tool) => ({ ...tool, capacity: [{ from: 0, to: problem.horizon, count: 99 }] })),
  }),
  'room in the zone': (problem) => ({ ...problem, zones: problem.zones.map((zone) => ({ ...zone, room: 99 })) }),
  dry: conditions('dry'),
  wind: conditions('wind_max_kn'),
  air: conditions('air_min_C', 'air_max_C'),
  surface: conditions('surface_min_C'),
  humidity: conditions('humidity_max_pct'),
  'dew margin': conditions('dewMargin_min_C'),
  daylight: conditions('daylight'),
  stores: (problem) => ({ ...problem, stores: problem.stores.map((store) => ({ ...store, from: 0 })) }),
  held: steps((step) => ({ ...step, held: null })),
  // still needed, by no date
  deadline: (problem) => ({
    ...problem,
    jobs: problem.jobs.map((job) => (job.deadline === null ? job : { ...job, deadline: null, optional: false })),
  }),
  // the job that another waits for is left out of the problem, and the order with it
  'comes after': (problem) => {
    const jobOf = (id: string) => problem.steps.find((step) => step.id === id)!.job;
    const order = problem.precedence.find(({ before, after }) => {
      const job = problem.jobs.find(({ id }) => id === jobOf(before))!;
      return jobOf(before) !== jobOf(after) && job.optional && job.deadline === null;
    });
    if (!order) return null;
    const first = jobOf(order.before);
    if (problem.steps.some(({ job, progress }) => job === first && progress.kind !== 'open')) return null;
    const rest = withSteps(
      problem,
      problem.steps.filter(({ job }) => job !== first),
    );
    return { ...rest, jobs: rest.jobs.filter(({ id }) => id !== first) };
  },
  // in part: orders within a job that have no greatest lag
  'least lag': (problem) => {
    const jobOf = (id: string) => problem.steps.find((step) => step.id === id)!.job;
    const kept = problem.precedence.filter(
      ({ before, after, greatest_min }) => jobOf(before) !== jobOf(after) || greatest_min !== null,
    );
    return { ...problem, precedence: kept };
  },
  'greatest lag': (problem) => ({
    ...problem,
    precedence: problem.precedence.map((order) =>
      order.past.kind === 'forbidden' ? { ...order, greatest_min: null } : order,
    ),
  }),
  abrading: (problem) => ({
    ...problem,
    precedence: problem.precedence.map((order) =>
      order.past.kind === 'abrade' ? { ...order, greatest_min: null, past: { kind: 'forbidden' } } : order,
    ),
  }),
  'wait time': waits((wait) => ({ ...wait, law: { kind: 'never cures', from: 'our assumption' } })),
  // three more weeks of fair weather, without a job day
  'wait over': (problem) => {
    const fair = { rain: false, wind_kn: 5, air_C: 20, surface_C: null, humidity_pct: 55, sheltered: false } as const;
    const more = Array.from({ length: 21 * 24 }, () => ({ ...fair, basis: 'climate' as const }));
    return { ...problem, horizon: problem.horizon + 21 * 1440, hours: [...problem.hours, ...more] };
  },
  'wait dry': waits(({ needs: { dry: _, ...needs }, ...wait }) => ({ ...wait, needs })),
  'wait warm': waits(({ needs: { air_min_C: _, ...needs }, ...wait }) => ({ ...wait, needs })),
  'before dew': waits(({ needs: { beforeDew: _, ...needs }, ...wait }) => ({ ...wait, needs })),
  'step set-up': steps((step) => ({ ...step, setUps: [] })),
  'wait set-up': waits((wait) => ({ ...wait, setUps: [] })),
  still: waits((wait) => ({ ...wait, still: [] })),
  // from any state to any other, in a minute
  'set-up chain': (problem) => ({
    ...problem,
    aspects: problem.aspects.map((aspect) => ({
      ...aspect,
      changes: aspect.states.flatMap(({ id: from }) =>
        aspect.states
          .filter(({ id: to }) => to !== from)
          .map(({ id: to }): SetUpChange => {
            const listed = aspect.changes.find((change) => change.from === from && change.to === to);
            return { from, to, hands: 1, needs: {}, setUps: [], ...listed, minutes: 1 };
          }),
      ),
    })),
  }),
  'change set-up': (problem) => changes(problem, (change) => ({ ...change, setUps: [] })),
  'day ends in': days((day) => ({ ...day, endsIn: [] })),
  // every step of a mix saves its mixing, shared or not
  batch: openSteps((step, { mixes }) => {
    const mix = mixes.find(({ id }) => id === step.mix);
    return mix ? { ...step, minutes: Math.max(1, step.minutes - mix.mixing_min), mix: null } : step;
  }),
  'pot life': (problem) => ({
    ...problem,
    mixes: problem.mixes.map((mix) => ({ ...mix, potLife_min: problem.horizon })),
  }),
  'dust and wet': steps((step) => ({
    ...step,
    dusty: false,
    wet: false,
    waits: step.waits.map((wait) => ({ ...wait, wet: false })),
  })),
};

/** Fewer steps, and only the orders between those. */
function withSteps(problem: Problem, kept: readonly ProblemStep[]): Problem {
  const has = (id: string) => kept.some((step) => step.id === id);
  return {
    ...problem,
    steps: kept,
    precedence: problem.precedence.filter(({ before, after }) => has(before) && has(after)),
    previous: problem.previous.filter(({ step }) => has(step)),
  };
}
