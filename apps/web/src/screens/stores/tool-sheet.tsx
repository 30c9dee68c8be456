import type { Book, Id } from '#boat-book';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';

type Name = 'name' | 'count';

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
  const { draft, set, changed } = useDraft({
    name: tool?.name ?? '',
    count: tool?.count.toString() ?? '1',
    keptAt: tool?.keptAt ?? '',
  });
  const read = (form: FormReading<Name>) => {
    return {
      name: form.words('name', draft.name, 'Name the tool.'),
      count: form.figure('count', draft.count, { min: 1, max: 99, unit: '', whole: true }),
      keptAt: draft.keptAt.trim(),
    };
  };
  return (
    <RecordSheet
      title={tool ? `Change: ${tool.name}` : 'A tool'}
      keep={tool ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addTool', fields) : run('changeTool', { id, ...fields }))}
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
          <TextField label="Where it is kept" value={draft.keptAt} onChange={(text) => set('keptAt', text)} />
        </>
      )}
    </RecordSheet>
  );
}
