import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { localAt } from '#units';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { zoneOf } from '../../reading/today.ts';

/** A step in hand takes longer: how much from now, whatever was expected. */
export default function LongerSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const step = book.steps[id];
  const { draft, set, changed } = useDraft({ more: '' });
  const [faults, setFaults] = useState<Faults<'more'>>({});
  const { run, refusal } = useRun();
  if (step?.progress.kind !== 'under way') return null;
  const keep = async () => {
    const form = formReading<'more'>();
    const more = form.figure('more', draft.more, { min: 1, max: 1440, unit: 'min', whole: true });
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = await run('stepTookLonger', { id, expected: new Date(Date.now() + more * 60_000).toISOString() });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={`Took longer: ${step.title}`} onClose={onClose} unsaved={changed}>
      <p className="soft">Expected done at {localAt(Date.parse(step.progress.expected), zoneOf(book)).clock}.</p>
      <Form keep="Keep" onKeep={keep} faults={faults} refusal={refusal}>
        <NumberField
          label="Still to do, from now"
          unit="min"
          whole
          value={draft.more}
          onChange={(text) => set('more', text)}
          refused={faults.more}
        />
      </Form>
    </Sheet>
  );
}
