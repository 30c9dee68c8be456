/** One paper: looked at, and what is said of it changed; or a new one put in. */
import { useEffect, useState } from 'react';
import type { Book, Id, PaperRecord } from '#boat-book';
import { bookClient } from '../../../offline/book-client.ts';
import { ChoiceField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { paperKindName } from './log-words.ts';
import type { LookedPaper } from './paper-file.ts';

type Name = 'title' | 'kind' | 'expires';

export default function PaperSheet({
  book,
  id,
  fresh,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one, of `fresh` */
  readonly id: Id | null;
  readonly fresh: (LookedPaper & { readonly kind: 'paper' }) | null;
  readonly onClose: () => void;
}) {
  const paper = id === null ? undefined : book.papers[id];
  const { draft, set, changed } = useDraft({
    title: paper?.title ?? fresh?.file.replace(/\.[a-z0-9]{1,5}$/i, '') ?? '',
    kind: paper?.kind ?? ('' as PaperRecord['kind'] | ''),
    expires: paper?.expires ?? '',
    fitting: paper?.fitting ?? '',
    note: paper?.note ?? '',
  });
  const read = (form: FormReading<Name>) => ({
    title: form.words('title', draft.title, 'Name the paper.'),
    kind: form.chosen('kind', draft.kind, 'Choose what it is.'),
    expires: form.dayOrNone('expires', draft.expires),
    fitting: draft.fitting === '' ? null : draft.fitting,
    note: draft.note.trim(),
  });
  return (
    <RecordSheet
      title={paper === undefined ? 'A paper' : paper.title}
      keep={paper === undefined ? 'Keep it' : 'Keep'}
      unsaved={changed || fresh !== null}
      read={read}
      onKeep={(fields, run) => {
        if (id !== null) return run('changePaper', { id, ...fields });
        const { bytes, type, file } = fresh!;
        // a copy is handed over: refused, it is tried again with the same bytes
        const copy = bytes.slice();
        return bookClient.keepBlob('keepPaper', { ...fields, bytes: bytes.length, type, file, job: null }, copy);
      }}
      onRemove={id === null ? null : (run) => run('removePaper', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          {paper !== undefined && <Looked paper={paper} />}
          <TextField label="Name" value={draft.title} onChange={(text) => set('title', text)} refused={faults.title} />
          <ChoiceField
            label="What it is"
            value={draft.kind}
            onChange={(value) => set('kind', value)}
            options={Object.entries(paperKindName).map(([value, name]) => ({
              value: value as PaperRecord['kind'],
              name,
            }))}
            refused={faults.kind}
          />
          <DayField
            label="Good until"
            note="The date printed on it. Left empty: it does not run out."
            value={draft.expires}
            onChange={(text) => set('expires', text)}
            refused={faults.expires}
          />
          <ChoiceField
            label="Fitting"
            value={draft.fitting}
            onChange={(value) => set('fitting', value)}
            none="the boat as a whole"
            options={Object.entries(book.fittings).map(([value, { name }]) => ({ value, name }))}
          />
          <TextField label="Note" value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}

function Looked({ paper: { blob, type, title, bytes } }: { readonly paper: PaperRecord }) {
  const [there, setThere] = useState<'coming' | 'not here' | { readonly address: string }>('coming');
  useEffect(() => {
    let live = true;
    let address: string | null = null;
    void bookClient.blob(blob).then((found) => {
      if (!live) return;
      if (found === null) return setThere('not here');
      // whatever the bytes are, they are shown as what they were taken for and as nothing else
      address = URL.createObjectURL(new Blob([found as Uint8Array<ArrayBuffer>], { type }));
      setThere({ address });
    });
    return () => {
      live = false;
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [blob, type]);
  if (there === 'coming') return <p className="soft">Opening it.</p>;
  if (there === 'not here') return <p>It is not on this device. Open a boat file from the device that has it.</p>;
  return (
    <div className="log-paper">
      {type.startsWith('image/') && <img src={there.address} alt={`The paper: ${title}`} />}
      <p>
        <a className="button" href={there.address} target="_blank" rel="noreferrer">
          Open it by itself
        </a>{' '}
        <span className="soft small">{(bytes / 1e6).toFixed(bytes < 1e6 ? 2 : 1)} MB</span>
      </p>
    </div>
  );
}
