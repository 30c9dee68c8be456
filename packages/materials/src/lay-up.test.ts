import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laminateThickness_m, type Thickener, type Thickness, thickeners, thickMix } from './lay-up.ts';
import { beadDepth_mm, endMovement_mm, jointWidth_mm } from './moving-joint.ts';

describe('thickened epoxy', () => {
  it('is resin and filler with no air between', () => {
    // silica: 1.5 tubs of 50 kg/m³ to one of epoxy, solid at 2,200: 1 + 1.5·50/2200 = 1.0341, so 100 ml is 96.7 ml and 145 ml, 7.25 g
    const mix = thickMix('silica', 'stands', 100);
    expect(mix.resin_ml).toBeCloseTo(96.7, 1);
    expect(mix.filler_ml).toBeCloseTo(145.1, 1);
    expect(mix.filler_g).toBeCloseTo(7.25, 2);
  });

  it('weighs what went into it, and microballoons alone make it lighter than it was', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(thickeners) as Thickener[])),
        fc.constantFrom<Thickness>('runs', 'sags', 'stands'),
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        (thickener, thickness, ml) => {
          const mix = thickMix(thickener, thickness, ml);
          expect(mix.density_kg_l < 1.13).toBe(thickener === 'microballoons');
          expect(mix.resin_ml + (1000 * mix.filler_g) / thickeners[thickener].solid).toBeCloseTo(ml, 6);
        },
      ),
    );
  });
});

describe('a laminate', () => {
  it('is about a millimetre for a layer of 450 g mat', () => {
    // the trade's 1.0 to 1.1 mm (handbook materials.csm.thick.450, note); glass 0.176 mm and resin 0.938 mm
    expect(1000 * laminateThickness_m(0.45, 2.5)).toBeCloseTo(1.113, 3);
  });
});

describe('a joint that moves', () => {
  it('is as wide as its sealant wants, and half as deep but never under 6 mm', () => {
    // table 5.3 of the handbook: polysulphide six times; 2 mm: 12 mm wide, 6 mm deep; 4 mm: 24 wide, 12 deep
    expect(jointWidth_mm('polysulphide', 2)).toBe(12);
    expect(beadDepth_mm(12)).toBe(6);
    expect(beadDepth_mm(24)).toBe(12);
    expect(beadDepth_mm(5)).toBe(6);
  });

  it('moves by the difference of what its parts grow', () => {
    // an acrylic pane of 600 mm on glass laminate, 60 °C: (70 − 30)·10⁻⁶·600·60/2 = 0.72 mm at each end
    expect(endMovement_mm('acrylic', 'grp', 600, 60)).toBeCloseTo(0.72, 9);
    expect(endMovement_mm('grp', 'acrylic', 600, 60)).toBeCloseTo(0.72, 9);
  });
});
