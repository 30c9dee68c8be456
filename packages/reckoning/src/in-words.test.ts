import { describe, expect, it } from 'vitest';
import type { Obstacle, Outcome, Plan, Problem } from '#workplan';
import { setUpChangeInWords } from './change-in-words.ts';
import { obstacleInWords } from './obstacle-in-words.ts';
import { problemFrom } from './problem-from.ts';
import { stepReasonsInWords } from './step-reasons-in-words.ts';
import { job, jobDay, smallBook, soak, step, weather } from './testing/small-book.ts';
import { effortInWords, verdictInWords } from './verdict-in-words.ts';
import { lengthInWords, listInWords, localMinute, minuteInWords } from './when-in-words.ts';

const book = smallBook({
  jobs: { paint: job('Paint the deck', { due: '2026-05-12' }), glue: job('Glue the sole') },
  steps: {
    coat: step('paint', 0, 'Lay the paint', {
      minutes: { low: 200, likely: 300, high: 400 },
      needs: { dry: true, air_min_C: 12 },
      waits: [soak('dry', 600)],
      stores: ['tin'],
    }),
    again: step('paint', 1, 'Second coat', {
      follows: [{ step: 'coat', wait: 'dry', least_min: 0, greatest_min: 2880, past: { kind: 'forbidden' } }],
    }),
    glue: step('glue', 0, 'Glue it', {
      notAlone: true,
      setUps: [{ setUp: 'mast', states: ['down'] }],
      tools: [{ tool: 'clamp', count: 2 }],
    }),
  },
  setUps: {
    mast: {
      name: 'Mast',
      states: [
        { id: 'u', name: 'up', shelters: false },
        { id: 'd', name: 'down', shelters: false },
      ],
      now: 'u',
      changes: [],
    },
  },
  tools: { clamp: { name: 'clamps', count: 1, keptAt: '' } },
  stores: { tin: { name: 'Deck paint', keptAt: '', onHand: false, expected: '2026-05-10', lead_days: null, note: '' } },
  jobDays: {
    sat: jobDay('2026-05-09', { hands: [{ id: 'mo', name: 'Mo', from: '10:00', to: '12:00' }] }),
    sun: jobDay('2026-05-10'),
  },
  weather: {
    sat: weather('2026-05-09', { fromHour: 9, toHour: 12 }),
    sun: weather('2026-05-10', { fromHour: 8, toHour: 20 }),
  },
});
const matter = problemFrom(book, { now: '2026-05-08T09:40:00Z' });
if (matter.kind !== 'problem') throw new Error(matter.because);
const problem: Problem = matter.problem;
const said = (obstacle: Obstacle) => obstacleInWords(obstacle, problem);
// minutes of the plan: midnight of Friday 8 May is 0, so Sunday 09:00 is 2·1440 + 540
const sunday9 = 2 * 1440 + 540;

