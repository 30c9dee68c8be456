import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finding, type NotLooked, type Remedy, subjects } from './finding.ts';
import { fitAnswer } from './fit-answer.ts';

const finding = (id: string, parts: Partial<Finding> = {}): Finding => ({
  id,
  subject: 'jobs',
  bearing: 'sound',
  words: id,
  because: [],
  remedies: [],
  cautions: [],
  of: null,
  ...parts,
});
const clean = subjects.map((subject) => finding(`sound ${subject}`, { subject }));
const rank = { 'nothing known against it': 0, 'fit with conditions': 1, 'not fit': 2 } as const;

describe('fitAnswer', () => {
  it('says of a clean boat that nothing is known against it, and what was not looked at', () => {
    const notLooked: NotLooked = { subject: 'trailer', words: 'ball load', because: 'nothing was weighed' };
    const answer = fitAnswer(clean, [notLooked]);
    expect(answer).toMatchObject({ verdict: 'nothing known against it', stops: [], conditions: [], toMakeFit: [] });
    expect(answer.sound).toHaveLength(subjects.length);
    expect(answer.notLooked).toEqual([notLooked]);
  });

  it.each(subjects)('is turned by one thing of %s alone', (subject) => {
    expect(fitAnswer([...clean, finding('x', { subject, bearing: 'stops' })], []).verdict).toBe('not fit');
    expect(fitAnswer([...clean, finding('x', { subject, bearing: 'condition' })], []).verdict).toBe(
      'fit with conditions',
    );
  });

  it('loses none when many hold', () => {
    const many = subjects.flatMap((subject) => [
      finding(`a ${subject}`, { subject, bearing: 'stops' }),
      finding(`b ${subject}`, { subject, bearing: 'condition' }),
      finding(`c ${subject}`, { subject, bearing: 'stops' }),
    ]);
    const { stops, conditions, sound } = fitAnswer([...many, ...clean], []);
    expect([stops.length, conditions.length, sound.length]).toEqual([
      2 * subjects.length,
      subjects.length,
      subjects.length,
    ]);
    expect(stops.map(({ subject }) => subject)).toEqual(subjects.flatMap((subject) => [subject, subject]));
  });

  const remedy = (words: string, minutes: number | null, parts: Partial<Remedy> = {}): Remedy => ({
    words,
    minutes,
    waits: '',
    inHand: true,
    inTime: null,
    leaves: 'nothing',
    of: null,
    ...parts,
  });

  it('tells what would make her fit, what can be worked at first and least work first', () => {
    const { toMakeFit } = fitAnswer(
      [
        finding('plate', {
          bearing: 'stops',
          remedies: [remedy('rebed it', 120), remedy('a calm day', null, { inHand: false })],
        }),
        finding('light', { bearing: 'stops', remedies: [remedy('a new bulb', 10), remedy('find the fault', null)] }),
        finding('mast', { bearing: 'stops', remedies: [remedy('rebed it', 120)] }),
        finding('hatch', { bearing: 'condition', remedies: [remedy('not told here', 5)] }),
      ],
      [],
    );
    expect(toMakeFit.map(({ words }) => words)).toEqual(['a new bulb', 'rebed it', 'find the fault', 'a calm day']);
    expect(toMakeFit[1]?.mends).toEqual(['plate', 'mast']);
  });

  it('chooses the least work that leaves nothing that stops her, and says what is left then', () => {
    const both = remedy('the whole path anew', 60);
    const stops = [
      finding('plate', { bearing: 'stops', remedies: [remedy('a new shackle', 20), both] }),
      finding('splice', { bearing: 'stops', remedies: [both] }),
      finding('lashing', {
        bearing: 'stops',
        remedies: [remedy('do its job', 90), remedy('trust it anew', null, { leaves: 'condition' })],
      }),
    ];
    const { least } = fitAnswer([...stops, finding('hatch', { bearing: 'condition' })], []);
    // the shackle is tried first and left away again: the path anew mends it too
    expect(least?.work.map(({ words }) => words)).toEqual(['the whole path anew', 'do its job']);
    expect(least).toMatchObject({ minutes: 150, notKnown: 0, conditions: ['hatch'] });
    const worn = finding('worn', {
      bearing: 'stops',
      remedies: [remedy('look it over', null, { leaves: 'condition' })],
    });
    expect(fitAnswer([worn], []).least).toMatchObject({ minutes: 0, notKnown: 1, conditions: ['worn'] });
    expect(fitAnswer([...stops, finding('lost', { bearing: 'stops' })], []).least).toBeNull();
    expect(fitAnswer([finding('hatch', { bearing: 'condition' })], []).least).toBeNull();
  });

  it('once the least work is done nothing stops her, and none of it was for nothing', () => {
    const anyRemedy = fc.record({
      words: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
      minutes: fc.option(fc.integer({ min: 1, max: 500 })),
      inHand: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(fc.array(anyRemedy, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 8 }),
        (all) => {
          const stops = all.map((each, i) =>
            finding(String(i), {
              bearing: 'stops',
              remedies: each.map(({ words, minutes, inHand }) => remedy(words, minutes, { inHand })),
            }),
          );
          const work = fitAnswer(stops, []).least!.work;
          const left = (without: string | null) =>
            stops.filter(({ id }) => !work.some(({ words, mends }) => words !== without && mends.includes(id)));
          expect(fitAnswer(left(null), []).verdict).not.toBe('not fit');
          for (const { words } of work) expect(left(words).length).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('refuses two findings of one id', () => {
    expect(() => fitAnswer([finding('a'), finding('a')], [])).toThrow('two findings have the id a');
  });

  it('is never the better for one thing more, and never loses one', () => {
    const any = fc.record({
      subject: fc.constantFrom(...subjects),
      bearing: fc.constantFrom('stops' as const, 'condition' as const, 'sound' as const),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 30 }), any, (parts, more) => {
        const before = parts.map((each, i) => finding(String(i), each));
        const after = fitAnswer([...before, finding('more', more)], []);
        expect(rank[after.verdict]).toBeGreaterThanOrEqual(rank[fitAnswer(before, []).verdict]);
        const told = [...after.stops, ...after.conditions, ...after.sound].map(({ id }) => id);
        expect(told.sort()).toEqual([...before.map(({ id }) => id), 'more'].sort());
      }),
    );
  });
});
