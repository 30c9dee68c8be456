import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finding, type NotLooked, subjects } from './finding.ts';
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

  it('tells what would make her fit, what can be worked at first and least work first', () => {
    const remedy = (words: string, minutes: number | null, inHand = true) => ({ words, minutes, inHand });
    const { toMakeFit } = fitAnswer(
      [
        finding('plate', { bearing: 'stops', remedies: [remedy('rebed it', 120), remedy('a calm day', null, false)] }),
        finding('light', { bearing: 'stops', remedies: [remedy('a new bulb', 10), remedy('find the fault', null)] }),
        finding('mast', { bearing: 'stops', remedies: [remedy('rebed it', 120)] }),
        finding('hatch', { bearing: 'condition', remedies: [remedy('not told here', 5)] }),
      ],
      [],
    );
    expect(toMakeFit.map(({ words }) => words)).toEqual(['a new bulb', 'rebed it', 'find the fault', 'a calm day']);
    expect(toMakeFit[1]?.mends).toEqual(['plate', 'mast']);
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
