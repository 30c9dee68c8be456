/** The records of what bears load aboard: load paths, part by part. Plain values, as in `records.ts`. */
import type { PartOfPath, PartState, PathUse } from '#loads';
import type { Day, Id } from './records.ts';

/** One part of a load path, with what is known of it. */
export type PathPartRecord = PartOfPath &
  PartState & {
    readonly id: Id;
    /** what the keeper calls it; empty: nothing but what it is */
    readonly name: string;
    /** the day it was new on the boat; null: not known */
    readonly since: Day | null;
    /** the jury rig that this part is; null: it is no jury rig */
    readonly juryRig: Id | null;
  };

/** What a path must bear. */
export interface LoadCaseRecord {
  readonly id: Id;
  readonly name: string;
  readonly force_N: number;
  /** the wind that force is for, with whose square it grows; null: it is not the wind's */
  readonly wind_kn: number | null;
  /** whose figure the force is: measured, worked out, a guess */
  readonly from: string;
}

export interface LoadPathRecord {
  readonly name: string;
  /** it sets how far below breaking the parts may work */
  readonly use: PathUse;
  readonly zone: Id | null;
  /** in order, from what pulls to what holds */
  readonly parts: readonly PathPartRecord[];
  readonly cases: readonly LoadCaseRecord[];
  readonly note: string;
}
