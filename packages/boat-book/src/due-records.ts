/**
 * What falls due, and what it hangs on: rules, uses, measures, and what of a season's list is done. Plain values, as in
 * `records.ts`; records marked *fixed* never change.
 */
import type { DueRule, UseKind } from '#dues';
import type { At, Consequence, Day, Id } from './records.ts';

/** Something that comes round. The parts of its rule stand beside what it is. */
export interface DueRecord extends DueRule {
  readonly title: string;
  readonly zone: Id | null;
  readonly fitting: Id | null;
  /** what happens if it is left */
  readonly consequence: Consequence;
  /** the usual interval it began from; null: the keeper's own */
  readonly usual: string | null;
  /** the recipe that answers it: the id of one of the house or of the book; null: none */
  readonly recipe: string | null;
  /** where the rule is from: a handbook, a label, the keeper */
  readonly source: string;
  /** the day it was last done, made or fitted, as the keeper says; a job of it that was done later counts instead */
  readonly lastDone: Day | null;
  readonly note: string;
}

/** Fixed. Use of the boat on a day. `count` in whole ones, hours or kilometres by its kind. */
export interface UseRecord {
  readonly use: UseKind;
  readonly on: Day;
  readonly count: number;
  readonly entered: At;
  readonly note: string;
  /** set when it is put in the book */
  readonly order?: number;
}

/** Fixed. What a due's condition was measured at, in the unit of its rule. */
export interface DueMeasure {
  readonly due: Id;
  readonly on: Day;
  readonly value: number;
  readonly entered: At;
  readonly note: string;
  /** set when it is put in the book */
  readonly order?: number;
}

/** Fixed. One line of a season's list, ticked. */
export interface SeasonTick {
  readonly list: 'lay-up' | 'fit-out';
  /** the year the season begins in */
  readonly year: number;
  readonly item: string;
  readonly at: At;
  readonly who: string;
  /** set when it is put in the book */
  readonly order?: number;
}
