/** The records of a boat's rig: her stays with what was read of them, and her mast. Plain values, as in `records.ts`. */
import type { Laid, RiggingScrew } from '#loads';
import type { Day, Id } from './records.ts';

export interface StayRecord {
  readonly name: string;
  readonly zone: Id | null;
  readonly laid: Laid;
  readonly size_mm: number;
  /** from pin to pin */
  readonly length_m: number;
  /** null: it has none, or its thread is not known */
  readonly screw: RiggingScrew | null;
  /** what it is to be set to, of its breaking load when new; null: not said */
  readonly aim_pct: number | null;
  /** the day it was made or bought new; null: not known */
  readonly made: Day | null;
  readonly note: string;
}

/** What a stay's tension was told by. */
export type StayTold =
  /** from slack, on a measured part of the wire */
  | { readonly kind: 'stretch'; readonly stretch_mm: number; readonly measured_m: number }
  /** by a spring balance, square to it; the place from its nearer end */
  | { readonly kind: 'pull'; readonly pulledAt_m: number; readonly pull_N: number; readonly aside_mm: number }
  /** slack: how far its middle can be moved to either side before it comes taut */
  | { readonly kind: 'sway'; readonly sway_mm: number };

/** Fixed. One look at a stay, with the mast up. */
export interface StayReading {
  readonly stay: Id;
  readonly on: Day;
  readonly moment: 'as set' | 'before towing' | 'after towing' | 'in between';
  readonly told: StayTold;
  /** turns its screw was given since the reading before, tightening; below zero easing */
  readonly turns: number;
  readonly note: string;
  /** set when it is put in the book */
  readonly order?: number;
}

/** A mast on a hinge at its foot, and how it goes up. Ahead and up are from the hinge. */
export interface MastRecord {
  readonly name: string;
  /** with all that hangs on it */
  readonly mass_kg: number;
  /** from the hinge to where it balances */
  readonly massAt_m: number;
  /** from the hinge to where the forestay or halyard takes hold */
  readonly lineAt_m: number;
  /** what leads the pull; null: nothing, it goes straight to the bow */
  readonly led: {
    readonly by: 'pole' | 'A-frame';
    /** of the pole, or a leg */
    readonly length_m: number;
    readonly heelAhead_m: number;
    readonly heelUp_m: number;
    /** ahead of upright, with the mast at the start */
    readonly lean_deg: number;
    /** A-frame: between its heels; null of a pole */
    readonly spread_m: number | null;
  } | null;
  readonly bowAhead_m: number;
  readonly bowUp_m: number;
  /** above level, aft: in its crutch, and where the forestay is pinned */
  readonly from_deg: number;
  readonly to_deg: number;
  /** the shrouds that are to hold it on the way; null: not said */
  readonly shrouds: {
    readonly at_m: number;
    readonly ahead_m: number;
    readonly up_m: number;
    readonly out_m: number;
  } | null;
  /** null: none, or not said */
  readonly vang: {
    /** square to the boom, of the leech at the clew, as hard as it is sailed */
    readonly lift_N: number;
    readonly liftAt_m: number;
    /** from the gooseneck along the boom */
    readonly along_m: number;
    readonly below_m: number;
    readonly aft_m: number;
  } | null;
  readonly note: string;
}
