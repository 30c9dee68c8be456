import { describe, expect, it } from 'vitest';
import type { Plan } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { aStep, aWait, broken, hoursBut, planWith, problemWith, theDay, theMast } from '../rules/smallest-plan.ts';
import { violations } from '../violations.ts';
import { stepHeld } from './what-holds.ts';

function heldIn(problem: Problem, plan: Plan, step: string) {
  expect(broken(plan, problem)).toEqual([]);
  return stepHeld(problem, plan, step);
}
const after = { wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' } } as const;

describe('what holds a step where it is', () => {
  it('is the start of the day, and it may go as late as the day has room', () => {
    const problem = problemWith([aStep('a')]);
    // 10 minutes in a day of 120
    expect(heldIn(problem, planWith(problem, { a: 600 }), 'a')).toEqual({
      step: 'a',
      by: [{ kind: 'day begins', at: 600 }],
      roomToSpare_min: 110,
    });
    // a minute later nothing holds it
    expect(heldIn(problem, planWith(problem, { a: 601 }), 'a').by).toEqual([]);
  });

  it('is a step it comes after, or its wait; and room to spare ends where the next begins', () => {
    const problem = problemWith([aStep('a', { waits: [aWait('cure')] }), aStep('b'), aStep('c')], {
      precedence: [
        { ...after, before: 'a', wait: 'cure', after: 'b' },
        { ...after, before: 'b', after: 'c' },
      ],
    });
    const plan = planWith(problem, { a: 600, b: 640, c: 665 });
    expect(heldIn(problem, plan, 'b')).toMatchObject({
      by: [{ kind: 'comes after', step: 'a', wait: 'cure', until: 640 }],
      roomToSpare_min: 15,
    });
    expect(heldIn(problem, plan, 'a').roomToSpare_min).toBe(0);
    expect(heldIn(problem, plan, 'c')).toMatchObject({ by: [], roomToSpare_min: 45 });
  });

  it('is rain until the hour, and it may go on until rain comes again', () => {
    const problem = problemWith([aStep('a', { needs: { dry: true } })], {
      hours: hoursBut({ 10: { rain: true } }),
    });
    expect(heldIn(problem, planWith(problem, { a: 660 }), 'a')).toMatchObject({
      by: [{ kind: 'weather', condition: 'dry', from: 660 }],
      roomToSpare_min: 50,
    });
    // without the rain the same start is held by nothing
    expect(heldIn({ ...problem, hours: hoursBut({}) }, planWith(problem, { a: 660 }), 'a').by).toEqual([]);
  });

  it('is the hands at something else, and a set-up not yet there', () => {
    const problem = problemWith(
      [aStep('a', { job: 'one' }), aStep('b', { setUps: [{ aspect: 'mast', states: ['down'] }] })],
      {
        aspects: [theMast],
      },
    );
    const plan = planWith(problem, { a: 600, b: 615 }, [{ aspect: 'mast', from: 'up', to: 'down', start: 610 }]);
    expect(heldIn(problem, plan, 'b').by).toEqual(
      expect.arrayContaining([
        { kind: 'hands busy', hands: ['keeper'], step: null, aspect: 'mast', until: 615 },
        { kind: 'set-up', aspect: 'mast', until: 615 },
      ]),
    );
    expect(heldIn(problem, plan, 'a').roomToSpare_min).toBe(0);
  });

  it('is a store, a hold, a break, a hand who comes then, and dust', () => {
    const stores = problemWith([aStep('a', { stores: ['pin'] })], { stores: [{ id: 'pin', name: 'pin', from: 630 }] });
    expect(heldIn(stores, planWith(stores, { a: 630 }), 'a').by).toEqual([{ kind: 'stores', store: 'pin', from: 630 }]);
    const held = problemWith([aStep('a', { held: { from: 620, to: 640 } })]);
    expect(heldIn(held, planWith(held, { a: 620 }), 'a')).toMatchObject({
      by: [{ kind: 'held', from: 620 }],
      roomToSpare_min: 10,
    });
    const pause = problemWith([aStep('a')], { days: [{ ...theDay, breaks: [{ from: 620, to: 650 }] }] });
    expect(heldIn(pause, planWith(pause, { a: 650 }), 'a').by).toEqual([{ kind: 'break', until: 650 }]);
    // before the break it may only go up to it, though after it there is room
    expect(heldIn(pause, planWith(pause, { a: 600 }), 'a').roomToSpare_min).toBe(10);
    const zones = [{ id: 'deck', name: 'deck', room: 2, inside: false, near: [] }];
    const dust = problemWith(
      [aStep('paint', { zone: 'deck', wet: true }), aStep('sand', { job: 'two', zone: 'deck', dusty: true })],
      {
        zones,
        hands: [
          { id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 1440 }] },
          { id: 'mate', name: 'the mate', present: [{ from: 0, to: 1440 }] },
        ],
      },
    );
    const plan = planWith(dust, { paint: 600, sand: { start: 610, hands: ['mate'] } });
    expect(heldIn(dust, plan, 'sand').by).toEqual([{ kind: 'dust', other: null }]);
  });
});

describe('room to spare', () => {
  it('is exact: by every minute of it the plan still stands, and by one more it does not', () => {
    const problem = problemWith(
      [
        aStep('a', { minutes: 3, tools: [{ tool: 'saw', count: 1 }] }),
        aStep('b', { job: 'two', minutes: 2, tools: [{ tool: 'saw', count: 1 }] }),
      ],
      {
        tools: [{ id: 'saw', name: 'saw', capacity: [{ from: 0, to: 1440, count: 1 }] }],
        hands: [
          { id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 1440 }] },
          { id: 'mate', name: 'the mate', present: [{ from: 0, to: 1440 }] },
        ],
      },
    );
    // the saw is in other hands from 640 to 642 only; past that there would be room again
    const plan = planWith(problem, { a: 600, b: { start: 640, hands: ['mate'] } });
    const { roomToSpare_min } = heldIn(problem, plan, 'a');
    expect(roomToSpare_min).toBe(37);
    const later = (by: number) => ({
      ...plan,
      steps: plan.steps.map((step) =>
        step.step === 'a' ? { ...step, start: step.start + by, finish: step.finish + by } : step,
      ),
    });
    for (let by = 0; by <= roomToSpare_min; by++) expect(violations(later(by), problem)).toEqual([]);
    expect(violations(later(roomToSpare_min + 1), problem)).not.toEqual([]);
  });
});
