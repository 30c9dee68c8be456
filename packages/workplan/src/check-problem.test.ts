import { describe, expect, it } from 'vitest';
import { checkProblem } from './check-problem.ts';
import type { Problem } from './problem.ts';
import { aStep, aWait, hoursBut, problemWith, theCover, theDay, theMast } from './rules/smallest-plan.ts';

const sound = problemWith([aStep('a', { waits: [aWait('w')] }), aStep('b')], {
  aspects: [theMast, theCover],
  mixes: [{ id: 'epoxy', name: 'epoxy', mixing_min: 5, potLife_min: 20 }],
  precedence: [
    { before: 'a', wait: 'w', after: 'b', least_min: 0, greatest_min: 60, past: { kind: 'abrade', minutes: 5 } },
  ],
});

/** The faults of the sound problem with one part of it otherwise; JSON in between, as from a file. */
function faultsWith(but: { readonly [K in keyof Problem]?: unknown }) {
  const checked = checkProblem(JSON.parse(JSON.stringify({ ...sound, ...but })));
  return checked.kind === 'sound' ? [] : checked.faults;
}

const [a, b] = sound.steps as [Problem['steps'][number], Problem['steps'][number]];

describe('checking a problem', () => {
  it('finds a sound one sound, and gives it back unchanged', () => {
    expect(checkProblem(JSON.parse(JSON.stringify(sound)))).toEqual({ kind: 'sound', problem: sound });
  });

  it('says where, what is wrong and what would be right', () => {
    expect(faultsWith({ steps: [{ ...a, minutes: -5 }, b] })).toEqual([
      { where: 'steps › 1. › minutes', wrong: 'it is -5', right: 'at least 0' },
    ]);
    expect(faultsWith({ steps: [{ ...a, zone: 'foredeck' }, b] })).toEqual([
      {
        where: 'steps › 1. (a) › zone',
        wrong: 'there is no zone ‘foredeck’',
        right: 'the id of a zone that the problem lists; it lists none',
      },
    ]);
    expect(faultsWith({ horizon: 1450 })[0]).toEqual({
      where: 'horizon',
      wrong: 'it is 1450',
      right: 'a multiple of 60',
    });
  });

  it.each<[string, unknown, string]>([
    ['something that is no problem', 7, 'the problem'],
    ['nothing', null, 'the problem'],
    ['an empty object', {}, 'format'],
    ['a later format', { ...sound, format: 2 }, 'format'],
    ['an unknown field', { ...sound, colour: 'red' }, 'the problem'],
  ])('refuses %s', (_, value, where) => {
    const checked = checkProblem(value);
    expect(checked.kind).toBe('refused');
    expect(checked.kind === 'refused' && checked.faults[0]?.where).toBe(where);
  });

  it.each<[string, { readonly [K in keyof Problem]?: unknown }, string]>([
    ['a start between hours', { startsAt: '2026-05-02T00:30:00Z' }, 'startsAt'],
    ['a time zone there is not', { timeZone: 'Nowhere/Town' }, 'timeZone'],
    ['a horizon over 90 days', { horizon: 91 * 1440 }, 'horizon'],
    ['too few hours', { hours: sound.hours.slice(1) }, 'hours'],
    ['an hour of 130 kn', { hours: hoursBut({ 3: { wind_kn: 130 } }) }, 'hours › 4. › wind_kn'],
    ['now after the horizon', { now: 1441 }, 'now'],
    ['half a minute', { now: 0.5 }, 'now'],
    ['days that overlap', { days: [theDay, { ...theDay, id: 'other', from: 700, to: 800 }] }, 'days › 2.'],
    ['a day that ends before it starts', { days: [{ ...theDay, to: 500 }] }, 'days › 1.'],
    ['a day after the horizon', { days: [{ ...theDay, to: 1500 }] }, 'days › 1. (day) › to'],
    [
      'a break that ends as it starts',
      { days: [{ ...theDay, breaks: [{ from: 650, to: 650 }] }] },
      'days › 1. (day) › breaks › 1.',
    ],
    [
      'a day that ends in no state there is',
      { days: [{ ...theDay, endsIn: [{ aspect: 'mast', state: 'half' }] }] },
      'days › 1. (day) › endsIn',
    ],
    ['two days with one id', { days: [theDay, { ...theDay, from: 800, to: 900 }] }, 'days › 2. › id'],
    ['no hands at all', { hands: [] }, 'hands'],
    [
      'hands there in no order',
      {
        hands: [
          {
            id: 'keeper',
            name: '',
            present: [
              { from: 10, to: 20 },
              { from: 0, to: 5 },
            ],
          },
        ],
      },
      'hands › 1. (keeper) › present › 2.',
    ],
    ['a zone without room', { zones: [{ id: 'z', name: 'z', room: 0, inside: false, near: [] }] }, 'zones › 1. › room'],
    [
      'a zone near none there is',
      { zones: [{ id: 'z', name: 'z', room: 1, inside: false, near: ['y'] }] },
      'zones › 1. (z) › near',
    ],
    ['a set-up in no state it has', { aspects: [{ ...theMast, initial: 'half' }] }, 'aspects › 1. (mast) › initial'],
    [
      'a change that changes nothing',
      { aspects: [{ ...theMast, changes: [{ ...theMast.changes[0], to: 'up' }] }] },
      'aspects › 1. (mast) › changes › 1.',
    ],
    [
      'a change in no time',
      { aspects: [{ ...theMast, changes: [{ ...theMast.changes[0], minutes: 0 }] }] },
      'aspects › 1. › changes › 1. › minutes',
    ],
    [
      'a change twice',
      { aspects: [{ ...theMast, changes: [theMast.changes[0], theMast.changes[0]] }] },
      'aspects › 1. (mast) › changes › 2.',
    ],
    [
      'a change that needs its own set-up',
      { aspects: [{ ...theMast, changes: [{ ...theMast.changes[0], setUps: [{ aspect: 'mast', states: ['up'] }] }] }] },
      'aspects › 1. (mast) › changes › 1. › setUps',
    ],
    ['a job without weight', { jobs: [{ ...sound.jobs[0], weight: 0 }] }, 'jobs › 1. › weight'],
    ['a job without a step', { jobs: [...sound.jobs, { ...sound.jobs[0], id: 'idle' }] }, 'jobs › 2. (idle)'],
    ['a step of a job there is not', { steps: [a, { ...b, job: 'other' }] }, 'steps › 2. (b) › job'],
    ['a step of hands and no minutes', { steps: [a, { ...b, minutes: 0 }] }, 'steps › 2. (b) › minutes'],
    ['a keeper at a step without hands', { steps: [a, { ...b, hands: 0, keeper: true }] }, 'steps › 2. (b) › keeper'],
    [
      'a low time over the likely one',
      { steps: [a, { ...b, minutes_low: b.minutes + 1 }] },
      'steps › 2. (b) › minutes_low',
    ],
    [
      'a high time under the likely one',
      { steps: [a, { ...b, minutes_high: b.minutes - 1 }] },
      'steps › 2. (b) › minutes_high',
    ],
    [
      'a chance of rain over 100 %',
      { hours: sound.hours.map((hour) => ({ ...hour, rainOdds_pct: 101 })) },
      'hours › 1. › rainOdds_pct',
    ],
    ['a mixing longer than its step', { steps: [a, { ...b, minutes: 4, mix: 'epoxy' }] }, 'steps › 2. (b) › minutes'],
    ['a tool there is not', { steps: [a, { ...b, tools: [{ tool: 'saw', count: 1 }] }] }, 'steps › 2. (b) › tools'],
    ['a store line there is not', { steps: [a, { ...b, stores: ['screws'] }] }, 'steps › 2. (b) › stores'],
    [
      'a set-up need without states',
      { steps: [a, { ...b, setUps: [{ aspect: 'mast', states: [] }] }] },
      'steps › 2. › setUps › 1. › states',
    ],
    [
      'a wait that keeps still what there is not',
      { steps: [{ ...a, waits: [aWait('w', { still: ['board'] })] }, b] },
      'steps › 1. (a) › waits › 1. › still',
    ],
    [
      'a law of no kind',
      { steps: [{ ...a, waits: [{ ...aWait('w'), law: { kind: 'sets' } }] }, b] },
      'steps › 1. › waits › 1. › law › kind',
    ],
    [
      'a step done after now',
      { steps: [a, { ...b, progress: { kind: 'done', start: 0, finish: 1 } }] },
      'steps › 2. (b) › progress',
    ],
    [
      'a step under way that should be over',
      { now: 10, steps: [a, { ...b, progress: { kind: 'under way', start: 0, expectedFinish: 9, hands: [] } }] },
      'steps › 2. (b) › progress',
    ],
    [
      'a step under way by none there is',
      { steps: [a, { ...b, progress: { kind: 'under way', start: 0, expectedFinish: 9, hands: ['second'] } }] },
      'steps › 2. (b) › progress',
    ],
    ['a step after itself', { precedence: [{ ...sound.precedence[0], wait: null, after: 'a' }] }, 'precedence › 1.'],
    [
      'a step after one there is not',
      { precedence: [{ ...sound.precedence[0], before: 'z' }] },
      'precedence › 1. › before',
    ],
    ['a wait of another step', { precedence: [{ ...sound.precedence[0], wait: 'x' }] }, 'precedence › 1. › wait'],
    ['a greatest lag under the least', { precedence: [{ ...sound.precedence[0], least_min: 61 }] }, 'precedence › 1.'],
    ['a start of an unknown step', { previous: [{ step: 'z', start: 0 }] }, 'previous › 1.'],
  ])('refuses %s, at its place', (_, but, where) => {
    const faults = faultsWith(but);
    expect(faults.map((fault) => fault.where)).toContain(where);
    for (const fault of faults) expect([fault.wrong.length > 0, fault.right.length > 0]).toEqual([true, true]);
  });

  it('leaves to the planner what is an answer and not a fault', () => {
    const ring = [...sound.precedence, { ...sound.precedence[0], before: 'b', wait: null, after: 'a' }];
    expect(faultsWith({ precedence: ring })).toEqual([]);
    expect(faultsWith({ steps: [a, { ...b, minutes: 600 }] })).toEqual([]);
    expect(faultsWith({ steps: [a, { ...b, hands: 7 }] })).toEqual([]);
    expect(faultsWith({ jobs: [{ ...sound.jobs[0], deadline: -60 }] })).toEqual([]);
  });
});
