import { expect, test } from 'vitest';
import type { RodeRecord } from './rode-records.ts';
import { begun, done, loadPath } from './testing/devices.ts';

const rode: RodeRecord = {
  name: 'Bower',
  zone: null,
  chain: { size_mm: 6, length_m: 8 },
  rope: { fibre: 'nylon', size_mm: 10, length_m: 30 },
  bow_m: 0.8,
  windage_m2: 3,
  below_m2: 0.06,
  limit_deg: 8,
  anchorage: null,
  path: null,
  note: '',
};

test('a rode is put in, the anchorage kept with it, and taken back by undo', () => {
  const book = begun();
  const id = done(book.run('addRode', rode));
  const anchorage = { depth_m: 4, rise_m: 1.2, fall_m: 0.8, wind_kn: 20, current_kn: 0 };
  done(book.run('changeRode', { id, anchorage }));
  expect(book.view().rodes[id]).toEqual({ ...rode, anchorage });
  book.undo();
  expect(book.view().rodes[id]).toEqual(rode);
});

test('a rode of nothing, and a tide that leaves her dry, are refused by name', () => {
  const book = begun();
  expect(book.run('addRode', { ...rode, chain: null, rope: null })).toMatchObject({ kind: 'refused', where: 'chain' });
  const id = done(book.run('addRode', rode));
  const dry = { depth_m: 1, rise_m: 0, fall_m: 1, wind_kn: 20, current_kn: 0 };
  expect(book.run('changeRode', { id, anchorage: dry })).toMatchObject({
    kind: 'refused',
    where: 'anchorage › fall_m',
    wrong: 'the tide falls 1 m where there is 1 m of water',
  });
  expect(book.view().rodes[id]).toEqual(rode);
});

test('a load path that a rode names is not taken out under it', () => {
  const book = begun();
  const path = done(book.run('addLoadPath', loadPath));
  done(book.run('addRode', { ...rode, path }));
  expect(book.run('removeLoadPath', { id: path }).kind).toBe('refused');
  expect(book.run('addRode', { ...rode, path: 'gone' })).toMatchObject({ kind: 'refused' });
});
