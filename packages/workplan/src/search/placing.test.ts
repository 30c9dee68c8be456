import { describe, expect, it } from 'vitest';
import type { Problem, ProblemDay, SetUpAspect } from '../problem.ts';
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

describe('of eight days on the last', () => {
  const horizon = 1440 * 8;
  const days = Array.from(
    { length: 8 },
    (_, n): ProblemDay => ({
      ...theDay,
      id: `day-${n}`,
      from: 1440 * n + 600,
      to: 1440 * n + 720,
      features: n === 7 ? ['water'] : [],
    }),
  );
  const hours = Array.from({ length: 24 * 8 }, (_, hour) => ({ ...fairHour, wind_kn: hour < 24 * 7 ? 20 : 5 }));
  const begun = 1440 * 7 + 600;
  const long = {
    horizon,
    days,
    hours,
    hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: horizon }] }],
    daylight: [{ from: 0, to: horizon }],
  };
  const startOf = (problem: Problem) => {
    const placing = new Placing(compile(problem));
    expect(placing.placeStep(0, 0, Number.POSITIVE_INFINITY)).toBe(true);
    expect(violations(writtenPlan(placing.taken), problem)).toEqual([]);
    return placing.taken.start[0]!;
  };

  it('the mast is raised though all days before must end with it down', () => {
    // to raise it the cover is off first, and both go back that day
    const mast = {
      ...theMast,
      initial: 'down',
      changes: theMast.changes.map((change) => ({ ...change, setUps: [{ aspect: 'cover', states: ['off'] }] })),
    };
    const endsIn = [
      { aspect: 'cover', state: 'on' },
      { aspect: 'mast', state: 'down' },
    ];
    const step = aStep('rig', { features: ['water'], setUps: [{ aspect: 'mast', states: ['up'] }] });
    const problem = problemWith([step], {
      ...long,
      days: days.map((day) => ({ ...day, endsIn })),
      aspects: [mast, theCover],
    });
    // cover 5, mast 5
    expect(startOf(problem)).toBeGreaterThanOrEqual(begun + 10);
  });

  describe('what can only be changed where another set-up stands', () => {
    const change = { minutes: 5, hands: 1, needs: {}, setUps: [] };
    const boat: SetUpAspect = {
      ...theMast,
      id: 'boat',
      states: ['trailer', 'propped'].map((id) => ({ id, name: id, shelters: false })),
      initial: 'trailer',
      changes: [
        { ...change, from: 'trailer', to: 'propped', needs: { wind_max_kn: 15 } },
        { ...change, from: 'propped', to: 'trailer', setUps: [{ aspect: 'board', states: ['housed'] }] },
      ],
    };
    const propped = [{ aspect: 'boat', states: ['propped'] }];
    const board: SetUpAspect = {
      ...theMast,
      id: 'board',
      states: ['housed', 'lowered'].map((id) => ({ id, name: id, shelters: false })),
      initial: 'housed',
      changes: [
        { ...change, from: 'housed', to: 'lowered', setUps: propped },
        { ...change, from: 'lowered', to: 'housed', setUps: propped },
      ],
    };
    const step = aStep('wire', { setUps: [...propped, { aspect: 'board', states: ['lowered'] }] });

    it('is changed then, though wind keeps that one from all days before', () => {
      // boat 5, board 5
      expect(startOf(problemWith([step], { ...long, aspects: [boat, board] }))).toBeGreaterThanOrEqual(begun + 10);
    });

    it('is changed back too before that one must be', () => {
      const endsIn = [{ aspect: 'boat', state: 'trailer' }];
      const problem = problemWith([step], {
        ...long,
        days: days.map((day) => ({ ...day, endsIn })),
        aspects: [boat, board],
      });
      expect(startOf(problem)).toBeGreaterThanOrEqual(begun + 10);
    });
  });
});
