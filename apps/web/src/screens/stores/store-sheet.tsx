import type { Book, Id } from '#boat-book';
import { PickField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';

type Name = 'name' | 'expected' | 'stands' | 'lead';

export default function StoreSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const store = id === null ? undefined : book.stores[id];
  const { draft, set, changed } = useDraft({
    name: store?.name ?? '',
    keptAt: store?.keptAt ?? '',
    stands: (store === undefined
      ? ''
      : store.onHand
        ? 'on hand'
        : store.expected === null
          ? 'not ordered'
          : 'expected') as 'on hand' | 'expected' | 'not ordered' | '',
    expected: store?.expected ?? '',
    lead: store?.lead_days?.toString() ?? '',
    note: store?.note ?? '',
  });
  const read = (form: FormReading<Name>) => {
    const stands = form.chosen('stands', draft.stands, 'Say whether it is on hand.');
    return {
      name: form.words('name', draft.name, 'Name it, with its size.'),
      keptAt: draft.keptAt.trim(),
      onHand: stands === 'on hand',
      expected: stands === 'expected' ? form.day('expected', draft.expected) : null,
      lead_days: form.figureOrNone('lead', draft.lead, { min: 0, max: 365, unit: 'days', whole: true }),
      note: draft.note.trim(),
    };
  };
  return (
    <RecordSheet
      title={store ? `Change: ${store.name}` : 'A thing for the stores'}
      keep={store ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addStore', fields) : run('changeStore', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeStore', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="What it is, with its size"
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults.name}
          />
          <PickField
            label="It is"
            value={draft.stands}
            onChange={(value) => set('stands', value)}
            options={[
              { value: 'on hand', name: 'on hand' },
              { value: 'expected', name: 'expected on a day' },
              { value: 'not ordered', name: 'not ordered' },
            ]}
            refused={faults.stands}
          />
          {draft.stands === 'expected' && (
            <DayField
              label="Expected on"
              value={draft.expected}
              onChange={(day) => set('expected', day)}
              refused={faults.expected}
            />
          )}
          <NumberField
            label="Lead time"
            note="Whole days from ordering it to having it: 0 where it is to be had the same day. Leave it empty where you do not know."
            unit="days"
            whole
            value={draft.lead}
            onChange={(text) => set('lead', text)}
            refused={faults.lead}
          />
          <TextField
            label="Where it is kept"
            note="As you would tell a friend who fetches it."
            value={draft.keptAt}
            onChange={(text) => set('keptAt', text)}
          />
          <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
