/** A part of a load path: what it is, what it measures, what was seen on it. */
import type { Book, Id, PathPartRecord } from '#boat-book';
import { signsFor } from '#loads';
import { ChoiceField, ManyField, PickField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';
import { first, type PartFault, type PartKind, partDraft, partOf } from './part-draft.ts';
import { PartFields } from './part-fields.tsx';
import { partKinds, signNames } from './part-names.ts';

/** what an age that is not known counts as, where age takes from a part */
const agedNote: Readonly<Partial<Record<PartKind, string>>> = {
  rope: 'Left empty, it counts as over ten years old.',
  lashing: 'Left empty, it counts as over ten years old.',
  wire: 'Left empty, it counts as over twelve years old.',
};

export default function PartSheet({
  book,
  path,
  id,
  after = null,
  onClose,
}: {
  readonly book: Book;
  readonly path: Id;
  /** null: a new one */
  readonly id: Id | null;
  /** the part a new one goes in after; null: at the end */
  readonly after?: Id | null;
  readonly onClose: () => void;
}) {
  const { parts, use } = book.loadPaths[path]!;
  const record = parts.find((part) => part.id === id) ?? null;
  const others = parts.filter((part) => part.id !== id);
  const before = record ? parts[parts.indexOf(record) - 1]?.id : (after ?? parts.at(-1)?.id);
  const { draft, set, changed } = useDraft(partDraft(record, before));
  const put = (part: PathPartRecord): readonly PathPartRecord[] => {
    const at = others.findIndex((other) => other.id === draft.stands) + 1;
    return [...others.slice(0, at), part, ...others.slice(at)];
  };
  return (
    <RecordSheet
      title={record ? `Change: ${record.name || partKinds[record.kind]}` : 'A part'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<PartFault>) => partOf(draft, id ?? crypto.randomUUID(), form)}
      onKeep={(part, run) => run('changeLoadPath', { id: path, parts: put(part) })}
      onRemove={record && ((run) => run('changeLoadPath', { id: path, parts: others }))}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <ChoiceField
            label="What it is"
            value={draft.kind}
            onChange={(kind) => set('kind', kind)}
            options={(Object.keys(partKinds) as PartKind[]).map((value) => ({ value, name: partKinds[value] }))}
            refused={faults.kind}
          />
          {draft.kind !== '' && (
            <>
              <TextField
                label="What you call it"
                note="Such as: anchor shackle. It may be left empty."
                value={draft.name}
                onChange={(text) => set('name', text)}
              />
              {others.length > 0 && (
                <ChoiceField
                  label="It comes"
                  value={draft.stands}
                  onChange={(stands) => set('stands', stands)}
                  options={[
                    { value: first, name: 'first, where the load is' },
                    ...others.map((other) => ({
                      value: other.id,
                      name: `after ${other.name || partKinds[other.kind]}`,
                    })),
                  ]}
                />
              )}
              {use === 'hoist' && draft.kind !== 'hand' && (
                <p className="loads-caution">
                  <b>Take care:</b> Nobody stands under what hangs, and nobody is lifted by this.
                </p>
              )}
              <PartFields draft={draft} faults={faults} set={set} />
              <h3 className="loads-fields">As it is now</h3>
              {draft.kind !== 'hand' && (
                <>
                  <PickField
                    label="Looked at"
                    value={draft.looked}
                    onChange={(looked) => set('looked', looked)}
                    options={[
                      { value: 'yes', name: 'yes' },
                      { value: 'not looked at', name: 'not yet' },
                    ]}
                  />
                  {draft.looked === 'yes' && (
                    <ManyField
                      label="Seen on it; nothing ticked, it is sound"
                      values={draft.signs}
                      onChange={(signs) => set('signs', signs)}
                      options={signsFor(draft.kind).map((value) => ({ value, name: signNames[value] }))}
                      empty=""
                    />
                  )}
                </>
              )}
              <DayField
                label="New on"
                note={agedNote[draft.kind] ?? 'Left empty, its age is not known.'}
                value={draft.since}
                onChange={(day) => set('since', day)}
                refused={faults.since}
              />
              {Object.keys(book.juryRigs).length > 0 && (
                <ChoiceField
                  label="It is a jury rig"
                  value={draft.juryRig}
                  onChange={(rig) => set('juryRig', rig)}
                  none="no"
                  options={Object.entries(book.juryRigs).map(([value, { title }]) => ({ value, name: title }))}
                />
              )}
              <h3 className="loads-fields">A strength marked on it</h3>
              <div className="field-grid">
                <NumberField
                  label="The mark"
                  unit={draft.markUnit}
                  value={draft.mark}
                  onChange={(text) => set('mark', text)}
                  refused={faults.mark}
                />
                <PickField
                  label="In"
                  value={draft.markUnit}
                  onChange={(unit) => set('markUnit', unit)}
                  options={(['kN', 'kg', 't'] as const).map((value) => ({ value, name: value }))}
                />
              </div>
              {draft.mark.trim() !== '' && (
                <>
                  <PickField
                    label="It is the"
                    value={draft.markedAs}
                    onChange={(as) => set('markedAs', as)}
                    options={(['working load', 'breaking load'] as const).map((value) => ({ value, name: value }))}
                    refused={faults.markedAs}
                  />
                  <TextField
                    label="Who says so"
                    note="Such as: stamped on it, its maker’s sheet, a test."
                    value={draft.markedBy}
                    onChange={(text) => set('markedBy', text)}
                    refused={faults.markedBy}
                  />
                </>
              )}
              <p className="field-note">
                Left empty, its strength is from tables for new gear, where one has its size.
              </p>
            </>
          )}
        </>
      )}
    </RecordSheet>
  );
}
