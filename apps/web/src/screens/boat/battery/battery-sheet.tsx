/** A battery: its kind and size, as the label says them. */
import type { BatteryRecord, Book, Id } from '#boat-book';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';

type Kind = BatteryRecord['chemistry'];
type Named = 'name' | 'chemistry' | 'nominal_Ah' | 'made' | 'floor_pct';

const kinds: readonly { readonly value: Kind; readonly name: string }[] = [
  { value: 'flooded', name: 'lead, flooded (caps, acid that spills)' },
  { value: 'agm', name: 'lead, AGM (sealed)' },
  { value: 'gel', name: 'lead, gel (sealed)' },
  { value: 'lifepo4', name: 'LiFePO4' },
];
/** lead is planned down to half, LiFePO4 to a fifth: trade practice */
const usualFloor = (kind: Kind | '') => (kind === 'lifepo4' ? '20' : '50');

export default function BatterySheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? undefined : book.batteries[id];
  const { draft, set, changed } = useDraft<{
    name: string;
    zone: Id;
    chemistry: Kind | '';
    nominal_Ah: string;
    nominal_V: '6' | '12' | '24';
    made: string;
    floor_pct: string;
    meter: string;
    note: string;
  }>({
    name: record?.name ?? '',
    zone: record?.zone ?? '',
    chemistry: record?.chemistry ?? '',
    nominal_Ah: record?.nominal_Ah.toString() ?? '',
    nominal_V: (record?.nominal_V.toString() as '6' | '12' | '24' | undefined) ?? '12',
    made: record?.made ?? '',
    floor_pct: record?.floor_pct.toString() ?? '',
    meter: record?.meter ?? 'panel meter',
    note: record?.note ?? '',
  });
  const read = (form: FormReading<Named>) => {
    return {
      name: form.words('name', draft.name, 'Name the battery.'),
      zone: draft.zone === '' ? null : draft.zone,
      chemistry: form.chosen('chemistry', draft.chemistry, 'Choose its kind: the label says it.'),
      nominal_Ah: form.figure('nominal_Ah', draft.nominal_Ah, { min: 1, max: 2000, unit: 'Ah' }),
      nominal_V: Number(draft.nominal_V) as 6 | 12 | 24,
      made: form.dayOrNone('made', draft.made),
      floor_pct: form.figure('floor_pct', draft.floor_pct || usualFloor(draft.chemistry), {
        min: 0,
        max: 95,
        unit: '%',
      }),
      meter: draft.meter.trim(),
      note: draft.note.trim(),
    };
  };
  return (
    <RecordSheet
      title={record ? `Change the battery: ${record.name}` : 'A battery'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addBattery', fields) : run('changeBattery', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeBattery', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <ChoiceField
            label="Kind"
            value={draft.chemistry}
            onChange={(value) => set('chemistry', value)}
            options={kinds}
            refused={faults.chemistry}
          />
          <NumberField
            label="Size on the label"
            unit="Ah"
            note="At the 20-hour rate, as labels give it."
            value={draft.nominal_Ah}
            onChange={(text) => set('nominal_Ah', text)}
            refused={faults.nominal_Ah}
          />
          <PickField
            label="Volts on the label"
            value={draft.nominal_V}
            onChange={(value) => set('nominal_V', value)}
            options={(['6', '12', '24'] as const).map((value) => ({ value, name: value }))}
          />
          <DayField
            label="Made, or bought new"
            note="Left empty, its age is not known and the bands are wider."
            value={draft.made}
            onChange={(text) => set('made', text)}
            refused={faults.made}
          />
          <NumberField
            label="Floor"
            unit="%"
            note={`The lowest charge planned for; ${usualFloor(draft.chemistry)} where left empty (trade practice: lead 50, LiFePO4 20).`}
            value={draft.floor_pct}
            onChange={(text) => set('floor_pct', text)}
            refused={faults.floor_pct}
          />
          <ChoiceField
            label="Where"
            value={draft.zone}
            onChange={(value) => set('zone', value)}
            options={[
              { value: '', name: 'not said' },
              ...Object.entries(book.zones).map(([value, { name }]) => ({ value, name })),
            ]}
          />
          <TextField
            label="Read with"
            note="Readings by one meter share its error."
            value={draft.meter}
            onChange={(text) => set('meter', text)}
          />
          <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
