/** It is ordered: the day it will be here, from its lead time where that is known. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { addDays } from '#units';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { DayField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { todayAt } from '../../reading/today.ts';

export default function OrderedSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const store = book.stores[id];
  const today = todayAt(book);
  const lead = store?.lead_days ?? null;
  const fromLead = lead === null ? '' : addDays(today, lead);
  const { draft, set, changed } = useDraft({ expected: store?.expected ?? fromLead });
  const [faults, setFaults] = useState<Faults<'expected'>>({});
  const { run, refusal } = useRun();
  if (store === undefined) return null;
  const keep = async () => {
    const form = formReading<'expected'>();
    const expected = form.day('expected', draft.expected);
    if (form.sound() && expected < today)
      form.refuse('expected', 'That day has gone by. Give the day it will be here, or say that you have got it.');
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = await run('changeStore', { id, onHand: false, expected });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={`Ordered: ${store.name}`} onClose={onClose} unsaved={changed}>
      <Form keep="Keep" onKeep={keep} faults={faults} refusal={refusal}>
        <DayField
          label="Here on"
          note={
            store.expected === null && lead !== null
              ? 'From its lead time, ordered today. Its jobs are planned from 09:00 that day.'
              : 'Its jobs are planned from 09:00 that day.'
          }
          value={draft.expected}
          onChange={(day) => set('expected', day)}
          refused={faults.expected}
        />
      </Form>
    </Sheet>
  );
}
