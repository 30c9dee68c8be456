/** That a paper's printed last day rules, and that one good until a day is good on it: facts of the trade. */
import { describe, expect, it } from 'vitest';
import type { Book, PaperRecord } from '#boat-book';
import { demoBook } from '../../../examples/demo-book.ts';
import { duesToMake } from './due-job.ts';
import { duesOfBook } from './due-of-book.ts';
import { dueWhen } from './dues-told.ts';
import { duesAndPapers } from './paper-dues.ts';

const today = '2026-05-06';
const demo = demoBook(today);
const paper = (title: string, parts: Partial<PaperRecord>): PaperRecord => ({
  title,
  kind: 'insurance',
  blob: 'a'.repeat(64),
  bytes: 1,
  type: 'application/pdf',
  file: 'paper.pdf',
  added: `${today}T08:00:00Z`,
  expires: '2026-06-20',
  fitting: null,
  job: null,
  note: '',
  ...parts,
});
const withPapers = (papers: Record<string, PaperRecord>, dues: Book['dues'] = {}): Book => ({ ...demo, papers, dues });
const told = (book: Book) => duesAndPapers(book, today).map(({ due, stage }) => `${due.title}: ${stage}`);

describe('papers among what falls due', () => {
  it('stand there with their last day, soon from a month before, and are no job in a job day', () => {
    const book = withPapers({
      later: paper('Insurance', {}),
      soon: paper('Registration', { kind: 'registration', expires: '2026-05-20' }),
      past: paper('Survey', { kind: 'survey', expires: '2026-05-05' }),
      never: paper('Manual of the outboard', { kind: 'manual', expires: null }),
    });
    expect(told(book)).toEqual(['Survey: past', 'Registration: soon', 'Insurance: later']);
    const [survey, registration] = duesAndPapers(book, today);
    expect(dueWhen(survey!, today)).toBe('Out of date since 5 May, 1 day ago.');
    expect(dueWhen(registration!, today)).toBe('Good until 20 May, in 14 days.');
    expect(registration).toMatchObject({ paper: 'soon', due: { consequence: 'unlawful' } });
    expect(duesToMake(duesAndPapers(book, today))).toEqual([]);
  });

  it('go once the renewal is put in, whatever year stands in its name', () => {
    const papers = {
      old: paper('Insurance 2026', { expires: '2026-05-20' }),
      renewed: paper('Insurance 2027', { expires: '2027-05-20' }),
      trailer: paper('Insurance of the trailer', { expires: '2026-05-30' }),
    };
    expect(told(withPapers(papers))).toEqual(['Insurance of the trailer: soon', 'Insurance 2027: later']);
  });

  it('are not told twice where the keeper put the same date in as a due', () => {
    const own = Object.values(demo.dues)[0]!;
    const dues = { own: { ...own, title: 'Insurance', printed: '2026-06-20', every: null, season: null, uses: [] } };
    const book = withPapers({ later: paper('insurance', {}) }, dues);
    expect(told(book)).toHaveLength(1);
    expect(duesOfBook(book, today)).toHaveLength(1);
  });
});
