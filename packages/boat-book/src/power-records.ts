/**
 * The records of a boat's power: batteries, what charges and what draws, and what was read. Plain values, as in
 * `records.ts`; records marked *fixed* never change.
 */
import type { Chemistry } from '#battery';
import type { FuseKind } from '#wiring';
import type { At, Clock, Day, Id } from './records.ts';

export interface BatteryRecord {
  readonly name: string;
  readonly zone: Id | null;
  readonly chemistry: Chemistry;
  /** on the label, at the 20-hour rate */
  readonly nominal_Ah: number;
  readonly nominal_V: 6 | 12 | 24;
  /** the day it was made or bought new; null: not known */
  readonly made: Day | null;
  /** the lowest charge planned for, of what it holds */
  readonly floor_pct: number;
  /** what its volts are read with: readings by one meter share its error */
  readonly meter: string;
  readonly note: string;
  /** whether a switch parts it from the wiring; null or left out: not said */
  readonly isolator?: boolean | null;
  /** into a dead short, as its maker's sheet says; null or left out: not said */
  readonly fault_A?: number | null;
  /** of the fuse ahead of all others, at its terminal; null or left out: not said */
  readonly mainFuseKind?: FuseKind | 'none' | null;
}

export interface PanelRecord {
  readonly name: string;
  readonly battery: Id;
  readonly peak_W: number;
  /** from level */
  readonly tilt_deg: number;
  /** the way it faces, true, from north; at anchor, where the bow swings, lay it level */
  readonly heading_deg: number;
  readonly regulator: 'none' | 'simple' | 'tracking';
  /** change of its power for each °C, from its label; null: not known */
  readonly coefficient_pct_C: number | null;
  readonly leads: { readonly lengthThereAndBack_m: number; readonly area_mm2: number } | null;
  /** of the sun that gets past mast, boom and ropes, the keeper's guess; null: not known */
  readonly kept_pct: number | null;
  /** at the battery end of its lead; null: none; left out: not said */
  readonly fuse_A?: number | null;
}

export interface ChargerRecord {
  readonly name: string;
  readonly battery: Id;
  readonly kind: 'mains' | 'outboard';
  readonly amps: number;
  readonly volts_max: number;
  /** at the battery end of its lead; null: none; left out: not said */
  readonly fuse_A?: number | null;
  /** how long it runs on a day aboard; null or left out: not said */
  readonly hours_a_day?: number | null;
}

export type SunMark = 'sunset' | 'sunrise' | 'dusk' | 'dawn';

export type CircuitUseRecord =
  | { readonly kind: 'always' }
  | { readonly kind: 'clock'; readonly from: Clock; readonly to: Clock }
  /** each end by the sun or by the clock */
  | { readonly kind: 'sun'; readonly from: SunMark | Clock; readonly to: SunMark | Clock }
  | { readonly kind: 'hours'; readonly hours_a_day: number };

export interface CircuitRecord {
  readonly name: string;
  readonly battery: Id;
  readonly watts: number;
  readonly duty_pct: number;
  /** when it is on while someone is aboard; what always draws, draws with nobody aboard too */
  readonly uses: CircuitUseRecord;
  readonly fuse_A: number | null;
  /** from the battery's terminal, along the lead */
  readonly fuseAt_m: number | null;
  /** null or left out: not said */
  readonly fuseKind?: FuseKind | null;
  /** the lead is in a sheath or conduit from the battery to the fuse; null or left out: not said, and taken as open */
  readonly sheathed?: boolean | null;
  readonly conductor: {
    readonly area_mm2: number;
    readonly insulation_C: 60 | 70 | 75 | 85 | 90 | 105;
    readonly lengthThereAndBack_m: number;
    /** how many lie in one bundle, itself counted */
    readonly bundled: number;
    readonly engineSpace: boolean;
  } | null;
  /** critical: 3 % of the volts may be lost on the way; other: 10 % */
  readonly needs: 'critical' | 'other';
  readonly zone: Id | null;
}

/** Fixed. One look at a voltmeter, with its circumstances. */
export interface ReadingRecord {
  readonly battery: Id;
  readonly at: At;
  readonly volts: number;
  /** measured at the same moment, positive out of the battery; null: not measured */
  readonly current_A: number | null;
  readonly air_C: number | null;
  readonly circumstance: 'rested' | 'under load' | 'on charge' | 'not said';
  /** circuits that were on, besides those that always are */
  readonly on: readonly Id[];
  /** null: not said */
  readonly panelDark: boolean | null;
  readonly by: 'hand' | 'file';
  /** set when it is put in the book */
  readonly order?: number;
}

/** Fixed. Many readings from a file, kept outside the documents as a blob. */
export interface ReadingBlock {
  readonly battery: Id;
  /** SHA-256 of the blob */
  readonly blob: string;
  readonly from: At;
  readonly to: At;
  readonly count: number;
  /** which columns stand in it, after the time */
  readonly columns: readonly ('volts' | 'current' | 'air')[];
  /** of the file they came from */
  readonly file: string;
  readonly order?: number;
}

/** A draw that is known, held for a time while the volts are read: what the battery is really worth. */
export interface LoadTest {
  readonly battery: Id;
  readonly readings: readonly Id[];
  /** what drew: a circuit, or watts measured or read off a label */
  readonly circuit: Id | null;
  readonly watts: number | null;
  readonly note: string;
}

/** Fixed. What was foretold of a night, to be held beside the morning's reading. */
export interface NightAheadRecord {
  readonly battery: Id;
  readonly made: At;
  /** the day of the sunrise it is for */
  readonly morning: Day;
  /** at that sunrise, before the panel brings anything, with what is on then */
  readonly at: At;
  readonly volts: { readonly low: number; readonly likely: number; readonly high: number };
  readonly charge_pct: { readonly low: number; readonly likely: number; readonly high: number };
  readonly order?: number;
}
