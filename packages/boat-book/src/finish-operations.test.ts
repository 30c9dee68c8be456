import { expect, test } from 'vitest';
import type { OpenBook } from './open-book.ts';
import { begun, done, step } from './testing/devices.ts';

const toProve = { ...step, title: 'Hose it from outside', proof: 'hose' } as const;
const kinds = (book: OpenBook) => Object.values(book.view().log).map(({ kind, text }) => `${kind}: ${text}`);
const job = (book: OpenBook) =>
  done(book.run('addJob', { title: 'Rebed', consequence: 'worsens', steps: [step, toProve] }));

test('a job with a proof is not done without it, and its proof stands in the log with the job', () => {
  const book = begun();
  const id = job(book);
  expect(book.run('finishJob', { id })).toMatchObject({
    kind: 'refused',
    where: 'proof',
    wrong: 'its proof is owed: ‘Hose it from outside’',
  });
  expect(book.view().jobs[id]?.state).toBe('open');
  const proof = { by: 'hose', found: 'dry inside after 10 minutes' } as const;
  done(book.run('finishJob', { id, proof, who: 'Ilka' }));
  expect(kinds(book)).toEqual(['proved: Proved by hose: dry inside after 10 minutes', 'job done: Rebed']);
  const proofStep = () => Object.values(book.view().steps).find((one) => one.proof !== undefined);
  expect(proofStep()?.progress.kind).toBe('done');
  book.undo();
  expect(book.view().jobs[id]?.state).toBe('open');
  expect(proofStep()?.progress.kind).toBe('open');
  // what was taken back proves nothing
  expect(book.run('finishJob', { id })).toMatchObject({ kind: 'refused', where: 'proof' });
});

test('why it is not proved is said instead, never both, and stands with the job', () => {
  const book = begun();
  const id = job(book);
  const proof = { by: 'hose', found: 'dry' } as const;
  expect(book.run('finishJob', { id, proof, notProved: 'no water here' })).toMatchObject({ where: 'notProved' });
  expect(book.run('finishJob', { id, notProved: ' ' })).toMatchObject({ kind: 'refused' });
  done(book.run('finishJob', { id, notProved: 'there is no water here' }));
  expect(kinds(book)).toEqual(['job done: Rebed. Not proved, because there is no water here']);
});

test('a job that did not stand its proof stays open, and the log says so', () => {
  const book = begun();
  const id = job(book);
  done(book.run('failProof', { id, proof: { by: 'hose', found: 'it weeps at the after bolt' } }));
  expect(kinds(book)).toEqual(['measured: Did not stand its proof by hose: it weeps at the after bolt']);
  expect(book.view().jobs[id]?.state).toBe('open');
  expect(book.run('finishJob', { id })).toMatchObject({ kind: 'refused', where: 'proof' });
});

test('what follows goes in with the end of the job, and out with one undo', () => {
  const book = begun();
  const id = done(book.run('addJob', { title: 'Rebed', consequence: 'worsens' }));
  const followUps = [{ title: 'Look at it again', consequence: 'worsens', steps: [step] }] as const;
  done(book.run('finishJob', { id, followUps, writtenDown: 'Butyl, 3 mm' }));
  expect(Object.values(book.view().jobs).map(({ title, followsJob }) => [title, followsJob])).toEqual([
    ['Rebed', undefined],
    ['Look at it again', id],
  ]);
  expect(kinds(book)).toEqual(['job done: Rebed', 'note: Butyl, 3 mm']);
  expect(book.undoTitle()).toBe('Finish a job: Rebed');
  book.undo();
  expect(Object.keys(book.view().jobs)).toEqual([id]);
  expect(book.view().jobs[id]?.state).toBe('open');
});
