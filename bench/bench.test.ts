import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compareWorth, startSearch, violations, type Worth } from '#workplan';
import { keeperProblem, keeperSizes } from './keeper-problems.ts';
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
