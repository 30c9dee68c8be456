/** A temporary fix goes in: of a job with one tap on what it is made of, or said in the keeper's own words. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { makeshifts, usualTrust } from '#jobs';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { capital } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { DayField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { openJobs } from '../../reading/open-work.ts';
import { trustedInWords } from '../../reading/rig-in-words.ts';
import {
  readTrust,
  type TrustDraft,
  type TrustFault,
  TrustFields,
  trustDraft,
  usuallyTrusted,
  usualWords,
} from './trust-fields.tsx';
import './jury-rig-sheet.css';

type Name = 'title' | 'made' | TrustFault;

/** Without `id` a new one. How far an old one is trusted is said anew, with the reason, in a sheet of its own. */
export default function JuryRigSheet({
  book,
  today,
  id,
  job,
  onClose,
}: {
  readonly book: Book;
  readonly today: string;
  readonly id?: Id;
  /** the job it stands in for, where that is known */
  readonly job?: Id;
  readonly onClose: () => void;
}) {
  const rig = id === undefined ? undefined : book.juryRigs[id];
  const { draft, set, changed } = useDraft({
    title: rig?.title ?? '',
    reason: rig?.reason ?? '',
    job: rig?.job ?? job ?? '',
    zone: rig?.zone ?? (job === undefined ? '' : (book.jobs[job]?.zone ?? '')),
    made: rig?.made ?? today,
  });
  // until the keeper says otherwise it is trusted as is usual of its kind, and goes along with what is typed
  const [own, setOwn] = useState<TrustDraft | null>(null);
  const usual = usualTrust(draft.title, (draft.job && book.jobs[draft.job]?.consequence) || null);
  const trust = own ?? trustDraft(usuallyTrusted(usual, today));

  return (
    <RecordSheet
      title={rig ? 'Change the jury rig' : 'A jury rig'}
      keep={rig ? 'Keep' : 'Put it in'}
      unsaved={changed || own !== null}
      read={(form: FormReading<Name>) => {
        const title = form.words('title', draft.title, 'Say what holds what.');
        const made = form.day('made', draft.made);
        if (form.sound() && made > today) form.refuse('made', 'That day is yet to come. Give the day it was made.');
        return {
          said: { title, reason: draft.reason.trim(), job: draft.job || null, zone: draft.zone || null, made },
          trusted: rig ? null : readTrust(form, trust, today),
        };
      }}
      onKeep={({ said, trusted }, run) =>
        id === undefined || trusted !== null
          ? run('addJuryRig', { ...said, ...trusted!, ...(own === null ? { trustedBecause: usualWords(usual) } : {}) })
          : run('changeJuryRig', { id, ...said })
      }
      onClose={onClose}
    >
      {(faults) => (
        <>
          {!rig && job !== undefined && book.jobs[job] && (
            <MadeOf book={book} today={today} job={job} onClose={onClose} />
          )}
          <TextField
            label="What holds what"
            note="Such as: gooseneck lashed with cord."
            value={draft.title}
            onChange={(text) => set('title', text)}
            refused={faults.title}
          />
          {!rig && (
            <>
              <TrustFields draft={trust} onChange={setOwn} faults={faults} />
              <p className="field soft small">
                {own === null
                  ? `${capital(usualWords(usual))}. Our judgement; what you see when you look at it decides.`
                  : `Usual would be ${trustedInWords(usuallyTrusted(usual, today), today)}. `}
                {own !== null && (
                  <button type="button" className="words" onClick={() => setOwn(null)}>
                    As is usual
                  </button>
                )}
              </p>
            </>
          )}
          <ChoiceField
            label="Stands in for the job"
            value={draft.job}
            onChange={(value) => set('job', value)}
            none="no job yet"
            options={openJobs(book).map((named) => ({ value: named.id, name: named.job.title }))}
          />
          <TextField
            label="Why it is there"
            note="Empty: its job says so."
            value={draft.reason}
            onChange={(text) => set('reason', text)}
          />
          <ChoiceField
            label="Where"
            value={draft.zone}
            onChange={(value) => set('zone', value)}
            none="no zone"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
          <DayField label="Made on" value={draft.made} onChange={(day) => set('made', day)} refused={faults.made} />
        </>
      )}
    </RecordSheet>
  );
}

/** What it is made of, for a job that is known: each is put in as it stands with one tap. */
function MadeOf({
  book,
  today,
  job: id,
  onClose,
}: {
  readonly book: Book;
  readonly today: string;
  readonly job: Id;
  readonly onClose: () => void;
}) {
  const { run, refusal } = useRun();
  const job = book.jobs[id]!;
  const what = (job.fitting && book.fittings[job.fitting]?.name) || job.title;
  return (
    <fieldset className="field rig-made-of">
      <legend>Made of</legend>
      <p className="field-note">
        One tap puts it in as it stands here, for {consequenceName[job.consequence]} if it lets go: common practice and
        our judgement. What you see when you look at it decides.
      </p>
      <ul>
        {makeshifts.map((kind) => {
          const usual = usualTrust(kind, job.consequence);
          const trust = usuallyTrusted(usual, today);
          const putIn = async () => {
            const outcome = await run('addJuryRig', {
              title: `${capital(kind)}: ${what}`,
              reason: '',
              job: id,
              zone: job.zone,
              made: today,
              ...trust,
              trustedBecause: usualWords(usual),
            });
            if (outcome.kind === 'done') onClose();
          };
          return (
            <li key={kind}>
              <button type="button" className="words" onClick={() => void putIn()}>
                <b>{capital(kind)}</b> <span className="soft small">{trustedInWords(trust, today)}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <RefusalLine refusal={refusal} />
    </fieldset>
  );
}
