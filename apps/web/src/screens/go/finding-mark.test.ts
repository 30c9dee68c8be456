import { expect, it } from 'vitest';
import type { Book } from '#boat-book';
import type { Finding } from '#fit-to-go';
import { moreInWords, worstFirst } from './finding-mark.ts';

const book = {
  jobs: { a: { consequence: 'danger' }, b: { consequence: 'unlawful' }, c: { consequence: 'stops-sailing' } },
  dues: {},
} as unknown as Book;
const finding = (id: string, parts: Partial<Finding> = {}): Finding => ({
  ...{ id, subject: 'jobs', bearing: 'stops', words: id, because: [], remedies: [], cautions: [] },
  of: { collection: 'jobs', id },
  ...parts,
});
const all = [finding('c'), finding('a'), finding('rig', { subject: 'jury rigs', of: null }), finding('b')];

it('tells the worst first, and what is as bad in the order it came, and loses none', () => {
  expect(worstFirst(book, all).map(({ id }) => id)).toEqual(['a', 'rig', 'b', 'c']);
});

it('says of what is folded away how many there are and how bad', () => {
  expect(moreInWords(book, all)).toBe('4 more: 2 are dangers, 1 is unlawful and 1 stops her');
});
