import { expect, test } from 'vitest';
import { standingLog } from './log-entry.ts';
import type { StoreRecord } from './store-records.ts';
import { also, begun, done, meet, step } from './testing/devices.ts';

const sealant: StoreRecord = {
  name: 'Polyurethane sealant',
  keptAt: '',
  onHand: false,
  expected: '2026-05-08',
  lead_days: 2,
  note: '',
  unit: 'ml',
  pack: { word: 'tube', holds: 290 },
};

/** A book with a step that takes 40 ml of a sealant that is to be got. */
function withStep() {
  const book = begun();
  const locker = done(book.run('addStowage', { name: 'Port locker', within: null, aboard: true }));
  const store = done(book.run('addStore', sealant));
  const job = done(
    book.run('addJob', {
      title: 'Rebed the cleat',
      consequence: 'worsens',
      steps: [{ ...step, id: 'bed', stores: [store], takes: [{ store, amount: 40, unit: 'ml' }] }],
    }),
  );
  return { book, locker, store, job };
}

test('what is got is there, where it was put, with what was paid; one undo takes all of it back', () => {
  const { book, locker, store, job } = withStep();
  const cost = { amount: 31.5, currency: 'EUR' };
  const jobs = [{ job, share: 0.5 }];
  done(book.run('gotStore', { id: store, amount: 580, unit: 'ml', stowage: locker, cost, jobs }));
  expect(book.view().stores[store]).toMatchObject({
    onHand: true,
    amount: 580,
    unit: 'ml',
    stowage: locker,
    expected: null,
    got: '2026-05-02',
  });
  // half of it is the job's, the other half stock
  const thing = { store, name: sealant.name, amount: 580, unit: 'ml' };
  expect(Object.values(book.view().log)).toMatchObject([
    { kind: 'got', job, with: [thing], cost: { amount: 15.75, currency: 'EUR' } },
    { kind: 'got', job: null, with: [thing], cost: { amount: 15.75, currency: 'EUR' } },
  ]);
  book.undo();
  expect([...standingLog(book.view().log)]).toEqual([]);
  expect(book.view().stores[store]).toMatchObject({ onHand: false, expected: '2026-05-08' });
  expect(book.view().stores[store]?.amount ?? null).toBeNull();
});

test('a price that three jobs bear is shared to the hundredth and nothing of it is lost', () => {
  const { book, store, job } = withStep();
  const two = [2, 3].map((n) => done(book.run('addJob', { title: `Job ${n}`, consequence: 'worsens' })));
  const jobs = [job, ...two].map((each) => ({ job: each, share: 1 / 3 }));
  done(book.run('gotStore', { id: store, amount: 290, unit: 'ml', cost: { amount: 10, currency: 'NZD' }, jobs }));
  // 3.33 + 3.33 + 3.34
  expect(Object.values(book.view().log).map(({ cost }) => cost?.amount)).toEqual([3.33, 3.33, 3.34]);
  expect(
    book.run('gotStore', { id: store, amount: null, unit: null, jobs: jobs.map((each) => ({ ...each, share: 0.5 })) }),
  ).toMatchObject({ kind: 'refused', where: 'jobs', wrong: 'their shares make 150 of 100' });
});

test('what is got is added to what is there, without the dust of fractions', () => {
  const { book, store } = withStep();
  done(book.run('gotStore', { id: store, amount: 0.1, unit: 'ml' }));
  done(book.run('gotStore', { id: store, amount: 0.2, unit: 'ml' }));
  expect(book.view().stores[store]?.amount).toBe(0.3);
  expect(book.run('gotStore', { id: store, amount: 1, unit: 'm' })).toMatchObject({
    kind: 'refused',
    where: 'unit',
    right: 'ml',
  });
});

test('what was there and never counted stays not counted when more is got', () => {
  const { book, store } = withStep();
  done(book.run('gotStore', { id: store, amount: null, unit: null }));
  done(book.run('gotStore', { id: store, amount: 290, unit: 'ml' }));
  expect(book.view().stores[store]).toMatchObject({ onHand: true, amount: null });
});

test('a step that is ticked takes what it used; undo opens the step and puts it back', () => {
  const { book, store } = withStep();
  done(book.run('gotStore', { id: store, amount: 100, unit: 'ml' }));
  done(book.run('tickStep', { id: 'bed', spent_min: 20, used: [{ store, amount: 45 }] }));
  expect(book.view().stores[store]).toMatchObject({ amount: 55, onHand: true });
  expect(Object.values(book.view().log).map(({ kind }) => kind)).toEqual(['got', 'step done', 'used']);
  expect(Object.values(book.view().log).at(-1)).toMatchObject({ step: 'bed', with: [{ store, amount: 45 }] });
  book.undo();
  expect(book.view().steps.bed?.progress.kind).toBe('open');
  expect(book.view().stores[store]).toMatchObject({ amount: 100, onHand: true });
});

test('what is all used is no longer on hand, and more used than was thought leaves none', () => {
  const { book, store } = withStep();
  done(book.run('gotStore', { id: store, amount: 100, unit: 'ml' }));
  done(book.run('useStores', { step: 'bed', used: [{ store, amount: 120 }] }));
  expect(book.view().stores[store]).toMatchObject({ amount: 0, onHand: false });
  done(book.run('gotStore', { id: store, amount: null, unit: null }));
  done(book.run('useStores', { step: 'bed', used: [{ store, amount: 30 }] }));
  // not counted: some is still there
  expect(book.view().stores[store]).toMatchObject({ amount: null, onHand: true });
  done(book.run('useStores', { step: 'bed', used: [{ store, amount: null }] }));
  expect(book.view().stores[store]).toMatchObject({ onHand: false });
  expect(book.run('useStores', { step: 'bed', used: [{ store: 'none', amount: 1 }] })).toMatchObject({
    kind: 'refused',
    where: 'used › 1. › store',
  });
});

test('a step that no longer names a store no longer takes an amount of it, so that the store can be taken out', () => {
  const { book, store } = withStep();
  expect(book.run('removeStore', { id: store })).toMatchObject({ kind: 'refused' });
  done(book.run('changeStep', { id: 'bed', stores: [] }));
  expect(book.view().steps.bed?.takes).toEqual([]);
  done(book.run('removeStore', { id: store }));
});

test('a place inside itself is refused, and one that something is kept in cannot be taken out', () => {
  const { book, locker, store } = withStep();
  const box = done(book.run('addStowage', { name: 'Paint box', within: locker, aboard: true }));
  expect(book.run('changeStowage', { id: locker, within: box })).toMatchObject({
    kind: 'refused',
    where: 'within',
    wrong: 'these would be inside each other: ‘Paint box’, ‘Port locker’',
  });
  done(book.run('changeStore', { id: store, stowage: box }));
  expect(book.run('removeStowage', { id: box })).toMatchObject({ kind: 'refused' });
});

test('of two amounts counted apart the book goes by the smaller, and asks', () => {
  const { book, store } = withStep();
  done(book.run('gotStore', { id: store, amount: 290, unit: 'ml' }));
  const other = also(book, 'b');
  done(book.run('changeStore', { id: store, amount: 200 }));
  done(other.run('changeStore', { id: store, amount: 90 }));
  meet(book, other);
  expect(book.view().stores[store]?.amount).toBe(90);
  expect(book.questions()).toMatchObject([{ field: 'amount', answers: [90, 200] }]);
});
