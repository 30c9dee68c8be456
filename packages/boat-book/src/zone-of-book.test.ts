/** By the IANA time zone database the clocks of Pacific/Auckland are 13 h ahead of UTC in November. */
import { expect, test } from 'vitest';
import { emptyBook } from './empty-book.ts';
import { beginBook } from './open-book.ts';
import { boat, done, place, surroundings } from './testing/devices.ts';

test('it is today where the boat lives, not where the device thinks it is; the middle of a day is noon there', () => {
  const late = { ...surroundings('a'), now: () => Date.parse('2026-11-26T11:30:00Z') };
  const book = beginBook(emptyBook('book1', boat), 'birth1', late);
  const due = done(
    book.run('addDue', {
      title: 'Grease the wheel bearings',
      zone: null,
      fitting: null,
      consequence: 'danger',
      printed: null,
      every: { count: 12, unit: 'months' },
      season: null,
      uses: [],
      condition: null,
      usual: null,
      recipe: null,
      source: 'custom',
      lastDone: null,
      note: '',
    }),
  );
  expect(book.run('dueWasDone', { id: due, on: '2026-11-27' })).toMatchObject({ kind: 'refused', where: 'on' });

  done(book.run('addPlace', { ...place, timeZone: 'Pacific/Auckland' }));
  done(book.run('dueWasDone', { id: due, on: '2026-11-20' }));
  done(book.run('dueWasDone', { id: due, on: '2026-11-27' }));
  expect(Object.values(book.view().log).map(({ at }) => at)).toEqual(
    expect.arrayContaining(['2026-11-19T23:00:00Z', '2026-11-26T11:30:00.000Z']),
  );
});
