import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fairHour, hoursBut, problemWith } from '../rules/smallest-plan.ts';
import { Dice } from '../search/dice.ts';
import { chanceOf } from './chance.ts';
import { normalShare } from './normal-share.ts';
import { stepTimes, timeAt } from './step-times.ts';
import { normal, rainChance, WeatherDraws } from './weather-draws.ts';

describe('chance', () => {
  it('has the band of Wilson', () => {
    // by hand for 8 of 10: p = 0.8, z²/2n = 0.19207, z²/4n² = 0.0096036, spread 1.96·√(0.016 + 0.0096036) = 0.31362,
    // whole 1.38415: (0.8 + 0.19207 ∓ 0.31362) / 1.38415
    const { low, high } = chanceOf(8, 10);
    expect(low).toBeCloseTo(0.4902, 3);
    expect(high).toBeCloseTo(0.9433, 3);
  });

  it('keeps the share within its band, and the band within 0 and 1', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.double({ min: 0, max: 1, noNaN: true }), (runs, part) => {
        const { share, low, high } = chanceOf(Math.round(part * runs), runs);
        expect(0 <= low && low <= share && share <= high && high <= 1).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it('refuses more times than runs', () => {
    expect(() => chanceOf(3, 2)).toThrow(RangeError);
    expect(() => chanceOf(0, 0)).toThrow(RangeError);
  });
});

describe('share of a normal quantity', () => {
  it('agrees with its own power series', () => {
    // Φ(z) = ½ + φ(z)·(z + z³/3 + z⁵/15 + z⁷/105 + …), term by term
    for (let z = -4; z <= 4; z += 0.125) {
      let [term, sum] = [z, z];
      for (let n = 3; n < 200; n += 2) {
        term *= (z * z) / n;
        sum += term;
      }
      const exact = 0.5 + (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * sum;
      expect(Math.abs(normalShare(z) - exact)).toBeLessThan(7.5e-8);
    }
  });
});

describe('how long a step takes', () => {
  it('lies outside low to high one time in ten, whatever the three are', () => {
    for (const [low, likely, high] of [
      [40, 60, 100],
      [55, 60, 61],
      [10, 30, 120],
    ] as const) {
      const times = stepTimes(low, likely, high);
      const dice = new Dice(5);
      let outside = 0;
      for (let n = 0; n < 20_000; n++) {
        const time = timeAt(times, dice.share());
        if (time < low || time > high) outside++;
      }
      // 0.1 ± 0.0042 (two sampling errors of 20 000), and the width of a cell
      expect(outside / 20_000).toBeGreaterThan(0.09);
      expect(outside / 20_000).toBeLessThan(0.11);
    }
  });

  it('is a quantity of Beta(3, 3) where low and high are as far away', () => {
    // Beta(3, 3): half lies under the middle; P(under a quarter of the way) = 10/4³ − 15/4⁴ + 6/4⁵ = 0.103516
    const times = stepTimes(80, 100, 120);
    const [a, b] = [times.quantiles[0]!, times.quantiles.at(-1)!];
    expect(timeAt(times, 0.5)).toBeCloseTo(100, 1);
    expect(timeAt(times, 0.103516)).toBeCloseTo(a + (b - a) / 4, 0);
  });

  it('is certain where low and high are the same', () => {
    const times = stepTimes(30, 30, 30);
    expect([0, 0.3, 1].map((share) => timeAt(times, share))).toEqual([30, 30, 30]);
  });

  it('rises with the share, and takes no time that is not more than 0', () => {
    const three = fc.tuple(...[1, 2, 3].map(() => fc.integer({ min: 1, max: 400 })));
    fc.assert(
      fc.property(three, (any) => {
        const [low, likely, high] = [...any].sort((a, b) => a - b) as [number, number, number];
        const { quantiles } = stepTimes(low, likely, high);
        expect(quantiles[0]).toBeGreaterThan(0);
        for (let at = 1; at < quantiles.length; at++) expect(quantiles[at]!).toBeGreaterThanOrEqual(quantiles[at - 1]!);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it('refuses a high under the likely', () => {
    expect(() => stepTimes(10, 20, 15)).toThrow(RangeError);
  });
});

describe('the weather that may come', () => {
  const odds = (pct: number) =>
    hoursBut(Object.fromEntries([9, 10, 11, 12, 13].map((h) => [h, { rainOdds_pct: pct }])));
  const runs = 20_000;

  function drawn(pct: number) {
    const draws = new WeatherDraws(problemWith([], { hours: odds(pct) }));
    const dice = new Dice(3);
    let [allDry, nine] = [0, 0];
    for (let n = 0; n < runs; n++) {
      draws.draw(dice);
      const five = draws.hours.slice(9, 14);
      if (!five[0]!.rain) nine++;
      if (five.every(({ rain }) => !rain)) allDry++;
    }
    return { allDry: allDry / runs, nine: nine / runs };
  }

  it('keeps each hour’s own chance', () => {
    // two sampling errors of 20 000 at 0.8: 0.0057
    expect(drawn(20).nine).toBeGreaterThan(0.794);
    expect(drawn(20).nine).toBeLessThan(0.806);
  });

  it('keeps spells: five hours at 80 % dry are all dry far more often than the 33 of 100 of independent hours', () => {
    expect(0.8 ** 5).toBeCloseTo(0.328, 3);
    const { allDry } = drawn(20);
    expect(allDry).toBeGreaterThan(0.55);
    // and no more often than the driest of them alone
    expect(allDry).toBeLessThan(0.8);
  });

  it('trusts a forecast less the further ahead', () => {
    const chances = [0, 1, 3, 7].map((days) => [
      rainChance(fairHour, days),
      rainChance({ ...fairHour, rain: true }, days),
    ]);
    for (let n = 1; n < chances.length; n++) {
      expect(chances[n]![0]).toBeGreaterThan(chances[n - 1]![0]!);
      expect(chances[n]![1]).toBeLessThan(chances[n - 1]![1]!);
    }
    for (const [dry, wet] of chances) expect(dry!).toBeLessThan(wet!);
  });

  it('is off in its air by no more than the source of the spread has it, on the day itself', () => {
    // 95.1 % of the same day's temperatures within 2 °C; here at 5 hours ahead, spread 1.07 °C: 93.8 %
    const draws = new WeatherDraws(problemWith([]));
    const dice = new Dice(8);
    let near = 0;
    for (let n = 0; n < 5000; n++) {
      draws.draw(dice);
      if (Math.abs(draws.hours[5]!.air_C - fairHour.air_C) <= 2) near++;
    }
    expect(near / 5000).toBeGreaterThan(0.92);
    expect(near / 5000).toBeLessThan(0.96);
  });

  it('leaves hours nobody has looked at, and hours gone by, as the plan takes them', () => {
    const hours = hoursBut({ 3: { rain: true, basis: 'climate' } });
    const draws = new WeatherDraws(problemWith([], { hours, now: 120 }));
    const dice = new Dice(1);
    for (let n = 0; n < 50; n++) {
      draws.draw(dice);
      expect([0, 1, 3].map((hour) => draws.hours[hour])).toEqual([0, 1, 3].map((hour) => hours[hour]));
    }
  });

  it('has normal quantities of mean 0 and spread 1', () => {
    const dice = new Dice(2);
    const values = Array.from({ length: 20_000 }, () => normal(dice));
    expect(values.reduce((sum, v) => sum + v, 0) / 20_000).toBeCloseTo(0, 1);
    expect(values.reduce((sum, v) => sum + v * v, 0) / 20_000).toBeCloseTo(1, 1);
  });
});
