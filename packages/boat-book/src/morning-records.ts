/** The morning lists: what a keeper changed of them, and what was ticked. Plain values, as in `records.ts`. */
import type { MorningListName } from '#morning';
import type { At, Id } from './records.ts';

/**
 * What a keeper changed of one line, or a line of the keeper's own. Lines that nobody changed stand in no book: they
 * are made from the boat, so that a change of hers changes them and leaves what the keeper said.
 */
export interface MorningLineRecord {
  readonly list: MorningListName;
  /** null: for every outing */
  readonly outing: Id | null;
  /** the line of the house, `rig.` and a jury rig, or `due.` and a due; null: a line of the keeper's own */
  readonly of: string | null;
  /** the keeper's words; null: as the house has them */
  readonly text: string | null;
  /** taken out; null: as on the boat's own list */
  readonly out: boolean | null;
  /** where it stands, lines of the house 10 apart; null: where the house has it */
  readonly place: number | null;
  /** usual rules of order set aside for it, each with the keeper's reason */
  readonly setAside: readonly { readonly before: string; readonly after: string; readonly reason: string }[];
}

/** Fixed. One line ticked, or a whole list that is done. */
export interface MorningTick {
  readonly outing: Id;
  readonly list: MorningListName;
  /** a list is gone through again on the way home: 1, then 2 */
  readonly round: number;
  /** the id of the line; null: the whole list, with what was left of it */
  readonly line: string | null;
  /** its words as they then were */
  readonly text: string;
  readonly came: 'good' | 'failed' | 'list done';
  /** the job that was made of a line that failed */
  readonly job: Id | null;
  readonly at: At;
  readonly who: string;
  /** set when it is put in the book */
  readonly order?: number;
}
