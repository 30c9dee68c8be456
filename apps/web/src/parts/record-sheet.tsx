/** The frame of a sheet in which one record is put in, changed or taken out: read, kept or refused, and closed when done. */
import { type ReactNode, useState } from 'react';
import { askOfBook } from './ask-of-book.ts';
import { Form } from './form.tsx';
import { type Faults, type FormReading, formReading } from './read-form.ts';
import { Sheet } from './sheet.tsx';
import { type Refusal, type Run, useRun } from './use-run.ts';

export function RecordSheet<Field extends string, Fields>({
  title,
  keep,
  unsaved,
  read,
  onKeep,
  onRemove,
  onClose,
  children,
}: {
  readonly title: string;
  /** the word on the button: what it does */
  readonly keep: string;
  /** something was typed that is not in the book */
  readonly unsaved: boolean;
  /** the fields of the record as typed; what cannot be read it refuses in the form */
  readonly read: (form: FormReading<Field>) => Fields;
  /** puts the fields into the book; called only where none was refused */
  readonly onKeep: (fields: Fields, run: Run) => ReturnType<Run>;
  /** takes the record out; left out, or null: there is nothing to take out */
  readonly onRemove?: ((run: Run) => ReturnType<Run>) | null | undefined;
  readonly onClose: () => void;
  /** the fields, with what was refused in them */
  readonly children: (faults: Faults<Field>) => ReactNode;
}) {
  const [faults, setFaults] = useState<Faults<Field>>({});
  const { run } = useRun();
  // of whatever was asked: an operation by its name, or one that keeps a file first
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const closeWhenDone = async (outcome: ReturnType<Run>) => {
    const answer = await outcome;
    if (answer.kind === 'done') onClose();
    else setRefusal(answer);
  };
  return (
    <Sheet title={title} onClose={onClose} unsaved={unsaved}>
      <Form
        keep={keep}
        onKeep={async () => {
          const form = formReading<Field>();
          const fields = read(form);
          setFaults(form.faults);
          if (form.sound()) await closeWhenDone(onKeep(fields, run));
        }}
        faults={faults}
        refusal={refusal}
        also={
          onRemove && (
            <button
              type="button"
              className="removes"
              onClick={(event) => void askOfBook(event.currentTarget, () => closeWhenDone(onRemove(run)))}
            >
              Take it out
            </button>
          )
        }
      >
        {children(faults)}
      </Form>
    </Sheet>
  );
}
