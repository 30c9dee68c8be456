import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readBoatFile, writeBoatFile } from './boat-file.ts';
import { bookVersion } from './book-schema.ts';
import { checkBook } from './check-book.ts';
import { openBook } from './open-book.ts';
import { battery, done, loadPath, photo, reading, surroundings, tin } from './testing/devices.ts';

/**
 * A file as version 1 wrote it: the invented demo boat, with a job held to a day, a step ticked, a plan kept and a note
 * answered differently on two devices. It was written once and is never written again: it must open for ever.
 */
const version1 = new Uint8Array(readFileSync(new URL('./testing/kept-files/version-1.fettle', import.meta.url)));

test('a file of version 1 opens with its past, and says how it was brought up', () => {
  const read = readBoatFile(version1);
  if (read.kind !== 'book') throw new Error(`it was ${read.kind}`);
  expect(read.notes[0]).toMatch(/^Brought from version 1 to 2: /);
  expect(read.notes).toHaveLength(bookVersion - 1);
  expect(read.born).toBe('birth-of-version-1');
  expect(read.states).not.toBeNull();
  const { book } = read;
  expect(book.version).toBe(bookVersion);
  // counted in the file by hand: 19 jobs, one held, one plan
  expect(Object.keys(book.jobs)).toHaveLength(19);
  expect(Object.values(book.jobs).filter((job) => job.heldTo !== null)).toHaveLength(1);
  expect(Object.keys(book.plans)).toHaveLength(1);
  expect(Object.values(book.jobs).every((job) => job.heldAt === null)).toBe(true);
  expect(Object.values(book.weather).every((entry) => entry.rainOdds_pct === null)).toBe(true);
  expect(Object.values(book.stores).every((store) => store.lead_days === null)).toBe(true);
  expect(checkBook(book).filter((fault) => /null|field/.test(fault.wrong))).toEqual([]);
  // and goes out again as a file of this version
  expect(readBoatFile(writeBoatFile({ book, states: read.states! }))).toMatchObject({ kind: 'book', notes: [] });
});

/** A file as version 2 wrote it, in the same way. */
const version2 = new Uint8Array(readFileSync(new URL('./testing/kept-files/version-2.fettle', import.meta.url)));

test('a file of version 2 opens with its past, and takes a battery and readings', () => {
  const read = readBoatFile(version2);
  if (read.kind !== 'book' || read.states === null) throw new Error('no book with its past');
  expect(read.notes[0]).toMatch(/^Brought from version 2 to 3: /);
  expect(read.born).toBe('birth-of-version-2');
  const { book } = read;
  expect(Object.keys(book.jobs)).toHaveLength(19);
  expect(Object.values(book.jobs).filter((job) => job.heldAt === '10:00')).toHaveLength(1);
  expect([book.batteries, book.panels, book.circuits, book.readings, book.nightsAhead]).toEqual([{}, {}, {}, {}, {}]);
  const here = openBook([read.states], surroundings('a'));
  expect(here.view()).toEqual(book);
  expect(here.questions()).toHaveLength(1);
  const id = done(here.run('addBattery', battery));
  done(here.run('enterReadings', { readings: [{ ...reading, battery: id }] }));
  const { view, states } = here;
  expect(readBoatFile(writeBoatFile({ book: view(), states: states() }))).toMatchObject({ kind: 'book', notes: [] });
});

/** A file as version 3 wrote it, in the same way. */
const version3 = new Uint8Array(readFileSync(new URL('./testing/kept-files/version-3.fettle', import.meta.url)));

test('a file of version 3 opens with its past and its power, and takes a load path', () => {
  const read = readBoatFile(version3);
  if (read.kind !== 'book' || read.states === null) throw new Error('no book with its past');
  expect(read.notes[0]).toMatch(/^Brought from version 3 to 4: /);
  expect(read.born).toBe('birth-of-version-3');
  const { book } = read;
  // counted in the file by hand: 19 jobs, 5 circuits, 21 readings
  expect([book.jobs, book.circuits, book.readings].map((each) => Object.keys(each).length)).toEqual([19, 5, 21]);
  expect(book.circuits['anchor-light']?.watts).toBe(3);
  expect([book.loadPaths, book.stays, book.masts, book.stayReadings, book.boardHoists]).toEqual([{}, {}, {}, {}, {}]);
  const here = openBook([read.states], surroundings('a'));
  expect(here.view()).toEqual(book);
  expect(here.questions()).toHaveLength(1);
  const id = done(here.run('addLoadPath', loadPath));
  expect(here.view().loadPaths[id]).toEqual(loadPath);
  const { view, states } = here;
  expect(readBoatFile(writeBoatFile({ book: view(), states: states() }))).toMatchObject({ kind: 'book', notes: [] });
});

