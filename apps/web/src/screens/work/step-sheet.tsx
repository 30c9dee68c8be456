/** The step editor. What matters for every step stands first; the rest is folded away and says what is in it. */
import { type ReactNode, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { ChoiceField, TickField } from '../../parts/choice-fields.tsx';
import { ConditionsFields } from '../../parts/conditions-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { capital, countInWords } from '../../parts/in-words.ts';
import { SetUpNeedsField } from '../../parts/set-up-needs-field.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { TunedMinutes } from '../../parts/tuned-minutes.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { stepsOf } from '../../reading/open-work.ts';
import { FollowFields } from './follow-fields.tsx';
import { NeedsFields } from './needs-fields.tsx';
import { noFaults, readStep, type StepFaults, stepDraft } from './step-draft.ts';
import { emptyWait } from './wait-draft.ts';
import { WaitFields } from './wait-fields.tsx';

export default function StepSheet({
  book,
  job,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly job: Id;
  /** null: a new step */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const step = id === null ? null : (book.steps[id] ?? null);
  const { draft, set, changed } = useDraft(stepDraft(step));
  const [faults, setFaults] = useState<StepFaults>(noFaults);
  const { run, refusal } = useRun();
  const steps = stepsOf(book, job);
  const index = steps.findIndex((other) => other.id === id);

  const read = readStep(draft, book);
  const keep = async () => {
    setFaults(read.kind === 'refused' ? read.faults : noFaults);
    if (read.kind === 'refused') return;
    const outcome =
      id === null ? await run('addStep', { job, ...read.step }) : await run('changeStep', { id, ...read.step });
    if (outcome.kind === 'done') onClose();
  };
  const anyFault =
    Object.keys(faults.step).length + Object.keys(faults.waits).length + Object.keys(faults.follows).length > 0
      ? faults
      : {};

  return (
    <Sheet title={step ? 'Change the step' : 'A new step'} onClose={onClose} unsaved={changed}>
      <Form
        keep={step ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={anyFault}
        refusal={refusal}
        also={
          step &&
          id && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removeStep', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              Take it out
            </button>
          )
        }
      >
        <TextField
          label="What is done"
          value={draft.title}
          onChange={(text) => set('title', text)}
          refused={faults.step.title}
        />
        <fieldset className="field">
          <legend>Hands-on minutes</legend>
          <div className="field-thirds">
            {(['low', 'likely', 'high'] as const).map((end) => (
              <NumberField
                key={end}
                label={capital(end)}
                unit="min"
                whole
                value={draft[end]}
                onChange={(text) => set(end, text)}
                refused={faults.step[end]}
              />
            ))}
          </div>
        </fieldset>
        {read.kind !== 'refused' && <TunedMinutes book={book} step={read.step} />}
        <NumberField
          label="Pairs of hands"
          unit="0 to 8"
          whole
          value={draft.hands}
          onChange={(text) => set('hands', text)}
          refused={faults.step.hands}
        />
        <TickField label="The keeper is one of them" value={draft.keeper} onChange={(on) => set('keeper', on)} />
        <TickField
          label="Not to be done alone"
          note="Planned only while a second person is there."
          value={draft.notAlone}
          onChange={(on) => set('notAlone', on)}
        />
        {step && id && steps.length > 1 && (
          <div className="field-row">
            <MoveButton
              word="Earlier"
              disabled={index <= 0}
              onMove={() => void run('moveStep', { id, to: index - 1 })}
            />
            <MoveButton
              word="Later"
              disabled={index >= steps.length - 1}
              onMove={() => void run('moveStep', { id, to: index + 1 })}
            />
            <p className="soft small step-place">
              step {index + 1} of {steps.length}
            </p>
          </div>
        )}
        <Group
          name="Weather it needs"
          said={count(Object.values(draft.needs).filter((value) => value !== '' && value !== false).length)}
          open={hasConditionFault(faults)}
        >
          <ConditionsFields draft={draft.needs} onChange={(needs) => set('needs', needs)} faults={faults.step} />
        </Group>
        <Group name="How she must stand" said={count(draft.setUps.length)}>
          <SetUpNeedsField
            book={book}
            label="Set-ups"
            needs={draft.setUps}
            onChange={(needs) => set('setUps', needs)}
          />
        </Group>
        <Group
          name="Tools, stores and place"
          said={count(draft.tools.length + draft.stores.length + draft.features.length)}
          open={faults.step.tools !== undefined}
        >
          <NeedsFields book={book} draft={draft} set={set} refused={faults.step.tools} />
        </Group>
        <Group
          name="Dust, wet finish and mix"
          said={count([draft.dusty, draft.wet, draft.mix !== ''].filter(Boolean).length)}
        >
          <TickField label="It makes dust" value={draft.dusty} onChange={(on) => set('dusty', on)} />
          <TickField
            label="It leaves a wet finish"
            note="Dust then keeps away."
            value={draft.wet}
            onChange={(on) => set('wet', on)}
          />
          <ChoiceField
            label="Uses the mix"
            value={draft.mix}
            onChange={(mix) => set('mix', mix)}
            none="no mix"
            options={Object.entries(book.mixes).map(([value, { name }]) => ({ value, name }))}
          />
          <ChoiceField
            label="Zone, where it is not the job's"
            value={draft.zone}
            onChange={(zone) => set('zone', zone)}
            none="the job's zone"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
        </Group>
        <Group
          name="What it waits for afterwards"
          said={draft.waits.length === 0 ? 'nothing' : countInWords(draft.waits.length, 'wait')}
          open={Object.keys(faults.waits).length > 0}
        >
          {draft.waits.map((wait) => (
            <WaitFields
              key={wait.id}
              book={book}
              draft={wait}
              faults={faults.waits[wait.id] ?? {}}
              onChange={(next) =>
                set(
                  'waits',
                  draft.waits.map((other) => (other.id === next.id ? next : other)),
                )
              }
              onRemove={() =>
                set(
                  'waits',
                  draft.waits.filter((other) => other.id !== wait.id),
                )
              }
            />
          ))}
          <p>
            <button
              type="button"
              className="words"
              onClick={() => set('waits', [...draft.waits, emptyWait(crypto.randomUUID())])}
            >
              {draft.waits.length === 0 ? 'Add a wait' : 'Add another wait'}
            </button>
          </p>
        </Group>
        <Group
          name="Its order"
          said={draft.follows === null ? 'after the step before it' : 'an order of its own'}
          open={Object.keys(faults.follows).length > 0}
        >
          <FollowFields
            book={book}
            others={steps.filter((other) => other.id !== id)}
            follows={draft.follows}
            faults={faults.follows}
            onChange={(follows) => set('follows', follows)}
          />
        </Group>
        <Group name="Cautions" said={count(draft.cautions.split('\n').filter((line) => line.trim()).length)}>
          <TextField
            label="What can hurt someone here"
            note="One to a line. Shown at the step and on the day sheet."
            rows={3}
            value={draft.cautions}
            onChange={(text) => set('cautions', text)}
          />
        </Group>
      </Form>
    </Sheet>
  );
}

function Group({
  name,
  said,
  open = false,
  children,
}: {
  readonly name: string;
  /** what is in it, seen while it is folded */
  readonly said: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className="field-group" open={open || undefined}>
      <summary>
        {name} <span className="soft">{said}</span>
      </summary>
      {children}
    </details>
  );
}

function MoveButton({
  word,
  disabled,
  onMove,
}: {
  readonly word: string;
  readonly disabled: boolean;
  readonly onMove: () => void;
}) {
  return (
    <button type="button" disabled={disabled} onClick={onMove}>
      {word}
    </button>
  );
}

const count = (number: number) => (number === 0 ? 'none' : String(number));

const hasConditionFault = ({ step }: StepFaults) =>
  [step.wind, step.airMin, step.airMax, step.surfaceMin, step.humidity, step.dewMargin].some(
    (fault) => fault !== undefined,
  );
