import { describe, expect, it } from 'vitest';
import {
  batchesWithin,
  catalystAdvice,
  catalystAmount,
  partsOf,
  potLife_min,
  potLives,
  pumpStrokes,
} from './mixing.ts';

describe('catalyst', () => {
  it('goes by the chart, and not past either end of it', () => {
    expect([13, 15.9, 16, 19.9, 20, 35].map((t) => catalystAdvice(t, 'laminating'))).toEqual(
      [3, 3, 2, 2, 1, 1].map((pct) => ({ kind: 'found', pct })),
    );
    expect(catalystAdvice(12.9, 'laminating')).toEqual({ kind: 'too cold', least_C: 13 });
    expect(catalystAdvice(35.1, 'gelcoat')).toEqual({ kind: 'too warm', most_C: 35 });
    expect(catalystAdvice(30, 'gelcoat')).toEqual({ kind: 'found', pct: 2 });
  });

  it('of 2 % in 1 kg is 20 g, 20 ml as sellers count and 17.4 ml by its density', () => {
    const { mass_g, byChart_ml, byDensity_ml, drops } = catalystAmount(1000, 2);
    expect([mass_g, byChart_ml]).toEqual([20, 20]);
    expect(byDensity_ml).toBeCloseTo(20 / 1.15);
    expect(drops.low).toBeLessThan(drops.high);
  });
});

describe('pot life', () => {
  it('halves for a rise that doubles the rate, for four times the mass, and for twice the catalyst', () => {
    const slow = potLives['epoxy-slow']!;
    expect(potLife_min(slow, 20 + 8.75, 100)).toBeCloseTo(17.5);
    expect(potLife_min(slow, 20, 400)).toBeCloseTo(17.5);
    // a small pot is not credited with more than it is said of
    expect(potLife_min(slow, 20, 10)).toBeCloseTo(35);
    expect(potLife_min(potLives['polyester-resin']!, 20, 500, 4)).toBeCloseTo(8.75);
  });
});

describe('batches', () => {
  it('are as few as can each be used in the time, and none too big for a cup', () => {
    // 60 g used in 12 min with 3 min of mixing: 15 of the 14 min there are at 0.7 · 20, so two of 30 g in 3 + 6
    expect(batchesWithin(60, 12, 3, 100, () => 20)).toEqual({
      kind: 'batches',
      count: 2,
      each_g: 30,
      potLife_min: 20,
      use_min: 9,
    });
    expect(batchesWithin(250, 0, 1, 100, () => 20)).toMatchObject({ count: 3 });
    expect(batchesWithin(250, 0, 1, null, () => 20)).toMatchObject({ count: 1 });
  });

  it('are none where mixing alone takes the pot life', () => {
    expect(batchesWithin(60, 12, 5, 100, () => 6)).toEqual({ kind: 'goes off first', potLife_min: 6 });
  });
});

it('parts by their ratio, and strokes of the pumps rounded up', () => {
  expect(partsOf(90, 2, 1)).toEqual({ resin: 60, hardener: 30 });
  expect([pumpStrokes(100, 25), pumpStrokes(101, 25)]).toEqual([4, 5]);
});
