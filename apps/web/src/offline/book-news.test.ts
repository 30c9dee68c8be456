import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Book, beginBook, emptyBook, type OpenBook, openBook, type StoredChange } from '#boat-book';
import { patchedBook } from './book-news.ts';

const boat = {
  name: 'Dabchick',
  keeper: 'Ilka',
  demo: true,
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
} as const;

let count = 0;
const surroundings = () => ({
  session: ++count,
  newId: () => `id${++count}`,
  now: () => Date.UTC(2026, 4, 2, 9, 0, ++count % 60),
  timeZone: 'UTC',
});

const acts: readonly ((book: OpenBook, n: number) => unknown)[] = [
  (book, n) => book.run('addJob', { title: `Job ${n}`, consequence: 'comfort' }),
  (book, n) => book.run('writeLog', { kind: 'note', text: `Note ${n}` }),
  (book, n) => book.run('setBoat', { keeper: `Keeper ${n}` }),
  (book, n) => book.run('addZone', { name: `Z${n}`, words: [], room: 1, inside: false, near: [], along: 0, up: 1 }),
  (book) => book.run('removeZone', { id: Object.keys(book.view().zones)[0] ?? 'none' }),
  (book, n) => book.run('changeJob', { id: Object.keys(book.view().jobs)[0] ?? 'none', note: `${n}` }),
  (book) => book.undo(),
  (book) => book.redo(),
];

test('patches of own changes and of others, in whatever order these come, add up to the book, in its order', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ here: fc.boolean(), act: fc.nat(acts.length - 1), n: fc.nat(9), hear: fc.nat(3) }), {
        maxLength: 40,
      }),
      (moves) => {
        const here = beginBook(emptyBook('b', boat), 'birth', surroundings());
        const there = openBook([here.states()], surroundings());
        let shown: Book = here.view();
        const untold: StoredChange[] = [];
        there.onChange((change) => change !== null && untold.push(change));
        here.onChange((_, patches) => {
          shown = patchedBook(shown, patches);
        });
        for (const { here: atHome, act, n, hear } of moves) {
          acts[act]!(atHome ? here : there, n);
          if (hear === 0) there.takeIn(here.states());
          // others' changes may come late, and the later ones first
          if (hear === 1 && untold.length > 0) here.takeIn(untold.pop()!);
        }
        for (const change of untold) here.takeIn(change);
        expect(shown).toEqual(here.view());
        for (const kind of ['log', 'weather', 'plans'] as const) {
          expect(Object.keys(shown[kind])).toEqual(Object.keys(here.view()[kind]));
        }
      },
    ),
    { numRuns: 80 },
  );
});

test('what did not change stays the same object', () => {
  const here = beginBook(emptyBook('b', boat), 'birth', surroundings());
  const before = here.view();
  let after = before;
  here.onChange((_, patches) => {
    after = patchedBook(after, patches);
  });
  here.run('writeLog', { kind: 'note', text: 'Rain' });
  expect(after.log).not.toBe(before.log);
  expect(after.jobs).toBe(before.jobs);
  expect(after.boat).toBe(before.boat);
});
