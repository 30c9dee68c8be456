import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type Day } from '#units';
import type { DueRule, UseKind } from './due-rule.ts';
import { type DueCase, dueStage, fallsDue } from './falls-due.ts';
import type { UseCount } from './use-rate.ts';

const today = '2026-05-08' as Day;
const rule: DueRule = { printed: null, every: null, season: null, uses: [], condition: null };
const plain: DueCase = { rule, since: '2025-11-20' as Day, today, uses: [], ahead: [], measured: [] };
const on = (days: number) => addDays(today, days);
const launches = (...days: number[]): UseCount[] => days.map((n) => ({ use: 'launch', on: on(n), count: 1 }));

describe('when a thing falls due', () => {
  it('by date: so long after it was last done', () => {
    const { day, first } = fallsDue({ ...plain, rule: { ...rule, every: { count: 6, unit: 'months' } } });
    expect(day).toEqual({ low: '2026-05-20', likely: '2026-05-20', high: '2026-05-20' });
    expect(first?.kind).toBe('every');
  });

  it('goes by the printed date alone, be it sooner or later than the interval', () => {
    for (const printed of ['2026-01-31', '2031-12-31'] as Day[]) {
      const { day, parts } = fallsDue({
        ...plain,
        rule: { ...rule, printed, every: { count: 6, unit: 'months' }, season: '04-01' },
      });
      expect(day?.likely).toBe(printed);
      expect(parts).toHaveLength(1);
    }
  });

  it('counts use after the day it was last done, and not before', () => {
    const uses = launches(-300, -200, -20, -10, -3);
    const { first } = fallsDue({ ...plain, uses, rule: { ...rule, uses: [{ use: 'launch', count: 3 }] } });
    // the third launch since November was three days ago
    expect(first).toMatchObject({ kind: 'use', used: 3, day: { likely: on(-3) } });
  });

  it('takes whichever comes first, and keeps what the others say', () => {
    const uses = launches(-20, -10, -3);
    const { first, parts } = fallsDue({
      ...plain,
      uses,
      rule: { ...rule, every: { count: 12, unit: 'months' }, uses: [{ use: 'launch', count: 4 }] },
    });
    expect(first?.kind).toBe('use');
    expect(parts.map(({ kind }) => kind)).toEqual(['every', 'use']);
  });

  it('by season: the next one, unless it was done in the weeks before it', () => {
    const spring = { ...rule, season: '04-01' };
    const due = (since: Day | null) => fallsDue({ ...plain, since, rule: spring }).day?.likely;
    expect(due('2025-04-10' as Day)).toBe('2026-04-01');
    expect(due('2026-03-20' as Day)).toBe('2027-04-01');
    expect(due(null)).toBe('2027-04-01');
    expect(fallsDue({ ...plain, since: '2025-12-01' as Day, rule: { ...rule, season: '02-29' } }).day?.likely).toBe(
      '2027-02-28',
    );
  });

  it('by condition: in a line through the measures, with how near they are measured', () => {
    // 1 mm in 100 days from 5 to 4, 1 mm more to the limit of 3; each read within 0.1 mm
    const { day } = fallsDue({
      ...plain,
      rule: { ...rule, condition: { measure: 'tread', unit: 'mm', limit: 3, way: 'falls', within: 0.1 } },
      measured: [
        { on: on(-100), value: 5 },
        { on: today, value: 4 },
      ],
    });
    // low (1 − 0.1)/(1 + 0.2)·100 = 75, high (1 + 0.1)/(1 − 0.2)·100 = 137.5
    expect(day).toEqual({ low: on(75), likely: on(100), high: on(138) });
  });

  it('is due at once where a measure is at its limit, and not for the part it replaced', () => {
    const strands: DueRule = {
      ...rule,
      condition: { measure: 'broken strands', unit: '', limit: 1, way: 'rises', within: 0 },
    };
    const measured = [{ on: on(-5), value: 1 }];
    expect(fallsDue({ ...plain, rule: strands, measured }).day?.likely).toBe(on(-5));
    expect(fallsDue({ ...plain, rule: strands, measured, since: on(-5) }).day).toBeNull();
  });

  it('says what it cannot say', () => {
    const { day, parts } = fallsDue({
      ...plain,
      since: null,
      rule: { ...rule, every: { count: 12, unit: 'months' }, uses: [{ use: 'tow', count: 10 }] },
    });
    expect(day).toBeNull();
    expect(parts).toMatchObject([
      { kind: 'says nothing', because: 'last done not known' },
      { kind: 'says nothing', because: 'last done not known' },
    ]);
    expect(fallsDue({ ...plain, rule: { ...rule, uses: [{ use: 'tow', count: 10 }] } }).parts).toMatchObject([
      { because: 'no such use kept' },
    ]);
  });

  it('is past after its day, soon within its lead, later beyond', () => {
    const due = (printed: Day) => fallsDue({ ...plain, rule: { ...rule, printed } });
    expect(dueStage(due(on(-1)), today, 21)).toBe('past');
    expect(dueStage(due(today), today, 21)).toBe('soon');
    expect(dueStage(due(on(21)), today, 21)).toBe('soon');
    expect(dueStage(due(on(22)), today, 21)).toBe('later');
    expect(dueStage(fallsDue(plain), today, 21)).toBe('not known');
  });
});

