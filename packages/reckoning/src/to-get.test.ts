import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book, StoreRecord } from '#boat-book';
import { addDays } from '#units';
import { startSearch } from '#workplan';
import { problemFrom } from './problem-from.ts';
import { job, jobDay, smallBook, step, weather } from './testing/small-book.ts';
import { type ToGet, toGet } from './to-get.ts';
import { toGetAtAGlance, toGetInWords } from './to-get-in-words.ts';

// Tuesday 5 May 2026, 12:00 in London
const now = '2026-05-05T11:00:00Z';
const today = '2026-05-05';

const store = (parts: Partial<StoreRecord> = {}): StoreRecord => ({
  name: 'Sealant',
  keptAt: '',
  onHand: false,
  expected: null,
  note: '',
  lead_days: null,
  ...parts,
});

const bookWith = (parts: Partial<Book> = {}) =>
  smallBook({
    jobs: { bed: job('Rebed the cleat') },
    steps: { on: step('bed', 1, 'Bed it', { stores: ['sealant'] }) },
    jobDays: { sat: jobDay('2026-05-09'), sun: jobDay('2026-05-10') },
    weather: { w: weather('2026-05-09'), v: weather('2026-05-10') },
    stores: { sealant: store() },
    ...parts,
  });

function linesOf(
  book: Book,
  at = now,
): { readonly lines: ToGet[]; readonly leftOut: readonly string[]; readonly notes: string[] } {
  const matter = problemFrom(book, { now: at });
  if (matter.kind !== 'problem') throw new Error(matter.words);
  const search = startSearch(matter.problem, { seed: 1 });
  search.advance(40);
  const outcome = search.outcome();
  return {
    lines: toGet(book, {
      planned: { problem: matter.problem, outcome },
      now: Date.parse(at),
      timeZone: 'Europe/London',
    }),
    leftOut: outcome.plan.leftOut,
    notes: matter.notes.map(({ words }) => words),
  };
}

const wordsOf = (line: ToGet | undefined) => {
  const { need, how } = toGetInWords(line!, today);
  return `${need}; ${how}`;
};

