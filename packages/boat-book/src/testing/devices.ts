/** Books on several devices, for tests: ids and clocks that are the same on every run. */
import { expect } from 'vitest';
import { emptyBook } from '../empty-book.ts';
import type { BoardHoistRecord } from '../hoist-records.ts';
import type { LoadPathRecord } from '../load-records.ts';
import { type BookSurroundings, beginBook, type OpenBook, openBook } from '../open-book.ts';
import type { OperationOutcome } from '../operation-fields.ts';
import type { PhotoRecord } from '../photo-records.ts';
import type { BatteryRecord, ReadingRecord } from '../power-records.ts';
import type { Boat, Zone } from '../records.ts';
import type { TinRecord } from '../tin-records.ts';

export const boat: Boat = {
  name: 'Dabchick',
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
};

export const zone: Zone = { name: 'Foredeck', words: [], room: 1, inside: false, near: [], along: 0.2, up: 1 };
export const step = { title: 'Take off the plate', minutes: { low: 10, likely: 20, high: 30 }, hands: 1 };
export const jobDay = {
  date: '2026-05-09',
  from: '09:00',
  to: '17:00',
  place: 'drive',
  setOut_min: 20,
  clearUp_min: 20,
  breaks: [],
  hands: [],
  endsIn: [],
};
export const place = {
  name: 'The drive',
  latitude_deg: 50,
  longitude_deg: -4,
  timeZone: 'UTC',
  features: [],
  sheltered: false,
};

export const battery: BatteryRecord = {
  name: 'The battery',
  zone: null,
  chemistry: 'agm',
  nominal_Ah: 17,
  nominal_V: 12,
  made: '2024-03-01',
  floor_pct: 50,
  meter: 'the hand-held meter',
  note: '',
};
export const loadPath: LoadPathRecord = {
  name: 'Anchor rode',
  use: 'ground-tackle',
  zone: null,
  parts: [
    {
      id: 'line',
      kind: 'rope',
      fibre: 'nylon',
      size_mm: 10,
      name: '',
      since: '2024-04-20',
      juryRig: null,
      marked: null,
      signs: ['chafed'],
    },
    {
      id: 'shackle',
      kind: 'shackle',
      make: 'stainless',
      size_mm: 8,
      pin_mm: 8,
      jaw_mm: null,
      moused: false,
      name: 'Anchor shackle',
      since: null,
      juryRig: null,
      marked: { force_kN: 20, as: 'breaking load', by: 'stamped on it' },
      signs: null,
    },
  ],
  cases: [{ id: 'gale', name: 'At anchor', force_N: 1200, wind_kn: 30, from: 'worked out' }],
  note: '',
};
export const reading: ReadingRecord = {
  battery: 'b1',
  at: '2026-05-02T04:30:00Z',
  volts: 12.55,
  current_A: null,
  air_C: 9,
  circumstance: 'rested',
  on: [],
  panelDark: true,
  by: 'hand',
};

export const boardHoist: BoardHoistRecord = {
  name: 'The plate',
  zone: null,
  plate: { length_m: 1.1, breadth_m: 0.4, density_kg_m3: 7850, mass: { kind: 'by its sizes', thickness_mm: 10 } },
  moves: {
    kind: 'turns',
    massAlong_m: 0.55,
    massSquare_m: 0,
    attachedAlong_m: 0.9,
    attachedSquare_m: 0.1,
    leadAft_m: 0.7,
    leadUp_m: 0.6,
    down_deg: 65,
    up_deg: 0,
  },
  wire: { of: '7x19', size_mm: 4, ending: 'ferrule' },
  leads: { count: 1, bearing: 'plain', sheave_mm: 40 },
  tackles: [{ movingSheaves: 1, fixedSheaves: 1, endAt: 'fixed', bearing: 'plain' }],
  cord: { of: 'polyester-braid', size_mm: 8, ending: null },
  winch: null,
  note: '',
};

export const photo: PhotoRecord = {
  blob: '0'.repeat(64),
  bytes: 240_000,
  width_px: 1600,
  height_px: 1200,
  taken: '2026-05-02T08:55:00Z',
  job: null,
  step: null,
  fitting: null,
  entry: null,
  shows: 'before',
  words: 'The plate as it was',
  position: null,
};

export const tin: TinRecord = {
  name: 'Varnish, the round tin',
  family: 'varnish-one-pot',
  store: null,
  readOn: '2026-05-02',
  nextCoat: { hours: 24, at_C: 23 },
  latestCoat_h: 72,
  worked: null,
  full: { hours: 168, at_C: 23 },
  firstDay_mm: null,
  minimum_C: 10,
  humidity_max_pct: 75,
  potLife: null,
  ratio: null,
  spread_m2_l: 14,
  strokePair_g: null,
  note: '',
};

let sessions = 0;

/** What a device gives a book; `clock` is how far its clock is out. [years] */
export function surroundings(name: string, clock = 0): BookSurroundings {
  let ids = 0;
  let now = Date.UTC(2026 + clock, 4, 2, 9);
  return {
    session: ++sessions,
    newId: () => `${name}${++ids}`,
    now: () => {
      now += 60_000;
      return now;
    },
    timeZone: 'UTC',
  };
}

export const begun = (): OpenBook => beginBook(emptyBook('book1', boat), 'birth1', surroundings('a'));

/** The same book on another device. */
export const also = (book: OpenBook, name: string, clock = 0): OpenBook =>
  openBook([book.states()], surroundings(name, clock));

/** All devices meet and tell each other everything. */
export function meet(...books: OpenBook[]): void {
  const states = books.map((book) => book.states());
  for (const book of books) for (const state of states) book.takeIn(state);
  for (const book of books) {
    expect(book.view()).toEqual(books[0]!.view());
    expect(book.questions()).toEqual(books[0]!.questions());
  }
}

/** The id of what an operation put in; the test fails where it was refused. */
export function done(outcome: OperationOutcome): string {
  expect(outcome).toMatchObject({ kind: 'done' });
  return outcome.kind === 'done' ? (outcome.id ?? '') : '';
}
