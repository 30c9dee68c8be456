import { expect, test } from 'vitest';
import { standingLog } from './log-entry.ts';
import { begun, done, step, zone } from './testing/devices.ts';

function withFitting() {
  const book = begun();
  const at = done(book.run('addZone', zone));
  const fitting = done(
    book.run('addFitting', { name: 'Stem fitting', zone: at, size: '2 × M8', beddedWith: 'brown and hard', note: '' }),
  );
  const job = done(
    book.run('addJob', {
      title: 'Rebed the stem fitting',
      consequence: 'worsens',
      fitting,
      steps: [{ ...step, id: 'bed' }],
    }),
  );
  return { book, fitting, job };
}
const asButyl = { kind: 'butyl-tape', product: 'butyl tape, the grey roll', on: '2026-05-02' };

test('what a fitting is bedded with is kept with it and found in the log, and one undo takes back both', () => {
  const { book, fitting, job } = withFitting();
  done(book.run('bedFitting', { fitting, job, ...asButyl }));
  expect(book.view().fittings[fitting]).toMatchObject({ beddedWith: asButyl.product, bedding: { ...asButyl, job } });
  expect([...standingLog(book.view().log).values()]).toMatchObject([
    {
      kind: 'bedded',
      fitting,
      job,
      text: 'Stem fitting bedded with butyl tape, the grey roll',
      with: [{ name: asButyl.product }],
    },
  ]);
  book.undo();
  expect(book.view().fittings[fitting]!.beddedWith).toBe('brown and hard');
  expect(book.view().fittings[fitting]!.bedding ?? null).toBe(null);
  expect(standingLog(book.view().log).size).toBe(0);
});

test('one that was done before today stands in the log on its day; one still to come is refused', () => {
  const { book, fitting } = withFitting();
  done(book.run('bedFitting', { fitting, job: null, ...asButyl, on: '2025-04-11' }));
  expect(Object.values(book.view().log)[0]!.at).toBe('2025-04-11T12:00:00Z');
  expect(book.run('bedFitting', { fitting, job: null, ...asButyl, on: '2026-05-03' })).toMatchObject({
    kind: 'refused',
    where: 'on',
    wrong: '2026-05-03 is still to come',
  });
});

test('a step takes what it is bedded with, put on the list to get and taken back in one', () => {
  const { book } = withFitting();
  const tape = {
    name: 'Butyl tape',
    keptAt: '',
    onHand: false,
    expected: null,
    lead_days: null,
    note: '',
    unit: 'ml',
  } as const;
  done(book.run('stepTakes', { step: 'bed', store: 'tape', put: tape, amount: 22, unit: 'ml' }));
  expect(book.view().steps.bed).toMatchObject({ stores: ['tape'], takes: [{ store: 'tape', amount: 22, unit: 'ml' }] });
  // asked again it is still taken once, with the later amount
  done(book.run('stepTakes', { step: 'bed', store: 'tape', put: null, amount: 30, unit: 'ml' }));
  expect(book.view().steps.bed).toMatchObject({ stores: ['tape'], takes: [{ store: 'tape', amount: 30, unit: 'ml' }] });
  expect(book.run('stepTakes', { step: 'bed', store: 'tape', put: null, amount: 1, unit: 'kg' })).toMatchObject({
    kind: 'refused',
    where: 'unit',
  });
  book.undo();
  book.undo();
  expect(book.view().stores).toEqual({});
  expect(book.view().steps.bed!.stores).toEqual([]);
});
