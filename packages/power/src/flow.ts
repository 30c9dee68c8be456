/** What flowed over a stretch of time; positive is out of the battery. */
export interface Flow {
  /** [ms] */
  readonly from: number;
  readonly to: number;
  readonly low_A: number;
  readonly likely_A: number;
  readonly high_A: number;
  /** flows of one name are misstated by the same share */
  readonly source: string | null;
}
