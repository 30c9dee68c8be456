import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { StoredChange } from '#boat-book';
import { openDatabase } from './book-database.ts';
import { bookLog, readRow, storedRow } from './book-log.ts';

let names = 0;
const fresh = (): string => `log ${++names}`;
const change = (n: number): StoredChange => ({
  boat: null,
  work: new Uint8Array([n, n + 1]),
  keys: [{ collection: 'jobs', key: `j${n}`, value: n }],
});
const known = { id: 'b1', name: 'Dabchick', demo: false, foreign: false };

test('rows come back in the order they were written, and only those after the one asked for', async () => {
  const log = await bookLog(fresh());
  await log.begin(known, change(0), false);
  const keys = await log.append('b1', [change(1), change(2)]);
  await log.append('b2', [change(9)]);
  const { rows, damaged } = await log.read('b1');
  expect(rows.map((row) => [row.kind, row.change])).toEqual([
    ['whole', change(0)],
    ['edit', change(1)],
    ['edit', change(2)],
  ]);
  expect(damaged).toEqual([]);
  expect((await log.read('b1', keys[0])).rows.map((row) => row.key)).toEqual([keys[1]]);
  log.close();
});

test('any change of a stored row is noticed', () => {
  fc.assert(
    fc.property(
      fc.uint8Array({ minLength: 1, maxLength: 40 }),
      fc.string(),
      fc.nat(),
      fc.integer({ min: 1, max: 255 }),
      (work, value, at, bits) => {
        const row = storedRow('b1', 'edit', { boat: null, work, keys: [{ collection: 'jobs', key: 'j', value }] });
        expect(readRow(row)?.change.work).toEqual(work);
        const bytes = work.slice();
        bytes[at % bytes.length] = bytes[at % bytes.length]! ^ bits;
        expect(readRow({ ...row, work: bytes })).toBeNull();
        expect(readRow({ ...row, work: work.slice(0, -1) })).toBeNull();
        // bytes moved from one document to the other
        expect(readRow({ ...row, boat: work, work: null })).toBeNull();
        expect(readRow({ ...row, keys: `${row.keys} ` })).toBeNull();
        expect(readRow({ ...row, book: 'b2' })).toBeNull();
        expect(readRow({ ...row, kind: 'whole' })).toBeNull();
        expect(readRow({ ...row, check: undefined })).toBeNull();
      },
    ),
  );
  for (const nonsense of [null, undefined, 7, 'row', {}, []]) expect(readRow(nonsense)).toBeNull();
});

test('compaction keeps the whole row before the last, and leaves rows it has not seen', async () => {
  const log = await bookLog(fresh());
  await log.begin(known, change(0), false);
  const seen = new Set((await log.read('b1')).rows.map((row) => row.key));
  for (const key of await log.append('b1', [change(1)])) seen.add(key);
  const [unseen] = await log.append('b1', [change(2)]);
  expect(await log.compact('b1', change(10), seen)).toBeNull();
  seen.add(unseen!);
  seen.add((await log.compact('b1', change(10), seen))!);
  // the first whole row and the edits after it still stand: the new one may turn out damaged
  expect((await log.read('b1')).rows.map((row) => row.kind)).toEqual(['whole', 'edit', 'edit', 'whole']);
  for (const key of await log.append('b1', [change(3)])) seen.add(key);
  await log.compact('b1', change(11), seen);
  expect((await log.read('b1')).rows.map((row) => row.kind)).toEqual(['whole', 'edit', 'whole']);
  log.close();
});

test('a damaged row is set aside as it was found, not thrown away', async () => {
  const name = fresh();
  const log = await bookLog(name);
  await log.begin(known, change(0), false);
  const [key] = await log.append('b1', [change(1)]);
  const db = await openDatabase(name);
  const row = (await db.get('rows', key!))!;
  await db.put('rows', { ...row, keys: 'rubbish' }, key!);
  expect((await log.read('b1')).damaged).toEqual([key]);
  await log.setAside('b1', [key!], 'checksum');
  expect((await log.read('b1')).damaged).toEqual([]);
  expect(await db.getAll('set aside')).toEqual([{ book: 'b1', row: { ...row, keys: 'rubbish' }, found: 'checksum' }]);
  db.close();
  log.close();
});

test('of two tabs that begin the first book at once, one does', async () => {
  const name = fresh();
  const [one, two] = await Promise.all([bookLog(name), bookLog(name)]);
  const begun = await Promise.all([
    one!.begin(known, change(0), true),
    two!.begin({ ...known, id: 'b2' }, change(0), true),
  ]);
  expect(begun.filter(Boolean)).toHaveLength(1);
  expect(await one!.books()).toHaveLength(1);
  one!.close();
  two!.close();
});
