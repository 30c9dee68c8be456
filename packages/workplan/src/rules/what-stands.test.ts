import { describe, expect, it } from 'vitest';
import { aStep, aWait, broken, planWith, problemWith } from './smallest-plan.ts';

describe('what stands in a plan', () => {
  const problem = problemWith([aStep('a')]);
  const plan = planWith(problem, { a: 600 });

  it('known things: a name that is not in the problem, a name twice and half a minute are found', () => {
    expect(broken(plan, problem)).toEqual([]);
    // The day has one step, a. A second entry for it, or one for a step b, says nothing that can be done.
    const again = { ...plan, steps: [...plan.steps, ...plan.steps] };
    expect(broken(again, problem)).toEqual(['known things']);
    const unknown = { ...plan, steps: [...plan.steps, { ...plan.steps[0]!, step: 'b' }] };
    expect(broken(unknown, problem)).toEqual(['known things']);
    const noSuchWait = { ...plan, waits: [{ step: 'a', wait: 'w', start: 610, finish: 640, tooCold: false }] };
    expect(broken(noSuchWait, problem)).toEqual(['known things']);
    const noSuchJob = { ...plan, leftOut: ['another'] };
    expect(broken(noSuchJob, problem)).toEqual(['known things']);
    // put aside for its half minute, the step is then also missing from the plan
    expect(broken(planWith(problem, { a: { start: 600.5 } }), problem)).toEqual(['known things', 'whole job']);
    const noSuchSetUp = planWith(problem, { a: 600 }, [{ aspect: 'mast', from: 'up', to: 'down', start: 620 }]);
    expect(broken(noSuchSetUp, problem)).toEqual(['known things']);
  });

  it('whole job: one of two open steps without the other is found', () => {
    const two = problemWith([aStep('a'), aStep('b')]);
    expect(broken(planWith(two, { a: 600, b: 610 }), two)).toEqual([]);
    expect(broken(planWith(two, { a: 600 }), two)).toEqual(['whole job']);
  });

  it('whole job: the left-out list names the jobs that are not in the plan, in order, and no other', () => {
    const three = problemWith([aStep('a', { job: 'one' }), aStep('b', { job: 'two' }), aStep('c', { job: 'three' })]);
    const good = planWith(three, { a: 600 });
    expect(good.leftOut).toEqual(['two', 'three']);
    expect(broken(good, three)).toEqual([]);
    expect(broken({ ...good, leftOut: ['two'] }, three)).toEqual(['whole job']);
    expect(broken({ ...good, leftOut: ['one', 'two', 'three'] }, three)).toEqual(['whole job']);
    expect(broken({ ...good, leftOut: ['three', 'two'] }, three)).toEqual(['whole job']);
  });

  it('whole job: a job begun and not finished may be left out, and what is begun stays', () => {
    const begun = problemWith([aStep('a', { progress: { kind: 'done', start: 590, finish: 600 } }), aStep('b')], {
      now: 610,
    });
    expect(broken(planWith(begun, {}), begun)).toEqual([]);
    expect(planWith(begun, {}).leftOut).toEqual(['job']);
  });

  it('already begun: a step under way keeps its times and its hands', () => {
    const progress = { kind: 'under way', start: 600, expectedFinish: 625, hands: ['keeper'] } as const;
    const begun = problemWith([aStep('a', { progress })], { now: 615 });
    const stands = planWith(begun, {});
    expect(broken(stands, begun)).toEqual([]);
    const step = stands.steps[0]!;
    expect(broken({ ...stands, steps: [{ ...step, finish: 624 }] }, begun)).toEqual(['already begun']);
    expect(broken({ ...stands, steps: [{ ...step, hands: [] }] }, begun)).toEqual(['already begun']);
    expect(broken({ ...stands, steps: [{ ...step, day: 'day' }] }, begun)).toEqual(['already begun']);
    expect(broken({ ...stands, steps: [] }, begun)).toEqual(['already begun']);
  });

  it('already begun: what is done stands, and its wait with it', () => {
    // Done at 600 with a wait of 30 minutes: the wait stands from 600 to 630 though now is 610.
    const progress = { kind: 'done', start: 590, finish: 600 } as const;
    const done = problemWith([aStep('a', { progress, waits: [aWait('w')] })], { now: 610 });
    const stands = planWith(done, {});
    expect(stands.waits).toEqual([{ step: 'a', wait: 'w', start: 600, finish: 630, tooCold: false }]);
    expect(broken(stands, done)).toEqual([]);
    expect(broken({ ...stands, steps: [] }, done)).toEqual(['already begun']);
  });

  it('not before now: open work starts at now at the soonest', () => {
    const late = problemWith([aStep('a')], { now: 630 });
    expect(broken(planWith(late, { a: 630 }), late)).toEqual([]);
    expect(broken(planWith(late, { a: 629 }), late)).toEqual(['not before now']);
  });

  it('step time: 10 minutes are 10 minutes', () => {
    expect(broken(planWith(problem, { a: { start: 600, finish: 609 } }), problem)).toEqual(['step time']);
    expect(broken(planWith(problem, { a: { start: 600, finish: 611 } }), problem)).toEqual(['step time']);
  });
});
