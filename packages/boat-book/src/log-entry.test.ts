import { expect, test } from 'vitest';
import { standingLog } from './log-entry.ts';
import { battery, begun, done, reading, step, zone } from './testing/devices.ts';

const plate = { title: 'Rebed the plate', consequence: 'worsens' } as const;
const fitting = { name: 'Shroud plate', zone: 'z', size: 'three M6', beddedWith: '', note: '' };

test('an entry about a job says its zone and its fitting, which the job knows', () => {
  const book = begun();
  done(book.run('addZone', { ...zone, id: 'z' }));
  done(book.run('addFitting', { ...fitting, id: 'f' }));
  done(book.run('addJob', { ...plate, id: 'j', zone: 'z', fitting: 'f', steps: [{ ...step, id: 's' }] }));
  done(book.run('tickStep', { id: 's', spent_min: 25 }));
  done(book.run('finishJob', { id: 'j', who: 'Ilka' }));
  expect(Object.values(book.view().log)).toMatchObject([
    { kind: 'step done', job: 'j', step: 's', zone: 'z', fitting: 'f', spent_min: 25 },
    { kind: 'job done', job: 'j', zone: 'z', fitting: 'f', who: 'Ilka', text: 'Rebed the plate' },
  ]);
});

test('an entry that puts another right names it; the other stays as it was and counts no more', () => {
  const book = begun();
  const cost = { amount: 12.5, currency: 'EUR' };
  const wrong = done(book.run('writeLog', { kind: 'got', text: 'Butyl tape', cost: { ...cost, amount: 125 } }));
  const before = book.view().log[wrong];
  const right = done(book.run('writeLog', { kind: 'got', text: 'Butyl tape', cost, corrects: wrong }));
  expect(book.view().log[wrong]).toEqual(before);
  expect([...standingLog(book.view().log).keys()]).toEqual([right]);
  expect(book.run('writeLog', { kind: 'note', text: 'That was another boat', corrects: 'gone' })).toMatchObject({
    kind: 'refused',
    where: 'corrects',
    wrong: 'there is no log entry ‘gone’ in this book',
  });
});

test('a job that is open after all has its entry taken back, and finished again it has a new one', () => {
  const book = begun();
  done(book.run('addJob', { ...plate, id: 'j' }));
  done(book.run('finishJob', { id: 'j' }));
  done(book.run('reopenJob', { id: 'j' }));
  const standing = () => [...standingLog(book.view().log).values()].map(({ kind }) => kind);
  expect(standing()).toEqual([]);
  done(book.run('finishJob', { id: 'j' }));
  expect(standing()).toEqual(['job done']);
});

test('several readings of a battery are one entry; a price without a currency is refused', () => {
  const book = begun();
  done(book.run('addBattery', { ...battery, id: 'b1' }));
  const later = { ...reading, at: '2026-05-02T05:00:00Z', volts: 12.4, circumstance: 'not said' as const };
  done(book.run('enterReadings', { readings: [reading] }));
  done(book.run('enterReadings', { readings: [reading, later] }));
  expect(Object.values(book.view().log).map(({ text, at }) => [at, text])).toEqual([
    ['2026-05-02T04:30:00Z', 'The battery: 12.55 V, rested, 9 °C'],
    ['2026-05-02T05:00:00Z', 'The battery: 2 readings, 12.40 V to 12.55 V'],
  ]);
  const cost = { amount: 3, currency: 'euro' };
  expect(book.run('writeLog', { kind: 'got', text: 'Tape', cost })).toMatchObject({
    kind: 'refused',
    where: 'cost › currency',
    right: 'the three letters of a currency, such as EUR',
  });
});
