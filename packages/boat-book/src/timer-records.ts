/** Timers: a time to be told, kept as the instant it ends, so that closing the program stops nothing. */
import type { At, Id } from './records.ts';

export interface TimerRecord {
  readonly step: Id;
  /** which of the step's waits; null: the pot life of what was mixed for it */
  readonly wait: Id | null;
  /** what it is over for, such as `pot life of the thick epoxy` */
  readonly words: string;
  readonly started: At;
  readonly ends: At;
}
