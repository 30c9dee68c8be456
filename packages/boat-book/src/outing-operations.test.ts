import { expect, test } from 'vitest';
import type { Outing } from './records.ts';
import { begun, done, step } from './testing/devices.ts';

const outing: Outing = { title: 'To the bar', date: '2026-06-06', from: '09:00', nights: 0, place: '', wind_kn: 14 };

test('an outing keeps its wind from the least to the gusts, who goes, and whether she gets wet', () => {
  const book = begun();
  const said = { ...outing, windLeast_kn: 8, gust_kn: 20, crew: 1, way: 'water' as const };
  const id = done(book.run('addOuting', said));
  expect(book.view().outings[id]).toEqual(said);
  done(book.run('changeOuting', { id, crew: null, way: 'road' }));
  expect(book.view().outings[id]).toEqual({ ...said, crew: null, way: 'road' });
  // one that says nothing of it, as they were written before, stands as it is
  const bare = done(book.run('addOuting', outing));
  expect(book.view().outings[bare]).toEqual(outing);
});

test.each([
  [{ windLeast_kn: 16 }, 'windLeast_kn', /16 knots at least is more than 14/],
  [{ gust_kn: 13 }, 'gust_kn', /13 knots are less than the 14/],
  [{ wind_kn: null, windLeast_kn: 5 }, 'wind_kn', /nothing for the most/],
  [{ crew: 0 }, 'crew', /at least 1/],
])('wind that falls where it should rise, and a crew of nobody, are refused: %j', (said, where, words) => {
  const book = begun();
  const refused = book.run('addOuting', { ...outing, ...said });
  expect(refused).toMatchObject({ kind: 'refused', where });
  expect(refused.kind === 'refused' && `${refused.wrong} ${refused.right}`).toMatch(words);
  expect(book.view().outings).toEqual({});
});

test('gusts alone may be known', () => {
  const book = begun();
  const id = done(book.run('addOuting', { ...outing, wind_kn: null, gust_kn: 25 }));
  expect(book.view().outings[id]).toMatchObject({ wind_kn: null, gust_kn: 25 });
});

test('an outing taken out lets go of its jobs, and undo gives it back with them', () => {
  const book = begun();
  const id = done(book.run('addOuting', outing));
  const job = done(book.run('addJob', { title: 'Rebed', consequence: 'worsens', outing: id, steps: [step] }));
  done(book.run('removeOuting', { id }));
  expect(book.view().outings).toEqual({});
  expect(book.view().jobs[job]?.outing).toBeNull();
  expect(book.undoTitle()).toBe('Take out an outing: To the bar');
  expect(book.undo().left).toEqual([]);
  expect(book.view().outings[id]).toEqual(outing);
  expect(book.view().jobs[job]?.outing).toBe(id);
});
