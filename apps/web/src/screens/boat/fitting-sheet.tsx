import type { Book, Id, Spot } from '#boat-book';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { PhotoStrip } from '../../photos/photo-strip.tsx';
import { photosOf } from '../../photos/photos-of.ts';
import { TakePhotos } from '../../photos/take-photos.tsx';

type Name = 'name' | 'zone';

/** A thing fitted to the boat, with what one wants to know before taking it off. */
export default function FittingSheet({
  book,
  id,
  zone,
  spot,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly zone?: Id;
  /** where on her picture a new one was put */
  readonly spot?: Spot;
  readonly onClose: () => void;
}) {
  const fitting = id === null ? undefined : book.fittings[id];
  const { draft, set, changed } = useDraft({
    name: fitting?.name ?? '',
    zone: fitting?.zone ?? zone ?? '',
    size: fitting?.size ?? '',
    beddedWith: fitting?.beddedWith ?? '',
    note: fitting?.note ?? '',
  });
  const read = (form: FormReading<Name>) => {
    return {
      name: form.words('name', draft.name, 'Name the fitting.'),
      zone: form.chosen('zone', draft.zone, 'Choose where it is.'),
      size: draft.size.trim(),
      beddedWith: draft.beddedWith.trim(),
      note: draft.note.trim(),
    };
  };
  return (
    <RecordSheet
      title={fitting ? `Change the fitting: ${fitting.name}` : 'A fitting'}
      keep={fitting ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) =>
        id === null ? run('addFitting', spot ? { ...fields, spot } : fields) : run('changeFitting', { id, ...fields })
      }
      onRemove={id === null ? null : (run) => run('removeFitting', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <ChoiceField
            label="Where"
            value={draft.zone}
            onChange={(value) => set('zone', value)}
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
            refused={faults.zone}
          />
          <TextField
            label="Size"
            note="Bolts, pins, threads: what you will want in the shop."
            value={draft.size}
            onChange={(text) => set('size', text)}
          />
          <TextField label="Bedded with" value={draft.beddedWith} onChange={(text) => set('beddedWith', text)} />
          <TextField label="Note" rows={3} value={draft.note} onChange={(text) => set('note', text)} />
          {id !== null && (
            <>
              <PhotoStrip book={book} photos={photosOf(book, { fitting: id })} />
              <TakePhotos of={{ fitting: id }} ways={[{ name: 'Photograph it', shows: null }]} />
            </>
          )}
        </>
      )}
    </RecordSheet>
  );
}
