import type { Id } from '#boat-book';

/** Something the keeper should know about how the book was read for the plan; in whole sentences. */
export interface PlanNote {
  readonly kind:
    | 'weather assumed'
    | 'job day left aside'
    | 'job left aside'
    | 'date passed'
    | 'part overdue'
    | 'part not ordered'
    | 'part past its date'
    | 'not enough of a part'
    | 'tool lent'
    | 'under way past its time'
    | 'to be left so'
    | 'taken from the book as';
  readonly words: string;
  readonly job: Id | null;
  readonly day: Id | null;
}

export function planNote(
  kind: PlanNote['kind'],
  words: string,
  about: { readonly job?: Id; readonly day?: Id } = {},
): PlanNote {
  return { kind, words, job: about.job ?? null, day: about.day ?? null };
}