describe('what is to be got', () => {
  it('is needed by the first step that uses it, and to be ordered so many days before', () => {
    const { lines, notes } = linesOf(bookWith({ stores: { sealant: store({ lead_days: 2 }) } }));
    // ordered today, a Tuesday, it would be here on Thursday; the first job day is Saturday at 09:00, first work at 09:15
    expect(lines).toMatchObject([
      { use: { day: '2026-05-09', clock: '09:15' }, hereBy: '2026-05-09', orderBy: '2026-05-07', late: null },
    ]);
    expect(wordsOf(lines[0])).toBe(
      "needed Saturday 09:15 for 'Rebed the cleat'; not ordered, 2 days from ordering: order by Thursday",
    );
    expect(toGetAtAGlance(lines, today)).toBe('One thing to get, to order by Thursday.');
    expect(notes).toContain('Sealant: not ordered. It is planned as if ordered today, and here on Thursday 7 May.');
  });

  it('must be here the day before for a step that starts before things come', () => {
    const early = { sat: jobDay('2026-05-09', { from: '07:00' }) };
    const { lines } = linesOf(bookWith({ stores: { sealant: store({ lead_days: 2 }) }, jobDays: early }));
    expect(lines).toMatchObject([{ use: { clock: '07:15' }, hereBy: '2026-05-08', orderBy: '2026-05-06' }]);
  });

  it('holds its job behind the delivery', () => {
    const { lines, leftOut } = linesOf(bookWith({ stores: { sealant: store({ lead_days: 5 }) } }));
    // ordered on Tuesday, here on Sunday morning: not before
    expect(leftOut).toEqual([]);
    expect(lines[0]).toMatchObject({ use: { day: '2026-05-10', clock: '09:15' }, orderBy: today });
    expect(wordsOf(lines[0])).toMatch(/not ordered, 5 days from ordering: order it today$/);
    const ordered = linesOf(bookWith({ stores: { sealant: store({ lead_days: 5, expected: '2026-05-10' }) } }));
    expect(ordered.lines[0]).toMatchObject({ use: { day: '2026-05-10' }, orderBy: null, late: null });
    expect(wordsOf(ordered.lines[0])).toMatch(/ordered, here on Sunday$/);
  });

  it('is late where even ordered today it comes after the last day that could use it', () => {
    const { lines, leftOut } = linesOf(bookWith({ stores: { sealant: store({ lead_days: 9 }) } }));
    expect(leftOut).toEqual(['bed']);
    expect(lines[0]).toMatchObject({
      use: null,
      hereBy: '2026-05-10',
      orderBy: '2026-05-01',
      soonest: '2026-05-14',
      late: 'too late',
    });
    expect(wordsOf(lines[0])).toBe(
      "for 'Rebed the cleat': of use if here by Sunday; late already: ordered today it is here Thursday 14 May; it holds up 'Rebed the cleat'",
    );
    expect(toGetAtAGlance(lines, today)).toBe('One thing to get, and it is late.');
  });

  it('is late where its day has gone by', () => {
    const { lines } = linesOf(bookWith({ stores: { sealant: store({ expected: '2026-05-04' }) } }));
    expect(lines[0]).toMatchObject({ late: 'overdue' });
    expect(wordsOf(lines[0])).toMatch(
      /late: expected Monday 4 May and not marked as here; it holds up 'Rebed the cleat'$/,
    );
  });

  it('asks when it can be here where nothing is known of that, and leaves its job out', () => {
    const { lines, leftOut } = linesOf(bookWith());
    expect(leftOut).toEqual(['bed']);
    expect(wordsOf(lines[0])).toMatch(/say when it can be here/);
    expect(toGetAtAGlance(lines, today)).toBe('One thing to get, with no day it can be here.');
  });

  it('counts a thing to be had the same day from the next morning once this one has gone by', () => {
    const onTheDay = { tue: jobDay(today), wed: jobDay('2026-05-06') };
    const sealant = { sealant: store({ lead_days: 0 }) };
    const { lines } = linesOf(bookWith({ stores: sealant, jobDays: onTheDay }));
    expect(lines[0]).toMatchObject({ use: { day: '2026-05-06' }, orderBy: '2026-05-06' });
    // at 07:00 there is still time to get it
    const early = linesOf(bookWith({ stores: sealant, jobDays: onTheDay }), '2026-05-05T06:00:00Z');
    expect(early.lines[0]).toMatchObject({ use: { day: today }, orderBy: today });
  });

  it('has one line a thing, with every job it is for, the heaviest first', () => {
    const { lines } = linesOf(
      bookWith({
        jobs: {
          bed: job('Rebed the cleat'),
          hatch: job('Rebed the hatch', { consequence: 'danger' }),
          gone: job('Done', { state: 'done' }),
        },
        steps: {
          on: step('bed', 1, 'Bed it', { stores: ['sealant', 'tape'] }),
          again: step('bed', 2, 'Bed it again', { stores: ['sealant'] }),
          hatch: step('hatch', 1, 'Bed the hatch', { stores: ['sealant'] }),
          gone: step('gone', 1, 'Not any more', { stores: ['paint'] }),
        },
        stores: {
          sealant: store({ lead_days: 1 }),
          tape: store({ name: 'Tape', onHand: true }),
          paint: store({ name: 'Paint' }),
        },
      }),
    );
    expect(lines).toHaveLength(1);
    expect(lines[0]!.jobs.map(({ title }) => title)).toEqual(['Rebed the hatch', 'Rebed the cleat']);
  });

  it('goes by the dates of the jobs where there is no plan', () => {
    const book = bookWith({
      jobs: { bed: job('Rebed the cleat', { due: '2026-05-20' }) },
      stores: { sealant: store({ lead_days: 3 }) },
    });
    const lines = toGet(book, { planned: null, now: Date.parse(now), timeZone: 'Europe/London' });
    expect(lines).toMatchObject([{ hereBy: '2026-05-20', orderBy: '2026-05-17', use: null }]);
  });

  it('is planned on the morning it comes even where the clock changes that night', () => {
    // Sunday 29 March 2026: 01:00 becomes 02:00 in London; 09:00 there is 08:00 UTC
    const book = bookWith({
      jobDays: { sun: jobDay('2026-03-29', { setOut_min: 0 }) },
      weather: { w: weather('2026-03-29') },
      stores: { sealant: store({ lead_days: 1 }) },
    });
    const { lines } = linesOf(book, '2026-03-28T12:00:00Z');
    expect(lines[0]).toMatchObject({ use: { day: '2026-03-29', clock: '09:00' }, orderBy: '2026-03-28' });
  });

  it('never asks for an order before today of a job that is in the plan', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 8 }),
        fc.integer({ min: 0, max: 23 }),
        fc.constantFrom('06:30', '09:00', '13:00'),
        (lead_days, hour, from) => {
          const at = `2026-05-05T${String(hour).padStart(2, '0')}:10:00Z`;
          const days = Object.fromEntries(
            [0, 1, 3, 4, 5].map((n) => [`d${n}`, jobDay(addDays(today, n), { from, setOut_min: 0 })]),
          );
          const { lines, leftOut } = linesOf(
            bookWith({ jobDays: days, stores: { sealant: store({ lead_days }) } }),
            at,
          );
          const atToday = hour === 23 ? addDays(today, 1) : today;
          if (leftOut.length > 0) {
            expect(lines[0]!.late).toBe('too late');
            expect(lines[0]!.orderBy! < addDays(atToday, 1)).toBe(true);
          } else {
            expect(lines[0]!.late).toBe(null);
            expect(lines[0]!.orderBy! >= atToday).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
