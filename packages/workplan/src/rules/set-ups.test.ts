import { describe, expect, it } from 'vitest';
import { aStep, broken, planWith, problemWith, theCover, theDay, theMast } from './smallest-plan.ts';

const down = { aspect: 'mast', from: 'up', to: 'down' };
const up = { aspect: 'mast', from: 'down', to: 'up' };
const coverOff = { aspect: 'cover', from: 'on', to: 'off' };

describe('set-ups', () => {
  it('step set-up: a step that needs the mast down starts when it is down, at 605', () => {
    const hands = ['keeper', 'second'].map((id) => ({ id, name: id, present: [{ from: 0, to: 1440 }] }));
    const step = aStep('a', { setUps: [{ aspect: 'mast', states: ['down'] }] });
    const problem = problemWith([step], { aspects: [theMast], hands });
    const plan = (start: number) => planWith(problem, { a: { start, hands: ['second'] } }, [{ ...down, start: 600 }]);
    expect(broken(plan(605), problem)).toEqual([]);
    expect(broken(plan(604), problem)).toEqual(['step set-up']);
    // and it does not go up again before the step is finished, at 615
    const again = (start: number) =>
      planWith(problem, { a: { start: 605, hands: ['second'] } }, [
        { ...down, start: 600 },
        { ...up, start },
      ]);
    expect(broken(again(615), problem)).toEqual([]);
    expect(broken(again(614), problem)).toEqual(['step set-up']);
  });

  it('step set-up: a step under way keeps the set-up it has until it finishes', () => {
    const progress = { kind: 'under way', start: 600, expectedFinish: 625, hands: [] } as const;
    const step = aStep('a', { hands: 0, progress, setUps: [{ aspect: 'mast', states: ['up'] }] });
    const problem = problemWith([step], { aspects: [theMast], now: 615 });
    expect(broken(planWith(problem, {}, [{ ...down, start: 625 }]), problem)).toEqual([]);
    expect(broken(planWith(problem, {}, [{ ...down, start: 624 }]), problem)).toEqual(['step set-up']);
  });

  it('set-up chain: each change leaves the state the one before it reached, and takes its minutes', () => {
    const problem = problemWith([], { aspects: [theMast] });
    const plan = (...changes: (typeof down & { start: number; finish?: number })[]) => planWith(problem, {}, changes);
    expect(broken(plan({ ...down, start: 600 }, { ...up, start: 605 }), problem)).toEqual([]);
    expect(broken(plan({ ...up, start: 600 }), problem)).toEqual(['set-up chain']);
    expect(broken(plan({ ...down, start: 600 }, { ...down, start: 605 }), problem)).toEqual(['set-up chain']);
    expect(broken(plan({ ...down, start: 600, finish: 604 }), problem)).toEqual(['set-up chain']);
  });

  it('set-up chain: two changes of one thing do not overlap', () => {
    const hands = ['keeper', 'second'].map((id) => ({ id, name: id, present: [{ from: 0, to: 1440 }] }));
    const problem = problemWith([], { aspects: [theMast], hands });
    const plan = planWith(problem, {}, [
      { ...down, start: 600 },
      { ...up, start: 604 },
    ]);
    // one keeper cannot be at both either
    expect(broken(plan, problem)).toEqual(['one thing at a time', 'set-up chain']);
  });

  it('set-up chain: a pair that is not listed cannot be done in one go', () => {
    const oneWay = { ...theMast, changes: theMast.changes.filter(({ from }) => from === 'up') };
    const problem = problemWith([], { aspects: [oneWay] });
    const plan = planWith(problem, {}, [
      { ...down, start: 600 },
      { ...up, start: 605 },
    ]);
    expect(broken(plan, problem)).toEqual(['set-up chain']);
  });

  it('change set-up: a mast that goes down with the cover off waits until it is off, at 605', () => {
    const [fall, rise] = theMast.changes;
    const mast = { ...theMast, changes: [{ ...fall!, setUps: [{ aspect: 'cover', states: ['off'] }] }, rise!] };
    const problem = problemWith([], { aspects: [mast, theCover] });
    const plan = (...changes: { aspect: string; from: string; to: string; start: number }[]) =>
      planWith(problem, {}, changes);
    expect(broken(plan({ ...coverOff, start: 600 }, { ...down, start: 605 }), problem)).toEqual([]);
    expect(broken(plan({ ...down, start: 605 }), problem)).toEqual(['change set-up']);
    expect(broken(plan({ ...down, start: 605 }, { ...coverOff, start: 610 }), problem)).toEqual(['change set-up']);
  });

  it('day ends in: with work in it the day ends with the mast down; an empty day is let be', () => {
    const days = [{ ...theDay, endsIn: [{ aspect: 'mast', state: 'down' }] }];
    const problem = problemWith([aStep('a')], { days, aspects: [theMast] });
    expect(broken(planWith(problem, { a: 600 }, [{ ...down, start: 715 }]), problem)).toEqual([]);
    expect(broken(planWith(problem, { a: 600 }), problem)).toEqual(['day ends in']);
    expect(broken(planWith(problem, {}), problem)).toEqual([]);
    const upAgain = planWith(problem, { a: 600 }, [
      { ...down, start: 610 },
      { ...up, start: 615 },
    ]);
    expect(broken(upAgain, problem)).toEqual(['day ends in']);
  });
});
