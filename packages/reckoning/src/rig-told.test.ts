import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { MastRecord, StayReading, StayRecord } from '#boat-book';
import { raisingTold, sidewaysTold, vangTold } from './mast-told.ts';
import { foretoldInWords, foundInWords, sinceInWords, stayInWords, turnsInWords } from './stay-in-words.ts';
import { creptSince, staysOfBook, turnsTo } from './stay-told.ts';

const forestay: StayRecord = {
  name: 'Forestay',
  zone: null,
  laid: '1x19',
  size_mm: 4,
  length_m: 6.4,
  screw: { thread: 'unf-5-16', ends: 'both' },
  aim_pct: 12,
  made: null,
  note: '',
};
const pulled = (aside_mm: number) => ({ kind: 'pull', pulledAt_m: 1.5, pull_N: 50, aside_mm }) as const;
const reading = (on: string, order: number, part: Partial<StayReading>): StayReading => ({
  stay: 'forestay',
  on,
  moment: 'in between',
  told: pulled(37),
  turns: 0,
  note: '',
  order,
  ...part,
});
const stayWith = (readings: readonly StayReading[], record: Partial<StayRecord> = {}) =>
  staysOfBook({
    stays: { forestay: { ...forestay, ...record } },
    stayReadings: Object.fromEntries(readings.map((each, i) => [`r${i}`, each])),
  })[0]!;

describe('a stay of the book', () => {
  it('after towing is told how many turns bring it back', () => {
    const stay = stayWith([
      reading('2026-05-02', 1, { moment: 'before towing' }),
      reading('2026-05-03', 2, { moment: 'after towing', told: pulled(55) }),
    ]);
    // by hand: 1426 N and 766 N at rest; 660 N on 6.4 m of 1.351 MN is 3.13 mm, at 2.117 mm a turn
    expect(turnsTo(forestay, stay.readings[1]!, stay.readings[0]!.load.tension_N).mm).toBeCloseTo(3.13, 2);
    expect(stayInWords(stay).next[0]).toEqual({
      gravity: 'worsens',
      words: expect.stringContaining('At least 1.5 turns tighter brings it back to 1430 N.'),
    });
  });

  it('that hangs slack is too long by what it sways, and needs the turns of both', () => {
    const stay = stayWith([
      reading('2026-05-02', 1, { moment: 'before towing' }),
      reading('2026-05-03', 2, { moment: 'after towing', told: { kind: 'sway', sway_mm: 80 } }),
    ]);
    // 2·0.08²/6.4 m is 2 mm loose, and 1426 N of stretch is 6.76 mm
    expect(foundInWords(stay.readings[1]!)).toContain('2.0 mm too long');
    expect(turnsTo(forestay, stay.readings[1]!, stay.readings[0]!.load.tension_N).mm).toBeCloseTo(8.76, 1);
  });

  it('has its readings in the order of their days, whatever order they were put in', () => {
    const stay = stayWith([reading('2026-05-03', 1, { told: pulled(55) }), reading('2026-05-02', 2, {})]);
    expect(stay.readings.map(({ reading: { on } }) => on)).toEqual(['2026-05-02', '2026-05-03']);
  });

  it('grows only by what no turn took up, and is not called creeping for what cannot be read', () => {
    const eased = stayWith([
      reading('2026-03-02', 1, {}),
      // one turn easier lets out 2.117 mm, 447 N
      reading('2026-05-02', 2, { turns: -1, told: pulled(47) }),
    ]);
    expect(creptSince(eased)!.mm).toBeCloseTo(0, 0);
    expect(stayInWords(eased).next.every(({ gravity }) => gravity === 'plain')).toBe(true);
    const crept = stayWith([reading('2026-03-02', 1, {}), reading('2026-05-02', 2, { told: pulled(60) })]);
    expect(stayInWords(crept).next[0]).toEqual({ gravity: 'worsens', words: expect.stringContaining('has grown by') });
    expect(
      creptSince(stayWith([reading('2026-05-01', 1, {}), reading('2026-05-02', 2, { told: pulled(60) })])),
    ).toBeNull();
  });

  it('tightened is told what came of what was foretold, and what to look at where nothing came', () => {
    const tightened = (aside_mm: number) =>
      sinceInWords(
        stayWith([
          reading('2026-03-02', 1, { told: pulled(47) }),
          reading('2026-05-02', 2, { turns: 2, told: pulled(aside_mm) }),
        ]).readings[1]!,
      );
    expect(tightened(37)).toMatch(
      /2 turns tighter foretold at most \+890 N, and \+\d+ N came: \d+ %; the rest went into mast/,
    );
    expect(tightened(52)).toMatch(/something else gave or moved/);
    expect(tightened(22)).toMatch(/more than the wire can take up/);
  });

  it('foretells the next reading: as it was, or between nothing and all that its turns take up', () => {
    const [last] = stayWith([reading('2026-03-02', 1, {})]).readings;
    expect(foretoldInWords(forestay, last!, 0)).toMatch(/^Foretold, if nothing has moved: 1\d{3} to 1\d{3} N\.$/);
    // 2 turns of 2.117 mm on 6.4 m of 1.351 MN bring 894 N
    expect(foretoldInWords(forestay, last!, 2)).toContain('1430 to 2320 N');
    // easier than slack there is nothing
    expect(foretoldInWords(forestay, last!, -10)).toContain('Foretold: 0 to 1430 N');
    expect(foretoldInWords({ ...forestay, screw: null }, last!, 2)).toBeNull();
  });

  it('without a known thread is told millimetres, not turns', () => {
    const stay = stayWith([reading('2026-05-02', 1, {})], { screw: null });
    expect(stayInWords(stay).next[0]!.words).toMatch(/^0\.\d mm tighter for the 12 %/);
  });

  it('of a size no table has is told its tension and that its share is not known', () => {
    const stay = stayWith([reading('2026-05-02', 1, {})], { size_mm: 4.5 });
    expect(foundInWords(stay.readings[0]!)).toContain('no table of ours has its breaking load');
  });

  it('says turns as a hand gives them', () => {
    expect([0.1, 0.5, 1, 1.6, 2.74].map(turnsInWords)).toEqual([
      'a quarter of a turn',
      'half a turn',
      '1 turn',
      '1.5 turns',
      '2.75 turns',
    ]);
  });
});

