/**
 * The demo: an invented boat, keeper and place, with three job days ahead and an outing in three weeks.
 *
 * It is written so that planning matters: the mast is wanted down for some work and up for other work, and can go up
 * only in a calm morning; drilled-out holes must be filled and hard before the plate goes back, and its sealant cured
 * before the mast loads it; varnish must be on and touch dry before dew and cover; the boat can be propped only while
 * a second hand is there; one part comes by post in time, one too late, one is not ordered.
 */
import { type Book, contentId, type Day } from '#boat-book';
import { addDays } from '#units';
import { demoBoat, demoFittings, demoMixes, demoPlaces, demoSetUps, demoZones } from './demo/boat.ts';
import { demoJobDays, demoJuryRigs, demoLog, demoOutings, demoRigTrusts, demoWeather } from './demo/days.ts';
import { demoDueMeasures, demoDues, demoUses } from './demo/dues.ts';
import { demoBoardHoists, demoHoistForces } from './demo/hoist.ts';
import { belowJobs } from './demo/jobs-below.ts';
import { hullJobs } from './demo/jobs-hull.ts';
import { rigJobs } from './demo/jobs-rig.ts';
import { demoLoadPaths } from './demo/loads.ts';
import {
  demoBatteries,
  demoChargers,
  demoCircuits,
  demoLoadTests,
  demoNightsAhead,
  demoPanels,
  demoReadings,
} from './demo/power.ts';
import { demoMasts, demoStayReadings, demoStays } from './demo/rig.ts';
import { demoRodes } from './demo/rodes.ts';
import { demoStores, demoStowages, demoTools } from './demo/stores.ts';
import { demoBallWeighings, demoCarried, demoTrailers } from './demo/trailer.ts';
import type { DemoDates } from './demo/writing.ts';

/** The demo book as it stands on a day: everything in it is dated from that day. */
export function demoBook(today: Day): Book {
  const dates: DemoDates = { today, day: (n) => addDays(today, n) };
  const jobs = [...rigJobs(dates), ...hullJobs(dates), ...belowJobs(dates)];
  return {
    format: 'fettle-boat-book',
    version: 5,
    id: `demo-${today}`,
    boat: demoBoat,
    places: demoPlaces,
    zones: demoZones,
    fittings: demoFittings(dates),
    setUps: demoSetUps,
    tools: demoTools,
    mixes: demoMixes,
    tins: {},
    weights: { danger: 100, unlawful: 30, 'stops-sailing': 30, worsens: 10, comfort: 3 },
    batteries: demoBatteries(dates),
    panels: demoPanels,
    chargers: demoChargers,
    circuits: demoCircuits,
    loadPaths: demoLoadPaths(dates),
    stays: demoStays(dates),
    masts: demoMasts,
    rodes: demoRodes,
    boardHoists: demoBoardHoists,
    trailers: demoTrailers(dates),
    carried: demoCarried,
    recipes: {},
    jobs: Object.fromEntries(jobs.map(({ id, job }) => [id, job])),
    steps: Object.fromEntries(
      jobs.flatMap(({ id, steps }) =>
        steps.map((step, order) => [`${id}-${order + 1}`, { ...step, job: id, order }] as const),
      ),
    ),
    juryRigs: demoJuryRigs(dates),
    rigTrusts: byContent(demoRigTrusts(dates)),
    jobDays: demoJobDays(dates),
    weather: byContent(demoWeather(dates)),
    outings: demoOutings(dates),
    morningLines: {},
    morningTicks: {},
    stowages: demoStowages,
    stores: demoStores(dates.day),
    readings: demoReadings(dates),
    readingBlocks: {},
    loadTests: demoLoadTests(dates),
    nightsAhead: demoNightsAhead(dates),
    stayReadings: demoStayReadings(dates),
    hoistForces: demoHoistForces(dates),
    ballWeighings: demoBallWeighings(dates),
    papers: {},
    timers: {},
    dues: demoDues(dates),
    uses: demoUses(dates),
    dueMeasures: demoDueMeasures(dates),
    seasonTicks: {},
    forecasts: {},
    photos: {},
    plans: {},
    log: byContent(demoLog(dates)),
  };
}

/** Records that never change are kept under the hash of their content. */
function byContent<T>(records: readonly T[]): Record<string, T> {
  return Object.fromEntries(records.map((record) => [contentId(record), record]));
}
