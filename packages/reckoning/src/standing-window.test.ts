import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book, Step } from '#boat-book';
import { type Plan, type Problem, startSearch, violations, waitAfter } from '#workplan';
import { problemFrom } from './problem-from.ts';
import { type FoundWindow, jobsByWeight, type StandingWindow, standingWindow } from './standing-window.ts';
import { job, jobDay, smallBook, soak, step, weather } from './testing/small-book.ts';
import { windowInWords } from './window-in-words.ts';

const willing = { from: '08:00', to: '20:00' };
// Thursday 7 May 2026, 17:20 in British Summer Time
const now = '2026-05-07T16:20:00Z';
const today = '2026-05-07';
const ask = { now, place: null, willing };

const fair = (date: string, fromHour: number, toHour: number, parts = {}) =>
  weather(date, { fromHour, toHour, ...parts });
const wet = (date: string, fromHour: number, toHour: number) => weather(date, { fromHour, toHour, rain: true });

function bookWith(steps: Readonly<Record<string, Step>>, weathers: readonly ReturnType<typeof weather>[], parts = {}) {
  return smallBook({
    jobs: { paint: job('Paint the locker lid') },
    steps,
    weather: Object.fromEntries(weathers.map((entry, n) => [`w${n}`, { ...entry, order: n + 1 }])),
    ...parts,
  });
}

function foundIn(window: StandingWindow): FoundWindow {
  if (window.kind !== 'window') throw new Error(`no window: ${JSON.stringify(window, null, 1)}`);
  return window;
}

const clock = (problem: Problem, minute: number) =>
  new Date(Date.parse(problem.startsAt) + minute * 60_000).toISOString().slice(0, 16);

