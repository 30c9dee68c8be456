/** What a product's own tin says, as the keeper read it, and how waits and mixes say which product they are of. */
import type { MixRatio } from '#jobs';
import type { TinFigures } from '#materials';
import type { Day, Id } from './records.ts';

/** One product by its tin, tube or data sheet. What it says wins over our figures wherever it is used. */
export interface TinRecord extends TinFigures {
  /** as the keeper calls it: the printed name, or `the blue tin` */
  readonly name: string;
  /** the thing in the stores that it is; null: none of them */
  readonly store: Id | null;
  /** the day it was read off the tin */
  readonly readOn: Day;
  /** what one stroke of each of its two pumps gives together. [g]; null: it has none, or nobody weighed it */
  readonly strokePair_g: number | null;
  readonly note: string;
}

/** Said by some waits only: left out where nobody was asked. */
export interface WaitSaid {
  /** the family of product it is of; id in `cureLaws` of #materials */
  readonly family?: string | null;
  /** the tin it is of; null or left out: one of its family, of those the step takes from the stores first */
  readonly tin?: Id | null;
}

/** Said by some mixes only. */
export interface MixSaid {
  /** the family of product it is; id in `cureLaws` of #materials. With it the pot life follows the temperature */
  readonly family?: string | null;
  readonly tin?: Id | null;
  /** how its two parts go together, where no tin says it; null or left out: nobody said */
  readonly ratio?: MixRatio | null;
}
