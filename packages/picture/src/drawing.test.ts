import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boatDrawing, type Stance, type View } from './drawing.ts';
import { hullForm, table } from './hull-form.ts';
import { alongLine, extentOf, type Line, pathOf } from './line.ts';
import { type BoatSizes, completeSizes, type KnownSizes } from './sizes.ts';

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any boat whose sizes agree with one another: a mast that stands on her, a board that goes down. */
const boats: fc.Arbitrary<KnownSizes> = fc
  .record({
    length_m: share(3, 12),
    cabin: fc.boolean(),
    beam: maybe(share(0.25, 0.5)),
    freeboard: maybe(share(0.07, 0.18)),
    draft: maybe(share(0.02, 0.16)),
    deeper: maybe(share(0.03, 0.2)),
    mast: maybe(share(0.6, 1.6)),
    mastAt: maybe(share(0.08, 0.5)),
    boom: maybe(share(0.2, 0.6)),
    cabinHeight: maybe(share(0.02, 0.12)),
    keel: maybe(fc.constantFrom('pivoting', 'vertical', 'lifting keel', 'bilge keels', 'fixed keel')),
    bow: maybe(fc.constantFrom('raked', 'plumb', 'spoon')),
    stern: maybe(fc.constantFrom('upright', 'reversed', 'counter')),
    rig: maybe(fc.constantFrom('masthead', 'fractional', 'gaff', 'unstayed')),
    mastStep: maybe(fc.constantFrom('deck', 'keel')),
    rudder: maybe(fc.constantFrom('on the transom', 'under the hull')),
    outboard: maybe(fc.constantFrom('on the transom', 'none')),
  })
  .map(({ length_m: length, cabin, beam, freeboard, draft, deeper, mast, mastAt, boom, cabinHeight, ...choices }) => {
    const of = (part: number | undefined) => (part === undefined ? undefined : part * length);
    return {
      length_m: length,
      cabin,
      ...choices,
      beam_m: of(beam),
      freeboard_m: of(freeboard),
      draft_m: of(draft),
      draftBoardDown_m: draft === undefined || deeper === undefined ? undefined : (draft + deeper) * length,
      mastHeight_m: of(mast),
      mastFromBow_m: of(mastAt),
      boom_m: of(boom),
      cabinHeight_m: cabin ? of(cabinHeight) : 0,
    } as KnownSizes;
  });
const stances: fc.Arbitrary<Stance> = fc.record({
  mastUp: fc.boolean(),
  board: fc.constantFrom('up', 'down', 'removed'),
  coverOn: fc.boolean(),
});
const views = fc.constantFrom<View>('profile', 'plan', 'trailer');

const demo: BoatSizes = completeSizes({
  length_m: 5.6,
  beam_m: 2.2,
  freeboard_m: 0.7,
  draft_m: 0.25,
  draftBoardDown_m: 1.2,
  mastHeight_m: 7.1,
  mastFromBow_m: 1.9,
  boom_m: 2.6,
  cabin: true,
}).sizes;
const afloat: Stance = { mastUp: true, board: 'down', coverOn: false };
const part = (lines: readonly Line[], name: string) => {
  const found = lines.find((line) => line.part === name);
  if (!found) throw new Error(`no ${name} is drawn; there are ${lines.map((line) => line.part).join(', ')}`);
  return extentOf([found]);
};

