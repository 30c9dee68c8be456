import type { Book, Id } from '#boat-book';
import { keptInWords, stowagesInOrder } from '#reckoning';
import { ChoiceField, PickField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';

type Name = 'name' | 'is';

export default function StowageSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const place = id === null ? undefined : book.stowages[id];
  const { draft, set, changed } = useDraft({
    name: place?.name ?? '',
    within: place?.within ?? '',
    is: (place === undefined ? '' : place.aboard ? 'on board' : 'ashore') as 'on board' | 'ashore' | '',
  });
  const outer = draft.within === '' ? undefined : book.stowages[draft.within];
  const read = (form: FormReading<Name>) => ({
    name: form.words('name', draft.name, 'Name the place, such as port locker.'),
    within: outer === undefined ? null : draft.within,
    // what is inside a place on board is on board
    aboard: outer?.aboard ?? form.chosen('is', draft.is, 'Say whether it is on board or ashore.') === 'on board',
  });
  return (
    <RecordSheet
      title={place ? `Change: ${place.name}` : 'A place'}
      keep={place ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addStowage', fields) : run('changeStowage', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeStowage', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="Name"
            note="As you would call it: port locker, garage, shelf 2."
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults.name}
          />
          <ChoiceField
            label="It is in"
            value={draft.within}
            onChange={(within) => set('within', within)}
            none="no other place"
            options={stowagesInOrder(book.stowages)
              .filter(({ id: other }) => other !== id)
              .map(({ id: value }) => ({
                value,
                name: keptInWords(book.stowages, { stowage: value, keptAt: '' }) ?? '',
              }))}
          />
          {outer === undefined && (
            <PickField
              label="It is"
              value={draft.is}
              onChange={(is) => set('is', is)}
              options={[
                { value: 'on board', name: 'on board' },
                { value: 'ashore', name: 'ashore' },
              ]}
              refused={faults.is}
            />
          )}
        </>
      )}
    </RecordSheet>
  );
}
