/** Any part of a load path there can be, for property tests. */
import fc from 'fast-check';
import { endingShares } from '../../../tables/endings.read-2026-11.ts';
import type { Ending } from '../ending.ts';
import type { PartState, Sign } from '../part.ts';
import type { LoadPart } from '../part-strength.ts';

/** New, looked at and without a mark. */
export const sound = { marked: null, signs: [], years: 0 } as const satisfies PartState & { readonly years: number };

const nullable = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
// mostly sizes that tables have
const size_mm = fc.oneof(fc.constantFrom(3, 4, 5, 6, 8, 10, 12, 14, 16), between(0.5, 60));
const measured = nullable(fc.oneof(size_mm, between(0.1, 300)));
const metal = fc.constantFrom('stainless', 'galvanised', 'bronze', 'aluminium', 'plastic');
const fibre = fc.constantFrom('polyester', 'nylon', 'polypropylene', 'polyester-braid', 'polyethylene-braid');
const seen = nullable(fc.boolean());
const one = <const T extends string>(kind: T) => fc.constant(kind);

const state = {
  marked: nullable(
    fc.record({ force_kN: between(0.1, 100), as: fc.constantFrom('working load', 'breaking load'), by: fc.string() }),
  ),
  signs: nullable(
    fc.oneof(
      { weight: 3, arbitrary: fc.constant<Sign[]>([]) },
      {
        weight: 1,
        arbitrary: fc.subarray<Sign>(
          [
            'faded',
            'stiff',
            'chafed',
            'cut strand',
            'broken wires',
            'kinked',
            'rust',
            'pitted',
            'worn',
            'bent',
            'cracked',
          ],
          { maxLength: 2 },
        ),
      },
    ),
  ),
  years: nullable(between(0, 40)),
};

export const anyPart: fc.Arbitrary<LoadPart> = fc.oneof(
  fc.record({ kind: one('rope'), fibre, size_mm, ...state }),
  fc.record({ kind: one('lashing'), fibre, size_mm, passes: fc.integer({ min: 1, max: 20 }), ...state }),
  fc.record({
    kind: one('wire'),
    laid: fc.constantFrom('1x19', '7x7', '7x19'),
    size_mm,
    make: fc.constantFrom('316', 'aircraft'),
    ...state,
  }),
  fc.record({
    kind: one('chain'),
    grade: nullable(fc.constantFrom('30', '40', '43', '70')),
    size_mm,
    metal: fc.constantFrom('galvanised', 'stainless'),
    inside_mm: measured,
    ...state,
  }),
  fc.record({
    kind: one('shackle'),
    make: fc.constantFrom('lifting', 'stainless', 'galvanised'),
    size_mm,
    pin_mm: measured,
    jaw_mm: measured,
    moused: seen,
    ...state,
  }),
  fc.record({ kind: one('thimble'), size_mm, metal, opening_mm: measured, ...state }),
  fc.record({ kind: one('ending'), ending: fc.constantFrom(...(Object.keys(endingShares) as Ending[])), ...state }),
  fc.record({
    kind: one('block'),
    sheave_mm: measured,
    line_mm: measured,
    turn_deg: nullable(between(0, 180)),
    metal,
    ...state,
  }),
  fc.record({
    kind: one('fitting'),
    what: fc.constantFrom('anchor', 'pad eye', 'cleat', 'post', 'chain plate', 'ring', 'hook', 'other'),
    metal,
    eye_mm: measured,
    thickness_mm: measured,
    ...state,
  }),
  fc.record({ kind: one('pin'), size_mm, metal, secured: seen, ...state }),
  fc.record({
    kind: one('rigging screw'),
    thread_mm: size_mm,
    metal,
    pin_mm: measured,
    jaw_mm: measured,
    locked: seen,
    ...state,
  }),
  fc.record({
    kind: one('fastenings'),
    how: fc.constantFrom('screws', 'bolts'),
    count: fc.integer({ min: 1, max: 12 }),
    size_mm,
    metal,
    into: fc.constantFrom('laminate', 'plywood', 'timber', 'aluminium', 'steel'),
    thickness_mm: measured,
    backing: fc.constantFrom('none', 'washers', 'plate'),
    pulled: fc.constantFrom('out', 'across'),
    ...state,
  }),
  fc.record({ kind: one('winch'), ratio: nullable(between(1, 100)), ...state }),
  fc.record({ kind: one('hand'), how: fc.constantFrom('pull', 'crank'), ...state }),
);
