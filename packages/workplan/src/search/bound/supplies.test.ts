import { describe, expect, it } from 'vitest';
import type { ProblemStep } from '../../problem.ts';
import { aStep, problemWith, theDay } from '../../rules/smallest-plan.ts';
import { startSearch } from '../../search.ts';
import { boundsAlone } from '../alone.ts';
import { type Compiled, compile } from '../compiled.ts';
import { crowdedProblem } from '../crowded-problem.ts';
import { Placing } from '../placing.ts';
import { type SupplyBound, supplyBound } from './supplies.ts';
import { workMinutes } from './work-minutes.ts';

function boundOf(compiled: Compiled, needed: readonly number[]): SupplyBound {
  const work = supplyBound(compiled, boundsAlone(compiled, new Placing(compiled)), workMinutes(compiled, 60), needed);
  for (;;) {
    const next = work.next();
    if (next.done) return next.value;
  }
}

/** Jobs of one step each, for one hand alone. */
function knapsack(jobs: readonly { readonly weight: number; readonly minutes: number }[]): Compiled {
  const steps = jobs.map(({ minutes }, n): ProblemStep => aStep(`step-${n}`, { job: `job-${n}`, minutes }));
  return compile(
    problemWith(steps, {
      jobs: jobs.map(({ weight }, n) => ({
        id: `job-${n}`,
        title: `job ${n}`,
        weight,
        deadline: null,
        optional: true,
      })),
    }),
  );
}

describe('the bound from sums of minutes', () => {
  const minutes = theDay.to - theDay.from;
  const jobs = [
    { weight: 60, minutes: minutes / 4 },
    { weight: 50, minutes: minutes / 2 },
    { weight: 30, minutes: minutes / 2 },
    { weight: 1, minutes: minutes / 4 },
  ];

  it('comes near the least it can: the most weight for the time first, and of the next as much as finds room', () => {
    // G. B. Dantzig, Discrete-variable extremum problems, Operations Research 5 (1957) 266–277; from memory.
    // 60 and 50 take three quarters of the day; half of the job of 30 fits into the rest.
    const { weight } = boundOf(knapsack(jobs), []);
    expect(weight).toBeGreaterThanOrEqual(60 + 50 + 15 - 1e-9);
    expect(weight).toBeLessThan(60 + 50 + 15 + 1);
  });

  it('takes in what every plan must hold though it is not worth its time, and is no lower for plans that need not', () => {
    // the job of 1 takes a quarter of the day, 60 another; the job of 50 takes the rest
    const { weight, weightWithNeeded } = boundOf(knapsack(jobs), [3]);
    expect(weightWithNeeded).toBeGreaterThanOrEqual(60 + 1 + 50 - 1e-9);
    expect(weightWithNeeded).toBeLessThan(60 + 1 + 50 + 1);
    expect(weight).toBeGreaterThanOrEqual(60 + 50 + 15 - 1e-9);
  });

  it('is the sum of all weights where all find room', () => {
    expect(boundOf(knapsack(jobs.slice(0, 2)), [])).toMatchObject({ weight: 110, weightWithNeeded: 110 });
  });

  it('is below the weight of no plan', () => {
    let isTight = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const problem = crowdedProblem(seed, { jobs: 12, days: 1 + (seed % 3), dayMinutes: 90, still: false });
      const { weight } = boundOf(compile(problem), []);
      const search = startSearch(problem, { seed });
      search.advance(40);
      const found = search.best()!.worth.weight;
      expect(weight, `seed ${seed}`).toBeGreaterThanOrEqual(found - 1e-9);
      const all = problem.jobs.reduce((sum, job) => sum + job.weight, 0);
      if (weight < all) isTight++;
    }
    expect(isTight).toBeGreaterThan(15);
  });
});
