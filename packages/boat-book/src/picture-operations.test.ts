import { expect, test } from 'vitest';
import { begun, done, zone } from './testing/devices.ts';

function withFitting() {
  const book = begun();
  const at = done(book.run('addZone', zone));
  const fitting = done(
    book.run('addFitting', { name: 'Stem fitting', zone: at, size: '2 × M8', beddedWith: '', note: '' }),
  );
  return { book, at, fitting };
}

test('a fitting is placed on the boat, moved, and one undo puts it back where it was', () => {
  const { book, fitting } = withFitting();
  expect(book.view().fittings[fitting]!.spot ?? null).toBe(null);
  done(book.run('placeFitting', { fitting, along: 0.02, up: 1.1 }));
  done(book.run('placeFitting', { fitting, along: 0.04, up: 1.2, across: -0.1 }));
  expect(book.view().fittings[fitting]!.spot).toEqual({ along: 0.04, up: 1.2, across: -0.1 });
  book.undo();
  expect(book.view().fittings[fitting]!.spot).toEqual({ along: 0.02, up: 1.1 });
  done(book.run('changeFitting', { id: fitting, spot: null }));
  expect(book.view().fittings[fitting]!.spot).toBe(null);
});

test('a zone is placed, with nothing else of it changed', () => {
  const { book, at } = withFitting();
  const before = book.view().zones[at]!;
  done(book.run('placeZone', { zone: at, along: 0.3, up: 0.5, across: 0.8 }));
  expect(book.view().zones[at]).toEqual({ ...before, along: 0.3, up: 0.5, across: 0.8 });
});

test('a place far off the boat is refused, and so is a fitting that is not in the book', () => {
  const { book, fitting } = withFitting();
  expect(book.run('placeFitting', { fitting, along: 5, up: 1 })).toMatchObject({ kind: 'refused', where: 'along' });
  expect(book.run('placeFitting', { fitting: 'nobody', along: 0.5, up: 1 })).toMatchObject({
    kind: 'refused',
    where: 'fitting',
  });
});

test('how she is built, and which of her sizes are guesses, is kept with the boat', () => {
  const { book } = withFitting();
  done(book.run('setBoat', { build: { bow: 'plumb', keel: 'bilge keels' }, guessed: ['boom_m'] }));
  expect(book.view().boat).toMatchObject({ build: { bow: 'plumb', keel: 'bilge keels' }, guessed: ['boom_m'] });
  expect(book.run('setBoat', { build: { bow: 'round' } } as never)).toMatchObject({ kind: 'refused' });
});
