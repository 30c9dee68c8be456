/**
 * Books of earlier versions, brought up to this one. A migration says from which version it leads, and changes the
 * plain book as it was stored then; it knows nothing of today's types, so that it stays true when they change.
 */
import { withFieldsOfVersion2 } from './added-fields.ts';
import { bookVersion } from './book-schema.ts';
import type { Json } from './operation-fields.ts';

export interface Migration {
  /** it takes a book of this version to the next */
  readonly from: number;
  /** what changes for the keeper, in one sentence, for the notes of an opened file */
  readonly does: string;
  readonly change: (book: { readonly [key: string]: Json }) => { readonly [key: string]: Json };
}

const emptyOfVersion3 = {
  batteries: {},
  panels: {},
  chargers: {},
  circuits: {},
  readings: {},
  readingBlocks: {},
  loadTests: {},
  nightsAhead: {},
};

const emptyOfVersion4 = {
  loadPaths: {},
  stays: {},
  masts: {},
  stayReadings: {},
  rodes: {},
  boardHoists: {},
  hoistForces: {},
};

/** What came while version 5 was being written: a book of it that was kept before has none of them. */
export const emptyOfVersion5 = {
  timers: {},
  photos: {},
  stowages: {},
  tins: {},
  papers: {},
  dues: {},
  uses: {},
  dueMeasures: {},
  seasonTicks: {},
  forecasts: {},
  morningLines: {},
  morningTicks: {},
  rigTrusts: {},
  recipes: {},
  trailers: {},
  carried: {},
  ballWeighings: {},
};

/** Version 1 is the first; there is nothing earlier to bring up. */
export const migrations: readonly Migration[] = [
  {
    from: 1,
    does: 'a job can be held to a time of day, a store has the days it takes to get, and weather has its chance of rain. None of them is given yet.',
    change: withFieldsOfVersion2,
  },
  {
    from: 2,
    does: 'batteries, panels, chargers, circuits and their readings have a place in the book. None is in it yet.',
    change: (book) => ({ ...emptyOfVersion3, ...book }),
  },
  {
    from: 3,
    does: 'load paths, the board’s hoist, stays with their readings, masts and rodes have a place in the book. None is in it yet.',
    change: (book) => ({ ...emptyOfVersion4, ...book }),
  },
  {
    from: 4,
    does: 'the log can say to which fitting a thing was done, with what, what it cost, and which entry it puts right; photographs, papers, timers, what products’ own tins say, recipes of the keeper’s own, what falls due with the uses it hangs on, the morning lists of an outing, the trailer with what stands on it, and the places things are kept in have a place in the book, and a store its amount, dates and price. What was written before stands as it was.',
    change: (book) => ({ ...emptyOfVersion5, ...book }),
  },
];

/**
 * A book brought up to `to`, and what was done on the way.
 * @throws RangeError when no migration leads on from a version on the way: the list has a gap
 */
export function migrated(
  book: { readonly [key: string]: Json },
  from: number,
  to: number = bookVersion,
  list: readonly Migration[] = migrations,
): { readonly book: { readonly [key: string]: Json }; readonly notes: readonly string[] } {
  const notes: string[] = [];
  let now = book;
  for (let version = from; version < to; version++) {
    const step = list.find((migration) => migration.from === version);
    if (step === undefined) throw new RangeError(`no migration leads on from version ${version}`);
    now = { ...step.change(now), version: version + 1 };
    notes.push(`Brought from version ${version} to ${version + 1}: ${step.does}`);
  }
  return { book: now, notes };
}
