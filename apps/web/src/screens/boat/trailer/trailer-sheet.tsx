/** The trailer: its sizes, what it weighs empty, its papers, tyres and lashings. */
import type { Book, Id } from '#boat-book';
import { PickField } from '../../../parts/choice-fields.tsx';
import { countInWords } from '../../../parts/in-words.ts';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { LashingFields } from './lashing-fields.tsx';
import { paperFields, stands, type TrailerFault, trailerDraft, trailerOf } from './trailer-draft.ts';
import { TyreFields } from './tyre-fields.tsx';

export default function TrailerSheet({
  book,
  id,
  today,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly today: string;
  readonly onClose: () => void;
}) {
  const record = id === null ? null : (book.trailers[id] ?? null);
  const { draft, set, changed } = useDraft(trailerDraft(record));
  const going = id === null ? 0 : stands(book, id);
  return (
    <RecordSheet
      title={record ? `Change: ${record.name}` : 'A trailer'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<TrailerFault>) => trailerOf(draft, record, today, form)}
      onKeep={(fields, run) => (id === null ? run('addTrailer', fields) : run('changeTrailer', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeTrailer', { id })}
      onClose={onClose}
    >
      {(faults) => {
        const figure = (
          field:
            | 'ballAhead'
            | 'low'
            | 'likely'
            | 'high'
            | 'empty'
            | 'emptyGive'
            | 'stem'
            | 'wheelSize'
            | 'moveAft'
            | 'moveForward',
          label: string,
          unit: string,
        ) => (
          <NumberField
            label={label}
            unit={unit}
            value={draft[field]}
            onChange={(text) => set(field, text)}
            refused={faults[field]}
          />
        );
        return (
          <>
            <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
            {figure('ballAhead', 'From the axle to the ball', 'm')}
            <div className="field-grid">
              <PickField
                label="Axles"
                value={draft.axles}
                onChange={(value) => set('axles', value)}
                options={[
                  { value: '1', name: 'one' },
                  { value: '2', name: 'two' },
                ]}
              />
              <PickField
                label="Brakes"
                value={draft.braked}
                onChange={(value) => set('braked', value)}
                options={[
                  { value: 'yes', name: 'yes' },
                  { value: 'no', name: 'none' },
                ]}
                refused={faults.braked}
              />
            </div>
            <p className="field-note">On two axles measure from half way between them.</p>
            <h3 className="trailer-fields">Empty</h3>
            <div className="field-grid trailer-three">
              {figure('low', 'At least', 'kg')}
              {figure('likely', 'Likely', 'kg')}
              {figure('high', 'At most', 'kg')}
            </div>
            <PickField
              label="Where its weight lies"
              value={draft.emptyBy}
              onChange={(value) => set('emptyBy', value)}
              options={[
                { value: 'ball weighed', name: 'its empty ball load was weighed' },
                { value: 'centre', name: 'its centre is known' },
              ]}
            />
            <div className="field-grid">
              {draft.emptyBy === 'centre'
                ? figure('empty', 'Ahead of the axle, behind it below 0', 'm')
                : figure('empty', 'On the ball, empty', 'kg')}
              {figure('emptyGive', 'Which may be out by', draft.emptyBy === 'centre' ? 'm' : 'kg')}
            </div>
            <h3 className="trailer-fields">The papers and plates</h3>
            <p className="field-note">
              As they stand there, in kg. What is left empty is not looked at; nothing is taken for it.
            </p>
            <div className="field-grid">
              {paperFields.map(({ field, label }) => (
                <NumberField
                  key={field}
                  label={label}
                  unit="kg"
                  value={draft[field]}
                  onChange={(text) => set(field, text)}
                  refused={faults[field]}
                />
              ))}
            </div>
            <DayField label="Read on" value={draft.limitsRead} onChange={(value) => set('limitsRead', value)} />
            <PickField
              label="Share of the ball usually advised"
              value={draft.advice}
              onChange={(value) => set('advice', value)}
              options={[
                { value: 'uk', name: '5 to 7 %, Britain and Europe' },
                { value: 'us', name: '10 to 15 %, United States' },
              ]}
            />
            <h3 className="trailer-fields">How she stands on it</h3>
            <div className="field-grid">
              {figure('stem', 'Her stem ahead of the axle', 'm')}
              {figure('wheelSize', 'A wheel over its tyre', 'm')}
            </div>
            <p className="field-note">For the drawing; left empty where it is not measured.</p>
            <div className="field-grid">
              {figure('moveAft', 'The bow post can go aft by', 'm')}
              {figure('moveForward', 'and forward by', 'm')}
            </div>
            <TyreFields draft={draft} set={set} faults={faults} />
            <LashingFields draft={draft} set={set} faults={faults} />
            <TextField label="Note" value={draft.note} onChange={(text) => set('note', text)} />
            {going > 0 && (
              <p className="field-note">
                Taken out, {countInWords(going, 'thing')} that {going === 1 ? 'stands' : 'stand'} on it{' '}
                {going === 1 ? 'goes' : 'go'} with it; undo brings all of it back.
              </p>
            )}
          </>
        );
      }}
    </RecordSheet>
  );
}
