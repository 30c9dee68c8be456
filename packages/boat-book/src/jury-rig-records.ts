/** How far a jury rig came to be trusted. Plain values, as in `records.ts`; records marked *fixed* never change. */
import type { At, Day, Id } from './records.ts';

/**
 * Fixed. One time that it was said how far a jury rig is trusted: when it was made, and each time it was looked at
 * anew. The rig itself says what holds now; of two that were said apart, both are kept with their reasons.
 */
export interface RigTrustRecord {
  readonly rig: Id;
  /** the day it was made or looked at */
  readonly on: Day;
  readonly trustedUntil: Day;
  readonly wind_max_kn: number | null;
  readonly sails_max: number | null;
  readonly notOnRoad: boolean;
  /** what was looked at and why it holds */
  readonly reason: string;
  readonly entered: At;
  /** set when it is put in the book */
  readonly order?: number;
}
