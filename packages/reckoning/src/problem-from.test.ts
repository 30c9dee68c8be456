import { describe, expect, it } from 'vitest';
import type { Book } from '#boat-book';
import { type Problem, startSearch } from '#workplan';
import { problemFrom } from './problem-from.ts';
import { job, jobDay, smallBook, soak, step, weather } from './testing/small-book.ts';

// Friday 8 May 2026, 10:40 in London (UTC+1 in summer)
const now = '2026-05-08T09:40:00Z';

function problemOf(book: Book, at = now): Problem {
  const matter = problemFrom(book, { now: at });
  if (matter.kind !== 'problem') throw new Error(matter.because);
  return matter.problem;
}
const notesOf = (book: Book, at = now) => problemFrom(book, { now: at }).notes.map((note) => note.words);

const plain = (parts: Partial<Book> = {}) =>
  smallBook({
    jobs: { rebed: job('Rebed the cleat') },
    steps: { off: step('rebed', 0, 'Take it off'), on: step('rebed', 1, 'Bed it') },
    jobDays: { sat: jobDay('2026-05-09') },
    ...parts,
  });

describe('minutes of the steps', () => {
  it('are those written, tuned by what steps of the kind really took', () => {
    const finished = '2026-05-01T09:00:00Z';
    const steps = {
      old: step('hull', 0, 'Bed the cleat', { progress: { kind: 'done', started: finished, finished } }),
      off: step('rebed', 0, 'Take it off'),
      on: step('rebed', 1, 'Bed it'),
    };
    const said = { kind: 'step done', at: finished, job: 'hull', step: 'old', zone: null, who: '', text: '' } as const;
    const book = plain({
      jobs: { rebed: job('Rebed'), hull: job('Hull', { state: 'done', closed: '2026-05-01' }) },
      steps,
      log: { a: { ...said, spent_min: 60, order: 1 } },
    });
    const { steps: taken } = problemOf(book);
    // 20, 30, 60 min; one step took twice its 30: z = 1/5, so 2^0.2 = 1.149 times: 23, 34, 69
    expect(taken.find(({ id }) => id === 'on')).toMatchObject({ minutes_low: 23, minutes: 34, minutes_high: 69 });
    expect(taken.find(({ id }) => id === 'off')).toMatchObject({ minutes_low: 20, minutes: 30, minutes_high: 60 });
  });
});

