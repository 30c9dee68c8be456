/** Which photographs show a thing, in the order they were taken. */
import type { Book, Id, PhotoRecord } from '#boat-book';

/** What a photograph is of; of a fitting, also those of the jobs done to it. */
export type PhotoOf =
  | { readonly job: Id; readonly step?: Id }
  | { readonly fitting: Id }
  | { readonly entry: Id; readonly job: Id | null };

export interface NamedPhoto {
  readonly id: Id;
  readonly photo: PhotoRecord;
}

export function photosOf(book: Book, of: PhotoOf): readonly NamedPhoto[] {
  const shows = ({ job, step, fitting, entry }: PhotoRecord): boolean => {
    if ('fitting' in of) return fitting === of.fitting || (job !== null && book.jobs[job]?.fitting === of.fitting);
    if ('entry' in of) return entry === of.entry;
    return job === of.job && (of.step === undefined || step === of.step);
  };
  return Object.entries(book.photos)
    .filter(([, photo]) => shows(photo))
    .map(([id, photo]) => ({ id, photo }))
    .sort(
      (a, b) => Date.parse(a.photo.taken) - Date.parse(b.photo.taken) || (a.photo.order ?? 0) - (b.photo.order ?? 0),
    );
}

/** What a photograph is put in with, but for the picture itself. */
export function subjectOf(of: PhotoOf): Pick<PhotoRecord, 'job' | 'step' | 'fitting' | 'entry'> {
  const none = { job: null, step: null, fitting: null, entry: null };
  return 'fitting' in of || 'entry' in of ? { ...none, ...of } : { ...none, job: of.job, step: of.step ?? null };
}

export const showsInWords: Readonly<Record<NonNullable<PhotoRecord['shows']>, string>> = {
  before: 'before',
  after: 'after',
  proof: 'proof',
};
