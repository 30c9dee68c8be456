import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type Day } from '#units';
import { betaQuantile, betaShareBelow, countBand } from './beta-share.ts';
import { daysUntilUse, keptUse, type UseCount } from './use-rate.ts';

const today = '2026-05-08' as Day;
const on = (days: number) => addDays(today, days);

describe('the beta distribution', () => {
  it('is known where it has a plain form', () => {
    // (1, 1) is even; (a, 1) is x^a; (2, 3): 1 − (1−x)³(1+3x) worked out by hand from the binomial of 4
    expect(betaShareBelow(0.3, 1, 1)).toBeCloseTo(0.3, 10);
    expect(betaShareBelow(0.3, 4, 1)).toBeCloseTo(0.3 ** 4, 10);
    expect(betaShareBelow(0.3, 2, 3)).toBeCloseTo(1 - 0.7 ** 3 * (1 + 3 * 0.3), 10);
    expect(betaShareBelow(0.5, 40.5, 40.5)).toBeCloseTo(0.5, 10);
  });

  it('its quantile is the way back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 0.3, max: 200, noNaN: true }),
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        (share, a, b) => {
          const x = betaQuantile(share, a, b);
          if (x > 1e-12 && x < 1 - 1e-12) expect(betaShareBelow(x, a, b)).toBeCloseTo(share, 8);
        },
      ),
    );
  });
});

describe('the pace of use', () => {
  it('looks back a year, or to where writing down began', () => {
    const sails = (...days: number[]): UseCount[] => days.map((n) => ({ use: 'sail', on: on(n), count: 1 }));
    expect(keptUse('sail', sails(-500, -300, -10), today)).toMatchObject({ entries: 2, total: 2, days: 365 });
    expect(keptUse('sail', sails(-59, -10), today)).toMatchObject({ entries: 2, days: 60 });
    expect(keptUse('sail', sails(-3), today)).toMatchObject({ entries: 1, days: 30 });
    expect(keptUse('tow', sails(-59, -10), today)).toMatchObject({ entries: 0, days: 60 });
  });

  it('is as wide as the times seen are few', () => {
    const kept = (entries: number) => ({ use: 'tow', entries, total: entries, days: 365, squares: entries }) as const;
    const few = daysUntilUse(2, kept(4), [], today)!;
    const many = daysUntilUse(20, kept(40), [], today)!;
    // half a year of that pace either way: the median lies near it
    expect(many.likely).toBeGreaterThan(160);
    expect(many.likely).toBeLessThan(200);
    expect(few.high / few.low).toBeGreaterThan(many.high / many.low);
  });

  it('holds eight of ten of what then comes, played out', () => {
    // an owner whose pace is drawn from what Jeffreys' prior says of 9 seen in 365 days, then plays it: by gammas as sums of
    // exponentials and half a squared normal, which is another way than the beta distribution
    let seed = 20261126;
    const chance = () => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return (seed + 0.5) / 2 ** 32;
    };
    const wait = () => -Math.log(chance());
    const sum = (n: number) => Array.from({ length: n }, wait).reduce((a, b) => a + b, 0);
    const halfSquare = () => wait() * Math.cos(2 * Math.PI * chance()) ** 2;
    const band = daysUntilUse(5, { use: 'sail', entries: 9, total: 9, days: 365, squares: 9 }, [], today)!;
    const days = Array.from({ length: 20_000 }, () => (365 * sum(5)) / (sum(9) + halfSquare()));
    const below = (limit: number) => days.filter((each) => each <= limit).length / days.length;
    expect(Math.abs(below(band.low) - 0.1)).toBeLessThan(0.012);
    expect(Math.abs(below(band.likely) - 0.5)).toBeLessThan(0.012);
    expect(Math.abs(below(band.high) - 0.9)).toBeLessThan(0.012);
  });

  it('an outing in the book is sure use', () => {
    const kept = { use: 'sail', entries: 0, total: 0, days: 365, squares: 0 } as const;
    expect(daysUntilUse(1, kept, [], today)).toBeNull();
    expect(daysUntilUse(1, kept, [{ use: 'sail', on: on(12), count: 1 }], today)).toEqual({
      low: 0,
      likely: 12,
      high: 12,
    });
    expect(daysUntilUse(2, kept, [{ use: 'sail', on: on(12), count: 1 }], today)).toBeNull();
  });
});

describe('the band of a count', () => {
  it.each([
    // a calculator's page on the exact band of a count of 25 (Garwood's way): 90, 95 and 99 %
    [25, 0.9, 17.38, 34.92],
    [25, 0.95, 16.18, 36.9],
    [25, 0.99, 14.0, 41.0],
    // another's page: 10 seen, and none seen
    [10, 0.95, 4.8, 18.39],
    [0, 0.95, 0, 3.69],
  ])('of %i, sure to %f, is %f to %f', (count, sure, low, high) => {
    const band = countBand(count, sure);
    expect(Math.abs(band.low - low)).toBeLessThan(0.006);
    expect(Math.abs(band.high - high)).toBeLessThan(0.006);
  });
  it('refuses what is no count', () => {
    expect(() => countBand(2.5, 0.8)).toThrow(/whole number/);
    expect(() => countBand(2, 1)).toThrow(/confidence/);
  });
  it('holds the count, and grows with what is asked of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), (count) => {
        const wide = countBand(count, 0.95);
        const near = countBand(count, 0.8);
        expect(wide.low <= near.low && near.low <= count && count <= near.high && near.high <= wide.high).toBe(true);
      }),
    );
  });
});
