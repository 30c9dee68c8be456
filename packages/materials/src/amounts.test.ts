import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beadVolume_ml, coatVolume_l, drilledOut_m, plugVolume_ml } from './amounts.ts';

describe('how much it takes', () => {
  it('is area over spread for paint, coat by coat', () => {
    // 6 m², two coats, 12 m² a litre: 6 · 2 / 12 = 1 l
    expect(coatVolume_l(6, 2, 12)).toBeCloseTo(1, 12);
  });
  it('is the cylinder of the hole drilled out, for holes to fill', () => {
    // 4 bolts of 8 mm through 20 mm: 18 mm holes, 5 mm all round, π/4 · 1.8² · 2 cm³ = 5.089 ml each; 12 mm: twice it, 24 mm
    expect(drilledOut_m(0.008)).toBeCloseTo(0.018, 12);
    expect(drilledOut_m(0.012)).toBeCloseTo(0.024, 12);
    expect(plugVolume_ml(4, 0.018, 0.02)).toBeCloseTo(20.358, 3);
  });
  it('grows in proportion to length, and a round bead is π/2 of the fillet of its size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 0.001, max: 0.06, noNaN: true }),
        (l, a) => {
          expect(beadVolume_ml(2 * l, 'round', a, 0) / beadVolume_ml(l, 'round', a, 0)).toBeCloseTo(2, 9);
          expect(beadVolume_ml(l, 'round', a, 0) / beadVolume_ml(l, 'fillet', a, 0)).toBeCloseTo(Math.PI / 2, 9);
        },
      ),
    );
  });
});
