import type { Book, Id } from '#boat-book';
import { ManyField, TickField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';

type Name = 'name' | 'room' | 'along' | 'height';

/** A zone: where it is, who finds room in it, and what dust reaches it. */
export default function ZoneSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const zone = id === null ? undefined : book.zones[id];
  const { length_m: length, freeboard_m: freeboard } = book.boat;
  const metres = (value: number | undefined, unit: number) =>
    value === undefined ? '' : String(Math.round(value * unit * 100) / 100);
  const { draft, set, changed } = useDraft({
    name: zone?.name ?? '',
    words: zone?.words.join(', ') ?? '',
    room: zone?.room.toString() ?? '',
    inside: zone?.inside ?? false,
    near: zone?.near ?? [],
    along: metres(zone?.along, length),
    height: metres(zone?.up, freeboard),
  });
  const read = (form: FormReading<Name>) => {
    const along_m = form.figure('along', draft.along, { min: -1, max: length + 1, unit: 'm' });
    const height_m = form.figure('height', draft.height, { min: -3, max: 20, unit: 'm' });
    return {
      name: form.words('name', draft.name, 'Name the zone.'),
      words: draft.words
        .split(',')
        .map((word) => word.trim())
        .filter((word) => word !== ''),
      room: form.figure('room', draft.room, { min: 1, max: 8, unit: 'people', whole: true }),
      inside: draft.inside,
      near: draft.near,
      along: along_m / length,
      up: height_m / freeboard,
    };
  };
  return (
    <RecordSheet
      title={zone ? `Change the zone: ${zone.name}` : 'A zone'}
      keep={zone ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addZone', fields) : run('changeZone', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeZone', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <TextField
            label="Other words for it"
            note="With commas between; a line that says one of them is put here."
            value={draft.words}
            onChange={(text) => set('words', text)}
          />
          <div className="field-row">
            <NumberField
              label="From the stem"
              unit="m"
              note="Where it is drawn."
              value={draft.along}
              onChange={(text) => set('along', text)}
              refused={faults.along}
            />
            <NumberField
              label="Over the waterline"
              unit="m"
              note="Below it with a minus."
              value={draft.height}
              onChange={(text) => set('height', text)}
              refused={faults.height}
            />
          </div>
          <NumberField
            label="Room for"
            unit="people at once"
            whole
            value={draft.room}
            onChange={(text) => set('room', text)}
            refused={faults.room}
          />
          <TickField label="Inside: rain does not reach it" value={draft.inside} onChange={(on) => set('inside', on)} />
          <ManyField
            label="Dust from here reaches, and the other way round"
            values={draft.near}
            onChange={(near) => set('near', near)}
            options={Object.entries(book.zones)
              .filter(([value]) => value !== id)
              .map(([value, { name }]) => ({ value, name }))}
            empty="There is no other zone."
          />
        </>
      )}
    </RecordSheet>
  );
}
