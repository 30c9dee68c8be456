/** The fields of one wait: what it is waited for, by whose law, and what it asks of the meantime. */
import type { Book } from '#boat-book';
import { cureLaws, tinSpeaksFor } from '#materials';
import { ChoiceField, ManyField, TickField } from '../../parts/choice-fields.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { SetUpNeedsField } from '../../parts/set-up-needs-field.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { lawInWords } from '../../reading/step-in-words.ts';
import { lawKind, type WaitDraft, type WaitFault, withProduct } from './wait-draft.ts';

export function WaitFields({
  book,
  draft,
  faults,
  onChange,
  onRemove,
}: {
  readonly book: Book;
  readonly draft: WaitDraft;
  readonly faults: Faults<WaitFault>;
  readonly onChange: (draft: WaitDraft) => void;
  readonly onRemove: () => void;
}) {
  const set = <K extends keyof WaitDraft>(key: K, value: WaitDraft[K]) => onChange({ ...draft, [key]: value });
  const known = cureLaws.find((one) => one.id === draft.product);
  const kind = lawKind(draft);
  const tins = Object.entries(book.tins).filter(([, { family }]) => tinSpeaksFor(family, draft.product));
  const figure = (
    key: 'reference' | 'doubles' | 'minimum' | 'depth' | 'firstDay' | 'humidity' | 'stopsAt',
    label: string,
    unit: string,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      value={draft[key]}
      onChange={(text) => set(key, text)}
      refused={faults[key]}
    />
  );
  return (
    <fieldset className="step-wait">
      <legend className="unseen">Wait: {draft.title || 'new'}</legend>
      <ChoiceField
        label="What is waited for"
        value={draft.product}
        onChange={(product) => onChange(withProduct(draft, product))}
        options={[
          { value: 'set time', name: 'a set time, whatever the weather' },
          ...cureLaws.map((one) => ({ value: one.id, name: one.title })),
        ]}
        refused={faults.law}
      />
      <TextField label="Called" value={draft.title} onChange={(text) => set('title', text)} refused={faults.title} />
      {kind === 'set time' && (
        <NumberField
          label="It lasts"
          unit="h"
          value={draft.hours}
          onChange={(text) => set('hours', text)}
          refused={faults.hours}
        />
      )}
      {known && (
        <>
          {!draft.fromTin && (
            <p className="field-note">
              {lawInWords(known.law)}. Over when {known.until}. Our figure ({known.law.from}); the tin wins.
            </p>
          )}
          {known.cautions.map((caution) => (
            <p key={caution} className="job-caution small">
              {caution}
            </p>
          ))}
          {tins.length > 0 && !draft.fromTin && (
            <ChoiceField
              label="Which tin"
              note="What it says wins over our figure."
              value={draft.tin}
              onChange={(tin) => set('tin', tin)}
              none="the one the step takes, or none"
              options={tins.map(([value, { name }]) => ({ value, name }))}
            />
          )}
          {kind === 'moisture' && !draft.fromTin && figure('depth', 'Bead deep', 'mm')}
          {known.law.kind !== 'never cures' && (
            <TickField label="The tin says otherwise" value={draft.fromTin} onChange={(on) => set('fromTin', on)} />
          )}
        </>
      )}
      {draft.fromTin && (kind === 'reacts' || kind === 'dries') && (
        <div className="field-row">
          <NumberField
            label="From the tin"
            unit="h"
            value={draft.hours}
            onChange={(text) => set('hours', text)}
            refused={faults.hours}
          />
          {figure('reference', 'At', '°C')}
          {figure('minimum', 'Nothing below', '°C')}
          {figure('doubles', 'Twice as fast every', '°C')}
          {kind === 'dries' && figure('stopsAt', 'Nothing from a humidity of', '%')}
        </div>
      )}
      {draft.fromTin && kind === 'moisture' && (
        <div className="field-row">
          {figure('depth', 'Bead deep', 'mm')}
          {figure('firstDay', 'Cured in the first day', 'mm')}
          {figure('reference', 'At', '°C')}
          {figure('humidity', 'and a humidity of', '%')}
          {figure('minimum', 'Nothing below', '°C')}
        </div>
      )}
      <TickField label="It must stay dry" value={draft.dry} onChange={(on) => set('dry', on)} />
      <TickField label="Dust must keep away" value={draft.wet} onChange={(on) => set('wet', on)} />
      <NumberField
        label="It must stay above"
        unit="°C"
        note="Empty: nothing beyond what the product asks."
        value={draft.airMin}
        onChange={(text) => set('airMin', text)}
        refused={faults.airMin}
      />
      <SetUpNeedsField
        book={book}
        label="How she must stand meanwhile"
        needs={draft.setUps}
        onChange={(needs) => set('setUps', needs)}
      />
      <ManyField
        label="What may not be moved meanwhile"
        values={draft.still}
        onChange={(still) => set('still', still)}
        options={Object.entries(book.setUps).map(([value, { name }]) => ({ value, name }))}
        empty="There are no set-ups yet; they are put in under Boat."
      />
      <p>
        <button type="button" className="words removes" onClick={onRemove}>
          Take this wait out
        </button>
      </p>
    </fieldset>
  );
}
