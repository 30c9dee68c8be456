import { describe, expect, it } from 'vitest';
import { type Book, checkBook, type Job } from '#boat-book';
import { startSearch } from '#workplan';
import { followUpsOf } from './follow-ups.ts';
import { problemFrom } from './problem-from.ts';
import { job, jobDay, smallBook, step, weather } from './testing/small-book.ts';

const minutes = { low: 5, likely: 10, high: 15 };
const nuts = {
  title: 'Torque the wheel nuts again',
  because: 'New seats settle.',
  minutes,
  consequence: 'danger',
  after: { kind: 'next outing', else_days: 30 },
} as const;
const lockers = {
  title: 'Put the lockers back',
  because: 'Fresh paint sticks for a week.',
  minutes,
  consequence: 'comfort',
  after: { kind: 'days', least_days: 7, most_days: 14 },
} as const;
const seam = {
  title: 'Look over the seams',
  because: 'The first is seldom the last.',
  minutes,
  consequence: 'worsens',
  after: { kind: 'days', least_days: 0, most_days: 60 },
} as const;

const origin: Job = job('Rebed', { state: 'done', closed: '2026-05-06', followUps: [nuts, lockers, seam] });
const finished = '2026-05-06T10:30:00Z';
const done = step('origin', 0, 'Bed it', {
  progress: { kind: 'done', started: '2026-05-06T10:00:00Z', finished },
});
const outing = { title: 'Whit sail', date: '2026-05-23', from: '09:00', nights: 2, place: '', wind_kn: null };

describe('what a finished job leaves to be done', () => {
  it('comes round after its days, or after the next outing with its nights, the soonest first', () => {
    const book = smallBook({ jobs: { origin }, steps: { done }, outings: { whit: outing } });
    expect(followUpsOf(book, 'origin', '2026-05-06').map(({ title, from, due }) => [title, from, due])).toEqual([
      // by hand: 60 days on from 6 May are 5 July; 7 and 14 days 13 and 20 May; the outing is over on 25 May
      ['Look over the seams', '2026-05-06', '2026-07-05'],
      ['Put the lockers back', '2026-05-13', '2026-05-20'],
      ['Torque the wheel nuts again', '2026-05-26', '2026-06-09'],
    ]);
  });

  it('says when in words, and that there is no outing where there is none', () => {
    const book = smallBook({ jobs: { origin }, steps: { done } });
    expect(followUpsOf(book, 'origin', '2026-05-06').map(({ when }) => when)).toEqual([
      'by Sunday 5 July',
      'from Wednesday 13 May, by Wednesday 20 May',
      'no outing is in the book: from Friday 5 June, by Friday 19 June',
    ]);
  });

  it('knows what was put in already', () => {
    const book = smallBook({
      jobs: { origin, put: job('Put the lockers back', { followsJob: 'origin' }) },
      steps: { done },
    });
    expect(followUpsOf(book, 'origin', '2026-05-06').map(({ already }) => already)).toEqual([null, 'put', null]);
    expect(followUpsOf(book, 'put', '2026-05-06')).toEqual([]);
    expect(followUpsOf(book, 'gone', '2026-05-06')).toEqual([]);
  });

  it('is not planned before its time, though there are hours before it', () => {
    const told = followUpsOf(smallBook({ jobs: { origin }, steps: { done } }), 'origin', '2026-05-06')[1]!;
    const { steps = [], ...rest } = told.job;
    const book: Book = smallBook({
      jobs: { origin, put: { ...job(rest.title), ...rest, followsJob: 'origin' } },
      steps: { done, look: step('put', 0, rest.title, { minutes, follows: steps[0]!.follows! }) },
      jobDays: Object.fromEntries(
        ['2026-05-08', '2026-05-10', '2026-05-14'].map((date) => [date, jobDay(date)] as const),
      ),
      weather: Object.fromEntries(
        ['2026-05-08', '2026-05-10', '2026-05-14'].map((date) => [`w-${date}`, weather(date)] as const),
      ),
    });
    expect(checkBook(book)).toEqual([]);
    const matter = problemFrom(book, { now: '2026-05-07T08:00:00Z' });
    if (matter.kind !== 'problem') throw new Error(matter.because);
    const search = startSearch(matter.problem, { seed: 1 });
    search.advance(30);
    const [planned] = search.outcome('as it stands').plan.steps.filter((one) => one.step === 'look');
    const starts = Date.parse(matter.problem.startsAt) + planned!.start * 60_000;
    expect(new Date(starts).toISOString().slice(0, 10)).toBe('2026-05-14');
  });
});
