import { describe, expect, it } from 'vitest';
import type { Book, DueRecord, JuryRig, LoadPathRecord, Outing, PaperRecord, RodeRecord, SetUp } from '#boat-book';
import type { Verdict } from '#fit-to-go';
import { job, smallBook, step, weather } from '../testing/small-book.ts';
import { gearFindings } from './gear-findings.ts';
import { type LookedBeside, outingFit } from './outing-fit.ts';

const now = Date.parse('2027-05-18T08:00:00Z');
const outing: Outing = {
  title: 'Shakedown',
  date: '2027-05-20',
  from: '09:00',
  nights: 0,
  place: 'The pier',
  wind_kn: 15,
};
const rig: JuryRig = {
  title: 'Lashing on the gate',
  job: null,
  zone: 'deck',
  reason: '',
  made: '2027-05-01',
  trustedUntil: '2027-05-31',
  wind_max_kn: null,
  sails_max: null,
  notOnRoad: false,
  state: 'standing',
};
const plain = { name: '', since: null, juryRig: null, marked: null, signs: [] } as const;
/** A lashing of known rope, or one of parts that nobody knows, under a hard sail at 15 knots. */
const path = (parts: LoadPathRecord['parts'], force_N: number): LoadPathRecord => ({
  name: 'Gate',
  use: 'standing-rigging',
  zone: null,
  parts,
  cases: [{ id: 'c', name: 'Hard sail', force_N, wind_kn: 15, from: 'a guess' }],
  note: '',
});
const lashing: LoadPathRecord['parts'][number] = {
  ...plain,
  id: 'l',
  kind: 'lashing',
  fibre: 'polyester',
  size_mm: 4,
  passes: 2,
  since: '2027-01-01',
};
const plate: LoadPathRecord['parts'][number] = {
  ...plain,
  id: 'p',
  kind: 'fitting',
  what: 'chain plate',
  metal: 'stainless',
  eye_mm: 12,
  breaking_N: null,
} as never;
const due = (parts: Partial<DueRecord> = {}): DueRecord =>
  ({
    title: 'Flares',
    zone: null,
    fitting: null,
    consequence: 'unlawful',
    usual: null,
    recipe: null,
    source: 'on the label',
    lastDone: null,
    note: '',
    every: null,
    season: null,
    uses: [],
    condition: null,
    printed: '2027-05-19',
    ...parts,
  }) as DueRecord;

/** All that is looked at in the book itself: beside it the nights and the planner, where a test gives them. */
function fitOf(parts: Partial<Book>, going: Outing = outing, beside: Partial<LookedBeside> = {}) {
  const book = smallBook({ outings: { o: going }, ...parts });
  return outingFit(book, 'o', going, now, { gear: gearFindings(book, 'o', now), nights: null, knows: null, ...beside });
}
const verdictOf = (parts: Partial<Book>, going: Outing = outing) => fitOf(parts, going).answer.verdict;
const gusty: Outing = { ...outing, gust_kn: 19 };
const unsaid: Outing = { ...outing, wind_kn: null };
const byRoad: Outing = { ...outing, way: 'road' };
const paper = (parts: Partial<PaperRecord> = {}): PaperRecord => ({
  title: 'Insurance',
  kind: 'insurance',
  blob: 'b',
  bytes: 1,
  type: 'application/pdf',
  file: 'a.pdf',
  added: '2027-01-01T00:00:00Z',
  expires: '2027-05-19',
  fitting: null,
  job: null,
  note: '',
  ...parts,
});
/** 10 m of 6 mm chain and rope in 3 m of water: in a gale on a light rope it does not hold. */
const rode = (length_m: number): RodeRecord => ({
  name: 'Bower',
  zone: null,
  chain: { size_mm: 6, length_m: 5 },
  rope: { fibre: 'nylon', size_mm: 10, length_m },
  bow_m: 0.8,
  windage_m2: 3,
  below_m2: 0.2,
  limit_deg: 8,
  anchorage: { depth_m: 3, rise_m: 1, fall_m: 0, wind_kn: 10, current_kn: 0.5 },
  path: null,
  note: '',
});
const mast: SetUp = {
  name: 'Mast',
  states: [
    { id: 'd', name: 'down', shelters: false },
    { id: 'u', name: 'up', shelters: false },
  ],
  now: 'd',
  changes: [
    { from: 'd', to: 'u', minutes: 30, hands: 2, needs: { wind_max_kn: 18 }, setUps: [], cautions: ['Look up.'] },
  ],
};

