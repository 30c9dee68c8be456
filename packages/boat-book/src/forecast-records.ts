/** What a forecast service said, as the book keeps it. */
import type { ForecastHours } from '#forecast';
import type { At, Id } from './records.ts';

/**
 * Fixed. The last good forecast of a place, hour by hour. What was entered by hand for an hour goes before it; of two
 * for a place (taken on two devices) the one known last counts.
 */
export interface ForecastRecord extends Omit<ForecastHours, 'from'> {
  readonly place: Id;
  /** whose forecast it is: the name of the service, or of the keeper's own server */
  readonly source: string;
  /** the rounded place it was asked for; a place that is moved elsewhere has no forecast */
  readonly askedLatitude_deg: number;
  readonly askedLongitude_deg: number;
  /** when the first hour begins; on a whole hour UTC */
  readonly from: At;
  readonly taken: At;
  /** set when it is put in the book */
  readonly order?: number;
}
