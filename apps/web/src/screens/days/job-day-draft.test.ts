import { describe, expect, it } from 'vitest';
import type { Book } from '#boat-book';
import { draftOf, type JobDayDraft, readDay } from './job-day-draft.ts';

const book = {
  places: { drive: {} },
  setUps: { mast: {} },
  jobDays: {
    last: {
      date: '2027-06-12',
      from: '08:30',
      to: '17:00',
      place: 'drive',
      setOut_min: 15,
      clearUp_min: 20,
      breaks: [{ from: '12:30', minutes: 30 }],
      hands: [{ id: 'nn', name: 'a neighbour', from: '10:00', to: '12:00' }],
      endsIn: [{ setUp: 'mast', state: 'down' }],
    },
  },
} as unknown as Book;

const filled: JobDayDraft = { ...draftOf(book, null), date: '2027-06-13' };

describe('a job day as it is filled in', () => {
  it('begins with the hours and place of the last one, without its date and hands', () => {
    expect(draftOf(book, null)).toMatchObject({ date: '', from: '08:30', place: 'drive', hands: [] });
    expect(draftOf(book, 'last').hands).toMatchObject([{ name: 'a neighbour' }]);
  });

  it('begins empty where there was none', () => {
    const empty = { places: {}, setUps: {}, jobDays: {} } as unknown as Book;
    expect(draftOf(empty, null)).toMatchObject({ date: '', from: '', to: '', place: '', setOut: '', clearUp: '' });
    const { day, faults } = readDay(draftOf(empty, null), empty);
    expect(day).toBeNull();
    expect(Object.keys(faults).sort()).toEqual(['clearUp', 'date', 'from', 'place', 'setOut', 'to']);
  });

  it('is a day of the book when it can be', () => {
    expect(readDay(filled, book).day).toMatchObject({
      date: '2027-06-13',
      setOut_min: 15,
      breaks: [{ from: '12:30', minutes: 30 }],
      endsIn: [{ setUp: 'mast', state: 'down' }],
    });
  });

  it.each([
    ['to', { to: '08:00' }, /not after/],
    ['date', { date: '2027-02-30' }, /not a date/],
    ['clearUp', { setOut: '300', clearUp: '300' }, /Leave time for work/],
    ['break-from-b', { breaks: [{ key: 'b', from: '16:50', minutes: '30' }] }, /not within/],
    ['hand-to-h', { hands: [{ key: 'h', name: 'Jo', from: '12:00', to: '11:00' }] }, /not after/],
    ['hand-h', { hands: [{ key: 'h', name: ' ', from: '09:00', to: '11:00' }] }, /Say who/],
  ] as const)('refuses %s with what is wrong', (field, change, why) => {
    const { day, faults } = readDay({ ...filled, ...change }, book);
    expect(day).toBeNull();
    expect(faults[field]).toMatch(why);
  });
});