describe('a drawing of any boat', () => {
  it('has no place that is not a number, in any view and stance', () => {
    fc.assert(
      fc.property(boats, views, stances, (boat, view, stance) => {
        const drawing = boatDrawing(completeSizes(boat).sizes, view, stance);
        expect(drawing.lines.length).toBeGreaterThan(8);
        for (const line of drawing.lines) {
          for (const { x, y } of alongLine(line)) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
          expect(pathOf(line)).toMatch(/^M-?[\d.]+ -?[\d.]+[LC][-\d. LC]+Z?$/);
        }
      }),
    );
  });

  it('names each of its lines once', () => {
    fc.assert(
      fc.property(boats, views, stances, (boat, view, stance) => {
        const names = boatDrawing(completeSizes(boat).sizes, view, stance).lines.map((line) => line.part);
        expect(new Set(names).size).toBe(names.length);
      }),
    );
  });

  it('has a hull as long as she is, no wider than her beam and no deeper than her draught', () => {
    fc.assert(
      fc.property(boats, stances, (boat, stance) => {
        const { sizes } = completeSizes(boat);
        const side = part(boatDrawing(sizes, 'profile', stance).lines, 'hull');
        expect(side.left).toBeCloseTo(0, 6);
        expect(side.right).toBeCloseTo(sizes.length_m, 6);
        const above = part(boatDrawing(sizes, 'plan', stance).lines, 'hull');
        expect(above.right - above.left).toBeCloseTo(sizes.length_m, 1);
        expect(above.right).toBeLessThanOrEqual(sizes.length_m + 1e-9);
        // the curve between two points of the table may stand a hand's breadth of a percent outside it
        expect(above.top - above.bottom).toBeGreaterThan(0.985 * sizes.beam_m);
        expect(above.top - above.bottom).toBeLessThan(1.005 * sizes.beam_m);
      }),
    );
  });

  it('reaches down to her draught with the board down, and with it up to what is fixed', () => {
    fc.assert(
      fc.property(boats, (boat) => {
        const { sizes } = completeSizes(boat);
        const deepest = (board: Stance['board']) => {
          const drawn = boatDrawing(sizes, 'profile', { mastUp: true, board, coverOn: false }).lines.filter(
            (line) => !/rudder|outboard|propeller/.test(line.part),
          );
          return -extentOf(drawn).bottom;
        };
        const body = hullForm(sizes).body_m;
        const down = Math.max(sizes.draftBoardDown_m, sizes.draft_m, body + 0.02);
        expect(deepest('down')).toBeLessThan(down * 1.04 + 0.03);
        if (sizes.draftBoardDown_m > body + 0.2)
          expect(deepest('down')).toBeGreaterThan(sizes.draftBoardDown_m * 0.96 - 0.03);
        expect(deepest('up')).toBeLessThan(Math.max(sizes.draft_m, body) + 0.06 * sizes.length_m);
        expect(deepest('removed')).toBeLessThanOrEqual(deepest('up') + 1e-6);
      }),
    );
  });

  it('has the mast as tall as it is, standing and lying, where it stands', () => {
    fc.assert(
      fc.property(boats, (boat) => {
        const { sizes } = completeSizes(boat);
        const up = boatDrawing(sizes, 'profile', { mastUp: true, board: 'up', coverOn: false }).lines;
        const mast = extentOf(up.filter((line) => line.part.startsWith('mast')));
        expect(Math.hypot(mast.right - mast.left, mast.top - mast.bottom)).toBeCloseTo(sizes.mastHeight_m, 2);
        expect(mast.left).toBeCloseTo(sizes.mastFromBow_m, 2);
        const lying = part(
          boatDrawing(sizes, 'trailer', { mastUp: false, board: 'up', coverOn: false }).lines,
          'mast, lying',
        );
        expect(Math.hypot(lying.right - lying.left, lying.top - lying.bottom)).toBeCloseTo(sizes.mastHeight_m, 6);
      }),
    );
  });

  it('stands clear of the road on her trailer, and the mast lies clear of her', () => {
    fc.assert(
      fc.property(boats, (boat) => {
        const { sizes } = completeSizes(boat);
        const drawing = boatDrawing(sizes, 'trailer', { mastUp: false, board: 'up', coverOn: false });
        const hers = drawing.lines.filter(
          (line) => /hull|keel|board|rudder/.test(line.part) && !/light board/.test(line.part),
        );
        expect(extentOf(hers).bottom).toBeGreaterThan(drawing.ground_m! + 0.05);
        expect(drawing.extent.bottom).toBeGreaterThan(drawing.ground_m! - 1e-6);
        const cabin = drawing.lines.filter((line) => line.part === 'cabin');
        if (cabin.length > 0) expect(part(drawing.lines, 'mast, lying').bottom).toBeGreaterThan(extentOf(cabin).top);
      }),
    );
  });

  it('is the same to scale: twice the size of everything is twice the hull', () => {
    fc.assert(
      fc.property(share(3, 6), (length) => {
        const one = completeSizes({ length_m: length, cabin: true }).sizes;
        const two = Object.fromEntries(
          Object.entries(one).map(([name, value]) => [name, typeof value === 'number' ? 2 * value : value]),
        ) as unknown as BoatSizes;
        const [small, big] = [one, two].map((sizes) => part(boatDrawing(sizes, 'profile', afloat).lines, 'hull'));
        for (const edge of ['left', 'right', 'top', 'bottom'] as const)
          expect(big![edge]).toBeCloseTo(2 * small![edge], 6);
      }),
    );
  });
});

