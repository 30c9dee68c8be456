import type { Band } from './band.ts';
import { clearLight, type SolarPlace } from './clear-day.ts';
import type { DayLight } from './clouds.ts';
import { cellHeat_C, clearOnPanel_W_m2, evenOnPanel_W_m2 } from './on-panel.ts';
import { panelGives, type SolarPanel } from './solar-panel.ts';

/**
 * What falls on a panel, step by step, in the two parts of which every sky is made: a clear one, and light through cloud. Lists
 * of one length. The rig is not counted yet, nor what the label promises too much.
 */
export interface PanelSteps {
  readonly from: number;
  readonly step_min: number;
  /** on the panel under a clear sky. [W/m²] */
  readonly clear_W_m2: Float64Array;
  /** on the panel under a sky that lets all the clear sky's light through, from everywhere alike. [W/m²] */
  readonly even_W_m2: Float64Array;
  /** amps into the battery for each W/m² in the first, and in a quarter of the second */
  readonly clear_A: Float64Array;
  readonly even_A: Float64Array;
}

/** Where and how a panel is asked about. */
export interface PanelCase {
  readonly panel: SolarPanel;
  readonly nominal_V: 6 | 12 | 24;
  readonly place: SolarPlace;
  /** what mast, boom and ropes leave of the sun, in 9 of 10. [0–1]; see `keptBand`, `keptLearnt` */
  readonly kept: Band;
  /** the air by the time. [ms → °C] */
  readonly air_C: (at: number) => number;
}

/** Steps within one of an answer, so that an hour is not taken for its middle. */
const within = 4;

/**
 * A panel over even steps of time.
 *
 * @param from  start of the first step. [ms]
 */
export function panelSteps(asked: PanelCase, from: number, step_min: number, steps: number): PanelSteps {
  const { panel, nominal_V, place, air_C } = asked;
  const moments = clearLight(place, { from, step_min: step_min / within, count: steps * within }, null);
  const clear_W_m2 = new Float64Array(steps);
  const even_W_m2 = new Float64Array(steps);
  const clear_A = new Float64Array(steps);
  const even_A = new Float64Array(steps);
  for (let i = 0; i < steps; i++) {
    for (let k = within * i; k < within * (i + 1); k++) {
      const moment = moments[k]!;
      if (moment.global_W_m2 <= 0) continue;
      clear_W_m2[i]! += clearOnPanel_W_m2(panel, moment) / within;
      even_W_m2[i]! += evenOnPanel_W_m2(panel, moment) / within;
    }
    if (even_W_m2[i]! <= 0) continue;
    const air = air_C(from + (i + 0.5) * step_min * 60_000);
    const ampsFor = (W_m2: number) =>
      W_m2 <= 0 ? 0 : panelGives(panel, nominal_V, { onPanel_W_m2: W_m2, cell_C: cellHeat_C(air, W_m2) }).amps / W_m2;
    clear_A[i] = ampsFor(clear_W_m2[i]!);
    even_A[i] = ampsFor(even_W_m2[i]! / 4);
  }
  return { from, step_min, clear_W_m2, even_W_m2, clear_A, even_A };
}

/** Amps of a step on a day as it may be. @param covered  share of this step's light that cloud stands before */
export function stepAmps(steps: PanelSteps, i: number, covered: number, under: number, open: number): number {
  const clear = steps.clear_W_m2[i]!;
  const even = steps.even_W_m2[i]!;
  if (even <= 0) return 0;
  const light = open * (1 - covered) * clear + covered * under * even;
  const dim = even / 4;
  const share = clear - dim > 1e-9 ? (light - dim) / (clear - dim) : 0;
  const each = steps.even_A[i]! + Math.min(1.1, Math.max(0, share)) * (steps.clear_A[i]! - steps.even_A[i]!);
  return light * each;
}

/** Ampere-hours of a whole run of steps on a day as it may be. @param clock  hour of the clock of each step */
export function stepsAh(steps: PanelSteps, { covered, under, open }: DayLight, clock: Int32Array | null): number {
  let sum = 0;
  for (let i = 0; i < steps.clear_W_m2.length; i++)
    sum += stepAmps(steps, i, covered.length === 1 ? covered[0]! : covered[clock![i]!]!, under, open);
  return (sum * steps.step_min) / 60;
}
