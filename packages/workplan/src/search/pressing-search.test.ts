import { expect, it } from 'vitest';
import type { Precedence } from '../problem.ts';
import { aStep, problemWith, theDay } from '../rules/smallest-plan.ts';
import { violations } from '../violations.ts';
import { compile } from './compiled.ts';
import { Dice } from './dice.ts';
import { FreeGround } from './free-ground.ts';
import { PressingSearch } from './pressing-search.ts';
import { writtenPlan } from './written-plan.ts';

it('what is left out comes ahead, until the heavy job that needs the whole day has it', () => {
  // Each weight over its minutes to the power of two fifths: 6 over that of 11 is 1.57 times 10 over that of 121, and
  // chance makes it 1.5 times as much at most, so the short job is laid first and takes ten of the day's 120 minutes.
  // Left out once, the long one is first.
  const problem = problemWith([aStep('all day', { job: 'long', minutes: 120 }), aStep('a little', { job: 'short' })], {
    jobs: [
      { id: 'long', title: 'long', weight: 10, deadline: null, optional: true },
      { id: 'short', title: 'short', weight: 6, deadline: null, optional: true },
    ],
  });
  for (let seed = 0; seed < 40; seed++) {
    const compiled = compile(problem);
    const dice = new Dice(seed);
    const search = new PressingSearch(compiled, [0, 1], dice, new FreeGround(compiled, dice));
    const weights = [search.step(), search.step(), search.step()];
    expect(weights[0]).toBe(6);
    expect(Math.max(...weights)).toBe(10);
  }
});

/**
 * Two jobs of three steps of twenty minutes, the middle one for two hands, in a day of 120 minutes. The second hand is
 * there for the 40 in the middle.
 */
function twoJobsForOneSecondHand() {
  const jobs = ['one', 'other'];
  const steps = jobs.flatMap((job) =>
    ['before', 'together', 'after'].map((part, at) =>
      aStep(`${job}, ${part}`, { job, minutes: 20, hands: at === 1 ? 2 : 1 }),
    ),
  );
  const follows = (before: number): Precedence => ({
    before: steps[before]!.id,
    wait: null,
    after: steps[before + 1]!.id,
    least_min: 0,
    greatest_min: null,
    past: { kind: 'forbidden' },
  });
  return problemWith(steps, {
    precedence: [0, 1, 3, 4].map(follows),
    hands: [
      { id: 'keeper', name: 'the keeper', present: [{ from: theDay.from, to: theDay.to }] },
      { id: 'friend', name: 'a friend', present: [{ from: 640, to: 680 }] },
    ],
  });
}

it('two jobs of which either leaves the other no second hand are both laid, their steps among each other', () => {
  // Laid whole, each step at its earliest, the first job has the second hand for its last step too, at 660, while the
  // keeper could do that alone at 680: so the other never has both. The one way to have both in is by turns.
  const problem = twoJobsForOneSecondHand();
  const compiled = compile(problem);
  for (const order of [
    [0, 1],
    [1, 0],
  ]) {
    const ground = new FreeGround(compiled, new Dice(1));
    expect(order.map((unit) => ground.placeUnit(unit, 0))).toEqual([true, false]);
  }
  for (let seed = 0; seed < 20; seed++) {
    const dice = new Dice(seed);
    const ground = new FreeGround(compiled, dice);
    const search = new PressingSearch(compiled, [0, 1], dice, ground);
    let weight = 0;
    for (let tries = 0; tries < 100 && weight < 20; tries++) weight = search.step();
    expect(weight).toBe(20);
    const plan = writtenPlan(ground.placing.taken);
    expect(violations(plan, problem)).toEqual([]);
    const start = Object.fromEntries(plan.steps.map(({ step, start: at }) => [step, at]));
    expect([start['one, together'], start['other, together']].sort()).toEqual([640, 660]);
  }
});
