import { describe, expect, it } from 'vitest';
import type { Book, KeptPlan } from '#boat-book';
import { type CostOfHold, checkProblem, type Plan, type Problem } from '#workplan';
import { costOfHoldInWords, holdInWords } from './hold-cost-in-words.ts';
import { movesInWords, movesSince } from './moves-in-words.ts';
import { problemFrom } from './problem-from.ts';
import { job, jobDay, smallBook, soak, step } from './testing/small-book.ts';

// Friday 8 May 2026, 10:40 in London (UTC+1 in summer); minute 0 is the midnight before
const now = '2026-05-08T09:40:00Z';
const sat = 1440;
const nine = 540;

function matterOf(book: Book, at = now, afresh = false) {
  const matter = problemFrom(book, { now: at, afresh });
  if (matter.kind !== 'problem') throw new Error(matter.because);
  return matter;
}
const heldIn = (book: Book, at = now) =>
  Object.fromEntries(matterOf(book, at).problem.steps.map(({ id, held }) => [id, held]));

const book = (parts: Partial<Book>) =>
  smallBook({
    jobs: { rebed: job('Rebed the cleat', { heldTo: 'sat' }) },
    // 30 minutes each, as `step` has them
    steps: { off: step('rebed', 0, 'Take it off'), on: step('rebed', 1, 'Bed it') },
    jobDays: { sat: jobDay('2026-05-09'), sun: jobDay('2026-05-10') },
    ...parts,
  });

describe('a held job', () => {
  const day = { from: sat + nine, to: sat + 1020 };

  it('held to a time has its first open step start then, and the rest on that day', () => {
    const jobs = { rebed: job('Rebed the cleat', { heldTo: 'sat', heldAt: '14:05' }) };
    expect(heldIn(book({ jobs }))).toEqual({ off: { from: sat + 845, to: sat + 875 }, on: day });
    expect(checkProblem(matterOf(book({ jobs })).problem).kind).toBe('sound');
  });

  it('leaves free what a wait of its own keeps from that day', () => {
    const steps = {
      off: step('rebed', 0, 'Take it off', { waits: [soak('overnight', 16 * 60)] }),
      on: step('rebed', 1, 'Bed it'),
    };
    expect(heldIn(book({ steps }))).toEqual({ off: day, on: null });
  });

  it('is held to the day once its time has passed, and says so', () => {
    const jobs = { rebed: job('Rebed the cleat', { heldTo: 'sat', heldAt: '10:00' }) };
    const late = matterOf(book({ jobs }), '2026-05-09T11:00:00Z');
    expect(late.problem.steps.map(({ held }) => held && held.to - held.from)).toEqual([480, 480]);
    expect(late.notes.map(({ words }) => words)).toContain(
      "'Rebed the cleat' was held to 10:00, which has passed: it is held to the day.",
    );
  });

  it('is held to the day where it was begun on that day', () => {
    const jobs = { rebed: job('Rebed the cleat', { heldTo: 'sat', heldAt: '14:00' }) };
    const progress = { kind: 'done', started: '2026-05-09T08:10:00Z', finished: '2026-05-09T08:40:00Z' } as const;
    const steps = { off: step('rebed', 0, 'Take it off', { progress }), on: step('rebed', 1, 'Bed it') };
    // minute 0 is now the midnight before the Saturday
    expect(heldIn(book({ jobs, steps }), '2026-05-09T09:00:00Z').on).toEqual({ from: nine, to: 1020 });
  });

  it('is named by its day, with the date where another job day has the same name', () => {
    const { jobDays } = book({});
    expect(holdInWords({ jobDays }, { heldTo: 'sat', heldAt: null })).toBe('Saturday');
    expect(holdInWords({ jobDays }, { heldTo: 'sat', heldAt: '14:05' })).toBe('Saturday 14:05');
    const two = { ...jobDays, later: jobDay('2026-05-16') };
    expect(holdInWords({ jobDays: two }, { heldTo: 'sat', heldAt: null })).toBe('Saturday 9 May');
    expect(holdInWords({ jobDays }, { heldTo: null, heldAt: null })).toBeNull();
  });
});

const planOf = (starts: Readonly<Record<string, number>>, leftOut: readonly string[] = []): Plan => ({
  steps: Object.entries(starts).map(([id, start]) => ({
    step: id,
    start,
    finish: start + 30,
    hands: ['keeper'],
    day: 'sat',
    batchOf: null,
    abrade_min: 0,
  })),
  waits: [],
  changes: [],
  leftOut,
});
const kept = (startsAt: string, plan: Plan): KeptPlan => ({
  made: now,
  startsAt,
  plan,
  verdict: { kind: 'proved best', finishToo: true },
  order: 1,
});

