import { describe, expect, it } from 'vitest';
import type { Problem } from '../problem.ts';
import { aStep, hoursBut, problemWith, theDay } from '../rules/smallest-plan.ts';
import { startSearch } from '../search.ts';

function obstacleOf(problem: Problem) {
  const search = startSearch(problem, { seed: 1 });
  search.advance(20);
  return search.outcome().obstacles[0];
}

/** Two job days of two hours; a coat of 100 minutes that must be dry and calm. */
function twoDays(hours: Problem['hours']): Problem {
  return problemWith([aStep('coat', { minutes: 100, needs: { dry: true, wind_max_kn: 12 } })], {
    days: [theDay, { ...theDay, id: 'next', from: 2040, to: 2160 }],
    horizon: 2880,
    hours,
    hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 2880 }] }],
    daylight: [
      { from: 300, to: 1260 },
      { from: 1740, to: 2700 },
    ],
  });
}

describe('the weather that stands in the way', () => {
  it('is the condition that limits the day told of, not another that limits another day', () => {
    // the first day is wet all through but for nothing else; the second has an hour that is dry and calm, then wind
    const problem = twoDays([
      ...hoursBut({ 10: { rain: true }, 11: { rain: true } }),
      ...hoursBut({ 11: { wind_kn: 20 } }),
    ]);
    expect(obstacleOf(problem)).toMatchObject({
      kind: 'weather',
      condition: 'wind_max_kn',
      best_min: 60,
      bestDay: 'next',
      need_min: 100,
    });
  });

  it('changes when that condition is taken away', () => {
    const problem = twoDays([
      ...hoursBut({ 11: { rain: true } }),
      ...hoursBut({ 10: { wind_kn: 20 }, 11: { wind_kn: 20 } }),
    ]);
    expect(obstacleOf(problem)).toMatchObject({ condition: 'dry', best_min: 60, bestDay: 'day' });
    const dry = { ...problem, hours: problem.hours.map((hour) => ({ ...hour, rain: false })) };
    expect(obstacleOf(dry)).toBeUndefined();
  });

  it('where no one condition is enough, is the one that fewest hours meet', () => {
    const [both, wind, rain] = [{ rain: true, wind_kn: 20 }, { wind_kn: 20 }, { rain: true }];
    // wind in all four hours of work, rain in the first of each day; then the other way round
    const windy = hoursBut({ 10: both, 11: wind });
    expect(obstacleOf(twoDays([...windy, ...windy]))).toMatchObject({ condition: 'wind_max_kn', best_min: 0 });
    const wet = hoursBut({ 10: both, 11: rain });
    expect(obstacleOf(twoDays([...wet, ...wet]))).toMatchObject({ condition: 'dry', best_min: 0 });
  });
});
