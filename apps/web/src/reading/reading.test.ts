/** What the screens read from a book; what is expected follows by hand from the rule each test names. */
import { describe, expect, it } from 'vitest';
import type { Book, Job } from '#boat-book';
import { minutesLeft, openJobs, stepsOf, waitsFor } from './open-work.ts';
import { jobsByZone, workShown } from './work-shown.ts';

const job = (part: Partial<Job>): Job => ({
  title: 'a job',
  why: '',
  zone: null,
  fitting: null,
  consequence: 'comfort',
  opened: '2027-01-01',
  due: null,
  outing: null,
  state: 'open',
  closed: null,
  note: '',
  said: '',
  heldTo: null,
  heldAt: null,
  afterJobs: [],
  ...part,
});
const book = (part: Partial<Book>): Book => ({
  format: 'fettle-boat-book',
  version: 5,
  id: 'b',
  boat: {
    name: 'Bramble',
    keeper: '',
    demo: false,
    length_m: 5,
    beam_m: 2,
    mastHeight_m: 6,
    mastFromBow_m: 2,
    boom_m: 2,
    freeboard_m: 0.6,
    draft_m: 0.2,
    draftBoardDown_m: 1,
    cabin: true,
    board: 'pivoting',
  },
  places: {},
  zones: {},
  fittings: {},
  setUps: {},
  tools: {},
  mixes: {},
  tins: {},
  weights: { danger: 100, unlawful: 30, 'stops-sailing': 30, worsens: 10, comfort: 3 },
  batteries: {},
  panels: {},
  chargers: {},
  circuits: {},
  loadPaths: {},
  stays: {},
  masts: {},
  rodes: {},
  boardHoists: {},
  recipes: {},
  jobs: {},
  steps: {},
  juryRigs: {},
  jobDays: {},
  weather: {},
  outings: {},
  morningLines: {},
  morningTicks: {},
  stowages: {},
  stores: {},
  readings: {},
  readingBlocks: {},
  loadTests: {},
  nightsAhead: {},
  stayReadings: {},
  hoistForces: {},
  trailers: {},
  carried: {},
  ballWeighings: {},
  papers: {},
  timers: {},
  dues: {},
  uses: {},
  dueMeasures: {},
  seasonTicks: {},
  forecasts: {},
  rigTrusts: {},
  photos: {},
  plans: {},
  log: {},
  ...part,
});

describe('open work', () => {
  it('stands by consequence, then by date', () => {
    const jobs = {
      c: job({ consequence: 'comfort' }),
      late: job({ consequence: 'worsens', due: '2027-08-01' }),
      soon: job({ consequence: 'worsens', due: '2027-06-01' }),
      d: job({ consequence: 'danger' }),
      gone: job({ consequence: 'danger', state: 'dropped' }),
    };
    expect(openJobs(book({ jobs })).map(({ id }) => id)).toEqual(['d', 'soon', 'late', 'c']);
  });

  it('stands by zone from the bow aft, and what has no zone comes last', () => {
    const zone = (name: string, along: number) => ({ name, along, words: [], room: 1, inside: false, near: [], up: 0 });
    const jobs = { a: job({ zone: 'stern' }), b: job({ zone: 'bow' }), n: job({}) };
    const groups = jobsByZone(
      workShown(book({ jobs, zones: { stern: zone('Stern', 1), bow: zone('Bow', 0), empty: zone('Cabin', 0.5) } })),
    );
    expect(groups.map(({ name }) => name)).toEqual(['Bow', 'Stern', 'no zone given']);
  });

  it('counts the minutes of steps that are not done, and names what is not in stores', () => {
    const step = (part: object) => ({
      job: 'j',
      order: 0,
      title: 's',
      minutes: { low: 10, likely: 20, high: 40 },
      hands: 1,
      keeper: true,
      notAlone: false,
      zone: null,
      needs: {},
      features: [],
      tools: [],
      setUps: [],
      stores: [],
      dusty: false,
      wet: false,
      mix: null,
      waits: [],
      follows: null,
      cautions: [],
      progress: { kind: 'open' as const },
      ...part,
    });
    const full = book({
      jobs: { j: job({}) },
      steps: {
        two: step({ order: 1, stores: ['bolt', 'tape'], notAlone: true }),
        one: step({ progress: { kind: 'done', started: '2027-01-01T00:00:00Z', finished: '2027-01-01T01:00:00Z' } }),
      },
      stores: {
        bolt: { name: 'M8 bolt', keptAt: '', onHand: false, expected: '2027-05-12', lead_days: null, note: '' },
        tape: { name: 'tape', keptAt: 'locker', onHand: true, expected: null, lead_days: null, note: '' },
      },
    });
    const steps = stepsOf(full, 'j');
    expect(steps.map(({ id }) => id)).toEqual(['one', 'two']);
    expect(minutesLeft(steps)).toBe(20);
    expect(waitsFor(full, { id: 'j', job: full.jobs.j! }, steps)).toEqual({
      stores: [{ name: 'M8 bolt', expected: '2027-05-12' }],
      jobs: [],
      secondHand: true,
      setUps: [],
    });
  });
});
