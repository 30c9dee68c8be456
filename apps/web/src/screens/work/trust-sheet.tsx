import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { Form } from '../../parts/form.tsx';
import { dateInWords } from '../../parts/in-words.ts';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { DayField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

type Name = 'trustedUntil' | 'reason';

/** A later date needs a reason: it is what one reads when the rig lets go. */
export default function TrustSheet({
  book,
  today,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly today: string;
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const rig = book.juryRigs[id];
  const { draft, set, changed } = useDraft({ trustedUntil: '', reason: '' });
  const [faults, setFaults] = useState<Faults<Name>>({});
  const { run, refusal } = useRun();
  if (!rig) return null;
  const keep = async () => {
    const form = formReading<Name>();
    const trustedUntil = form.day('trustedUntil', draft.trustedUntil);
    const reason = form.words('reason', draft.reason, 'Say what you looked at and why it holds.');
    if (form.sound() && trustedUntil < today)
      form.refuse('trustedUntil', 'That day is over. Choose today or a later day.');
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = await run('trustJuryRig', { id, trustedUntil, reason });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={`Trust it longer: ${rig.title}`} onClose={onClose} unsaved={changed}>
      <p className="soft">
        Made {dateInWords(rig.made, today)}, trusted until {dateInWords(rig.trustedUntil, today)}. Look at it before you
        trust it again.
      </p>
      <Form keep="Trust it" onKeep={keep} faults={faults} refusal={refusal}>
        <DayField
          label="Trusted until"
          value={draft.trustedUntil}
          onChange={(day) => set('trustedUntil', day)}
          refused={faults.trustedUntil}
        />
        <TextField
          label="Why it may be"
          note="What you looked at, and what you found."
          rows={2}
          value={draft.reason}
          onChange={(text) => set('reason', text)}
          refused={faults.reason}
        />
      </Form>
    </Sheet>
  );
}
