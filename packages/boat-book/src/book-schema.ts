/** The schema of a whole book in its open form. */
import { z } from 'zod/mini';
import { id } from './field-schemas.ts';
import type { Book } from './records.ts';
import { recordSchemas } from './schemas.ts';

const {
  boat,
  weights,
  places,
  zones,
  fittings,
  setUps,
  tools,
  mixes,
  batteries,
  panels,
  chargers,
  circuits,
  loadPaths,
  jobs,
  steps,
  juryRigs,
  jobDays,
  weather,
  outings,
  stores,
  readings,
  readingBlocks,
  loadTests,
  nightsAhead,
  plans,
  log,
} = recordSchemas;

export const bookFormat = 'fettle-boat-book';
export const bookVersion = 4;

export const bookSchema = z.strictObject({
  format: z.literal(bookFormat),
  version: z.literal(bookVersion),
  id,
  boat,
  places: z.record(id, places),
  zones: z.record(id, zones),
  fittings: z.record(id, fittings),
  setUps: z.record(id, setUps),
  tools: z.record(id, tools),
  mixes: z.record(id, mixes),
  weights,
  batteries: z.record(id, batteries),
  panels: z.record(id, panels),
  chargers: z.record(id, chargers),
  circuits: z.record(id, circuits),
  loadPaths: z.record(id, loadPaths),
  jobs: z.record(id, jobs),
  steps: z.record(id, steps),
  juryRigs: z.record(id, juryRigs),
  jobDays: z.record(id, jobDays),
  weather: z.record(id, weather),
  outings: z.record(id, outings),
  stores: z.record(id, stores),
  readings: z.record(id, readings),
  readingBlocks: z.record(id, readingBlocks),
  loadTests: z.record(id, loadTests),
  nightsAhead: z.record(id, nightsAhead),
  plans: z.record(id, plans),
  log: z.record(id, log),
}) satisfies z.ZodMiniType<Book>;
