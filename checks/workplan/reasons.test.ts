/**
 * The ways in on many invented problems, judged by the rules alone; and on tiny ones by brute force, which says whether
 * less of the same would have done.
 */
import { describe, expect, it } from 'vitest';
import {
  type Outcome,
  type Problem,
  type Reasons,
  type Relaxation,
  relaxed,
  startReasons,
  startSearch,
  violations,
  type WayIn,
  worthOf,
} from '#workplan';
import { bruteForce } from './brute-force.ts';
import { smallProblem } from './small-problems.ts';

/** Plans that brute force tries for one question before it is passed over as too large. */
const most = 4000;

function reasonsOf(problem: Problem, seed = 1): { readonly outcome: Outcome; readonly reasons: Reasons } {
  const search = startSearch(problem, { seed });
  search.advance(150);
  const outcome = search.outcome();
  const run = startReasons(problem, outcome, { seed, arrival_clock: '09:00' });
  let reasons = run.advance(0);
  for (let n = 0; n < 2000 && !reasons.finished; n++) reasons = run.advance(100);
  expect(reasons.finished).toBe(true);
  return { outcome, reasons };
}

/** What a way in says, judged from outside: the changed problem has a plan with the job in and nothing else out. */
function judge(problem: Problem, outcome: Outcome, way: WayIn, name: string): void {
  const { relaxation, plan } = way;
  const changed = relaxed(problem, relaxation);
  const without = relaxation.kind === 'without job' ? relaxation.job : null;
  expect(violations(plan, changed), name).toEqual([]);
  expect(plan.leftOut, name).not.toContain(way.job);
  expect(
    plan.leftOut.filter((job) => !outcome.plan.leftOut.includes(job)),
    `${name}: left out besides`,
  ).toEqual([]);
  for (const job of problem.jobs)
    if (job.id !== without)
      expect(
        changed.jobs.map(({ id }) => id),
        name,
      ).toContain(job.id);
  expect(worthOf(plan, changed).missed, name).toBeLessThanOrEqual(outcome.worth.missed);
  // it takes the change: the plan is none of the problem as it stands
  expect(violations(plan, problem), `${name}: needs no change`).not.toEqual([]);
}

/** The problem in which all that a way in does is needed and all else is not there. */
function asked(problem: Problem, outcome: Outcome, letsIn: readonly string[], relaxation: Relaxation): Problem {
  const changed = relaxed(problem, relaxation);
  const out = new Set(outcome.plan.leftOut.filter((job) => !letsIn.includes(job)));
  const steps = changed.steps.filter(({ job, progress }) => !out.has(job) || progress.kind !== 'open');
  const left = new Set(steps.map(({ id }) => id));
  return {
    ...changed,
    jobs: changed.jobs.map((job) =>
      out.has(job.id) ? { ...job, deadline: null, optional: true } : { ...job, optional: false },
    ),
    steps,
    precedence: changed.precedence.filter(({ before, after }) => left.has(before) && left.has(after)),
    previous: changed.previous.filter(({ step }) => left.has(step)),
  };
}

/** A quarter of an hour, a day or an hour less of the same; null where there is no less. */
function less(relaxation: Relaxation): Relaxation | null {
  switch (relaxation.kind) {
    case 'earlier start':
      return relaxation.minutes <= 15
        ? null
        : { ...relaxation, minutes: relaxation.minutes - 15, from: relaxation.from + 15 };
    case 'later end':
      return relaxation.minutes <= 15
        ? null
        : { ...relaxation, minutes: relaxation.minutes - 15, to: relaxation.to - 15 };
    case 'second hand':
      return relaxation.to - relaxation.from <= 15 ? null : { ...relaxation, from: relaxation.from + 15 };
    case 'later date':
      return relaxation.days <= 1
        ? null
        : { ...relaxation, days: relaxation.days - 1, deadline: relaxation.deadline - 1440 };
    default:
      return null;
  }
}

describe('ways in on small problems', () => {
  it('are each a plan of the changed problem that holds the job and all the rest, on 100 of them', () => {
    let judged = 0;
    let leftOut = 0;
    for (let seed = 0; seed < 100; seed++) {
      const problem = smallProblem(seed);
      const { outcome, reasons } = reasonsOf(problem);
      if (reasons.better !== null) {
        expect(violations(reasons.better, problem), `seed ${seed}`).toEqual([]);
        expect(reasons.better.leftOut.length, `seed ${seed}`).toBeLessThan(outcome.plan.leftOut.length);
        continue;
      }
      expect(reasons.ways.map(({ job }) => job)).toEqual(outcome.plan.leftOut);
      leftOut += reasons.ways.length;
      for (const { ways } of reasons.ways) {
        expect(ways.length).toBeLessThanOrEqual(3);
        for (const way of ways) {
          judge(problem, outcome, way, `seed ${seed}, ${JSON.stringify(way.relaxation)}`);
          judged++;
        }
      }
      if (reasons.gain !== null) {
        const { plan, relaxation, weight } = reasons.gain;
        const changed = relaxed(problem, relaxation);
        expect(violations(plan, changed)).toEqual([]);
        expect(worthOf(plan, changed).weight - outcome.worth.weight).toBeCloseTo(weight, 6);
      }
      expect(reasons.steps.length).toBe(outcome.plan.steps.filter(({ day }) => day !== null).length);
    }
    console.log(`${judged} ways in for ${leftOut} jobs left out`);
    expect(judged).toBeGreaterThan(60);
  }, 240_000);
});

describe('a way in against brute force', () => {
  it('asks for the least of its kind in at least 95 of 100, and never wrongly says it is proved', () => {
    let [asks, least] = [0, 0];
    for (let seed = 0; seed < 220; seed++) {
      const problem = smallProblem(seed, { size: 'tiny', onFives: true });
      const { outcome, reasons } = reasonsOf(problem);
      for (const way of reasons.ways.flatMap(({ ways }) => ways)) {
        const smaller = less(way.relaxation);
        if (smaller === null) continue;
        const answer = bruteForce(asked(problem, outcome, way.letsIn, smaller), most);
        if (answer.kind === 'too many') continue;
        asks++;
        const does = answer.worth.missed === 0;
        if (!does) least++;
        if (does) expect(way.leastProved, `seed ${seed}, ${JSON.stringify(way.relaxation)}`).toBe(false);
      }
    }
    console.log(`least of its kind: ${least} of ${asks}`);
    expect(asks).toBeGreaterThan(20);
    expect(least / asks).toBeGreaterThanOrEqual(0.95);
  }, 240_000);
});
