import { expect, test } from 'vitest';
import { blobsNamed } from './blobs-named.ts';
import { also, begun, done, meet } from './testing/devices.ts';

const paper = {
  title: 'Insurance 2026',
  kind: 'insurance',
  blob: 'a'.repeat(64),
  bytes: 240_000,
  type: 'application/pdf',
  file: 'policy.pdf',
  expires: '2027-03-31',
  fitting: null,
  job: null,
  note: '',
} as const;

test('a paper is kept with what is said of it, changed in words only, and comes back with undo', () => {
  const book = begun();
  const id = done(book.run('keepPaper', paper));
  expect(book.view().papers[id]).toMatchObject({ ...paper, added: '2026-05-02T09:01:00.000Z' });
  expect(blobsNamed(book.view())).toMatchObject([{ blob: paper.blob, kind: 'paper', packed: true }]);
  done(book.run('changePaper', { id, expires: '2027-04-30' }));
  expect(book.run('changePaper', { id, blob: 'b'.repeat(64) } as never)).toMatchObject({ kind: 'refused' });
  done(book.run('removePaper', { id }));
  book.undo();
  expect(book.view().papers[id]).toMatchObject({ blob: paper.blob, expires: '2027-04-30' });
});

test('the same paper twice, one of no size and more than a boat file takes are refused', () => {
  const book = begun();
  done(book.run('keepPaper', paper));
  expect(book.run('keepPaper', { ...paper, title: 'Again' })).toMatchObject({
    kind: 'refused',
    wrong: 'the same paper is in the book already, as ‘Insurance 2026’',
  });
  expect(book.run('keepPaper', { ...paper, blob: 'b'.repeat(64), bytes: 0 })).toMatchObject({ where: 'bytes' });
  for (const blob of ['c', 'd']) done(book.run('keepPaper', { ...paper, blob: blob.repeat(64), bytes: 20_000_000 }));
  expect(book.run('keepPaper', { ...paper, blob: 'e'.repeat(64), bytes: 20_000_000 })).toMatchObject({
    kind: 'refused',
    wrong: 'the papers of the book would have 61 MB, and its file holds 60 MB of them',
  });
});

test('two dates given for one paper on two devices are both seen', () => {
  const one = begun();
  const id = done(one.run('keepPaper', paper));
  const two = also(one, 'b');
  done(one.run('changePaper', { id, expires: '2027-04-30' }));
  done(two.run('changePaper', { id, expires: '2028-03-31' }));
  meet(one, two);
  expect(one.questions()).toMatchObject([{ collection: 'papers', field: 'expires' }]);
});
