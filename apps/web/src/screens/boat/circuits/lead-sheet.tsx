/** The fuse at the battery end of a panel's or a charger's lead: it is the battery that burns the lead. */
import type { Book } from '#boat-book';
import type { CircuitTold } from '#reckoning';
import { PickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';

export default function LeadSheet({
  book,
  place,
  onClose,
}: {
  readonly book: Book;
  readonly place: CircuitTold['place'];
  readonly onClose: () => void;
}) {
  const record = place.kind === 'panel' ? book.panels[place.id] : book.chargers[place.id];
  const { draft, set, changed } = useDraft<{ fused: 'fitted' | 'none' | ''; fuse_A: string }>({
    fused: record?.fuse_A === undefined ? '' : record.fuse_A === null ? 'none' : 'fitted',
    fuse_A: record?.fuse_A?.toString() ?? '',
  });
  const read = (form: FormReading<'fused' | 'fuse_A'>) => {
    const fused = form.chosen('fused', draft.fused, 'Say whether a fuse is fitted.');
    return {
      fuse_A: fused === 'fitted' ? form.figure('fuse_A', draft.fuse_A, { min: 0.1, max: 1000, unit: 'A' }) : null,
    };
  };
  return (
    <RecordSheet
      title={`The lead of ${record?.name ?? 'what was taken out'}`}
      keep="Keep"
      unsaved={changed}
      read={read}
      onKeep={(fields, run) =>
        run(place.kind === 'panel' ? 'changePanel' : 'changeCharger', { id: place.id, ...fields })
      }
      onClose={onClose}
    >
      {(faults) => (
        <>
          <PickField
            label="At the battery end"
            value={draft.fused}
            onChange={(value) => set('fused', value)}
            options={[
              { value: 'fitted', name: 'a fuse is fitted' },
              { value: 'none', name: 'none' },
            ]}
            refused={faults.fused}
          />
          {draft.fused === 'fitted' && (
            <NumberField
              label="Rating"
              unit="A"
              value={draft.fuse_A}
              onChange={(text) => set('fuse_A', text)}
              refused={faults.fuse_A}
            />
          )}
          <p className="field-note">
            A chafed spot on this lead burns with all the battery gives: the fuse stands at the battery, not at the{' '}
            {place.kind}.{place.kind === 'panel' && ' The regulator is connected to the battery first, the panel last.'}
          </p>
        </>
      )}
    </RecordSheet>
  );
}
