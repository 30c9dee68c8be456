import { describe, expect, it } from 'vitest';
import { checkProblem, executedRuns, type Problem, startOdds, startSearch, violations } from '#workplan';
import { smallProblem } from '../workplan/small-problems.ts';
import { forecastsOf, reliability } from './calibration.ts';
import { playOut } from './play-out.ts';
import { world } from './world-problem.ts';

/** Small problems that use every rule, with times that may be shorter and longer. */
function uncertain(seed: number): Problem {
  const problem = smallProblem(seed);
  return {
    ...problem,
    steps: problem.steps.map((step) => ({
      ...step,
      minutes_low: Math.round(step.minutes * 0.7),
      minutes_high: Math.round(step.minutes * 1.6),
    })),
  };
}

function planned(problem: Problem, iterations: number) {
  const search = startSearch(problem, { seed: 1 });
  search.advance(iterations);
  return search.outcome().plan;
}

describe('a followed plan', () => {
  it('is done as planned where all is certain: 100 of 100 for every job in it, 0 for those left out', () => {
    let jobs = 0;
    for (let seed = 3001; seed <= 3120; seed++) {
      const small = smallProblem(seed);
      const problem = { ...small, hours: small.hours.map((hour) => ({ ...hour, basis: 'climate' as const })) };
      const plan = planned(problem, 30);
      for (const { job, inTime } of startOdds(problem, plan, { seed }).advance(2).jobs) {
        expect([seed, job, inTime.share]).toEqual([seed, job, plan.leftOut.includes(job) ? 0 : 1]);
        jobs++;
      }
    }
    expect(jobs).toBeGreaterThan(300);
  });

  it('breaks no rule in what it executes, with the times and the sky of the run', { timeout: 300_000 }, () => {
    let steps = 0;
    for (let seed = 2001; seed <= 2100; seed++) {
      const problem = uncertain(seed);
      const runs = executedRuns(problem, planned(problem, 30), { seed });
      for (let n = 0; n < 6; n++) {
        const run = runs.next();
        const what = violations(run.plan, run.problem).map(({ rule, what }) => `${seed}: ${rule}: ${what}`);
        expect(what).toEqual([]);
        expect(run.openDays).toEqual([]);
        steps += run.plan.steps.length;
      }
    }
    expect(steps).toBeGreaterThan(1000);
  });

  it('is judged by rules that can fail: a run held to the plan’s own times breaks them', () => {
    let broken = 0;
    for (let seed = 2001; seed <= 2020; seed++) {
      const problem = uncertain(seed);
      const run = executedRuns(problem, planned(problem, 30), { seed }).next();
      if (violations(run.plan, { ...run.problem, steps: problem.steps }).length > 0) broken++;
    }
    expect(broken).toBeGreaterThan(10);
  });
});

describe('the world the odds are held against', () => {
  it('makes sound problems, and the truth is not what was said', () => {
    let differs = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const { problem, weather } = world(seed);
      expect(checkProblem(problem).kind).toBe('sound');
      if (weather.truth.some(({ rain }, hour) => rain !== problem.hours[hour]!.rain)) differs++;
    }
    expect(differs).toBeGreaterThan(5);
  });

  it('lets everything come true where truth and forecast are the same', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const of = world(seed);
      const truth = of.weather.truth.map((hour) => ({ ...hour, basis: 'climate' as const }));
      const steps = of.problem.steps.map(({ minutes_low: _l, minutes_high: _h, ...step }) => step);
      const problem = { ...of.problem, hours: truth, steps };
      const certain = {
        problem,
        weather: { truth, said: () => truth },
        trueMinutes: (step: number) => steps[step]!.minutes,
      };
      // so many tries that the plan is the best there is: what it leaves out, planning again must not find
      const plan = planned(problem, 200);
      const { inTime } = playOut(certain, plan, 20);
      const odds = startOdds(problem, plan, { seed }).advance(20);
      for (const { job, inTime: chance } of odds.jobs) {
        const laid = !plan.leftOut.includes(job);
        expect([job, chance.share, inTime.has(job)]).toEqual([job, laid ? 1 : 0, laid]);
      }
    }
  });
});

describe('the full planner in that world', () => {
  it('plans again where the set-up a day begins in is asked for longer, and what follows it is changed anew', () => {
    // seeds at which a plan made on the way once fell over just there
    for (const seed of [20_215, 20_216]) {
      const of = world(seed);
      const search = startSearch(of.problem, { seed });
      search.advance(60);
      const { plans } = playOut(of, search.outcome().plan, 30);
      expect(plans).toBeGreaterThan(0);
    }
  });
});

describe('the odds against that world', () => {
  it('what is given 60 to 95 of 100 comes true about as often, on a few problems now', { timeout: 300_000 }, () => {
    const forecasts = Array.from({ length: 20 }, (_, n) =>
      forecastsOf(5001 + n, { runs: 100, first: 80, onTheWay: 20 }),
    ).flat();
    const [row] = reliability(forecasts, [0.6, 0.95]);
    expect(row!.jobs).toBeGreaterThan(20);
    // the whole table, on many more, is in README.md; here the band that counting so few leaves open
    expect(row!.given).toBeGreaterThan(row!.low - 0.05);
    expect(row!.given).toBeLessThan(row!.high + 0.05);
  });
});
