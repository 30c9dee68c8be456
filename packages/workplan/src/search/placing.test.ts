import { expect, it } from 'vitest';
import type { ProblemDay } from '../problem.ts';
import { aStep, fairHour, problemWith, theCover, theDay, theMast } from '../rules/smallest-plan.ts';
import { violations } from '../violations.ts';
import { type Compiled, compile } from './compiled.ts';
import { Placing } from './placing.ts';
import { writtenPlan } from './written-plan.ts';

it('a placing begun again places as a new one does where the first stretches of work are gone by', () => {
  const breaks = [
    { from: 630, to: 640 },
    { from: 660, to: 665 },
    { from: 690, to: 692 },
  ];
  const steps = [aStep('long', { minutes: 25 }), aStep('short'), aStep('other')];
  const compiled = compile(problemWith(steps, { days: [{ ...theDay, breaks }] }));
  const left: { -readonly [K in keyof Compiled]: Compiled[K] } = { ...compiled };
  const again = new Placing(left);
  const startsOf = (placing: Placing) =>
    compiled.steps.map(({ index }) => {
      placing.placeStep(index, 0, Number.POSITIVE_INFINITY);
      return placing.taken.start[index];
    });
  expect(startsOf(again)).toEqual([600, 640, 650]);
  left.stretches = compiled.stretches.slice(2);
  left.now = 665;
  again.beginAgain(-1);
  const anew = startsOf(new Placing(left));
  expect(anew).toEqual([665, 692, 702]);
  expect(startsOf(again)).toEqual(anew);
});

it('the mast is raised on the day it is asked for, however many days before must end with it down', () => {
  // of eight days the last alone has water; to raise the mast the cover is off first, and both go back that day
  const days = Array.from(
    { length: 8 },
    (_, n): ProblemDay => ({
      ...theDay,
      id: `day-${n}`,
      from: 1440 * n + 600,
      to: 1440 * n + 720,
      features: n === 7 ? ['water'] : [],
      endsIn: [
        { aspect: 'cover', state: 'on' },
        { aspect: 'mast', state: 'down' },
      ],
    }),
  );
  const horizon = 1440 * 8;
  const mast = {
    ...theMast,
    initial: 'down',
    changes: theMast.changes.map((change) => ({ ...change, setUps: [{ aspect: 'cover', states: ['off'] }] })),
  };
  const step = aStep('rig', { features: ['water'], setUps: [{ aspect: 'mast', states: ['up'] }] });
  const problem = problemWith([step], {
    horizon,
    days,
    aspects: [mast, theCover],
    hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: horizon }] }],
    hours: Array.from({ length: 24 * 8 }, () => fairHour),
    daylight: [{ from: 0, to: horizon }],
  });
  const placing = new Placing(compile(problem));
  expect(placing.placeStep(0, 0, Number.POSITIVE_INFINITY)).toBe(true);
  // cover 5, mast 5
  expect(placing.taken.start[0]).toBeGreaterThanOrEqual(1440 * 7 + 600 + 10);
  expect(violations(writtenPlan(placing.taken), problem)).toEqual([]);
});
