/** The table of reasons, continued: trailer, stays, hoist, the plan's odds and jobs it leaves out, each of them alone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoardHoistRecord, Book, Outing, StayReading, StayRecord, TrailerRecord } from '#boat-book';
import type { Verdict } from '#fit-to-go';
import { chanceOf } from '#workplan';
import { job, smallBook, step } from '../testing/small-book.ts';
import { carried, trailer } from '../testing/small-trailer.ts';
import { gearFindings } from './gear-findings.ts';
import { outingFit } from './outing-fit.ts';
import type { PlannerKnows } from './planner-knows.ts';

const now = Date.parse('2026-11-26T08:00:00Z');
const byWater: Outing = {
  title: 'Round the buoy',
  date: '2026-11-28',
  from: '09:00',
  nights: 0,
  place: 'The pier',
  wind_kn: 12,
};
const byRoad: Outing = { ...byWater, way: 'road' };

function fitOf(parts: Partial<Book>, going: Outing, knows: PlannerKnows | null = null) {
  const book = smallBook({ outings: { o: going }, ...parts });
  return outingFit(book, 'o', going, now, { gear: gearFindings(book, 'o', now), nights: null, knows }).answer;
}

/** Lashed with enough and well under what the ball may carry, so that nothing is wrong at it. */
const strap = { kind: 'strap', above_deg: 0, aside_deg: 0, capacity_N: 5000, hull_N: 3000 } as const;
const sound: TrailerRecord = {
  ...trailer,
  barBall_kg: 75,
  lashings: [
    { ...strap, id: 'a', name: 'Aft', holds: 'rearward' },
    { ...strap, id: 'm', name: 'Amidships', holds: 'sideways' },
  ],
};
const towed = (parts: Partial<TrailerRecord> = {}): Partial<Book> => ({
  trailers: { road: { ...sound, ...parts } },
  carried,
});
const forestay: StayRecord = {
  name: 'Forestay',
  zone: null,
  laid: '1x19',
  size_mm: 4,
  length_m: 6.4,
  screw: { thread: 'unf-5-16', ends: 'both' },
  aim_pct: 12,
  made: null,
  note: '',
};
const read = (on: string, moment: StayReading['moment'], aside_mm: number, order: number): StayReading => ({
  stay: 'f',
  on,
  moment,
  told: { kind: 'pull', pulledAt_m: 1.5, pull_N: 50, aside_mm },
  turns: 0,
  note: '',
  order,
});
const stay = (after_mm: number): Partial<Book> => ({
  stays: { f: forestay },
  stayReadings: {
    a: read('2026-05-02', 'before towing', 37, 1),
    b: read('2026-05-03', 'after towing', after_mm, 2),
  },
});
const hoist: BoardHoistRecord = {
  name: 'The plate’s hoist',
  zone: null,
  plate: { length_m: 1, breadth_m: 0.4, density_kg_m3: 7850, mass: { kind: 'by its sizes', thickness_mm: 10 } },
  moves: { kind: 'slides', travel_m: 0.8, topAboveWater_m: 0, offMiddle_m: 0, held_m: 0.4 },
  wire: { of: '7x19', size_mm: 4, ending: 'ferrule' },
  leads: { count: 1, bearing: 'plain', sheave_mm: 80 },
  tackles: [{ movingSheaves: 1, fixedSheaves: 1, endAt: 'fixed', bearing: 'plain' }],
  cord: { of: 'polyester-braid', size_mm: 8, ending: 'bowline' },
  winch: null,
  note: '',
};
const heavy: BoardHoistRecord = { ...hoist, plate: { ...hoist.plate, mass: { kind: 'weighed', mass_kg: 90 } } };

describe('each reason of her gear alone', () => {
  const turning: readonly (readonly [what: string, parts: Partial<Book>, going: Outing, verdict: Verdict])[] = [
    ['a ball load over its limit, by road', towed({ barBall_kg: 40 }), byRoad, 'not fit'],
    ['the same where she is towed to the water', towed({ barBall_kg: 40 }), byWater, 'fit with conditions'],
    ['more than the plate of the trailer', towed({ gross_kg: 790 }), byRoad, 'not fit'],
    ['car and trailer too heavy together', towed({ train_kg: 2000 }), byRoad, 'not fit'],
    ['tyres that carry too little', towed({ tyres: { ...trailer.tyres!, loadIndex: 65 } }), byRoad, 'not fit'],
    ['soft tyres', towed({ tyres: { ...trailer.tyres!, pressure_kPa: 200 } }), byRoad, 'fit with conditions'],
    ['a board that hangs on its wire on the road', towed({ boardRests: false }), byRoad, 'not fit'],
    ['a bow post that is too weak', towed({ post_N: 1000 }), byRoad, 'not fit'],
    ['nothing that lashes her', towed({ lashings: [] }), byRoad, 'not fit'],
    // rig-told.test.ts: 1426 N before towing, 766 N after it
    ['a stay that came home slacker', stay(55), byWater, 'fit with conditions'],
    // hoist-told.test.ts: more than a hand gives; the wire too thin as well
    ['a board too heavy for a hand', { boardHoists: { b: heavy } }, byWater, 'fit with conditions'],
    [
      'a board on a wire that is too thin',
      { boardHoists: { b: { ...heavy, wire: { ...heavy.wire, size_mm: 2 } } } },
      byWater,
      'not fit',
    ],
  ];
  for (const [what, parts, going, verdict] of turning)
    it(`${what}`, () => {
      expect(fitOf({}, going).verdict).toBe('nothing known against it');
      expect(fitOf(parts, going).verdict).toBe(verdict);
    });

  const harmless: readonly (readonly [what: string, parts: Partial<Book>, going: Outing])[] = [
    ['a trailer with nothing wrong at it, by road', towed(), byRoad],
    ['the same, by water', towed(), byWater],
    ['a slack stay and a heavy board, on the road', { ...stay(55), boardHoists: { b: heavy } }, byRoad],
    ['a board that a hand hoists', { boardHoists: { b: hoist } }, byWater],
  ];
  for (const [what, parts, going] of harmless)
    it(`is not turned by ${what}`, () => expect(fitOf(parts, going).verdict).toBe('nothing known against it'));

  it('loses none of many', () => {
    const all = { ...towed({ barBall_kg: 40, boardRests: false }), ...stay(55), boardHoists: { b: heavy } };
    const { stops, conditions } = fitOf(all, byWater);
    expect(stops).toEqual([]);
    expect(conditions.map(({ id }) => id).sort()).toEqual([
      'hoist.b',
      'stay.f',
      'trailer.road.ball-over-its-limit',
      'trailer.road.board',
    ]);
    expect(
      fitOf(all, byRoad)
        .stops.map(({ id }) => id)
        .sort(),
    ).toEqual(['trailer.road.ball-over-its-limit', 'trailer.road.board']);
  });
});

