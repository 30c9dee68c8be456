import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LoadPathRecord, PathPartRecord } from '#boat-book';
import { caseInWind, pathJob, pathMendings, pathToGet, pathWantsInWords } from './load-path-jobs.ts';
import { loadPathTold } from './load-path-told.ts';
import { thingTaken } from './thing-to-get.ts';

const today = '2026-05-09';
const plain = { name: '', since: today, juryRig: null, marked: null, signs: [] } as const;

/** 10 mm nylon with an eye splice round a thimble, a shackle, and 6 mm chain with the end link that DIN 766 gives it. */
const rode = (shackle: Partial<Extract<PathPartRecord, { kind: 'shackle' }>>, force_N = 400): LoadPathRecord => ({
  name: 'Anchor rode',
  use: 'ground-tackle',
  zone: 'bow',
  note: '',
  cases: [{ id: 'lunch', name: 'Lunch', force_N, wind_kn: 15, from: 'a guess' }],
  parts: [
    { ...plain, id: 'line', kind: 'rope', fibre: 'nylon', size_mm: 10 },
    { ...plain, id: 'splice', kind: 'ending', ending: 'eye-splice' },
    { ...plain, id: 'thimble', kind: 'thimble', size_mm: 10, metal: 'stainless', opening_mm: 15 },
    {
      ...plain,
      id: 'shackle',
      name: 'Middle shackle',
      kind: 'shackle',
      make: 'stainless',
      size_mm: 6,
      pin_mm: 6,
      jaw_mm: 12,
      moused: true,
      ...shackle,
    },
    { ...plain, id: 'chain', kind: 'chain', grade: '30', size_mm: 6, metal: 'galvanised', inside_mm: 8 },
  ],
});

const found = (record: LoadPathRecord) => {
  const told = loadPathTold('rode', record, today);
  return pathMendings(record, told, told.cases[0] ?? null, today);
};

describe('what there is to mend in a load path', () => {
  it('is nothing that fails where every part fits and bears its load', () => {
    expect(found(rode({})).filter(({ gravity }) => gravity === 'fails')).toEqual([]);
  });

  it('is the shackle whose pin does not go through: changed, with what does to get', () => {
    // a 10 mm pin and body through a link that is open 8 mm
    const record = rode({ size_mm: 10, pin_mm: 10 });
    const [first] = found(record);
    expect(first).toMatchObject({ part: 'shackle', gravity: 'fails', mend: 'Change the middle shackle' });
    expect(first?.toGet?.wants.join('; ')).toMatch(/^a jaw of 15 mm or more; at most 7\.7 mm through it/);
    const thing = pathToGet(record, first!)!;
    expect(thing).toMatchObject({ amount: 1, unit: '' });
    const job = pathJob(record, first!, thingTaken({ stores: {} }, thing, 'store'));
    expect(job).toMatchObject({ title: 'Change the middle shackle: Anchor rode', consequence: 'danger', zone: 'bow' });
    expect(job.steps?.[0]).toMatchObject({ stores: ['store'], takes: [{ store: 'store', amount: 1, unit: '' }] });
    expect(job.steps?.[0]?.cautions?.join(' ')).toMatch(/lies to something else/);
  });

  it('is a shackle that is worn and does not fit once, with the size that would fit', () => {
    const both = found(rode({ size_mm: 10, pin_mm: 10, signs: ['worn'] })).filter(({ part }) => part === 'shackle');
    expect(both).toHaveLength(1);
    expect(both[0]).toMatchObject({ mend: 'Replace the middle shackle' });
    expect(both[0]?.toGet?.wants.join()).toMatch(/7\.7 mm/);
  });

  it('is to mouse a shackle that is not, and that alone is no danger yet', () => {
    const record = rode({ moused: false });
    const mouse = found(record).find(({ mend }) => mend === 'Mouse the middle shackle');
    expect(mouse).toMatchObject({ gravity: 'look', toGet: null });
    expect(pathToGet(record, mouse!)).toBeNull();
    expect(pathJob(record, mouse!, null)).toMatchObject({ consequence: 'worsens' });
  });

  it('is the line, not its splice, where the splice is over what it may work at; the size to get bears both', () => {
    // 10 mm wet nylon: 14.86 kN × 0.8 × 0.9 of a splice / 5 = 2.14 kN; 12 mm: 25.58 × 0.72 / 5 = 3.68 kN
    const weak = found(rode({}, 2300)).filter(({ mend }) => mend.startsWith('Fit a stronger'));
    expect(weak.map((mending) => [mending.part, pathToGet(rode({}), mending)])).toMatchObject([
      // a path does not say how long its rope is
      ['line', { name: 'Nylon rope, 12 mm', amount: null, unit: 'm' }],
    ]);
  });

  it('tells two parts apart that are called the same', () => {
    const record = rode({ name: '', size_mm: 10, pin_mm: 10 });
    const other = { ...record.parts[3]!, id: 'other' };
    const mends = found({ ...record, parts: [...record.parts, other] }).map(({ mend }) => mend);
    expect(mends).toContain('Change the stainless shackle, 10 mm (part 4)');
    expect(mends).toContain('Change the stainless shackle, 10 mm (part 6)');
  });

  it('is a part with a mark on it where no table has a size that bears it', () => {
    const weak = found(rode({}, 90_000)).find(({ part }) => part === 'line');
    expect(pathWantsInWords(weak!.toGet!)).toMatch(/^Rope: one marked for 90\.0 kN/);
  });
});

