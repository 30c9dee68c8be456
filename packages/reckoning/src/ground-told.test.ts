import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../examples/demo-book.ts';
import { assumedWindage_m2, type GroundTold, groundTold } from './ground-told.ts';

const book = demoBook('2026-05-01');
const rode = book.rodes.bower!;
const at = (change: Partial<NonNullable<typeof rode.anchorage>> = {}, out_m: number | null = null, other = rode) =>
  groundTold(book, other, { ...rode.anchorage!, ...change }, out_m);
const told = (...asked: Parameters<typeof at>): GroundTold => {
  const found = at(...asked);
  if (found.kind !== 'told') throw new Error(found.wrong);
  return found;
};
const figure = ({ figures }: GroundTold, of: GroundTold['figures'][number]['of']) =>
  figures.find((each) => each.of === of)!;

describe('a rode in an anchorage', () => {
  it('is told with what to veer, and no more of it than that is drawn', () => {
    const found = told();
    expect(found.holds).toBe(true);
    expect(found.verdict).toMatch(/^Veer \d+ m: that holds within 8° in 20 kn\.$/);
    expect(figure(found, 'veer').figure).toBe(`${found.out_m} m`);
    const end = found.drawing.high.at(-1)!.at(-1)!;
    // from the seabed to the bow roller at high water: 3.5 + 1.4 + 0.75 m
    expect(end.up_m).toBeCloseTo(5.65, 6);
    expect(found.drawing.low.at(-1)!.at(-1)!.up_m).toBeCloseTo(3.5 - 0.6 + 0.75, 6);
    // a metre less is too little
    const less = told({}, found.out_m - 1);
    expect(less.holds).toBe(false);
    expect(less.verdict).toContain(`Veer ${found.out_m} m.`);
  });

  it('asks for more rode in more wind and in deeper water, never for less', () => {
    const out = (change: Parameters<typeof at>[0]) => told(change).out_m;
    expect(out({ wind_kn: 25 })).toBeGreaterThanOrEqual(out({ wind_kn: 15 }));
    expect(out({ depth_m: 5 })).toBeGreaterThan(out({ depth_m: 3 }));
  });

  it('names what there is not enough of, and what to get in its place', () => {
    const short = { ...rode, rope: { ...rode.rope!, length_m: 10 } };
    const found = told({}, null, short);
    expect(found.holds).toBe(false);
    expect(found.verdict).toMatch(/^All 20 m is too little in 20 kn: .* It takes \d+ m\.$/);
    expect(found.toGet).toMatchObject({ name: 'Rope, nylon, 10 mm', unit: 'm' });
    expect(found.toGet!.amount).toBeGreaterThan(10);
    // strong enough by the factor of ground tackle, whatever its length: 36 kn asks for 12 mm
    expect(told({ wind_kn: 36 }).toGet?.name).toBe('Rope, nylon, 12 mm');
    expect(told({ wind_kn: 36 }).holds).toBe(false);
    expect(told().toGet).toBeNull();
  });

  it('refuses a rode shorter than the water and a tide that leaves her dry, with what would be right', () => {
    expect(at({ depth_m: 45 })).toMatchObject({ kind: 'cannot', wrong: expect.stringContaining('does not reach') });
    expect(at({ fall_m: 3.5 })).toMatchObject({ kind: 'cannot', wrong: expect.stringContaining('takes the ground') });
    const floating = { ...rode, chain: null, rope: { fibre: 'polypropylene', size_mm: 12, length_m: 120 } } as const;
    expect(at({ wind_kn: 1, current_kn: 0 }, 120, floating)).toMatchObject({ kind: 'cannot', where: 'rope' });
  });

  it('says in the working of the pull which of her sizes are only guesses', () => {
    const working = (guessed: NonNullable<typeof book.boat.guessed>) => {
      const found = groundTold({ ...book, boat: { ...book.boat, guessed } }, rode, rode.anchorage!, null);
      return found.kind === 'told' ? figure(found, 'load').working : [];
    };
    const part = working(['beam_m', 'mastHeight_m']).find(({ title }) => title === 'Not measured');
    expect(part?.lines.join(' ')).toContain(`beam ${book.boat.beam_m} m.`);
    // the mast is not in the sum
    expect(working(['mastHeight_m']).some(({ title }) => title === 'Not measured')).toBe(false);
  });

  it('says what stands against it besides', () => {
    expect(told({ depth_m: 0.8, fall_m: 0.6 }).against.join(' ')).toContain('she takes the ground');
    expect(told({}, null, { ...rode, chain: null }).against.join(' ')).toContain('chafes');
    const thicker = { ...rode, chain: { size_mm: 8, length_m: 10 } } as const;
    expect(told({}, null, thicker).against).toEqual([
      'Here it has 8 mm chain, its load path 6 mm chain: measure, and change the one that is wrong.',
    ]);
    expect(told().against).toEqual([]);
  });

  it('gives its pull as a load case, with the wind it is for', () => {
    const { loadCase } = told();
    expect(loadCase).toMatchObject({ name: 'At anchor in 20 kn', wind_kn: 20 });
    expect(figure(told(), 'bow').figure).toBe(`${(loadCase.force_N / 1000).toFixed(2)} kN`);
  });

  it('has a working for every figure, with its sources', () => {
    for (const { working, of } of told().figures) {
      expect(working[0]!.lines.length, of).toBeGreaterThan(0);
      if (of !== 'under')
        expect(
          working.some(({ title }) => title.startsWith('From')),
          of,
        ).toBe(true);
    }
  });

  it('takes a windage that a boat of her sizes could have', () => {
    // 5.6 m with a cabin: two to four square metres from ahead, common practice
    expect(assumedWindage_m2(book.boat)).toBeGreaterThan(2);
    expect(assumedWindage_m2(book.boat)).toBeLessThan(4);
  });
});
