/** A jury rig is out: the proof of its job speaks for it, or the keeper says why. */
import { useState } from 'react';
import { type Book, type Id, proofOf } from '#boat-book';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { address } from '../../shell/route.ts';

export default function RigOutSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const rig = book.juryRigs[id];
  const [because, setBecause] = useState('');
  if (!rig) return null;
  const job = rig.job === null ? undefined : book.jobs[rig.job];
  const proof = rig.job !== null && job?.state === 'done' ? proofOf(book.log, rig.job) : null;
  return (
    <RecordSheet
      title={`It is out: ${rig.title}`}
      keep="It is out"
      unsaved={because !== ''}
      read={(form: FormReading<'because'>) =>
        proof === null ? form.words('because', because, 'Say why it is out, and what holds now.') : null
      }
      onKeep={(told, run) => run('removeJuryRig', { id, ...(told === null ? {} : { because: told }) })}
      onClose={onClose}
    >
      {(faults) =>
        proof !== null ? (
          <p>
            ‘{job!.title}’ is done. {proof}
          </p>
        ) : (
          <>
            {job && rig.job !== null && (
              <p className="field">
                {job.state === 'open'
                  ? 'It stands in for a job that is not done: '
                  : 'Its job was closed without a proof: '}
                <a href={address('work', 'job', rig.job)} onClick={onClose}>
                  {job.title}
                </a>
                {job.state === 'open' && '. Done with its proof, the job takes it out.'}
              </p>
            )}
            <TextField
              label="Why it is out"
              note="And what holds now. It stands in the log."
              rows={2}
              value={because}
              onChange={setBecause}
              refused={faults.because}
            />
          </>
        )
      }
    </RecordSheet>
  );
}
