/** The lines of the morning lists, as plain data: what is looked at or done, of which boats, and what comes before it. */

export const morningLists = ['pack', 'tow', 'rig', 'launch', 'recover'] as const;
export type MorningListName = (typeof morningLists)[number];

/** What a boat has, or an outing is, that a line hangs on. */
export type Trait =
  | 'mast'
  | 'raising gear'
  | 'masthead light'
  | 'board'
  | 'drain'
  | 'outboard'
  | 'battery'
  | 'lights'
  | 'anchor'
  | 'rudder'
  | 'gas'
  | 'cover'
  | 'trailer brakes'
  | 'by water'
  | 'nights'
  | 'alone';

/** What of the boat's own book is told under a line. */
export type Naming =
  | 'stays'
  | 'raising gear'
  | 'wind limit'
  | 'masthead'
  | 'board'
  | 'battery'
  | 'lights'
  | 'rode'
  | 'drain'
  | 'ball load'
  | 'nights';

/** What is left to be done where a line is not right: the job's title, and what happens if that is left. */
export interface LineFailing {
  readonly title: string;
  readonly consequence: 'danger' | 'unlawful' | 'stops-sailing' | 'worsens' | 'comfort';
  /** the recipe that mends it, by its id; missing: none of the house's fits */
  readonly recipe?: string;
}

/** What must come before a line, in the same list. */
export interface ComesAfter {
  readonly line: string;
  readonly because: string;
  readonly holds: 'always' | 'usual';
}

export interface MorningLine {
  /** for ever: what a keeper changed of the line names it */
  readonly id: string;
  readonly text: string;
  /** all of them; none: every boat, every outing */
  readonly of: readonly Trait[];
  readonly names: Naming | null;
  readonly cautions: readonly string[];
  /** where it is from */
  readonly from: string;
  readonly fails: LineFailing;
  readonly after: readonly ComesAfter[];
}
