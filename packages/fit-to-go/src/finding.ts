/** What was looked at. In the order it is told in. */
export const subjects = [
  'jobs',
  'jury rigs',
  'dues',
  'papers',
  'power',
  'loads',
  'trailer',
  'crew',
  'weather',
  'plan',
] as const;
export type Subject = (typeof subjects)[number];

/**
 * How much a finding weighs for going.
 *
 * - `stops`: she is not fit while it stands;
 * - `condition`: she may go only as it says;
 * - `sound`: it was looked at, and nothing stands against going. Told, so that it is seen what was looked at.
 */
export type Bearing = 'stops' | 'condition' | 'sound';

/** One step of the reason, from what is said down to the figure it rests on. */
export interface Reason {
  readonly words: string;
  /** the day the figure or the record under it is from, YYYY-MM-DD; null where it has none of its own */
  readonly from: string | null;
}

/** What is behind it in the book: what is opened when it is tapped. */
export interface InBook {
  readonly collection: string;
  readonly id: string;
}

/** What would take a finding away, or turn what stops into a condition. */
export interface Remedy {
  /** told once, whatever it mends: what has the same words is the same work */
  readonly words: string;
  /** hands-on work it takes; null: not known. [min] */
  readonly minutes: number | null;
  /** what must cure, dry or rest besides, in whole sentences; empty: nothing */
  readonly waits: string;
  /** false: it can only be waited for, bought or decided, not worked at */
  readonly inHand: boolean;
  /** whether that is done before the outing begins, as it is planned; null: nothing that is planned */
  readonly inTime: { readonly kind: 'in time' | 'not in time'; readonly words: string } | null;
  /** what is left of the finding once it is done */
  readonly leaves: 'nothing' | 'condition';
  /** where it is done or put in; null: nowhere in the book */
  readonly of: InBook | null;
}

/** One thing found for an outing. */
export interface Finding {
  /** one for each thing, so that a list keeps its place */
  readonly id: string;
  readonly subject: Subject;
  readonly bearing: Bearing;
  readonly words: string;
  /** down to the figures, the first right under the words */
  readonly because: readonly Reason[];
  /** any one of them mends it */
  readonly remedies: readonly Remedy[];
  /** what hurts, where something can */
  readonly cautions: readonly string[];
  readonly of: InBook | null;
}

/** Something that was not looked at, and why not. */
export interface NotLooked {
  readonly subject: Subject;
  readonly words: string;
  readonly because: string;
}
