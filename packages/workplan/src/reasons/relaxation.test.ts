import { describe, expect, it } from 'vitest';
import { unmetConditions } from '#sky';
import { checkProblem } from '../check-problem.ts';
import { aStep, fairHour, hoursBut, problemWith, theDay } from '../rules/smallest-plan.ts';
import { addedDay, addedHand, compareEase, fitHour, type Relaxation, relaxed } from './relaxation.ts';

describe('a changed problem', () => {
  const base = problemWith(
    [aStep('a', { tools: [{ tool: 'drill', count: 1 }], stores: ['pin'] }), aStep('b', { job: 'other' })],
    {
      tools: [{ id: 'drill', name: 'drill', capacity: [{ from: 600, to: 700, count: 1 }] }],
      stores: [{ id: 'pin', name: 'pin', from: null }],
      jobs: [
        { id: 'job', title: 'job', weight: 10, deadline: 650, optional: true },
        { id: 'other', title: 'other', weight: 5, deadline: null, optional: true },
      ],
    },
  );
  const all: Relaxation[] = [
    { kind: 'freed', job: 'job' },
    { kind: 'stores by', stores: ['pin'], by: 540 },
    { kind: 'tool', tool: 'drill', more: 1 },
    { kind: 'earlier start', day: 'day', minutes: 60, from: 540 },
    { kind: 'later end', day: 'day', minutes: 30, to: 750 },
    { kind: 'second hand', day: 'day', from: 660, to: 720 },
    { kind: 'fit hours', day: 'day', from: 600, to: 660, hours: 1, needs: { dry: true } },
    { kind: 'place', day: 'day', feature: 'mains' },
    { kind: 'without job', job: 'other' },
    { kind: 'later date', job: 'job', days: 1, deadline: 1440 },
    { kind: 'another day', like: 'day', from: 2040, to: 2160, needs: null },
  ];

  it.each(all)('is a sound problem: $kind', (relaxation) => {
    const changed = relaxed(base, relaxation);
    expect(checkProblem(JSON.parse(JSON.stringify(changed)))).toMatchObject({ kind: 'sound' });
  });

  it('changes the one thing it names', () => {
    expect(relaxed(base, all[1]!).stores).toEqual([{ id: 'pin', name: 'pin', from: 540 }]);
    // one more of the drill while there is one, and one while there was none
    expect(relaxed(base, all[2]!).tools[0]!.capacity.map(({ from, to, count }) => [from, to, count])).toEqual([
      [0, 600, 1],
      [600, 700, 2],
      [700, 1440, 1],
    ]);
    expect(relaxed(base, all[3]!).days).toEqual([{ ...theDay, from: 540 }]);
    expect(relaxed(base, all[5]!).hands.at(-1)).toMatchObject({ id: addedHand, present: [{ from: 660, to: 720 }] });
    expect(relaxed(base, all[8]!).jobs.map(({ id }) => id)).toEqual(['job']);
    expect(relaxed(base, all[9]!).jobs[0]!.deadline).toBe(1440);
  });

  it('a job day past the horizon has a horizon, hours, light and a keeper of its own', () => {
    const changed = relaxed(base, all[10]!);
    expect(changed.horizon).toBe(2880);
    expect(changed.hours).toHaveLength(48);
    expect(changed.hands[0]!.present).toEqual([{ from: 0, to: 2880 }]);
    expect(changed.daylight).toEqual([
      { from: 300, to: 1260 },
      { from: 1740, to: 2700 },
    ]);
    expect(changed.days.map(({ id, from, to }) => [id, from, to])).toEqual([
      ['day', 600, 720],
      [addedDay, 2040, 2160],
    ]);
  });

  it('hours are changed no further than the conditions ask, and those that meet them not at all', () => {
    const wet = { ...fairHour, rain: true, wind_kn: 20, air_C: 8, humidity_pct: 95 };
    const needs = { dry: true, wind_max_kn: 12, air_min_C: 10, dewMargin_min_C: 3 } as const;
    const fit = fitHour(wet, needs);
    expect(unmetConditions(needs, fit)).toEqual([]);
    expect(fit).toMatchObject({ rain: false, wind_kn: 12, air_C: 10 });
    // one percent more and the margin over the dew point is gone
    expect(unmetConditions(needs, { ...fit, humidity_pct: fit.humidity_pct + 1 })).toEqual(['dewMargin_min_C']);
    expect(fitHour(fairHour, needs)).toBe(fairHour);
    const problem = { ...base, hours: hoursBut({ 10: { rain: true }, 11: { rain: true } }) };
    expect(relaxed(problem, all[6]!).hours.flatMap(({ rain }, hour) => (rain ? [hour] : []))).toEqual([11]);
  });

  it('the easiest comes first, and of one kind the one that asks least', () => {
    const order = (list: Relaxation[]) => list.sort((a, b) => compareEase(a, b, base)).map(({ kind }) => kind);
    expect(order([all[8]!, all[6]!, all[5]!, all[3]!, all[1]!])).toEqual([
      'stores by',
      'earlier start',
      'second hand',
      'fit hours',
      'without job',
    ]);
    expect(
      compareEase(all[4]!, { kind: 'later end', day: 'day', minutes: 45, to: 765 }, base),
      '30 minutes before 45',
    ).toBeLessThan(0);
    // a store that may come later asks less
    expect(compareEase(all[1]!, { kind: 'stores by', stores: ['pin'], by: 600 }, base)).toBeGreaterThan(0);
  });
});
