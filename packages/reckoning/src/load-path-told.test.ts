import { describe, expect, it } from 'vitest';
import type { Book, LoadPathRecord, PathPartRecord } from '#boat-book';
import { loadPathsTold } from './load-path-told.ts';
import { smallBook } from './testing/small-book.ts';

const plain = { name: '', since: null, juryRig: null, marked: null, signs: [] } as const;
const wire: PathPartRecord = {
  ...plain,
  id: 'wire',
  kind: 'wire',
  laid: '1x19',
  size_mm: 4,
  make: '316',
  since: '2024-05-01',
};
const swage: PathPartRecord = { ...plain, id: 'swage', kind: 'ending', ending: 'swage' };
const lashing: PathPartRecord = {
  ...plain,
  id: 'lashing',
  name: 'Lashing',
  kind: 'lashing',
  fibre: 'polyester',
  size_mm: 4,
  passes: 2,
  since: '2026-05-01',
  juryRig: 'rig',
};
const shroud: LoadPathRecord = {
  name: 'Starboard shroud',
  use: 'standing-rigging',
  zone: null,
  parts: [wire, swage, lashing],
  cases: [{ id: 'beat', name: 'Beating', force_N: 1325, wind_kn: 15, from: 'a guess' }],
  note: '',
};
const told = (path: Partial<LoadPathRecord>, today = '2026-06-01') => {
  const book: Book = { ...smallBook(), loadPaths: { shroud: { ...shroud, ...path } } };
  return loadPathsTold(book, today)[0]!;
};

describe('a load path of the book', () => {
  it('says of a jury rig in it the wind it is good to, and that it is then first', () => {
    // 4 mm polyester 2.89 kN (recalled), four legs, half of them counted, a fifth of that: 1156 N; 15·√(1156/1325) = 14.01
    const { cases, parts, verdict } = told({});
    expect(cases[0]!.lines).toEqual([
      'Beating: 1.32 kN (135 kg) at 15 knots (a guess).',
      'It does not hold: Lashing at 115 % of its working load.',
      'Good to 14 knots, then Lashing is first.',
    ]);
    expect(verdict).toBe('does not hold');
    expect(parts.map(({ isWeakest, isJuryRig }) => [isWeakest, isJuryRig])).toEqual([
      [false, false],
      [false, false],
      [true, true],
    ]);
  });

  it('counts its parts as old as they are on the day', () => {
    const lashingThen = (today: string) => told({}, today).parts[2]!.atMost_N!;
    expect(lashingThen('2030-06-01') / lashingThen('2026-06-01')).toBeCloseTo(0.8, 9);
  });

  it('is unknown where it is unknown, however little it bears', () => {
    const plate: PathPartRecord = {
      ...plain,
      id: 'plate',
      kind: 'fitting',
      what: 'chain plate',
      metal: 'stainless',
      eye_mm: 12,
      thickness_mm: 4,
    };
    const found = told({ parts: [wire, swage, plate], cases: [{ ...shroud.cases[0]!, force_N: 1 }] });
    expect(found.verdict).toBe('unknown');
    expect(found.cases[0]!.lines[1]).toMatch(/^Whether it holds is unknown at 1 place\. Of the parts that are known, /);
    expect(found.findings).toMatchObject([{ parts: ['plate'], gravity: 'not known' }]);
    expect(told({ cases: [] }).verdict).toBe('no load');
  });

  it('opens the working of every figure, with whose it is', () => {
    for (const { state, working } of told({}).parts) {
      expect(state).toBe('known');
      expect(working.map(({ title }) => title)).toEqual(['Worked out', 'From']);
    }
    const from = told({}).parts[2]!.working[1]!.lines;
    expect(from.some((line) => line.includes('our assumption'))).toBe(true);
    expect(from.some((line) => line.includes('recalled'))).toBe(true);
  });

  it('says what a size up of the weakest part would change', () => {
    expect(told({}).steps).toHaveLength(1);
    expect(told({}).steps[0]).toMatch(
      /^A size up, lashing of polyester, 5 mm, 2 times round, new: the path may work at 1\.57 kN/,
    );
    // the swage is the weakest: it is the wire that has sizes
    expect(told({ parts: [wire, swage] }).steps.map((step) => step.split(':')[0])).toEqual([
      'A size up, 1x19 wire, 5 mm, new',
      'A size down, 1x19 wire, 3 mm, new',
    ]);
  });
});
