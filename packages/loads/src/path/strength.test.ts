import { describe, expect, it } from 'vitest';
import { ask, figureOf } from '#working';
import { endingQuestions } from './ending-questions.ts';
import { cellsFor, sizesIn } from './printed.ts';
import { strengthQuestions } from './strength-questions.ts';

const all = [...strengthQuestions(), ...endingQuestions()];
const answerTo = (id: string, given: Readonly<Record<string, unknown>>) => {
  const asked = ask(all.find((each) => each.id === id)!, given);
  if (asked.kind !== 'answered') throw new Error(asked.faults.map(({ wrong }) => wrong).join('; '));
  return asked.answer;
};
const figure = (id: string, given: Readonly<Record<string, unknown>>, symbol: string) =>
  figureOf(answerTo(id, given), symbol)?.value;

describe('a strength', () => {
  it('is unknown for a size that no table has, and says which sizes there are', () => {
    const answer = answerTo('loads.wire', { laid: '1x19', size: 4.5 });
    expect(answer).toMatchObject({ kind: 'truth', because: expect.stringContaining('2, 2.5, 3, 4, 5, 6, 7, 8') });
    expect(figureOf(answer, 'F')?.value).toBe('unknown');
  });

  it('is the lowest that any table prints for the size', () => {
    const columns = [
      { table: 'one', unit: 'kN', source: 'a', read: { 6: 5 }, recalled: { 8: 9 } },
      { table: 'other', unit: 'kgf', source: 'b', read: { 6: 480, 8: 1000 }, recalled: {} },
    ] as const;
    expect(cellsFor(columns, 6).map(({ column }) => column.table)).toEqual(['other', 'one']);
    expect(cellsFor(columns, 8)[0]).toMatchObject({ seen: 'recalled', force_N: 9000 });
    expect(sizesIn(columns)).toEqual([6, 8]);
  });

  // fact of the trade, seamanship notes: nylon loses strength when wet, polyester does not
  it('counts the wet against nylon alone', () => {
    const breaking = (fibre: string, wet: string) => figure('loads.rope', { fibre, size: 10, wet }, 'F') as number;
    expect(breaking('nylon', 'yes') / breaking('nylon', 'no')).toBeCloseTo(0.8, 12);
    expect(breaking('polyester', 'yes')).toBe(breaking('polyester', 'no'));
  });

  it('never takes a steel lifting shackle for a stainless one', () => {
    expect(figure('loads.shackle', { make: 'stainless', size: 9 }, 'F')).toBe('unknown');
    expect(figure('loads.shackle', { make: 'lifting', size: 9 }, 'WLL')).toBe(1);
  });

  it('keeps working and breaking load apart, the factor between them shown', () => {
    const answer = answerTo('loads.wire', { laid: '7x19', size: 4, use: 'hoist' });
    const [breaking, working, factor] = ['F', 'W', 'n'].map((symbol) => figureOf(answer, symbol)?.value as number);
    expect(breaking! / working!).toBeCloseTo(factor!, 12);
    expect(answer.sources.some(({ title }) => title.includes('2006/42/EC'))).toBe(true);
  });

  it.each([
    [
      'rope',
      'fibre',
      ['polyester', 'nylon', 'polypropylene', 'polyester-braid', 'polyethylene-braid'],
      [4, 6, 8, 10, 12, 14, 16],
    ],
    ['wire', 'laid', ['1x19', '7x7', '7x19'], [2, 3, 4, 5, 6, 7, 8]],
  ] as const)('stands in the tables for every everyday size of %s', (gear, field, kinds, sizes) => {
    for (const kind of kinds)
      for (const size of sizes) {
        expect(figure(`loads.${gear}`, { [field]: kind, size }, 'F')).toBeGreaterThan(0);
      }
  });

  it('is taken of wire over a bend by the next lower printed ratio', () => {
    expect(figure('loads.bend', { ratio: 12 }, 'k')).toBe(86);
    expect(figure('loads.bend', { ratio: 0.5 }, 'k')).toBe('unknown');
  });
});
