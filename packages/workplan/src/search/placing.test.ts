import { expect, it } from 'vitest';
import { aStep, problemWith, theDay } from '../rules/smallest-plan.ts';
import { type Compiled, compile } from './compiled.ts';
import { Placing } from './placing.ts';

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
