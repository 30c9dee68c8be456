import { type Band, type Chemistry, Dice, selfDischarge_pct_month } from '#battery';
import type { Instant, Span } from '#units';
import { acceptance, assumedTaper_h } from './acceptance.ts';
import { type CircuitDraw, loadPieces, misstatement, usualVolts } from './circuit-draw.ts';
import { nightsAhead, type PowerPlace } from './circuit-times.ts';
import { type BatteryStates, nightRuns, type SunDraws } from './night-runs.ts';
import { bandOf, type Chance, chanceOf, quantile } from './spread.ts';

/** A mains charger or an outboard, and when it charges. */
export interface ChargingSpan {
  readonly name: string;
  /** at most; the battery takes less near full. [A] */
  readonly amps: number;
  readonly start: Instant;
  readonly end: Instant;
}

export interface EnduranceCase {
  readonly chemistry: Chemistry;
  readonly nominal_V: 6 | 12 | 24;
  readonly states: BatteryStates;
  /** the lowest charge planned for. [%], 0–100 */
  readonly floor_pct: number;
  readonly circuits: readonly CircuitDraw[];
  /** null: every circuit as if someone were aboard all the time */
  readonly aboard: readonly Span[] | null;
  readonly place: PowerPlace;
  readonly from: Instant;
  /** nights looked at, the running one included. 1–60 */
  readonly nights: number;
  readonly sun: SunDraws | null;
  readonly chargers: readonly ChargingSpan[];
  /** runs, each with a battery, lamps and weather of its own. 1000 unless there is a reason */
  readonly runs: number;
  readonly seed: number;
}

/** One night, sunset to sunrise. */
export interface NightAhead {
  readonly start: Instant;
  readonly end: Instant;
  /** the battery stayed over its floor from now until this sunrise */
  readonly lasts: Chance;
  readonly evening_pct: Band;
  readonly morning_pct: Band;
  readonly drawn_Ah: Band;
  /** from the sunrise before, or from now, to this sunset. What the battery took in, chargers included */
  readonly storedBefore_Ah: Band;
}

export interface Endurance {
  readonly nights: readonly NightAhead[];
  /** hours until the floor; null ends: not within the time looked at */
  readonly hoursLeft: { readonly low: number | null; readonly likely: number | null; readonly high: number | null };
  /** the time looked at. [h] */
  readonly lookedAt_h: number;
  /** charge over the time looked at, for drawing: ms and percent */
  readonly course: {
    readonly at: Float64Array;
    readonly low: Float64Array;
    readonly likely: Float64Array;
    readonly high: Float64Array;
  };
  /** volts at which watts were turned into amps */
  readonly usual_V: number;
  readonly runs: number;
}

const hour = 3_600_000;
const drawnEvery_ms = hour / 2;

/**
 * How long a battery lasts, and how likely it lasts the night and the nights after it.
 *
 * Every run takes one state of the battery as it may be, lamps that draw somewhat more or less than they say, and one course
 * of the weather, and is followed by `nightRuns`. A night is lasted when the charge was never under the floor from now to its
 * sunrise.
 *
 * @throws RangeError for a floor, count or state out of range
 *
 * Not covered: loads nobody stated, a cell that fails, that the last of a battery is not to be had in the cold or at a heavy
 * draw (see `heavyDraw`).
 */
