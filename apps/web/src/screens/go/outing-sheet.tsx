import type { Book, Id, Outing } from '#boat-book';
import { ManyField, PickField } from '../../parts/choice-fields.tsx';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { ClockField, DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { openJobs } from '../../reading/open-work.ts';

type Name = 'title' | 'date' | 'from' | 'nights' | 'least' | 'wind' | 'gust' | 'crew';
const shown = (figure: number | null | undefined) => figure?.toString() ?? '';
const knots = { min: 0, max: 60, unit: 'knots' };

/** An outing put in, or changed; `begun`: what of a new one was chosen already. */
export default function OutingSheet({
  book,
  id,
  begun = {},
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly begun?: Partial<Outing>;
  readonly onClose: () => void;
}) {
  const outing = id === null ? undefined : book.outings[id];
  const from = outing ?? begun;
  const jobs = openJobs(book);
  const { draft, set, changed } = useDraft({
    title: from.title ?? '',
    date: from.date ?? '',
    from: from.from ?? '',
    nights: shown(from.nights),
    place: from.place ?? '',
    way: from.way ?? ('water' as 'water' | 'road'),
    least: shown(from.windLeast_kn),
    wind: shown(from.wind_kn),
    gust: shown(from.gust_kn),
    crew: shown(from.crew),
    jobs: id === null ? [] : (jobs.filter(({ job }) => job.outing === id).map((named) => named.id) as readonly Id[]),
  });
  return (
    <RecordSheet<Name, Outing>
      title={outing ? `Change: ${outing.title}` : 'An outing'}
      keep={outing ? 'Keep' : 'Put it in'}
      unsaved={changed}
      onClose={onClose}
      read={(form) => {
        const fields = {
          title: form.words('title', draft.title, 'Say what it is, such as: first sail, or the spring passage.'),
          date: form.day('date', draft.date),
          from: form.clock('from', draft.from),
          nights: form.figure('nights', draft.nights, { min: 0, max: 60, unit: 'nights', whole: true }),
          place: draft.place.trim(),
          way: draft.way,
          windLeast_kn: form.figureOrNone('least', draft.least, knots),
          wind_kn: form.figureOrNone('wind', draft.wind, knots),
          gust_kn: form.figureOrNone('gust', draft.gust, { ...knots, max: 90 }),
          crew: form.figureOrNone('crew', draft.crew, { min: 1, max: 12, unit: 'people', whole: true }),
        };
        const { windLeast_kn: least, wind_kn: most, gust_kn: gust } = fields;
        if (least !== null && most === null) form.refuse('wind', `At least ${least} knots: say how much at most.`);
        if (least !== null && most !== null && least > most)
          form.refuse('least', `${least} knots is more than the most, ${most}. Give ${most} or less.`);
        if (gust !== null && most !== null && gust < most)
          form.refuse('gust', `Gusts of ${gust} knots are less than the ${most} it blows. Give ${most} or more.`);
        return fields;
      }}
      onKeep={async (fields, run) => {
        const outcome = id === null ? await run('addOuting', fields) : await run('changeOuting', { id, ...fields });
        if (outcome.kind === 'refused') return outcome;
        const here = id ?? outcome.id;
        for (const named of jobs) {
          const wanted = draft.jobs.includes(named.id);
          if (wanted === (named.job.outing === here)) continue;
          const changedJob = await run('changeJob', { id: named.id, outing: wanted ? here : null });
          if (changedJob.kind === 'refused') return changedJob;
        }
        return outcome;
      }}
      onRemove={id === null ? null : (run) => run('removeOuting', { id })}
    >
      {(faults) => (
        <>
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
          <PickField
            label="How she goes"
            value={draft.way}
            onChange={(way) => set('way', way)}
            options={[
              { value: 'water', name: 'By water' },
              { value: 'road', name: 'Only on the road' },
            ]}
          />
          <TextField label="Where" value={draft.place} onChange={(text) => set('place', text)} />
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
              label="How many go"
              unit="with you, 1 is alone"
              whole
              value={draft.crew}
              onChange={(text) => set('crew', text)}
              refused={faults.crew}
            />
          </div>
          <fieldset className="field">
            <legend>Wind expected, in knots, as far as it is known</legend>
            <div className="field-row">
              <NumberField
                label="At least"
                unit=""
                value={draft.least}
                onChange={(text) => set('least', text)}
                refused={faults.least}
              />
              <NumberField
                label="At most"
                unit=""
                value={draft.wind}
                onChange={(text) => set('wind', text)}
                refused={faults.wind}
              />
              <NumberField
                label="Gusts"
                unit=""
                value={draft.gust}
                onChange={(text) => set('gust', text)}
                refused={faults.gust}
              />
            </div>
          </fieldset>
          <ManyField
            label="Jobs it needs done"
            values={draft.jobs}
            onChange={(values) => set('jobs', values)}
            options={jobs.map((named) => ({ value: named.id, name: named.job.title }))}
            empty="No job is open."
          />
        </>
      )}
    </RecordSheet>
  );
}
