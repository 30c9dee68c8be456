/** Which collections there are, which of the two documents each lives in, and how its records are kept. */
import type { CollectionName } from './operation-fields.ts';
import type { Book } from './records.ts';

/** `boat`: the keeper writes; `work`: hands write too. */
export type Part = 'boat' | 'work';

export interface Collection {
  readonly part: Part;
  /** one record under the collection's own name; records with a key a field; or values that never change */
  readonly kept: 'one' | 'keyed' | 'fixed';
  /** what one of them is called in a sentence */
  readonly word: string;
}

export const collections: Readonly<Record<CollectionName, Collection>> = {
  boat: { part: 'boat', kept: 'one', word: 'boat' },
  weights: { part: 'boat', kept: 'one', word: 'weights' },
  places: { part: 'boat', kept: 'keyed', word: 'place' },
  zones: { part: 'boat', kept: 'keyed', word: 'zone' },
  fittings: { part: 'boat', kept: 'keyed', word: 'fitting' },
  setUps: { part: 'boat', kept: 'keyed', word: 'set-up' },
  tools: { part: 'boat', kept: 'keyed', word: 'tool' },
  mixes: { part: 'boat', kept: 'keyed', word: 'mix' },
  tins: { part: 'boat', kept: 'keyed', word: 'tin' },
  batteries: { part: 'boat', kept: 'keyed', word: 'battery' },
  panels: { part: 'boat', kept: 'keyed', word: 'panel' },
  chargers: { part: 'boat', kept: 'keyed', word: 'charger' },
  circuits: { part: 'boat', kept: 'keyed', word: 'circuit' },
  loadPaths: { part: 'boat', kept: 'keyed', word: 'load path' },
  stays: { part: 'boat', kept: 'keyed', word: 'stay' },
  masts: { part: 'boat', kept: 'keyed', word: 'mast' },
  rodes: { part: 'boat', kept: 'keyed', word: 'rode' },
  boardHoists: { part: 'boat', kept: 'keyed', word: 'board hoist' },
  trailers: { part: 'boat', kept: 'keyed', word: 'trailer' },
  carried: { part: 'boat', kept: 'keyed', word: 'thing on the trailer' },
  dues: { part: 'boat', kept: 'keyed', word: 'due' },
  papers: { part: 'boat', kept: 'keyed', word: 'paper' },
  recipes: { part: 'boat', kept: 'keyed', word: 'recipe' },
  jobs: { part: 'work', kept: 'keyed', word: 'job' },
  steps: { part: 'work', kept: 'keyed', word: 'step' },
  juryRigs: { part: 'work', kept: 'keyed', word: 'jury rig' },
  rigTrusts: { part: 'work', kept: 'fixed', word: 'trust of a jury rig' },
  jobDays: { part: 'work', kept: 'keyed', word: 'job day' },
  weather: { part: 'work', kept: 'fixed', word: 'weather entry' },
  forecasts: { part: 'work', kept: 'fixed', word: 'forecast' },
  outings: { part: 'work', kept: 'keyed', word: 'outing' },
  morningLines: { part: 'work', kept: 'keyed', word: 'line of a morning list' },
  morningTicks: { part: 'work', kept: 'fixed', word: 'tick of a morning list' },
  stowages: { part: 'work', kept: 'keyed', word: 'stowage' },
  stores: { part: 'work', kept: 'keyed', word: 'store' },
  readings: { part: 'work', kept: 'fixed', word: 'reading' },
  readingBlocks: { part: 'work', kept: 'fixed', word: 'block of readings' },
  loadTests: { part: 'work', kept: 'keyed', word: 'load test' },
  nightsAhead: { part: 'work', kept: 'fixed', word: 'night ahead' },
  stayReadings: { part: 'work', kept: 'fixed', word: 'reading of a stay' },
  uses: { part: 'work', kept: 'fixed', word: 'use' },
  dueMeasures: { part: 'work', kept: 'fixed', word: 'measure' },
  seasonTicks: { part: 'work', kept: 'fixed', word: 'tick' },
  hoistForces: { part: 'work', kept: 'fixed', word: 'pull at the hoist' },
  ballWeighings: { part: 'work', kept: 'fixed', word: 'weighing of the ball' },
  timers: { part: 'work', kept: 'keyed', word: 'timer' },
  photos: { part: 'work', kept: 'fixed', word: 'photograph' },
  plans: { part: 'work', kept: 'fixed', word: 'kept plan' },
  log: { part: 'work', kept: 'fixed', word: 'log entry' },
};

export const collectionNames = Object.keys(collections) as CollectionName[];

/** The record type of a collection. */
export type RecordOf<C extends CollectionName> = C extends 'boat' | 'weights'
  ? Book[C]
  : Book[C] extends Readonly<Record<string, infer R>>
    ? R
    : never;

/**
 * Fields on which two answers are no question: the book takes one and says nothing. Everything else that two devices
 * answered differently is shown to the keeper.
 */
export const quietFields: Readonly<Partial<Record<CollectionName, readonly string[]>>> = {
  zones: ['words', 'room', 'near', 'along', 'up'],
  jobs: ['said'],
  steps: ['order'],
  morningLines: ['place', 'setAside'],
};
