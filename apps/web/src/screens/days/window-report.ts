/** What is asked of the plan worker about hours that would suit, and what it tells. Plain data. */
import type { Book, Id, JobDay } from '#boat-book';
import type { WillingHours, WindowWords } from '#reckoning';

export interface WindowRequest {
  readonly book: Book;
  /** the instant it is asked at, ISO 8601 in UTC */
  readonly now: string;
  /** where she lies */
  readonly place: Id;
  readonly willing: WillingHours;
  /** one job, or null for every open one */
  readonly job: Id | null;
}

/** The next hours that would suit a job, or why there are none. */
export interface ShownWindow {
  readonly job: Id;
  readonly title: string;
  readonly found: boolean;
  readonly words: WindowWords;
  /** the job days to book; empty where there are none to book */
  readonly days: readonly JobDay[];
  /** true: a second hand is counted on, who must be named to be booked */
  readonly notAlone: boolean;
}

export type WindowTelling = { readonly kind: 'window'; readonly window: ShownWindow } | { readonly kind: 'all told' };
