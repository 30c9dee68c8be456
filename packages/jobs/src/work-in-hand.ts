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

export interface Open {
  readonly kind: 'job' | 'jury rig';
  readonly clauses: TellingClause[];
  readonly things: Set<string>;
  readonly heading: Heading | null;
  defect: boolean;
  remedy: boolean;
  minutes: boolean;
  /** waved aside, or it came right by itself; until more is told of what is to be done */
  dismissed: boolean;
  followUp: string | null;
  rig: Open | null;
}

/** Work going on from a fix that was told of: 'it wants a proper seal', 'new catch once it comes'. */
const followUpWords =
  /(?<![a-zß-ɏ])(?:still to (?:do|be done|go on)|still (?:needs?|wants?)|to be done|next (?:week|month|time|weekend|year)|not (?:finished|done) yet|half (?:done|finished)|second coat|yet to|left to do|later on)(?![a-zß-ɏ])/;
/** The clause is more of the work. */
export function goOn(work: Open, clause: TellingClause) {
  work.clauses.push(clause);
  for (const thing of clause.sense.things) work.things.add(thing);
  work.defect ||= clause.sense.defect;
  work.remedy ||= clause.sense.remedy;
  work.minutes ||= clause.sense.minutes;
  if (clause.sense.remedy || clause.sense.minutes) work.dismissed = false;
  work.followUp ??= followUpWords.exec(clause.words)?.[0] ?? null;
}

/** A thing by itself, before what is said of it: 'lower shroud starboard, …'. */
export const isNameAlone = ({ words, sense }: TellingClause) =>
  sense.things.length > 0 &&
  !(sense.defect || sense.remedy || sense.fine || sense.done || sense.temporary || sense.minutes) &&
  words.split(' ').length <= 6;
