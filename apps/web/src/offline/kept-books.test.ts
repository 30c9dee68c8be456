import fc from 'fast-check';
import { expect, test } from 'vitest';
import { workFromText, workShown } from '../reading/work-shown.ts';
import { openDatabase } from './book-database.ts';
import { bookLog } from './book-log.ts';
import { boat, device, type Tab } from './testing/tabs.ts';

const addJob = (tab: Tab, title: string) => tab.books.run('addJob', { title, consequence: 'comfort' });
const titles = (tab: Tab): string[] =>
  Object.values(tab.book()?.jobs ?? {})
    .map((job) => job.title)
    .sort();

test('the demo is there on the first run, and what is done is there again after closing', async () => {
  const { tab } = device();
  const one = await tab();
  expect(one.book()).toBeNull();
  await one.books.startBook('demo');
  await addJob(one, 'Varnish');
  await one.books.flush();
  expect(one.news.at(-1)).toMatchObject({ state: 'saved', undo: 'Put in a job: Varnish' });
  const again = await tab();
  expect(again.book()).toEqual(one.book());
  expect(titles(again)).toEqual(['Varnish']);
  // starting the demo once more opens the same book
  await again.books.startBook('demo');
  expect(titles(again)).toEqual(['Varnish']);
  expect(await again.books.books()).toHaveLength(1);
});

test('the patches a screen gets add up to the book', async () => {
  const { tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  for (let i = 0; i < 10; i++) await addJob(one, `Job ${i}`);
  await one.books.run('writeLog', { kind: 'note', text: 'Rain' });
  await one.books.undo();
  await one.books.undo();
  await one.books.redo();
  const again = await tab();
  await one.books.flush();
  expect(one.book()).toEqual((await tab()).book());
  expect(titles(again).length).toBeGreaterThan(7);
});

test('two tabs at once lose nothing and end with the same book', async () => {
  const { tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  const two = await tab();
  for (let i = 0; i < 25; i++) await Promise.all([addJob(one, `a${i}`), addJob(two, `b${i}`)]);
  await Promise.all([one.books.flush(), two.books.flush()]);
  const id = one.news.at(-1)?.book?.id ?? one.book()!.id;
  await Promise.all([one.books.catchUp(id), two.books.catchUp(id)]);
  expect(titles(one)).toHaveLength(50);
  expect(two.book()).toEqual(one.book());
  expect((await tab()).book()).toEqual(one.book());
});

test('whatever showed as saved is in the store at that moment', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.nat(3), { minLength: 5, maxLength: 60 }), async (pauses) => {
      const { name, tab } = device();
      const one = await tab();
      await one.books.startBook('demo');
      const other = await bookLog(name);
      const id = one.book()!.id;
      let looked = 0;
      for (const [i, pause] of pauses.entries()) {
        const asked = addJob(one, `Job ${i}`);
        for (let turn = 0; turn < pause; turn++) await new Promise((done) => setTimeout(done, 0));
        await asked;
        const shown = titles(one).length;
        if (one.news.at(-1)?.state !== 'saved') continue;
        looked++;
        // one row for the whole book, and one for each job: read as a browser that opens just now would
        expect((await other.read(id)).rows.length - 1).toBeGreaterThanOrEqual(shown);
      }
      await one.books.flush();
      expect(one.news.at(-1)?.state).toBe('saved');
      expect((await other.read(id)).rows).toHaveLength(pauses.length + 1);
      expect(looked).toBeLessThanOrEqual(pauses.length);
      other.close();
    }),
    { numRuns: 15 },
  );
});

test('a long log is made short, and the book stays the same', async () => {
  const { name, tab } = device();
  const one = await tab({ compactAfter: 50 });
  await one.books.startBook('demo');
  for (let i = 0; i < 210; i++) {
    await one.books.run('writeLog', { kind: 'note', text: `Note ${i}` });
    if (i % 10 === 9) await one.books.flush();
  }
  await one.books.flush();
  await new Promise((done) => setTimeout(done, 200));
  const log = await bookLog(name);
  const { rows } = await log.read(one.book()!.id);
  expect(rows.length).toBeLessThan(120);
  expect(rows.filter((row) => row.kind === 'whole')).toHaveLength(2);
  expect((await tab()).book()).toEqual(one.book());
  log.close();
});