export function endurance(given: EnduranceCase): Endurance {
  const { chemistry, nominal_V, states, floor_pct, circuits, aboard, place, from, nights: wanted, sun, runs } = given;
  requireCase(given);
  const nights = nightsAhead(place, from, wanted);
  const end = nights.at(-1)!.end;
  const span = { start: from, end };
  const marks = new Set<Instant>([end]);
  for (const night of nights) {
    if (night.start > from) marks.add(night.start);
    marks.add(night.end);
  }
  for (let at = Math.ceil(from / drawnEvery_ms) * drawnEvery_ms; at < end; at += drawnEvery_ms)
    if (at > from) marks.add(at);
  const cuts = [...marks, ...given.chargers.flatMap(({ start, end: stop }) => [start, stop])];
  if (sun) {
    if (sun.from + sun.hours * hour < end)
      throw new RangeError(
        `the draws of the sun end ${((end - sun.from) / hour - sun.hours).toFixed(1)} h before the last night does`,
      );
    for (let at = sun.from; at < end; at += hour) cuts.push(at);
  }
  const usual_V = usualVolts(chemistry, nominal_V);
  const load = loadPieces(circuits, { place, span, volts: usual_V, aboard, cuts });
  const dice = new Dice(given.seed);
  const misstated = new Float64Array(circuits.length * runs);
  circuits.forEach((circuit, c) => {
    const sigma = misstatement(circuit.use);
    for (let run = 0; run < runs; run++) misstated[c * runs + run] = Math.exp(sigma * dice.normal());
  });
  const at = Float64Array.from([...marks].sort((a, b) => a - b));
  const marks_min = at.map((instant) => (instant - from) / 60_000);
  const chargers_A = new Float64Array(load.ends_min.length);
  load.ends_min.forEach((stop, i) => {
    const middle = from + ((stop + (i === 0 ? 0 : load.ends_min[i - 1]!)) / 2) * 60_000;
    for (const charger of given.chargers)
      if (charger.start <= middle && middle < charger.end) chargers_A[i]! += charger.amps;
  });
  const meanCapacity = states.capacity_Ah.reduce((sum, each) => sum + each, 0) / states.capacity_Ah.length;
  const course = nightRuns({
    runs,
    states: shuffled(states, runs, dice),
    floor_pct,
    load,
    misstated,
    sun,
    start: from,
    chargers_A,
    accepts: acceptance(chemistry, assumedTaper_h[chemistry].likely),
    selfDischarge_A: ((selfDischarge_pct_month[chemistry].likely / 100) * meanCapacity) / (30 * 24),
    marks_min,
  });
  const count = at.length;
  const indexOf = new Map([...at].map((instant, i) => [instant, i]));
  const column = (values: Float64Array, mark: number) => {
    const found = new Float64Array(runs);
    for (let run = 0; run < runs; run++) found[run] = values[run * count + mark]!;
    return found;
  };
  const grown = (values: Float64Array, since: Instant, until: Instant): Band => {
    const a = indexOf.get(since);
    const last = column(values, indexOf.get(until)!);
    if (a === undefined) return bandOf(last);
    const first = column(values, a);
    return bandOf(last.map((value, run) => value - first[run]!));
  };
  const bands = [...at.keys()].map((mark) => bandOf(column(course.atMarks_pct, mark)));
  const now = bandOf(Float64Array.from(states.charge_pct));
  const lastingPast = (minute: number) => course.floor_min.reduce((sum, floor) => sum + (floor >= minute ? 1 : 0), 0);
  const told = nights.map((night, n): NightAhead => {
    const evening = night.start > from ? bands[indexOf.get(night.start)!]! : now;
    return {
      ...night,
      lasts: chanceOf(lastingPast((night.end - from) / 60_000), runs),
      evening_pct: evening,
      morning_pct: bands[indexOf.get(night.end)!]!,
      drawn_Ah: grown(course.drawn_Ah, Math.max(night.start, from), night.end),
      storedBefore_Ah:
        night.start > from
          ? grown(course.stored_Ah, n === 0 ? from : nights[n - 1]!.end, night.start)
          : { low: 0, likely: 0, high: 0 },
    };
  });
  const floors = Float64Array.from(course.floor_min).sort();
  const hoursAt = (share: number) => {
    const found = quantile(floors, share);
    return Number.isFinite(found) ? found / 60 : null;
  };
  return {
    nights: told,
    hoursLeft: { low: hoursAt(0.05), likely: hoursAt(0.5), high: hoursAt(0.95) },
    lookedAt_h: (end - from) / hour,
    course: {
      at: Float64Array.from([from, ...at]),
      low: Float64Array.from([now, ...bands].map(({ low }) => low)),
      likely: Float64Array.from([now, ...bands].map(({ likely }) => likely)),
      high: Float64Array.from([now, ...bands].map(({ high }) => high)),
    },
    usual_V,
    runs,
  };
}

/** States drawn from those known, one a run, so that runs and weather are not paired the same way each time. */
function shuffled({ charge_pct, capacity_Ah }: BatteryStates, runs: number, dice: Dice): BatteryStates {
  const of = charge_pct.length;
  const order = Int32Array.from({ length: runs }, (_, run) => run % of);
  for (let i = runs - 1; i > 0; i--) {
    const j = dice.below(i + 1);
    const kept = order[i]!;
    order[i] = order[j]!;
    order[j] = kept;
  }
  return {
    charge_pct: Float64Array.from(order, (i) => charge_pct[i]!),
    capacity_Ah: Float64Array.from(order, (i) => capacity_Ah[i]!),
  };
}

function requireCase({ states, floor_pct, nights, sun, runs, from, chargers }: EnduranceCase): void {
  const within = (name: string, value: number, low: number, high: number, unit: string) => {
    if (!(value >= low && value <= high))
      throw new RangeError(`${name} must be ${low} to ${high} ${unit}, got ${value}`);
  };
  within('the floor', floor_pct, 0, 100, '%');
  within('nights', nights, 1, 60, '');
  within('runs', runs, 1, 100_000, '');
  if (states.charge_pct.length === 0 || states.charge_pct.length !== states.capacity_Ah.length)
    throw new RangeError('a battery has one state at least, each with its charge and its capacity');
  for (const charge of states.charge_pct) within('charge', charge, 0, 100, '%');
  for (const capacity of states.capacity_Ah) within('capacity', capacity, 0.01, 100_000, 'Ah');
  for (const { name, amps } of chargers) within(`amps of ${name}`, amps, 0, 1000, 'A');
  if (sun && (sun.amps.length !== sun.draws * sun.hours || sun.from > from))
    throw new RangeError(
      'the draws of the sun must begin at or before the start, with an amperage for every hour of each',
    );
}
