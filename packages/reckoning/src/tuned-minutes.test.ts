import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceOf } from '#workplan';
import { oddsBandInWords, oddsInWords } from './odds-in-words.ts';
import { job, smallBook, step } from './testing/small-book.ts';
import { kindOfStep, timesSpentByKind, tunedInWords, tunedMinutes, tunerOf } from './tuned-minutes.ts';

const before = { low: 40, likely: 60, high: 100 };

describe('minutes really spent tune the estimate', () => {
  it('draws four steps that took twice as long half of the way', () => {
    // by hand: mean of ln is ln 2, z = 4/8 = ½, so the factor is √2 = 1.414: 40, 60, 100 become 57, 85, 141
    const tuned = tunedMinutes(before, Array(4).fill({ likely: 30, spent: 60 }));
    expect(tuned.factor).toBeCloseTo(Math.SQRT2, 12);
    expect(tuned.after).toEqual({ low: 57, likely: 85, high: 141 });
    expect(tuned.before).toEqual(before);
    expect(tuned.working.join(' ')).toContain('2.00 to the power 0.50 = 1.41');
  });

  it('leaves the estimate where nothing is known, and where all went as thought', () => {
    expect(tunedMinutes(before, []).after).toEqual(before);
    expect(tunedMinutes(before, [{ likely: 45, spent: 45 }]).after).toEqual(before);
  });

  it('twice as long and half as long make up for each other', () => {
    const both = [
      { likely: 30, spent: 60 },
      { likely: 30, spent: 15 },
    ];
    expect(tunedMinutes(before, both).factor).toBeCloseTo(1, 12);
  });

  it('stays between what was thought and what was seen, and nears it as steps come in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 15, max: 240 }), fc.integer({ min: 1, max: 40 }), (spent, n) => {
        const entry = { likely: 60, spent };
        const [few, more] = [n, n + 1].map((count) => tunedMinutes(before, Array(count).fill(entry)).factor);
        const seen = spent / 60;
        expect(Math.abs(Math.log(more! / seen))).toBeLessThanOrEqual(Math.abs(Math.log(few! / seen)) + 1e-12);
        expect((few! - 1) * (seen - 1)).toBeGreaterThanOrEqual(-1e-12);
      }),
      { seed: 1 },
    );
  });

  it('one mad entry counts for no more than four times', () => {
    const mad = tunedMinutes(before, [{ likely: 10, spent: 5000 }]);
    expect(mad.factor).toBeCloseTo(4 ** 0.2, 12);
  });

  it('refuses minutes that are none', () => {
    expect(() => tunedMinutes(before, [{ likely: 0, spent: 5 }])).toThrow(RangeError);
  });

  it('reads the log: finished steps of the kind, each by the entry known last', () => {
    const done = { kind: 'done', started: '2026-05-01T08:00:00Z', finished: '2026-05-01T09:00:00Z' } as const;
    const entry = (of: string, spent_min: number | null, order: number) => ({
      at: '2026-05-01T09:00:00Z',
      kind: 'step done' as const,
      job: 'hull',
      step: of,
      zone: null,
      who: '',
      spent_min,
      text: '',
      order,
    });
    const book = {
      ...smallBook({
        jobs: { hull: job('Hull') },
        steps: {
          a: step('hull', 0, 'Sand the stem', { progress: done }),
          b: step('hull', 1, 'Sand the keel', { progress: done }),
          c: step('hull', 2, 'Fill the chips', { progress: done }),
          d: step('hull', 3, 'Sand it all'),
        },
      }),
      log: {
        1: entry('a', 50, 1),
        2: entry('a', 80, 2),
        3: entry('b', null, 3),
        4: entry('c', 20, 4),
        5: entry('d', 9, 5),
      },
    };
    expect(
      timesSpentByKind(book)
        .get(kindOfStep('SAND the rail'))
        ?.map(({ spent }) => spent),
    ).toEqual([80]);
    // by hand: ln 80/30 = 0.981, z = 1/5, factor e^0.196 = 1.217: 20, 30, 45 become 24, 37, 55
    const d = { title: 'Sand it all', minutes: { low: 20, likely: 30, high: 45 }, hands: 1 };
    const tuned = tunerOf(book)(d);
    expect(tunedInWords(d.title, tuned)).toBe(
      "Counted as 24, 37 and 55 min: what one step like it ('sand') really took.",
    );
    expect(tunerOf(book)({ ...d, hands: 0 }).after).toEqual(d.minutes);
  });
});

describe('odds in words', () => {
  it('says so many of 100', () => {
    expect(oddsInWords(chanceOf(830, 1000))).toBe('83 of 100');
    expect(oddsInWords(chanceOf(999, 1000))).toBe('over 99 of 100');
    expect(oddsInWords(chanceOf(3, 1000))).toBe('under 1 of 100');
    expect(oddsInWords(chanceOf(1000, 1000))).toBe('100 of 100');
    expect(oddsInWords(chanceOf(0, 1000))).toBe('0 of 100');
  });

  it('says how far so few runs may be off', () => {
    // Wilson for 830 of 1000: 80.5 to 85.2
    expect(oddsBandInWords(chanceOf(830, 1000))).toBe('80 to 86 of 100, from 1000 runs');
  });
});
