import { expect, test } from 'vitest';
import { also, begun, done, loadPath, meet } from './testing/devices.ts';

const jury = {
  title: 'Lashing',
  job: null,
  zone: null,
  reason: 'until the plate is rebedded',
  made: '2026-05-02',
  trustedUntil: '2026-06-02',
  wind_max_kn: 14,
  sails_max: null,
  notOnRoad: false,
} as const;

test('a load path is put in, a part of it changed, taken out, and brought back by undo', () => {
  const book = begun();
  const id = done(book.run('addLoadPath', loadPath));
  const [line, shackle] = loadPath.parts;
  done(book.run('changeLoadPath', { id, parts: [line!, { ...shackle!, signs: ['bent'] }] }));
  expect(book.view().loadPaths[id]!.parts[1]!.signs).toEqual(['bent']);
  done(book.run('removeLoadPath', { id }));
  expect(book.view().loadPaths).toEqual({});
  book.undo();
  expect(book.view().loadPaths[id]!.parts.map(({ signs }) => signs)).toEqual([['chafed'], ['bent']]);
});

test('a part with a size that cannot be, or a field of another kind, is refused by its place', () => {
  const book = begun();
  const [line, shackle] = loadPath.parts;
  const refused = (parts: object[]) => book.run('addLoadPath', { ...loadPath, parts } as never);
  expect(refused([{ ...line, size_mm: 0 }])).toMatchObject({ kind: 'refused', where: 'parts › 1. › size_mm' });
  expect(refused([line!, { ...shackle, fibre: 'nylon' }])).toMatchObject({
    kind: 'refused',
    where: 'parts › 2.',
    wrong: expect.stringContaining('fibre'),
  });
  expect(refused([line!, line!])).toMatchObject({
    kind: 'refused',
    where: 'parts',
    wrong: expect.stringContaining('same'),
  });
  expect(book.view().loadPaths).toEqual({});
});

test('a jury rig that a load path leans on is not taken for one that is not there', () => {
  const book = begun();
  const rig = done(book.run('addJuryRig', jury));
  const withRig = (juryRig: string) => ({ ...loadPath, parts: [{ ...loadPath.parts[0]!, juryRig }] });
  done(book.run('addLoadPath', withRig(rig)));
  expect(book.run('addLoadPath', withRig('gone'))).toMatchObject({
    kind: 'refused',
    wrong: expect.stringContaining('gone'),
  });
});

test('two load paths put in on two devices are both there when they meet', () => {
  const one = begun();
  const two = also(one, 'b');
  done(one.run('addLoadPath', loadPath));
  done(two.run('addLoadPath', { ...loadPath, name: 'Starboard shroud' }));
  meet(one, two);
  expect(
    Object.values(one.view().loadPaths)
      .map(({ name }) => name)
      .sort(),
  ).toEqual(['Anchor rode', 'Starboard shroud']);
});

test('undo goes on past a load path taken out and put back, to what was changed before', () => {
  const book = begun();
  const id = done(book.run('addLoadPath', loadPath));
  done(book.run('changeLoadPath', { id, name: 'The rode' }));
  done(book.run('changeLoadPath', { id, note: 'new shackle' }));
  done(book.run('removeLoadPath', { id }));
  expect(book.undo().left).toEqual([]); // it is back
  expect(book.undo().left).toEqual([]); // without the note
  expect(book.undo().left).toEqual([]); // under its old name
  expect(book.view().loadPaths[id]).toEqual(loadPath);
  for (let n = 0; n < 3; n++) expect(book.redo().left).toEqual([]);
  expect(book.view().loadPaths).toEqual({});
  // what another device changed after it came back is not taken back
  book.undo();
  const two = also(book, 'b');
  done(two.run('changeLoadPath', { id, note: 'from elsewhere' }));
  meet(book, two);
  expect(book.undo().left).toEqual(['load path ‘The rode’']);
  expect(book.view().loadPaths[id]?.note).toBe('from elsewhere');
});