describe('obstacles in words', () => {
  it('says which weather is missing, with the figures', () => {
    expect(
      said({
        kind: 'weather',
        job: 'paint',
        step: 'coat',
        condition: 'dry',
        need_min: 300,
        best_min: 180,
        bestDay: 'sat',
      }),
    ).toEqual({
      why: "'Lay the paint' needs 5 h in one go (dry, from 12 °C); Saturday has 3 h at the most. What stands in the way is rain.",
      gain: '5 h without rain on a job day, or a roof over her, would let it in.',
    });
    expect(
      said({
        kind: 'weather',
        job: 'paint',
        step: 'coat',
        condition: 'air_min_C',
        need_min: 300,
        best_min: 0,
        bestDay: null,
      }).why,
    ).toBe(
      "'Lay the paint' needs 5 h in one go (dry, from 12 °C); no job day has such an hour. What stands in the way is cold air.",
    );
  });

  it('says what is not in stores, and when it comes', () => {
    expect(said({ kind: 'not in stores', job: 'paint', step: 'coat', store: 'tin', from: sunday9 })).toEqual({
      why: 'Deck paint: not in stores until Sunday 10 May 09:00.',
      gain: 'Get it sooner, or add a job day after Sunday 10 May.',
    });
    expect(said({ kind: 'not in stores', job: 'paint', step: 'coat', store: 'tin', from: null })).toEqual({
      why: 'Deck paint: not in stores, and not on order.',
      gain: 'Get it by Sunday 10 May, or say when it can be here.',
    });
  });

  it('says who and what is missing', () => {
    expect(said({ kind: 'no second hand', job: 'glue', step: 'glue' }).why).toBe(
      "'Glue it' is not to be done alone, and no second hand is there for 30 minutes when it could be done.",
    );
    expect(said({ kind: 'no hands', job: 'glue', step: 'glue', need: 3 }).why).toMatch(/needs 3 hands at once/);
    expect(said({ kind: 'no tool', job: 'glue', step: 'glue', tool: 'clamp' }).why).toMatch(/needs the clamps/);
    expect(said({ kind: 'no such place', job: 'glue', step: 'glue', feature: 'mains' }).gain).toBe(
      'Plan a job day at a place with mains power.',
    );
    expect(said({ kind: 'set-up out of reach', job: 'glue', step: 'glue', aspect: 'mast', states: ['d'] }).why).toMatch(
      /^'Glue it' needs the mast down, and no way was found/,
    );
  });

  it('says what time does not allow', () => {
    expect(said({ kind: 'longer than any day', job: 'paint', step: 'coat', minutes: 300, longest_min: 225 }).why).toBe(
      "'Lay the paint' takes 5 h in one go; the longest stretch in any job day is 3 h 45.",
    );
    expect(said({ kind: 'deadline', job: 'paint', earliest: sunday9, deadline: 2880 }).why).toBe(
      'It is to be done by the end of Saturday 9 May, and can be over Sunday 10 May 09:00 at the earliest.',
    );
    expect(said({ kind: 'wait not over in time', job: 'paint', step: 'coat', wait: 'dry', by: 2880 }).why).toBe(
      "'Soak' after 'Lay the paint' would not be over by the end of Saturday 9 May.",
    );
    expect(said({ kind: 'wait needs not kept', job: 'paint', step: 'coat', wait: 'dry', need: 'dry' }).why).toMatch(
      /must stay dry all through/,
    );
    expect(said({ kind: 'window missed', job: 'paint', step: 'again', before: 'coat' }).why).toMatch(
      /^'Second coat' must follow 'Lay the paint' within 2 days/,
    );
    expect(said({ kind: 'no room left', job: 'glue', need_min: 90, free_min: 30 })).toMatchObject({
      gain: '1 h more on a job day would let it in.',
    });
  });

  it('says how jobs hang together', () => {
    expect(said({ kind: 'waits for a job left out', job: 'glue', step: 'glue', other: 'paint' }).why).toBe(
      "It comes after 'Paint the deck', which is left out.",
    );
    expect(said({ kind: 'steps wait for each other', job: 'paint', steps: ['coat', 'again'] }).why).toBe(
      "'Lay the paint' and 'Second coat' wait for each other in a ring.",
    );
    expect(said({ kind: 'held elsewhere', job: 'glue', step: 'glue' }).gain).toMatch(/^Free it/);
  });
});

const plan: Plan = {
  steps: [
    {
      step: 'coat',
      start: 1440 + 540,
      finish: 1440 + 840,
      hands: ['keeper'],
      day: 'sat',
      batchOf: null,
      abrade_min: 0,
    },
    {
      step: 'again',
      start: sunday9,
      finish: sunday9 + 30,
      hands: ['keeper'],
      day: 'sun',
      batchOf: null,
      abrade_min: 0,
    },
  ],
  waits: [{ step: 'coat', wait: 'dry', start: 1440 + 840, finish: 1440 + 1440, tooCold: false }],
  changes: [{ aspect: 'mast', from: 'u', to: 'd', start: 1995, finish: 2025, hands: ['keeper'], day: 'sat' }],
  leftOut: ['glue'],
};
const outcome = (verdict: Outcome['verdict']): Outcome => ({
  plan,
  worth: { missed: 0, weight: 10, setUp_min: 30, moved_min: 0, lastFinish: sunday9 + 30 },
  verdict,
  obstacles: [],
  effort: { seed: 1, iterations: 10 },
});

describe('the verdict in words', () => {
  it('counts the jobs, those with a date, and says how sure it is', () => {
    expect(verdictInWords(outcome({ kind: 'proved best', finishToo: false }), problem)).toBe(
      '1 of 2 jobs in the plan, the one with a date among them. Proved best: no plan does more with less set-up changing.',
    );
    expect(verdictInWords(outcome({ kind: 'good, gap known', bound: 10.2, gap: 0.0161 }), problem)).toMatch(
      /Within 1\.7 % of the best possible\.$/,
    );
    expect(verdictInWords(outcome({ kind: 'stopped early', bound: 20, gap: 0.5 }), problem)).toMatch(/at most 50 %/);
  });

  it('says when a job with a date can be in no plan', () => {
    const words = verdictInWords(
      {
        ...outcome({
          kind: 'impossible, because',
          because: [{ kind: 'deadline', job: 'paint', earliest: null, deadline: 2880 }],
          rest: 'proved best',
          bound: 10,
          gap: 0,
        }),
        plan: { ...plan, steps: [], leftOut: ['paint', 'glue'] },
      },
      problem,
    );
    expect(words).toBe(
      '0 of 2 jobs in the plan; the one with a date is missed. One job with a date can be in no plan (see why below); the rest is proved best.',
    );
  });

  it('sums the work', () => {
    expect(effortInWords(outcome({ kind: 'proved best', finishToo: true }))).toBe(
      '5 h 30 of work, 1 set-up change (30 minutes).',
    );
  });
});

