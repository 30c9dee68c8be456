import { useState } from 'react';
import type { Book, Id, UsedStore } from '#boat-book';
import { Form } from '../../parts/form.tsx';
import { minutesInWords } from '../../parts/in-words.ts';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { expectedUse, type UsedDraft, UsedStores, usedOf } from './used-stores.tsx';

/** A step is done: the minutes really spent tune the next estimate, so they are asked for, not made up. */
export default function TickSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const step = book.steps[id];
  const { draft, set, changed } = useDraft({
    spent: '',
    text: '',
    used: (step ? expectedUse(book, step) : {}) as UsedDraft,
  });
  const [unread, setUnread] = useState<Readonly<Record<string, string>>>({});
  const [faults, setFaults] = useState<Faults<'spent'>>({});
  const { run, refusal } = useRun();
  if (!step) return null;
  const underWay = step.progress.kind === 'under way';
  const tick = async (spent_min: number | null, used: readonly UsedStore[]) => {
    const outcome = await run('tickStep', {
      id,
      ...(spent_min === null ? {} : { spent_min }),
      used,
      ...(draft.text.trim() ? { text: draft.text.trim() } : {}),
    });
    if (outcome.kind === 'done') onClose();
  };
  const keep = async () => {
    const form = formReading<'spent'>();
    const spent = form.figureOrNone('spent', draft.spent, { min: 1, max: 1440, unit: 'min', whole: true });
    const taken = usedOf(book, draft.used);
    setUnread(taken.faults);
    setFaults(form.faults);
    if (form.sound() && Object.keys(taken.faults).length === 0) await tick(spent, taken.used);
  };
  const { low, likely, high } = step.minutes;
  const usual = [...new Set([low, likely, high])];
  return (
    <Sheet title={`Done: ${step.title}`} onClose={onClose} unsaved={changed}>
      <Form keep="Tick it" onKeep={keep} faults={faults} refusal={refusal}>
        <fieldset className="field-row">
          <legend className="field-note">As estimated:</legend>
          {usual.map((minutes) => (
            <p key={minutes}>
              <button type="button" onClick={() => set('spent', String(minutes))}>
                {minutesInWords(minutes)}
              </button>
            </p>
          ))}
        </fieldset>
        <NumberField
          label="Minutes really spent"
          unit="min"
          whole
          note={
            underWay ? 'Empty: the time since it was started.' : 'Empty: not known; the estimate then stays as it is.'
          }
          value={draft.spent}
          onChange={(text) => set('spent', text)}
          refused={faults.spent}
        />
        <UsedStores book={book} step={step} draft={draft.used} faults={unread} onChange={(used) => set('used', used)} />
        <TextField
          label="What to remember"
          note="Such as what it was bedded with, or the size that fitted. It goes in the log."
          rows={2}
          value={draft.text}
          onChange={(text) => set('text', text)}
        />
      </Form>
    </Sheet>
  );
}
