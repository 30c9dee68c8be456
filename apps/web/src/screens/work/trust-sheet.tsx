/** A jury rig is looked at and trusted anew: a later date needs a reason, which is what one reads when it lets go. */

import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { rigHistory } from '#reckoning';
import { capital, dateInWords } from '../../parts/in-words.ts';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { trustedInWords } from '../../reading/rig-in-words.ts';
import { readTrust, type TrustDraft, type TrustFault, TrustFields, trustDraft } from './trust-fields.tsx';
import './jury-rig-sheet.css';

export default function TrustSheet({
  book,
  today,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly today: string;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const rig = book.juryRigs[id];
  const [trust, setTrust] = useState<TrustDraft | null>(null);
  const [reason, setReason] = useState('');
  if (!rig) return null;
  // the limits stand as they are; a date of its own it must be given
  const draft = trust ?? { ...trustDraft(rig), trustedUntil: '' };
  return (
    <RecordSheet
      title={`Trust it anew: ${rig.title}`}
      keep="Trust it"
      unsaved={trust !== null || reason !== ''}
      read={(form: FormReading<TrustFault | 'reason'>) => ({
        ...readTrust(form, draft, today),
        reason: form.words('reason', reason, 'Say what you looked at and why it holds.'),
      })}
      onKeep={(fields, run) => run('trustJuryRig', { id, ...fields })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <p className="soft">Look at it before you trust it again. So far:</p>
          <ol className="rig-history small">
            {rigHistory(book, id).map((said) => (
              <li key={`${said.entered} ${said.trustedUntil}`}>
                <b>{dateInWords(said.on, today)}</b>: trusted {trustedInWords(said, today)}.{' '}
                <span className="soft">{capital(said.reason)}</span>
              </li>
            ))}
          </ol>
          <TrustFields draft={draft} onChange={setTrust} faults={faults} />
          <TextField
            label="Why it may be"
            note="What you looked at, and what you found."
            rows={2}
            value={reason}
            onChange={setReason}
            refused={faults.reason}
          />
        </>
      )}
    </RecordSheet>
  );
}
