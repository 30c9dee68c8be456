/** Small invented books for the tests: one place on the meridian at 50° north, one zone, what each test adds. */
import type { Book, Job, JobDay, Step, WaitRecord, WeatherEntry } from '#boat-book';

export function smallBook(parts: Partial<Book> = {}): Book {
  return {
    format: 'fettle-boat-book',
    version: 5,
    id: 'book',
    boat: {
      name: 'Test boat',
      keeper: 'The keeper',
      demo: false,
      length_m: 5.6,
      beam_m: 2.2,
      mastHeight_m: 7,
      mastFromBow_m: 2,
      boom_m: 2.5,
      freeboard_m: 0.7,
      draft_m: 0.25,
      draftBoardDown_m: 1.2,
      cabin: true,
      board: 'pivoting',
    },
    places: {
      yard: {
        name: 'Driveway',
        latitude_deg: 50,
        longitude_deg: 0,
        timeZone: 'Europe/London',
        features: ['water', 'mains'],
        sheltered: false,
      },
    },
    zones: { deck: { name: 'Foredeck', words: [], room: 1, inside: false, near: [], along: 0.2, up: 1 } },
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
    ...parts,
  };
}

export function job(title: string, parts: Partial<Job> = {}): Job {
  return {
    title,
    why: '',
    zone: 'deck',
    fitting: null,
    consequence: 'worsens',
    opened: '2026-05-01',
    due: null,
    outing: null,
    state: 'open',
    closed: null,
    note: '',
    said: '',
    heldTo: null,
    heldAt: null,
    afterJobs: [],
    ...parts,
  };
}

export function step(jobId: string, order: number, title: string, parts: Partial<Step> = {}): Step {
  return {
    job: jobId,
    order,
    title,
    minutes: { low: 20, likely: 30, high: 60 },
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
    progress: { kind: 'open' },
    ...parts,
  };
}

export function soak(id: string, minutes: number): WaitRecord {
  return {
    id,
    title: 'Soak',
    law: { kind: 'set time', minutes, from: 'our assumption' },
    needs: {},
    setUps: [],
    still: [],
    wet: false,
  };
}

export function jobDay(date: string, parts: Partial<JobDay> = {}): JobDay {
  return {
    date,
    from: '09:00',
    to: '17:00',
    place: 'yard',
    setOut_min: 15,
    clearUp_min: 20,
    breaks: [],
    hands: [],
    endsIn: [],
    ...parts,
  };
}

export function weather(date: string, parts: Partial<WeatherEntry> = {}): WeatherEntry {
  return {
    place: 'yard',
    date,
    fromHour: 8,
    toHour: 20,
    rain: false,
    rainOdds_pct: null,
    wind_kn: 6,
    air_C: 16,
    surface_C: null,
    humidity_pct: 65,
    basis: 'typed',
    entered: '2026-05-07T18:00:00Z',
    ...parts,
  };
}
