import { describe, expect, it } from 'vitest';
import { keptBand, keptFactors, keptLearnt } from './sun-kept.ts';

const within = (value: number, share: number) => ({
  low: value * (1 - share),
  likely: value,
  high: value * (1 + share),
});
const pairs = (expected: number, brought: number, count: number) =>
  Array.from({ length: count }, () => ({ expected_Ah: within(expected, 0.3), brought_Ah: within(brought, 0.15) }));
const before = keptBand(null);

describe('what the rig leaves of the sun', () => {
  it('without a reading is what the keeper guessed', () => {
    expect(keptLearnt(before, [])).toEqual(before);
    expect(keptLearnt(before, pairs(0, 0, 3))).toEqual(before);
    expect(keptBand(60).likely).toBe(0.6);
    expect(() => keptBand(120)).toThrow(/got 120 %/);
  });

  it('goes to what the readings say, and is surer the more there are', () => {
    const few = keptLearnt(before, pairs(3, 1.5, 2));
    const many = keptLearnt(before, pairs(3, 1.5, 20));
    expect(many.likely).toBeCloseTo(0.5, 1);
    expect(few.likely).toBeLessThan(before.likely);
    expect(many.high - many.low).toBeLessThan(0.6 * (few.high - few.low));
    expect(many.low).toBeLessThan(0.5);
    expect(many.high).toBeGreaterThan(0.5);
  });

  it('is near the sum of two normal spreads for one pair, done by hand', () => {
    // guess 0.6 within 0.1645 (spread 0.1), one pair that says 0.6 too: the middle stays, the band is narrower
    const guess = { low: 0.4355, likely: 0.6, high: 0.7645 };
    const one = keptLearnt(guess, pairs(2, 1.2, 1));
    expect(one.likely).toBeCloseTo(0.6, 1);
    expect(one.high - one.low).toBeLessThan(guess.high - guess.low);
  });

  it('is not carried away by one day that was misjudged', () => {
    const good = pairs(3, 2.4, 8);
    const odd = { expected_Ah: within(3, 0.3), brought_Ah: within(0.2, 0.15) };
    expect(Math.abs(keptLearnt(before, [...good, odd]).likely - keptLearnt(before, good).likely)).toBeLessThan(0.05);
  });

  it('refuses a band out of order', () => {
    expect(() => keptLearnt({ low: 1, likely: 0.5, high: 1 }, [])).toThrow(/got 1, 0.5, 1/);
  });

  it('comes in factors whose middle is the guess with dirt and label taken off', () => {
    const factors = keptFactors(keptBand(80)).sort((a, b) => a - b);
    expect(factors[4]!).toBeCloseTo(0.8 * 0.9, 2);
    for (const each of factors) expect(each).toBeLessThanOrEqual(1);
  });
});
