/**
 * An invented book of many years, from a seed: 500 jobs, 2,000 steps, 60 fittings, 5,000 entries in the log, 500 photographs and 20
 * papers, and 200,000 readings in a block. The same seed gives the same book.
 */
import { type Book, contentId, emptyBook, type Id, type LogEntry, type LogKind, sha256 } from '#boat-book';
import { blockBytes } from '#readings';
import { numbersFrom } from './keeper-problems.ts';

export interface BigBook {
  readonly book: Book;
  readonly blobs: ReadonlyMap<string, Uint8Array>;
}

export const bigSizes = { jobs: 500, entries: 5_000, photos: 500, papers: 20, readings: 200_000 } as const;

const first_ms = Date.UTC(2018, 3, 1);
const last_ms = Date.UTC(2026, 4, 1);
const photo_bytes = 2_000;

const zones = ['Foredeck', 'Mast', 'Side decks', 'Cockpit', 'Board case', 'Rudder', 'Cabin', 'Trailer', 'Outboard'];
const things = ['Stem fitting', 'Pad eye', 'Cleat', 'Fairlead', 'Hatch', 'Window', 'Hinge', 'Rail', 'Drain', 'Block'];
const sides = ['port', 'starboard', 'forward', 'after', 'upper', 'lower', 'middle'];
const faults = ['weeps', 'is loose', 'is cracked', 'squeaks', 'is seized', 'chafes', 'is worn', 'has lost its paint'];
const stuffs = [
  'butyl tape',
  'polysulphide',
  'thick epoxy',
  'waterproof grease',
  'two-part varnish',
  'neutral silicone',
];
const acts = [
  'Took off',
  'Cleaned',
  'Drilled out',
  'Filled',
  'Sanded',
  'Rebedded',
  'Greased',
  'Renewed',
  'Looked over',
];
const seen = [
  'dry underneath',
  'core sound',
  'two threads bare',
  'some rust',
  'nothing to see',
  'wet at the after bolt',
];
const kinds: readonly LogKind[] = [
  'step done',
  'step done',
  'step done',
  'note',
  'measured',
  'got',
  'bedded',
  'job done',
];

