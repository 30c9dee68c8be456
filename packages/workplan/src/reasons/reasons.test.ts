import { describe, expect, it } from 'vitest';
import type { Problem } from '../problem.ts';
import { aStep, aWait, hoursBut, problemWith, theDay, theMast } from '../rules/smallest-plan.ts';
import { startSearch } from '../search.ts';
import { violations } from '../violations.ts';
import { type Reasons, startReasons } from './reasons.ts';
import { relaxed } from './relaxation.ts';

function reasonsOf(problem: Problem, seed = 1): Reasons {
  const search = startSearch(problem, { seed });
  search.advance(60);
  const run = startReasons(problem, search.outcome(), { seed, arrival_clock: '09:00' });
  let reasons = run.advance(0);
  for (let n = 0; n < 1000 && !reasons.finished; n++) reasons = run.advance(100);
  expect(reasons.finished).toBe(true);
  for (const { ways } of reasons.ways)
    for (const { relaxation, plan, letsIn } of ways) {
      expect(violations(plan, relaxed(problem, relaxation)), JSON.stringify(relaxation)).toEqual([]);
      for (const id of letsIn) expect(plan.leftOut).not.toContain(id);
    }
  return reasons;
}

const waysOf = (problem: Problem, job = 'job') =>
  reasonsOf(problem)
    .ways.find((each) => each.job === job)!
    .ways.map(({ relaxation }) => relaxation);

/** Rain all day but for the hour from 10:00: a step of 110 min that must be dry needs the hour after it too. */
const wetDay = problemWith([aStep('paint', { minutes: 110, needs: { dry: true } })], {
  hours: hoursBut({ 11: { rain: true } }),
});

