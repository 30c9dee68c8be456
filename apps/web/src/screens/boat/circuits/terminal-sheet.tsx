/** What stands at the battery's plus terminal: the isolator, the main fuse, and what a short would draw. */
import type { BatteryRecord, Book, Id } from '#boat-book';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { fuseKindOptions } from './circuit-draft.ts';

export default function TerminalSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const record = book.batteries[id]!;
  const { draft, set, changed } = useDraft<{
    isolator: 'yes' | 'no' | 'not said';
    main: NonNullable<BatteryRecord['mainFuseKind']> | '';
    fault: string;
  }>({
    isolator: record.isolator === true ? 'yes' : record.isolator === false ? 'no' : 'not said',
    main: record.mainFuseKind ?? '',
    fault: record.fault_A?.toString() ?? '',
  });
  const read = (form: FormReading<'fault'>) => {
    return {
      isolator: draft.isolator === 'not said' ? null : draft.isolator === 'yes',
      mainFuseKind: draft.main === '' ? null : draft.main,
      fault_A: form.figureOrNone('fault', draft.fault, { min: 1, max: 100_000, unit: 'A' }),
    };
  };
  return (
    <RecordSheet
      title={`At the terminal of ${record.name}`}
      keep="Keep"
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => run('changeBattery', { id, ...fields })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <PickField
            label="A switch parts it from the wiring"
            value={draft.isolator}
            onChange={(value) => set('isolator', value)}
            options={[
              { value: 'yes', name: 'yes' },
              { value: 'no', name: 'no' },
              { value: 'not said', name: 'not known' },
            ]}
          />
          <ChoiceField
            label="Kind of the main fuse, ahead of all others"
            value={draft.main}
            onChange={(value) => set('main', value)}
            options={[{ value: 'none' as const, name: 'there is none' }, ...fuseKindOptions]}
            none="not known"
          />
          <NumberField
            label="Short-circuit current on its sheet"
            unit="A"
            note="Left empty, it is assumed by kind and size."
            value={draft.fault}
            onChange={(text) => set('fault', text)}
            refused={faults.fault}
          />
        </>
      )}
    </RecordSheet>
  );
}
