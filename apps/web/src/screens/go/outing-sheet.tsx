import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { ManyField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { ClockField, DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { openJobs } from '../../reading/open-work.ts';

type Name = 'title' | 'date' | 'from' | 'nights' | 'wind';

export default function OutingSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const outing = id === null ? undefined : book.outings[id];
  const jobs = openJobs(book);
  const { draft, set, changed } = useDraft({
    title: outing?.title ?? '',
    date: outing?.date ?? '',
    from: outing?.from ?? '',
    nights: outing?.nights.toString() ?? '',
    place: outing?.place ?? '',
    wind: outing?.wind_kn?.toString() ?? '',
    jobs: id === null ? [] : (jobs.filter(({ job }) => job.outing === id).map((named) => named.id) as readonly Id[]),
  });
  const [faults, setFaults] = useState<Faults<Name>>({});
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<Name>();
    const fields = {
      title: form.words('title', draft.title, 'Say what it is, such as: first sail, or the spring passage.'),
      date: form.day('date', draft.date),
      from: form.clock('from', draft.from),
      nights: form.figure('nights', draft.nights, { min: 0, max: 60, unit: 'nights', whole: true }),
      place: draft.place.trim(),
      wind_kn: form.figureOrNone('wind', draft.wind, { min: 0, max: 60, unit: 'knots' }),
    };
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = id === null ? await run('addOuting', fields) : await run('changeOuting', { id, ...fields });
    if (outcome.kind === 'refused') return;
    const here = id ?? outcome.id;
    for (const named of jobs) {
      const wanted = draft.jobs.includes(named.id);
      if (wanted === (named.job.outing === here)) continue;
      const changedJob = await run('changeJob', { id: named.id, outing: wanted ? here : null });
      if (changedJob.kind === 'refused') return;
    }
    onClose();
  };
  return (
    <Sheet title={outing ? `Change: ${outing.title}` : 'An outing'} onClose={onClose} unsaved={changed}>
      <Form
        keep={outing ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={faults}
        refusal={refusal}
        also={
          id !== null && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removeOuting', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              Take it out
            </button>
          )
        }
      >
        <TextField
          label="What it is"
          value={draft.title}
          onChange={(text) => set('title', text)}
          refused={faults.title}
        />
        <div className="field-row">
          <DayField label="Date" value={draft.date} onChange={(day) => set('date', day)} refused={faults.date} />
          <ClockField
            label="She must be ready at"
            value={draft.from}
            onChange={(clock) => set('from', clock)}
            refused={faults.from}
          />
        </div>
        <div className="field-row">
          <NumberField
            label="Nights aboard"
            unit=""
            whole
            value={draft.nights}
            onChange={(text) => set('nights', text)}
            refused={faults.nights}
          />
          <NumberField
            label="Wind expected"
            unit="knots, if known"
            value={draft.wind}
            onChange={(text) => set('wind', text)}
            refused={faults.wind}
          />
        </div>
        <TextField label="Where" value={draft.place} onChange={(text) => set('place', text)} />
        <ManyField
          label="Jobs it needs done"
          values={draft.jobs}
          onChange={(values) => set('jobs', values)}
          options={jobs.map((named) => ({ value: named.id, name: named.job.title }))}
          empty="No job is open."
        />
      </Form>
    </Sheet>
  );
}
