/**
 * How a product gets hard, as data. Every law becomes a rate for each hour of weather; a wait ends in the first
 * whole minute at which the rates summed from its start reach 1.
 *
 * Below `minimum_C` the rate is 0, and a wait that met such an hour is marked "may never reach its strength".
 * The tin wins: a keeper's own figure replaces ours and `from` says so.
 */
export type CureLaw =
  /** a set time whatever the weather: a soak, a rest, a tide */
  | { readonly kind: 'set time'; readonly minutes: number; readonly from: FigureFrom }
  /** two-part resins and adhesives: an integral over temperature, the rate doubling every `doublesPer_C` */
  | {
      readonly kind: 'reacts';
      readonly atReference_min: number;
      readonly reference_C: number;
      readonly doublesPer_C: number;
      readonly minimum_C: number;
      readonly from: FigureFrom;
    }
  /** moisture-cured sealants: a skin that grows with the square root of time, faster in warm moist air */
  | {
      readonly kind: 'moisture';
      readonly depth_mm: number;
      /** depth cured in the first 24 h at the reference. [mm] */
      readonly firstDay_mm: number;
      readonly reference_C: number;
      readonly reference_pct: number;
      readonly minimum_C: number;
      readonly from: FigureFrom;
    }
  /** varnish and one-pot paint: solvent and air; slows as it cools and stops in damp air */
  | {
      readonly kind: 'dries';
      readonly atReference_min: number;
      readonly reference_C: number;
      readonly doublesPer_C: number;
      /** at and above this humidity it makes no progress. [%] */
      readonly stopsAt_pct: number;
      readonly minimum_C: number;
      readonly from: FigureFrom;
    }
  /** butyl and the like: stays soft, so there is nothing to wait for */
  | { readonly kind: 'never cures'; readonly from: FigureFrom };

/** Where a product's figure is from. */
export type FigureFrom = 'the tin' | 'common practice' | 'a published source' | 'our assumption';