describe('outingFit', () => {
  it('knows nothing against a boat with nothing open, and says what it did not look at', () => {
    const { answer, ifPlanKept } = fitOf({});
    expect(answer.verdict).toBe('nothing known against it');
    expect(answer.notLooked.map(({ subject, words }) => `${subject}: ${words}`)).toEqual([
      'jobs: what nobody has put in the book',
      'dues: what falls due, and the dates printed on her safety gear',
      'papers: her registration',
      'papers: her insurance',
      'power: whether the battery lasts the day',
      'loads: what her gear bears',
      'loads: whether her anchor holds',
      'trailer: ball load, tyres and lashings',
      'weather: the weather of its days',
      'weather: fog, thunder, sea and tide',
    ]);
    expect(ifPlanKept).toBeNull();
  });

  // each reason alone turns the answer
  const turning: readonly (readonly [string, Partial<Book>, Verdict, Outing?])[] = [
    ['an open danger', { jobs: { j: job('Gate', { consequence: 'danger' }) } }, 'not fit'],
    ['what is unlawful', { jobs: { j: job('Light', { consequence: 'unlawful' }) } }, 'not fit'],
    ['what stops sailing', { jobs: { j: job('Halyard', { consequence: 'stops-sailing' }) } }, 'not fit'],
    [
      'a job the keeper wants done for it',
      { jobs: { j: job('Cushions', { consequence: 'comfort', outing: 'o' }) } },
      'fit with conditions',
    ],
    ['a jury rig within its trust', { juryRigs: { r: rig } }, 'fit with conditions'],
    ['a jury rig past its date', { juryRigs: { r: { ...rig, trustedUntil: '2027-05-19' } } }, 'not fit'],
    ['a jury rig in more wind than it is good to', { juryRigs: { r: { ...rig, wind_max_kn: 14 } } }, 'not fit'],
    ['a jury rig that is not to be sailed with', { juryRigs: { r: { ...rig, sails_max: 0 } } }, 'not fit'],
    ['a jury rig on the road', { juryRigs: { r: { ...rig, notOnRoad: true } } }, 'not fit', byRoad],
    ['a jury rig in gusts it is not good to', { juryRigs: { r: { ...rig, wind_max_kn: 18 } } }, 'not fit', gusty],
    [
      'a jury rig in wind that only the weather in the book tells of',
      { juryRigs: { r: { ...rig, wind_max_kn: 18 } }, weather: { w: weather('2027-05-20', { wind_kn: 19 }) } },
      'not fit',
      unsaid,
    ],
    ['insurance that has run out', { papers: { p: paper() } }, 'not fit'],
    ['a survey that has run out', { papers: { p: paper({ kind: 'survey' }) } }, 'fit with conditions'],
    ['a rode too short for a night', { rodes: { a: rode(5) } }, 'not fit', { ...outing, nights: 1 }],
    ['a rode too short by day', { rodes: { a: rode(5) } }, 'fit with conditions'],
    ['a mast that takes more hands than go', { setUps: { m: mast } }, 'fit with conditions', { ...outing, crew: 1 }],
    ['a mast that goes up in less wind', { setUps: { m: mast } }, 'fit with conditions', gusty],
    [
      'more wind in the weather than was written down',
      { weather: { w: weather('2027-05-20', { wind_kn: 16 }) } },
      'fit with conditions',
    ],
    // 4 mm polyester lashing, two turns: holds 1156 N (load-path-told.test.ts)
    ['a load path that does not hold', { loadPaths: { p: path([lashing], 2000) } }, 'not fit'],
    ['a load path that is not known', { loadPaths: { p: path([plate], 1000) } }, 'fit with conditions'],
    ['safety gear out of its date', { dues: { d: due() } }, 'not fit'],
    ['a due that is no danger', { dues: { d: due({ consequence: 'worsens' }) } }, 'fit with conditions'],
  ];
  for (const [what, parts, verdict, going = outing] of turning)
    it(`is turned by ${what}`, () => {
      expect(verdictOf({}, going)).toBe('nothing known against it');
      expect(verdictOf(parts, going)).toBe(verdict);
    });

  const harmless: readonly (readonly [string, Partial<Book>, Outing?])[] = [
    ['a rode that is long enough', { rodes: { a: rode(40) } }, { ...outing, nights: 1 }],
    ['a mast that enough go for, in a calm', { setUps: { m: mast } }, { ...outing, crew: 2 }],
    ['a mast and a rode, on the road', { setUps: { m: mast }, rodes: { a: rode(5) } }, { ...byRoad, crew: 1 }],
    ['a path that does not hold, on the road', { loadPaths: { p: path([lashing], 2000) } }, byRoad],
    ['a paper good to the last day', { papers: { p: paper({ expires: '2027-05-20' }) } }],
    ['a paper that a newer one replaces', { papers: { p: paper(), q: paper({ expires: '2028-05-01' }) } }],
    ['weather as it was written down', { weather: { w: weather('2027-05-20', { wind_kn: 15 }) } }],
    ['weather of other days', { weather: { w: weather('2027-05-21', { wind_kn: 40 }) } }],
    ['a job that only gets worse', { jobs: { j: job('Varnish') } }],
    [
      'a danger that is mended',
      { jobs: { j: job('Gate', { consequence: 'danger', state: 'done', closed: '2027-05-01' }) } },
    ],
    // a printed date is the last good day
    ['safety gear good to that very day', { dues: { d: due({ printed: '2027-05-20' }) } }],
    ['a load path that holds', { loadPaths: { p: path([lashing], 900) } }],
    ['a jury rig that is out', { juryRigs: { r: { ...rig, trustedUntil: '2027-01-01', state: 'removed' } } }],
  ];
  for (const [what, parts, going = outing] of harmless)
    it(`is not turned by ${what}`, () => expect(verdictOf(parts, going)).toBe('nothing known against it'));

  it('is turned by more wind than a load path is good to, and by no wind not at all', () => {
    // 900 N at 15 knots grows with the square of the wind: 1156 N at 17
    const loadPaths = { p: path([lashing], 900) };
    expect(verdictOf({ loadPaths }, { ...outing, wind_kn: 16 })).toBe('nothing known against it');
    expect(verdictOf({ loadPaths }, { ...outing, wind_kn: 18 })).toBe('not fit');
    const { answer } = fitOf({ loadPaths }, unsaid);
    expect(answer.notLooked.map(({ words }) => words)).toContain('her gear under the wind of that day');
  });

  it('names the open job of a load path that fails, and asks for no second one', () => {
    const loadPaths = { p: { ...path([lashing], 2000), name: 'Port runner' } };
    const mends = (jobs: Book['jobs'], steps: Book['steps'] = {}) =>
      fitOf({ loadPaths, jobs, steps })
        .answer.stops.find(({ id }) => id === 'load-path.p')!
        .remedies.flatMap(({ of }) => of ?? []);
    expect(mends({})).toEqual([{ collection: 'loadPaths', id: 'p' }]);
    const others = {
      a: job('Oil the tiller'),
      b: job('Whip the port runner', { state: 'done', closed: '2027-05-01' }),
    };
    expect(mends(others)).toEqual([{ collection: 'loadPaths', id: 'p' }]);
    const ofIt = { ...others, c: job('Whip the port runner'), d: job('Make the port runner good') };
    expect(mends(ofIt)).toEqual([{ collection: 'jobs', id: 'c' }]);
    // of two, the one that says the part that fails
    expect(mends(ofIt, { s: step('d', 0, 'A new lashing') })).toEqual([{ collection: 'jobs', id: 'd' }]);
  });

  it('is turned by a battery that does not last, as it is worked out beside', () => {
    const beside = {
      findings: [
        {
          id: 'battery.b',
          subject: 'power',
          bearing: 'stops',
          words: '',
          because: [],
          remedies: [],
          cautions: [],
          of: null,
        },
      ],
      notLooked: [],
    } as const;
    expect(fitOf({}, outing, { nights: beside }).answer.verdict).toBe('not fit');
  });

  it('loses none of many, with reasons that say how old they are', () => {
    const { answer } = fitOf({
      jobs: { a: job('Gate', { consequence: 'danger' }), b: job('Light', { consequence: 'unlawful' }) },
      juryRigs: { r: { ...rig, trustedUntil: '2027-05-19' }, s: rig },
    });
    expect(answer.stops.map(({ id }) => id)).toEqual(['job.a', 'job.b', 'jury-rig.r']);
    expect(answer.conditions.map(({ id }) => id)).toEqual(['jury-rig.s']);
    expect(answer.stops[0]?.because).toContainEqual({
      words: 'Left as it is, it is a danger to people.',
      from: '2026-05-01',
    });
  });

  it('tells least work first, and what comes of it if the plan is kept', () => {
    const steps = {
      s: step('a', 0, 'Splice it'),
      t: step('b', 0, 'Wire it', { minutes: { low: 5, likely: 10, high: 20 } }),
    };
    const full = smallBook({
      outings: { o: outing },
      jobs: { a: job('Gate', { consequence: 'danger' }), b: job('Light', { consequence: 'unlawful' }) },
      steps,
      juryRigs: { r: { ...rig, job: 'a', trustedUntil: '2027-05-19' } },
      plans: {
        p: {
          made: '2027-05-18T00:00:00Z',
          order: 1,
          startsAt: '2027-05-19T00:00:00Z',
          plan: {
            steps: ['s', 't'].map((id) => ({
              step: id,
              start: 540,
              finish: 570,
              hands: ['keeper'],
              day: 'd',
              batchOf: null,
              abrade_min: 0,
            })),
            waits: [],
            changes: [],
            leftOut: [],
          },
          verdict: { kind: 'stopped early', bound: 1, gap: 0 },
        },
      },
    });
    const { answer, ifPlanKept } = fitOf(full);
    expect(answer.toMakeFit.map(({ minutes, mends, inTime }) => [minutes, mends, inTime?.kind])).toEqual([
      [10, ['job.b'], 'in time'],
      // the job takes away what the jury rig stands in for too
      [30, ['job.a', 'jury-rig.r'], 'in time'],
      [null, ['jury-rig.r'], undefined],
    ]);
    expect(answer.least).toMatchObject({ minutes: 40, notKnown: 0, conditions: [] });
    expect(answer.verdict).toBe('not fit');
    // both jobs are over on the 19th, and the rig goes with the job it stands in for
    expect(ifPlanKept?.verdict).toBe('nothing known against it');
    // an hour before the plan has them over it begins: not in time
    const early = { ...outing, date: '2027-05-19', from: '09:00' };
    expect(fitOf({ ...full, outings: { o: early } }, early).ifPlanKept).toBeNull();
  });
});
