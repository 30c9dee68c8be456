import { describe, expect, it } from 'vitest';
import type { Outcome } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { aStep, planWith, problemWith, theDay } from '../rules/smallest-plan.ts';
import { startSearch } from '../search.ts';
import { violations } from '../violations.ts';
import { compareWorth } from '../worth.ts';
import { heldJobs, letGo, startHoldCosts, startHoldTrial } from './cost-of-hold.ts';

const solved = (problem: Problem): Outcome => {
  const search = startSearch(problem, { seed: 1 });
  for (let n = 0; n < 40 && !search.advance(10).finished; n++);
  return search.outcome();
};
const job = (id: string, weight: number) => ({ id, title: id, weight, deadline: null, optional: true });

/**
 * One day of 60 minutes for the keeper alone; `big` takes 50, `small` 30, so that only one of the two fits. Held to the
 * first 30 minutes, `small` would have the day.
 */
function oneDay(held: { from: number; to: number } | null): Problem {
  return problemWith(
    [
      aStep('big', { job: 'big', minutes: 50, hands: 1, keeper: true }),
      aStep('small', { job: 'small', minutes: 30, hands: 1, keeper: true, held }),
    ],
    { jobs: [job('big', 10), { ...job('small', 3), optional: held === null }], days: [{ ...theDay, to: 660 }] },
  );
}

describe('what a hold costs', () => {
  it('names the job left out for it, with both worths', () => {
    const problem = oneDay({ from: 600, to: 630 });
    const outcome = solved(problem);
    const { costs, finished } = startHoldCosts(problem, outcome, { seed: 1 }).advance(10_000);
    expect(finished).toBe(true);
    // with the hold the needed small job is in and the big one is not; free of it nothing else changes: both want the day
    expect(costs).toMatchObject([{ job: 'small', held: { missed: 0, weight: 3 }, lost: [], won: [] }]);
  });

  it('is nothing where the job would be there anyway', () => {
    const problem = problemWith([aStep('a', { held: { from: 600, to: 610 } })]);
    const [cost] = startHoldCosts(problem, solved(problem), { seed: 1 }).advance(1000).costs;
    expect(cost).toMatchObject({ lost: [], won: [], proved: true });
    expect(compareWorth(cost!.held, cost!.free)).toBe(0);
  });

  it('counts the minutes it is finished later', () => {
    const problem = problemWith([aStep('a', { held: { from: 700, to: 710 } })]);
    const [cost] = startHoldCosts(problem, solved(problem), { seed: 1 }).advance(1000).costs;
    // a step of 10 minutes held to 700 could be over at 610
    expect(cost!.held.lastFinish - cost!.free.lastFinish).toBe(100);
    expect(violations(cost!.freePlan, letGo(problem, 'job'))).toEqual([]);
  });

  it('does not count what was planned before: letting go is not dearer for moving the step', () => {
    const problem = problemWith([aStep('a', { held: { from: 700, to: 710 } })], {
      previous: [{ step: 'a', start: 700 }],
    });
    const [cost] = startHoldCosts(problem, solved(problem), { seed: 1 }).advance(1000).costs;
    expect(cost!.held.lastFinish - cost!.free.lastFinish).toBe(100);
  });

  it('finds no hold where none is, and is over at once', () => {
    const problem = problemWith([aStep('a')]);
    expect(heldJobs(problem)).toEqual([]);
    expect(startHoldCosts(problem, solved(problem), { seed: 1 }).advance(0)).toMatchObject({
      costs: [],
      finished: true,
    });
  });

  it('is worked out in slices as in one go', () => {
    const problem = oneDay({ from: 600, to: 630 });
    const outcome = solved(problem);
    const whole = startHoldCosts(problem, outcome, { seed: 3 }).advance(10_000);
    const run = startHoldCosts(problem, outcome, { seed: 3 });
    let last = run.advance(0);
    for (let n = 0; n < 10_000 && !last.finished; n++) last = run.advance(1);
    expect(last).toEqual(whole);
  });
});

describe('a hold that is tried before it is made', () => {
  it('leaves out what it leaves no room for', () => {
    const free = oneDay(null);
    const outcome = solved(free);
    expect(outcome.plan.leftOut).toEqual(['small']);
    // held to the first half hour and needed: the big one must go
    const trial = startHoldTrial(oneDay({ from: 600, to: 630 }), 'small', outcome, { seed: 1, isFree: true }).advance(
      5000,
    );
    expect(trial.finished).toBe(true);
    expect(trial.cost).toMatchObject({ job: 'small', held: { weight: 3 } });
  });

  it('says that the job itself goes where it does not fit there', () => {
    const free = problemWith([aStep('a')]);
    const held = problemWith([aStep('a', { held: { from: 700, to: 705 } })]);
    const { cost } = startHoldTrial(
      held,
      'job',
      { plan: planWith(free, { a: 600 }), verdict: solved(free).verdict },
      { seed: 1, isFree: true },
    ).advance(1000);
    expect(cost).toMatchObject({ lost: ['job'], proved: true });
  });

  it('of a job that is held otherwise now is counted against letting it go, not against the hold it has', () => {
    // held to the end of the day it is over at 710; held to 690 at 700; let go at 610
    const heldNow = problemWith([aStep('a', { held: { from: 700, to: 710 } })]);
    const thought = problemWith([aStep('a', { held: { from: 690, to: 700 } })]);
    const { cost, finished } = startHoldTrial(thought, 'job', solved(heldNow), { seed: 1, isFree: false }).advance(
      5000,
    );
    expect(finished).toBe(true);
    expect(cost.held.lastFinish - cost.free.lastFinish).toBe(90);
  });
});
