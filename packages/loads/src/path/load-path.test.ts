import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uses } from './factor.ts';
import { caseBorne, type PathBears, pathBears, placesUnknown, turnedTimes } from './load-path.ts';
import { type LoadPart, linesAt } from './part-strength.ts';
import { stepped } from './step-size.ts';
import { anyPart, sound } from './testing/any-part.ts';

const use = fc.constantFrom(...(Object.keys(uses) as (keyof typeof uses)[]));
const rope: LoadPart = { ...sound, kind: 'rope', fibre: 'polyester', size_mm: 10 };
const bowline: LoadPart = { ...sound, kind: 'ending', ending: 'bowline' };
const shackle: LoadPart = {
  ...sound,
  kind: 'shackle',
  make: 'stainless',
  size_mm: 8,
  pin_mm: null,
  jaw_mm: null,
  moused: true,
};
const eye: LoadPart = {
  ...sound,
  kind: 'fitting',
  what: 'pad eye',
  metal: 'stainless',
  eye_mm: 20,
  thickness_mm: 8,
  marked: { force_kN: 20, as: 'breaking load', by: 'its maker’s sheet' },
};
const whole = [rope, bowline, shackle, eye];
const gale = { name: 'gale', force_N: 1000, wind_kn: 30 };
const working = (path: PathBears, i: number) => {
  const { strength } = path.parts[i]!;
  return strength.kind === 'known' ? strength.working_N : null;
};

describe('a load path', () => {
  it('is as strong as the part that reaches its working load first', () => {
    const path = pathBears(whole, 'running-rigging');
    // the lowest cells of the tables by hand: 10 mm polyester 12.9 kN, a bowline leaves 63 %, rope works at a fifth
    expect(working(path, 0)).toBeCloseTo(12_900 / 5, 6);
    expect(working(path, 1)).toBeCloseTo((12_900 * 0.63) / 5, 6);
    expect([path.weakest, path.atMost_N]).toEqual([1, working(path, 1)]);
    expect(caseBorne(path, gale).verdict).toEqual({ kind: 'holds' });
    expect(caseBorne(path, { ...gale, force_N: 1700 }).verdict).toEqual({ kind: 'does not hold', parts: [1] });
  });

  it('says the wind it is good to: the load grows with its square', () => {
    const path = pathBears(whole, 'running-rigging');
    const { goodTo_kn } = caseBorne(path, gale);
    const then = caseBorne(path, { ...gale, force_N: 1000 * (goodTo_kn! / 30) ** 2 });
    expect(Math.max(...then.shares.map((each) => each ?? 0))).toBeCloseTo(1, 12);
    expect(caseBorne(path, { ...gale, wind_kn: null }).goodTo_kn).toBeNull();
  });

  it('takes a mark over every table, and keeps a working load from being taken for a breaking load', () => {
    const marked = (as: 'working load' | 'breaking load') =>
      pathBears([{ ...shackle, marked: { force_kN: 5, as, by: 'stamped on it' } }], 'running-rigging');
    expect(working(marked('working load'), 0)).toBe(5000);
    expect(working(marked('breaking load'), 0)).toBe(1000);
    expect(marked('working load').parts[0]!.strength).toMatchObject({ breaking_N: null });
  });

  it('is unknown at every part of unknown strength and every end nothing is said of', () => {
    const unmarked = { ...shackle, make: 'galvanised' } as const;
    const path = pathBears([rope, unmarked, { ...eye, marked: null }], 'ground-tackle');
    expect(path.unknown).toEqual([1, 2]);
    expect(path.gaps).toMatchObject([{ after: 0, because: expect.stringContaining('rope ends at the shackle') }]);
    expect(caseBorne(path, { ...gale, force_N: 1 }).verdict).toMatchObject({ kind: 'unknown' });
  });

  it('counts stainless never by the table of steel lifting shackles', () => {
    const path = pathBears([{ ...shackle, size_mm: 9 }], 'hoist');
    expect(path.unknown).toEqual([0]);
    expect(working(pathBears([{ ...shackle, make: 'lifting', size_mm: 9 }], 'hoist'), 0)).toBeCloseTo(9806.65, 6);
  });

  it('puts on a block what its line turns, and on what holds the block', () => {
    // statics: right round, both parts pull; at a right angle √2 of the line; straight through nothing
    expect([180, 90, 0].map(turnedTimes)).toEqual([2, expect.closeTo(Math.SQRT2, 12), 0]);
    const block: LoadPart = { ...sound, kind: 'block', sheave_mm: 90, line_mm: 12, turn_deg: 90, metal: 'stainless' };
    const times = (...parts: LoadPart[]) => pathBears(parts, 'hoist').parts.map((each) => each.times);
    expect(times(rope, block, shackle, eye)).toEqual(
      [1, Math.SQRT2, Math.SQRT2, Math.SQRT2].map((k) => expect.closeTo(k, 12)),
    );
    expect(times(rope, block, rope, bowline, eye)).toEqual([1, expect.closeTo(Math.SQRT2, 12), 1, 1, 1]);
    expect(times(rope, { ...block, turn_deg: null }, eye)).toEqual([1, 2, 2]);
  });

  it('puts on a hand what the winch before it leaves, and knows nothing of it without a ratio', () => {
    const hand: LoadPart = { ...sound, kind: 'hand', how: 'crank' };
    const winch = (ratio: number | null): LoadPart => ({ ...sound, kind: 'winch', ratio, marked: eye.marked });
    expect(pathBears([rope, winch(8), hand], 'hoist').parts[2]!.times).toBe(1 / 8);
    expect(pathBears([rope, winch(null), hand], 'hoist').unknown).toEqual([2]);
  });
});

