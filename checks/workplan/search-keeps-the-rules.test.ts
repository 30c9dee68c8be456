/**
 * The search on many invented problems, judged by the rules alone: no plan of it breaks one, the same seed gives the
 * same plan, more tries never give a worse one, and what is begun or held stays.
 */
import { describe, expect, it } from 'vitest';
import {
  BesideLine,
  compareWorth,
  type Outcome,
  type Plan,
  type Problem,
  rules,
  SearchBeside,
  startSearch,
  violations,
  type Worth,
  worthOf,
} from '#workplan';
import { smallProblem } from './small-problems.ts';

function outcomeOf(problem: Problem, iterations: number, seed = 1): Outcome {
  const search = startSearch(problem, { seed });
  search.advance(iterations);
  return search.outcome();
}

function judge(problem: Problem, outcome: Outcome, name: string): void {
  expect(violations(outcome.plan, problem), name).toEqual([]);
  expect(compareWorth(outcome.worth, worthOf(outcome.plan, problem)), name).toBe(0);
  for (const job of outcome.plan.leftOut)
    expect(
      outcome.obstacles.some((obstacle) => obstacle.job === job),
      `${name}: ${job} is left out without a reason`,
    ).toBe(true);
  const { verdict, worth } = outcome;
  if (verdict.kind !== 'proved best') expect(verdict.bound, name).toBeGreaterThanOrEqual(worth.weight);
}

describe('the search on small problems', () => {
  it('breaks no rule on 400 of them, and gives a reason for every job left out', () => {
    for (let seed = 0; seed < 400; seed++) {
      const problem = smallProblem(seed);
      judge(problem, outcomeOf(problem, 40), `seed ${seed}`);
    }
  });

  it.each(rules)('breaks no rule where %s comes up often', (rule) => {
    for (let seed = 0; seed < 12; seed++) {
      const problem = smallProblem(1000 + seed, { rules: [rule] });
      judge(problem, outcomeOf(problem, 30), `${rule}, seed ${1000 + seed}`);
    }
  });

  it('gives the same plan for the same seed and number of tries, however they are sliced', () => {
    for (let seed = 0; seed < 40; seed++) {
      const problem = smallProblem(seed);
      const sliced = startSearch(problem, { seed: 7 });
      for (let slice = 0; slice < 6; slice++) sliced.advance(10);
      expect(sliced.outcome(), `seed ${seed}`).toEqual(outcomeOf(problem, 60, 7));
    }
  });

  it('never gets worse with more tries', () => {
    for (let seed = 0; seed < 60; seed++) {
      const search = startSearch(smallProblem(seed), { seed: 1 });
      let last: Worth | null = null;
      for (let slice = 0; slice < 8; slice++) {
        const { worth } = search.advance(8);
        if (last !== null) expect(compareWorth(worth!, last), `seed ${seed}`).toBeLessThanOrEqual(0);
        last = worth;
      }
    }
  });

  it('starts from a plan at hand without losing any of its worth', () => {
    for (let seed = 0; seed < 60; seed++) {
      const problem = smallProblem(seed);
      const before = outcomeOf(problem, 60);
      const search = startSearch(problem, { seed: 2, plan: before.plan });
      search.advance(20);
      const after = search.outcome();
      expect(violations(after.plan, problem), `seed ${seed}`).toEqual([]);
      expect(compareWorth(after.worth, before.worth), `seed ${seed}`).toBeLessThanOrEqual(0);
    }
  });
});

describe('two searches side by side', () => {
  it('break no rule, and have no less than either had', () => {
    for (let seed = 0; seed < 60; seed++) {
      const problem = smallProblem(seed);
      const search = startSearch(problem, { seed: 1 });
      const line = new BesideLine((told) => beside.hear(structuredClone(told)));
      const found: Plan[] = [];
      const beside = new SearchBeside((one) => {
        found.push(one.plan);
        line.hear(structuredClone(one));
      });
      line.begin(search, problem, { seed: 1 });
      for (let slice = 0; slice < 5; slice++) {
        search.advance(6);
        beside.advance(6);
        line.swap();
      }
      judge(problem, search.outcome(), `seed ${seed}`);
      for (const plan of found)
        expect(compareWorth(search.best()!.worth, worthOf(plan, problem)), `seed ${seed}`).toBeLessThanOrEqual(0);
    }
  });
});

describe('cure times and the finish', () => {
  /** One step with a cure, and one after it: the plan can be proved, so its finish can be compared. */
  const cured = (minutes: number): Problem => {
    const problem = smallProblem(0, { size: 'tiny' });
    const step = problem.steps[0]!;
    const plain = {
      ...step,
      hands: 1,
      keeper: false,
      notAlone: false,
      needs: {},
      features: [],
      tools: [],
      setUps: [],
      stores: [],
      dusty: false,
      wet: false,
      mix: null,
      held: null,
      zone: null,
      progress: { kind: 'open' as const },
    };
    const day = { ...problem.days[0]!, from: 480, to: 960, setOut_min: 0, clearUp_min: 0, breaks: [], endsIn: [] };
    const cure = {
      id: 'cure',
      title: 'cure',
      law: { kind: 'set time' as const, minutes, from: 'our assumption' as const },
      needs: {},
      setUps: [],
      still: [],
      wet: false,
    };
    return {
      ...problem,
      now: 0,
      days: [day],
      hands: [{ id: 'keeper', name: 'keeper', present: [{ from: 480, to: 960 }] }],
      aspects: [],
      jobs: [{ id: 'job', title: 'job', weight: 3, deadline: null, optional: true }],
      steps: [
        { ...plain, id: 'glue', job: 'job', minutes: 20, waits: [cure] },
        { ...plain, id: 'sand', job: 'job', minutes: 30, waits: [] },
      ],
      precedence: [
        { before: 'glue', wait: 'cure', after: 'sand', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
      ],
      previous: [],
    };
  };

  it('a longer cure never gives an earlier finish where the finish is proved', () => {
    let last = 0;
    for (const minutes of [0, 5, 40, 41, 120, 300, 429, 430]) {
      const { verdict, worth } = outcomeOf(cured(minutes), 30);
      expect(verdict, `${minutes} min`).toEqual({ kind: 'proved best', finishToo: true });
      // 480 + 20 of glueing + the cure + 30 of sanding
      expect(worth.lastFinish).toBe(530 + minutes);
      expect(worth.lastFinish).toBeGreaterThanOrEqual(last);
      last = worth.lastFinish;
    }
  });

  it('a cure that leaves no time for what follows leaves the job out, with the reason', () => {
    const { plan, obstacles, verdict } = outcomeOf(cured(431), 30);
    expect(plan.leftOut).toEqual(['job']);
    expect(verdict.kind).toBe('proved best');
    expect(obstacles).toHaveLength(1);
  });
});
