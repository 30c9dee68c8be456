import { expect, test } from 'vitest';
import type { Outing } from './records.ts';
import { also, begun, done, meet } from './testing/devices.ts';

const outing: Outing = { title: 'To the bar', date: '2026-06-06', from: '09:00', nights: 0, place: '', wind_kn: 14 };
const plug = { outing: 'o', list: 'launch', round: 1, line: 'drain-plugs', text: 'Drain plugs in', who: '' } as const;
const job = { title: 'Make the drain plugs good', consequence: 'danger', outing: 'o' } as const;
/** what a recipe of the job would bring */
const brings = { tools: [{ id: 'plier', name: 'pliers', count: 1, keptAt: '' }], mixes: [], stores: [] };
const juryRig = {
  title: 'A cork in the drain',
  zone: null,
  reason: 'Drain plugs in',
  made: '2026-05-02',
  trustedUntil: '2026-06-06',
  wind_max_kn: 14,
  sails_max: null,
  notOnRoad: false,
} as const;

const going = () => {
  const book = begun();
  done(book.run('addOuting', { ...outing, id: 'o' }));
  return book;
};

test('a line is ticked with the time, once, and opened again', () => {
  const book = going();
  const tick = done(book.run('tickMorningLine', plug));
  const now = book.view().morningTicks[tick]!.at;
  expect(book.view().morningTicks[tick]).toMatchObject({ ...plug, came: 'good', job: null, at: now });
  expect(book.run('tickMorningLine', plug)).toMatchObject({ kind: 'refused', where: 'line' });
  expect(book.run('tickMorningLine', { ...plug, outing: 'x' })).toMatchObject({ kind: 'refused', where: 'outing' });
  // the next time round it is a line like any other
  done(book.run('tickMorningLine', { ...plug, round: 2 }));
  done(book.run('untickMorningLine', { id: tick }));
  expect(Object.keys(book.view().morningTicks)).toHaveLength(1);
});

test('a line that is not right makes the job of it and the jury rig that stands in, and one undo takes all of it back', () => {
  const book = going();
  const made = done(book.run('failMorningLine', { ...plug, ...brings, job, juryRig }));
  const { jobs, juryRigs, morningTicks, log } = book.view();
  expect(jobs[made]).toMatchObject({ ...job, state: 'open' });
  expect(Object.keys(book.view().tools)).toEqual(['plier']);
  expect(Object.values(juryRigs)).toMatchObject([{ title: 'A cork in the drain', job: made, state: 'standing' }]);
  expect(Object.values(morningTicks)).toMatchObject([{ line: 'drain-plugs', came: 'failed', job: made }]);
  expect(Object.values(log).map(({ kind }) => kind)).toEqual(['jury rig made']);
  expect(book.undo().left).toEqual([]);
  expect([book.view().jobs, book.view().juryRigs, book.view().morningTicks]).toEqual([{}, {}, {}]);
});

test('a jury rig that does not do leaves neither job nor tick behind', () => {
  const book = going();
  const refused = book.run('failMorningLine', {
    ...plug,
    ...brings,
    job,
    juryRig: { ...juryRig, trustedUntil: '2026-05-01' },
  });
  expect(refused).toMatchObject({ kind: 'refused', where: 'trustedUntil' });
  expect([book.view().jobs, book.view().morningTicks]).toEqual([{}, {}]);
});

test('a list that is done stands in the log, takes no more ticks in that round, and undo opens it', () => {
  const book = going();
  done(book.run('tickMorningLine', plug));
  const { line: _, ...list } = plug;
  const words = 'Launch, To the bar: 08:10 Drain plugs in.';
  done(book.run('finishMorningList', { ...list, text: words }));
  expect(Object.values(book.view().log)).toMatchObject([
    { kind: 'outing', of: { collection: 'outings', id: 'o' }, text: words },
  ]);
  expect(book.run('tickMorningLine', { ...plug, line: 'cocks' })).toMatchObject({ kind: 'refused', where: 'round' });
  book.undo();
  expect(Object.values(book.view().morningTicks).map(({ came }) => came)).toEqual(['good']);
  done(book.run('tickMorningLine', { ...plug, line: 'cocks' }));
});

test('what is changed of a line of the house is one record, on two devices too', () => {
  const one = going();
  const other = also(one, 'b');
  const boom = { of: 'boom', outing: null };
  const moved = { list: 'rig', lines: [{ ...boom, place: 35 }] } as const;
  done(one.run('changeMorningLines', moved));
  done(other.run('changeMorningLines', { ...moved, lines: [{ ...boom, out: true }] }));
  meet(one, other);
  expect(Object.keys(one.view().morningLines)).toHaveLength(1);
  expect(one.view().morningLines).toEqual(other.view().morningLines);
  done(one.run('changeMorningLines', { ...moved, lines: [{ ...boom, out: null, text: 'Boom on, vang off' }] }));
  expect(Object.values(one.view().morningLines)[0]).toMatchObject({ of: 'boom', out: null, text: 'Boom on, vang off' });
});

test('a line of the keeper’s own is put in, changed itself, and goes with its outing', () => {
  const book = going();
  const own = done(book.run('addMorningLine', { list: 'pack', outing: 'o', place: null, text: 'The good teapot' }));
  const words = (text: string | null) => ({ list: 'pack', lines: [{ of: own, outing: 'o', text }] }) as const;
  done(book.run('changeMorningLines', words('The other teapot')));
  expect(book.view().morningLines).toMatchObject({ [own]: { of: null, text: 'The other teapot', out: null } });
  expect(book.run('changeMorningLines', words(null))).toMatchObject({ kind: 'refused', where: 'text' });
  // of another outing it is changed beside itself: there it may be out
  done(book.run('changeMorningLines', { list: 'pack', lines: [{ of: own, outing: null, out: true }] }));
  expect(Object.keys(book.view().morningLines)).toHaveLength(2);
  done(book.run('removeOuting', { id: 'o' }));
  expect(book.undoTitle()).toBe('Take out an outing: To the bar');
  expect(Object.values(book.view().morningLines).map(({ outing: of }) => of)).toEqual([null]);
  expect(book.undo().left).toEqual([]);
  expect(book.view().morningLines[own]).toMatchObject({ text: 'The other teapot' });
});
