/** What a page of plain talk proposes. Nothing of it is in the book until the keeper accepts it. */
import type { ReadLine } from './read-line-parts.ts';

export interface WalkRound {
  /** in the order they were said */
  readonly proposals: readonly Proposal[];
}

export type Proposal = ProposedJob | ProposedJuryRig | ProposedReading | ProposedStore;

interface Said {
  /** where on the page, [from, to) in UTF-16 units, in order; what lies between was about something else */
  readonly spans: readonly { readonly from: number; readonly to: number }[];
  /** the very words */
  readonly said: string;
}

export interface ProposedJob extends Said {
  readonly kind: 'job';
  /** its places are those of `told`, not of the page */
  readonly read: ReadLine;
  /** the heading its zone comes from, where its own words name no place; null: its own words, or no zone */
  readonly under: string | null;
  /** which proposal, by its place in the list, is the jury rig that stands in for it; null: none */
  readonly rig: number | null;
  /** the words that say that part of it was done and this is still to do; null: not said */
  readonly followUp: string | null;
}

export interface ProposedJuryRig extends Said {
  readonly kind: 'jury rig';
  readonly read: ReadLine;
  readonly under: string | null;
  /** not to be towed with */
  readonly notOnRoad: boolean;
}

export interface ProposedReading extends Said {
  readonly kind: 'reading';
  /** [V] of one battery of 6, 12 or 24 V */
  readonly volts: number;
  /** as told; 'not said' where nothing is told of what was on */
  readonly circumstance: 'rested' | 'under load' | 'on charge' | 'not said';
  readonly panelDark: boolean | null;
}

export interface ProposedStore extends Said {
  readonly kind: 'store';
  readonly name: string;
  readonly onHand: boolean;
  /** where it is kept, as told; '' where not */
  readonly keptAt: string;
}
