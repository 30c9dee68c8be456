import type { DueRecord, Id } from '#boat-book';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, NumberField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';

/** What a due's condition was measured at. */
export default function MeasureSheet({
  id,
  due,
  today,
  onClose,
}: {
  readonly id: Id;
  readonly due: DueRecord;
  readonly today: string;
  readonly onClose: () => void;
}) {
  const { draft, set, changed } = useDraft({ value: '', on: today });
  const { measure, unit } = due.condition ?? { measure: 'measure', unit: '' };
  return (
    <RecordSheet
      title={`Measured: ${measure}`}
      keep="Put it in"
      unsaved={changed}
      read={(form: FormReading<'value' | 'on'>) => ({
        due: id,
        value: form.figure('value', draft.value, { min: -100_000, max: 100_000, unit }),
        on: form.day('on', draft.on),
        note: '',
      })}
      onKeep={(fields, run) => run('enterDueMeasure', fields)}
      onClose={onClose}
    >
      {(faults) => (
        <div className="field-row">
          <NumberField
            label={`Now: ${measure}`}
            unit={unit}
            value={draft.value}
            onChange={(value) => set('value', value)}
            refused={faults.value}
          />
          <DayField label="On" value={draft.on} onChange={(on) => set('on', on)} refused={faults.on} />
        </div>
      )}
    </RecordSheet>
  );
}