describe('the standing window', () => {
  it('names the first hours that suit, and what can be prepared the evening before', () => {
    const book = bookWith(
      {
        rub: step('paint', 1, 'Rub down', { minutes: { low: 30, likely: 40, high: 60 } }),
        coat: step('paint', 2, 'Coat it', {
          minutes: { low: 250, likely: 300, high: 360 },
          needs: { dry: true, air_min_C: 12 },
        }),
      },
      // rain this evening and tomorrow until 13:00
      [wet(today, 0, 24), wet('2026-05-08', 0, 13), fair('2026-05-08', 13, 24)],
    );
    const window = foundIn(standingWindow(book, 'paint', ask));
    // 13:00 British Summer Time is 12:00 UTC
    expect(clock(window.problem, window.spans[0]!.from)).toBe('2026-05-08T12:00');
    expect(clock(window.problem, window.spans[0]!.to)).toBe('2026-05-08T17:00');
    const words = windowInWords(window, willing, today);
    expect(words.answer).toBe('5 h dry, from 12 °C: tomorrow 13:00 to 18:00.');
    expect(words.before).toEqual(["Prepare 40 minutes tonight, from 17:25: 'Rub down'."]);
    // 16 °C and 65 %: γ = ln 0.65 + 17.62 · 16 / 259.12 = 0.657; dew point 243.12 · 0.657 / (17.62 − 0.657) = 9.4 °C
    expect(words.also).toEqual(['Air 16 °C, at the least 6.6 °C clear of the dew point.']);
  });

  it('says to when the weather is known where no hours in it suit, and the longest there is', () => {
    const book = bookWith(
      { coat: step('paint', 1, 'Coat it', { minutes: { low: 250, likely: 300, high: 360 }, needs: { dry: true } }) },
      [fair('2026-05-08', 8, 11), wet('2026-05-08', 11, 24)],
    );
    const window = standingWindow(book, 'paint', ask);
    expect(windowInWords(window, willing, today).answer).toBe(
      "The weather is known to tomorrow; no 5 h in one go (dry) in it for 'Coat it': the longest is 3 h, tomorrow.",
    );
  });

  it('works out a window of a job that asks nothing of the weather even where none is known', () => {
    const book = bookWith({ oil: step('paint', 1, 'Oil it') }, []);
    expect(windowInWords(standingWindow(book, 'paint', ask), willing, today).answer).toBe(
      'It asks nothing of the weather: any 30 minutes will do.',
    );
    const dry = bookWith({ oil: step('paint', 1, 'Oil it', { needs: { dry: true } }) }, []);
    expect(windowInWords(standingWindow(dry, 'paint', ask), willing, today).answer).toMatch(/^No weather is known/);
  });

  it('keeps to the nights: a wait that must stay dry is not begun before a wet one', () => {
    const book = bookWith(
      {
        coat: step('paint', 1, 'Coat it', {
          needs: { dry: true },
          waits: [{ ...soak('dry', 600), title: 'Harden', needs: { dry: true } }],
        }),
      },
      [
        fair('2026-05-08', 0, 22),
        wet('2026-05-08', 22, 24),
        wet('2026-05-09', 0, 6),
        fair('2026-05-09', 6, 24),
        fair('2026-05-10', 0, 24),
      ],
    );
    const window = foundIn(standingWindow(book, 'paint', ask));
    // Friday 08:00 + 30 min + 10 h = 18:30, before the rain at 22:00
    expect(clock(window.problem, window.spans[0]!.from)).toBe('2026-05-08T07:00');
    expect(windowInWords(window, willing, today).answer).toBe(
      '30 minutes dry: tomorrow 08:00 to 08:30, and dry until 18:30.',
    );
  });

  it('takes a second hand only where the job needs one, and says when', () => {
    const two = (likely: number, hands: number) =>
      step('paint', hands, hands === 2 ? 'Lift it' : 'Measure', { minutes: { low: 5, likely, high: 40 }, hands });
    const { deck } = smallBook().zones;
    const zones = { deck: { ...deck!, room: 2 } };
    const book = bookWith({ alone: two(20, 1), both: two(10, 2) }, [fair('2026-05-08', 0, 24)], { zones });
    const window = foundIn(standingWindow(book, 'paint', ask));
    expect(window.helpers).toBe(1);
    expect(windowInWords(window, willing, today).also).toContain(
      'Not alone: a second hand is needed, tomorrow 08:20 to 08:30.',
    );
    const quiet = foundIn(standingWindow(bookWith({ alone: two(20, 1) }, [fair('2026-05-08', 0, 24)]), 'paint', ask));
    expect(quiet.helpers).toBe(0);
    expect(quiet.days[0]!.hands).toEqual([]);
  });

  it('names the set-up to bring about, and books hours that hold setting out and clearing up', () => {
    const book = bookWith(
      {
        coat: step('paint', 1, 'Coat it', {
          needs: { dry: true },
          setUps: [{ setUp: 'cover', states: ['off'] }],
        }),
      },
      [fair('2026-05-08', 0, 24)],
      {
        setUps: {
          cover: {
            name: 'Cover',
            states: [
              { id: 'on', name: 'on', shelters: true },
              { id: 'off', name: 'off', shelters: false },
            ],
            now: 'on',
            changes: [
              { from: 'on', to: 'off', minutes: 10, hands: 1, needs: {}, setUps: [], cautions: [] },
              { from: 'off', to: 'on', minutes: 15, hands: 1, needs: {}, setUps: [], cautions: [] },
            ],
          },
        },
        jobDays: { last: jobDay('2026-05-02', { endsIn: [{ setUp: 'cover', state: 'on' }] }) },
      },
    );
    const window = foundIn(standingWindow(book, 'paint', ask));
    // 08:00 and 15 min to set out: cover off 08:15 to 08:25, 30 min of paint, cover on 15 min, 20 min to clear up
    expect(window.days).toMatchObject([{ date: '2026-05-08', from: '08:00', to: '09:30' }]);
    expect(windowInWords(window, willing, today).before).toEqual([
      'Prepare 10 minutes tomorrow, from 08:15: take the cover off.',
    ]);
  });

  it('plans behind what must be ordered first, and says so', () => {
    const book = bookWith(
      { bed: step('paint', 1, 'Bed it', { stores: ['sealant'] }) },
      [fair('2026-05-08', 0, 24), fair('2026-05-09', 0, 24)],
      {
        stores: {
          sealant: { name: 'Sealant', keptAt: '', onHand: false, expected: null, note: '', lead_days: 2 },
        },
      },
    );
    const window = foundIn(standingWindow(book, 'paint', ask));
    // ordered Thursday, 2 days: Saturday 09:00 British Summer Time
    expect(clock(window.problem, window.spans[0]!.from)).toBe('2026-05-09T08:00');
    expect(windowInWords(window, willing, today).before).toEqual(['Order today: Sealant, here Saturday.']);
  });

  it('does the job it comes after first, in the same hours', () => {
    const book = bookWith(
      { coat: step('paint', 1, 'Coat it'), fill: step('fill', 1, 'Fill the hole') },
      [fair('2026-05-08', 0, 24)],
      {
        jobs: { paint: job('Paint the lid', { afterJobs: ['fill'] }), fill: job('Fill the lid'), other: job('Other') },
      },
    );
    const window = foundIn(standingWindow(book, 'paint', ask));
    expect(windowInWords(window, willing, today).also).toContain(
      "'Fill the lid' comes first, and is in these hours too.",
    );
    expect(clock(window.problem, window.over)).toBe('2026-05-08T08:00');
  });

  it('leaves dates that are job days already to them', () => {
    const book = bookWith(
      { coat: step('paint', 1, 'Coat it') },
      [fair('2026-05-08', 0, 24), fair('2026-05-09', 0, 24)],
      {
        jobDays: { friday: jobDay('2026-05-08') },
      },
    );
    const window = foundIn(standingWindow(book, 'paint', ask));
    expect(window.days[0]!.date).toBe('2026-05-09');
  });

  it('begins today only once what is in hand is over', () => {
    const book = bookWith(
      {
        coat: step('paint', 1, 'Coat it'),
        long: step('fill', 1, 'Fill', {
          progress: { kind: 'under way', started: now, expected: '2026-05-07T17:31:00Z', hands: ['keeper'] },
        }),
      },
      [fair(today, 0, 24)],
      { jobs: { paint: job('Paint'), fill: job('Fill') } },
    );
    // 17:31 UTC is 18:31: the next clock time is 18:35
    expect(foundIn(standingWindow(book, 'paint', ask)).days[0]!.from).toBe('18:35');
  });

  it('counts real minutes on the day the clocks change', () => {
    // Sunday 25 October 2026, Europe/London: 02:00 goes back to 01:00, so 00:00 to 06:00 lasts seven hours
    const book = bookWith(
      { long: step('paint', 1, 'Watch it', { minutes: { low: 400, likely: 415, high: 420 }, needs: { dry: true } }) },
      [fair('2026-10-25', 0, 6), wet('2026-10-25', 6, 24)],
    );
    const early = { now: '2026-10-24T18:00:00Z', place: null, willing: { from: '00:00', to: '20:00' } };
    const window = foundIn(standingWindow(book, 'paint', early));
    expect(clock(window.problem, window.spans[0]!.from)).toBe('2026-10-24T23:00');
    expect(clock(window.problem, window.spans[0]!.to)).toBe('2026-10-25T05:55');
    expect(window.days).toMatchObject([{ date: '2026-10-25', from: '00:00', to: '05:55' }]);
  });

  it('ranks by weight', () => {
    const book = smallBook({
      jobs: { a: job('A', { consequence: 'comfort' }), b: job('B', { consequence: 'danger' }), c: job('C') },
      steps: { a: step('a', 1, 'a'), b: step('b', 1, 'b'), c: step('c', 1, 'c') },
    });
    expect(jobsByWeight(book, today)).toEqual(['b', 'c', 'a']);
  });
});

