import { describe, expect, it } from 'vitest';
import { BesideLine, type FoundBeside, SearchBeside, type ToldBeside } from './beside.ts';
import type { Plan } from './plan.ts';
import { aStep, planWith, problemWith, theDay } from './rules/smallest-plan.ts';
import { type Search, startSearch } from './search.ts';

/**
 * A day of 120 minutes: the long job (weight 10) takes all of it, the short one (6) ten, so that no plan holds both and
 * the best is worth 10.
 */
const problem = problemWith([aStep('all day', { job: 'long', minutes: 120 }), aStep('a little', { job: 'short' })], {
  jobs: [
    { id: 'long', title: 'long', weight: 10, deadline: null, optional: true },
    { id: 'short', title: 'short', weight: 6, deadline: null, optional: true },
  ],
});
const light = planWith(problem, { 'a little': 600 });
const heavy = planWith(problem, { 'all day': 600 });
const both = planWith(problem, { 'all day': 600, 'a little': 600 });

/** The same, the short job one with a date: to miss it costs more than the long one brings. */
const dated = { ...problem, jobs: problem.jobs.map((job) => (job.id === 'short' ? { ...job, deadline: 720 } : job)) };

describe('a plan found elsewhere', () => {
  it('is gone on from where it is better, and is the best then', () => {
    const search = startSearch(problem, { seed: 1 });
    expect(search.best()).toBeNull();
    expect(search.adopt(light)).toBe(true);
    expect(search.best()!.worth.weight).toBe(6);
    expect(search.adopt(heavy)).toBe(true);
    expect(search.best()!.plan).toEqual(heavy);
    search.advance(30);
    expect(search.outcome()).toMatchObject({ plan: heavy, worth: { weight: 10 }, verdict: { kind: 'proved best' } });
  });

  it('is left alone where it is no better', () => {
    const search = startSearch(problem, { seed: 1 });
    search.adopt(heavy);
    expect(search.adopt(light)).toBe(false);
    expect(search.adopt(heavy)).toBe(false);
    expect(search.best()!.plan).toEqual(heavy);
  });

  it('is left alone where it breaks a rule, however much it does', () => {
    // the one keeper would do two things at a time
    const search = startSearch(problem, { seed: 1 });
    search.adopt(light);
    expect(search.adopt(both)).toBe(false);
    expect(search.best()!.worth.weight).toBe(6);
  });

  it('turns the search beside another only where it misses less', () => {
    const beside = startSearch(dated, { seed: 1, isBeside: true });
    expect(beside.adopt(heavy)).toBe(true);
    expect(beside.adopt(light)).toBe(true);
    expect(beside.best()!.worth).toMatchObject({ missed: 0, weight: 6 });
    const free = startSearch(problem, { seed: 1, isBeside: true });
    free.adopt(light);
    expect(free.adopt(heavy)).toBe(false);
  });
});

/** Two ends joined by what crosses as plain data, in the order it was said. */
function joined(search: Search, of = problem) {
  const line = new BesideLine((told) => beside.hear(structuredClone(told)));
  const beside = new SearchBeside((found) => line.hear(structuredClone(found)));
  line.begin(search, of, { seed: 1 });
  return { line, beside };
}

describe('two searches side by side', () => {
  it('the first has what the other finds once they swap', () => {
    // the first makes not one plan of its own
    const search = startSearch(problem, { seed: 1 });
    const { line, beside } = joined(search);
    for (let slice = 0; slice < 10 && beside.advance(5); slice++);
    expect(search.best()).toBeNull();
    line.swap();
    expect(search.best()!.worth.weight).toBe(10);
  });

  it('the other is told what the first has, each plan once', () => {
    const told: ToldBeside[] = [];
    const search = startSearch(problem, { seed: 1 });
    const line = new BesideLine((one) => told.push(one));
    line.begin(search, problem, { seed: 7 });
    expect(told).toEqual([{ kind: 'begin', search: 1, problem, start: { seed: 8 } }]);
    search.adopt(light);
    line.swap();
    line.swap();
    expect(told.slice(1)).toEqual([{ kind: 'plan', search: 1, plan: light }]);
    // what came from there is no news there
    line.hear({ search: 1, plan: heavy });
    line.swap();
    expect(told).toHaveLength(2);
    expect(search.best()!.plan).toEqual(heavy);
  });

  it('says each better plan once, and nothing more when nothing better is to be found', () => {
    // one step of ten minutes: laid first thing in the day nothing beats it
    const easy = problemWith([aStep('a little')]);
    const found: FoundBeside[] = [];
    const beside = new SearchBeside((one) => found.push(one));
    expect(beside.advance(5)).toBe(false);
    beside.hear({ kind: 'begin', search: 3, problem: easy, start: { seed: 1 } });
    expect(beside.advance(5)).toBe(false);
    expect(found).toEqual([{ search: 3, plan: planWith(easy, { 'a little': 600 }) }]);
    expect(beside.advance(5)).toBe(false);
    expect(found).toHaveLength(1);
  });

  it('hears nothing late: neither a plan of a search that was ended, nor of one before', () => {
    const first = startSearch(problem, { seed: 1 });
    const { line, beside } = joined(first);
    line.end();
    expect(beside.advance(5)).toBe(false);
    line.hear({ search: 1, plan: heavy });
    line.swap();
    expect(first.best()).toBeNull();
    const second = startSearch(problem, { seed: 1 });
    line.begin(second, problem, { seed: 1 });
    line.hear({ search: 1, plan: heavy });
    line.swap();
    expect(second.best()).toBeNull();
    // a plan for the search before does not reach the one that goes on
    beside.hear({ kind: 'plan', search: 1, plan: heavy });
    expect(beside.advance(0)).toBe(true);
  });
});

it('a plain case goes on from a sooner finish found elsewhere, and from no other', () => {
  // All is done, nobody is asked for: two steps in a row of 10 minutes end at 620 where they lie without a gap.
  const steps = [aStep('one', { hands: 0 }), aStep('two', { hands: 0 })];
  const plain = problemWith(steps, {
    hands: [],
    days: [{ ...theDay, from: 0, to: 1440 }],
    jobs: [{ id: 'job', title: 'job', weight: 10, deadline: null, optional: false }],
    precedence: [
      { before: 'one', wait: null, after: 'two', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
    ],
  });
  const search = startSearch(plain, { seed: 1 });
  const laid = (one: number, two: number): Plan => planWith(plain, { one, two });
  expect(search.adopt(laid(0, 30))).toBe(true);
  expect(search.best()!.worth.lastFinish).toBe(40);
  expect(search.adopt(laid(5, 40))).toBe(false);
  expect(search.adopt(laid(0, 5)), 'the second before the first is done').toBe(false);
  expect(search.adopt(laid(0, 10))).toBe(true);
  expect(search.best()!.plan).toEqual(laid(0, 10));
});
