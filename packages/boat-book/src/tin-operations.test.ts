import { expect, test } from 'vitest';
import { begun, done, tin } from './testing/devices.ts';

test('what a tin says is put in, changed, and taken back whole', () => {
  const book = begun();
  const id = done(book.run('addTin', tin));
  expect(book.view().tins[id]).toEqual(tin);
  done(book.run('changeTin', { id, minimum_C: 8 }));
  expect(book.view().tins[id]?.minimum_C).toBe(8);
  book.undo();
  book.undo();
  expect(book.view().tins).toEqual({});
});

test.each([
  [{ latestCoat_h: 24 }, 'latestCoat_h', /not after 24 h/],
  [{ nextCoat: null }, 'nextCoat', /without an earliest/],
  [{ worked: { hours: 200, at_C: 23 } }, 'full › hours', /full strength in 168 h/],
  [{ ratio: { kind: 'catalyst', low_pct: 2, high_pct: 1 } }, 'ratio › high_pct', /less than 2 %/],
] as const)('figures no tin says together are refused: %j', (part, where, wrong) => {
  const book = begun();
  const outcome = book.run('addTin', { ...tin, ...part });
  expect(outcome).toMatchObject({ kind: 'refused', where, wrong: expect.stringMatching(wrong) });
  expect(book.view().tins).toEqual({});
});

test('a tin that a wait or a mix is of stays in the book', () => {
  const book = begun();
  const id = done(book.run('addTin', tin));
  done(book.run('addMix', { name: 'Varnish and hardener', mixing_min: 5, potLife_min: 120, tin: id }));
  expect(book.run('removeTin', { id })).toMatchObject({ kind: 'refused' });
  expect(book.view().tins[id]).toEqual(tin);
});
