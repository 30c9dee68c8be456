import type { Book } from '#boat-book';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { type BoatFault, boatDraft, readBoat } from './boat-draft.ts';
import { BoatFields } from './boat-fields.tsx';

/** Her name and sizes: what is left empty is guessed, and stays named as a guess until it is given. */
export default function SizesSheet({ book, onClose }: { readonly book: Book; readonly onClose: () => void }) {
  const { draft, set, changed } = useDraft(boatDraft(book.boat));
  const read = (form: FormReading<BoatFault>) => {
    const name = form.words('name', draft.name, 'Give her name.');
    return { name, keeper: draft.keeper.trim(), ...readBoat(draft, form) };
  };
  return (
    <RecordSheet
      title="Her sizes"
      keep="Keep"
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => run('setBoat', fields)}
      onClose={onClose}
    >
      {(faults) => <BoatFields draft={draft} faults={faults} set={set} />}
    </RecordSheet>
  );
}