test('rows damaged at random are set aside and told, and every other change is there', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uniqueArray(fc.nat(19), { minLength: 1, maxLength: 12 }), fc.boolean(), async (hit, bytes) => {
      const { name, tab } = device();
      const one = await tab();
      await one.books.startBook('demo');
      for (let i = 0; i < 20; i++) {
        await addJob(one, `Job ${i}`);
        await one.books.flush();
      }
      const db = await openDatabase(name);
      const keys = await db.getAllKeys('rows');
      for (const n of hit) {
        const key = keys[n + 1]!; // the first row is the whole book
        const row = (await db.get('rows', key))!;
        const work = row.work!.slice();
        work[n % work.length] = work[n % work.length]! ^ 0x55;
        await db.put('rows', bytes ? { ...row, work } : ({ rubbish: true, book: row.book } as never), key);
      }
      const two = await tab();
      const expected = Array.from({ length: 20 }, (_, i) => i).filter((i) => !hit.includes(i));
      expect(titles(two)).toEqual(expected.map((i) => `Job ${i}`).sort());
      expect(two.news.at(-1)?.troubles.join()).toMatch(/damaged and (is|are) set aside/);
      expect(await db.getAll('set aside')).toHaveLength(hit.length);
      // it goes on as ever, and the next start has nothing to tell
      await addJob(two, 'After');
      await two.books.flush();
      const three = await tab();
      expect(titles(three)).toEqual(titles(two));
      expect(three.news.at(-1)?.troubles).toEqual([]);
      db.close();
    }),
    { numRuns: 12 },
  );
});

