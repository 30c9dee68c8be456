import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metalPair, seaMetals } from './metals-together.ts';

const metal = fc.constantFrom(...seaMetals);

describe('two metals', () => {
  it('that the trade keeps apart are kept apart, and the one it looks to goes', () => {
    // common practice: stainless screws eat an aluminium mast; bronze eats galvanised steel; zinc guards a bronze shaft
    expect(metalPair('stainless-316', 'aluminium', 'harsh')).toMatchObject({ goes: 'aluminium', apart: true });
    expect(metalPair('galvanised', 'silicon-bronze', 'harsh')).toMatchObject({ goes: 'galvanised', apart: true });
    expect(metalPair('zinc', 'manganese-bronze', 'harsh')).toMatchObject({ goes: 'zinc', apart: true });
    expect(metalPair('tin-bronze', 'silicon-bronze', 'harsh').apart).toBe(false);
  });

  it('say the same whichever is named first, and nothing goes beside its own kind', () => {
    fc.assert(
      fc.property(metal, metal, (a, b) => {
        const [one, other] = [metalPair(a, b, 'harsh'), metalPair(b, a, 'harsh')];
        expect(one.difference_V).toBe(other.difference_V);
        expect(one.goes).toBe(other.goes);
        expect(metalPair(a, a, 'harsh')).toMatchObject({ goes: null, apart: false });
        // drier never asks more
        if (!one.apart) expect(metalPair(a, b, 'normal').apart).toBe(false);
      }),
    );
  });
});