export function bigBook(seed: number): BigBook {
  const chance = numbersFrom(seed);
  const one = <T>(of: readonly T[]): T => of[Math.floor(chance() * of.length)]!;
  const when = (share: number): string => new Date(first_ms + share * (last_ms - first_ms)).toISOString();
  const blobs = new Map<string, Uint8Array>();
  const boat = { ...anyBoat, name: 'Dabchick' };
  const book = emptyBook(`big-${seed}`, boat);
  const put = <T>(records: readonly (readonly [Id, T])[]): Readonly<Record<Id, T>> => Object.fromEntries(records);
  const fixed = <T extends object>(records: readonly T[]): Readonly<Record<Id, T>> =>
    put(
      records.map((record, i) => ({ ...record, order: i + 1 })).map((record) => [contentId(record), record] as const),
    );

  const zoneIds = zones.map((_, z) => `zone${z}`);
  const fittings = Array.from({ length: 60 }, (_, f) => ({
    name: `${one(sides)} ${one(things).toLowerCase()} ${f + 1}`,
    zone: one(zoneIds),
    size: `M${5 + Math.floor(chance() * 6)}, ${2 + Math.floor(chance() * 5)} bolts`,
    beddedWith: chance() < 0.6 ? one(stuffs) : '',
    note: '',
  }));
  const jobs = Array.from({ length: bigSizes.jobs }, (_, j) => {
    const fitting = Math.floor(chance() * fittings.length);
    const opened = when(j / bigSizes.jobs).slice(0, 10);
    const open = j >= 400;
    return {
      title: `${fittings[fitting]!.name} ${one(faults)}`,
      why: one(seen),
      zone: fittings[fitting]!.zone,
      fitting: `fitting${fitting}`,
      consequence: one(['danger', 'stops-sailing', 'worsens', 'worsens', 'comfort'] as const),
      opened,
      due: null,
      outing: null,
      state: open ? ('open' as const) : ('done' as const),
      closed: open ? null : opened,
      note: '',
      said: '',
      heldTo: null,
      heldAt: null,
      afterJobs: [],
    };
  });
  const steps = jobs.flatMap((job, j) =>
    acts.slice(0, 4).map((act, s) => ({
      job: `job${j}`,
      order: s,
      title: `${act} the ${one(things).toLowerCase()}`,
      minutes: { low: 10, likely: 25, high: 50 },
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
      progress:
        job.state === 'open'
          ? { kind: 'open' as const }
          : { kind: 'done' as const, started: `${job.opened}T09:00:00Z`, finished: `${job.opened}T10:00:00Z` },
    })),
  );
  const log = Array.from({ length: bigSizes.entries }, (_, n): LogEntry => {
    const j = Math.floor((n / bigSizes.entries) * jobs.length);
    const job = jobs[j]!;
    const kind = one(kinds);
    const stuff = one(stuffs);
    const done = kind === 'step done';
    return {
      at: when(n / bigSizes.entries),
      kind,
      job: `job${j}`,
      step: done ? `step${j * 4 + Math.floor(chance() * 4)}` : null,
      zone: job.zone,
      who: chance() < 0.8 ? 'Ilka' : 'Bram',
      spent_min: done ? 10 + Math.floor(chance() * 90) : null,
      text:
        kind === 'bedded'
          ? `${job.title}: bedded with ${stuff}, ${one(seen)}`
          : kind === 'got'
            ? `${stuff}, two of them`
            : `${one(acts)} the ${one(sides)} ${one(things).toLowerCase()}: ${one(seen)}, ${one(seen)}`,
      fitting: job.fitting,
      ...(kind === 'bedded' || kind === 'got' ? { with: [{ name: stuff, amount: 1 + Math.floor(chance() * 3) }] } : {}),
      ...(kind === 'got' ? { cost: { amount: Math.round(chance() * 9_000) / 100, currency: 'EUR' } } : {}),
    };
  });
  const keep = (bytes: Uint8Array): string => {
    const blob = sha256(bytes);
    blobs.set(blob, bytes);
    return blob;
  };
  const bytesOf = (n: number, length: number): Uint8Array =>
    Uint8Array.from({ length }, (_, i) => [0xff, 0xd8, 0xff][i] ?? (i * 7 + n) % 251);
  const photos = Array.from({ length: bigSizes.photos }, (_, n) => ({
    blob: keep(bytesOf(n, photo_bytes)),
    bytes: photo_bytes,
    width_px: 1600,
    height_px: 1200,
    taken: when(n / bigSizes.photos),
    job: `job${n}`,
    step: null,
    fitting: jobs[n]!.fitting,
    entry: null,
    shows: one(['before', 'after', 'proof'] as const),
    words: one(seen),
    position: null,
  }));
  const papers = Array.from({ length: bigSizes.papers }, (_, n) => ({
    title: `Manual of the ${one(things).toLowerCase()} ${n + 1}`,
    kind: 'manual' as const,
    blob: keep(bytesOf(1_000 + n, 5_000)),
    bytes: 5_000,
    type: 'image/jpeg' as const,
    file: `paper-${n}.jpg`,
    added: when(n / bigSizes.papers),
    expires: null,
    fitting: `fitting${n}`,
    job: null,
    note: '',
  }));
  const at = Float64Array.from({ length: bigSizes.readings }, (_, i) => last_ms - (bigSizes.readings - i) * 120_000);
  const volts = Float32Array.from(at, (_, i) => 12.5 + 0.3 * Math.sin(i / 360));
  const block = blockBytes({ at, volts, current: null, air: null });
  return {
    blobs,
    book: {
      ...book,
      places: { drive: anyPlace },
      zones: put(zones.map((name, z) => [`zone${z}`, zoneNamed(name, z)] as const)),
      fittings: put(fittings.map((fitting, f) => [`fitting${f}`, fitting] as const)),
      batteries: { house: anyBattery },
      jobs: put(jobs.map((job, j) => [`job${j}`, job] as const)),
      steps: put(steps.map((step, s) => [`step${s}`, step] as const)),
      papers: put(papers.map((paper, n) => [`paper${n}`, paper] as const)),
      photos: fixed(photos),
      log: fixed(log),
      readingBlocks: fixed([
        {
          battery: 'house',
          blob: keep(block),
          from: new Date(at[0]!).toISOString(),
          to: new Date(at.at(-1)!).toISOString(),
          count: bigSizes.readings,
          columns: ['volts' as const],
          file: 'logger.csv',
        },
      ]),
    },
  };
}

const zoneNamed = (name: string, z: number) => ({
  name,
  words: [],
  room: 2,
  inside: name === 'Cabin',
  near: [],
  along: z / zones.length,
  up: 1,
});
const anyPlace = {
  name: 'The drive',
  latitude_deg: 50,
  longitude_deg: -4,
  timeZone: 'Europe/London',
  features: [],
  sheltered: false,
};
const anyBattery = {
  name: 'House battery',
  zone: null,
  chemistry: 'agm',
  nominal_Ah: 17,
  nominal_V: 12,
  made: null,
  floor_pct: 50,
  meter: '',
  note: '',
} as const;
const anyBoat = {
  keeper: 'Ilka',
  demo: false,
  length_m: 5.6,
  beam_m: 2.2,
  mastHeight_m: 7,
  mastFromBow_m: 2,
  boom_m: 2.4,
  freeboard_m: 0.6,
  draft_m: 0.25,
  draftBoardDown_m: 1.2,
  cabin: true,
  board: 'pivoting',
} as const;
