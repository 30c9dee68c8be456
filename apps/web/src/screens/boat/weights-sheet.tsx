import { useState } from 'react';
import type { Book, Consequence, Id } from '#boat-book';
import { Form, RefusalLine } from '../../parts/form.tsx';
import { capital } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { consequences } from '../../reading/open-work.ts';

/** What the planner weighs a job by, and the mixes that steps may share. */
export default function WeightsSheet({ book, onClose }: { readonly book: Book; readonly onClose: () => void }) {
  const { draft, set, changed } = useDraft<Record<Consequence, string>>({
    danger: String(book.weights.danger),
    unlawful: String(book.weights.unlawful),
    'stops-sailing': String(book.weights['stops-sailing']),
    worsens: String(book.weights.worsens),
    comfort: String(book.weights.comfort),
  });
  const [faults, setFaults] = useState<Faults<Consequence>>({});
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<Consequence>();
    const read = {} as Record<Consequence, number>;
    for (const consequence of consequences)
      read[consequence] = form.figure(consequence, draft[consequence], { min: 1, max: 1000, unit: '' });
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = await run('setWeights', read);
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title="Weights and mixes" onClose={onClose} unsaved={changed}>
      <p className="soft">
        The planner does the most weight it can. A job that has been open for a year counts twice. Our judgement: 100,
        30, 30, 10, 3.
      </p>
      <Form keep="Keep the weights" onKeep={keep} faults={faults} refusal={refusal}>
        <div className="field-row">
          {consequences.map((consequence) => (
            <NumberField
              key={consequence}
              label={capital(consequenceName[consequence])}
              unit=""
              value={draft[consequence]}
              onChange={(text) => set(consequence, text)}
              refused={faults[consequence]}
            />
          ))}
        </div>
        <h3>Mixes</h3>
        <p className="field-note">Steps that use the same mix may share a batch within its pot life.</p>
        {Object.entries(book.mixes).map(([id, mix]) => (
          <MixLine key={id} id={id} name={mix.name} mixing={mix.mixing_min} potLife={mix.potLife_min} />
        ))}
        <MixLine id={null} name="" mixing={null} potLife={null} />
      </Form>
    </Sheet>
  );
}

type MixFault = 'name' | 'mixing' | 'potLife';

function MixLine({
  id,
  name,
  mixing,
  potLife,
}: {
  readonly id: Id | null;
  readonly name: string;
  readonly mixing: number | null;
  readonly potLife: number | null;
}) {
  const start = { name, mixing: mixing?.toString() ?? '', potLife: potLife?.toString() ?? '' };
  const [draft, setDraft] = useState(start);
  const [faults, setFaults] = useState<Faults<MixFault>>({});
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<MixFault>();
    const fields = {
      name: form.words('name', draft.name, 'Name the mix.'),
      mixing_min: form.figure('mixing', draft.mixing, { min: 0, max: 120, unit: 'min', whole: true }),
      potLife_min: form.figure('potLife', draft.potLife, { min: 1, max: 1440, unit: 'min', whole: true }),
    };
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = id === null ? await run('addMix', fields) : await run('changeMix', { id, ...fields });
    if (outcome.kind === 'done' && id === null) setDraft(start);
  };
  return (
    <fieldset className="boat-change">
      <legend>{id === null ? 'Another mix' : name}</legend>
      <TextField
        label="Name"
        value={draft.name}
        onChange={(text) => setDraft({ ...draft, name: text })}
        refused={faults.name}
      />
      <div className="field-row">
        <NumberField
          label="Mixing takes"
          unit="min"
          whole
          value={draft.mixing}
          onChange={(text) => setDraft({ ...draft, mixing: text })}
          refused={faults.mixing}
        />
        <NumberField
          label="Pot life"
          unit="min"
          whole
          value={draft.potLife}
          onChange={(text) => setDraft({ ...draft, potLife: text })}
          refused={faults.potLife}
        />
      </div>
      <RefusalLine refusal={refusal} />
      <button type="button" className="words" onClick={() => void keep()}>
        {id === null ? 'Put the mix in' : 'Keep this mix'}
      </button>
      {id !== null && (
        <button type="button" className="words removes boat-beside" onClick={() => void run('removeMix', { id })}>
          Take it out
        </button>
      )}
    </fieldset>
  );
}
