import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

type Name = 'name' | 'zone';

/** A thing fitted to the boat, with what one wants to know before taking it off. */
export default function FittingSheet({
  book,
  id,
  zone,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly zone?: Id;
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
  const [faults, setFaults] = useState<Faults<Name>>({});
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<Name>();
    const fields = {
      name: form.words('name', draft.name, 'Name the fitting.'),
      zone: form.chosen('zone', draft.zone, 'Choose where it is.'),
      size: draft.size.trim(),
      beddedWith: draft.beddedWith.trim(),
      note: draft.note.trim(),
    };
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = id === null ? await run('addFitting', fields) : await run('changeFitting', { id, ...fields });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={fitting ? `Change the fitting: ${fitting.name}` : 'A fitting'} onClose={onClose} unsaved={changed}>
      <Form
        keep={fitting ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={faults}
        refusal={refusal}
        also={
          id !== null && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removeFitting', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              Take it out
            </button>
          )
        }
      >
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
      </Form>
    </Sheet>
  );
}