describe('fastenings', () => {
  const bolts: LoadPart = {
    ...sound,
    kind: 'fastenings',
    how: 'bolts',
    count: 4,
    size_mm: 6,
    metal: 'stainless',
    into: 'laminate',
    thickness_mm: 8,
    backing: 'plate',
    pulled: 'out',
  };
  const bears = (part: Partial<typeof bolts>) =>
    working(pathBears([{ ...bolts, ...part } as LoadPart], 'running-rigging'), 0);

  it('bear by the first way that one gives, as many times as they are', () => {
    // by hand: stress area of M6 20.1 mm² at 500 N/mm² parts at 10 050 N; an 18 mm washer comes through 8 mm of laminate
    // of 30 % glass at π·18·8·(22.5 − 5.25) = 7 804 N; the path's factor is 5
    expect(bears({})).toBeCloseTo((4 * Math.PI * 18 * 8 * 17.25) / 5, 3);
    expect(bears({ backing: 'none' })).toBeLessThan(bears({})!);
    expect(bears({ count: 8 })! / bears({})!).toBeCloseTo(2, 12);
    expect(bears({ how: 'screws', into: 'plywood', thickness_mm: 12 })).toBeGreaterThan(0);
  });

  it('are unknown in what was not measured, of another metal, and in steel', () => {
    for (const part of [{ thickness_mm: null }, { metal: 'bronze' }, { into: 'steel' }, { size_mm: 7 }] as const)
      expect(bears(part)).toBeNull();
  });
});

describe('age and wear', () => {
  it('take a stated share, or say replace', () => {
    const aged = (part: Partial<LoadPart>) => pathBears([{ ...rope, ...part } as LoadPart], 'running-rigging');
    expect(working(aged({ years: 5 }), 0)).toBeCloseTo((12_900 * 0.8) / 5, 6);
    expect(working(aged({ years: null }), 0)).toBeCloseTo((12_900 * 0.5) / 5, 6);
    expect(aged({ signs: ['cut strand'] }).replace).toEqual([0]);
    expect(caseBorne(aged({ signs: ['cut strand'] }), { ...gale, force_N: 1 }).verdict).toMatchObject({
      kind: 'does not hold',
    });
  });

  it('are never taken back by a strength that is unknown or marked', () => {
    const cracked = { ...eye, marked: null, signs: ['cracked'] } as const;
    expect(pathBears([cracked], 'hoist').replace).toEqual([0]);
    expect(pathBears([{ ...eye, signs: ['cracked'] }], 'hoist').replace).toEqual([0]);
  });

  it('never add strength, whatever the part', () => {
    fc.assert(
      fc.property(anyPart, use, (part, purpose) => {
        const [as, fresh] = [part, { ...part, signs: [], years: 0 } as LoadPart].map((each) =>
          pathBears([each], purpose),
        );
        const now = working(as!, 0);
        const whenNew = working(fresh!, 0);
        if (now !== null) expect(now).toBeLessThanOrEqual(whenNew! + 1e-9);
      }),
    );
  });
});

