import { expect, test } from 'vitest';
import { emptyBook } from './empty-book.ts';
import { type BookSurroundings, beginBook, type OpenBook, openBook } from './open-book.ts';
import type { Boat } from './records.ts';

const boat: Boat = {
  name: 'Dabchick',
  keeper: 'Ilka',
  demo: false,
  length_m: 5.6,
  beam_m: 2.2,
  mastHeight_m: 7,
  mastFromBow_m: 2,
  boom_m: 2.4,
  freeboard_m: 0.6,
  draft_m: 0.25,
  draftBoardDown_m: 1.2,
  cabin: true,
  board: 'pivoting',
};

let sessions = 0;
function surroundings(name: string): BookSurroundings {
  let ids = 0;
  let now = Date.UTC(2026, 4, 2, 9);
  return {
    session: ++sessions,
    newId: () => `${name}${++ids}`,
    now: () => (now += 60_000),
    timeZone: 'UTC',
  };
}

function begun(): OpenBook {
  return beginBook(emptyBook('book1', boat), 'birth1', surroundings('a'));
}

/** The same book on another device. */
function also(book: OpenBook, name: string): OpenBook {
  return openBook([book.states()], surroundings(name));
}

function exchange(...books: OpenBook[]): void {
  const states = books.map((book) => book.states());
  for (const book of books) for (const state of states) book.takeIn(state);
}

const done = (outcome: { kind: string; id?: string | null }): string => {
  expect(outcome).toMatchObject({ kind: 'done' });
  return outcome.id ?? '';
};

const step = { title: 'Take off the plate', minutes: { low: 10, likely: 20, high: 30 }, hands: 1 };

test('a job goes in with its steps and comes out in the view', () => {
  const book = begun();
  const job = done(
    book.run('addJob', {
      title: 'Rebed the plate',
      consequence: 'worsens',
      steps: [step, { ...step, title: 'Clean' }],
    }),
  );
  const { jobs, steps } = book.view();
  expect(jobs[job]).toMatchObject({ title: 'Rebed the plate', state: 'open', opened: '2026-05-02' });
  expect(Object.values(steps).map((s) => [s.job, s.order, s.title])).toEqual([
    [job, 0, 'Take off the plate'],
    [job, 1, 'Clean'],
  ]);
  expect(book.undoTitle()).toBe('Put in a job: Rebed the plate');
  book.undo();
  expect(book.view().jobs).toEqual({});
  expect(book.view().steps).toEqual({});
  book.redo();
  expect(book.view().jobs[job]?.title).toBe('Rebed the plate');
  expect(Object.keys(book.view().steps)).toHaveLength(2);
});

test('two devices that answer differently are both seen, and one choice settles it', () => {
  const one = begun();
  const job = done(one.run('addJob', { title: 'Varnish the tiller', consequence: 'comfort' }));
  const two = also(one, 'b');
  done(one.run('changeJob', { id: job, due: '2026-05-20' }));
  done(two.run('changeJob', { id: job, due: '2026-05-10' }));
  exchange(one, two);
  expect(one.view()).toEqual(two.view());
  expect(one.questions()).toEqual([
    { collection: 'jobs', id: job, field: 'due', answers: ['2026-05-10', '2026-05-20'] },
  ]);
  done(two.run('chooseAnswer', { collection: 'jobs', id: job, field: 'due', answer: '2026-05-20' }));
  exchange(one, two);
  expect(one.questions()).toEqual([]);
  expect(one.view().jobs[job]?.due).toBe('2026-05-20');
});