describe('what always holds of a due', () => {
  const kinds: readonly UseKind[] = ['sail', 'tow', 'launch', 'night'];
  const someUse = fc.record({
    use: fc.constantFrom(...kinds),
    on: fc.integer({ min: -364, max: 0 }).map(on),
    count: fc.integer({ min: 1, max: 1 }),
  });
  // something was written down a year ago, so that what is added never moves the first day looked at
  const begun: UseCount = { use: 'engine-hours', on: on(-400), count: 1 };
  const someUses = fc.array(someUse, { maxLength: 40 }).map((uses) => [begun, ...uses]);
  const someAhead = fc.array(
    fc.record({ use: fc.constantFrom(...kinds), on: fc.integer({ min: 0, max: 400 }).map(on), count: fc.constant(1) }),
    { maxLength: 6 },
  );
  const someRule = fc.record({
    printed: fc.option(fc.integer({ min: -400, max: 2000 }).map(on)),
    every: fc.option(
      fc.record({ count: fc.integer({ min: 1, max: 60 }), unit: fc.constantFrom('days', 'weeks', 'months', 'years') }),
    ),
    season: fc.option(fc.constantFrom('04-01', '10-15', '02-29')),
    uses: fc.array(fc.record({ use: fc.constantFrom(...kinds), count: fc.integer({ min: 1, max: 60 }) }), {
      maxLength: 3,
    }),
    condition: fc.constant({ measure: 'tread', unit: 'mm', limit: 2, way: 'falls', within: 0.2 } as const),
  });
  const someCase: fc.Arbitrary<DueCase> = fc
    .record({
      rule: someRule,
      since: fc.integer({ min: -3000, max: 0 }).map(on),
      uses: someUses,
      ahead: someAhead,
      measured: fc.array(
        fc.record({
          on: fc.integer({ min: -800, max: 0 }).map(on),
          value: fc.double({ min: 0, max: 9, noNaN: true }),
        }),
        { maxLength: 6 },
      ),
    })
    .map((each) => ({ ...each, today }));
  const ends = ['low', 'likely', 'high'] as const;

  it('more use never makes it later', () => {
    fc.assert(
      fc.property(someCase, someUse, (asked, more) => {
        const before = fallsDue(asked).day;
        const after = fallsDue({ ...asked, uses: [...asked.uses, more] }).day;
        if (before) for (const end of ends) expect(after![end] <= before[end]).toBe(true);
      }),
    );
  });

  it('an outing ahead never makes it later', () => {
    fc.assert(
      fc.property(someCase, someAhead, (asked, more) => {
        const before = fallsDue(asked).day;
        const after = fallsDue({ ...asked, ahead: [...asked.ahead, ...more] }).day;
        if (before) for (const end of ends) expect(after![end] <= before[end]).toBe(true);
      }),
    );
  });

  it('it is never later than a printed date, and by dates alone it is that very day', () => {
    fc.assert(
      fc.property(someCase, fc.integer({ min: -400, max: 4000 }).map(on), (asked, printed) => {
        const printedRule = { ...asked.rule, printed };
        expect(fallsDue({ ...asked, rule: printedRule }).day!.likely <= printed).toBe(true);
        const alone = fallsDue({ ...asked, rule: { ...printedRule, uses: [], condition: null } });
        expect(alone.day).toEqual({ low: printed, likely: printed, high: printed });
      }),
    );
  });

  it('a part more never makes it later, and done later never makes it sooner by date', () => {
    fc.assert(
      fc.property(someCase, fc.integer({ min: 0, max: 300 }), (asked, days) => {
        const { day } = fallsDue(asked);
        const fewer = fallsDue({ ...asked, rule: { ...asked.rule, uses: asked.rule.uses.slice(1) } }).day;
        if (fewer) expect(day!.likely <= fewer.likely).toBe(true);
        const byDate = { ...asked, rule: { ...asked.rule, uses: [], condition: null, season: null } };
        const later = fallsDue({ ...byDate, since: addDays(asked.since!, days) }).day;
        const sooner = fallsDue(byDate).day;
        if (sooner) expect(sooner.likely <= later!.likely).toBe(true);
      }),
    );
  });

  it('its band is in order', () => {
    fc.assert(
      fc.property(someCase, (asked) => {
        const { day } = fallsDue(asked);
        if (day) expect([day.low, day.likely, day.high]).toEqual([day.low, day.likely, day.high].sort());
      }),
    );
  });
});
