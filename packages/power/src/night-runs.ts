import { type Acceptance, chargeSteps } from './acceptance.ts';
import type { LoadPieces } from './circuit-draw.ts';

/**
 * Amps the panel would bring to the battery, draw after draw, hour after hour from the start of the first whole hour: what
 * the weather, the panel and the regulator leave, before the battery says what it takes. Weather that lasts, lasts within a
 * draw.
 */
export interface SunDraws {
  readonly draws: number;
  readonly hours: number;
  /** draws × hours */
  readonly amps: Float64Array;
  /** start of the first hour. [ms] */
  readonly from: number;
}

/** One battery in many states that all agree with what is known of it. */
export interface BatteryStates {
  /** [%] of its own capacity, 0–100, one a state */
  readonly charge_pct: Float64Array;
  /** its own 20-hour capacity. [Ah] */
  readonly capacity_Ah: Float64Array;
}

/** Many courses of the coming nights, one after another. */
export interface NightRuns {
  readonly runs: number;
  /** minutes from the start until the floor is reached first; Infinity where it is not */
  readonly floor_min: Float64Array;
  /** charge at the marks, runs × marks. [%] */
  readonly atMarks_pct: Float64Array;
  /** what the circuits drew and what the battery took in up to each mark, runs × marks. [Ah] */
  readonly drawn_Ah: Float64Array;
  readonly stored_Ah: Float64Array;
}

export interface NightRunsCase {
  readonly runs: number;
  readonly states: BatteryStates;
  readonly floor_pct: number;
  readonly load: LoadPieces;
  /** by circuit and run, how many times what is stated it draws: circuits × runs */
  readonly misstated: Float64Array;
  /** null: no panel */
  readonly sun: SunDraws | null;
  /** start of the load's minutes. [ms] */
  readonly start: number;
  /** chargers by the load's pieces. [A] */
  readonly chargers_A: Float64Array;
  readonly accepts: Acceptance;
  /** what the battery loses by itself. [A] */
  readonly selfDischarge_A: number;
  /** minutes at which the charge is noted, rising, each an end of a piece */
  readonly marks_min: Float64Array;
}

/**
 * Follows the battery through the coming nights in every run: minute by minute while it is charged, for what it takes depends
 * on how full it is; along a straight line, which is exact, while it is only drawn on.
 *
 * @returns charge at the marks, and when the floor was reached
 *
 * Charge is counted in ampere-hours. It cannot fall below empty: what is drawn on past that is not counted as drawn.
 */
export function nightRuns(given: NightRunsCase): NightRuns {
  const { runs, states, floor_pct, load, misstated, sun, start, chargers_A, accepts, selfDischarge_A, marks_min } =
    given;
  const { ends_min, amps, circuits } = load;
  const count = circuits.length;
  const marks = marks_min.length;
  const floor_min = new Float64Array(runs).fill(Number.POSITIVE_INFINITY);
  const atMarks_pct = new Float64Array(runs * marks);
  const drawn_Ah = new Float64Array(runs * marks);
  const stored_Ah = new Float64Array(runs * marks);
  const { most_A_Ah, stored } = accepts;
  const pieces = ends_min.length;
  // the hour of the sun that each piece lies in; pieces end at whole hours
  const hourOf = new Int32Array(pieces);
  for (let i = 0; i < pieces; i++) {
    const middle = start + ((ends_min[i]! + (i === 0 ? 0 : ends_min[i - 1]!)) / 2) * 60_000;
    hourOf[i] = sun === null ? -1 : Math.floor((middle - sun.from) / 3_600_000);
  }
  for (let run = 0; run < runs; run++) {
    const state = run % states.charge_pct.length;
    const capacity = states.capacity_Ah[state]!;
    const floor = (floor_pct / 100) * capacity;
    const toStep = chargeSteps / capacity;
    const row = sun === null ? 0 : (run % sun.draws) * sun.hours;
    let charge = (states.charge_pct[state]! / 100) * capacity;
    let reached = charge < floor ? 0 : Number.POSITIVE_INFINITY;
    let drawn = 0;
    let taken = 0;
    let minute = 0;
    let mark = 0;
    for (let i = 0; i < pieces; i++) {
      let out = selfDischarge_A;
      let used = 0;
      for (let c = 0; c < count; c++) used += amps[i * count + c]! * misstated[c * runs + run]!;
      out += used;
      const hour = hourOf[i]!;
      let into = chargers_A[i]!;
      if (sun !== null && hour >= 0 && hour < sun.hours) into += sun.amps[row + hour]!;
      const end = ends_min[i]!;
      const net = into - out;
      if (net <= 0) {
        const minutes = end - minute;
        const fall = -net / 60;
        const left = charge - fall * minutes;
        if (reached === Number.POSITIVE_INFINITY && left < floor) reached = minute + (charge - floor) / fall;
        if (left >= 0) drawn += (used * minutes) / 60;
        else drawn += (used * (fall > 0 ? charge / fall : minutes)) / 60;
        charge = Math.max(0, left);
      } else {
        drawn += (used * (end - minute)) / 60;
        for (let at = minute; at < end; at++) {
          const step = Math.min(1, end - at);
          const k = (charge * toStep) | 0;
          const most = most_A_Ah[k]! * capacity;
          const gain = (Math.min(net, most) * stored[k]! * step) / 60;
          charge += gain;
          taken += gain;
          if (charge > capacity) {
            taken -= charge - capacity;
            charge = capacity;
          }
        }
      }
      minute = end;
      while (mark < marks && marks_min[mark]! <= end + 1e-9) {
        atMarks_pct[run * marks + mark] = (100 * charge) / capacity;
        drawn_Ah[run * marks + mark] = drawn;
        stored_Ah[run * marks + mark] = taken;
        mark++;
      }
    }
    floor_min[run] = reached;
  }
  return { runs, floor_min, atMarks_pct, drawn_Ah, stored_Ah };
}