describe('whatever a path is made of', () => {
  const size_mm = fc.oneof(fc.constantFrom(4, 6, 8, 10, 12), fc.double({ min: 0.5, max: 60, noNaN: true }));
  const measured = fc.option(size_mm, { nil: null });
  const known = {
    id: fc.uuid(),
    name: fc.constantFrom('', 'Shackle', 'M6 bolt'),
    since: fc.constantFrom(null, today, '2011-01-01'),
    juryRig: fc.constant(null),
    marked: fc.constantFrom(null, { force_kN: 2, as: 'working load' as const, by: 'stamped' }),
    signs: fc.constantFrom(null, [], ['worn' as const], ['rust' as const]),
  };
  const kind = <K extends PathPartRecord['kind']>(value: K) => fc.constant(value);
  const metal = fc.constantFrom('stainless' as const, 'galvanised' as const, 'bronze' as const, 'plastic' as const);
  const anyPart: fc.Arbitrary<PathPartRecord> = fc.oneof(
    fc.record({ ...known, kind: kind('rope'), fibre: fc.constantFrom('nylon', 'polyester'), size_mm }),
    fc.record({ ...known, kind: kind('ending'), ending: fc.constantFrom('bowline', 'eye-splice', 'swage') }),
    fc.record({ ...known, kind: kind('thimble'), size_mm, metal, opening_mm: measured }),
    fc.record({
      ...known,
      kind: kind('shackle'),
      make: fc.constantFrom('stainless', 'galvanised', 'lifting'),
      size_mm,
      pin_mm: measured,
      jaw_mm: measured,
      moused: fc.constantFrom(null, true, false),
    }),
    fc.record({
      ...known,
      kind: kind('chain'),
      grade: fc.constantFrom(null, '30', '40'),
      size_mm,
      metal: fc.constant('galvanised'),
      inside_mm: measured,
    }),
    fc.record({ ...known, kind: kind('pin'), size_mm, metal, secured: fc.constantFrom(null, true, false) }),
    fc.record({
      ...known,
      kind: kind('block'),
      sheave_mm: measured,
      line_mm: measured,
      turn_deg: fc.constantFrom(null, 0, 90, 180),
      metal,
    }),
    fc.record({ ...known, kind: kind('winch'), ratio: fc.constantFrom(null, 4) }),
    fc.record({ ...known, kind: kind('hand'), how: fc.constantFrom('pull', 'crank') }),
  );
  const anyPath: fc.Arbitrary<LoadPathRecord> = fc.record({
    name: fc.constant('Path'),
    use: fc.constantFrom('standing-rigging', 'running-rigging', 'ground-tackle', 'hoist'),
    zone: fc.constant(null),
    note: fc.constant(''),
    parts: fc.uniqueArray(anyPart, { minLength: 1, maxLength: 8, selector: ({ id }) => id }),
    cases: fc
      .double({ min: 0.1, max: 1e6, noNaN: true })
      .map((force_N) => [{ id: 'one', name: 'One', force_N, wind_kn: 20, from: '' }]),
  });

  it('is told in figures that are figures, and everything found is about a part that is there', () => {
    fc.assert(
      fc.property(anyPath, (record) => {
        const told = loadPathTold('path', record, today);
        const mendings = pathMendings(record, told, told.cases[0]!, today);
        const jobs = mendings.map((mending) => {
          const thing = pathToGet(record, mending);
          return [pathJob(record, mending, thing && thingTaken({ stores: {} }, thing, 'store')), thing];
        });
        expect(JSON.stringify([told, jobs])).not.toMatch(/NaN|Infinity|undefined/);
        for (const { part } of mendings) expect(record.parts.some(({ id }) => id === part)).toBe(true);
        // one thing to do is asked for once, and names one part
        expect(new Set(mendings.map(({ mend }) => mend)).size).toBe(mendings.length);
      }),
    );
  });

  it('has something to mend for every part that works at more than it may', () => {
    fc.assert(
      fc.property(anyPath, (record) => {
        const told = loadPathTold('path', record, today);
        const over = told.cases[0]!.shares.some((share) => share !== null && share > 1);
        const fails = pathMendings(record, told, told.cases[0]!, today).some(({ gravity }) => gravity === 'fails');
        if (over) expect(fails).toBe(true);
      }),
    );
  });
});

describe('a load in another wind', () => {
  it('grows with the square of the wind, and not where it is not the wind’s', () => {
    const [lunch] = rode({}).cases;
    expect(caseInWind(lunch!, 30)).toMatchObject({ wind_kn: 30, force_N: 1600 });
    expect(caseInWind({ ...lunch!, wind_kn: null }, 30).force_N).toBe(400);
  });
});
