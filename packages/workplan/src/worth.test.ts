import { describe, expect, it } from 'vitest';
import type { Worth } from './plan.ts';
import type { ProblemJob } from './problem.ts';
import { aStep, planWith, problemWith, theMast } from './rules/smallest-plan.ts';
import { compareWorth, worthOf } from './worth.ts';

const job = (id: string, weight: number, but: Partial<ProblemJob> = {}): ProblemJob => ({
  id,
  title: id,
  weight,
  deadline: null,
  optional: true,
  ...but,
});

describe('what a plan is worth', () => {
  it('misses the needed jobs left out: those with a deadline and those not optional', () => {
    const jobs = [job('a', 1), job('b', 2, { optional: false }), job('c', 4, { deadline: 700 }), job('d', 8)];
    const problem = problemWith(
      jobs.map(({ id }) => aStep(id, { job: id })),
      { jobs },
    );
    // a left out misses nothing; b and c left out miss 2 + 4; d alone is done
    expect(worthOf(planWith(problem, { d: 600 }), problem)).toMatchObject({ missed: 6, weight: 8 });
    expect(worthOf(planWith(problem, { b: 600, c: 610 }), problem)).toMatchObject({ missed: 0, weight: 6 });
  });

  it('counts a job that has nothing open left, and not one begun but left out', () => {
    const progress = { kind: 'done', start: 590, finish: 600 } as const;
    const jobs = [job('over', 5), job('begun', 3)];
    const steps = [
      aStep('a', { job: 'over', progress }),
      aStep('b', { job: 'begun', progress }),
      aStep('c', { job: 'begun' }),
    ];
    const problem = problemWith(steps, { jobs, now: 600 });
    expect(worthOf(planWith(problem, {}), problem)).toMatchObject({ weight: 5, missed: 0, lastFinish: 0 });
    expect(worthOf(planWith(problem, { c: 600 }), problem)).toMatchObject({ weight: 8, lastFinish: 610 });
  });

  it('adds the minutes of set-up changes, and takes the last finish of steps, not of waits or changes', () => {
    const problem = problemWith([aStep('a'), aStep('b')], { aspects: [theMast] });
    const plan = planWith(problem, { a: 600, b: 640 }, [
      { aspect: 'mast', from: 'up', to: 'down', start: 610 },
      { aspect: 'mast', from: 'down', to: 'up', start: 700 },
    ]);
    expect(worthOf(plan, problem)).toMatchObject({ setUp_min: 10, lastFinish: 650 });
  });

  it('sums the minutes that steps start from where they did; a step that had no start, or has none, adds nothing', () => {
    const problem = problemWith([aStep('a'), aStep('b'), aStep('c')], {
      previous: [
        { step: 'a', start: 600 },
        { step: 'b', start: 610 },
      ],
    });
    const moved = (starts: Readonly<Record<string, number>>) => worthOf(planWith(problem, starts), problem).moved_min;
    expect(moved({ a: 600, b: 610, c: 630 })).toBe(0);
    // a 15 later, b 10 sooner
    expect(moved({ a: 615, b: 600, c: 630 })).toBe(25);
  });

  it('compares in its order: missed, weight, set-up changing, moved, last finish', () => {
    const worth = (
      missed: number,
      weight: number,
      setUp_min: number,
      moved_min: number,
      lastFinish: number,
    ): Worth => ({
      missed,
      weight,
      setUp_min,
      moved_min,
      lastFinish,
    });
    const fromBest = [
      worth(0, 9, 5, 1, 700),
      worth(0, 9, 5, 1, 710),
      worth(0, 9, 5, 2, 600),
      worth(0, 9, 6, 0, 500),
      worth(0, 8, 0, 0, 500),
      worth(1, 20, 0, 0, 500),
    ];
    for (const [i, a] of fromBest.entries())
      for (const [k, b] of fromBest.entries()) expect(Math.sign(compareWorth(a, b))).toBe(Math.sign(i - k));
  });
});
