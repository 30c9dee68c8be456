import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compareWorth, startSearch, violations, type Worth, worthOf } from '#workplan';
import { answerAfter, improvingAnswers } from './improving-answers.ts';
import { keeperModel } from './keeper-model.ts';
import { keeperProblem, keeperSizes } from './keeper-problems.ts';
import { longerSearchRow, longerSearchSum } from './longer-search.ts';
import { runPsplib } from './psplib.ts';

const j30 = '../shared/data/psplib/j30.tar.gz';
const hasData = existsSync(j30);

describe("invented keeper's problems", () => {
  it('have the size asked for, and the same seed gives the same problem', () => {
    for (const size of keeperSizes) {
      const problem = keeperProblem(size, 3);
      expect([problem.jobs.length, problem.steps.length, problem.days.length]).toEqual([
        size.jobs,
        size.steps,
        size.days,
      ]);
      expect(keeperProblem(size, 3)).toEqual(problem);
    }
  });

  it.each(keeperSizes.slice(0, 3))('are planned without breaking a rule ($jobs jobs, $steps steps)', (size) => {
    for (let seed = 0; seed < 4; seed++) {
      const problem = keeperProblem(size, seed);
      const search = startSearch(problem, { seed: 1 });
      let last: Worth | null = null;
      for (let slice = 0; slice < 3; slice++) {
        const { worth } = search.advance(6);
        if (last !== null) expect(compareWorth(worth!, last)).toBeLessThanOrEqual(0);
        last = worth;
      }
      const { plan, obstacles } = search.outcome();
      expect(violations(plan, problem), `seed ${seed}`).toEqual([]);
      const told = new Set(obstacles.map(({ job }) => job));
      expect(plan.leftOut.filter((job) => !told.has(job))).toEqual([]);
    }
  });
});

it('a needed job that fits only where another mixes for it is soon in the plan, whatever the seed', () => {
  const problem = keeperProblem(keeperSizes[0]!, 1);
  for (let seed = 1; seed <= 3; seed++) {
    const { worth } = startSearch(problem, { seed }).advance(2000);
    expect(worth!.missed, `seed ${seed}`).toBe(0);
  }
});

// reckoned by hand: of a best of 200, the short runs are 0, 1, 2 and 4 % below it; of the other all four miss more
it('what a longer search brings is held against the best of all runs, and what misses more is all short', () => {
  const worth = (weight: number, missed = 0): Worth => ({ weight, missed, setUp_min: 0, moved_min: 0, lastFinish: 0 });
  const near = { problem: 1, soon: [200, 198, 196, 192].map((weight) => worth(weight)), late: worth(199) };
  const far = { problem: 2, soon: [300, 300, 300, 300].map((weight) => worth(weight, 5)), late: worth(100) };
  expect(longerSearchRow(near)).toBe('| 1 | 200, 198, 196, 192 | 0 | 199 | 0 | 1.5 % | 4.0 % |');
  expect(longerSearchRow(far)).toBe('| 2 | 300, 300, 300, 300 | 5 | 100 | 0 | 100.0 % | 100.0 % |');
  expect(longerSearchSum([near, far])).toBe(
    'Median of all 8: 52.00 % short. Problems with a median within 1 %: 0 of 2.',
  );
});

it('of 150 jobs and 600 steps a bound is had with the first plans, well below the weight of all jobs', () => {
  const problem = keeperProblem(keeperSizes[3]!, 1);
  const all = problem.jobs.reduce((sum, { weight }) => sum + weight, 0);
  const { worth, bound } = startSearch(problem, { seed: 1 }).advance(100);
  expect(bound).toBeGreaterThanOrEqual(worth!.weight);
  expect(bound).toBeLessThan(0.8 * all);
});

describe("a keeper's problem stated for a general solver", () => {
  // The solver proves it for its own model; the plan is judged by the rules, which are another matter.
  it('is solved, and the plan written back breaks no rule and does no more than our bound allows', async () => {
    const problem = keeperProblem(keeperSizes[0]!, 1);
    const model = keeperModel(problem, 'jobs by weight, then soonest start');
    const run = await improvingAnswers(model.text, {
      solve_s: 60,
      compileAtMost_s: 60,
      memoryAtMost_MB: 4000,
      freeSearch: true,
    });
    expect(run.kind).toBe('proved');
    const plan = model.planFrom(answerAfter(run, 60)!.values);
    expect(violations(plan, problem)).toEqual([]);
    const search = startSearch(problem, { seed: 1 });
    search.advance(400);
    const { verdict, worth } = search.outcome();
    const bound = verdict.kind === 'proved best' ? worth.weight : verdict.bound;
    expect(bound).toBeGreaterThanOrEqual(worthOf(plan, problem).weight - 1e-6);
  }, 120_000);
});

describe(`PSPLIB J30${hasData ? '' : ' (skipped: no data)'}`, () => {
  // Published optima, R. Kolisch, A. Sprecher, PSPLIB; developer half, every tenth instance.
  it.skipIf(!hasData)('stays within 0.3 % of the optima, breaks no rule and proves nothing above one', () => {
    const result = runPsplib(j30, 0.25, 24, () => {});
    expect(result.instances).toBe(24);
    expect(result.violations).toBe(0);
    expect(result.wrongProofs).toEqual([]);
    expect(result.excess_pct).toBeGreaterThanOrEqual(0);
    expect(result.excess_pct).toBeLessThanOrEqual(0.3);
  });
});
