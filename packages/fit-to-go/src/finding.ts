/** What was looked at. In the order it is told in. */
export const subjects = ['jobs', 'jury rigs', 'dues', 'power', 'loads', 'trailer', 'weather', 'plan'] as const;
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

/** What would take a finding away, or turn what stops into a condition. */
export interface Remedy {
  readonly words: string;
  /** hands-on work it takes; null: not known. [min] */
  readonly minutes: number | null;
  /** false: it can only be waited for or bought, not worked at */
  readonly inHand: boolean;
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
  readonly remedies: readonly Remedy[];
  /** what hurts, where something can */
  readonly cautions: readonly string[];
  /** what is behind it in the book: what is opened when it is tapped */
  readonly of: { readonly collection: string; readonly id: string } | null;
}

/** Something that was not looked at, and why not. */
export interface NotLooked {
  readonly subject: Subject;
  readonly words: string;
  readonly because: string;
}
