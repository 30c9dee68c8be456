/** The log: what was done and measured, by whom, when, with what. An entry is never rewritten; one that puts it right names it. */
import type { At, Id } from './records.ts';

export type LogKind =
  | 'step done'
  | 'job done'
  | 'proved'
  | 'measured'
  | 'bedded'
  | 'fitted'
  | 'got'
  | 'used'
  | 'jury rig made'
  | 'jury rig trusted'
  | 'jury rig removed'
  | 'outing'
  | 'note'
  /** the entry it `corrects` was a slip or was undone: nothing stands in its place */
  | 'taken back';

/** Money as it was paid. `currency` is the ISO 4217 code: three capital letters. */
export interface Cost {
  readonly amount: number;
  readonly currency: string;
}

/** Something used or got, by the name it then had: the store itself may be gone when the entry is read. */
export interface LoggedWith {
  readonly name: string;
  readonly store?: Id;
  readonly amount?: number;
  /** of the amount, such as `ml` or `m` */
  readonly unit?: string;
}

/** What an entry may be about besides a job, a step, a fitting and a zone. */
export type LoggedCollection =
  | 'batteries'
  | 'stays'
  | 'boardHoists'
  | 'rodes'
  | 'loadPaths'
  | 'trailers'
  | 'juryRigs'
  | 'stores'
  | 'outings';

/** Fixed. What is left out was not said. */
export interface LogEntry {
  readonly at: At;
  readonly kind: LogKind;
  readonly job: Id | null;
  readonly step: Id | null;
  readonly zone: Id | null;
  readonly who: string;
  readonly spent_min: number | null;
  readonly text: string;
  /** the fitting it was done to */
  readonly fitting?: Id;
  /** the thing measured, the jury rig, the store, the outing */
  readonly of?: { readonly collection: LoggedCollection; readonly id: Id };
  readonly with?: readonly LoggedWith[];
  readonly cost?: Cost;
  /** photographs it speaks of, besides those that name it */
  readonly photos?: readonly Id[];
  /** the entry that this one takes the place of: it puts it right, or takes it back */
  readonly corrects?: Id;
  /** set when it is put in the book */
  readonly order?: number;
}
