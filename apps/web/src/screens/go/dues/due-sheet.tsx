/** A due: what it is, the parts of its rule, when it was last done, and where the rule is from. */
import type { Book, Consequence, Id } from '#boat-book';
import { allUsual, type IntervalUnit, useKinds, usualInWords, usualOf } from '#dues';
import { recipes } from '#jobs';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import { consequenceName } from '../../../parts/mark.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { type DueDraft, type DueFault, dueDraft, dueOf, useKindNames, withUsual } from './due-draft.ts';

const units = (['days', 'weeks', 'months', 'years'] as const).map((value) => ({ value, name: value }));
const consequences = (Object.keys(consequenceName) as Consequence[]).map((value) => ({
  value,
  name: consequenceName[value],
}));

export default function DueSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? null : (book.dues[id] ?? null);
  const { draft, set, changed } = useDraft(dueDraft(record));
  const usual = draft.usual === '' ? null : usualOf(draft.usual);
  const takeUsual = (next: string) => {
    const filled = withUsual(draft, next);
    for (const field of ['usual', 'title', 'recipe', 'source', 'every', 'unit', 'uses'] as const)
      set(field, filled[field] as never);
  };
  return (
    <RecordSheet
      title={record ? `Change: ${record.title}` : 'Something that comes round'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<DueFault>) => dueOf(draft, record, form)}
      onKeep={(fields, run) => (id === null ? run('addDue', fields) : run('changeDue', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeDue', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <ChoiceField
            label="Begin from what is usual"
            value={draft.usual}
            onChange={takeUsual}
            none="none: my own rule"
            options={allUsual().map((each) => ({ value: each.id, name: each.title }))}
          />
          {usual && (
            <p className="small soft">
              Usual: {usualInWords(usual)} ({usual.source}; {usual.seen}). {usual.note} Change it below as you know it.
            </p>
          )}
          <TextField
            label="What it is"
            value={draft.title}
            onChange={(title) => set('title', title)}
            refused={faults.title}
          />
          <ChoiceField
            label="If it is left"
            value={draft.consequence}
            onChange={(consequence) => set('consequence', consequence)}
            options={consequences}
            refused={faults.consequence}
          />
          <DayField
            label="Last done, made or fitted"
            value={draft.lastDone}
            onChange={(day) => set('lastDone', day)}
            refused={faults.lastDone}
          />
          <RuleFields draft={draft} set={set} faults={faults} />
          <ChoiceField
            label="Zone"
            value={draft.zone}
            onChange={(zone) => set('zone', zone)}
            none="none"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
          <ChoiceField
            label="Recipe of its job"
            value={draft.recipe}
            onChange={(recipe) => set('recipe', recipe)}
            none="none"
            options={[...Object.entries(book.recipes), ...Object.entries(recipes)]
              .map(([value, { title }]) => ({ value, name: title }))
              .sort((a, b) => a.name.localeCompare(b.name))}
          />
          <TextField label="Where the rule is from" value={draft.source} onChange={(source) => set('source', source)} />
          <TextField label="Note" rows={2} value={draft.note} onChange={(note) => set('note', note)} />
        </>
      )}
    </RecordSheet>
  );
}

function RuleFields({
  draft,
  set,
  faults,
}: {
  readonly draft: DueDraft;
  readonly set: <F extends keyof DueDraft>(field: F, value: DueDraft[F]) => void;
  readonly faults: Readonly<Partial<Record<DueFault, string>>>;
}) {
  return (
    <>
      <h3>When it falls due</h3>
      <p className="small soft">Whichever comes first. A date printed on the thing comes before the interval.</p>
      <DayField
        label="Date printed on it"
        value={draft.printed}
        onChange={(day) => set('printed', day)}
        refused={faults.printed}
      />
      <div className="field-row">
        <NumberField
          label="Every"
          unit=""
          whole
          value={draft.every}
          onChange={(every) => set('every', every)}
          refused={faults.every}
        />
        <ChoiceField<IntervalUnit>
          label="Of"
          value={draft.unit}
          onChange={(unit) => set('unit', unit === '' ? 'months' : unit)}
          options={units}
        />
      </div>
      <TextField
        label="Once a year by (month and day, such as 04-15)"
        value={draft.season}
        onChange={(season) => set('season', season)}
        refused={faults.season}
      />
      <details className="due-rule" open={useKindNames.some((kind) => draft.uses[kind] !== '')}>
        <summary>By use</summary>
        <div className="field-row">
          {useKindNames.map((kind) => (
            <NumberField
              key={kind}
              label={`After so many ${useKinds[kind].title}`}
              unit={useKinds[kind].unit}
              value={draft.uses[kind]}
              onChange={(count) => set('uses', { ...draft.uses, [kind]: count })}
              refused={faults[`use-${kind}`]}
            />
          ))}
        </div>
      </details>
      <details className="due-rule" open={draft.measure !== ''}>
        <summary>By what is measured</summary>
        <TextField
          label="What is measured (tread, zinc left, broken strands)"
          value={draft.measure}
          onChange={(measure) => set('measure', measure)}
        />
        {draft.measure !== '' && (
          <>
            <div className="field-row">
              <TextField label="Its unit" value={draft.measureUnit} onChange={(unit) => set('measureUnit', unit)} />
              <NumberField
                label="Its limit"
                unit={draft.measureUnit}
                value={draft.limit}
                onChange={(limit) => set('limit', limit)}
                refused={faults.limit}
              />
              <NumberField
                label="Measured to within"
                unit={draft.measureUnit}
                value={draft.within}
                onChange={(within) => set('within', within)}
                refused={faults.within}
              />
            </div>
            <PickField
              label="It is due when it"
              value={draft.way}
              onChange={(way) => set('way', way)}
              options={[
                { value: 'falls', name: 'falls to the limit' },
                { value: 'rises', name: 'rises to the limit' },
              ]}
            />
          </>
        )}
      </details>
    </>
  );
}
