import { expect, test } from 'vitest';
import { openDatabase } from './book-database.ts';
import { bookLog } from './book-log.ts';
import { device, type Tab } from './testing/tabs.ts';

const blockOf = (battery: string, count = 3) => ({
  battery,
  from: '2026-05-01T20:00:00Z',
  to: '2026-05-02T04:00:00Z',
  count,
  columns: ['volts' as const],
  file: 'night.csv',
});
const house = {
  name: 'House battery',
  zone: null,
  chemistry: 'agm',
  nominal_Ah: 17,
  nominal_V: 12,
  made: null,
  floor_pct: 50,
  meter: '',
  note: '',
} as const;
/** A demo with a battery and a block of readings kept for it. */
async function withBlock(one: Tab) {
  await one.books.startBook('demo');
  const added = await one.books.run('addBattery', house);
  if (added.kind !== 'done' || added.id === null) throw new Error('no battery');
  const bytes = Uint8Array.from({ length: 1000 }, (_, i) => i % 251);
  expect(await one.books.keepBlob('keepReadingBlock', blockOf(added.id), bytes)).toMatchObject({ kind: 'done' });
  const [id, block] = Object.entries(one.book()!.readingBlocks)[0]!;
  return { battery: added.id, bytes, id, hash: block.blob };
}

test('a block of readings survives a restart, goes with the boat file and is there on the other device', async () => {
  const { tab } = device();
  const one = await tab();
  const { battery, bytes, hash } = await withBlock(one);
  expect(await one.books.keepBlob('keepReadingBlock', blockOf(battery), bytes)).toMatchObject({
    kind: 'refused',
    wrong: expect.stringMatching(/in the book already, from ‘night.csv’/),
  });
  await one.books.flush();
  const again = await tab();
  expect(await again.books.blob(hash)).toEqual(bytes);
  const file = await again.books.boatFile();
  const other = await device().tab();
  expect(await other.books.openFile(file, false)).toMatchObject({ kind: 'opened', notes: [] });
  expect(await other.books.blob(hash)).toEqual(bytes);
  expect(other.book()?.readingBlocks).toEqual(one.book()?.readingBlocks);
  // and on from there
  const third = await device().tab();
  await third.books.openFile(await other.books.boatFile(), true);
  expect(await third.books.blob(hash)).toEqual(bytes);
});

test('what is asked for before the book is open is waited for, and not told as gone', async () => {
  const { opening, tab } = device();
  const { bytes, hash } = await withBlock(await tab());
  const again = opening();
  const started = again.books.start();
  expect(await again.books.blob(hash)).toEqual(bytes);
  await started;
});

test('a block that came without its readings is said in words', async () => {
  const { tab } = device();
  const one = await tab();
  await withBlock(one);
  const bare = new TextEncoder().encode(JSON.stringify(one.book()));
  const other = await device().tab();
  expect(await other.books.openFile(bare, false)).toMatchObject({
    kind: 'opened',
    notes: [expect.stringMatching(/^The 3 readings from ‘night.csv’ are named in the book but are not on this device/)],
  });
});

test('readings taken out come back with undo; a week after they are gone from the device', async () => {
  const { tab } = device();
  let days = 0;
  let count = 1000;
  const surroundings = () => ({
    session: ++count,
    newId: () => `id${++count}`,
    now: () => Date.UTC(2026, 4, 2 + days, 9),
    timeZone: 'UTC',
  });
  const one = await tab({ surroundings });
  const { bytes, id, hash } = await withBlock(one);
  await one.books.run('removeReadingBlock', { id });
  await one.books.undo();
  expect(one.book()?.readingBlocks).toHaveProperty(id);
  expect(await one.books.blob(hash)).toEqual(bytes);
  await one.books.run('removeReadingBlock', { id });
  await one.books.flush();
  for (const [day, there] of [
    [0, true],
    [7, true],
    [8, false],
  ] as const) {
    days = day;
    const later = await tab({ surroundings });
    await new Promise((done) => setTimeout(done, 30));
    expect((await later.books.blob(hash)) !== null, `day ${day}`).toBe(there);
  }
});

