/** A stay: its wire, its length, its screw, and what it is set to. */
import type { Book, Id, StayRecord } from '#boat-book';
import { type Laid, type ScrewThread, screwThreadTitles } from '#loads';
import { ChoiceField, PickField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';

type Named = 'name' | 'laid' | 'size' | 'length' | 'thread' | 'aim' | 'made';

export default function StaySheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? null : (book.stays[id] ?? null);
  const { draft, set, changed } = useDraft({
    name: record?.name ?? '',
    laid: (record?.laid ?? '') as Laid | '',
    size: said(record?.size_mm),
    length: said(record?.length_m),
    thread: (record?.screw?.thread ?? '') as ScrewThread | '',
    ends: record?.screw?.ends ?? 'both',
    aim: said(record?.aim_pct),
    made: record?.made ?? '',
    zone: record?.zone ?? '',
    note: record?.note ?? '',
  });
  const read = (form: FormReading<Named>): StayRecord => ({
    name: form.words('name', draft.name, 'Such as: forestay, cap shroud to port.'),
    laid: form.chosen('laid', draft.laid, 'Choose how its wire is laid: 1x19 is the stiff kind of most shrouds.'),
    size_mm: form.figure('size', draft.size, { min: 1, max: 20, unit: 'mm' }),
    length_m: form.figure('length', draft.length, { min: 0.5, max: 30, unit: 'm' }),
    screw: draft.thread === '' ? null : { thread: draft.thread, ends: draft.ends },
    aim_pct: form.figureOrNone('aim', draft.aim, { min: 1, max: 40, unit: '%' }),
    made: form.dayOrNone('made', draft.made),
    zone: draft.zone || null,
    note: draft.note.trim(),
  });
  return (
    <RecordSheet
      title={record ? `Change the stay: ${record.name}` : 'A stay'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addStay', fields) : run('changeStay', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeStay', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <PickField
            label="How its wire is laid"
            value={draft.laid}
            onChange={(value) => set('laid', value)}
            options={(['1x19', '7x7', '7x19'] as const).map((value) => ({ value, name: value }))}
            refused={faults.laid}
          />
          <div className="field-grid">
            <NumberField
              label="Wire across"
              unit="mm"
              value={draft.size}
              onChange={(text) => set('size', text)}
              refused={faults.size}
            />
            <NumberField
              label="From pin to pin"
              unit="m"
              value={draft.length}
              onChange={(text) => set('length', text)}
              refused={faults.length}
            />
          </div>
          <ChoiceField
            label="Thread of its rigging screw"
            note="Without it, no turns can be told."
            value={draft.thread}
            onChange={(value) => set('thread', value)}
            options={(Object.keys(screwThreadTitles) as ScrewThread[]).map((value) => ({
              value,
              name: screwThreadTitles[value],
            }))}
            none="not known, or no screw"
          />
          {draft.thread !== '' && (
            <PickField
              label="Its body has thread"
              value={draft.ends}
              onChange={(value) => set('ends', value)}
              options={[
                { value: 'both', name: 'at both ends' },
                { value: 'one', name: 'at one end' },
              ]}
            />
          )}
          <NumberField
            label="Set to, of its breaking load"
            unit="%"
            note="Cap shrouds 15 to 20, on light masthead rigs 10 to 15 (tuning practice); the sailmaker’s or builder’s figure wins. Left empty: not said."
            value={draft.aim}
            onChange={(text) => set('aim', text)}
            refused={faults.aim}
          />
          <DayField
            label="Made, or bought new"
            value={draft.made}
            onChange={(text) => set('made', text)}
            refused={faults.made}
          />
          <ChoiceField
            label="Where it ends"
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

const said = (value: number | null | undefined) => (value === null || value === undefined ? '' : String(value));