describe('the ways in', () => {
  it('name the hours that would have to be dry, no more than it takes', () => {
    expect(waysOf(wetDay)).toContainEqual({
      kind: 'fit hours',
      day: 'day',
      from: 660,
      to: 720,
      hours: 1,
      needs: { dry: true },
    });
  });

  it('change with what stands in the way: the same step under a calm that is not there asks for that instead', () => {
    const windy = {
      ...wetDay,
      hours: hoursBut({ 11: { wind_kn: 25 } }),
      steps: [aStep('paint', { minutes: 110, needs: { wind_max_kn: 12 } })],
    };
    const asked = { kind: 'fit hours', day: 'day', from: 660, to: 720, hours: 1 } as const;
    expect(waysOf(windy)).toContainEqual({ ...asked, needs: { wind_max_kn: 12 } });
    expect(waysOf(windy)).not.toContainEqual({ ...asked, needs: { dry: true } });
    // with the hour dry it is in, and there is nothing to say
    expect(reasonsOf({ ...wetDay, hours: hoursBut({}) }).ways).toEqual([]);
  });

  it('ask for a second hand from the latest quarter hour that does', () => {
    // 40 minutes, not alone, and nothing else on: the hand is there in time from 11:15 on, for 11:20 would be the last start
    const problem = problemWith([aStep('lift', { minutes: 40, notAlone: true })]);
    expect(waysOf(problem)).toEqual([{ kind: 'second hand', day: 'day', from: 675, to: 720 }]);
    const { ways } = reasonsOf(problem);
    // half past would leave it 30 minutes
    expect(ways[0]!.ways[0]!.leastProved).toBe(true);
  });

  it('ask for a start so much sooner, or an end so much later, in quarter hours', () => {
    const problem = problemWith([aStep('long', { minutes: 140 })]);
    expect(waysOf(problem)).toEqual([
      { kind: 'earlier start', day: 'day', minutes: 30, from: 570 },
      { kind: 'later end', day: 'day', minutes: 30, to: 750 },
    ]);
    // where the day has begun it can begin no sooner
    expect(waysOf({ ...problem, now: 610 }).map(({ kind }) => kind)).not.toContain('earlier start');
  });

  it('ask for a store by the last day on which it is of use', () => {
    const days = [theDay, { ...theDay, id: 'next', from: 2040, to: 2160 }];
    const problem = problemWith([aStep('fit', { stores: ['pin'] })], {
      days,
      horizon: 2880,
      hours: [...hoursBut({}), ...hoursBut({})],
      hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 2880 }] }],
      stores: [{ id: 'pin', name: 'pin', from: null }],
    });
    // 09:00 of the second day is minute 1980
    expect(waysOf(problem)).toEqual([{ kind: 'stores by', stores: ['pin'], by: 1980 }]);
    expect(waysOf({ ...problem, days: [theDay] })[0]).toEqual({ kind: 'stores by', stores: ['pin'], by: 540 });
  });

  it('ask for a tool, a hold let go, a later date, and another job left', () => {
    const tool = problemWith([aStep('drill', { tools: [{ tool: 'drill', count: 1 }] })], {
      tools: [{ id: 'drill', name: 'drill', capacity: [] }],
    });
    expect(waysOf(tool)).toEqual([{ kind: 'tool', tool: 'drill', more: 1 }]);
    const held = problemWith([aStep('a', { held: { from: 0, to: 300 } })]);
    expect(waysOf(held)).toEqual([{ kind: 'freed', job: 'job' }]);
    const dated = problemWith([aStep('glue', { waits: [aWait('cure')] })], {
      jobs: [{ id: 'job', title: 'job', weight: 10, deadline: 400, optional: true }],
    });
    expect(waysOf(dated)).toContainEqual({ kind: 'later date', job: 'job', days: 1, deadline: 1440 });
    const two = problemWith(
      [aStep('long', { minutes: 100, keeper: true }), aStep('less', { job: 'lesser', minutes: 90, keeper: true })],
      {
        jobs: [
          { id: 'job', title: 'job', weight: 10, deadline: null, optional: true },
          { id: 'lesser', title: 'lesser', weight: 4, deadline: null, optional: true },
        ],
      },
    );
    expect(waysOf(two, 'lesser')).toContainEqual({ kind: 'without job', job: 'job' });
  });

  it('bring in what a job waits for along with it', () => {
    const problem = problemWith(
      [aStep('strip', { minutes: 20, notAlone: true }), aStep('paint', { job: 'after', minutes: 30 })],
      {
        precedence: [
          {
            before: 'strip',
            wait: null,
            after: 'paint',
            least_min: 0,
            greatest_min: null,
            past: { kind: 'forbidden' },
          },
        ],
      },
    );
    const after = reasonsOf(problem).ways.find(({ job }) => job === 'after')!;
    expect(after.ways[0]).toMatchObject({ letsIn: ['job', 'after'], relaxation: { kind: 'second hand' } });
    // 50 minutes of work, of which the hand must see the first 20: there from 11:00 does
    expect(after.ways[0]!.relaxation).toMatchObject({ from: 660 });
  });

  it('are none where steps wait for each other', () => {
    const link = { wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' } } as const;
    const ring = problemWith([aStep('a'), aStep('b')], {
      precedence: [
        { ...link, before: 'a', after: 'b' },
        { ...link, before: 'b', after: 'a' },
      ],
    });
    expect(waysOf(ring)).toEqual([]);
  });
});

describe('the change that gains most', () => {
  it('is the one that lets most in, with how much', () => {
    const problem = problemWith(
      [
        aStep('a', { job: 'first', minutes: 20, notAlone: true }),
        aStep('b', { job: 'second', minutes: 20, notAlone: true }),
        aStep('c', { job: 'third', stores: ['pin'] }),
      ],
      { stores: [{ id: 'pin', name: 'pin', from: null }] },
    );
    const { gain } = reasonsOf(problem);
    expect(gain).toMatchObject({ relaxation: { kind: 'second hand' }, weight: 20, jobs: ['first', 'second'] });
  });
});

describe('the machine', () => {
  const problem = problemWith(
    [
      aStep('lift', { minutes: 40, notAlone: true }),
      aStep('mast', { job: 'up', setUps: [{ aspect: 'mast', states: ['down'] }] }),
    ],
    {
      aspects: [theMast],
    },
  );
  it('gives the same reasons however it is sliced', () => {
    const search = startSearch(problem, { seed: 1 });
    search.advance(20);
    const outcome = search.outcome();
    const whole = startReasons(problem, outcome, { seed: 3, arrival_clock: '09:00' }).advance(100_000);
    const sliced = startReasons(problem, outcome, { seed: 3, arrival_clock: '09:00' });
    let last = sliced.advance(0);
    for (let n = 0; n < 100_000 && !last.finished; n++) last = sliced.advance(1);
    expect(last).toEqual(whole);
  });
});
