import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitOf } from './fit.ts';
import type { ChainPart, FittingPart, PartOfPath, ShacklePart, ThimblePart } from './part.ts';
import { anyPart } from './testing/any-part.ts';

const shackle: ShacklePart = { kind: 'shackle', make: 'stainless', size_mm: 8, pin_mm: 8, jaw_mm: 16, moused: true };
const chain: ChainPart = { kind: 'chain', grade: '30', size_mm: 6, metal: 'stainless', inside_mm: 8.5 };
const ring: FittingPart = { kind: 'fitting', what: 'ring', metal: 'stainless', eye_mm: 30, thickness_mm: 10 };
const thimble: ThimblePart = { kind: 'thimble', size_mm: 10, metal: 'stainless', opening_mm: null };
const wrong = (...parts: PartOfPath[]) => fitOf(parts).filter(({ gravity }) => gravity !== 'look to it');
const says = (...parts: PartOfPath[]) => wrong(...parts).map(({ gravity, what }) => `${gravity}: ${what}`);

// sizes that a calliper gives: whether a bar goes through a hole needs no source
describe('a shackle', () => {
  it('goes where its pin and its jaw go', () => {
    expect(wrong(chain, shackle, ring)).toEqual([]);
  });

  it('does not go through an end link narrower than its pin, and says what would', () => {
    const [found, ...others] = wrong({ ...chain, inside_mm: 7.8 }, shackle, ring);
    expect(found).toMatchObject({
      at: [0, 1],
      gravity: 'does not go together',
      right: expect.stringContaining('7.5 mm'),
    });
    expect(found?.what).toContain('the pin of the shackle is 8 mm, and the end link of the chain is open 7.8 mm');
    expect(others).toEqual([]);
  });

  it('is put in whichever way round it goes: pin through the narrow eye, body through the wide one', () => {
    expect(wrong(ring, shackle, chain)).toEqual([]);
    // pin through the ring would leave the body for the link, which its ear does not pass
    expect(says({ ...ring, thickness_mm: 20 }, shackle, chain)).toEqual([]);
    expect(says({ ...chain, inside_mm: 7 }, shackle, { ...chain, inside_mm: 7 })).toHaveLength(2);
  });

  it('does not go over what is thicker than its jaw', () => {
    expect(says(shackle, { ...ring, eye_mm: 12, thickness_mm: 18 })).toEqual([
      'does not go together: the jaw of the shackle is 16 mm, and the eye of the ring is 18 mm thick: it does not go over',
    ]);
  });

  it('is not known to fit where a size was not measured and no table has it', () => {
    expect(
      says({ ...shackle, make: 'galvanised', pin_mm: null, jaw_mm: null }, { ...chain, inside_mm: 14 }),
    ).toHaveLength(2);
    expect(says(shackle, { ...ring, eye_mm: null, thickness_mm: null })[0]).toMatch(/^not known: /);
  });

  it('that goes with nothing to spare is to be tried, not promised', () => {
    expect(says(shackle, { ...chain, inside_mm: 8.1 })[0]).toMatch(/^not known: .*may not go through/);
  });

  it('wants mousing, and says so whether it was seen or not', () => {
    for (const moused of [false, null])
      expect(fitOf([{ ...shackle, moused }])).toMatchObject([{ at: [0], gravity: 'look to it' }]);
    expect(fitOf([shackle])).toEqual([]);
  });
});

describe('thimbles, pins, sheaves and metals', () => {
  it('a thimble too small for its rope is a misfit, one that is larger is not', () => {
    const rope = { kind: 'rope', fibre: 'nylon', size_mm: 12 } as const;
    const splice = { kind: 'ending', ending: 'eye-splice' } as const;
    expect(says(rope, splice, thimble, shackle)).toEqual([
      'does not go together: the thimble is for 10 mm, and the rope in it is 12 mm',
    ]);
    expect(says({ ...rope, size_mm: 8 }, splice, thimble, shackle)).toEqual([]);
  });

  it('two closed eyes beside each other have nothing through both', () => {
    expect(says(thimble, chain)).toEqual([
      'not known: nothing is said of what joins the thimble and the end link of the chain',
    ]);
  });

  it('a pin goes through the eye beside it or does not', () => {
    const pin = { kind: 'pin', size_mm: 10, metal: 'stainless', secured: true } as const;
    const plate = { ...ring, what: 'chain plate', eye_mm: 9.5 } as const;
    expect(says(plate, pin)[0]).toContain('the pin is 10 mm, and the eye of the chain plate is open 9.5 mm');
    expect(says({ ...plate, eye_mm: 10.5 }, pin)).toEqual([]);
  });

  // Toss: 20 times the wire, 4 to 8 times the rope
  it('a sheave under twenty times its wire wears it; a groove narrower than the line does not take it', () => {
    const block = { kind: 'block', sheave_mm: 60, line_mm: 5, turn_deg: 90, metal: 'stainless' } as const;
    const wire = (size_mm: number) => ({ kind: 'wire', laid: '7x19', size_mm, make: '316' }) as const;
    expect(fitOf([wire(3), block])).toEqual([]);
    expect(fitOf([wire(4), block])).toMatchObject([{ gravity: 'look to it', right: expect.stringContaining('80 mm') }]);
    expect(says(wire(6), block)[0]).toMatch(/groove takes 5 mm/);
  });

  it('unlike metals beside each other are said, and which of them goes first', () => {
    const zinc = { ...chain, metal: 'galvanised' } as const;
    expect(fitOf([zinc, shackle])[0]).toMatchObject({
      at: [0, 1],
      gravity: 'look to it',
      what: expect.stringMatching(/^galvanised against stainless: .*zinc/),
    });
    expect(fitOf([zinc, { ...shackle, make: 'galvanised' }])).toEqual([]);
  });
});

it('any fit found is about parts that are there, in words with what would be right', () => {
  fc.assert(
    fc.property(fc.array(anyPart, { maxLength: 7 }), (parts) => {
      for (const { at, what, right } of fitOf(parts)) {
        expect(at.every((i) => i >= 0 && i < parts.length)).toBe(true);
        expect([...at]).toEqual([...at].sort((a, b) => a - b));
        expect(`${what} ${right}`).not.toMatch(/NaN|Infinity|undefined|null/);
      }
    }),
  );
});
