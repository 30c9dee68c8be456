/** The records of ground tackle: each rode aboard, and where it was last looked at. Plain values, as in `records.ts`. */
import type { ChainSize, RodeFibre, RopeSize } from '#loads';
import type { Id } from './records.ts';

/** Where a rode lies or is to lie: the water and what pulls. */
export interface AnchorageRecord {
  /** at the anchor, as it is now */
  readonly depth_m: number;
  /** what the tide still rises and falls from there */
  readonly rise_m: number;
  readonly fall_m: number;
  readonly wind_kn: number;
  readonly current_kn: number;
}

export interface RodeRecord {
  readonly name: string;
  readonly zone: Id | null;
  /** next to the anchor; null: none */
  readonly chain: { readonly size_mm: ChainSize; readonly length_m: number } | null;
  /** from there to the bow; null: none */
  readonly rope: { readonly fibre: RodeFibre; readonly size_mm: RopeSize; readonly length_m: number } | null;
  /** the bow roller above the water */
  readonly bow_m: number;
  /** of boat and rig, seen from ahead */
  readonly windage_m2: number;
  /** board, rudder and outboard leg in the water, seen from ahead */
  readonly below_m2: number;
  /** the steepest pull the keeper trusts the anchor with, above level */
  readonly limit_deg: number;
  /** as it was last looked at; null: nowhere yet */
  readonly anchorage: AnchorageRecord | null;
  /** the load path that has its every part; null: none was written */
  readonly path: Id | null;
  readonly note: string;
}
