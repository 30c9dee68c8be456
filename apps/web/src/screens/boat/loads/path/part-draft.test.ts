import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../../../../examples/demo-book.ts';
import { formReading } from '../../../../parts/read-form.ts';
import { type PartDraft, type PartFault, type PartKind, partDraft, partOf } from './part-draft.ts';

const read = (draft: PartDraft) => {
  const form = formReading<PartFault>();
  return { part: partOf(draft, 'this', form), faults: form.faults };
};

const inTheBook = Object.values(demoBook('2026-05-09').loadPaths).flatMap(({ parts }) => parts);

describe('a part being filled in', () => {
  it('goes back in as it came out', () => {
    expect(inTheBook.length).toBeGreaterThan(8);
    for (const part of inTheBook) expect(read(partDraft(part))).toEqual({ part: { ...part, id: 'this' }, faults: {} });
  });

  it('asks for what it is, and of that for what its strength goes by; sizes that cannot be got at may be left out', () => {
    const asked = (kind: PartKind | '') => Object.keys(read({ ...partDraft(null), kind }).faults).sort();
    expect(asked('')).toEqual(['kind']);
    expect(asked('shackle')).toEqual(['shackleMake', 'size']);
    expect(asked('chain')).toEqual(['chainMetal', 'grade', 'size']);
    expect(asked('fastenings')).toEqual(['backing', 'count', 'how', 'into', 'metal', 'pulled', 'size']);
    expect(asked('winch')).toEqual([]);
  });

  it('takes a mark in tonnes as the weight of them', () => {
    // 0.5 t is 500 × 9.80665 N = 4.903 kN
    const stamped = {
      ...partDraft(null),
      kind: 'winch',
      mark: '0,5',
      markUnit: 't',
      markedAs: 'working load',
      markedBy: 'stamped on it',
    } as const;
    expect(read(stamped).part.marked?.force_kN).toBeCloseTo(4.903, 3);
    expect(Object.keys(read({ ...stamped, markedAs: '', markedBy: '' }).faults).sort()).toEqual([
      'markedAs',
      'markedBy',
    ]);
  });

  it('tells a part that was looked at and is sound from one that was not looked at', () => {
    const winch = { ...partDraft(null), kind: 'winch' } as const;
    expect(read(winch).part.signs).toBeNull();
    expect(read({ ...winch, looked: 'yes' }).part.signs).toEqual([]);
  });
});
