import { expect, test } from 'vitest';
import { standingLog } from './log-entry.ts';
import type { MastRecord, StayRecord } from './rig-records.ts';
import { also, begun, done, meet } from './testing/devices.ts';

const stay: StayRecord = {
  name: 'Forestay',
  zone: null,
  laid: '1x19',
  size_mm: 4,
  length_m: 6.2,
  screw: { thread: 'unf-5-16', ends: 'both' },
  aim_pct: 12,
  made: null,
  note: '',
};
const mast: MastRecord = {
  name: 'The mast',
  mass_kg: 19,
  massAt_m: 3,
  lineAt_m: 6,
  led: { by: 'pole', length_m: 1.4, heelAhead_m: 0, heelUp_m: 0, lean_deg: 0, spread_m: null },
  bowAhead_m: 1.9,
  bowUp_m: -0.1,
  from_deg: 5,
  to_deg: 85,
  shrouds: null,
  vang: null,
  note: '',
};
const reading = {
  on: '2026-05-02',
  moment: 'before towing',
  told: { kind: 'stretch', stretch_mm: 2.3, measured_m: 2 },
  turns: 0,
  note: '',
} as const;

test('a stay and what was read of it are put in and taken out, and undo brings them back', () => {
  const book = begun();
  const id = done(book.run('addStay', stay));
  const read = done(book.run('enterStayReading', { ...reading, stay: id }));
  expect(book.view().stayReadings[read]).toEqual({ ...reading, stay: id, order: 1 });
  done(book.run('removeStayReading', { id: read }));
  expect(book.view().stayReadings).toEqual({});
  book.undo();
  expect(Object.keys(book.view().stayReadings)).toEqual([read]);
  done(book.run('changeStay', { id, aim_pct: 15 }));
  expect(book.view().stays[id]).toEqual({ ...stay, aim_pct: 15 });
});

test('a reading that the stay could not give is refused, with what would be right', () => {
  const book = begun();
  const id = done(book.run('addStay', stay));
  const pull = { kind: 'pull', pulledAt_m: 3.2, pull_N: 50, aside_mm: 30 } as const;
  expect(book.run('enterStayReading', { ...reading, stay: id, told: pull })).toMatchObject({
    kind: 'refused',
    where: 'told › pulledAt_m',
    right: 'at most 3.1 m',
  });
  expect(book.run('enterStayReading', { ...reading, stay: 'gone' })).toMatchObject({ kind: 'refused', where: 'stay' });
  const bare = done(book.run('addStay', { ...stay, screw: null }));
  expect(book.run('enterStayReading', { ...reading, stay: bare, turns: 2 })).toMatchObject({
    kind: 'refused',
    where: 'turns',
  });
  expect(book.view().stayReadings).toEqual({});
});

test('a mast that would end below where it starts is refused', () => {
  const book = begun();
  expect(book.run('addMast', { ...mast, from_deg: 60, to_deg: 50 })).toMatchObject({
    kind: 'refused',
    where: 'from_deg',
  });
  const { led } = mast;
  expect(book.run('addMast', { ...mast, led: led && { ...led, by: 'A-frame' } })).toMatchObject({
    kind: 'refused',
    where: 'led › spread_m',
  });
  const id = done(book.run('addMast', mast));
  expect(book.view().masts[id]).toEqual(mast);
});

test('readings of one stay on two devices are both there when they meet', () => {
  const one = begun();
  const id = done(one.run('addStay', stay));
  const two = also(one, 'b');
  done(one.run('enterStayReading', { ...reading, stay: id }));
  done(two.run('enterStayReading', { ...reading, stay: id, moment: 'after towing' }));
  meet(one, two);
  expect(
    Object.values(one.view().stayReadings)
      .map(({ moment }) => moment)
      .sort(),
  ).toEqual(['after towing', 'before towing']);
});

test('what is measured is in the log by itself, and what is taken out is taken back there', () => {
  const book = begun();
  const id = done(book.run('addStay', stay));
  const log = () => Object.values(book.view().log);
  const standing = () => [...standingLog(book.view().log).values()].map(({ text }) => text);
  const read = done(book.run('enterStayReading', { ...reading, on: '2026-04-30', stay: id }));
  const words = 'Forestay: 2.3 mm of stretch over 2 m, before towing';
  expect(log()).toMatchObject([
    { kind: 'measured', at: '2026-04-30T12:00:00Z', of: { collection: 'stays', id }, text: words },
  ]);
  done(book.run('removeStayReading', { id: read }));
  const [first] = Object.keys(book.view().log);
  expect(log()[1]).toMatchObject({ kind: 'taken back', corrects: first, text: `Taken out: ${words}` });
  expect(standing()).toEqual([]);
  book.undo(); // the reading is there again, and so is what was said of it
  expect(standing()).toEqual([words]);
  book.undo();
  expect(standing()).toEqual([]);
  expect(Object.keys(book.view().stayReadings)).toEqual([]);
  expect(log()).toHaveLength(4); // nothing in it was rewritten
});