/** Every minute at which the only step could start, held to the rules one by one: the first that breaks none. */
function firstByTrying(problem: Problem): number | null {
  const only = problem.steps[0]!;
  for (let start = problem.now; start + only.minutes <= problem.horizon; start++) {
    const finish = start + only.minutes;
    const day = problem.days.find(({ from, to }) => from <= start && finish <= to);
    if (day === undefined) continue;
    const waits = only.waits.map((wait) => waitAfter(wait, finish, problem.hours));
    if (waits.some((wait) => wait.finish === null)) continue;
    const plan: Plan = {
      steps: [{ step: only.id, start, finish, hands: ['keeper'], day: day.id, batchOf: null, abrade_min: 0 }],
      waits: only.waits.map((wait, n) => ({
        step: only.id,
        wait: wait.id,
        start: finish,
        finish: waits[n]!.finish!,
        tooCold: waits[n]!.tooCold,
      })),
      changes: [],
      leftOut: [],
    };
    if (violations(plan, problem).length === 0) return start;
  }
  return null;
}

describe('against trying every minute', () => {
  const hour = fc.record({
    rain: fc.boolean(),
    wind_kn: fc.integer({ min: 0, max: 20 }),
    air_C: fc.integer({ min: 6, max: 20 }),
    known: fc.integer({ min: 0, max: 9 }),
  });
  const needs = fc.record(
    {
      dry: fc.constant(true as const),
      wind_max_kn: fc.constantFrom(12, 18),
      air_min_C: fc.constantFrom(8, 11),
      daylight: fc.constant(true as const),
    },
    { requiredKeys: [] },
  );
  const cases = fc.record({
    // spells, so that some hours together suit
    spells: fc.array(fc.record({ hour, hours: fc.integer({ min: 1, max: 9 }) }), { minLength: 8, maxLength: 14 }),
    needs,
    minutes: fc.integer({ min: 10, max: 400 }),
    wait: fc.option(fc.record({ minutes: fc.integer({ min: 30, max: 900 }), dry: fc.boolean() })),
    willing: fc.constantFrom(
      { from: '08:00', to: '20:00' },
      { from: '05:30', to: '21:15' },
      { from: '12:00', to: '15:00' },
    ),
    // a plain day, and the two on which the clocks change in Europe/London in 2026
    date: fc.constantFrom('2026-05-08', '2026-03-29', '2026-10-25'),
  });

  it('gives the first start that breaks no rule, and none where there is none', () => {
    let windows = 0;
    fc.assert(
      fc.property(cases, ({ spells, needs, minutes, wait, willing, date }) => {
        const book = randomBook({ spells, needs, minutes, wait, date });
        const window = standingWindow(book, 'paint', { now: `${date}T05:10:00Z`, place: null, willing });
        if (window.kind === 'window') {
          windows++;
          expect(window.plan.steps[0]!.start).toBe(firstByTrying(window.problem));
        } else if (window.kind === 'none' && window.problem !== null) {
          expect(firstByTrying(window.problem)).toBe(null);
        }
      }),
      { numRuns: 40 },
    );
    expect(windows).toBeGreaterThan(5);
  });

  it('books hours in which the planner does the job', () => {
    fc.assert(
      fc.property(cases, ({ spells, needs, minutes, wait, willing, date }) => {
        const book = randomBook({ spells, needs, minutes, wait, date });
        const at = `${date}T05:10:00Z`;
        const window = standingWindow(book, 'paint', { now: at, place: null, willing });
        if (window.kind !== 'window') return;
        const booked: Book = { ...book, jobDays: Object.fromEntries(window.days.map((day, n) => [`d${n}`, day])) };
        const matter = problemFrom(booked, { now: at });
        if (matter.kind !== 'problem') throw new Error(matter.words);
        const search = startSearch(matter.problem, { seed: 1 });
        search.advance(20);
        expect(search.outcome().plan.leftOut).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  function randomBook({
    spells,
    needs,
    minutes,
    wait,
    date,
  }: {
    readonly spells: readonly {
      readonly hour: {
        readonly rain: boolean;
        readonly wind_kn: number;
        readonly air_C: number;
        readonly known: number;
      };
      readonly hours: number;
    }[];
    readonly needs: Step['needs'];
    readonly minutes: number;
    readonly wait: { readonly minutes: number; readonly dry: boolean } | null;
    readonly date: string;
  }): Book {
    const hours = spells.flatMap((spell) => Array.from({ length: spell.hours }, () => spell.hour));
    const entries = hours.flatMap(({ known, ...figures }, n) =>
      known === 0
        ? []
        : [
            weather(`${date.slice(0, 8)}${String(Number(date.slice(8)) + Math.floor(n / 24)).padStart(2, '0')}`, {
              fromHour: n % 24,
              toHour: (n % 24) + 1,
              ...figures,
            }),
          ],
    );
    return bookWith(
      {
        coat: step('paint', 1, 'Coat it', {
          minutes: { low: minutes, likely: minutes, high: minutes },
          needs,
          waits: wait === null ? [] : [{ ...soak('dry', wait.minutes), needs: wait.dry ? { dry: true } : {} }],
        }),
      },
      entries,
    );
  }
});
