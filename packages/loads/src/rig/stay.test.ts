import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { takenUpByTurn_mm } from './rigging-screw.ts';
import { slackBySway_m, tensionBySidewaysPull } from './stay-sideways.ts';
import { shareSays, stayLoadByStretch, stiffness_N, stretchByRule_m } from './wire-stretch.ts';

describe('a stay by its stretch', () => {
  it('is at 5 % of breaking for a millimetre in two metres of 1x19, whatever its size', () => {
    // the spar maker's folding rule (sail-delmarva.blogspot.com, 2015)
    for (const size of [3, 4, 6]) expect(stayLoadByStretch('1x19', size, 1 / 2000).byRule_pct).toBeCloseTo(5, 9);
    expect(stretchByRule_m(2, 0.05)).toBeCloseTo(0.001, 12);
  });

  it('bears between what the rule says and what the modulus says', () => {
    // 4 mm: 107.5 kN/mm² on 12.566 mm² stretched 1 in 1000 is 1351 N; the rule: 10 % of 12 600 N is 1260 N
    const load = stayLoadByStretch('1x19', 4, 1 / 1000);
    expect(load.low_N).toBeCloseTo(1260, 6);
    expect(load.high_N).toBeCloseTo(1350.9, 1);
    expect(load.tension_N).toBeCloseTo((1260 + 1350.9) / 2, 1);
  });

  it('has a tension but no share where no table has the size', () => {
    const load = stayLoadByStretch('7x7', 4.5, 1 / 1000);
    expect(load.share_pct).toBeNull();
    expect(load.tension_N).toBeCloseTo(stiffness_N('7x7', 4.5) / 1000, 9);
    expect(load.low_N).toBeLessThan(load.tension_N);
  });

  it('is said to be slack, usual, or too tight', () => {
    expect(shareSays(1)).toBe('slack');
    expect(shareSays(17)).toContain('within');
    expect(shareSays(30)).toContain('ease it');
  });
});

describe('a rigging screw', () => {
  it('takes up two pitches a turn where both ends are threaded', () => {
    // 5/16 in unified fine has 24 threads to the inch (ASME B1.1, from memory)
    expect(takenUpByTurn_mm({ thread: 'unf-5-16', ends: 'both' })).toBeCloseTo((2 * 25.4) / 24, 12);
    expect(takenUpByTurn_mm({ thread: 'm8', ends: 'one' })).toBe(1.25);
  });
});

describe('a stay pulled sideways', () => {
  it('in the middle holds a quarter of pull times length over how far it came, for a small way', () => {
    // textbook cable with a load in its middle: T ≈ F·L/(4·δ), from memory
    const { pulled_N } = tensionBySidewaysPull({ length_m: 8, pulledAt_m: 4, pull_N: 100, aside_m: 0.05 }, 1e6);
    expect(pulled_N / ((100 * 8) / (4 * 0.05))).toBeCloseTo(1, 3);
  });

  test('holds less at rest than while pulled, and more where it came aside less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 15, noNaN: true }),
        fc.double({ min: 0.1, max: 0.5, noNaN: true }),
        fc.double({ min: 10, max: 500, noNaN: true }),
        fc.double({ min: 0.002, max: 0.2, noNaN: true }),
        (length_m, share, pull_N, aside_m) => {
          const at = (aside: number) =>
            tensionBySidewaysPull({ length_m, pulledAt_m: share * length_m, pull_N, aside_m: aside }, 1.35e6);
          expect(at(aside_m).atRest_N).toBeLessThan(at(aside_m).pulled_N);
          expect(at(aside_m * 0.9).atRest_N).toBeGreaterThan(at(aside_m).atRest_N);
        },
      ),
    );
  });

  it('that sways 100 mm to either side on 8 m is 2.5 mm too long', () => {
    // 2·s²/L: 2·0.01/8 m
    expect(1000 * slackBySway_m(8, 0.1)).toBeCloseTo(2.5, 2);
  });
});
