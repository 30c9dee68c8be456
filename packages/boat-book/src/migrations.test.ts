import { expect, test } from 'vitest';
import { bookVersion } from './book-schema.ts';
import { type Migration, migrated, migrations } from './migrations.ts';

// two steps that only this test knows: the mechanism is what is tested
const list: readonly Migration[] = [
  { from: 2, does: 'lengths are in metres.', change: (book) => ({ ...book, length_m: Number(book.length_cm) / 100 }) },
  { from: 1, does: 'boats have lengths.', change: (book) => ({ ...book, length_cm: 560 }) },
];

test('a book is brought up one version at a time, in order, and the notes say how', () => {
  expect(migrated({ version: 1, name: 'Dabchick' }, 1, 3, list)).toEqual({
    book: { version: 3, name: 'Dabchick', length_cm: 560, length_m: 5.6 },
    notes: ['Brought from version 1 to 2: boats have lengths.', 'Brought from version 2 to 3: lengths are in metres.'],
  });
  expect(migrated({ version: 2, length_cm: 700 }, 2, 3, list).book.length_m).toBe(7);
});

test('a book of this version is left as it is', () => {
  const book = { version: bookVersion };
  expect(migrated(book, bookVersion)).toEqual({ book, notes: [] });
});

test('a gap in the list is a fault of the program, not passed over', () => {
  expect(() => migrated({ version: 1 }, 1, 4, list)).toThrow(/version 3/);
});

test('the list leads from version 1 to the present one without a gap', () => {
  expect(migrations.map((migration) => migration.from).sort((a, b) => a - b)).toEqual(
    Array.from({ length: bookVersion - 1 }, (_, i) => i + 1),
  );
});