it('is never bettered by one more thing wrong in the book', () => {
  const wrongs: readonly Partial<Book>[] = [
    { jobs: { a: job('Gate', { consequence: 'danger' }) } },
    { jobs: { b: job('Cushions', { consequence: 'comfort', outing: 'o' }) } },
    { jobs: { c: job('Halyard', { consequence: 'stops-sailing' }) } },
    { boardHoists: { h: heavy } },
    { boardHoists: { w: { ...heavy, wire: { ...heavy.wire, size_mm: 2 } } } },
    towed({ barBall_kg: 40, gross_kg: 790, lashings: [] }),
    towed({ tyres: { ...trailer.tyres!, pressure_kPa: 200 } }),
    stay(55),
  ];
  const rank: Readonly<Record<Verdict, number>> = {
    'nothing known against it': 0,
    'fit with conditions': 1,
    'not fit': 2,
  };
  const bookOf = (which: readonly number[]): Partial<Book> => {
    const book: Record<string, object> = {};
    for (const at of which)
      for (const [collection, records] of Object.entries(wrongs[at]!))
        book[collection] = Object.assign({}, book[collection], records);
    return book;
  };
  fc.assert(
    fc.property(
      fc.subarray(wrongs.map((_, at) => at).filter((at) => at !== 6)),
      fc.nat(wrongs.length - 1),
      fc.constantFrom(byWater, byRoad),
      (some, more, going) => {
        const before = fitOf(bookOf(some), going);
        // the trailer stands in a book once: what is wrong at it already stays wrong
        const after = fitOf(bookOf(some.includes(5) && more === 6 ? some : [...some, more]), going);
        expect(rank[after.verdict]).toBeGreaterThanOrEqual(rank[before.verdict]);
        const ids = new Set([...after.stops, ...after.conditions].map(({ id }) => id));
        for (const { id } of [...before.stops, ...before.conditions]) expect(ids).toContain(id);
      },
    ),
    { numRuns: 60 },
  );
});

describe('the plan', () => {
  const book: Partial<Book> = {
    jobs: { j: job('Bleed the brakes', { consequence: 'worsens', outing: 'o' }) },
    steps: { s: step('j', 0, 'Bleed them') },
  };
  const knows = (times: number, leftOut: PlannerKnows['leftOut'] = {}): PlannerKnows => ({
    leftOut,
    nothing: null,
    odds: {
      runs: 1000,
      dates: [],
      days: [],
      jobs: { j: { words: 'Done in time in 9 of 10 tries', band: '' } },
      outings: { o: chanceOf(times, 1000) },
    },
  });
  const odds = (known: PlannerKnows | null) =>
    fitOf(book, byWater, known).conditions.filter(({ id }) => id === 'plan.odds');

  it('is a condition where its jobs are done in fewer than nine tries of ten', () => {
    expect(odds(null)).toEqual([]);
    expect(odds(knows(950))).toEqual([]);
    expect(odds(knows(600))).toHaveLength(1);
    expect(odds(knows(600))[0]?.because[0]?.words).toMatch(/^Counting so few tries leaves open 5[67] to 63/);
  });

  it('that knows nothing is told as not looked at', () => {
    const told = fitOf(book, byWater, { leftOut: {}, odds: null, nothing: 'There is no job day ahead.' });
    expect(told.notLooked).toContainEqual({
      subject: 'plan',
      words: 'how likely its jobs are done in time',
      because: 'There is no job day ahead.',
    });
  });

  it('says with a job that it leaves out why it does', () => {
    const plans: Book['plans'] = {
      p: {
        made: '2026-11-26T00:00:00Z',
        order: 1,
        startsAt: '2026-11-26T00:00:00Z',
        plan: { steps: [], waits: [], changes: [], leftOut: ['j'] },
        verdict: { kind: 'stopped early', bound: 1, gap: 0 },
      },
    };
    const why = { why: 'Saturday has an hour too little.', gain: 'Begin at 08:00 and it is in.' };
    const jobs = { j: job('Bleed the brakes', { consequence: 'danger' }) };
    const [first] = fitOf({ ...book, jobs, plans }, byWater, knows(950, { j: why })).toMakeFit;
    expect(first?.inTime?.words).toContain('Saturday has an hour too little. Begin at 08:00 and it is in.');
  });
});
