import { describe, expect, it } from 'vitest';
import type { Book, DueRecord } from '#boat-book';
import { dueJob, dueJobs, duesToMake } from './due-job.ts';
import { dueBefore, duesOfBook } from './due-of-book.ts';
import { dueBesideOuting, dueParts, dueWhen } from './dues-told.ts';
import { seasonJob, seasonList, seasonYear } from './season-list.ts';
import { smallBook } from './testing/small-book.ts';

const today = '2026-05-08';
const bearings: DueRecord = {
  title: 'Grease the wheel bearings',
  zone: null,
  fitting: null,
  consequence: 'danger',
  printed: null,
  every: { count: 12, unit: 'months' },
  season: null,
  uses: [],
  condition: null,
  usual: 'wheel-bearings',
  recipe: 'wheel-bearings',
  source: '',
  lastDone: '2025-05-20',
  note: '',
};
const withDue = (due: DueRecord, more: Partial<Book> = {}): Book => ({
  ...smallBook(),
  outings: {},
  ...more,
  dues: { b: due },
});
const only = (book: Book) => duesOfBook(book, today)[0]!;

describe('a due of the book', () => {
  it('is told with its day, its reason and the outing it comes before', () => {
    const book = withDue(bearings, {
      outings: { o: { title: 'First sail', date: '2026-05-29', from: '09:00', nights: 0, place: '', wind_kn: null } },
    });
    const due = only(book);
    expect(due.stage).toBe('soon');
    expect(dueWhen(due, today)).toBe('Falls due in 12 days, 20 May.');
    expect(dueParts(due, today)).toEqual(['Every 12 months, last done 20 May 2025: 20 May.']);
    expect(dueBesideOuting(due, book, today)).toBe('Falls due 9 days before ‘First sail’ on 29 May.');
  });

  it('bears on an outing to its last morning; a printed date is good on its own day', () => {
    const outing = { title: 'First sail', date: '2026-05-18', from: '09:00', nights: 2, place: '', wind_kn: null };
    const told = (due: DueRecord) => dueBefore(duesOfBook(withDue(due), today), outing);
    expect(told(bearings).due).toHaveLength(1);
    expect(told({ ...bearings, lastDone: '2025-05-21' }).due).toEqual([]);
    expect(told({ ...bearings, printed: '2026-05-20' }).due).toEqual([]);
    expect(told({ ...bearings, printed: '2026-05-19' }).due).toHaveLength(1);
    expect(told({ ...bearings, lastDone: null })).toMatchObject({ due: [], mayBe: [], unknown: [{ id: 'b' }] });
  });

  it('counts from a job of it that was done, where that is later than what the keeper says', () => {
    const book = withDue(bearings);
    const made = dueJob(book, only(book), today);
    const { steps: _, id, ...job } = made.job;
    const kept = {
      why: '',
      zone: null,
      fitting: null,
      opened: today,
      due: null,
      outing: null,
      note: '',
      said: '',
      heldTo: null,
      heldAt: null,
      afterJobs: [],
      ...job,
      fromDue: 'b',
    } as const;
    const open = { ...book, jobs: { [id!]: { ...kept, state: 'open' as const, closed: null } } };
    expect(only(open).job).toBe(id);
    expect(duesToMake(duesOfBook(open, today))).toEqual([]);
    const done = { ...book, jobs: { [id!]: { ...kept, state: 'done' as const, closed: '2026-05-08' } } };
    expect(only(done)).toMatchObject({ job: null, stage: 'later', since: { on: '2026-05-08', by: 'job' } });
    expect(only(done).falls.day?.likely).toBe('2027-05-08');
  });

  it('is reckoned anew when the day or anything it is reckoned from is another, and not for what has no part in it', () => {
    const book = withDue(bearings);
    const dues = duesOfBook(book, today);
    const ticked: Book = { ...book, log: {}, steps: {} };
    expect(duesOfBook(ticked, today)).toBe(dues);
    expect(duesOfBook(book, '2026-05-21')[0]!.stage).not.toBe(dues[0]!.stage);
    // all it asks for but the grease has come
    const got = Object.fromEntries(
      dueJob(book, dues[0]!, today).stores.map((store, i) => [`s${i}`, { ...store, onHand: i > 0, lead_days: 30 }]),
    ) as unknown as Book['stores'];
    expect(duesOfBook({ ...book, stores: got }, today)[0]).toMatchObject({ lead_d: 44, waitsFor: { known: true } });
    expect(duesOfBook(book, today)[0]!.waitsFor).toMatchObject({ known: false });
  });

  it('becomes a job of its recipe, the same on two devices, and another the next time round', () => {
    const book = withDue(bearings);
    const due = only(book);
    expect(duesToMake([due])).toEqual([due]);
    const made = dueJob(book, due, today);
    expect(made.job).toMatchObject({
      title: bearings.title,
      due: '2026-05-20',
      recipe: 'wheel-bearings',
      consequence: 'danger',
    });
    expect(made.job.steps!.length).toBeGreaterThan(3);
    expect(made.stores.length).toBeGreaterThan(0);
    expect(dueJob(book, due, today)).toEqual(made);
    const before = { ...made.job, state: 'dropped', closed: today, fromDue: 'b' } as unknown as Book['jobs'][string];
    const next = { ...book, jobs: { [made.job.id!]: before } };
    expect(dueJob(next, only(next), today).job.id).not.toBe(made.job.id);
  });

  it('of several at once, puts a thing they all take in the stores once', () => {
    const book = { ...withDue(bearings), dues: { b: bearings, c: { ...bearings, title: 'The other axle' } } };
    const dues = duesOfBook(book, today);
    const [first, second] = dueJobs(book, dues, today);
    expect(first!.stores.length).toBeGreaterThan(2);
    expect(second!.stores).toEqual([]);
    expect(second!.tools).toEqual([]);
    expect(second!.job.steps!.flatMap(({ stores = [] }) => stores).sort()).toEqual(
      first!.job.steps!.flatMap(({ stores = [] }) => stores).sort(),
    );
    expect(second!.job.id).not.toBe(first!.job.id);
  });

  it('past, asks for no day that no plan can meet; without a recipe it has one step, guessed and said to be', () => {
    const book = withDue({ ...bearings, lastDone: '2025-01-01', recipe: null });
    const { job } = dueJob(book, only(book), today);
    expect(job.due).toBeNull();
    expect(job.why).toContain('Fell due on 1 January');
    expect(job.steps).toMatchObject([{ title: bearings.title, minutes: { low: 15, likely: 30, high: 60 } }]);
    expect(job.note).toBe('No recipe is named for it: its minutes are a guess.');
  });

  it('wants its job as early as what its recipe takes is slow to get', () => {
    const slow = { seals: { name: 'Hub seals', keptAt: '', onHand: false, expected: null, lead_days: 40, note: '' } };
    expect(only(withDue(bearings)).lead_d).toBe(21);
    expect(only(withDue(bearings, { stores: slow }))).toMatchObject({
      lead_d: 54,
      waitsFor: { days: 40, known: true },
    });
  });
});