const mast: MastRecord = {
  name: 'The mast',
  mass_kg: 30,
  massAt_m: 3.4,
  lineAt_m: 6.5,
  led: { by: 'pole', length_m: 1.5, heelAhead_m: 0, heelUp_m: 0, lean_deg: 0, spread_m: null },
  bowAhead_m: 2.6,
  bowUp_m: 0,
  from_deg: 0,
  to_deg: 85,
  shrouds: null,
  vang: null,
  note: '',
};

describe('the mast of the book', () => {
  it('is told by the handbook’s figures where it is the handbook’s mast', () => {
    const told = raisingTold(mast);
    if (told.kind !== 'told') throw new Error('refused');
    // handbook loads.mast.tackle: 769.87 N with the mast level
    expect(told.hardest.tackle_N).toBeCloseTo(769.872, 3);
    expect(told.lines[0]).toBe('The pull is hardest with the mast at 0°: 770\u00a0N in the tackle.');
  });

  it('says nothing was taken for a lead that it does not have', () => {
    const told = raisingTold({ ...mast, led: null, from_deg: 20 });
    if (told.kind !== 'told') throw new Error('refused');
    expect(told.working.map(({ title }) => title)).not.toContain('Taken, because nothing was said');
  });

  it('that cannot be raised says why and what would', () => {
    expect(raisingTold({ ...mast, led: null })).toMatchObject({
      kind: 'refused',
      faults: [{ wrong: expect.stringContaining('past the hinge'), right: expect.stringContaining('over a pole') }],
    });
  });

  it('has shrouds and a vang only where they were said', () => {
    expect(sidewaysTold(mast)).toBeNull();
    expect(vangTold(mast)).toBeNull();
    const told = sidewaysTold({ ...mast, shrouds: { at_m: 6.4, ahead_m: 0, up_m: 0, out_m: 1 } });
    expect(told?.lines[0]).toContain('abreast of the hinge');
    const aft = sidewaysTold({ ...mast, shrouds: { at_m: 6.4, ahead_m: -0.2, up_m: 0, out_m: 1 } })!;
    // 0.2 m aft: slack 6.4·0.2·cos φ over a shroud of √(6.4² + 0.2² + 1²) = 6.481 m is 20 mm at 84.2°; places are 1.5° apart
    expect(aft.holdFrom_deg).toBeGreaterThan(84.2);
    expect(aft.holdFrom_deg).toBeLessThan(85.8);
  });
});

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Every number that stands somewhere in a value, with the words that hold one. */
function unsound(value: unknown): unknown[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [value];
  if (typeof value === 'string') return /NaN|Infinity|undefined/.test(value) ? [value] : [];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(unsound) : [];
}