describe('the span of a plan', () => {
  it('runs from the local midnight of today to the midnight after the last job day', () => {
    const problem = problemOf(plain());
    // midnight of 8 May in London is 23:00 UTC on the 7th; job day is the 9th, so two days of 24 h
    expect(problem.startsAt).toBe('2026-05-07T23:00:00.000Z');
    expect(problem.horizon).toBe(2 * 1440);
    expect(problem.now).toBe(10 * 60 + 40);
    expect(problem.hours).toHaveLength(48);
  });

  it('starts no later than now where midnight is no whole hour of the world clock and the outing is far off', () => {
    // a minute past midnight at −2:30: 89 days on ends at a midnight 90 days less a minute away, 29 min before a whole hour
    const places = { yard: { ...smallBook({}).places.yard!, timeZone: 'America/St_Johns' } };
    const outings = {
      sail: { title: 'The sail', date: '2026-12-20', from: '08:00', nights: 0, place: '', wind_kn: null },
    };
    const book = plain({ places, outings, jobs: { rebed: job('Rebed', { outing: 'sail' }) } });
    const problem = problemOf(book, '2026-05-08T02:31:00Z');
    expect(problem.now).toBeGreaterThanOrEqual(0);
    expect(problem.horizon).toBeLessThanOrEqual(90 * 1440);
    expect(problem.horizon % 60).toBe(0);
  });

  it('rounds now up to a whole minute, so that nothing starts in the past', () => {
    expect(problemOf(plain(), '2026-05-08T09:40:01Z').now).toBe(641);
  });

  it('reaches to the outing, and to the end of a wait begun as the last job day ends', () => {
    const outings = {
      sail: { title: 'The sail', date: '2026-05-20', from: '08:00', nights: 0, place: '', wind_kn: null },
    };
    const withOuting = problemOf(plain({ outings, jobs: { rebed: job('Rebed', { outing: 'sail' }) } }));
    // 8 May 00:00 to the midnight after 20 May: 13 days; deadline 20 May 08:00 = 12 days and 8 h in
    expect(withOuting.horizon).toBe(13 * 1440);
    expect(withOuting.jobs[0]).toMatchObject({ deadline: 12 * 1440 + 480, optional: false });
    const withWait = problemOf(plain({ steps: { on: step('rebed', 0, 'Bed it', { waits: [soak('w', 72 * 60)] }) } }));
    // 9 May 17:00 + 72 h is 12 May 17:00: ends at the midnight after, five days in
    expect(withWait.horizon).toBe(5 * 1440);
  });

  it('starts with the day on which the oldest wait still running began', () => {
    const steps = {
      off: step('rebed', 0, 'Glue it', {
        waits: [soak('w', 72 * 60)],
        progress: { kind: 'done', started: '2026-05-06T14:00:00Z', finished: '2026-05-06T14:30:00Z' },
      }),
      on: step('rebed', 1, 'Bed it'),
    };
    const problem = problemOf(plain({ steps }));
    expect(problem.startsAt).toBe('2026-05-05T23:00:00.000Z');
    // 6 May 15:00 to 15:30 local
    expect(problem.steps.find((each) => each.id === 'off')?.progress).toEqual({
      kind: 'done',
      start: 900,
      finish: 930,
    });
    expect(problem.precedence).toEqual([
      { before: 'off', wait: 'w', after: 'on', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
    ]);
  });

  it('forgets a step done long ago whose wait is over', () => {
    const steps = {
      off: step('rebed', 0, 'Glue it', {
        waits: [soak('w', 60)],
        progress: { kind: 'done', started: '2026-05-02T14:00:00Z', finished: '2026-05-02T14:30:00Z' },
      }),
      on: step('rebed', 1, 'Bed it'),
    };
    const problem = problemOf(plain({ steps }));
    expect(problem.steps.map((each) => each.id)).toEqual(['on']);
    expect(problem.precedence).toEqual([]);
    expect(problem.startsAt).toBe('2026-05-07T23:00:00.000Z');
  });

  it('counts 23 hours on the day the clocks go forward', () => {
    // Directive 2000/84/EC and UK practice: 29 March 2026
    const problem = problemOf(plain({ jobDays: { sun: jobDay('2026-03-29') } }), '2026-03-29T00:10:00Z');
    // one minute to spare before now keeps the midnight of the 29th; 24 h day less one
    expect(problem.startsAt).toBe('2026-03-29T00:00:00.000Z');
    expect(problem.horizon).toBe(23 * 60);
    // 09:00 summer time is 08:00 UTC
    expect(problem.days[0]).toMatchObject({ from: 480, to: 960 });
  });
});

describe('weather by the hour', () => {
  const dayAhead = (entries: Book['weather']) => problemOf(plain({ weather: entries })).hours.slice(24, 48);

  it('takes the entry known last for an hour, and the climate where there is none', () => {
    const hours = dayAhead({
      a: weather('2026-05-09', { fromHour: 10, toHour: 14, air_C: 17, order: 2, entered: '2026-05-01T06:00:00Z' }),
      b: weather('2026-05-09', { fromHour: 8, toHour: 12, air_C: 11, order: 1 }),
    });
    expect(hours.map((hour) => (hour.basis === 'typed' ? hour.air_C : null)).slice(7, 15)).toEqual([
      null,
      11,
      11,
      17,
      17,
      17,
      17,
      null,
    ]);
    expect(hours[3]).toMatchObject({ rain: true, wind_kn: 15, humidity_pct: 95, basis: 'climate', sheltered: false });
  });

  it('says in words how many hours are assumed, and names a job day without weather', () => {
    const words = notesOf(plain());
    expect(words[0]).toMatch(/^48 of the plan's 48 hours have no weather entered/);
    expect(words[1]).toBe('Saturday 9 May has no weather entered: it counts as wet all day.');
  });

  it('takes the place of the last job day, and of the next one before the first', () => {
    const roof = { ...smallBook().places.yard!, name: 'Barn', sheltered: true };
    const problem = problemOf(
      plain({
        places: { yard: smallBook().places.yard!, barn: roof },
        jobDays: { sat: jobDay('2026-05-09'), sun: jobDay('2026-05-10', { place: 'barn' }) },
      }),
    );
    // at the yard until Sunday's hour 9 (57 h in), then in the barn until the end
    expect(problem.hours.findIndex((hour) => hour.sheltered)).toBe(57);
    expect(problem.hours.slice(57).every((hour) => hour.sheltered)).toBe(true);
  });

  it('gives daylight for each day', () => {
    const { daylight } = problemOf(plain());
    expect(daylight).toHaveLength(2);
    // 50° north on 8 May: day length 2·acos(−tan 50°·tan 17.1°)/15 ≈ 14.9 h by the plain formula, some 10 min more
    // with refraction; noon near 12:57 summer time (equation of time +3.5 min on the meridian)
    const [first] = daylight;
    expect(first!.to - first!.from).toBeGreaterThan(14.9 * 60);
    expect(first!.to - first!.from).toBeLessThan(15.3 * 60);
    expect(Math.abs((first!.to + first!.from) / 2 - (12 * 60 + 56.5))).toBeLessThan(2);
  });
});

describe('jobs', () => {
  it('weighs by consequence and years open', () => {
    const jobs = {
      rebed: job('Rebed', { opened: '2024-05-08' }),
      fresh: job('Fresh', { opened: '2026-05-08', consequence: 'danger' }),
    };
    const steps = { a: step('rebed', 0, 'A'), b: step('fresh', 0, 'B') };
    // two years open: factor at its most, 2; opened today: 1
    expect(problemOf(plain({ jobs, steps })).jobs.map((each) => each.weight)).toEqual([20, 100]);
  });

  it('takes the nearer of its own date (to the end of that day) and its outing', () => {
    const outings = {
      sail: { title: 'Sail', date: '2026-05-20', from: '08:00', nights: 0, place: '', wind_kn: null },
    };
    const jobs = { rebed: job('Rebed', { due: '2026-05-10', outing: 'sail' }) };
    expect(problemOf(plain({ jobs, outings })).jobs[0]?.deadline).toBe(3 * 1440);
  });

  it('plans a job whose date is past, as needed, and says so', () => {
    const jobs = { rebed: job('Rebed', { due: '2026-05-04' }) };
    expect(problemOf(plain({ jobs })).jobs[0]).toMatchObject({ deadline: null, optional: false });
    expect(notesOf(plain({ jobs }))[0]).toBe(
      "'Rebed' was due Monday 4 May: it counts as needed, with no date to meet.",
    );
  });

  it('puts the first steps after the last steps, waits and all, of the jobs it comes after', () => {
    const jobs = { rebed: job('Rebed'), paint: job('Paint', { afterJobs: ['rebed'] }) };
    const steps = {
      on: step('rebed', 0, 'Bed it', { waits: [soak('w1', 60), soak('w2', 90)] }),
      coat: step('paint', 0, 'Coat'),
      again: step('paint', 1, 'Coat again'),
    };
    expect(problemOf(plain({ jobs, steps })).precedence.map((each) => [each.before, each.wait, each.after])).toEqual([
      ['on', 'w1', 'coat'],
      ['on', 'w2', 'coat'],
      ['coat', null, 'again'],
    ]);
  });

  it('leaves aside a job without steps and, with its reason, one that must come after it', () => {
    const jobs = { rebed: job('Rebed'), vague: job('Vague'), late: job('Late', { afterJobs: ['vague'] }) };
    const steps = { a: step('rebed', 0, 'A'), b: step('late', 0, 'B') };
    const book = plain({ jobs, steps });
    expect(problemOf(book).jobs.map((each) => each.id)).toEqual(['rebed']);
    expect(notesOf(book).slice(0, 2)).toEqual([
      "'Vague' has no steps yet, so it cannot be planned.",
      "'Late' comes after 'Vague', which cannot be planned yet.",
    ]);
  });

  it('keeps the wait of a closed job that is still curing', () => {
    const jobs = { rebed: job('Rebed'), glued: job('Glued', { state: 'done', closed: '2026-05-08' }) };
    const steps = {
      a: step('rebed', 0, 'A'),
      g: step('glued', 0, 'G', {
        waits: [soak('w', 24 * 60)],
        progress: { kind: 'done', started: '2026-05-08T08:00:00Z', finished: '2026-05-08T09:00:00Z' },
      }),
    };
    const problem = problemOf(plain({ jobs, steps }));
    expect(problem.steps.find((each) => each.id === 'g')?.waits).toHaveLength(1);
    expect(problem.jobs.find((each) => each.id === 'glued')).toMatchObject({ deadline: null, optional: true });
  });

  it('keeps what is still curing in sight when no step is left open', () => {
    const glued = { g: job('Glued') };
    const progress = { kind: 'done', started: '2026-05-08T08:00:00Z', finished: '2026-05-08T09:00:00Z' } as const;
    const left = (hours: number) =>
      problemFrom(
        plain({ jobs: glued, steps: { g: step('g', 0, 'Glue it', { waits: [soak('w', hours * 60)], progress }) } }),
        { now },
      );
    const matter = left(24);
    if (matter.kind !== 'problem') throw new Error(matter.because);
    expect(matter.problem.steps.map(({ id, waits }) => [id, waits.length])).toEqual([['g', 1]]);
    const search = startSearch(matter.problem, { seed: 1 });
    search.advance(50);
    const { plan } = search.outcome();
    expect(plan.waits.map(({ step: of, wait }) => [of, wait])).toEqual([['g', 'w']]);
    // set for 40 minutes already, a wait of half an hour is over
    expect(left(0.5)).toMatchObject({ because: 'no open jobs' });
  });

  it('holds open steps to the day their job is held to', () => {
    const jobs = { rebed: job('Rebed', { heldTo: 'sat' }) };
    expect(problemOf(plain({ jobs })).steps.map((each) => each.held)).toEqual([
      { from: 1440 + 540, to: 1440 + 1020 },
      { from: 1440 + 540, to: 1440 + 1020 },
    ]);
    const past = { rebed: job('Rebed', { heldTo: 'gone' }) };
    expect(problemOf(plain({ jobs: past })).steps[0]?.held).toBe(null);
    expect(notesOf(plain({ jobs: past }))[0]).toMatch(/no longer there: it is free again/);
  });

  it('gives a step under way its hands until it is expected to be done, and more time where that is past', () => {
    const begun = (expected: string) => ({
      off: step('rebed', 0, 'Take it off', {
        progress: { kind: 'under way', started: '2026-05-08T09:00:00Z', expected, hands: ['keeper'] },
      }),
    });
    const progress = (expected: string) => problemOf(plain({ steps: begun(expected) })).steps[0]?.progress;
    expect(progress('2026-05-08T10:15:00Z')).toEqual({
      kind: 'under way',
      start: 600,
      expectedFinish: 675,
      hands: ['keeper'],
    });
    expect(progress('2026-05-08T09:30:00Z')).toMatchObject({ expectedFinish: 650 });
    expect(notesOf(plain({ steps: begun('2026-05-08T09:30:00Z') }))[0]).toBe(
      "'Take it off' was to be finished by now: it is taken to need 10 minutes more.",
    );
  });
});

describe('recoat windows from before the plan', () => {
  // coat done 70 days before now, window of 80 days after it: 10 days of it are left
  const steps = (greatest_min: number) => ({
    one: step('rebed', 0, 'First coat', {
      progress: { kind: 'done', started: '2026-02-27T09:10:00Z', finished: '2026-02-27T09:40:00Z' },
    }),
    two: step('rebed', 1, 'Second coat', {
      follows: [{ step: 'one', wait: null, least_min: 0, greatest_min, past: { kind: 'abrade', minutes: 20 } }],
    }),
  });
  const window = (greatest_min: number) => {
    const problem = problemOf(plain({ steps: steps(greatest_min) }));
    const link = problem.precedence[0]!;
    const before = problem.steps.find((each) => each.id === 'one')!;
    if (before.progress.kind !== 'done') throw new Error('the first coat is done');
    return before.progress.finish + link.greatest_min!;
  };

  it('keeps what is left of a window', () => {
    // shuts at now + 10 days
    expect(window(80 * 1440)).toBe(640 + 10 * 1440);
  });

  it('has a window that is past shut before anything can start', () => {
    expect(window(20 * 1440)).toBeLessThan(640);
  });
});

describe('stores, hands, days', () => {
  it('counts what is on hand from the start, what is expected from 09:00 of its day, and no part that is overdue', () => {
    const store = (onHand: boolean, expected: string | null) => ({
      name: 'Part',
      keptAt: '',
      onHand,
      expected,
      lead_days: null,
      note: '',
    });
    const stores = {
      here: store(true, null),
      coming: store(false, '2026-05-09'),
      never: store(false, null),
      late: store(false, '2026-05-06'),
    };
    expect(problemOf(plain({ stores })).stores.map((line) => line.from)).toEqual([0, 1440 + 540, null, null]);
    expect(notesOf(plain({ stores }))).toContain(
      'Part: expected Wednesday 6 May and not marked as here. The plan does not count on it.',
    );
  });

  it('has the keeper always and a hand for the hours given', () => {
    const jobDays = {
      sat: jobDay('2026-05-09', {
        hands: [{ id: 'ada', name: 'A hand', from: '10:00', to: '12:30' }],
        breaks: [{ from: '12:00', minutes: 30 }],
      }),
    };
    const problem = problemOf(plain({ jobDays }));
    expect(problem.hands).toEqual([
      { id: 'keeper', name: 'The keeper', present: [{ from: 0, to: 2880 }] },
      { id: 'ada', name: 'A hand', present: [{ from: 1440 + 600, to: 1440 + 750 }] },
    ]);
    expect(problem.days[0]).toMatchObject({
      label: 'Saturday 9 May',
      from: 1440 + 540,
      to: 1440 + 1020,
      breaks: [{ from: 1440 + 720, to: 1440 + 750 }],
    });
  });

  it('plans the earlier of two job days that overlap, and says so', () => {
    const jobDays = { sat: jobDay('2026-05-09'), two: jobDay('2026-05-09', { from: '16:00', to: '19:00' }) };
    expect(problemOf(plain({ jobDays })).days.map((day) => day.id)).toEqual(['sat']);
    expect(notesOf(plain({ jobDays }))[0]).toMatch(/only the earlier one is planned/);
  });

  it('says on the day itself what is still to be put back, and not before, nor when it is as it should be', () => {
    const change = { minutes: 10, hands: 1, needs: {}, setUps: [], cautions: [] };
    const states = [
      { id: 'on', name: 'on', shelters: true },
      { id: 'off', name: 'off', shelters: false },
    ];
    const cover = { name: 'cover', states, now: 'off', changes: [{ from: 'off', to: 'on', ...change }] };
    const jobDays = { sat: { ...jobDay('2026-05-09'), endsIn: [{ setUp: 'cover', state: 'on' }] } };
    const onTheDay = '2026-05-09T14:00:00Z';
    const told = (book: Book, at: string) => notesOf(book, at).filter((words) => words.startsWith('Before you leave'));
    expect(told(plain({ setUps: { cover }, jobDays }), onTheDay)).toEqual([
      'Before you leave today: put the cover on, also if nothing else fits in any more.',
    ]);
    expect(told(plain({ setUps: { cover }, jobDays }), now)).toEqual([]);
    expect(told(plain({ setUps: { cover: { ...cover, now: 'on' } }, jobDays }), onTheDay)).toEqual([]);
  });

  it('gives the low and high minutes of a step for the odds, where they differ from the likely', () => {
    const minutes = { low: 20, likely: 30, high: 55 };
    const steps = { off: step('rebed', 0, 'Take it off', { minutes }), on: step('rebed', 1, 'Bed it') };
    const likely = steps.on.minutes.likely;
    const sure = { ...steps.on, minutes: { low: likely, likely, high: likely } };
    const [off, on] = problemOf(plain({ steps: { ...steps, on: sure } })).steps;
    expect([off!.minutes_low, off!.minutes, off!.minutes_high]).toEqual([20, 30, 55]);
    expect(Object.keys(on!)).not.toContain('minutes_low');
    expect(Object.keys(on!)).not.toContain('minutes_high');
  });

  it('carries the starts of the plan kept last over to its own minutes', () => {
    const kept = (order: number, start: number) => ({
      order,
      // the later by the clock is the earlier known: clocks may be wrong
      made: `2026-05-0${9 - order}T10:00:00Z`,
      startsAt: '2026-05-06T23:00:00Z',
      plan: {
        steps: [
          { step: 'off', start, finish: start + 30, hands: ['keeper'], day: 'sat', batchOf: null, abrade_min: 0 },
        ],
        waits: [],
        changes: [],
        leftOut: [],
      },
      verdict: { kind: 'proved best' as const, finishToo: true },
    });
    const plans = { a: kept(2, 4000), b: kept(1, 3600) };
    // the plan made last started one day earlier: minute 4000 is 4000 − 1440 here
    expect(problemOf(plain({ plans })).previous).toEqual([{ step: 'off', start: 2560 }]);
  });
});

describe('nothing to plan', () => {
  it('says whether jobs or days are missing', () => {
    expect(problemFrom(plain({ jobDays: {} }), { now })).toMatchObject({ because: 'no job days ahead' });
    expect(problemFrom(plain({ jobDays: { gone: jobDay('2026-05-07') } }), { now })).toMatchObject({
      because: 'no job days ahead',
    });
    expect(problemFrom(plain({ jobs: {}, steps: {} }), { now })).toMatchObject({ because: 'no open jobs' });
  });

  it('refuses a now that is no instant', () => {
    expect(() => problemFrom(plain(), { now: 'today' })).toThrow(/now must be an instant/);
  });
});
