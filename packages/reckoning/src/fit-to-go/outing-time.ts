import type { Day } from '#boat-book';

/** The hours an outing is reckoned by. */
export interface OutingTime {
  /** the instant it begins */
  readonly starts: number;
  /** its last day */
  readonly last: Day;
  /** IANA zone of the boat’s place */
  readonly zone: string;
  /** the day it is asked */
  readonly today: Day;
}
