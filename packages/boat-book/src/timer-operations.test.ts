import { expect, test } from 'vitest';
import { also, begun, done, meet, step } from './testing/devices.ts';

const hour_ms = 3_600_000;
/** The books of these tests begin at 9:00 on 2 May 2026. */
const later = (hours: number) => new Date(Date.UTC(2026, 4, 2, 9) + hours * hour_ms).toISOString();

function withStep() {
  const book = begun();
  const rest = {
    id: 'rest',
    title: 'It sets',
    law: { kind: 'set time', minutes: 60, from: 'the tin' },
    needs: {},
    setUps: [],
    still: [],
    wet: false,
  } as const;
  done(book.run('addJob', { title: 'Rebed', consequence: 'worsens', steps: [{ ...step, id: 's', waits: [rest] }] }));
  return book;
}

test('a timer is an instant in the book: there after closing, on another device, and back with undo', () => {
  const one = withStep();
  const id = done(one.run('startTimer', { step: 's', wait: null, words: 'pot life of the epoxy', ends: later(1) }));
  expect(one.view().timers[id]).toMatchObject({ ends: later(1), words: 'pot life of the epoxy' });
  const two = also(one, 'b');
  expect(two.view().timers).toEqual(one.view().timers);
  done(two.run('stopTimer', { id }));
  meet(one, two);
  expect(one.view().timers).toEqual({});
  two.undo();
  expect(two.view().timers).toHaveProperty(id);
});

test('one timer for each wait and one for the pot: a new one takes the place of the old', () => {
  const book = withStep();
  done(book.run('startTimer', { step: 's', wait: null, words: 'pot', ends: later(1) }));
  done(book.run('startTimer', { step: 's', wait: 'rest', words: 'sets', ends: later(3) }));
  done(book.run('startTimer', { step: 's', wait: null, words: 'pot', ends: later(2) }));
  expect(
    Object.values(book.view().timers)
      .map(({ words, ends }) => [words, ends])
      .sort(),
  ).toEqual([
    ['pot', later(2)],
    ['sets', later(3)],
  ]);
});

test('when the step is ticked its pot is used up: that timer goes, the wait’s stays', () => {
  const book = withStep();
  done(book.run('startTimer', { step: 's', wait: null, words: 'pot', ends: later(1) }));
  done(book.run('startTimer', { step: 's', wait: 'rest', words: 'sets', ends: later(3) }));
  done(book.run('tickStep', { id: 's' }));
  expect(Object.values(book.view().timers).map(({ words }) => words)).toEqual(['sets']);
});

test('a timer that is over before it begins, for years, or of a wait that is not there is refused', () => {
  const book = withStep();
  for (const [fields, where] of [
    [{ ends: later(-1) }, 'ends'],
    [{ ends: later(24 * 200) }, 'ends'],
    [{ wait: 'none' }, 'wait'],
    [{ step: 'gone' }, 'step'],
    [{ words: '' }, 'words'],
  ] as const) {
    const all = { step: 's', wait: null, words: 'pot', ends: later(1), ...fields };
    expect(book.run('startTimer', all), where).toMatchObject({
      kind: 'refused',
      where: expect.stringContaining(where),
    });
  }
  expect(book.view().timers).toEqual({});
});
