/** A boat book with nothing in it yet. */
import type { Boat, Book, Id, Weights } from './records.ts';

/** Our judgement of what a job is worth by what happens if it is left; the keeper's to change. */
export const assumedWeights: Weights = { danger: 100, unlawful: 30, 'stops-sailing': 30, worsens: 10, comfort: 3 };

/** A new book about one boat, empty but for the boat. All her sizes must be given. */
export function emptyBook(id: Id, boat: Boat): Book {
  return {
    format: 'fettle-boat-book',
    version: 5,
    id,
    boat,
    places: {},
    zones: {},
    fittings: {},
    setUps: {},
    tools: {},
    mixes: {},
    tins: {},
    weights: assumedWeights,
    batteries: {},
    panels: {},
    chargers: {},
    circuits: {},
    loadPaths: {},
    stays: {},
    masts: {},
    rodes: {},
    boardHoists: {},
    trailers: {},
    carried: {},
    papers: {},
    dues: {},
    recipes: {},
    jobs: {},
    steps: {},
    juryRigs: {},
    jobDays: {},
    weather: {},
    outings: {},
    stowages: {},
    stores: {},
    readings: {},
    readingBlocks: {},
    loadTests: {},
    nightsAhead: {},
    stayReadings: {},
    hoistForces: {},
    ballWeighings: {},
    timers: {},
    uses: {},
    dueMeasures: {},
    seasonTicks: {},
    photos: {},
    plans: {},
    log: {},
  };
}
