import type { BatteryHistory } from '../battery-history.ts';
import { type Prior, unknowns } from './priors.ts';
import type { Stretches } from './stretches.ts';

/** Degrees of freedom of Student's distribution, which a reading's own error is taken to follow: far-off ones count little. */
export const freedom = 4;

/**
 * A history to be fitted, its readings in the order of time. Currents are stated for the 12 V battery that the model follows;
 * volts are turned into its volts at the door.
 */
export interface Fitting {
  readonly history: BatteryHistory;
  readonly stretches: Stretches;
  readonly prior: Prior;
  /** of each reading: its volts, and which unknown says how far its meter is off */
  readonly said_V: Float64Array;
  readonly meter: Int32Array;
  readonly dimensions: number;
  /** from the third last reading to the end. [h] of the history */
  readonly lateFrom_h: number;
  readonly lateTo_h: number;
}

export function fittingOf(history: BatteryHistory, stretches: Stretches, prior: Prior): Fitting {
  const { from, to, readings } = history;
  const meters = [...new Set(readings.map(({ meter }) => meter))];
  const firstMeter = unknowns.length + stretches.sources;
  return {
    history,
    stretches,
    prior,
    said_V: Float64Array.from(readings, ({ volts }) => volts),
    meter: Int32Array.from(readings, ({ meter }) => firstMeter + meters.indexOf(meter)),
    dimensions: firstMeter + meters.length,
    lateFrom_h: ((readings.at(-3)?.at ?? from) - from) / 3_600_000,
    lateTo_h: (to - from) / 3_600_000,
  };
}
