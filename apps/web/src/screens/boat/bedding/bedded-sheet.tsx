import type { Book, Id } from '#boat-book';
import { type BeddingKind, beddingKinds, beddingNames } from '#materials';
import { ChoiceField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { todayAt } from '../../../reading/today.ts';

type Name = 'product' | 'on';

/** What a fitting was bedded with, and when: kept with it and found again in its log. */
export default function BeddedSheet({
  book,
  fitting,
  job,
  onClose,
}: {
  readonly book: Book;
  readonly fitting: Id;
  readonly job: Id | null;
  readonly onClose: () => void;
}) {
  const jobs = Object.entries(book.jobs).filter(([id, each]) => each.fitting === fitting || id === job);
  const { draft, set, changed } = useDraft<{ product: string; kind: BeddingKind | ''; on: string; job: Id | '' }>({
    product: '',
    kind: '',
    on: todayAt(book),
    job: job ?? '',
  });
  const read = (form: FormReading<Name>) => ({
    product: form.words('product', draft.product, 'Say what it was bedded with.'),
    on: form.day('on', draft.on),
  });
  return (
    <RecordSheet
      title={`Bedded: ${book.fittings[fitting]?.name ?? ''}`}
      keep="Write it down"
      unsaved={changed}
      read={read}
      onKeep={(fields, run) =>
        run('bedFitting', {
          ...fields,
          fitting,
          kind: draft.kind || null,
          job: draft.job || null,
          store: Object.entries(book.stores).find(([, { name }]) => name === fields.product)?.[0] ?? null,
        })
      }
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="Bedded with"
            note="What stands on the tube, so that whoever takes it off knows."
            value={draft.product}
            onChange={(text) => set('product', text)}
            suggest={Object.values(book.stores).map(({ name }) => name)}
            refused={faults.product}
          />
          <ChoiceField
            label="Kind"
            value={draft.kind}
            onChange={(kind) => set('kind', kind)}
            none="not said"
            options={beddingNames.map((value) => ({ value, name: beddingKinds[value].title }))}
          />
          <DayField label="On" value={draft.on} onChange={(text) => set('on', text)} refused={faults.on} />
          {jobs.length > 0 && (
            <ChoiceField
              label="As part of the job"
              value={draft.job}
              onChange={(value) => set('job', value)}
              none="none"
              options={jobs.map(([value, { title }]) => ({ value, name: title }))}
            />
          )}
        </>
      )}
    </RecordSheet>
  );
}
