/** A pull read off a scale at the board's hoist, kept beside what is foretold of it now. */
import type { BoardHoistRecord, Id, OperationFields } from '#boat-book';
import { forceSaid, foretoldPull_N, type HoistedIn } from '#reckoning';
import { PickField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';

type PullFault = 'read' | 'where' | 'up';
interface PullDraft {
  readonly unit: 'kg' | 'N';
  readonly read: string;
  readonly handling: 'hoisting' | 'lowering';
  readonly where: 'hardest' | 'at';
  readonly up: string;
  readonly in: HoistedIn;
  readonly with: string;
  readonly note: string;
}

const perKilogram_N = 9.80665;

export default function PullSheet({
  id,
  record,
  onClose,
}: {
  readonly id: Id;
  readonly record: BoardHoistRecord;
  readonly onClose: () => void;
}) {
  const { draft, set, changed } = useDraft<PullDraft>({
    unit: 'kg',
    read: '',
    handling: 'hoisting',
    where: 'hardest',
    up: '',
    in: 'air',
    with: '',
    note: '',
  });
  const hauled_pct = draft.where === 'hardest' ? null : Number(draft.up.replace(',', '.'));
  const asked = hauled_pct === null || (hauled_pct >= 0 && hauled_pct <= 100);
  const foretold_N = asked ? foretoldPull_N(record, { handling: draft.handling, hauled_pct, in: draft.in }) : null;
  const hand = record.winch ? 'crank' : 'fall';
  return (
    <RecordSheet
      title="A pull at the board’s hoist"
      keep="Keep it"
      unsaved={changed}
      read={(form: FormReading<PullFault>) => readPull(draft, form, id, foretold_N)}
      onKeep={(fields, run) => run('enterHoistForce', fields)}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <p>
            {foretold_N === null
              ? 'Nothing can be foretold of it as it is entered.'
              : `Foretold as it stands in the book: ${forceSaid(foretold_N)} on the ${hand}, or ${(foretold_N / perKilogram_N).toFixed(1)} kg on a luggage scale.`}
          </p>
          <PickField
            label="The scale reads"
            value={draft.unit}
            onChange={(unit) => set('unit', unit)}
            options={[
              { value: 'kg', name: 'kilograms' },
              { value: 'N', name: 'newtons' },
            ]}
          />
          <NumberField
            label="It reads"
            unit={draft.unit}
            note={`Hung on the ${hand}, square to it, moving slowly.`}
            value={draft.read}
            onChange={(text) => set('read', text)}
            refused={faults.read}
          />
          <PickField
            label="The board goes"
            value={draft.handling}
            onChange={(handling) => set('handling', handling)}
            options={[
              { value: 'hoisting', name: 'up' },
              { value: 'lowering', name: 'down' },
            ]}
          />
          <PickField
            label="Read"
            value={draft.where}
            onChange={(where) => set('where', where)}
            options={[
              { value: 'hardest', name: 'where it is hardest' },
              { value: 'at', name: 'at another place' },
            ]}
            refused={faults.where}
          />
          {draft.where === 'at' && (
            <NumberField
              label="Of the wire hauled in"
              unit="%"
              note="0 all the way down, 100 all the way up."
              value={draft.up}
              onChange={(text) => set('up', text)}
              refused={faults.up}
            />
          )}
          <PickField
            label="She lies"
            value={draft.in}
            onChange={(place) => set('in', place)}
            options={[
              { value: 'air', name: 'on the trailer' },
              { value: 'sea', name: 'afloat' },
            ]}
          />
          <TextField label="Read with" value={draft.with} onChange={(text) => set('with', text)} />
          <TextField label="Note" value={draft.note} onChange={(text) => set('note', text)} />
          <p className="field-note">
            Nobody under the board. Stand out of the circle of the crank, and leave the pawl in but for the pull itself.
          </p>
        </>
      )}
    </RecordSheet>
  );
}

/** The pull as it goes in the book, beside what is foretold of it; what cannot be read is refused. */
function readPull(
  draft: PullDraft,
  form: FormReading<PullFault>,
  hoist: Id,
  foretold_N: number | null,
): OperationFields<'enterHoistForce'> {
  const most = draft.unit === 'kg' ? 200 : 2000;
  const read = form.figure('read', draft.read, { min: 0.1, max: most, unit: draft.unit });
  const up = draft.where === 'at' ? form.figure('up', draft.up, { min: 0, max: 100, unit: '%' }) : null;
  if (foretold_N === null && form.sound())
    form.refuse('where', 'The board cannot be hoisted as it is entered: mend that first.');
  return {
    hoist,
    at: new Date().toISOString(),
    handling: draft.handling,
    hauled_pct: up,
    in: draft.in,
    hand_N: Number((draft.unit === 'kg' ? read * perKilogram_N : read).toPrecision(6)),
    foretold_N: Number((foretold_N ?? Number.NaN).toPrecision(6)),
    with: draft.with.trim(),
    note: draft.note.trim(),
  };
}
