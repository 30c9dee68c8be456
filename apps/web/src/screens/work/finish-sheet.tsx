/** The end of a job: what its proof showed, what follows from it, and what belongs in the log. */
import { useState } from 'react';
import type { Book, Id, Job, JobProof, NewJob } from '#boat-book';
import { followUpsOf, standingRigs } from '#reckoning';
import { ChoiceField, ManyField, PickField, TickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { consequenceName } from '../../parts/mark.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { PhotoStrip } from '../../photos/photo-strip.tsx';
import { photosOf } from '../../photos/photos-of.ts';
import { TakePhotos } from '../../photos/take-photos.tsx';
import { stepsOf } from '../../reading/open-work.ts';
import { todayAt } from '../../reading/today.ts';

type Field = 'by' | 'found' | 'because';
type Proved = 'held' | 'did not hold' | 'not proved' | 'no proof';

const ways: readonly { readonly value: JobProof['by']; readonly name: string }[] = [
  { value: 'load', name: 'loaded, and it held' },
  { value: 'hoist', name: 'hoisted or run up and down' },
  { value: 'hose', name: 'hosed, and dry inside' },
  { value: 'continuity', name: 'continuity measured' },
  { value: 'pull', name: 'pulled by hand or with a scale' },
  { value: 'measure', name: 'measured' },
  { value: 'run', name: 'run as in use' },
  { value: 'look', name: 'looked over' },
  { value: 'soak', name: 'left to soak' },
  { value: 'photograph', name: 'photographed' },
];

export default function FinishSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const job = book.jobs[id];
  const owed = stepsOf(book, id).find(({ step }) => step.proof !== undefined)?.step;
  const followUps = followUpsOf(book, id, todayAt(book)).filter(({ already }) => already === null);
  const rigs = standingRigs(book, todayAt(book)).filter(({ rig }) => rig.job === id);
  const { draft, set, changed } = useDraft({
    proved: '' as Proved | '',
    by: owed?.proof ?? ('' as JobProof['by'] | ''),
    found: '',
    because: '',
    who: book.boat.keeper,
    writtenDown: '',
    follows: '',
    left: [] as readonly string[],
    rigsOut: [] as readonly Id[],
  });
  const [faults, setFaults] = useState<Faults<Field>>({});
  const [unsaid, setUnsaid] = useState(false);
  const { run, refusal } = useRun();
  if (job === undefined || job.state !== 'open') return null;
  const { proved } = draft;
  const shown = proved === 'held' || proved === 'did not hold';
  const keep = async () => {
    setUnsaid(proved === '');
    if (proved === '') return;
    const form = formReading<Field>();
    const by = shown ? form.chosen('by', draft.by, 'Choose how it was shown.') : null;
    const found = shown ? form.words('found', draft.found, 'Say what was found, with its figure.') : '';
    const because = proved === 'not proved' ? form.words('because', draft.because, 'Say why not.') : '';
    setFaults(form.faults);
    if (!form.sound()) return;
    const who = draft.who.trim() === '' ? {} : { who: draft.who.trim() };
    const proof = by === null ? {} : { proof: { by, found } };
    const outcome =
      proved === 'did not hold' && by !== null
        ? await run('failProof', { id, proof: { by, found }, ...who })
        : await run('finishJob', {
            id,
            ...who,
            ...proof,
            ...(because === '' ? {} : { notProved: because }),
            ...(draft.writtenDown.trim() === '' ? {} : { writtenDown: draft.writtenDown.trim() }),
            ...(proved === 'held' ? { rigsOut: draft.rigsOut } : {}),
            followUps: [
              ...followUps.filter(({ title }) => !draft.left.includes(title)).map((one) => one.job),
              ...(draft.follows.trim() === '' ? [] : [ownFollowUp(job, draft.follows.trim())]),
            ],
          });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={`Is it proved? ${job.title}`} onClose={onClose} unsaved={changed}>
      <Form
        keep={proved === 'did not hold' ? 'Write it to the log; the job stays open' : 'The job is done'}
        onKeep={keep}
        faults={faults}
        refusal={refusal}
      >
        {owed && (
          <p>
            Its proof: <b>{owed.title}</b>.
          </p>
        )}
        <PickField
          label="The proof"
          value={proved}
          onChange={(value) => {
            set('proved', value);
            setFaults({});
            setUnsaid(false);
          }}
          options={[
            { value: 'held', name: 'it held' },
            { value: 'did not hold', name: 'it did not hold' },
            { value: 'not proved', name: 'not proved' },
            ...(owed ? [] : [{ value: 'no proof' as const, name: 'it needs none' }]),
          ]}
          refused={unsaid && proved === '' ? 'Say how it stands.' : null}
        />
        {shown && (
          <>
            <ChoiceField
              label="How it was shown"
              value={draft.by}
              onChange={(value) => set('by', value)}
              options={ways}
              refused={faults.by}
            />
            <TextField
              label="What was found, with its figure"
              note="Such as: 120 N for 2 minutes; dry inside after 10 minutes; 0.2 ohm."
              value={draft.found}
              onChange={(text) => set('found', text)}
              refused={faults.found}
            />
            <PhotoStrip
              book={book}
              photos={photosOf(book, { job: id }).filter(({ photo }) => photo.shows === 'proof')}
            />
            <TakePhotos of={{ job: id }} ways={[{ name: 'Photograph of the proof', shows: 'proof' }]} />
          </>
        )}
        {proved === 'not proved' && (
          <TextField
            label="Because"
            note="Such as: no water here; the mast is down. It stands in the log with the job."
            value={draft.because}
            onChange={(text) => set('because', text)}
            refused={faults.because}
          />
        )}
        {proved !== '' && (
          <>
            <TextField
              label="By whom"
              note="Empty: not said."
              value={draft.who}
              onChange={(text) => set('who', text)}
            />
            {proved !== 'did not hold' && (
              <>
                <TextField
                  label="To write down"
                  {...(job.writeDown?.length ? { note: job.writeDown.join('; ') } : {})}
                  rows={2}
                  value={draft.writtenDown}
                  onChange={(text) => set('writtenDown', text)}
                />
                <TextField
                  label="Something else that follows from it"
                  note={`Such as: look again after the first hard sail. It goes in as a job; if it is left, ${consequenceName[job.consequence]}, as of this one.`}
                  value={draft.follows}
                  onChange={(text) => set('follows', text)}
                />
                {rigs.length > 0 &&
                  (proved === 'held' ? (
                    <ManyField
                      label="Jury rigs that stood in for it: out"
                      values={draft.rigsOut}
                      onChange={(out) => set('rigsOut', out)}
                      options={rigs.map(({ id: rig, rig: { title } }) => ({ value: rig, name: title }))}
                      empty=""
                    />
                  ) : (
                    <p className="soft">
                      {rigs.map(({ rig }) => rig.title).join(', ')}: stays. Without a proof it comes out only with a
                      reason.
                    </p>
                  ))}
                {followUps.length > 0 && (
                  <fieldset className="field">
                    <legend>What follows from it</legend>
                    {followUps.map(({ title, because, when }) => (
                      <TickField
                        key={title}
                        label={title}
                        note={`${when}; ${because}`}
                        value={!draft.left.includes(title)}
                        onChange={(taken) =>
                          set('left', taken ? draft.left.filter((one) => one !== title) : [...draft.left, title])
                        }
                      />
                    ))}
                  </fieldset>
                )}
              </>
            )}
          </>
        )}
      </Form>
    </Sheet>
  );
}

/** What the keeper says follows, where this job was, and as grave; its minutes are yet to be said. */
const ownFollowUp = ({ consequence, zone, fitting }: Job, title: string): NewJob => ({
  title,
  consequence,
  zone,
  fitting,
  why: '',
});
