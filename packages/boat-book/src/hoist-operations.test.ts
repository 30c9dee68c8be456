import { expect, test } from 'vitest';
import { also, begun, boardHoist, done, meet } from './testing/devices.ts';

const pull = {
  at: '2026-05-02T09:00:00Z',
  handling: 'hoisting',
  hauled_pct: null,
  in: 'air',
  hand_N: 110,
  foretold_N: 96,
  with: 'luggage scale',
  note: '',
} as const;

test('a hoist is put in, changed and taken out, and undo brings it back', () => {
  const book = begun();
  const id = done(book.run('addBoardHoist', boardHoist));
  done(book.run('changeBoardHoist', { id, wire: { ...boardHoist.wire, size_mm: 5 } }));
  expect(book.view().boardHoists[id]?.wire.size_mm).toBe(5);
  done(book.run('removeBoardHoist', { id }));
  expect(book.view().boardHoists).toEqual({});
  book.undo();
  expect(book.view().boardHoists[id]?.wire.size_mm).toBe(5);
});

test('a board that is up below where it is down, and a tackle with nothing through it, are refused by name', () => {
  const book = begun();
  const { moves } = boardHoist;
  if (moves.kind !== 'turns') throw new Error('it turns');
  expect(book.run('addBoardHoist', { ...boardHoist, moves: { ...moves, up_deg: 55, down_deg: 50 } })).toMatchObject({
    kind: 'refused',
    where: 'moves › up_deg',
    wrong: expect.stringContaining('55°'),
  });
  expect(book.run('addBoardHoist', { ...boardHoist, cord: null })).toMatchObject({ kind: 'refused', where: 'cord' });
  expect(
    book.run('addBoardHoist', { ...boardHoist, plate: { ...boardHoist.plate, mass: { kind: 'weighed', mass_kg: 0 } } }),
  ).toMatchObject({ kind: 'refused', where: expect.stringContaining('mass_kg') });
  expect(book.view().boardHoists).toEqual({});
});

test('a pull is entered once and for all, on two devices apart, and can be taken out', () => {
  const one = begun();
  const id = done(one.run('addBoardHoist', boardHoist));
  const two = also(one, 'b');
  const first = done(one.run('enterHoistForce', { ...pull, hoist: id }));
  done(two.run('enterHoistForce', { ...pull, hoist: id, hand_N: 118 }));
  meet(one, two);
  expect(
    Object.values(one.view().hoistForces)
      .map(({ hand_N }) => hand_N)
      .sort(),
  ).toEqual([110, 118]);
  done(one.run('removeHoistForce', { id: first }));
  expect(Object.keys(one.view().hoistForces)).toHaveLength(1);
  expect(one.run('enterHoistForce', { ...pull, hoist: 'gone' })).toMatchObject({ kind: 'refused', where: 'hoist' });
});
