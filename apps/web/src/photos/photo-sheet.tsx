/** One photograph, large, with what is said of it. */
import type { Book, Id, PhotoRecord } from '#boat-book';
import { localAt } from '#units';
import { PickField } from '../parts/choice-fields.tsx';
import { dayInWords } from '../parts/in-words.ts';
import { RecordSheet } from '../parts/record-sheet.tsx';
import { TextField } from '../parts/text-fields.tsx';
import { useDraft } from '../parts/use-draft.ts';
import { todayAt, zoneOf } from '../reading/today.ts';
import { usePicture } from './use-picture.ts';

type Shows = NonNullable<PhotoRecord['shows']> | 'none';

export default function PhotoSheet({
  book,
  id,
  photo,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly photo: PhotoRecord;
  readonly onClose: () => void;
}) {
  const picture = usePicture(photo.blob);
  const { draft, set, changed } = useDraft({ words: photo.words, shows: (photo.shows ?? 'none') as Shows });
  const taken = localAt(Date.parse(photo.taken), zoneOf(book));
  const { position } = photo;
  return (
    <RecordSheet
      title="Photograph"
      keep="Keep"
      unsaved={changed}
      read={() => ({ words: draft.words.trim(), shows: draft.shows === 'none' ? null : draft.shows })}
      onKeep={(fields, run) => run('changePhoto', { id, ...fields })}
      onRemove={(run) => run('removePhoto', { id })}
      onClose={onClose}
    >
      {() => (
        <>
          <figure className="photo-large">
            {picture.state === 'here' && (
              <img
                src={picture.address}
                alt={photo.words || 'The photograph'}
                width={photo.width_px}
                height={photo.height_px}
              />
            )}
            {picture.state === 'not here' && (
              <p>
                The picture is not on this device. A boat file from the device that has it brings it: open it under
                Boat.
              </p>
            )}
            <figcaption className="small soft">
              Taken {dayInWords(taken.day, todayAt(book))} {taken.clock} · {photo.width_px} × {photo.height_px},{' '}
              {Math.max(1, Math.round(photo.bytes / 1000))} kB
              {position !== null &&
                ` · at ${Math.abs(position.latitude_deg).toFixed(4)}° ${position.latitude_deg < 0 ? 'S' : 'N'}, ${Math.abs(position.longitude_deg).toFixed(4)}° ${position.longitude_deg < 0 ? 'W' : 'E'}`}
            </figcaption>
          </figure>
          {photo.job !== null && (
            <PickField
              label="Shows it"
              value={draft.shows}
              onChange={(value) => set('shows', value)}
              options={[
                { value: 'before', name: 'before' },
                { value: 'after', name: 'after' },
                { value: 'proof', name: 'as proof' },
                { value: 'none', name: 'none of these' },
              ]}
            />
          )}
          <TextField label="Words to it" value={draft.words} onChange={(text) => set('words', text)} />
        </>
      )}
    </RecordSheet>
  );
}
