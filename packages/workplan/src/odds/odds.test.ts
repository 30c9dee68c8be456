import { describe, expect, it } from 'vitest';
import type { PlanHour, Problem, ProblemStep } from '../problem.ts';
import { aStep, aWait, hoursBut, planWith, problemWith, theCover, theDay, theMast } from '../rules/smallest-plan.ts';
import { violations } from '../violations.ts';
import { startOdds } from './odds.ts';
import { executedRuns } from './run-as-plan.ts';

const spread = (id: string, minutes: number, but: Partial<ProblemStep> = {}) =>
  aStep(id, { minutes, minutes_low: Math.round(minutes / 2), minutes_high: minutes * 2, ...but });

/** Chance in time of the first job. */
function chanceOfFirst(
  problem: Problem,
  starts: Record<string, number>,
  changes = [] as Parameters<typeof planWith>[2],
) {
  const plan = planWith(problem, starts, changes);
  expect(violations(plan, problem)).toEqual([]);
  return startOdds(problem, plan, { seed: 4 }).advance(600);
}

describe('odds', () => {
  it('a certain plan has 100 of 100: for its jobs, its day and its deadline', () => {
    const steps = [aStep('a', { minutes: 60 }), aStep('b', { minutes: 60, job: 'other' })];
    const problem = problemWith(steps);
    const dated = { ...problem, jobs: problem.jobs.map((job) => ({ ...job, deadline: 720 })) };
    const odds = chanceOfFirst(dated, { a: 600, b: 660 });
    expect(odds.jobs.map(({ inTime }) => inTime.share)).toEqual([1, 1]);
    expect(odds.days.map(({ allDone }) => allDone.share)).toEqual([1]);
    expect(odds.deadlines.map(({ allInTime }) => allInTime.share)).toEqual([1]);
  });

  it('a job left out has 0, and so has the set of its date and never its day', () => {
    const problem = problemWith([aStep('a'), aStep('b', { job: 'other' })]);
    const dated = { ...problem, jobs: problem.jobs.map((job) => ({ ...job, deadline: 720 })) };
    const odds = chanceOfFirst(dated, { a: 600 });
    expect(odds.jobs.map(({ inTime }) => inTime.share)).toEqual([1, 0]);
    expect(odds.deadlines.map(({ allInTime }) => allInTime.share)).toEqual([0]);
    expect(odds.days.map(({ allDone }) => allDone.share)).toEqual([1]);
  });

  it('counts a set of jobs by a minute of its own, whatever their dates', () => {
    const problem = problemWith([
      aStep('a', { minutes: 60 }),
      aStep('b', { minutes: 60, job: 'other' }),
      aStep('c', { job: 'third' }),
    ]);
    const [first, other, third] = problem.jobs.map(({ id }) => id) as [string, string, string];
    const plan = planWith(problem, { a: 600, b: 660 });
    const sets = [
      { id: 'both', jobs: [first, other], by: 720 },
      { id: 'too soon', jobs: [first, other], by: 719 },
      { id: 'the first', jobs: [first], by: 660 },
      { id: 'with one left out', jobs: [first, third], by: 720 },
      { id: 'none', jobs: [], by: 0 },
    ];
    const odds = startOdds(problem, plan, { seed: 4, sets }).advance(20);
    expect(odds.sets.map(({ set, allInTime }) => [set, allInTime.share])).toEqual([
      ['both', 1],
      ['too soon', 0],
      ['the first', 1],
      ['with one left out', 0],
      ['none', 1],
    ]);
    expect(() => startOdds(problem, plan, { seed: 4, sets: [{ id: 'x', jobs: ['nowhere'], by: 720 }] })).toThrow(
      'has no job nowhere',
    );
  });

  it('a step that must be over by its likely time is over about half the time', () => {
    // PERT-beta with low and high as far from the likely time: half its draws lie under it; rounding to whole minutes
    const step = aStep('a', { minutes: 60, minutes_low: 40, minutes_high: 80, held: { from: 600, to: 660 } });
    const { share } = chanceOfFirst(problemWith([step]), { a: 600 }).jobs[0]!.inTime;
    expect(share).toBeGreaterThan(0.44);
    expect(share).toBeLessThan(0.58);
  });

  it('more time never lowers a chance by more than its sampling error', () => {
    const steps = [spread('a', 40), spread('b', 40), spread('c', 35, { job: 'other' })];
    let before = 0;
    for (const to of [720, 735, 750, 780, 840]) {
      const odds = chanceOfFirst(problemWith(steps, { days: [{ ...theDay, to }] }), { a: 600, b: 640, c: 680 });
      const { low, high } = odds.jobs[1]!.inTime;
      expect(high).toBeGreaterThanOrEqual(before);
      before = low;
    }
    expect(before).toBeGreaterThan(0.9);
  });

  it('a chance of rain over dry work lowers it; the work goes into a dry hour if there is one', () => {
    const wet = (rainOdds_pct: number, hours = [10, 11]): PlanHour[] =>
      hoursBut(Object.fromEntries(hours.map((hour) => [hour, { rainOdds_pct }])));
    const dry = [aStep('a', { minutes: 60, needs: { dry: true } })];
    const share = (hours: PlanHour[]) => chanceOfFirst(problemWith(dry, { hours }), { a: 600 }).jobs[0]!.inTime.share;
    // dry in one of two hours that mostly go together: at least 70 of 100, at most what two independent ones give
    const some = share(wet(30));
    expect(some).toBeGreaterThan(0.7);
    expect(some).toBeLessThan(0.91);
    expect(share(wet(5))).toBeGreaterThan(some);
    expect(share(wet(60))).toBeLessThan(some);
  });

  it('a coat that rain reaches before it is dry is spoiled', () => {
    const hours = hoursBut({ 10: { rainOdds_pct: 0 }, 11: { rainOdds_pct: 40 }, 12: { rainOdds_pct: 40 } });
    const coat = aStep('a', {
      waits: [aWait('dry', { law: { kind: 'set time', minutes: 120, from: 'the tin' }, needs: { dry: true } })],
    });
    const held = { ...coat, held: { from: 600, to: 620 } };
    const open = chanceOfFirst(problemWith([held], { hours }), { a: 600 }).jobs[0]!.inTime.share;
    // two hours at 60 % dry each: 36 of 100 were they independent, at most 60
    expect(open).toBeGreaterThan(0.36);
    expect(open).toBeLessThan(0.6);
    // where rain is seen coming and there is a cover, it is put on
    const covered = problemWith([held], { hours, aspects: [{ ...theCover, initial: 'off' }] });
    expect(chanceOfFirst(covered, { a: 600 }).jobs[0]!.inTime.share).toBeGreaterThan(0.9);
  });

  it('what slips past a set-up change is done on another day with a change of its own', () => {
    const days = [theDay, { ...theDay, id: 'next', label: 'the next', from: 2040, to: 2160 }];
    const mast = { ...theMast, initial: 'up' };
    const endsIn = [{ aspect: 'mast', state: 'up' }];
    const steps = [spread('a', 90, { setUps: [{ aspect: 'mast', states: ['down'] }] })];
    const base = { aspects: [mast], horizon: 2880, hours: [...hoursBut({}), ...hoursBut({})] };
    const hands = [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 2880 }] }];
    const changes = [
      { aspect: 'mast', from: 'up', to: 'down', start: 600 },
      { aspect: 'mast', from: 'down', to: 'up', start: 695 },
    ];
    const one = problemWith(steps, { ...base, hands, days: [{ ...theDay, endsIn }] });
    const two = problemWith(steps, { ...base, hands, days: days.map((day) => ({ ...day, endsIn })) });
    const [alone, spare] = [one, two].map(
      (problem) => chanceOfFirst(problem, { a: 605 }, changes).jobs[0]!.inTime.share,
    );
    expect(alone).toBeGreaterThan(0.4);
    expect(alone).toBeLessThan(0.9);
    expect(spare).toBeGreaterThan(0.97);
  });

  it('the same seed gives the same chances, in one go or in many', () => {
    const problem = problemWith([spread('a', 60), spread('b', 50)]);
    const plan = planWith(problem, { a: 600, b: 660 });
    const whole = startOdds(problem, plan, { seed: 9 }).advance(120);
    const parts = startOdds(problem, plan, { seed: 9 });
    for (let n = 0; n < 11; n++) parts.advance(10);
    expect(parts.advance(10)).toEqual(whole);
    expect(startOdds(problem, plan, { seed: 10 }).advance(120)).not.toEqual(whole);
  });

  it('nothing is done twice, nothing is begun before now, and a step is never cut short unseen', () => {
    const problem = problemWith([spread('a', 60), spread('b', 50)], { now: 610 });
    const runs = executedRuns(problem, planWith(problem, { a: 610, b: 670 }), { seed: 2 });
    for (let n = 0; n < 100; n++) {
      const { plan, problem: asItWas, openDays } = runs.next();
      expect(openDays).toEqual([]);
      expect(violations(plan, asItWas)).toEqual([]);
      for (const { start } of plan.steps) expect(start).toBeGreaterThanOrEqual(610);
    }
  });
});
