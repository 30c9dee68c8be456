/** What is found wrong at a trailer: the same for its page, for the jobs made of it and for whether she is fit to go. */
import type { Consequence } from '#boat-book';

/** What a finding is about. */
export type TrailerSubject = 'ball load' | 'masses' | 'tyres' | 'lashings' | 'board';

/** A job that would mend it: by a recipe of the house, or of steps said here, their minutes our guess. */
export type TrailerMend =
  | {
      readonly kind: 'recipe';
      readonly recipe: string;
      readonly title: string;
      readonly sizes: { readonly tyres: number };
    }
  | {
      readonly kind: 'steps';
      readonly title: string;
      readonly steps: readonly {
        readonly title: string;
        readonly minutes: { readonly low: number; readonly likely: number; readonly high: number };
        readonly cautions: readonly string[];
      }[];
    };

export interface TrailerFinding {
  /** one for each thing, so that a list keeps its place: `ball`, `gross`, `tyre-age-2` */
  readonly id: string;
  readonly subject: TrailerSubject;
  /** what happens if it is left; `unknown`: it was not looked at, because something is not entered */
  readonly gravity: Exclude<Consequence, 'comfort' | 'stops-sailing'> | 'unknown';
  /** what is wrong, in a whole sentence with its numbers */
  readonly wrong: string;
  /** what would be right, in a whole sentence; null: nothing to say */
  readonly right: string | null;
  /** down to the figures, a whole sentence each */
  readonly because: readonly string[];
  /** the day the figure under it was read, YYYY-MM-DD; null: it has none */
  readonly from: string | null;
  readonly mend: TrailerMend | null;
}
