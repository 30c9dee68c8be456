import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

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
  const [faults, setFaults] = useState<Faults<Name>>({});
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<Name>();
    const fields = {
      name: form.words('name', draft.name, 'Name the tool.'),
      count: form.figure('count', draft.count, { min: 1, max: 99, unit: '', whole: true }),
      keptAt: draft.keptAt.trim(),
    };
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = id === null ? await run('addTool', fields) : await run('changeTool', { id, ...fields });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={tool ? `Change: ${tool.name}` : 'A tool'} onClose={onClose} unsaved={changed}>
      <Form
        keep={tool ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={faults}
        refusal={refusal}
        also={
          id !== null && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removeTool', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              Take it out
            </button>
          )
        }
      >
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
      </Form>
    </Sheet>
  );
}
