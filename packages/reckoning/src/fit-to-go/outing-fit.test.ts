import { describe, expect, it } from 'vitest';
import type { Book, DueRecord, JuryRig, LoadPathRecord, Outing } from '#boat-book';
import type { Verdict } from '#fit-to-go';
import { job, smallBook, step } from '../testing/small-book.ts';
import { outingFit } from './outing-fit.ts';

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

const verdictOf = (parts: Partial<Book>, going: Outing = outing) =>
  outingFit(smallBook({ outings: { o: going }, ...parts }), 'o', going, now, null).answer.verdict;

describe('outingFit', () => {
  it('knows nothing against a boat with nothing open, and says what it did not look at', () => {
    const { answer, ifPlanKept } = outingFit(smallBook({ outings: { o: outing } }), 'o', outing, now, null);
    expect(answer.verdict).toBe('nothing known against it');
    expect(answer.notLooked.map(({ subject }) => subject)).toEqual(['dues', 'loads', 'trailer', 'weather']);
    expect(ifPlanKept).toBeNull();
  });

  // each reason alone turns the answer
  it.each<readonly [string, Partial<Book>, Verdict]>([
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
    ['a jury rig on the road', { juryRigs: { r: { ...rig, notOnRoad: true } } }, 'not fit'],
    // 4 mm polyester lashing, two turns: holds 1156 N (load-path-told.test.ts)
    ['a load path that does not hold', { loadPaths: { p: path([lashing], 2000) } }, 'not fit'],
    ['a load path that is not known', { loadPaths: { p: path([plate], 1000) } }, 'fit with conditions'],
    ['safety gear out of its date', { dues: { d: due() } }, 'not fit'],
    ['a due that is no danger', { dues: { d: due({ consequence: 'worsens' }) } }, 'fit with conditions'],
  ])('is turned by %s', (_, parts, verdict) => {
    expect(verdictOf(parts)).toBe(verdict);
  });

  it.each<readonly [string, Partial<Book>]>([
    ['a job that only gets worse', { jobs: { j: job('Varnish') } }],
    [
      'a danger that is mended',
      { jobs: { j: job('Gate', { consequence: 'danger', state: 'done', closed: '2027-05-01' }) } },
    ],
    // a printed date is the last good day
    ['safety gear good to that very day', { dues: { d: due({ printed: '2027-05-20' }) } }],
    ['a load path that holds', { loadPaths: { p: path([lashing], 900) } }],
    ['a jury rig that is out', { juryRigs: { r: { ...rig, trustedUntil: '2027-01-01', state: 'removed' } } }],
  ])('is not turned by %s', (_, parts) => {
    expect(verdictOf(parts)).toBe('nothing known against it');
  });

  it('is turned by more wind than a load path is good to, and by no wind not at all', () => {
    // 900 N at 15 knots grows with the square of the wind: 1156 N at 17
    const loadPaths = { p: path([lashing], 900) };
    expect(verdictOf({ loadPaths }, { ...outing, wind_kn: 16 })).toBe('nothing known against it');
    expect(verdictOf({ loadPaths }, { ...outing, wind_kn: 18 })).toBe('not fit');
    const { answer } = outingFit(smallBook({ loadPaths }), 'o', { ...outing, wind_kn: null }, now, null);
    expect(answer.notLooked.map(({ words }) => words)).toContain('her gear under the wind of that day');
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
    expect(outingFit(smallBook({}), 'o', outing, now, beside).answer.verdict).toBe('not fit');
  });

  it('loses none of many, with reasons that say how old they are', () => {
    const { answer } = outingFit(
      smallBook({
        outings: { o: outing },
        jobs: { a: job('Gate', { consequence: 'danger' }), b: job('Light', { consequence: 'unlawful' }) },
        juryRigs: { r: { ...rig, trustedUntil: '2027-05-19' }, s: rig },
      }),
      'o',
      outing,
      now,
      { findings: [], notLooked: [] },
    );
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
    const { answer, ifPlanKept } = outingFit(full, 'o', outing, now, null);
    expect(answer.toMakeFit.map(({ minutes, mends }) => [minutes, mends])).toEqual([
      [10, ['job.b']],
      // the job takes away what the jury rig stands in for too
      [30, ['job.a', 'jury-rig.r']],
    ]);
    expect(answer.verdict).toBe('not fit');
    // both jobs are over on the 19th, and the rig goes with the job it stands in for
    expect(ifPlanKept?.verdict).toBe('nothing known against it');
    // an hour before the plan has them over it begins: not in time
    const early = { ...outing, date: '2027-05-19', from: '09:00' };
    expect(outingFit({ ...full, outings: { o: early } }, 'o', early, now, null).ifPlanKept).toBeNull();
  });
});
