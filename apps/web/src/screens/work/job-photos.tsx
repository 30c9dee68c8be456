/** The photographs of a job: as it was found, as it was left, and the rest; taken here or chosen from the device. */
import type { Book, Id } from '#boat-book';
import { PhotoStrip } from '../../photos/photo-strip.tsx';
import { photosOf } from '../../photos/photos-of.ts';
import { TakePhotos } from '../../photos/take-photos.tsx';

export function JobPhotos({ book, job }: { readonly book: Book; readonly job: Id }) {
  return (
    <section aria-labelledby="job-photos">
      <div className="job-steps-head">
        <h2 id="job-photos">Photographs</h2>
      </div>
      <PhotoStrip book={book} photos={photosOf(book, { job })} />
      <TakePhotos
        of={{ job }}
        ways={[
          { name: 'Photograph before', shows: 'before' },
          { name: 'Photograph after', shows: 'after' },
        ]}
      />
    </section>
  );
}
