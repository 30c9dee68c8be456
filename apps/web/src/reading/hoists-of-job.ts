/** The board's hoist that a job is about, for the job to lead to its figures. */
import type { Book, Id, Job } from '#boat-book';

/** Hoists in the zone the job is in; none where either has no zone. */
export function hoistsOfJob(
  book: Pick<Book, 'boardHoists'>,
  { zone }: Pick<Job, 'zone'>,
): readonly { readonly id: Id; readonly name: string }[] {
  if (zone === null) return [];
  return Object.entries(book.boardHoists).flatMap(([id, hoist]) =>
    hoist.zone === zone ? [{ id, name: hoist.name }] : [],
  );
}