describe('the lists of the seasons', () => {
  it('hold what she has, in the season they are of', () => {
    expect(seasonYear('lay-up', '2026-11-02')).toBe(2026);
    expect(seasonYear('lay-up', '2027-02-02')).toBe(2026);
    expect(seasonYear('fit-out', '2026-11-02')).toBe(2027);
    const book = { ...smallBook(), batteries: {} };
    const ids = seasonList(book, 'lay-up', 2026).map(({ id }) => id);
    expect(ids).toContain('sails');
    expect(ids).not.toContain('battery');
  });

  it('make a job by a recipe, which the line then knows', () => {
    const book = smallBook();
    const line = seasonList(book, 'lay-up', 2026).find(({ id }) => id === 'sails')!;
    let made = 0;
    const { job } = seasonJob(book, 'lay-up', 2026, line, () => `n${++made}`);
    expect(job.steps!.length).toBeGreaterThan(1);
    const kept = { ...job, state: 'open' } as unknown as Book['jobs'][string];
    expect(seasonList({ ...book, jobs: { j: kept } }, 'lay-up', 2026).find(({ id }) => id === 'sails')!.job).toBe('j');
    expect(() => seasonJob(book, 'lay-up', 2026, { ...line, recipe: null }, () => 'x')).toThrow(/no recipe/);
  });
});