/** A file as version 4 wrote it, in the same way. */
const version4 = new Uint8Array(readFileSync(new URL('./testing/kept-files/version-4.fettle', import.meta.url)));

test('a file of version 4 opens with its past and its loads, its log can be put right, and it takes a photograph', () => {
  const read = readBoatFile(version4);
  if (read.kind !== 'book' || read.states === null) throw new Error('no book with its past');
  expect(read.notes[0]).toMatch(/^Brought from version 4 to 5: /);
  expect(read.born).toBe('birth-of-version-4');
  const { book } = read;
  // counted in the file by hand: 19 jobs, 2 load paths, 5 stays, 8 readings of them, 4 entries in the log
  const counted = [book.jobs, book.loadPaths, book.stays, book.stayReadings, book.log];
  expect(counted.map((each) => Object.keys(each).length)).toEqual([19, 2, 5, 8, 4]);
  const here = openBook([read.states], surroundings('a'));
  expect(here.view()).toEqual(book);
  expect(here.questions()).toHaveLength(1);
  const [old] = Object.keys(book.log);
  done(here.run('writeLog', { kind: 'note', text: 'It was the other wire', corrects: old! }));
  const { view, states } = here;
  expect(Object.keys(view().log)).toHaveLength(5);
  const [job] = Object.keys(book.jobs);
  const kept = done(here.run('keepPhoto', { ...photo, job: job! }));
  expect(view().photos[kept]).toMatchObject({ job, words: photo.words });
  expect(book.tins).toEqual({});
  const tinId = done(here.run('addTin', tin));
  expect(view().tins[tinId]).toEqual(tin);
  expect(readBoatFile(writeBoatFile({ book: view(), states: states() }))).toMatchObject({ kind: 'book', notes: [] });
});

test('a store of version 4, that has no amount, takes a place and an amount, and undo leaves it without', () => {
  const read = readBoatFile(version4);
  if (read.kind !== 'book' || read.states === null) throw new Error('no book with its past');
  expect(read.book.stowages).toEqual({});
  const here = openBook([read.states], surroundings('a'));
  const locker = done(here.run('addStowage', { name: 'Port locker', within: null, aboard: true }));
  done(here.run('changeStore', { id: 'sealant', stowage: locker, amount: 290, unit: 'ml' }));
  expect(here.view().stores.sealant).toMatchObject({ stowage: locker, amount: 290, unit: 'ml', onHand: true });
  const { view, states } = here;
  expect(readBoatFile(writeBoatFile({ book: view(), states: states() }))).toMatchObject({ kind: 'book', notes: [] });
  here.undo();
  expect(here.view().stores.sealant?.amount ?? null).toBeNull();
  expect(here.faults()).toEqual([]);
});

test('shared documents that version 1 stored open, can be changed and still merge', () => {
  const read = readBoatFile(version1);
  if (read.kind !== 'book' || read.states === null) throw new Error('no book with its past');
  const one = openBook([read.states], surroundings('a'));
  const two = openBook([read.states], surroundings('b'));
  expect(one.faults()).toEqual([]);
  expect(one.view()).toEqual(read.book);
  expect(one.questions()).toHaveLength(1);
  const [job, { heldTo }] = Object.entries(one.view().jobs).find(([, each]) => each.heldTo !== null)!;
  done(one.run('holdJob', { job, day: heldTo, at: one.view().jobDays[heldTo!]!.from }));
  const [store] = Object.keys(two.view().stores);
  done(two.run('changeStore', { id: store!, lead_days: 5 }));
  one.takeIn(two.states());
  two.takeIn(one.states());
  expect(one.view()).toEqual(two.view());
  expect(one.view().stores[store!]?.lead_days).toBe(5);
  expect(one.view().jobs[job]?.heldAt).toBe(one.view().jobDays[heldTo!]!.from);
  expect(one.undo().left).toEqual([]);
  expect(one.view().jobs[job]?.heldAt).toBeNull();
});
