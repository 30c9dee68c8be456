import { expect, test } from 'vitest';
import { demoBook } from '../../../../examples/demo-book.ts';
import { drawnBoat, keelOf, sizesOfBoat } from './sizes-of-boat.ts';

test('the sizes in the book are the sizes she is drawn by', () => {
  const { boat } = demoBook('2026-05-01');
  const { sizes } = sizesOfBoat(boat);
  for (const name of ['length_m', 'beam_m', 'mastHeight_m', 'freeboard_m', 'draft_m', 'boom_m'] as const)
    expect(sizes[name]).toBe(boat[name]);
});

test('of a new boat only her length, cabin and keel need be said; every other size is named as a guess', () => {
  const drawn = drawnBoat({ length_m: 5.2, cabin: true, keel: 'bilge keels', sizes: { beam_m: 2 }, build: {} });
  expect(drawn).toMatchObject({ length_m: 5.2, beam_m: 2, board: 'keel', build: { keel: 'bilge keels' } });
  expect(drawn.guessed).toEqual([
    'mastHeight_m',
    'mastFromBow_m',
    'boom_m',
    'freeboard_m',
    'draft_m',
    'draftBoardDown_m',
  ]);
  expect(drawn.draftBoardDown_m).toBe(drawn.draft_m);
  expect(drawn.mastHeight_m).toBeGreaterThan(5);
});

test('a book of before, with no more than a board named, is drawn with that', () => {
  expect(keelOf({ board: 'pivoting' })).toBe('pivoting');
  expect(keelOf({ board: 'keel' })).toBe('lifting keel');
  expect(keelOf({ board: 'keel', build: { keel: 'fixed keel' } })).toBe('fixed keel');
});

test('what was guessed in the book is told as a guess, and so is what was never asked', () => {
  const drawn = drawnBoat({ length_m: 5.2, cabin: true, keel: 'pivoting', sizes: {}, build: { bow: 'plumb' } });
  const { guessed } = sizesOfBoat({ name: 'Dab', keeper: '', demo: false, ...drawn });
  expect(guessed).toContain('beam_m');
  expect(guessed).toContain('stern');
  expect(guessed).not.toContain('bow');
  expect(guessed).not.toContain('keel');
});
