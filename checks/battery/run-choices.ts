/**
 * What a keeper would have seen of a measured run: a lamp whose watts are known to a fifth, lit and put out at known times,
 * and a few looks at a voltmeter before the half. And what was still to come.
 */
import type { BatteryHistory, Flow, VoltReading } from '#battery';
import { seeded } from '../other-check.ts';
import type { Discharge, MeasuredRun } from './measured-run.ts';

/** One choice of readings of a run. */
export interface RunChoice {
  readonly seed: number;
  readonly history: BatteryHistory;
  /** how far the lamp is from its label: true / stated − 1, within the fifth it is known to */
  readonly misstated: number;
  /** given from the last reading to the cut-off, as measured. [Ah] */
  readonly stillToCome_Ah: number;
  /** the current while it flows, as measured. [A] */
  readonly amps: number;
}

export const readingsInChoice = 6;

/** Times have no date in the runs: an evening that means nothing. */
const midnight = Date.UTC(2026, 0, 1);
const at_ms = (hours: number) => midnight + Math.round(hours * 3_600_000);

/**
 * Six readings before half of the run is given, at times drawn from the seed; in every second choice the first of them is
 * of the battery at rest before the lamp is lit, where the file has that.
 */
export function runChoice(run: MeasuredRun, discharge: Discharge, seed: number): RunChoice {
  const random = seeded(seed);
  for (let i = 0; i < 5; i++) random();
  const { hours, volts, amps } = run;
  const { first, last, out_Ah } = discharge;
  const total = out_Ah[last - first]!;
  let half = first;
  while (half < last && out_Ah[half - first]! < total / 2) half++;
  // the first minute after lighting is no time to read
  const loaded: number[] = [];
  for (let i = first + 1; i < half; i++)
    if (hours[i]! > hours[first]! + 1 / 60 && amps[i]! > 0.5 * discharge.amps) loaded.push(i);
  if (loaded.length < readingsInChoice)
    throw new Error(`${run.file}: fewer than ${readingsInChoice} rows under load before the half`);
  const rest = restBefore(run, first);
  const chosen = new Set<number>();
  if (seed % 2 === 0 && rest < first) chosen.add(first - 1);
  while (chosen.size < readingsInChoice) {
    // evenly over the time, not over the rows: some files are denser at the start
    const hour = hours[loaded[0]!]! + random() * (hours[loaded.at(-1)!]! - hours[loaded[0]!]!);
    chosen.add(nearest(hours, loaded, hour));
  }
  const rows = [...chosen].sort((a, b) => a - b);
  const lastRead = rows.at(-1)!;
  const misstated = 0.4 * random() - 0.2;
  const readings: VoltReading[] = rows.map((i) => ({
    at: at_ms(hours[i]!),
    volts: Math.round(volts[i]! * 100) / 100,
    meter: 'the keeper’s meter',
    current_A: null,
  }));
  const from = Math.max(rest, firstRowWithin(hours, first, 12));
  return {
    seed,
    misstated,
    amps: discharge.amps,
    stillToCome_Ah: total - out_Ah[lastRead - first]!,
    history: {
      battery: { chemistry: run.chemistry, nominal_Ah: run.nominal_Ah, nominal_V: 12, age_years: null },
      from: at_ms(hours[from]!),
      to: at_ms(hours[lastRead]!) + 1000,
      flows: lampFlows(run, first, lastRead, misstated),
      readings,
      temperatures: [{ at: at_ms(hours[from]!), air_C: Math.round(run.battery_C) }],
    },
  };
}

/** First row of the rest before the lamp is lit. */
function restBefore({ amps, nominal_Ah }: MeasuredRun, first: number): number {
  let from = first;
  while (from > 0 && Math.abs(amps[from - 1]!) <= 0.01 * nominal_Ah) from--;
  return from;
}

function firstRowWithin(hours: Float64Array, row: number, span_h: number): number {
  let from = row;
  while (from > 0 && hours[from - 1]! > hours[row]! - span_h) from--;
  return from;
}

function nearest(hours: Float64Array, rows: readonly number[], hour: number): number {
  let best = rows[0]!;
  for (const row of rows) if (Math.abs(hours[row]! - hour) < Math.abs(hours[best]! - hour)) best = row;
  return best;
}

/** The lamp as lit and put out: each stretch with its mean current, all misstated by the one share. */
function lampFlows(run: MeasuredRun, first: number, last: number, misstated: number): Flow[] {
  const { hours, amps, nominal_Ah } = run;
  const flows: Flow[] = [];
  let start = -1;
  for (let i = first; i <= last; i++) {
    const lit = amps[i]! > 0.01 * nominal_Ah;
    if (lit && start < 0) start = i;
    const ends = start >= 0 && (i === last || !(amps[i + 1]! > 0.01 * nominal_Ah));
    if (!ends) continue;
    // lit some time between two rows: a minute before the first lit one at most
    const lit_h = start > 0 ? Math.max(hours[start - 1]!, hours[start]! - 1 / 60) : hours[start]!;
    let taken = 0;
    for (let k = start + 1; k <= i; k++) taken += ((amps[k]! + amps[k - 1]!) / 2) * (hours[k]! - hours[k - 1]!);
    const mean = i > start ? taken / (hours[i]! - hours[start]!) : amps[i]!;
    const stated = mean / (1 + misstated);
    flows.push({
      from: at_ms(lit_h),
      // the lamp still burns when it is read
      to: at_ms(hours[i]!) + 1000,
      low_A: 0.8 * stated,
      likely_A: stated,
      high_A: 1.2 * stated,
      source: 'lamp',
    });
    start = -1;
  }
  return flows;
}
