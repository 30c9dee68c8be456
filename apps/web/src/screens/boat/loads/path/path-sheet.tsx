/** A load path: what it is called, what it is for, where it is. Its parts and loads are put in on its page. */
import type { Book, Id, LoadPathRecord } from '#boat-book';
import { ChoiceField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';
import { address, goTo } from '../../../../shell/route.ts';

type Named = 'name' | 'use';

const uses: readonly { readonly value: LoadPathRecord['use']; readonly name: string }[] = [
  { value: 'ground-tackle', name: 'anchor, rode, mooring' },
  { value: 'standing-rigging', name: 'standing rigging' },
  { value: 'running-rigging', name: 'running rigging: sheets, halyards' },
  { value: 'hoist', name: 'hoisting, or holding something up' },
];

export default function PathSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? undefined : book.loadPaths[id];
  const { draft, set, changed } = useDraft<{ name: string; use: LoadPathRecord['use'] | ''; zone: Id; note: string }>({
    name: record?.name ?? '',
    use: record?.use ?? '',
    zone: record?.zone ?? '',
    note: record?.note ?? '',
  });
  return (
    <RecordSheet
      title={record ? `Change the load path: ${record.name}` : 'A load path'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<Named>) => ({
        name: form.words('name', draft.name, 'Name it, such as: anchor rode, main halyard.'),
        use: form.chosen('use', draft.use, 'Choose what it is for: it sets how far below breaking its parts may work.'),
        zone: draft.zone || null,
        note: draft.note.trim(),
      })}
      onKeep={async (fields, run) => {
        if (id !== null) return run('changeLoadPath', { id, ...fields });
        const outcome = await run('addLoadPath', { ...fields, parts: [], cases: [] });
        if (outcome.kind === 'done' && outcome.id !== null) goTo(address('boat', 'loads', 'path', outcome.id));
        return outcome;
      }}
      onRemove={id === null ? null : (run) => run('removeLoadPath', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <ChoiceField
            label="What it is for"
            note="It sets how far below breaking its parts may work."
            value={draft.use}
            onChange={(value) => set('use', value)}
            options={uses}
            refused={faults.use}
          />
          <ChoiceField
            label="Where"
            value={draft.zone}
            onChange={(value) => set('zone', value)}
            none="not said"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
          <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
