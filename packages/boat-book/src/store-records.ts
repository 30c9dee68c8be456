/** The records of the stores: where things are kept, what is on hand and to be got, tools, and what a step takes. */
import type { Day, Id } from './records.ts';

/** A place that things are kept in, as the keeper calls it: `port locker`, `shelf 2` within `garage`. */
export interface Stowage {
  readonly name: string;
  /** the place it is in; null: in none */
  readonly within: Id | null;
  /** on board; false: ashore, so what is kept there has to be carried down */
  readonly aboard: boolean;
}

/** What a thing is counted or measured in; '' by the piece. */
export type StoreUnit =
  | ''
  | 'mm'
  | 'm'
  | 'm²'
  | 'ml'
  | 'l'
  | 'g'
  | 'kg'
  | 'pair'
  | 'set'
  | 'pack'
  | 'roll'
  | 'tube'
  | 'tin';

/** What it is sold in: a tube of 290 ml, a coil of 10 m. `holds` is in the store's own unit. */
export interface StorePack {
  readonly word: string;
  readonly holds: number;
}

/** A thing on hand, or to be got, or both: some is there and more is needed. Its size stands in its name. */
export interface StoreRecord {
  readonly name: string;
  /** where it is kept, in words; with a stowage, what is more to say of it (`behind the oars`) */
  readonly keptAt: string;
  /** some of it is there */
  readonly onHand: boolean;
  /** the day it, or what is still to be got of it, will be there; null: not ordered */
  readonly expected: Day | null;
  /** whole days from ordering it to having it; null: not known */
  readonly lead_days: number | null;
  readonly note: string;
  /** left out or null: no stowage of the list */
  readonly stowage?: Id | null;
  /** how much is on hand, in `unit`; left out or null: not counted */
  readonly amount?: number | null;
  readonly unit?: StoreUnit | null;
  /** left out or null: by the piece, cut to length, or not said */
  readonly pack?: StorePack | null;
  /** the day it came, was opened, and the day printed on it after which it is not to be used */
  readonly got?: Day | null;
  readonly opened?: Day | null;
  readonly expires?: Day | null;
  /** how long it keeps once opened, as its tin or label says; left out or null: by its family */
  readonly keepsOpened_months?: number | null;
  /** where it is to be had */
  readonly from?: string | null;
  /** of one pack, or of one `unit` where there is no pack, in the boat's currency */
  readonly price?: number | null;
}

export interface ToolRecord {
  readonly name: string;
  readonly count: number;
  readonly keptAt: string;
  readonly stowage?: Id | null;
  /** out of the keeper's hands; left out or null: all of them are there */
  readonly lent?: ToolLent | null;
}

export interface ToolLent {
  readonly to: string;
  readonly count: number;
  readonly since: Day;
  /** the day it will be back; null: not said */
  readonly back: Day | null;
}

/** How much of a store a step takes, its waste counted in. */
export interface StepTake {
  readonly store: Id;
  readonly amount: number;
  readonly unit: StoreUnit;
  /**
   * of an amount worked out from an area: for which family of product (`cureLaws` of #materials), and at how many m² a
   * litre and coat. A tin that says another coverage makes it more or less. Left out or null: of no such amount
   */
  readonly coverage?: { readonly family: string; readonly ours_m2_l: number } | null;
}
