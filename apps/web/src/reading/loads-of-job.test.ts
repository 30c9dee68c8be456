import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../examples/demo-book.ts';
import { loadsOfJob } from './loads-of-job.ts';

const book = demoBook('2026-05-09');
const named = (title: string, zone: string | null) => loadsOfJob(book, { title, zone }).map(({ name }) => name);

describe('the loads a job is about', () => {
  it('are the load paths it names, wherever it is', () => {
    expect(named('Change the anchor shackle: Anchor rode', null)).toContain('Anchor rode');
  });

  it('are the load paths where it is, when it says a word of them or of their parts', () => {
    expect(named('Shackle squeaks', 'bow')).toEqual(['Anchor rode']);
    expect(named('Shackle squeaks', 'cabin')).toEqual([]);
    expect(named('Paint the stem', 'bow')).toEqual([]);
  });

  it('are the pages of what it is about, where the book has any of it', () => {
    expect(named('Renew the board wire', null)).toEqual(['The board’s hoist']);
    expect(loadsOfJob({ ...book, boardHoists: {} }, { title: 'Renew the board wire', zone: null })).toEqual([]);
    expect(named('Stain the thwart', null)).toEqual([]);
  });
});
