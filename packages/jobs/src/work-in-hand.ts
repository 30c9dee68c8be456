/** Pieces of work while a page is gone through, and what they become. */
import type { Clause } from './walk-clauses.ts';
import type { ProposedReading, ProposedStore } from './walk-round.ts';
import type { Sense } from './walk-sense.ts';

export interface TellingClause extends Clause {
  readonly sense: Sense;
}

export type Heading = { readonly zone: string; readonly words: string };

/** One piece of work, or a fix that stands in for it. */
export interface Gathered {
  readonly kind: 'job' | 'jury rig';
  readonly clauses: readonly TellingClause[];
  readonly heading: Heading | null;
  readonly followUp: string | null;
  /** the fix that stands in for it */
  readonly rig: Gathered | null;
}

/** What was heard of one topic. */
export interface Evidence {
  /** all that was said of it, what is fine and done with it too */
  readonly topic: readonly (TellingClause & { readonly role: string })[];
  readonly defect: boolean;
  readonly remedy: boolean;
  readonly minutes: boolean;
  /** a thing is named, or something that is said something about */
  readonly known: boolean;
  /** said to be left, or put right, after all */
  readonly dismissed: boolean;
  readonly rigged: boolean;
}

export type Found =
  | Gathered
  | ({ readonly kind: 'reading'; readonly clauses: readonly Clause[] } & Pick<
      ProposedReading,
      'volts' | 'circumstance' | 'panelDark'
    >)
  | ({ readonly kind: 'store'; readonly clauses: readonly Clause[] } & Pick<
      ProposedStore,
      'name' | 'onHand' | 'keptAt'
    >);

/** Work going on from a fix that was told of: 'it wants a proper seal', 'new catch once it comes'. */
const followUpWords =
  /(?<![a-zß-ɏ])(?:still to (?:do|be done|go on)|still (?:needs?|wants?)|to be done|next (?:week|month|time|weekend|year)|not (?:finished|done) yet|half (?:done|finished)|second coat|yet to|left to do|later on)(?![a-zß-ɏ])/;
export const followUpIn = ({ words }: Clause): string | null => followUpWords.exec(words)?.[0] ?? null;

/** A thing by itself, before what is said of it: 'lower shroud starboard, …'. */
export const isNameAlone = ({ words, sense }: TellingClause) =>
  sense.things.length > 0 &&
  !(sense.defect || sense.remedy || sense.fine || sense.done || sense.temporary || sense.minutes) &&
  words.split(' ').length <= 6 &&
  !verbIn.test(words);
const verbIn =
  /(?<![a-zß-ɏ])(?:i|we|you|they|he|she|is|are|was|were|has|have|had|does|do|did|can|could|will|would|may|might|must|should|[a-zß-ɏ]+(?:'ll|'ve|'re|'d|n't)|it's|that's)(?![a-zß-ɏ])/;
