import { describe, expect, it } from 'vitest';
import type { Problem, Relaxation, StepHeld } from '#workplan';
import { heldInWords } from './holds-in-words.ts';
import { problemFrom } from './problem-from.ts';
import { gainInWords, leastInWords, relaxationInWords, wayInWords } from './reason-in-words.ts';
import { job, jobDay, smallBook, soak, step, weather } from './testing/small-book.ts';

const book = smallBook({
  jobs: { paint: job('Paint the deck', { due: '2026-05-12' }), pintle: job('Rebed the pintle') },
  steps: {
    coat: step('paint', 0, 'Lay the paint', { needs: { dry: true }, waits: [soak('dry', 600)], stores: ['shackle'] }),
    again: step('paint', 1, 'Second coat', {
      follows: [{ step: 'coat', wait: 'dry', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } }],
    }),
    bed: step('pintle', 0, 'Bed it', { tools: [{ tool: 'clamp', count: 1 }] }),
  },
  tools: { clamp: { name: 'clamp', count: 0, keptAt: '' }, saw: { name: 'saw', count: 1, keptAt: '' } },
  stores: {
    shackle: { name: 'the shackle', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' },
    seal: { name: 'Hatch seal, 1.9 m', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' },
  },
  jobDays: {
    sat: jobDay('2026-05-09', { hands: [{ id: 'mo', name: 'Mo', from: '10:00', to: '12:00' }] }),
    sun: jobDay('2026-05-10'),
  },
  weather: { sat: weather('2026-05-09', {}), sun: weather('2026-05-10', {}) },
});
const matter = problemFrom(book, { now: '2026-05-08T09:40:00Z' });
if (matter.kind !== 'problem') throw new Error(matter.because);
const problem: Problem = matter.problem;
// midnight of Friday 8 May is minute 0 of the plan
const at = (day: number, hour: number, minute = 0) => day * 1440 + hour * 60 + minute;
const said = (relaxation: Relaxation) => wayInWords({ job: 'paint', letsIn: ['paint'], relaxation }, problem);

describe('a way in, in words', () => {
  it('is a trade sentence with its figures, in the times of the place', () => {
    expect(
      said({ kind: 'fit hours', day: 'sun', from: at(2, 13), to: at(2, 15), hours: 2, needs: { dry: true } }),
    ).toBe('Two more dry hours on Sunday, 13:00 to 15:00, would let it in.');
    expect(
      said({ kind: 'fit hours', day: 'sat', from: at(1, 16), to: at(1, 17), hours: 1, needs: { air_min_C: 16 } }),
    ).toBe('One more hour from 16 °C on Saturday, 16:00 to 17:00, would let it in.');
    expect(
      said({ kind: 'fit hours', day: 'sat', from: at(1, 16), to: at(1, 18), hours: 2, needs: { wind_max_kn: 12 } }),
    ).toBe('Two more hours with the wind up to 12 knots on Saturday, 16:00 to 18:00, would let it in.');
    expect(said({ kind: 'second hand', day: 'sun', from: at(2, 14), to: at(2, 17) })).toBe(
      'A second hand from 14:00 on Sunday.',
    );
    // Mo is there on Saturday from 10:00
    expect(said({ kind: 'second hand', day: 'sat', from: at(1, 11), to: at(1, 17) })).toBe(
      'One hand more from 11:00 on Saturday.',
    );
    expect(said({ kind: 'earlier start', day: 'sat', from: at(1, 8), minutes: 45 })).toBe(
      'Starting at 08:00 on Saturday, 45 minutes sooner.',
    );
    expect(said({ kind: 'later end', day: 'sat', to: at(1, 18, 45), minutes: 105 })).toBe(
      'Going on until 18:45 on Saturday, 1 h 45 longer.',
    );
    expect(said({ kind: 'stores by', stores: ['shackle'], by: at(1, 9) })).toBe('The shackle in stores by Saturday.');
    expect(said({ kind: 'stores by', stores: ['seal'], by: at(2, 9) })).toBe('Hatch seal, 1.9 m: in stores by Sunday.');
    expect(said({ kind: 'without job', job: 'pintle' })).toBe("Without 'Rebed the pintle'.");
    expect(said({ kind: 'later date', job: 'paint', days: 2, deadline: at(7, 0) })).toBe(
      'With its date two days later, Thursday 14 May.',
    );
    expect(said({ kind: 'tool', tool: 'clamp', more: 1 })).toBe('Clamp: one, got or borrowed.');
    expect(said({ kind: 'tool', tool: 'saw', more: 1 })).toBe('Saw: one more, got or borrowed.');
    expect(said({ kind: 'freed', job: 'paint' })).toBe('Free of the day it is held to.');
    expect(said({ kind: 'place', day: 'sun', feature: 'mains' })).toBe('A place with mains power on Sunday.');
    expect(
      said({ kind: 'another day', like: 'sun', from: at(8, 9), to: at(8, 13), needs: { dry: true, air_min_C: 12 } }),
    ).toBe('One more job day of 4 h, such as Saturday 16 May 09:00 to 13:00, in fit weather (dry, from 12 °C).');
  });

  it('says over which night it must be fit, and where fit hours lie between', () => {
    expect(
      said({ kind: 'fit hours', day: 'sat', from: at(1, 22), to: at(2, 6), hours: 8, needs: { air_min_C: 10 } }),
    ).toBe('Eight more hours from 10 °C between 22:00 on Saturday and 06:00 on Sunday, would let it in.');
    expect(
      said({ kind: 'fit hours', day: 'sat', from: at(1, 12), to: at(1, 16), hours: 2, needs: { dry: true } }),
    ).toBe('Two more dry hours on Saturday, between 12:00 and 16:00, would let it in.');
  });

  it('names what comes in with it, and that nothing less does only where that is proved', () => {
    const relaxation: Relaxation = { kind: 'second hand', day: 'sun', from: at(2, 14), to: at(2, 17) };
    expect(wayInWords({ job: 'paint', letsIn: ['pintle', 'paint'], relaxation }, problem)).toBe(
      "A second hand from 14:00 on Sunday. 'Rebed the pintle' comes in with it.",
    );
    expect(leastInWords({ leastProved: true })).toBe('Nothing less of it does.');
    expect(leastInWords({ leastProved: false })).toBeNull();
  });

  it('says what the best change gains', () => {
    const relaxation: Relaxation = { kind: 'second hand', day: 'sun', from: at(2, 14), to: at(2, 17) };
    const plan = { steps: [], waits: [], changes: [], leftOut: [] };
    expect(gainInWords({ relaxation, weight: 26.04, jobs: ['paint', 'pintle'], plan }, problem, 100)).toBe(
      "A second hand from 14:00 on Sunday. 'Paint the deck' and 'Rebed the pintle' come in: 26 more in weight, on 100.",
    );
    expect(relaxationInWords({ kind: 'without job', job: 'pintle' }, problem)).toBe("Without 'Rebed the pintle'");
  });
});

describe('what holds a step, in words', () => {
  const plan = {
    steps: [
      { step: 'coat', start: at(1, 9), finish: at(1, 10), hands: ['keeper'], day: 'sat', batchOf: null, abrade_min: 0 },
      {
        step: 'again',
        start: at(2, 9),
        finish: at(2, 10),
        hands: ['keeper'],
        day: 'sun',
        batchOf: null,
        abrade_min: 0,
      },
    ],
    waits: [],
    changes: [],
    leftOut: ['pintle'],
  };
  const words = (held: Omit<StepHeld, 'step'>) => heldInWords({ step: 'again', ...held }, plan, problem);

  it('is a sentence each, what binds most first', () => {
    expect(
      words({
        roomToSpare_min: 25,
        by: [
          { kind: 'day begins', at: at(2, 9) },
          { kind: 'comes after', step: 'coat', wait: 'dry', until: at(2, 9), lag_min: 0 },
        ],
      }).holds,
    ).toEqual([
      expect.stringMatching(/^It waits for '.*' after 'Lay the paint': over Sunday 10 May 09:00\.$/),
      'Work on this day begins at 09:00.',
    ]);
    expect(words({ roomToSpare_min: 0, by: [{ kind: 'weather', condition: 'dry', from: at(2, 9) }] }).holds).toEqual([
      'It needs to be dry, which it has from 09:00.',
    ]);
    expect(
      words({
        roomToSpare_min: 0,
        by: [{ kind: 'hands busy', hands: ['mo'], step: 'coat', aspect: null, until: at(2, 9) }],
      }).holds,
    ).toEqual(["Mo is busy until 09:00 with 'Lay the paint'."]);
  });

  it('leaves out what the step before it brings with it: hands, room, a tool', () => {
    const { holds } = words({
      roomToSpare_min: 0,
      by: [
        { kind: 'hands busy', hands: ['keeper'], step: 'coat', aspect: null, until: at(1, 10) },
        { kind: 'room', zone: 'deck' },
        { kind: 'comes after', step: 'coat', wait: null, until: at(1, 10), lag_min: 0 },
      ],
    });
    expect(holds).toEqual(["It comes after 'Lay the paint': done Saturday 9 May 10:00."]);
  });

  it('says the room to spare in minutes, and when there is none', () => {
    expect(words({ roomToSpare_min: 25, by: [] })).toEqual({
      holds: ['Nothing keeps it from starting sooner: it fits here with the rest.'],
      room: '25 minutes: started by 09:25, it costs nothing and moves nothing else.',
    });
    expect(words({ roomToSpare_min: 0, by: [] }).room).toBe('None: a minute later, something else would have to move.');
  });
});