test('with every whole row damaged the book is begun anew from its last picture, and that is told', async () => {
  const { name, tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  await addJob(one, 'Varnish');
  await one.books.flush();
  await new Promise((done) => setTimeout(done, 30)); // the picture for the first paint is taken a moment later
  const db = await openDatabase(name);
  for (const key of await db.getAllKeys('rows')) {
    await db.put('rows', { ...(await db.get('rows', key))!, check: 'x' }, key);
  }
  db.close();
  const two = await tab();
  expect(titles(two)).toEqual(['Varnish']);
  expect(two.news.at(-1)?.troubles.join()).toMatch(/begun anew from the last picture/);
});

test('a device with no room: work goes on, it is said, and nothing is lost once there is room', async () => {
  const { tab } = device();
  let full = false;
  const store = device();
  const one = await tab({
    async openLog() {
      const log = await bookLog(store.name);
      return {
        ...log,
        append: (book, changes) =>
          full ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : log.append(book, changes),
      };
    },
  });
  await one.books.startBook('demo');
  full = true;
  await addJob(one, 'Varnish');
  await one.books.flush();
  expect(one.news.at(-1)).toMatchObject({ state: 'not saved', because: expect.stringMatching(/no room left/) });
  expect(titles(one)).toEqual(['Varnish']);
  full = false;
  await new Promise((done) => setTimeout(done, 30));
  await one.books.flush();
  expect(one.news.at(-1)).toMatchObject({ state: 'saved', because: null });
  expect(titles(await store.tab())).toEqual(['Varnish']);
});

test('a device with no store at all: the book works, and says that it lasts only while the page is open', async () => {
  const { tab } = device();
  const one = await tab({ openLog: () => Promise.reject(new Error('not allowed')) });
  await one.books.startBook('demo');
  await addJob(one, 'Varnish');
  expect(titles(one)).toEqual(['Varnish']);
  expect(one.news.at(-1)).toMatchObject({
    state: 'not saved',
    because: expect.stringMatching(/no store.*not allowed/),
  });
});

test('a file opened again is merged: nothing is taken away, and as a copy it stands beside', async () => {
  const { tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  await addJob(one, 'First');
  const file = await one.books.boatFile();
  await addJob(one, 'Second');
  expect(await one.books.openFile(file, false)).toMatchObject({ kind: 'opened', readOnly: false });
  expect(titles(one)).toEqual(['First', 'Second']);
  await one.books.openFile(file, true);
  expect(titles(one)).toEqual(['First']);
  expect((await one.books.books()).map((book) => book.current)).toEqual([false, true]);
  // on another device the file opens as the same book, and what was done there comes back by file
  const other = await device().tab();
  await other.books.openFile(file, false);
  await addJob(other, 'Third');
  const back = await other.books.boatFile();
  const [first] = await one.books.books();
  await one.books.openBook(first!.id);
  await one.books.openFile(back, false);
  expect(titles(one)).toEqual(['First', 'Second', 'Third']);
  await one.books.flush();
  const again = await tab();
  expect(titles(again)).toEqual(['First', 'Second', 'Third']);
});

test('a refused file changes nothing that is stored', async () => {
  const { name, tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  await one.books.flush();
  await new Promise((done) => setTimeout(done, 30));
  const db = await openDatabase(name);
  const stored = async () =>
    JSON.stringify([
      await db.getAll('rows'),
      await db.getAll('books'),
      await db.getAll('open'),
      await db.getAll('foreign'),
    ]);
  const before = await stored();
  const shown = one.book();
  const file = await one.books.boatFile();
  for (const bytes of [
    new Uint8Array(),
    file.slice(0, -40),
    new TextEncoder().encode('{"format":"fettle-boat-book"}'),
  ]) {
    expect(await one.books.openFile(bytes, false)).toMatchObject({ kind: 'refused', because: [expect.any(String)] });
  }
  expect(one.book()).toBe(shown);
  expect(await stored()).toBe(before);
  db.close();
});

test('a file from a newer version is shown, refuses changes, and goes out as it came in, also after a restart', async () => {
  const { tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  const newer = { ...one.book()!, version: 6, sails: { s1: { name: 'Jib' } } };
  const bytes = new TextEncoder().encode(JSON.stringify(newer));
  expect(await one.books.openFile(bytes, false)).toMatchObject({ kind: 'opened', readOnly: true });
  for (const here of [one, await tab()]) {
    expect(here.book()?.boat.name).toBe('Dabchick');
    expect(here.news.at(-1)?.readOnly).toMatch(/newer version \(6\)/);
    expect(await addJob(here, 'Varnish')).toMatchObject({
      kind: 'refused',
      wrong: expect.stringMatching(/newer version/),
    });
    expect(await here.books.boatFile()).toEqual(bytes);
  }
});

test('an own book needs every size; what is missing is said and the book that was open stays', async () => {
  const { tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  const { beam_m: _, ...some } = boat;
  await expect(one.books.startBook('empty', { ...some, demo: false })).rejects.toThrow(/beam_m: it is missing/);
  expect(one.book()?.boat.demo).toBe(true);
  await one.books.startBook('empty', { ...boat, name: 'Coot', demo: false });
  expect(one.book()?.boat.name).toBe('Coot');
  expect((await one.books.books()).map((book) => book.name)).toEqual(['Dabchick', 'Coot']);
});

test('what was done is found in the same tab and in another, and after another book is opened', async () => {
  const { tab } = device();
  const one = await tab();
  await one.books.startBook('demo');
  await one.books.run('writeLog', { kind: 'note', text: 'Greased the rudder pintles' });
  const found = async (from: Tab, words: string) =>
    (await from.books.find({ words })).map(({ collection, id }) => [collection, from.book()?.log[id]?.text]);
  expect(await found(one, 'greasing pintles')).toEqual([['log', 'Greased the rudder pintles']]);
  await one.books.run('writeLog', { kind: 'note', text: 'Pintles are stiff again' });
  expect(await found(one, 'stiff')).toEqual([['log', 'Pintles are stiff again']]);
  await one.books.flush();
  const two = await tab();
  await two.books.run('writeLog', { kind: 'note', text: 'New gudgeon' });
  await two.books.flush();
  await one.books.catchUp(one.book()!.id);
  // what is of one family with it comes after
  expect((await found(one, 'gudgeon'))[0]).toEqual(['log', 'New gudgeon']);
  await one.books.startBook('empty', { ...boat, demo: false, name: 'Other' });
  expect(await found(one, 'gudgeon')).toEqual([]);
});

test('what the list of work shows is kept of the open book, whichever tab keeps it, and of no other', async () => {
  const { name, tab } = device();
  const db = await openDatabase(name);
  const kept = async () => workFromText((await db.get('open', 'work')) ?? null);
  const asked = async () => {
    await new Promise((done) => setTimeout(done, 30));
    return (await kept())?.jobs.map(({ title }) => title);
  };
  const one = await tab();
  await one.books.startBook('demo');
  await addJob(one, 'Varnish');
  expect(await asked()).toEqual(['Varnish']);
  expect(await kept()).toMatchObject(workShown(one.book()!));
  const two = await tab();
  await two.books.startBook('empty', { ...boat, name: 'Coot', demo: false });
  expect(await asked()).toEqual([]);
  await addJob(one, 'In the other book');
  expect(await asked()).toEqual([]);
  const [demo] = await two.books.books();
  // at the moment another book is open, nothing of the one before is left to be shown
  const log = await bookLog(name);
  await log.open(demo!.id);
  expect(await kept()).toBeNull();
  log.close();
  await two.books.openBook(demo!.id);
  expect(await asked()).toEqual(['In the other book', 'Varnish']);
  db.close();
});
