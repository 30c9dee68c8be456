import type { Chemistry } from './chemistry.ts';

/** What the keeper knows of a battery. */
export interface BatteryKnown {
  readonly chemistry: Chemistry;
  /** on the label, at the 20-hour rate */
  readonly nominal_Ah: number;
  readonly nominal_V: 6 | 12 | 24;
  readonly age_years: number | null;
}

/** What flowed over a stretch of time; positive is out of the battery. */
export interface Flow {
  /** from 1970, ms */
  readonly from: number;
  readonly to: number;
  readonly low_A: number;
  readonly likely_A: number;
  readonly high_A: number;
  /** flows with the same name are misstated by the same share; null: each by its own */
  readonly source: string | null;
}

/** One look at a voltmeter. */
export interface VoltReading {
  readonly at: number;
  readonly volts: number;
  /** readings by the same meter share its offset */
  readonly meter: string;
  /** measured at the same moment, positive out of the battery; null: what the flows say */
  readonly current_A: number | null;
}

/** All that is known of a battery over some hours to months. */
export interface BatteryHistory {
  readonly battery: BatteryKnown;
  readonly from: number;
  readonly to: number;
  readonly flows: readonly Flow[];
  readonly readings: readonly VoltReading[];
  readonly temperatures: readonly { readonly at: number; readonly air_C: number }[];
}
