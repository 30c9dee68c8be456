/**
 * Steadiness and holds on small problems with every rule: replanning with nothing changed moves nothing, what moves less
 * than the search found is looked for by trying every plan, and a hold is kept or its job left out.
 */
import { describe, expect, it } from 'vitest';
import { compareWorth, type Plan, type Problem, startHoldCosts, startSearch, violations, worthOf } from '#workplan';
import { everyStart } from './every-start.ts';
import { chanceFrom } from './small-problems/chance.ts';
import { smallProblem } from './small-problems.ts';

const searched = (problem: Problem, plan?: Plan, tries = 400) => {
  const search = startSearch(problem, plan === undefined ? { seed: 1 } : { seed: 1, plan });
  for (let n = 0; n < tries / 50 && !search.advance(50).finished; n++);
  return search.outcome();
};
const startsOf = (problem: Problem, plan: Plan): Problem['previous'] => {
  const open = new Set(problem.steps.filter(({ progress }) => progress.kind === 'open').map(({ id }) => id));
  return plan.steps.filter(({ step }) => open.has(step)).map(({ step, start }) => ({ step, start }));
};

describe('replanning', () => {
  it('moves nothing where nothing changed, from the plan and from its starts alone', () => {
    let planned = 0;
    for (let seed = 0; seed < 60; seed++) {
      const problem = { ...smallProblem(seed), previous: [] };
      const before = searched(problem);
      if (before.plan.steps.length > 0) planned++;
      const again: Problem = { ...problem, previous: startsOf(problem, before.plan) };
      const { worth, plan } = searched(again, before.plan);
      expect(violations(plan, again), `seed ${seed}`).toEqual([]);
      // it may move only to do more, or the same with less set-up changing
      const { missed, weight, setUp_min } = before.worth;
      const more = compareWorth(
        { ...worth, moved_min: 0, lastFinish: 0 },
        { missed, weight, setUp_min, moved_min: 0, lastFinish: 0 },
      );
      expect(more, `seed ${seed}`).toBeLessThanOrEqual(0);
      if (more === 0) expect(worth.moved_min, `seed ${seed}`).toBe(0);
    }
    expect(planned).toBeGreaterThanOrEqual(40);
  });

  it('after a delay of an hour moves as little as can be, against every way to start the steps', () => {
    let compared = 0;
    let soon = 0;
    for (let seed = 0; seed < 60; seed++) {
      const { problem, plan } = lateDay(seed);
      const least = everyStart(problem, plan);
      if (least === null) continue;
      const { worth, plan: made } = searched(problem, plan, 3000);
      expect(violations(made, problem), `seed ${seed}`).toEqual([]);
      expect({ ...worth, lastFinish: 0 }, `seed ${seed}`).toEqual({ ...least, lastFinish: 0 });
      if (searched(problem, plan).worth.moved_min === least.moved_min) soon++;
      compared++;
    }
    // no proof stands behind it, so a few may need the longer look; all 60 did not when this was written
    expect(soon).toBeGreaterThanOrEqual(Math.floor(0.95 * compared));
    expect(compared).toBeGreaterThanOrEqual(30);
  });
});

/** A day of five hours for the keeper alone, three or four steps with gaps between them; its first hour was lost. */
function lateDay(seed: number): { readonly problem: Problem; readonly plan: Plan } {
  const draw = chanceFrom(seed, {});
  const blank = smallProblem(0, { size: 'tiny', onFives: true });
  const count = draw.whole(3, 4);
  const steps = Array.from({ length: count }, (_, i): Problem['steps'][number] => ({
    ...blank.steps[0]!,
    id: `s${i}`,
    job: `j${i}`,
    title: `step ${i}`,
    minutes: 10 * draw.whole(1, 4),
    hands: 1,
    keeper: true,
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
  }));
  let at = 600;
  const starts = steps.map(({ minutes }, i) => {
    const start = at + (i === 0 ? 0 : 10 * draw.whole(0, 3));
    at = start + minutes;
    return start;
  });
  const problem: Problem = {
    ...blank,
    now: 660,
    days: [
      {
        id: 'day',
        label: 'day',
        from: 600,
        to: 900,
        setOut_min: 0,
        clearUp_min: 0,
        breaks: [],
        features: [],
        endsIn: [],
      },
    ],
    hands: [{ id: 'keeper', name: 'keeper', present: [{ from: 600, to: 900 }] }],
    tools: [],
    zones: [],
    aspects: [],
    mixes: [],
    stores: [],
    jobs: steps.map(({ job }) => ({ id: job, title: job, weight: 10, deadline: null, optional: true })),
    steps,
    // every other step after the one before it
    precedence: steps.flatMap(({ id }, i) =>
      i > 0 && draw.chance(0.4)
        ? [
            {
              before: `s${i - 1}`,
              wait: null,
              after: id,
              least_min: 10 * draw.whole(0, 2),
              greatest_min: null,
              past: { kind: 'forbidden' as const },
            },
          ]
        : [],
    ),
    previous: steps.map(({ id }, i) => ({ step: id, start: starts[i]! })),
  };
  const plan: Plan = {
    steps: steps.map(({ id, minutes }, i) => ({
      step: id,
      start: starts[i]!,
      finish: starts[i]! + minutes,
      hands: ['keeper'],
      day: 'day',
      batchOf: null,
      abrade_min: 0,
    })),
    waits: [],
    changes: [],
    leftOut: [],
  };
  return { problem, plan };
}

describe('holds', () => {
  it('are kept, or the job is left out; letting go is never worth less', () => {
    let held = 0;
    let costly = 0;
    for (let seed = 0; seed < 60; seed++) {
      const free = { ...smallProblem(seed), previous: [] };
      const [day] = free.days;
      const job = free.jobs.find(({ id }) =>
        free.steps.some((step) => step.job === id && step.progress.kind === 'open'),
      );
      if (day === undefined || job === undefined) continue;
      const span = { from: day.from + 30, to: day.to };
      const problem: Problem = {
        ...free,
        steps: free.steps.map((step) =>
          step.job === job.id && step.progress.kind === 'open' ? { ...step, held: span } : step,
        ),
      };
      const outcome = searched(problem);
      const isIn = !outcome.plan.leftOut.includes(job.id);
      for (const { step, start, finish } of outcome.plan.steps) {
        const source = problem.steps.find(({ id }) => id === step)!;
        if (source.held === null || source.progress.kind !== 'open') continue;
        expect(start, `seed ${seed}`).toBeGreaterThanOrEqual(source.held.from);
        expect(finish, `seed ${seed}`).toBeLessThanOrEqual(source.held.to);
      }
      if (!isIn) expect(outcome.obstacles.some((obstacle) => obstacle.job === job.id)).toBe(true);
      const { costs, finished } = startHoldCosts(problem, outcome, { seed: 1 }).advance(20_000);
      expect(finished).toBe(true);
      for (const cost of costs) {
        held++;
        expect(compareWorth(cost.free, cost.held), `seed ${seed}`).toBeLessThanOrEqual(0);
        if (compareWorth(cost.free, cost.held) < 0) costly++;
        expect(worthOf(cost.freePlan, { ...free, previous: [] })).toEqual(cost.free);
      }
    }
    expect(held).toBeGreaterThanOrEqual(40);
    expect(costly).toBeGreaterThanOrEqual(5);
  });
});
