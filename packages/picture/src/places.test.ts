import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Stance } from './drawing.ts';
import { isAloft, type PlaceOnBoat, placeAt, placesIn } from './places.ts';
import { completeSizes } from './sizes.ts';

const { sizes } = completeSizes({
  length_m: 5.6,
  beam_m: 2.2,
  freeboard_m: 0.7,
  mastHeight_m: 7.1,
  mastFromBow_m: 1.9,
  cabin: true,
});
const up: Stance = { mastUp: true, board: 'up', coverOn: false };
const down: Stance = { ...up, mastUp: false };
const masthead: PlaceOnBoat = { along: 0.34, up: 10 };

describe('places on her', () => {
  it('are kept as shares of her sizes: half along 5.6 m is 2.8 m, one freeboard is 0.7 m', () => {
    expect(placesIn(sizes, 'profile', up)({ along: 0.5, up: 1 })).toEqual({ x: 2.8, y: 0.7 });
  });

  it('in plan starboard is below the centreline, the bow being to the right', () => {
    expect(placesIn(sizes, 'plan', up)({ along: 0.5, up: 1, across: 1 })).toEqual({ x: 2.8, y: -1.1 });
  });

  it('what is up the mast lies along it when the mast is down', () => {
    expect(isAloft(sizes, masthead)).toBe(true);
    expect(isAloft(sizes, { along: 0.34, up: 1.2 })).toBe(false);
    const lain = placesIn(sizes, 'profile', down)(masthead);
    expect(lain.x).toBeGreaterThan(5);
    expect(lain.y).toBeLessThan(2.2);
  });

  it('a touch of the plan gives a thing a height on deck, and keeps the height it had', () => {
    expect(placeAt(sizes, 'plan', up, { x: 2.8, y: 0.55 }, null)).toMatchObject({ along: 0.5, across: -0.5 });
    expect(placeAt(sizes, 'plan', up, { x: 2.8, y: 0 }, null).up).toBeGreaterThan(1.3);
    expect(placeAt(sizes, 'plan', up, { x: 2.8, y: 0 }, { along: 0, up: 0.3 }).up).toBe(0.3);
  });

  it('a touch of the side keeps the side of the boat it was on', () => {
    expect(placeAt(sizes, 'profile', up, { x: 1.4, y: 0.35 }, { along: 0, up: 0, across: 0.9 })).toEqual({
      along: 0.25,
      up: 0.5,
      across: 0.9,
    });
  });

  it('a touch where a thing is drawn is its place again, with the mast up and down', () => {
    fc.assert(
      fc.property(
        fc.record({
          along: fc.double({ min: 0, max: 1, noNaN: true }),
          up: fc.double({ min: -1, max: 11, noNaN: true }),
          across: fc.double({ min: -1, max: 1, noNaN: true }),
        }),
        fc.constantFrom('profile', 'plan', 'trailer'),
        (place, view) => {
          const touched = placeAt(sizes, view, up, placesIn(sizes, view, up)(place), place);
          expect(touched.along).toBeCloseTo(place.along, 2);
          expect(touched.up).toBeCloseTo(place.up, 2);
          expect(touched.across).toBeCloseTo(place.across, 2);
        },
      ),
    );
    const touched = placeAt(sizes, 'trailer', down, placesIn(sizes, 'trailer', down)(masthead), masthead);
    expect(touched.up).toBeCloseTo(masthead.up, 1);
  });

  it('never goes beyond where a place may be', () => {
    expect(placeAt(sizes, 'plan', up, { x: 1e6, y: 1e6 }, null)).toMatchObject({ along: 2, across: -3 });
  });
});