describe('why a step stands where it does', () => {
  it('names what it waited for, its weather and its window', () => {
    expect(stepReasonsInWords('again', plan, problem)).toEqual([
      "Waited for 'Soak' (after 'Lay the paint') to be over: the end of Saturday 9 May.",
      // 48 h after the end of the soak
      'Within its recoat window, which shuts the end of Monday 11 May.',
    ]);
    // Saturday's dry entry runs 09:00 to 12:00 local; the job day starts at 09:00
    expect(
      stepReasonsInWords('coat', { ...plan, steps: [{ ...plan.steps[0]!, finish: 1440 + 720 }] }, problem),
    ).toContain('Weather needed: dry, from 12 °C; that holds until 12:00.');
  });

  it('says by when a coat that faces the sky is to be on, before the dew', () => {
    // from noon on Saturday: lit and dry for five hours, then dark and so damp that what faces the sky is below its dew point
    const evening = problem.hours.map((hour, i) => ({
      ...hour,
      air_C: i < 24 + 17 ? 18 : 9,
      humidity_pct: i < 24 + 17 ? 45 : 92,
      surface_C: null,
      wind_kn: 3,
    }));
    const daylight = [{ from: 1440 + 240, to: 1440 + 17 * 60 }];
    const steps = problem.steps.map((step) => ({ ...step, wet: true, needs: { dewMargin_min_C: 3 } }));
    const dewy = { ...problem, hours: evening, daylight, steps };
    const at = (minute: number) => ({
      ...plan,
      steps: [{ ...plan.steps[0]!, start: 1440 + minute - 30, finish: 1440 + minute }],
    });
    const clock = (minute: number) => localMinute(1440 + minute, problem).clock;
    expect(stepReasonsInWords('coat', at(720), dewy).at(-1)).toBe(
      `Be done by ${clock(900)} where it faces the sky: dew is likely on it from ${clock(1020)} under a clear sky.`,
    );
    expect(stepReasonsInWords('coat', at(1000), dewy).at(-1)).toBe(
      'Late for a coat that faces the sky: dew falls within 2 h.',
    );
  });

  it('says nothing of what is not in the plan', () => {
    expect(stepReasonsInWords('glue', plan, problem)).toEqual([]);
  });
});

describe('set-up changes in a sailor’s words', () => {
  it('has a verb for the usual ones and says the others plainly', () => {
    expect(setUpChangeInWords('Mast', 'down', 'up')).toBe('raise the mast');
    expect(setUpChangeInWords('Mast', 'up', 'down')).toBe('lower the mast');
    expect(setUpChangeInWords('Cover', 'off', 'on')).toBe('put the cover on');
    expect(setUpChangeInWords('Board', 'lowered', 'housed')).toBe('house the board');
    expect(setUpChangeInWords('Boat', 'on the trailer', 'afloat')).toBe('launch her');
    expect(setUpChangeInWords('Boat', 'propped', 'on the trailer')).toBe('let her down onto the trailer');
    expect(setUpChangeInWords('Battery', 'resting', 'on charge')).toBe('put the battery on charge');
    expect(setUpChangeInWords('Boom', 'crutched', 'hung')).toBe('boom: from crutched to hung');
  });
});

describe('lengths and times in words', () => {
  it('reads as a person would say it', () => {
    expect([1, 40, 60, 320, 2880, 3000].map(lengthInWords)).toEqual([
      '1 minute',
      '40 minutes',
      '1 h',
      '5 h 20',
      '2 days',
      '2.5 days',
    ]);
    expect(listInWords(['a', 'b', 'c'])).toBe('a, b and c');
    expect(minuteInWords(sunday9, problem)).toBe('Sunday 10 May 09:00');
    expect(minuteInWords(2880, problem)).toBe('the end of Saturday 9 May');
  });
});
