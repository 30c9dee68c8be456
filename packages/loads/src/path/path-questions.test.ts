import { describe, expect, it } from 'vitest';
import { ask, figureOf } from '#working';
import { pathQuestions } from './path-questions.ts';
import { strengthQuestions } from './strength-questions.ts';

const asked = (id: string, given: Readonly<Record<string, unknown>>) =>
  ask(pathQuestions().find((each) => each.id === id)!, given);
const answerTo = (id: string, given: Readonly<Record<string, unknown>>) => {
  const found = asked(id, given);
  if (found.kind !== 'answered') throw new Error(found.faults.map(({ wrong }) => wrong).join('; '));
  return found.answer;
};
const holding = 'rope polyester 10 years 1 sound; ending bowline sound; shackle stainless 8 moused sound; hand pull';
const given = { parts: holding, use: 'running-rigging', load: 150, wind: 15 };

describe('loads.path', () => {
  it('names the part that is first, its load and the wind the path is good to', () => {
    const answer = answerTo('loads.path', given);
    // a hand holds 200 N: 15·√(200/150) = 17.3 knots
    expect(answer.kind).toBe('found');
    expect(figureOf(answer, 'W')).toMatchObject({ value: 0.2, meaning: expect.stringContaining('part 4, a hand') });
    expect(figureOf(answer, 'good to')?.value).toBeCloseTo(15 * Math.sqrt(200 / 150), 9);
    expect(figureOf(answer, 'u 4')?.value).toBeCloseTo(75, 9);
    expect(answer.sources.some(({ seen }) => seen === 'recalled')).toBe(true);
  });

  it('does not hold over a working load, and says how far', () => {
    const answer = answerTo('loads.path', { ...given, load: 300 });
    expect(answer).toMatchObject({
      kind: 'truth',
      statement: 'It does not hold: part 4, a hand that pulls: 150 % of its working load',
    });
  });

  it('is unknown where a part is, and counts the places', () => {
    const answer = answerTo('loads.path', { ...given, parts: `${holding}; fitting cleat aluminium sound` });
    expect(answer).toMatchObject({ kind: 'truth', statement: 'Unknown at 1 place' });
    expect(figureOf(answer, 'unknown')?.value).toBe(1);
  });

  it('has no wind to be good to where the load is not the wind’s', () => {
    expect(figureOf(answerTo('loads.path', { ...given, wind: 0 }), 'good to')).toBeUndefined();
  });

  it.each([
    ['rope polyester', /part 1, ‘rope polyester’: its size/],
    ['rope polyester 10; string 4', /part 2, ‘string 4’: ‘string 4’ does not begin/],
    ['rope polyester 0.1', /size in mm 0.1 is out of range/],
    ['shackle brass 8', /its make is not said/],
    ['shackle stainless 8 pin', /no number comes after ‘pin’/],
    ['chain galvanised 8 grade 50', /there is no grade 50/],
    ['rope polyester 10 sound faded', /cannot be sound and faded/],
    ['rope polyester 10 wobbly', /‘wobbly’ says nothing of a rope/],
    ['rope polyester 10 marked 12', /its mark is not said/],
    [' ; ', /no parts are given/],
  ])('refuses %s, with where it is and what would be right', (parts, wrong) => {
    const found = asked('loads.path', { ...given, parts });
    expect(found).toMatchObject({ kind: 'refused', faults: [{ where: 'parts', wrong: expect.stringMatching(wrong) }] });
    if (found.kind === 'refused') expect(found.faults[0]!.right).not.toBe('');
  });
});

describe('loads.fit', () => {
  const chain = 'chain galvanised 6 grade 30';
  const anchor = 'fitting anchor galvanised eye 14 thickness 10';

  // DIN 766 as a chain works prints it: 7.2 mm inside a link of 6 mm
  it('finds the pin that does not go through the end link, and a shackle of the tables that does', () => {
    const answer = answerTo('loads.fit', { parts: `${chain}; shackle galvanised 8 pin 8 jaw 16 moused; ${anchor}` });
    expect(answer).toMatchObject({ kind: 'truth', statement: 'It does not fit' });
    expect(figureOf(answer, '1–2')?.value).toContain('the pin of the shackle is 8 mm');
    // a works’ sheet: body 5, pin 6, jaw 10, ear 13
    expect(figureOf(answer, 'instead of 2')?.value).toBe('stamped steel shackle, 5 mm');
    const mended = answerTo('loads.fit', { parts: `${chain}; shackle lifting 5 moused; ${anchor}` });
    expect(mended.kind).toBe('found');
  });

  it('says when no shackle of the tables goes there', () => {
    const narrow = `${chain} inside 2; shackle stainless 8 moused; ${anchor}`;
    expect(figureOf(answerTo('loads.fit', { parts: narrow }), 'instead of 2')?.value).toMatch(/^none/);
  });
});

describe('a part of a path', () => {
  // two ways through the tables: the question about one part, and the same part as a path of its own
  it.each([
    [
      'loads.rope',
      ['polyester', 'nylon', 'polypropylene', 'polyester-braid', 'polyethylene-braid'],
      'fibre',
      [4, 6, 8, 10, 12, 14, 16],
      (kind: string, size: number) => `rope ${kind} ${size}`,
    ],
    [
      'loads.wire',
      ['1x19', '7x7', '7x19'],
      'laid',
      [2, 2.5, 3, 4, 5, 6, 7, 8],
      (kind: string, size: number) => `wire ${kind} ${size}`,
    ],
    [
      'loads.chain',
      ['30', '40'],
      'grade',
      [5, 6, 7, 8, 10],
      (kind: string, size: number) => `chain galvanised ${size} grade ${kind}`,
    ],
    [
      'loads.shackle',
      ['stainless', 'lifting'],
      'make',
      [5, 6, 8, 16],
      (kind: string, size: number) => `shackle ${kind} ${size} moused`,
    ],
  ] as const)('bears what %s says of it, new', (id, kinds, field, sizes, words) => {
    const single = strengthQuestions().find((each) => each.id === id)!;
    for (const kind of kinds)
      for (const size of sizes) {
        const use = id === 'loads.chain' ? {} : { use: 'ground-tackle' };
        const alone = ask(single, { [field]: kind, size, ...use });
        if (alone.kind !== 'answered') throw new Error(alone.faults[0]!.wrong);
        const parts = `${words(kind, size)} years 0 sound`;
        const path = answerTo('loads.path', { parts, use: 'ground-tackle', load: 1, wind: 0 });
        expect(figureOf(path, 'W')?.value).toBeCloseTo(figureOf(alone.answer, 'W')!.value as number, 9);
      }
  });
});
