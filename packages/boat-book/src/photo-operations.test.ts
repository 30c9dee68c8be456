import { expect, test } from 'vitest';
import { also, begun, done, meet, photo, step, zone } from './testing/devices.ts';

const hash = (figure: string) => figure.repeat(64);

function withJob() {
  const book = begun();
  const foredeck = done(book.run('addZone', zone));
  const fitting = done(book.run('addFitting', { name: 'Cleat', zone: foredeck, size: '', beddedWith: '', note: '' }));
  const job = done(book.run('addJob', { title: 'Rebed', consequence: 'worsens', steps: [step] }));
  const [stepId] = Object.keys(book.view().steps);
  return { book, job, fitting, step: stepId! };
}

test('a photograph of a step is kept once and for all, taken out, and brought back by undo', () => {
  const { book, job, step: of } = withJob();
  const id = done(book.run('keepPhoto', { ...photo, job, step: of }));
  expect(book.view().photos[id]).toEqual({ ...photo, job, step: of, order: 1 });
  done(book.run('removePhoto', { id }));
  expect(book.view().photos).toEqual({});
  book.undo();
  expect(book.view().photos).toHaveProperty(id);
});

test('what is said of a photograph can change, in one step back', () => {
  const { book, job } = withJob();
  const first = done(book.run('keepPhoto', { ...photo, job }));
  const position = { latitude_deg: 50.1, longitude_deg: -5.2 };
  const changed = done(book.run('changePhoto', { id: first, shows: 'after', position }));
  expect(Object.entries(book.view().photos)).toEqual([
    [changed, { ...photo, job, shows: 'after', position, order: 2 }],
  ]);
  book.undo();
  expect(Object.keys(book.view().photos)).toEqual([first]);
});

test('the same picture twice on one job is refused, and kept on the fitting too it is not', () => {
  const { book, job, fitting } = withJob();
  done(book.run('keepPhoto', { ...photo, job }));
  expect(book.run('keepPhoto', { ...photo, job, words: 'again' })).toMatchObject({ kind: 'refused', where: 'blob' });
  done(book.run('keepPhoto', { ...photo, fitting }));
  expect(Object.keys(book.view().photos)).toHaveLength(2);
});

test('a photograph of nothing, of what is not there, or of a step of another job is refused by name', () => {
  const { book, job, step: of } = withJob();
  const other = done(book.run('addJob', { title: 'Varnish', consequence: 'comfort' }));
  for (const [fields, where] of [
    [{}, 'job'],
    [{ job: 'gone' }, 'job'],
    [{ fitting: 'gone' }, 'fitting'],
    [{ entry: 'gone' }, 'entry'],
    [{ job: other, step: of }, 'job'],
    [{ job, bytes: 500_000 }, 'bytes'],
    [{ job, blob: 'a.jpg' }, 'blob'],
  ] as const) {
    expect(book.run('keepPhoto', { ...photo, ...fields }), where).toMatchObject({
      kind: 'refused',
      where: expect.stringContaining(where),
    });
  }
  expect(book.view().photos).toEqual({});
});

test('photographs stop short of what a boat file holds, and one taken out makes room again', () => {
  const { book, job } = withJob();
  // 425 of 400,000 bytes are 170 MB
  for (let i = 0; i < 425; i++)
    done(book.run('keepPhoto', { ...photo, job, bytes: 400_000, blob: i.toString(16).padStart(64, '0') }));
  expect(book.run('keepPhoto', { ...photo, job, blob: hash('f') })).toMatchObject({
    kind: 'refused',
    wrong: expect.stringContaining('171 MB'),
  });
  done(book.run('removePhoto', { id: Object.keys(book.view().photos)[0]! }));
  done(book.run('keepPhoto', { ...photo, job, blob: hash('f') }));
});

test('photographs kept on two devices apart are both there when they meet', () => {
  const { book: one, job } = withJob();
  const two = also(one, 'b');
  done(one.run('keepPhoto', { ...photo, job, blob: hash('a') }));
  done(two.run('keepPhoto', { ...photo, job, blob: hash('b'), shows: 'after' }));
  meet(one, two);
  expect(Object.values(one.view().photos).map(({ shows }) => shows)).toHaveLength(2);
});
