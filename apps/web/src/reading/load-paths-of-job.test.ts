import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../examples/demo-book.ts';
import { loadPathsOfJob } from './load-paths-of-job.ts';

const book = demoBook('2026-05-09');
const named = (title: string, zone: string | null) => loadPathsOfJob(book, { title, zone }).map(({ name }) => name);

describe('the load paths a job is about', () => {
  it('are those it names, wherever it is', () => {
    expect(named('Change the anchor shackle: Anchor rode', null)).toEqual(['Anchor rode']);
  });

  it('are those where it is, when it says a word of them or of their parts', () => {
    expect(named('Shackle squeaks', 'bow')).toEqual(['Anchor rode']);
    expect(named('Shackle squeaks', 'cabin')).toEqual([]);
    expect(named('Paint the stem', 'bow')).toEqual([]);
  });
});