test('whatever mast the book takes, it is told in figures that are numbers or refused in words', () => {
  // the ranges of the book's own form
  const anyMast = fc.record({
    name: fc.constant('The mast'),
    mass_kg: between(2, 300),
    massAt_m: between(0.3, 12),
    lineAt_m: between(1, 20),
    led: fc.option(
      fc
        .record({
          by: fc.constantFrom('pole' as const, 'A-frame' as const),
          length_m: between(0.3, 6),
          heelAhead_m: between(-0.5, 3),
          heelUp_m: between(-1, 0.8),
          lean_deg: between(-30, 70),
          spread_m: between(0.1, 4),
        })
        .map((led) => (led.by === 'pole' ? { ...led, spread_m: null } : led)),
    ),
    bowAhead_m: between(0.5, 8),
    bowUp_m: between(-2, 1),
    from_deg: between(-10, 44),
    to_deg: between(45, 89),
    shrouds: fc.option(
      fc.record({ at_m: between(0.5, 20), ahead_m: between(-2, 1), up_m: between(-1, 1), out_m: between(0.1, 3) }),
    ),
    vang: fc.option(
      fc.record({
        lift_N: between(1, 20_000),
        liftAt_m: between(0.3, 8),
        along_m: between(0.1, 5),
        below_m: between(0.05, 3),
        aft_m: between(-0.5, 1.5),
      }),
    ),
    note: fc.constant(''),
  });
  let raised = 0;
  fc.assert(
    fc.property(anyMast, (any) => {
      const told = raisingTold(any);
      if (told.kind === 'told') raised++;
      else expect(told.faults[0]!.right).not.toBe('');
      expect(unsound([told, sidewaysTold(any), vangTold(any)])).toEqual([]);
    }),
    { numRuns: 400 },
  );
  expect(raised).toBeGreaterThan(40);
});

test('whatever is read of a stay, it is told in figures that are numbers', () => {
  const told = fc.oneof(
    fc.record({ kind: fc.constant('stretch' as const), stretch_mm: between(0, 60), measured_m: between(0.5, 12) }),
    fc.record({
      kind: fc.constant('pull' as const),
      pulledAt_m: between(0.2, 15),
      pull_N: between(5, 1000),
      aside_mm: between(1, 1000),
    }),
    fc.record({ kind: fc.constant('sway' as const), sway_mm: between(0, 1000) }),
  );
  const readings = fc.array(
    fc.record({
      moment: fc.constantFrom('as set' as const, 'before towing' as const, 'after towing' as const),
      told,
      turns: between(-40, 40),
      month: fc.integer({ min: 1, max: 9 }),
    }),
    { minLength: 1, maxLength: 5 },
  );
  const record = fc.record({
    laid: fc.constantFrom('1x19' as const, '7x7' as const, '7x19' as const),
    size_mm: fc.oneof(fc.constantFrom(2, 3, 4, 5, 6), between(1, 20)),
    // what is pulled or measured on it, the book holds to its length
    length_m: between(15, 30),
    screw: fc.option(fc.constant({ thread: 'm8' as const, ends: 'one' as const })),
  });
  fc.assert(
    fc.property(record, readings, (part, list) => {
      const stay = stayWith(
        list.map(({ month, ...each }, i) =>
          reading(`2026-0${month}-01`, i + 1, part.screw === null ? { ...each, turns: 0 } : each),
        ),
        part,
      );
      expect(
        unsound([stay, stayInWords(stay), stay.readings.map(foundInWords), stay.readings.map(sinceInWords)]),
      ).toEqual([]);
    }),
    { numRuns: 400 },
  );
});
