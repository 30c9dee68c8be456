import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { ChoiceField, ManyField, PickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { dayInWords } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { DayField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { consequences, openJobs } from '../../reading/open-work.ts';

type Name = 'title' | 'due';

export default function JobSheet({
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
  const job = book.jobs[id];
  const { draft, set, changed } = useDraft({
    title: job?.title ?? '',
    why: job?.why ?? '',
    consequence: job?.consequence ?? ('comfort' as const),
    zone: job?.zone ?? '',
    fitting: job?.fitting ?? '',
    due: job?.due ?? '',
    outing: job?.outing ?? '',
    afterJobs: job?.afterJobs ?? [],
    note: job?.note ?? '',
  });
  const [faults, setFaults] = useState<Faults<Name>>({});
  const { run, refusal } = useRun();
  if (!job) return null;

  const keep = async () => {
    const form = formReading<Name>();
    const fields = {
      title: form.words('title', draft.title, 'Say what is to be done.'),
      why: draft.why.trim(),
      consequence: draft.consequence,
      zone: draft.zone || null,
      fitting: draft.fitting || null,
      due: form.dayOrNone('due', draft.due),
      outing: draft.outing || null,
      afterJobs: draft.afterJobs,
      note: draft.note.trim(),
    };
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = await run('changeJob', { id, ...fields });
    if (outcome.kind === 'done') onClose();
  };
  const fittings = Object.entries(book.fittings).filter(([, fitting]) => !draft.zone || fitting.zone === draft.zone);

  return (
    <Sheet title="Change the job" onClose={onClose} unsaved={changed}>
      <Form keep="Keep" onKeep={keep} faults={faults} refusal={refusal}>
        <TextField
          label="What is to be done"
          value={draft.title}
          onChange={(text) => set('title', text)}
          refused={faults.title}
        />
        <TextField label="Why" rows={2} value={draft.why} onChange={(text) => set('why', text)} />
        <PickField
          label="If it is left"
          value={draft.consequence}
          onChange={(value) => set('consequence', value)}
          options={consequences.map((value) => ({ value, name: consequenceName[value] }))}
        />
        <ChoiceField
          label="Zone"
          value={draft.zone}
          onChange={(value) => {
            set('zone', value);
            const fitting = draft.fitting ? book.fittings[draft.fitting] : undefined;
            if (fitting && fitting.zone !== value) set('fitting', '');
          }}
          none="no zone"
          options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
        />
        {fittings.length > 0 && (
          <ChoiceField
            label="Fitting"
            value={draft.fitting}
            onChange={(value) => set('fitting', value)}
            none="none"
            options={fittings.map(([value, { name }]) => ({ value, name }))}
          />
        )}
        <DayField
          label="By a date of its own"
          note="Empty: none."
          value={draft.due}
          onChange={(day) => set('due', day)}
          refused={faults.due}
        />
        <ChoiceField
          label="Needed for an outing"
          value={draft.outing}
          onChange={(value) => set('outing', value)}
          none="no outing"
          options={Object.entries(book.outings).map(([value, outing]) => ({
            value,
            name: `${outing.title}, ${dayInWords(outing.date, today)}`,
          }))}
        />
        <ManyField
          label="Jobs that must be done before it"
          values={draft.afterJobs}
          onChange={(values) => set('afterJobs', values)}
          options={openJobs(book)
            .filter((other) => other.id !== id)
            .map((other) => ({ value: other.id, name: other.job.title }))}
          empty="There is no other open job."
        />
        <TextField label="Note" rows={3} value={draft.note} onChange={(text) => set('note', text)} />
      </Form>
    </Sheet>
  );
}
