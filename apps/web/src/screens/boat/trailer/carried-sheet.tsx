/** Something that stands on the trailer: what it is, its mass as far as it is known, where it stands and how far it can go. */
import type { Book, Id } from '#boat-book';
import { ChoiceField, PickField, TickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { type CarriedFault, carriedDraft, carriedOf } from './carried-draft.ts';

/** What most boats carry; any other may be typed. */
const usual = [
  'Hull, deck and fittings',
  'The board, up',
  'Mast, boom and wires',
  'The battery',
  'The outboard',
  'The fuel can',
  'The water cans',
  'Anchor and rode',
  'Sails and gear in the cabin',
  'The spare wheel',
];

export default function CarriedSheet({
  book,
  trailer,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly trailer: Id;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const of = book.trailers[trailer];
  const record = id === null ? null : (book.carried[id] ?? null);
  const { draft, set, changed } = useDraft(carriedDraft(book, record));
  if (!of) return null;
  const hoists = Object.entries(book.boardHoists);
  const batteries = Object.entries(book.batteries);
  const hoist = draft.hoist === '' ? undefined : book.boardHoists[draft.hoist];
  return (
    <RecordSheet
      title={record ? `Change: ${record.name}` : 'A thing on the trailer'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<CarriedFault>) => carriedOf(draft, book, [trailer, of], form)}
      onKeep={(fields, run) => (id === null ? run('addCarried', fields) : run('changeCarried', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeCarried', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="What it is"
            value={draft.name}
            onChange={(text) => set('name', text)}
            suggest={usual}
            refused={faults.name}
          />
          {hoists.length > 0 && draft.battery === '' && (
            <ChoiceField
              label="The board of a hoist"
              note="Its mass is then what the hoist says; with the slider under the drawing it is weighed for both."
              value={draft.hoist}
              onChange={(value) => set('hoist', value)}
              none="no"
              options={hoists.map(([value, { name }]) => ({ value, name }))}
            />
          )}
          {batteries.length > 0 && draft.hoist === '' && (
            <ChoiceField
              label="A battery of the book"
              value={draft.battery}
              onChange={(value) => set('battery', value)}
              none="no"
              options={batteries.map(([value, { name }]) => ({ value, name }))}
            />
          )}
          <h3 className="trailer-fields">Its mass</h3>
          <div className="field-grid trailer-three">
            <NumberField
              label="At least"
              unit="kg"
              value={draft.low}
              onChange={(text) => set('low', text)}
              refused={faults.low}
            />
            <NumberField
              label="Likely"
              unit="kg"
              value={draft.likely}
              onChange={(text) => set('likely', text)}
              refused={faults.likely}
            />
            <NumberField
              label="At most"
              unit="kg"
              value={draft.high}
              onChange={(text) => set('high', text)}
              refused={faults.high}
            />
          </div>
          {hoist ? (
            <p className="field-note">The hoist’s own figure counts; these say how far off it may be.</p>
          ) : (
            <PickField
              label="Known by"
              value={draft.massFrom}
              onChange={(value) => set('massFrom', value)}
              options={[
                { value: 'weighed', name: 'weighing' },
                { value: 'its maker', name: 'its maker' },
                { value: 'guessed', name: 'guess' },
              ]}
              refused={faults.massFrom}
            />
          )}
          <h3 className="trailer-fields">Where it stands, on the road</h3>
          <ChoiceField
            label="Measured"
            value={draft.from}
            onChange={(value) => value !== '' && set('from', value)}
            options={[
              { value: 'axle forward', name: 'from the axle forward' },
              { value: 'axle aft', name: 'from the axle aft' },
              { value: 'ball', name: 'from the ball aft' },
              ...(of.stemAhead_m === null ? [] : [{ value: 'stem' as const, name: 'from her stem aft' }]),
            ]}
          />
          <div className="field-grid">
            <NumberField
              label="To its middle"
              unit="m"
              value={draft.place}
              onChange={(text) => set('place', text)}
              refused={faults.place}
            />
            <NumberField
              label="Which may be out by"
              unit="m"
              value={draft.give}
              onChange={(text) => set('give', text)}
              refused={faults.give}
            />
          </div>
          <NumberField
            label="Above the road"
            unit="m"
            note="For the drawing; left empty where it is not measured."
            value={draft.up}
            onChange={(text) => set('up', text)}
            refused={faults.up}
          />
          <PickField
            label="It is"
            value={draft.rides}
            onChange={(value) => set('rides', value)}
            options={[
              { value: 'boat', name: 'in or on the boat' },
              { value: 'trailer', name: 'on the trailer itself' },
            ]}
          />
          <TickField label="It can be put elsewhere" value={draft.movable} onChange={(on) => set('movable', on)} />
          {draft.movable && (
            <div className="field-grid">
              <NumberField
                label="At most aft by"
                unit="m"
                value={draft.aft}
                onChange={(text) => set('aft', text)}
                refused={faults.aft}
              />
              <NumberField
                label="At most forward by"
                unit="m"
                value={draft.forward}
                onChange={(text) => set('forward', text)}
                refused={faults.forward}
              />
            </div>
          )}
          <TickField label="It comes along on the road" value={draft.aboard} onChange={(on) => set('aboard', on)} />
          <TextField label="Note" value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
