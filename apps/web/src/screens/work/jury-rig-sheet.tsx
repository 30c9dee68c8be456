import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { usualTrust } from '#jobs';
import { addDays } from '#units';
import { ChoiceField, TickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { dateInWords } from '../../parts/in-words.ts';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { openJobs } from '../../reading/open-work.ts';

type Name = 'title' | 'reason' | 'made' | 'trustedUntil' | 'wind' | 'sails';

/** A temporary fix goes in: what it is, why, and how far it is trusted. Without `id` a new one. */
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
    trustedUntil: rig?.trustedUntil ?? '',
    wind: rig?.wind_max_kn?.toString() ?? '',
    sails: rig?.sails_max?.toString() ?? '',
    notOnRoad: rig?.notOnRoad ?? false,
  });
  const [faults, setFaults] = useState<Faults<Name>>({});
  const { run, refusal } = useRun();

  const usual = usualTrust(draft.title, (draft.job && book.jobs[draft.job]?.consequence) || null);
  const usualUntil = addDays(today, usual.days);
  const takeUsual = () => {
    set('trustedUntil', usualUntil);
    set('wind', usual.wind_max_kn?.toString() ?? '');
    set('notOnRoad', usual.notOnRoad);
  };
  const keep = async () => {
    const form = formReading<Name>();
    const trustedUntil = rig ? rig.trustedUntil : form.day('trustedUntil', draft.trustedUntil);
    const fields = {
      title: form.words('title', draft.title, 'Say what holds what.'),
      reason: form.words('reason', draft.reason, 'Say why it is there.'),
      job: draft.job || null,
      zone: draft.zone || null,
      made: form.day('made', draft.made),
      wind_max_kn: form.figureOrNone('wind', draft.wind, { min: 1, max: 80, unit: 'knots' }),
      sails_max: form.figureOrNone('sails', draft.sails, { min: 0, max: 100, unit: 'sails', whole: true }),
      notOnRoad: draft.notOnRoad,
    };
    if (form.sound() && fields.made > today) form.refuse('made', 'That day is yet to come. Give the day it was made.');
    if (form.sound() && trustedUntil < fields.made)
      form.refuse('trustedUntil', 'That is before it was made. Choose a later day.');
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome =
      rig && id ? await run('changeJuryRig', { id, ...fields }) : await run('addJuryRig', { ...fields, trustedUntil });
    if (outcome.kind === 'done') onClose();
  };

  return (
    <Sheet title={rig ? 'Change the jury rig' : 'A jury rig'} onClose={onClose} unsaved={changed}>
      <Form
        keep={rig ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={faults}
        refusal={refusal}
        also={
          rig &&
          id && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removeJuryRig', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              It is out
            </button>
          )
        }
      >
        <TextField
          label="What holds what"
          note="Such as: gooseneck lashed with cord."
          value={draft.title}
          onChange={(text) => set('title', text)}
          refused={faults.title}
        />
        <TextField
          label="Why it is there"
          value={draft.reason}
          onChange={(text) => set('reason', text)}
          refused={faults.reason}
        />
        {!rig && (
          <div className="field">
            <button type="button" onClick={takeUsual}>
              Trust it as is usual
            </button>
            <p className="small soft">
              Until {dateInWords(usualUntil, today)}
              {usual.wind_max_kn === null ? '' : `, up to ${usual.wind_max_kn} knots`}
              {usual.notOnRoad ? ', not on the road' : ''}: for {usual.kind ?? 'something of no kind that is known'}
              {draft.job ? ' that stands in for this job' : ''}. Our judgement; what you see when you look at it
              decides.
            </p>
          </div>
        )}
        {!rig && (
          <DayField
            label="Trusted until"
            note="The last day you would go with it."
            value={draft.trustedUntil}
            onChange={(day) => set('trustedUntil', day)}
            refused={faults.trustedUntil}
          />
        )}
        <div className="field-row">
          <NumberField
            label="Up to a wind of"
            unit="knots"
            note="Empty: no such limit."
            value={draft.wind}
            onChange={(text) => set('wind', text)}
            refused={faults.wind}
          />
          <NumberField
            label="For at most"
            unit="sails"
            whole
            note="Empty: no such limit."
            value={draft.sails}
            onChange={(text) => set('sails', text)}
            refused={faults.sails}
          />
        </div>
        <TickField label="Not on the road" value={draft.notOnRoad} onChange={(on) => set('notOnRoad', on)} />
        <ChoiceField
          label="Stands in for the job"
          value={draft.job}
          onChange={(value) => set('job', value)}
          none="no job yet"
          options={openJobs(book).map((named) => ({ value: named.id, name: named.job.title }))}
        />
        <ChoiceField
          label="Where"
          value={draft.zone}
          onChange={(value) => set('zone', value)}
          none="no zone"
          options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
        />
        <DayField label="Made on" value={draft.made} onChange={(day) => set('made', day)} refused={faults.made} />
      </Form>
    </Sheet>
  );
}