describe('the demo boat drawn', () => {
  it('draws 1.20 m with the board down: its tip is the lowest thing', () => {
    const { lines, extent } = boatDrawing(demo, 'profile', afloat);
    expect(part(lines, 'board, down').bottom).toBeGreaterThan(-1.23);
    expect(part(lines, 'board, down').bottom).toBeLessThan(-1.17);
    expect(extent.bottom).toBe(part(lines, 'board, down').bottom);
  });

  it('keeps the board inside the hull when it is up, and shows none when it is removed', () => {
    const { lines } = boatDrawing(demo, 'profile', { ...afloat, board: 'up' });
    expect(part(lines, 'board, up in its case').bottom).toBeGreaterThan(-0.27);
    const out = boatDrawing(demo, 'profile', { ...afloat, board: 'removed' }).lines.map((line) => line.part);
    expect(out.filter((name) => name.startsWith('board,'))).toEqual([]);
    expect(out).toContain('board case');
  });

  it('has the lowest freeboard it was given', () => {
    const { sheer } = hullForm(demo);
    const least = Math.min(...Array.from({ length: 101 }, (_, i) => sheer((5.6 * i) / 100)));
    expect(least).toBeCloseTo(0.7, 3);
  });
});

describe('sizes nobody gave', () => {
  it('are guessed and named; those that were given stay', () => {
    const { sizes, guessed } = completeSizes({ length_m: 5.6, beam_m: 2.2, cabin: true, keel: 'vertical' });
    expect(sizes.beam_m).toBe(2.2);
    expect(sizes.keel).toBe('vertical');
    expect(guessed).toContain('mastHeight_m');
    expect(guessed).not.toContain('beam_m');
    expect(guessed).not.toContain('length_m');
  });

  it('are never against one another', () => {
    fc.assert(
      fc.property(boats, (boat) => {
        const { sizes } = completeSizes(boat);
        expect(sizes.draftBoardDown_m).toBeGreaterThanOrEqual(sizes.draft_m);
        if (boat.mastFromBow_m === undefined) expect(sizes.mastFromBow_m).toBeLessThan(0.5 * sizes.length_m);
        if (boat.beam_m === undefined) expect(sizes.beam_m).toBeLessThan(0.7 * sizes.length_m);
      }),
    );
  });

  it('a length of no boat is refused', () => {
    expect(() => completeSizes({ length_m: 1, cabin: false })).toThrow('length must be 2 to 30 m, got 1');
    expect(() => completeSizes({ length_m: Number.NaN, cabin: false })).toThrow(RangeError);
  });
});

describe('a table', () => {
  it('goes through its rows and overshoots none', () => {
    const of = table([0, 0], [0.2, 0.9], [0.3, 1], [0.7, 1], [1, 0.2]);
    for (const [x, y] of [
      [0, 0],
      [0.2, 0.9],
      [0.3, 1],
      [0.7, 1],
      [1, 0.2],
    ] as const)
      expect(of(x)).toBeCloseTo(y, 9);
    for (let x = -0.1; x <= 1.1; x += 0.01) {
      expect(of(x)).toBeLessThanOrEqual(1 + 1e-12);
      expect(of(x)).toBeGreaterThanOrEqual(0);
    }
  });
});
