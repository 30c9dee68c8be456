import { describe, expect, it } from 'vitest';
import type { Hand } from '../problem.ts';
import { aStep, broken, planWith, problemWith, theDay, theMast } from './smallest-plan.ts';

const keeper: Hand = { id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 1440 }] };
const second: Hand = { id: 'second', name: 'a second hand', present: [{ from: 600, to: 660 }] };

describe('days', () => {
  it('job day: 10 minutes end with the day at 720 when they start at 710', () => {
    const problem = problemWith([aStep('a')]);
    expect(broken(planWith(problem, { a: 710 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 711 }), problem)).toEqual(['job day']);
    expect(broken(planWith(problem, { a: 599 }), problem)).toEqual(['job day']);
    expect(broken(planWith(problem, { a: { start: 600, day: null } }), problem)).toEqual(['job day']);
  });

  it('job day: a step lies in the day it names, not in another', () => {
    const other = { ...theDay, id: 'other', from: 800, to: 900 };
    const problem = problemWith([aStep('a')], { days: [theDay, other] });
    expect(broken(planWith(problem, { a: { start: 800, day: 'other' } }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: { start: 800, day: 'day' } }), problem)).toEqual(['job day']);
  });

  it('set-out and clear-up: 15 minutes out and 5 back leave 615 to 715', () => {
    const problem = problemWith([aStep('a')], { days: [{ ...theDay, setOut_min: 15, clearUp_min: 5 }] });
    expect(broken(planWith(problem, { a: 615 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 614 }), problem)).toEqual(['set-out and clear-up']);
    expect(broken(planWith(problem, { a: 705 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 706 }), problem)).toEqual(['set-out and clear-up']);
  });

  it('break: 10 minutes end before the break at 650 when they start at 640, and go on after it from 660', () => {
    const problem = problemWith([aStep('a')], { days: [{ ...theDay, breaks: [{ from: 650, to: 660 }] }] });
    expect(broken(planWith(problem, { a: 640 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 641 }), problem)).toEqual(['break']);
    expect(broken(planWith(problem, { a: 659 }), problem)).toEqual(['break']);
    expect(broken(planWith(problem, { a: 660 }), problem)).toEqual([]);
  });

  it('break: a set-up change does not run through one either', () => {
    const days = [{ ...theDay, breaks: [{ from: 650, to: 660 }] }];
    const problem = problemWith([], { days, aspects: [theMast] });
    const down = (start: number) => planWith(problem, {}, [{ aspect: 'mast', from: 'up', to: 'down', start }]);
    expect(broken(down(645), problem)).toEqual([]);
    expect(broken(down(646), problem)).toEqual(['break']);
  });

  it('place: a step that needs water goes where there is water', () => {
    const step = aStep('a', { features: ['water'] });
    const wet = problemWith([step], { days: [{ ...theDay, features: ['mains', 'water'] }] });
    expect(broken(planWith(wet, { a: 600 }), wet)).toEqual([]);
    const dry = problemWith([step], { days: [{ ...theDay, features: ['mains'] }] });
    expect(broken(planWith(dry, { a: 600 }), dry)).toEqual(['place']);
  });
});

describe('hands', () => {
  it('hands: two different ones for a step of two, and no more', () => {
    const problem = problemWith([aStep('a', { hands: 2 }), aStep('b')], { hands: [keeper, second] });
    expect(broken(planWith(problem, { a: 600, b: 610 }), problem)).toEqual([]);
    const one = planWith(problem, { a: { start: 600, hands: ['keeper'] }, b: 610 });
    expect(broken(one, problem)).toEqual(['hands']);
    const twice = planWith(problem, { a: { start: 600, hands: ['keeper', 'keeper'] }, b: 610 });
    expect(broken(twice, problem)).toEqual(['hands']);
    const tooMany = planWith(problem, { a: 600, b: { start: 610, hands: ['keeper', 'second'] } });
    expect(broken(tooMany, problem)).toEqual(['hands']);
  });

  it('hand present: a hand that goes at 660 can do 10 minutes from 650, not from 651', () => {
    const problem = problemWith([aStep('a')], { hands: [keeper, second] });
    const by = (start: number) => planWith(problem, { a: { start, hands: ['second'] } });
    expect(broken(by(650), problem)).toEqual([]);
    expect(broken(by(651), problem)).toEqual(['hand present']);
  });

  it('one thing at a time: two steps of 10 minutes by one hand start 10 minutes apart', () => {
    const problem = problemWith([aStep('a'), aStep('b')]);
    expect(broken(planWith(problem, { a: 600, b: 610 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600, b: 609 }), problem)).toEqual(['one thing at a time']);
  });

  it('one thing at a time: a set-up change and a step under way keep their hands too', () => {
    const mast = problemWith([aStep('a')], { aspects: [theMast] });
    const down = (start: number) => planWith(mast, { a: 600 }, [{ aspect: 'mast', from: 'up', to: 'down', start }]);
    expect(broken(down(610), mast)).toEqual([]);
    expect(broken(down(609), mast)).toEqual(['one thing at a time']);

    const progress = { kind: 'under way', start: 600, expectedFinish: 625, hands: ['keeper'] } as const;
    const begun = problemWith([aStep('a', { progress }), aStep('b')], { now: 615 });
    expect(broken(planWith(begun, { b: 625 }), begun)).toEqual([]);
    expect(broken(planWith(begun, { b: 624 }), begun)).toEqual(['one thing at a time']);
  });

  it('keeper: another hand does not do where the keeper must', () => {
    const problem = problemWith([aStep('a', { keeper: true })], { hands: [keeper, second] });
    expect(broken(planWith(problem, { a: 600 }), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: { start: 600, hands: ['second'] } }), problem)).toEqual(['keeper']);
  });

  it('keeper: every set-up change has the keeper at it', () => {
    const problem = problemWith([], { hands: [keeper, second], aspects: [theMast] });
    const change = { aspect: 'mast', from: 'up', to: 'down', start: 600 };
    expect(broken(planWith(problem, {}, [change]), problem)).toEqual([]);
    expect(broken(planWith(problem, {}, [{ ...change, hands: ['second'] }]), problem)).toEqual(['keeper']);
  });

  it('not alone: the second hand, who goes at 660, need only be there', () => {
    // Two hands are there from 600 to 660. Both busy at different things still count as there.
    const problem = problemWith([aStep('a', { notAlone: true }), aStep('b')], { hands: [keeper, second] });
    const plan = (a: number) => planWith(problem, { a, b: { start: 600, hands: ['second'] } });
    expect(broken(plan(600), problem)).toEqual([]);
    expect(broken(plan(650), problem)).toEqual([]);
    expect(broken(plan(651), problem)).toEqual(['not alone']);
  });
});
