/** A hole through a cored deck: drilled too big, filled, drilled again. */
import { useState } from 'react';
import { type ScrewSize, screwNames } from '#loads';
import { type FilledHolesTold, filledHolesTold } from '#reckoning';
import { ChoiceField } from '../../../../parts/choice-fields.tsx';
import { type Faults, formReading } from '../../../../parts/read-form.ts';
import { NumberField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';
import { WorkingParts } from '../../../../parts/working-parts.tsx';

type Fault = 'upper' | 'core' | 'holes';

export function FilledPart() {
  const { draft, set } = useDraft<{ size: ScrewSize; upper: string; core: string; holes: string }>({
    size: 'M6',
    upper: '',
    core: '',
    holes: '',
  });
  const [faults, setFaults] = useState<Faults<Fault>>({});
  const [told, setTold] = useState<Extract<FilledHolesTold, { kind: 'told' }> | null>(null);
  const find = () => {
    const form = formReading<Fault>();
    const asked = {
      size: draft.size,
      upper_mm: form.figure('upper', draft.upper, { min: 0.5, max: 30, unit: 'mm' }),
      core_mm: form.figure('core', draft.core, { min: 3, max: 60, unit: 'mm' }),
      holes: form.figure('holes', draft.holes, { min: 1, max: 60, unit: 'holes', whole: true }),
    };
    setFaults(form.faults);
    const found = form.sound() ? filledHolesTold(asked) : null;
    setTold(found?.kind === 'told' ? found : null);
  };
  return (
    <section aria-labelledby="fastened-filled">
      <h2 id="fastened-filled">A hole in a cored deck</h2>
      <p>Drilled too big, filled and drilled again, water finds no way into the core and the bolt does not crush it.</p>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          find();
        }}
      >
        <div className="field-grid fastened-filled">
          <ChoiceField
            label="Bolt"
            value={draft.size}
            onChange={(size) => size && set('size', size)}
            options={screwNames.map((value) => ({ value, name: value }))}
          />
          <NumberField
            label="Upper skin"
            unit="mm"
            value={draft.upper}
            onChange={(text) => set('upper', text)}
            refused={faults.upper}
          />
          <NumberField
            label="Core"
            unit="mm"
            value={draft.core}
            onChange={(text) => set('core', text)}
            refused={faults.core}
          />
          <NumberField
            label="Holes"
            unit=""
            whole
            value={draft.holes}
            onChange={(text) => set('holes', text)}
            refused={faults.holes}
          />
        </div>
        <button type="submit">Say how it is drilled</button>
      </form>
      {told && (
        <>
          <ol className="fastened-steps">
            {told.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <details className="field-group">
            <summary>How the filled hole is worked out</summary>
            <WorkingParts working={told.working} />
          </details>
          {told.cautions.map((line) => (
            <p key={line} className="loads-caution">
              {line}
            </p>
          ))}
        </>
      )}
    </section>
  );
}