test('with no room for a block it is refused and said, and the book stays as it was', async () => {
  const store = device();
  const one = await device().tab({
    async openLog() {
      const log = await bookLog(store.name);
      return { ...log, keepBlobs: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    },
  });
  await one.books.startBook('demo');
  const added = await one.books.run('addBattery', house);
  const battery = added.kind === 'done' ? added.id! : '';
  expect(await one.books.keepBlob('keepReadingBlock', blockOf(battery), new Uint8Array(10))).toMatchObject({
    kind: 'refused',
    wrong: expect.stringMatching(/no room left/),
  });
  expect(one.book()?.readingBlocks).toEqual({});
});

/** A JPEG by its first bytes; nothing here looks inside it. */
const picture = (length: number) => Uint8Array.from({ length }, (_, i) => [0xff, 0xd8, 0xff][i] ?? (i * 7) % 251);
const photoOf = (job: string, bytes: number) => ({
  bytes,
  width_px: 1600,
  height_px: 1200,
  taken: '2026-05-02T08:55:00Z',
  job,
  step: null,
  fitting: null,
  entry: null,
  shows: 'before' as const,
  words: '',
  position: null,
});
async function withPhoto(one: Tab) {
  await one.books.startBook('demo');
  const added = await one.books.run('addJob', { title: 'Varnish', consequence: 'comfort' });
  const job = added.kind === 'done' ? added.id! : '';
  const bytes = picture(5000);
  expect(await one.books.keepBlob('keepPhoto', photoOf(job, 5000), bytes)).toMatchObject({ kind: 'done' });
  const [id, photo] = Object.entries(one.book()!.photos)[0]!;
  return { job, bytes, id, hash: photo.blob };
}

test('a photograph survives a restart and undo, and goes with the boat file byte for byte', async () => {
  const { tab } = device();
  const one = await tab();
  const { bytes, id, hash } = await withPhoto(one);
  await one.books.run('removePhoto', { id });
  expect(one.book()?.photos).toEqual({});
  await one.books.undo();
  await one.books.flush();
  const again = await tab();
  expect(again.book()?.photos).toEqual(one.book()?.photos);
  expect(await again.books.blob(hash)).toEqual(bytes);
  const other = await device().tab();
  expect(await other.books.openFile(await again.books.boatFile(), false)).toMatchObject({ kind: 'opened', notes: [] });
  expect(other.book()?.photos).toEqual(one.book()?.photos);
  expect(await other.books.blob(hash)).toEqual(bytes);
});

test('photographs that came without their pictures are counted in words, and a file with a changed one is refused', async () => {
  const one = await device().tab();
  const { hash } = await withPhoto(one);
  const bare = new TextEncoder().encode(JSON.stringify(one.book()));
  const other = await device().tab();
  expect(await other.books.openFile(bare, false)).toMatchObject({
    kind: 'opened',
    notes: [expect.stringMatching(/^1 photograph is named in the book but not on this device/)],
  });
  expect(await other.books.blob(hash)).toBeNull();
  // stored as it is in the archive, so one byte of it can be turned there
  const file = await one.books.boatFile();
  const at = file.findIndex((_, i) => file[i] === 0xff && file[i + 1] === 0xd8 && file[i + 2] === 0xff);
  expect(at).toBeGreaterThan(0);
  const changed = Uint8Array.from(file);
  changed[at + 100]! ^= 1;
  expect(await other.books.openFile(changed, false)).toMatchObject({
    kind: 'refused',
    because: [expect.stringContaining(hash)],
  });
});

test('a picture that was damaged where it was kept is left out of the boat file, and the rest of the book opens', async () => {
  const { name, tab } = device();
  const one = await tab();
  const { hash } = await withPhoto(one);
  await one.books.flush();
  const db = await openDatabase(name);
  await db.put('blobs', picture(4999), hash);
  db.close();
  const other = await device().tab();
  expect(await other.books.openFile(await one.books.boatFile(), false)).toMatchObject({
    kind: 'opened',
    notes: [expect.stringMatching(/^1 photograph is named in the book but not on this device/)],
  });
  expect(other.book()?.photos).toEqual(one.book()?.photos);
});

test('with no room for a photograph it is refused and said, and the book stays as it was', async () => {
  const store = device();
  const one = await device().tab({
    async openLog() {
      const log = await bookLog(store.name);
      return { ...log, keepBlobs: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    },
  });
  await one.books.startBook('demo');
  const added = await one.books.run('addJob', { title: 'Varnish', consequence: 'comfort' });
  const job = added.kind === 'done' ? added.id! : '';
  expect(await one.books.keepBlob('keepPhoto', photoOf(job, 10), picture(10))).toMatchObject({
    kind: 'refused',
    wrong: expect.stringMatching(/^the photograph could not be stored.*no room left/),
  });
  expect(one.book()?.photos).toEqual({});
});

test('a store of the version before keeps its books and takes readings', async () => {
  const { name, tab } = device();
  const { openDB } = await import('idb');
  const old = await openDB(name, 1, {
    upgrade(db) {
      db.createObjectStore('rows', { autoIncrement: true }).createIndex('book', 'book');
      db.createObjectStore('set aside', { autoIncrement: true });
      db.createObjectStore('books', { keyPath: 'id' });
      for (const store of ['open', 'firsts', 'foreign']) db.createObjectStore(store);
    },
  });
  // the rows of a book as that version wrote them
  const from = device();
  const source = await from.tab();
  await source.books.startBook('demo');
  await source.books.run('addJob', { title: 'Varnish', consequence: 'comfort' });
  await source.books.flush();
  const db = await openDatabase(from.name);
  for (const row of await db.getAll('rows')) await old.add('rows', row);
  for (const book of await db.getAll('books')) await old.add('books', book);
  await old.put('open', await db.get('open', 'current'), 'current');
  db.close();
  old.close();
  const one = await tab();
  expect(Object.values(one.book()!.jobs).map(({ title }) => title)).toEqual(['Varnish']);
  const added = await one.books.run('addBattery', house);
  const kept = await one.books.keepBlob(
    'keepReadingBlock',
    blockOf(added.kind === 'done' ? added.id! : ''),
    new Uint8Array(10),
  );
  expect(kept).toMatchObject({ kind: 'done' });
});
