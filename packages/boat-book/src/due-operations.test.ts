import { expect, test } from 'vitest';
import { also, begun, done, meet } from './testing/devices.ts';

const bearings = {
  title: 'Grease the wheel bearings',
  zone: null,
  fitting: null,
  consequence: 'danger',
  printed: null,
  every: { count: 12, unit: 'months' },
  season: null,
  uses: [{ use: 'launch', count: 8 }],
  condition: null,
  usual: 'wheel-bearings',
  recipe: 'wheel-bearings',
  source: 'custom',
  lastDone: '2025-10-01',
  note: '',
} as const;
const job = { title: 'Grease the wheel bearings', consequence: 'danger' } as const;
const taken = { tools: [], mixes: [], stores: [], job };

test('a due is put in, changed and taken out; one that nothing makes due is refused', () => {
  const book = begun();
  const id = done(book.run('addDue', bearings));
  done(book.run('changeDue', { id, every: { count: 6, unit: 'months' } }));
  expect(book.view().dues[id]?.every?.count).toBe(6);
  expect(book.run('changeDue', { id, every: null, uses: [] })).toMatchObject({ kind: 'refused', where: 'every' });
  expect(book.run('addDue', { ...bearings, season: '02-30' })).toMatchObject({
    kind: 'refused',
    where: 'season',
    right: expect.stringContaining('MM-DD'),
  });
  done(book.run('removeDue', { id }));
  expect(book.view().dues).toEqual({});
  book.undo();
  expect(book.view().dues[id]?.title).toBe(bearings.title);
});

test('a due becomes one job and never a second while that is open; undo takes it back whole', () => {
  const book = begun();
  const due = done(book.run('addDue', bearings));
  const made = done(book.run('makeJobOfDue', { due, ...taken }));
  expect(book.view().jobs[made]?.fromDue).toBe(due);
  expect(book.run('makeJobOfDue', { due, ...taken })).toMatchObject({
    kind: 'refused',
    wrong: expect.stringContaining('is open already'),
  });
  book.undo();
  expect(book.view().jobs[made]).toBeUndefined();
  const again = done(book.run('makeJobOfDue', { due, ...taken }));
  done(book.run('finishJob', { id: again }));
  done(book.run('makeJobOfDue', { due, ...taken }));
});

test('the jobs of several dues go in together or not at all, and one undo takes them back', () => {
  const book = begun();
  const due = done(book.run('addDue', bearings));
  const other = done(book.run('addDue', { ...bearings, title: 'Trailer tyres' }));
  const twice = [
    { due, ...taken },
    { due, ...taken },
  ];
  expect(book.run('makeJobsOfDues', { jobs: twice })).toMatchObject({ kind: 'refused' });
  expect(book.view().jobs).toEqual({});
  book.run('makeJobsOfDues', {
    jobs: [
      { due, ...taken },
      { due: other, ...taken },
    ],
  });
  expect(Object.values(book.view().jobs).map(({ fromDue }) => fromDue)).toEqual([due, other]);
  book.undo();
  expect(book.view().jobs).toEqual({});
});

test('uses are kept as they were entered, two of a day are two, and a day to come is refused', () => {
  const book = begun();
  const sail = { use: 'sail', on: '2026-05-02', count: 1, note: '' } as const;
  done(book.run('enterUses', { uses: [sail] }));
  done(book.run('enterUses', { uses: [sail] }));
  expect(Object.values(book.view().uses)).toHaveLength(2);
  expect(book.run('enterUses', { uses: [{ ...sail, on: '2199-01-01' }] })).toMatchObject({
    kind: 'refused',
    wrong: expect.stringContaining('not yet'),
  });
  book.undo();
  expect(Object.values(book.view().uses)).toHaveLength(1);
});

test('that a due was done, a measure and a tick are written to the log', () => {
  const book = begun();
  const due = done(
    book.run('addDue', {
      ...bearings,
      condition: { measure: 'play', unit: 'mm', limit: 1, way: 'rises', within: 0.1 },
    }),
  );
  const on = book.view().dues[due]!.lastDone!;
  expect(book.run('dueWasDone', { id: due, on: '2025-09-01' })).toMatchObject({ kind: 'refused', where: 'on' });
  done(book.run('dueWasDone', { id: due, on }));
  done(book.run('enterDueMeasure', { due, on: '2026-05-01', value: 0.4, note: '' }));
  const line = { list: 'lay-up', year: 2025, item: 'battery', who: '' } as const;
  const tick = done(book.run('tickSeason', { ...line, text: 'Battery out and charged' }));
  expect(book.run('tickSeason', { ...line, text: 'Battery out and charged' })).toMatchObject({ kind: 'refused' });
  expect(Object.values(book.view().log).map(({ text }) => text)).toEqual([
    'Done: Grease the wheel bearings',
    'Grease the wheel bearings: play 0.4 mm',
    'Lay-up 2025: Battery out and charged',
  ]);
  done(book.run('untickSeason', { id: tick, text: 'Battery out and charged' }));
  expect(book.view().seasonTicks).toEqual({});
  expect(Object.values(book.view().log).at(-1)?.kind).toBe('taken back');
});

test('two devices that make the same job of a due apart have made one when they meet', () => {
  const one = begun();
  const due = done(one.run('addDue', bearings));
  const other = also(one, 'b');
  const said = {
    due,
    ...taken,
    stores: [{ id: 'due-s', name: 'Grease', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' }],
    job: {
      ...job,
      id: 'due-1',
      steps: [{ id: 'due-1-a', title: 'Jack', minutes: { low: 1, likely: 2, high: 3 }, hands: 1 }],
    },
  } as const;
  done(one.run('makeJobOfDue', said));
  done(other.run('makeJobOfDue', said));
  meet(one, other);
  expect(Object.keys(one.view().jobs)).toEqual(['due-1']);
  expect(Object.keys(one.view().steps)).toEqual(['due-1-a']);
  expect(Object.keys(one.view().stores)).toEqual(['due-s']);
  expect(one.questions()).toEqual([]);
});
