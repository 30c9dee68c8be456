/** A set-up of the boat: its states, and the work of going from one to another. */
import { useState } from 'react';
import type { Book, Id, SetUp, SetUpNeedRecord } from '#boat-book';
import { ChoiceField, TickField } from '../../parts/choice-fields.tsx';
import {
  type ConditionsDraft,
  type ConditionsFault,
  ConditionsFields,
  conditionsDraft,
  conditionsOf,
} from '../../parts/conditions-fields.tsx';
import { Refused } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { SetUpNeedsField } from '../../parts/set-up-needs-field.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

interface StateDraft {
  readonly id: Id;
  readonly name: string;
  readonly shelters: boolean;
}
interface ChangeDraft {
  readonly from: Id;
  readonly to: Id;
  /** '': it cannot be done in one go */
  readonly minutes: string;
  readonly hands: string;
  readonly needs: ConditionsDraft;
  readonly setUps: readonly SetUpNeedRecord[];
  readonly cautions: string;
}
type Name = 'name' | 'states' | 'now';
type ChangeFault = 'minutes' | 'hands' | ConditionsFault;

export default function SetUpSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const setUp = id === null ? undefined : book.setUps[id];
  const { draft, set, changed } = useDraft({
    name: setUp?.name ?? '',
    states: (setUp?.states ?? [newState(), newState()]) as readonly StateDraft[],
    now: setUp?.now ?? '',
    changes: (setUp?.changes ?? []).map(changeDraft) as readonly ChangeDraft[],
  });
  const [faults, setFaults] = useState<Faults<Name>>({});
  const [changeFaults, setChangeFaults] = useState<Readonly<Record<string, Faults<ChangeFault>>>>({});
  const { run, refusal } = useRun();
  const pairs = draft.states.flatMap((from) => draft.states.filter((to) => to !== from).map((to) => ({ from, to })));
  const changeOf = (from: Id, to: Id): ChangeDraft =>
    draft.changes.find((change) => change.from === from && change.to === to) ?? {
      from,
      to,
      minutes: '',
      hands: '',
      needs: conditionsDraft({}),
      setUps: [],
      cautions: '',
    };
  const setChange = (next: ChangeDraft) =>
    set('changes', [...draft.changes.filter(({ from, to }) => from !== next.from || to !== next.to), next]);

  const keep = async () => {
    const form = formReading<Name>();
    const name = form.words('name', draft.name, 'Name it, such as mast, board or cover.');
    const states = draft.states.map((state) => ({ ...state, name: state.name.trim() }));
    if (states.some((state) => state.name === ''))
      form.refuse('states', 'A state has no name. Name each, such as up and down.');
    if (new Set(states.map((state) => state.name)).size < states.length)
      form.refuse('states', 'Two states have the same name. Give each its own.');
    const now = form.chosen('now', draft.now, 'Say how she stands now.');
    const found: Record<string, Faults<ChangeFault>> = {};
    const changes: SetUp['changes'][number][] = [];
    for (const { from, to } of pairs) {
      const change = changeOf(from.id, to.id);
      if (change.minutes.trim() === '') continue;
      const one = formReading<ChangeFault>();
      const read = {
        from: from.id,
        to: to.id,
        minutes: one.figure('minutes', change.minutes, { min: 1, max: 600, unit: 'min', whole: true }),
        hands: one.figure('hands', change.hands, { min: 1, max: 8, unit: '', whole: true }),
        needs: conditionsOf<ChangeFault>(change.needs, one),
        setUps: change.setUps,
        cautions: change.cautions
          .split('\n')
          .map((line) => line.trim())
          .filter((line) => line !== ''),
      };
      if (one.sound()) changes.push(read);
      else found[`${from.id} ${to.id}`] = one.faults;
    }
    setFaults(form.faults);
    setChangeFaults(found);
    if (!form.sound() || Object.keys(found).length > 0) return;
    const fields = { name, states, now, changes };
    const outcome = id === null ? await run('addSetUp', fields) : await run('changeSetUp', { id, ...fields });
    if (outcome.kind === 'done') onClose();
  };

  return (
    <Sheet title={setUp ? `Change the set-up: ${setUp.name}` : 'A set-up'} onClose={onClose} unsaved={changed}>
      <Form
        keep={setUp ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={Object.keys(faults).length > 0 ? faults : changeFaults}
        refusal={refusal}
        also={
          id !== null && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removeSetUp', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              Take it out
            </button>
          )
        }
      >
        <TextField
          label="What changes"
          note="Such as: mast, board, cover."
          value={draft.name}
          onChange={(text) => set('name', text)}
          refused={faults.name}
        />
        {draft.states.map((state, index) => (
          <div key={state.id} className="boat-state">
            <TextField
              label={`State ${index + 1}`}
              value={state.name}
              onChange={(name) =>
                set(
                  'states',
                  draft.states.map((one) => (one.id === state.id ? { ...one, name } : one)),
                )
              }
            />
            <TickField
              label="keeps rain off"
              value={state.shelters}
              onChange={(shelters) =>
                set(
                  'states',
                  draft.states.map((one) => (one.id === state.id ? { ...one, shelters } : one)),
                )
              }
            />
            {draft.states.length > 2 && (
              <button
                type="button"
                className="words removes"
                onClick={() =>
                  set(
                    'states',
                    draft.states.filter((one) => one.id !== state.id),
                  )
                }
              >
                Take out
              </button>
            )}
          </div>
        ))}
        <Refused text={faults.states} />
        <p>
          <button type="button" className="words" onClick={() => set('states', [...draft.states, newState()])}>
            Another state
          </button>
        </p>
        <ChoiceField
          label="As she stands now"
          value={draft.now}
          onChange={(now) => set('now', now)}
          options={draft.states
            .filter(({ name }) => name.trim())
            .map((state) => ({ value: state.id, name: state.name }))}
          refused={faults.now}
        />
        <h3>The work of changing it</h3>
        <p className="field-note">Minutes left empty: it cannot be done in one go, and is not planned.</p>
        {pairs
          .filter(({ from, to }) => from.name.trim() && to.name.trim())
          .map(({ from, to }) => {
            const change = changeOf(from.id, to.id);
            const wrong = changeFaults[`${from.id} ${to.id}`] ?? {};
            return (
              <fieldset key={`${from.id} ${to.id}`} className="boat-change">
                <legend>
                  from {from.name} to {to.name}
                </legend>
                <div className="field-row">
                  <NumberField
                    label="Takes"
                    unit="min"
                    whole
                    value={change.minutes}
                    onChange={(minutes) => setChange({ ...change, minutes })}
                    refused={wrong.minutes}
                  />
                  <NumberField
                    label="Pairs of hands"
                    unit=""
                    whole
                    value={change.hands}
                    onChange={(hands) => setChange({ ...change, hands })}
                    refused={wrong.hands}
                  />
                </div>
                <details className="field-group" open={Object.keys(wrong).length > 0 || undefined}>
                  <summary>Weather, other set-ups, cautions</summary>
                  <ConditionsFields
                    draft={change.needs}
                    onChange={(needs) => setChange({ ...change, needs })}
                    faults={wrong}
                  />
                  <SetUpNeedsField
                    book={book}
                    label="How she must stand otherwise"
                    needs={change.setUps}
                    onChange={(setUps) => setChange({ ...change, setUps })}
                    except={id ?? undefined}
                  />
                  <TextField
                    label="Cautions"
                    note="One to a line."
                    rows={2}
                    value={change.cautions}
                    onChange={(cautions) => setChange({ ...change, cautions })}
                  />
                </details>
              </fieldset>
            );
          })}
      </Form>
    </Sheet>
  );
}

function newState(): StateDraft {
  return { id: crypto.randomUUID(), name: '', shelters: false };
}

function changeDraft(change: SetUp['changes'][number]): ChangeDraft {
  return {
    from: change.from,
    to: change.to,
    minutes: String(change.minutes),
    hands: String(change.hands),
    needs: conditionsDraft(change.needs),
    setUps: change.setUps,
    cautions: change.cautions.join('\n'),
  };
}