describe('any path', () => {
  const path = fc.array(anyPart, { minLength: 1, maxLength: 7 });
  const load = fc.double({ min: 1, max: 50_000, noNaN: true });

  it('holds only where every part and joint is known, none is over its working load and all go together', () => {
    fc.assert(
      fc.property(path, use, load, (parts, purpose, force_N) => {
        const bears = pathBears(parts, purpose);
        const { verdict, shares } = caseBorne(bears, { ...gale, force_N });
        const sure =
          placesUnknown(bears) === 0 &&
          bears.replace.length === 0 &&
          bears.misfits.every(({ gravity }) => gravity === 'look to it') &&
          shares.every((each, i) => (each === null ? parts[i]!.kind === 'thimble' : each <= 1));
        expect(verdict.kind === 'holds').toBe(sure);
      }),
    );
  });

  it('never comes to hold by a part of unknown strength', () => {
    fc.assert(
      fc.property(path, fc.nat(7), use, load, (parts, at, purpose, force_N) => {
        const unmarked: LoadPart = {
          ...sound,
          kind: 'fitting',
          what: 'other',
          metal: 'plastic',
          eye_mm: null,
          thickness_mm: null,
        };
        const more = parts.toSpliced(at, 0, unmarked);
        expect(caseBorne(pathBears(more, purpose), { ...gale, force_N }).verdict.kind).not.toBe('holds');
      }),
    );
  });

  // a winch is left out: it is there to make a hand stronger; and so is what parts a line
  // from the block it runs over, or puts a line that runs on where something held the block
  it('never gets stronger by getting longer, unless it is less known for it', () => {
    const link = anyPart.filter(({ kind }) => kind !== 'winch');
    const runs = (part: LoadPart | undefined) =>
      part?.kind === 'rope' || part?.kind === 'wire' || part?.kind === 'block';
    fc.assert(
      fc.property(fc.array(link, { minLength: 1, maxLength: 6 }), link, fc.nat(6), use, (parts, more, at, purpose) => {
        if (runs(parts[at - 1]) && parts[at]?.kind === 'block' && !runs(more)) return;
        if (parts[at - 1]?.kind === 'block' && runs(more)) return;
        const before = pathBears(parts, purpose);
        const after = pathBears(parts.toSpliced(at, 0, more), purpose);
        // known still: each part that was, no end less is said of, and no ending parted from what it ends
        const longer = parts.toSpliced(at, 0, more);
        const stillKnown = parts.every((part, i) => {
          const now = i < at ? i : i + 1;
          const parted = part.kind === 'ending' && linesAt(parts, i).length > linesAt(longer, now).length;
          return before.parts[i]!.strength.kind !== 'known' || (after.parts[now]!.strength.kind === 'known' && !parted);
        });
        if (before.atMost_N === null || !stillKnown || after.gaps.length > before.gaps.length) return;
        expect(after.atMost_N).toBeLessThanOrEqual(before.atMost_N * (1 + 1e-12));
      }),
      { numRuns: 1000 },
    );
  });

  it('has no figure that is not finite and above nothing, however small or large its parts', () => {
    fc.assert(
      fc.property(path, use, load, (parts, purpose, force_N) => {
        const bears = pathBears(parts, purpose);
        for (const { strength } of bears.parts)
          if (strength.kind === 'known') {
            expect(strength.working_N).toBeGreaterThan(0);
            expect(Number.isFinite(strength.working_N)).toBe(true);
          }
        const borne = caseBorne(bears, { ...gale, force_N });
        for (const each of [...borne.shares, borne.goodTo_kn])
          expect(each === null || Number.isFinite(each)).toBe(true);
      }),
    );
  });
});

describe('a size up or down', () => {
  it('is the next in the table, new, with its own pin and jaw', () => {
    const up = stepped(whole, 2, 'up', 'hoist');
    expect(up?.part).toMatchObject({ size_mm: 10, pin_mm: null });
    expect(working(up!.path, 2)).toBeGreaterThan(working(pathBears(whole, 'hoist'), 2)!);
    expect(stepped(whole, 2, 'down', 'hoist')?.part).toMatchObject({ size_mm: 6 });
    expect(stepped(whole, 3, 'up', 'hoist')).toBeNull();
  });

  it('up never bears less than down, part for part', () => {
    fc.assert(
      fc.property(anyPart, use, (part, purpose) => {
        const [up, down] = (['up', 'down'] as const).map((way) => stepped([part], 0, way, purpose));
        if (!up || !down) return;
        expect(working(up.path, 0)).toBeGreaterThan(working(down.path, 0)!);
      }),
    );
  });
});