describe('what moved', () => {
  const jobs = { rebed: job('Rebed the cleat'), oil: job('Oil the hinge') };
  const steps = {
    off: step('rebed', 0, 'Take it off'),
    on: step('rebed', 1, 'Bed it'),
    oil: step('oil', 0, 'Oil it'),
  };
  const { problem } = matterOf(book({ jobs, steps }));

  it('is told from a plan whose minute 0 is another: the same instants have not moved', () => {
    // the plan before began a day sooner, so Saturday 10:00 was minute 2 × 1440 + 600 there
    const before = kept(
      '2026-05-06T23:00:00Z',
      planOf({ off: 2 * 1440 + 600, on: 2 * 1440 + 670, oil: 2 * 1440 + 900 }),
    );
    const after = planOf({ off: sat + 600, on: sat + 725, oil: 2 * 1440 + 570 });
    expect(movesInWords(movesSince(before, after, problem), problem)).toEqual({
      lead: '2 things moved.',
      each: [
        { step: 'on', words: 'Bed it: 11:10 → 12:05' },
        { step: 'oil', words: 'Oil it: Saturday 15:00 → Sunday 09:30' },
      ],
    });
  });

  it('names the jobs that went out and came in, and nothing where nothing changed', () => {
    const before = kept(problem.startsAt, planOf({ off: sat + 600, on: sat + 670 }, ['oil']));
    const after = planOf({ oil: sat + 600 }, ['rebed']);
    expect(movesInWords(movesSince(before, after, problem), problem).lead).toBe(
      'Left out now: ‘Rebed the cleat’; in now: ‘Oil the hinge’.',
    );
    expect(movesInWords(movesSince(before, before.plan, problem), problem)).toEqual({ lead: null, each: [] });
  });

  it('does not call moved what was begun since', () => {
    const before = kept(problem.startsAt, planOf({ off: sat + 600, on: sat + 670, oil: sat + 900 }));
    const begun: Problem = {
      ...problem,
      steps: problem.steps.map((each) =>
        each.id === 'off'
          ? { ...each, progress: { kind: 'under way', start: sat + 640, expectedFinish: sat + 670, hands: ['keeper'] } }
          : each,
      ),
    };
    expect(movesSince(before, planOf({ off: sat + 640, on: sat + 670, oil: sat + 900 }), begun).moved).toEqual([]);
  });

  it('is forgotten by a plan made afresh', () => {
    const plans = { a: kept(problem.startsAt, planOf({ off: sat + 600 })) };
    expect(matterOf(book({ jobs, steps, plans })).problem.previous).toEqual([{ step: 'off', start: sat + 600 }]);
    expect(matterOf(book({ jobs, steps, plans }), now, true).problem.previous).toEqual([]);
  });
});

describe('what a hold costs, in words', () => {
  const { problem } = matterOf(
    book({
      jobs: { rebed: job('Rebed the cleat'), oil: job('Oil the hinge') },
      steps: { off: step('rebed', 0, 'Off'), oil: step('oil', 0, 'Oil') },
    }),
  );
  const worth = { missed: 0, weight: 20, setUp_min: 30, moved_min: 0, lastFinish: sat + 600 };
  const cost = (parts: Partial<CostOfHold>): string =>
    costOfHoldInWords(
      {
        job: 'rebed',
        held: worth,
        free: worth,
        heldPlan: planOf({}),
        freePlan: planOf({}),
        lost: [],
        won: [],
        proved: true,
        ...parts,
      },
      problem,
      'Saturday',
    ).words;

  it('says nothing, jobs with their weight, set-up minutes and a later finish', () => {
    expect(cost({})).toBe('Holding it to Saturday costs nothing.');
    expect(cost({ proved: false })).toBe('Holding it to Saturday costs nothing, as far as was looked.');
    expect(cost({ lost: ['oil'], held: { ...worth, weight: 10, setUp_min: 55 } })).toMatch(
      /^Holding it to Saturday costs ‘Oil the hinge’ \(weight \d+(\.\d)?\) left out and 25 minutes more of set-up changes\.$/,
    );
    expect(cost({ held: { ...worth, lastFinish: sat + 670 } })).toBe(
      'Holding it to Saturday costs a finish 1 h 10 later.',
    );
    expect(cost({ lost: ['rebed'], won: ['oil'] })).toMatch(
      /costs the job itself left out .*; ‘Oil the hinge’ .* in instead\.$/,
    );
  });
});
