/** Whatever a keeper makes of a book: it gives a sound problem or says why there is nothing to plan, in whole words. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Book, Job, JobDay, Step } from '#boat-book';
import { obstacleInWords, problemFrom, stepReasonsInWords, verdictInWords } from '#reckoning';
import { addDays } from '#units';
import { checkProblem, startSearch, violations } from '#workplan';
import { demoBook } from '../../../examples/demo-book.ts';

const today = '2026-05-06' as Parameters<typeof demoBook>[0];
const demo = demoBook(today);
const at = (minute: number) => new Date(Date.parse(`${today}T00:00:00Z`) + minute * 60_000).toISOString();

type Edit = (book: Book) => Book;
const aStep = fc.constantFrom(...Object.keys(demo.steps));
const aJob = fc.constantFrom(...Object.keys(demo.jobs));
const aDay = fc.constantFrom(...Object.keys(demo.jobDays));
/** From a hundred days ago to twelve days ahead: devices' clocks are wrong. */
const aMinute = fc.integer({ min: -144_000, max: 17_280 });

function withStep(id: string, change: Partial<Step>): Edit {
  return (book) =>
    book.steps[id] ? { ...book, steps: { ...book.steps, [id]: { ...book.steps[id], ...change } } } : book;
}
function withJob(id: string, change: Partial<Job>): Edit {
  return (book) => (book.jobs[id] ? { ...book, jobs: { ...book.jobs, [id]: { ...book.jobs[id], ...change } } } : book);
}
function withDay(id: string, change: (day: JobDay) => JobDay): Edit {
  return (book) =>
    book.jobDays[id] ? { ...book, jobDays: { ...book.jobDays, [id]: change(book.jobDays[id]) } } : book;
}
const without = <T>(records: Readonly<Record<string, T>>, gone: (id: string, record: T) => boolean) =>
  Object.fromEntries(Object.entries(records).filter(([id, record]) => !gone(id, record)));

const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc
    .tuple(aStep, aMinute, fc.integer({ min: 0, max: 3000 }))
    .map(([id, start, minutes]) =>
      withStep(id, { progress: { kind: 'done', started: at(start), finished: at(start + minutes) } }),
    ),
  fc
    .tuple(aStep, aMinute, fc.integer({ min: 1, max: 3000 }), fc.subarray(['keeper', 'joss', 'someone']))
    .map(([id, start, minutes, hands]) =>
      withStep(id, { progress: { kind: 'under way', started: at(start), expected: at(start + minutes), hands } }),
    ),
  fc.tuple(aJob, fc.constantFrom('done' as const, 'dropped' as const)).map(([id, state]) => withJob(id, { state })),
  fc.tuple(aJob, fc.integer({ min: -30, max: 200 })).map(([id, n]) => withJob(id, { due: addDays(today, n) })),
  fc.tuple(aJob, aDay).map(([id, heldTo]) => withJob(id, { heldTo })),
  fc.tuple(aJob, aJob).map(([id, other]) => withJob(id, { afterJobs: id === other ? [] : [other] })),
  aDay.map(
    (gone): Edit =>
      (book) => ({ ...book, jobDays: without(book.jobDays, (id) => id === gone) }),
  ),
  aStep.map(
    (gone): Edit =>
      (book) => ({ ...book, steps: without(book.steps, (id) => id === gone) }),
  ),
  aJob.map(
    (gone): Edit =>
      (book) => ({ ...book, steps: without(book.steps, (_, step) => step.job === gone) }),
  ),
  fc
    .tuple(
      aDay,
      fc.integer({ min: -5, max: 120 }),
      fc.constantFrom('00:00', '05:17', '08:00', '12:30'),
      fc.constantFrom('13:00', '17:00', '23:59'),
    )
    .map(([id, n, from, to]) => withDay(id, (day) => ({ ...day, date: addDays(today, n), from, to }))),
  fc
    .tuple(aDay, fc.constantFrom('00:00', '10:00'), fc.constantFrom('11:00', '23:59'))
    .map(([id, from, to]) =>
      withDay(id, (day) => ({ ...day, hands: [...day.hands, { id: 'joss', name: 'Joss', from, to }] })),
    ),
  fc
    .tuple(
      fc.constantFrom('Europe/London', 'Asia/Kathmandu', 'America/St_Johns', 'Australia/Lord_Howe'),
      fc.constantFrom(0, 60, 71, -78),
    )
    .map(
      ([timeZone, latitude_deg]): Edit =>
        (book) => ({ ...book, places: { drive: { ...book.places.drive!, timeZone, latitude_deg } } }),
    ),
  fc.integer({ min: -10, max: 150 }).map(
    (n): Edit =>
      (book) => ({ ...book, outings: { 'outer-bar': { ...book.outings['outer-bar']!, date: addDays(today, n) } } }),
  ),
);

const noWords = /undefined|NaN|null|Infinity/;

it('gives a sound problem from any edited book', () => {
  let sound = 0;
  fc.assert(
    fc.property(
      fc.array(edit, { minLength: 1, maxLength: 14 }),
      fc.integer({ min: -2 * 1440, max: 14 * 1440 }),
      (edits, now) => {
        const book = edits.reduce((edited, each) => each(edited), demo);
        const matter = problemFrom(book, { now: at(now) });
        for (const note of matter.notes) expect(note.words).not.toMatch(noWords);
        if (matter.kind === 'nothing to plan') return;
        const checked = checkProblem(matter.problem);
        expect(checked.kind === 'refused' ? checked.faults : []).toEqual([]);
        if (sound++ % 10 > 0) return;
        // now and then all the way to the plan's words
        const { problem } = matter;
        const search = startSearch(problem, { seed: 1 });
        search.advance(1);
        const outcome = search.outcome();
        expect(violations(outcome.plan, problem)).toEqual([]);
        expect(verdictInWords(outcome, problem)).not.toMatch(noWords);
        for (const obstacle of outcome.obstacles) {
          const { why, gain } = obstacleInWords(obstacle, problem);
          expect(`${why} ${gain ?? ''}`).not.toMatch(noWords);
        }
        for (const { step } of outcome.plan.steps)
          for (const reason of stepReasonsInWords(step, outcome.plan, problem)) expect(reason).not.toMatch(noWords);
      },
    ),
    { numRuns: 80 },
  );
  expect(sound).toBeGreaterThan(20);
}, 120_000);
