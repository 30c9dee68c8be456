import { describe, expect, it } from 'vitest';
import { type Problem, violations, waitAfter } from '#workplan';
import { sameWorth } from './agreement.ts';
import { bestPlan } from './best-plan.ts';
import { bruteForce } from './brute-force.ts';
import { waitFinish } from './minute-tables.ts';
import { constraintModel } from './model.ts';
import { smallProblem } from './small-problems.ts';

describe('the constraint model', () => {
  // tiny problems on fives: trying every plan there is, judged by the rules alone, is the other side
  it.each([0, 1, 2, 3, 5, 8, 13, 17, 21, 30])(
    'finds the best plan of tiny problem %i, as trying all does',
    async (seed) => {
      const problem = smallProblem(seed, { size: 'tiny', onFives: true });
      const all = bruteForce(problem, 200_000);
      if (all.kind !== 'best') throw new Error(`too many plans to try: ${all.tried}`);
      const model = await bestPlan(problem, 100_000);
      if (model.kind !== 'proved best') throw new Error('the solver ran out of time');
      expect(violations(model.plan, problem)).toEqual([]);
      expect(sameWorth(model.worth, all.worth), JSON.stringify([model.worth, all.worth])).toBe(true);
    },
    120_000,
  );

  it('adds up waits to the same minute as the cure laws do', () => {
    let waits = 0;
    for (let seed = 0; seed < 40; seed++) {
      const problem = smallProblem(seed, { rules: ['wait time'] });
      for (const wait of problem.steps.flatMap((step) => step.waits))
        for (let start = 0; start < problem.horizon; start += 97) {
          expect(waitFinish(problem, wait, start)).toEqual(waitAfter(wait, start, problem.hours));
          waits++;
        }
    }
    expect(waits).toBeGreaterThan(1000);
  });

  it('refuses weights that its numbers cannot hold', () => {
    const problem = smallProblem(0);
    const heavy = (weight: number): Problem => ({ ...problem, jobs: problem.jobs.map((job) => ({ ...job, weight })) });
    expect(() => constraintModel(heavy(0.5))).toThrow(/whole/);
    expect(() => constraintModel(heavy(1e6))).toThrow(/too many/);
  });
});
