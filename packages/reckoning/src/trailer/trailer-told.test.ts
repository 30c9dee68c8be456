import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BallWeighing, Book, TrailerRecord } from '#boat-book';
import { smallBook } from '../testing/small-book.ts';
import { carried, thing, trailer } from '../testing/small-trailer.ts';
import { stoodNow } from './ball-load.ts';
import type { LoadChange } from './standing.ts';
import { trailerJob } from './trailer-jobs.ts';
import { trailersLooked } from './trailer-looked.ts';
import { changeSaid, trailerTold } from './trailer-told.ts';

const today = '2026-11-26';
const bookWith = (parts: Partial<TrailerRecord> = {}, things: Book['carried'] = carried, rest: Partial<Book> = {}) =>
  smallBook({ trailers: { road: { ...trailer, ...parts } }, carried: things, ...rest });
const told = (book: Book, change: LoadChange = {}) => trailerTold(book, 'road', book.trailers.road!, today, change);
const found = (book: Book) => Object.fromEntries(told(book).findings.map((each) => [each.id, each]));

describe('a trailer', () => {
  it('tells the ball load of all that stands on it, against the lowest of car, bar and coupling', () => {
    const { load, ball, findings } = told(bookWith());
    expect(load.ball_kg.likely).toBeCloseTo(42, 9);
    expect(load.axle_kg).toBeCloseTo(793 - 42, 9);
    // only the hull’s place is not known: 500·0.1/4 = 12.5
    expect(load.ball_kg.high).toBeCloseTo(54.5, 9);
    expect(ball).toBe(
      'The ball carries 42 kg (29.5 to 54.5), 5.3 % of 793 kg; it may carry the tow bar’s 50 kg, the lowest of car, tow bar and coupling.',
    );
    expect(findings.map(({ id, gravity }) => [id, gravity])).toContainEqual(['ball-may-be-over-its-limit', 'worsens']);
  });

  it('says what a heavier board does, and how far what can be moved must go to mend it', () => {
    const book = bookWith({ barBall_kg: 43 }, { ...carried, hull: thing('The hull', 500, 0.2) });
    const before = told(book);
    const after = told(book, { board: { likely_kg: 90 } });
    // 30 kg at 0.4 m of 4: 3 kg
    expect(after.load.ball_kg.likely).toBeCloseTo(45, 9);
    expect(changeSaid(before, after)).toBe(
      'The ball gains 3 kg: from 42 to 45 kg; the axle from 751 to 778 kg. That is 2 kg over the limit.',
    );
    // 2 kg·4 m = 8 kg·m: the battery’s 8 kg by 1 m; the outboard’s 25 kg by 0.32 m
    expect(after.mendings.map(({ name, forward_m, enough }) => [name, Number(forward_m.toFixed(9)), enough])).toEqual([
      ['The outboard', -0.32, true],
      ['The battery', -1, true],
    ]);
    expect(after.mendings[1]?.words).toBe('Move the battery 1 m aft: the ball then carries 43 kg.');
    const mended = told(book, { board: { likely_kg: 90 }, battery: { ahead_m: -0.5 } });
    expect(mended.load.ball_kg.likely).toBeCloseTo(43, 9);
    expect(mended.mendings).toEqual([]);
  });

  it('takes the mass of a board from its hoist, and leaves at home what does not come along', () => {
    const hoist = {
      name: 'Hoist',
      zone: null,
      plate: { length_m: 1, breadth_m: 0.4, density_kg_m3: 7200, mass: { kind: 'weighed', mass_kg: 100 } },
      moves: { kind: 'slides', travel_m: 1, topAboveWater_m: 0, offMiddle_m: 0, held_m: 0.2 },
      wire: { of: '7x19', size_mm: 4, ending: null },
      leads: { count: 0, bearing: 'plain', sheave_mm: null },
      tackles: [],
      cord: null,
      winch: null,
      note: '',
    } as const;
    const things = {
      ...carried,
      board: { ...carried.board, hoist: 'plate' },
      outboard: { ...carried.outboard, aboard: false },
    };
    // 168 + 40·0.4 + 25·1.6 = 224 kg·m
    expect(told(bookWith({}, things, { boardHoists: { plate: hoist } })).load.ball_kg.likely).toBeCloseTo(56, 9);
  });

  it('never makes more of the mendings than they do: each brings the ball where it says', () => {
    const one = fc.record({
      mass_kg: fc.double({ min: 1, max: 400, noNaN: true }),
      ahead_m: fc.double({ min: -3, max: 3, noNaN: true }),
      reach_m: fc.double({ min: 0, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 6 }), (things) => {
        const all = Object.fromEntries(
          things.map(({ mass_kg, ahead_m, reach_m }, n) => [
            `thing${n}`,
            thing(`Thing ${n}`, mass_kg, ahead_m, {
              moves: { aftmost_m: ahead_m - reach_m, foremost_m: ahead_m + reach_m },
            }),
          ]),
        );
        const book = bookWith({}, all);
        for (const { carried: id, forward_m, ball_kg } of told(book).mendings) {
          const again = told(book, { [id!]: { ahead_m: all[id!]!.ahead_m + forward_m } });
          expect(again.load.ball_kg.likely).toBeCloseTo(ball_kg, 6);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the ball weighed', () => {
  const weighing = (book: Book, scale_kg: number): BallWeighing => {
    const { load } = told(book);
    return {
      trailer: 'road',
      at: '2026-11-01T09:00:00Z',
      scale_kg,
      arm_mm: 500,
      beam_mm: 1000,
      told_kg: load.ball_kg.likely,
      stood: stoodNow(load),
      note: '',
      order: 1,
    };
  };
  const before = bookWith();
  const ballWeighings = { w: weighing(before, 23) };

  it('counts before the table, with its own band, and shows what the table does not explain', () => {
    const { load, weighed, putRight } = told(bookWith({}, carried, { ballWeighings }));
    // 23 kg at twice the arm is 46; ± 1 kg of the scale is ± 2, ± 5 mm of 500 mm ± 0.46: together 2.05
    expect(load.ball_kg.likely).toBeCloseTo(46, 9);
    expect(load.ball_kg.high).toBeCloseTo(46 + Math.hypot(2, 0.46), 9);
    expect(weighed[1]).toBe(
      'The table said 42 kg: 4 kg too little, which is within what it does not know (± 12.5 kg).',
    );
    // 4 kg·4 m over 500 kg: 0.032 m
    expect(putRight).toMatchObject({ carried: 'hull', ahead_m: 0.232 });
  });

  it('goes on with what was changed since, and leaves what was not as the scale had it', () => {
    const moved = { ...carried, battery: { ...carried.battery, ahead_m: -1.5 } };
    const { load } = told(bookWith({}, moved, { ballWeighings }));
    // 8 kg by 2 m of 4: 4 kg
    expect(load.ball_kg.likely).toBeCloseTo(42, 9);
    expect(load.weighed?.since).toEqual([{ name: 'The battery', gain_kg: expect.closeTo(-4, 9) }]);
    const { board: _, ...without } = carried;
    expect(told(bookWith({}, without, { ballWeighings })).load.ball_kg.likely).toBeCloseTo(46 - 6, 9);
  });

  it('puts the table right: with the hull where it says, the table says what the scale did', () => {
    const first = told(bookWith({}, carried, { ballWeighings })).putRight!;
    const right = { ...carried, hull: { ...carried.hull, ahead_m: first.ahead_m } };
    const { load } = told(bookWith({}, right));
    expect(load.ball_kg.likely).toBeCloseTo(46, 6);
    // the weighing has the hull so too, as `putTableRight` writes it: nothing was moved, and nothing is left to explain
    const stood = ballWeighings.w.stood.map((each) =>
      each.carried === 'hull' ? { ...each, ahead_m: first.ahead_m, ball_kg: each.ball_kg + 4 } : each,
    );
    const after = told(bookWith({}, right, { ballWeighings: { w: { ...ballWeighings.w, told_kg: 46, stood } } }));
    expect(after.load.ball_kg.likely).toBeCloseTo(46, 6);
    expect(after.load.weighed?.since).toEqual([]);
    expect(after.putRight).toBeNull();
  });
});

describe('what is found at a trailer', () => {
  it('names the limits that were not entered, and never supposes one', () => {
    const none = { carBall_kg: null, barBall_kg: null, couplingBall_kg: null, gross_kg: null };
    const { ball, ballLimit_kg, findings } = told(bookWith(none));
    expect(ballLimit_kg).toBeNull();
    expect(ball).toContain('no limit of car, tow bar or coupling is entered');
    expect(findings.find(({ id }) => id === 'limits-not-entered')).toMatchObject({
      gravity: 'unknown',
      subject: 'ball load',
    });
  });

  it.each([
    ['a ball load over its limit', { barBall_kg: 40 }, 'ball-over-its-limit', 'unlawful'],
    ['more than the plate', { gross_kg: 790 }, 'gross-over-its-limit', 'unlawful'],
    ['more than the axle’s plate', { axle_kg: 700 }, 'axle-over-its-limit', 'unlawful'],
    ['car and trailer too heavy together', { train_kg: 2000 }, 'train-over-its-limit', 'unlawful'],
    ['a car too light', { carKerb_kg: 900 }, 'heavy-for-the-car', 'worsens'],
    ['no brakes', { braked: false }, 'too-heavy-without-brakes', 'unlawful'],
    [
      'too little on the ball',
      { emptyPlace: { kind: 'centre', ahead_m: 0, give_m: 0 } },
      'ball-load-too-small',
      'danger',
    ],
    [
      'tyres that carry too little',
      { tyres: { ...trailer.tyres!, loadIndex: 65 } },
      'tyres-over-their-limit',
      'danger',
    ],
    ['a letter too low', { towed_km_h: 150 }, 'tyre-speed', 'danger'],
    ['soft tyres', { tyres: { ...trailer.tyres!, pressure_kPa: 200 } }, 'tyre-pressure', 'worsens'],
    ['a board on its wire', { boardRests: false }, 'board', 'danger'],
    ['a board nobody looked at', { boardRests: null }, 'board', 'unknown'],
    ['a bow post that is too weak', { post_N: 1000 }, 'lashing-forward', 'danger'],
    ['a bow post nobody knows', { post_N: null }, 'lashing-forward', 'unknown'],
    ['tyres nobody looked at', { tyres: null }, 'tyres', 'unknown'],
  ] as const)('%s', (_, parts, id, gravity) => {
    expect(found(bookWith(parts as Partial<TrailerRecord>))[id]).toMatchObject({ gravity });
  });

  it('takes the age of a tyre from its code, and a spare that is past it less gravely than a wheel on the road', () => {
    const wheels = [
      { wheel: 'Left', spare: false, code: '1019', tread_mm: null },
      { wheel: 'Right', spare: false, code: '1021', tread_mm: 1.2 },
      { wheel: 'Spare', spare: true, code: '1018', tread_mm: null },
      { wheel: 'Other', spare: false, code: '9924', tread_mm: null },
    ];
    const all = found(bookWith({ tyres: { ...trailer.tyres!, wheels } }));
    expect(all['tyre-age-1']).toMatchObject({ gravity: 'danger', wrong: expect.stringContaining('7.7 years old') });
    expect(all['tyre-age-2']).toMatchObject({ gravity: 'worsens' });
    expect(all['tyre-tread-2']).toMatchObject({ gravity: 'unlawful' });
    expect(all['tyre-age-3']).toMatchObject({ gravity: 'worsens' });
    expect(all['tyre-age-4']).toMatchObject({
      gravity: 'unknown',
      wrong: expect.stringContaining('a year has no week 99'),
    });
  });

  it('counts no winch line, no strap on an unknown place and none without its label', () => {
    const strap = { name: 'Aft', kind: 'strap', holds: 'rearward', above_deg: 0, aside_deg: 0 } as const;
    // 593 kg of boat, half her weight: 2908 N
    const held = bookWith({ lashings: [{ ...strap, id: 'a', capacity_N: 5000, hull_N: 3000 }] });
    expect(found(held)['lashing-rearward']).toBeUndefined();
    for (const [lashing, gravity] of [
      [{ ...strap, id: 'a', capacity_N: 5000, hull_N: 2800 }, 'danger'],
      [{ ...strap, id: 'a', capacity_N: 5000, hull_N: null }, 'unknown'],
      [{ ...strap, id: 'a', capacity_N: null, hull_N: 9000 }, 'unknown'],
      [{ ...strap, id: 'a', kind: 'winch line', capacity_N: 9000, hull_N: 9000 }, 'danger'],
    ] as const)
      expect(found(bookWith({ lashings: [lashing] }))['lashing-rearward'], JSON.stringify(lashing)).toMatchObject({
        gravity,
      });
  });

  it('makes a job of what can be mended: tyres by their recipe, a thing to be moved by steps', () => {
    const over = bookWith({ barBall_kg: 40 });
    let ids = 0;
    const newId = () => `new-${++ids}`;
    const move = trailerJob(over, found(over)['ball-over-its-limit']!, 'deck', newId);
    expect(move?.job).toMatchObject({
      title: expect.stringMatching(/^Move the outboard/),
      consequence: 'unlawful',
      zone: 'deck',
    });
    const old = bookWith({
      tyres: { ...trailer.tyres!, wheels: [{ wheel: 'Left', spare: false, code: '1019', tread_mm: null }] },
    });
    const change = trailerJob(old, found(old)['tyre-age-1']!, null, newId);
    expect(change?.job).toMatchObject({ recipe: 'trailer-tyres', consequence: 'danger' });
    expect(change?.stores.length).toBeGreaterThan(0);
  });

  it('is never silent about what was looked at: each subject is found or sound', () => {
    const [looked] = trailersLooked(bookWith({ lashings: [] }), today);
    const subjects = new Set([...looked!.findings, ...looked!.sound].map(({ subject }) => subject));
    expect([...subjects].sort()).toEqual(['ball load', 'board', 'lashings', 'masses', 'tyres']);
    expect(looked!.sound.find(({ subject }) => subject === 'masses')).toEqual({
      subject: 'masses',
      words: 'Trailer and load weigh 793 kg (793 to 793); the plate allows 900 kg.',
      from: '2026-05-01',
    });
  });
});
