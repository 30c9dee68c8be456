/** A tool: how many there are, where they are kept, and who has borrowed one. */
import type { Book, Id } from '#boat-book';
import { TickField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { todayAt } from '../../reading/today.ts';
import { PlaceFields, type PlaceName, placeDraft, placeKept, readPlace } from './place-fields.tsx';

type Name = PlaceName | 'name' | 'count' | 'lentTo' | 'lentCount' | 'since' | 'back';

export default function ToolSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const tool = id === null ? undefined : book.tools[id];
  const today = todayAt(book);
  const { draft, set, changed } = useDraft({
    name: tool?.name ?? '',
    count: tool?.count.toString() ?? '1',
    place: placeDraft(book, tool),
    lent: (tool?.lent ?? null) !== null,
    lentTo: tool?.lent?.to ?? '',
    lentCount: tool?.lent?.count.toString() ?? '1',
    since: tool?.lent?.since ?? today,
    back: tool?.lent?.back ?? '',
  });
  const read = (form: FormReading<Name>) => {
    const count = form.figure('count', draft.count, { min: 1, max: 99, unit: '', whole: true });
    const lent = draft.lent
      ? {
          to: form.words('lentTo', draft.lentTo, 'Say who has it.'),
          count: form.figure('lentCount', draft.lentCount, { min: 1, max: 99, unit: '', whole: true }),
          since: form.day('since', draft.since),
          back: form.dayOrNone('back', draft.back),
        }
      : null;
    if (lent !== null && lent.count > count)
      form.refuse('lentCount', `There ${count === 1 ? 'is one' : `are ${count}`}, so no more can be lent.`);
    return {
      place: readPlace(form, draft.place, book),
      fields: { name: form.words('name', draft.name, 'Name the tool.'), count, lent },
    };
  };
  return (
    <RecordSheet
      title={tool ? `Change: ${tool.name}` : 'A tool'}
      keep={tool ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={async ({ place, fields }, run) => {
        const kept = await placeKept(place, run);
        if ('kind' in kept) return kept;
        return id === null ? run('addTool', { ...fields, ...kept }) : run('changeTool', { id, ...fields, ...kept });
      }}
      onRemove={id === null ? null : (run) => run('removeTool', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <NumberField
            label="How many there are"
            unit=""
            whole
            value={draft.count}
            onChange={(text) => set('count', text)}
            refused={faults.count}
          />
          <PlaceFields book={book} draft={draft.place} onChange={(place) => set('place', place)} faults={faults} />
          <TickField
            label="It is lent out"
            note="What is lent is not counted on until the day it comes back."
            value={draft.lent}
            onChange={(on) => set('lent', on)}
          />
          {draft.lent && (
            <>
              <TextField
                label="Who has it"
                value={draft.lentTo}
                onChange={(text) => set('lentTo', text)}
                refused={faults.lentTo}
              />
              {Number(draft.count) > 1 && (
                <NumberField
                  label="How many of them"
                  unit=""
                  whole
                  value={draft.lentCount}
                  onChange={(text) => set('lentCount', text)}
                  refused={faults.lentCount}
                />
              )}
              <DayField
                label="Lent on"
                value={draft.since}
                onChange={(day) => set('since', day)}
                refused={faults.since}
              />
              <DayField
                label="Back on"
                note="Empty: not said."
                value={draft.back}
                onChange={(day) => set('back', day)}
                refused={faults.back}
              />
            </>
          )}
        </>
      )}
    </RecordSheet>
  );
}
