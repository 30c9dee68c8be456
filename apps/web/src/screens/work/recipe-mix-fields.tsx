/** What a step of a recipe mixes: by what name, how long it takes and lasts, and how its two parts go together. */
import type { RecipeMix } from '#jobs';
import { cureLaws } from '#materials';
import { ChoiceField, PickField, TickField } from '../../parts/choice-fields.tsx';
import type { Faults, FormReading } from '../../parts/read-form.ts';
import { NumberField, TextField } from '../../parts/text-fields.tsx';

export interface RecipeMixDraft {
  readonly mixes: boolean;
  readonly name: string;
  /** '': of none of ours */
  readonly family: string;
  readonly mixing: string;
  readonly potLife: string;
  /** name of the thing it takes whose amount it is; '': nobody says how much */
  readonly of: string;
  readonly density: string;
  readonly by: 'weight' | 'volume' | 'unsaid';
  readonly resin: string;
  readonly hardener: string;
}

export type RecipeMixFault = `mix ${'name' | 'mixing' | 'potLife' | 'density' | 'resin' | 'hardener'}`;

export const recipeMixDraft = (mix: RecipeMix | null): RecipeMixDraft => ({
  mixes: mix !== null,
  name: mix?.name ?? '',
  family: mix?.family ?? '',
  mixing: mix?.mixing_min.toString() ?? '',
  potLife: mix?.potLife_min.toString() ?? '',
  of: mix?.of ?? '',
  density: mix?.density_g_ml.toString() ?? '1.1',
  by: mix?.ratio?.by ?? 'unsaid',
  resin: mix?.ratio?.resin.toString() ?? '',
  hardener: mix?.ratio?.hardener.toString() ?? '',
});

/** @param taken  names of what the step takes: a thing that it takes no more says no amount */
export function readRecipeMix(
  draft: RecipeMixDraft,
  taken: readonly string[],
  form: FormReading<RecipeMixFault>,
): RecipeMix | null {
  if (!draft.mixes) return null;
  const parts = { min: 0.01, max: 1000, unit: 'parts' };
  return {
    name: form.words('mix name', draft.name, 'Say what is mixed, such as ‘epoxy, slow hardener’.'),
    family: draft.family || null,
    mixing_min: form.figure('mix mixing', draft.mixing, { min: 0, max: 1440, unit: 'min', whole: true }),
    potLife_min: form.figure('mix potLife', draft.potLife, { min: 1, max: 10_080, unit: 'min', whole: true }),
    of: taken.includes(draft.of) ? draft.of : null,
    density_g_ml: form.figure('mix density', draft.density, { min: 0.1, max: 10, unit: 'g/ml' }),
    ...(draft.by === 'unsaid'
      ? {}
      : {
          ratio: {
            by: draft.by,
            resin: form.figure('mix resin', draft.resin, parts),
            hardener: form.figure('mix hardener', draft.hardener, parts),
          },
        }),
  };
}

/** Steps that share a mix share what is said of it; whose amount it is stays each step's own. */
export const sharedMix = (mix: RecipeMix | null, others: RecipeMix | null, name: string | undefined) =>
  mix !== null && others !== null && (others.name === mix.name || others.name === name)
    ? { ...mix, of: others.of }
    : others;

export function RecipeMixFields({
  draft,
  taken,
  known,
  faults,
  onChange,
}: {
  readonly draft: RecipeMixDraft;
  /** names of what the step takes */
  readonly taken: readonly string[];
  /** names of the other mixes of the recipe and the book, to share one */
  readonly known: readonly string[];
  readonly faults: Faults<RecipeMixFault>;
  readonly onChange: (draft: RecipeMixDraft) => void;
}) {
  const set = <K extends keyof RecipeMixDraft>(key: K, value: RecipeMixDraft[K]) =>
    onChange({ ...draft, [key]: value });
  const figure = (
    key: 'mixing' | 'potLife' | 'density' | 'resin' | 'hardener',
    label: string,
    unit: string,
    whole = false,
    note?: string,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      whole={whole}
      note={note}
      value={draft[key]}
      onChange={(text) => set(key, text)}
      refused={faults[`mix ${key}`]}
    />
  );
  return (
    <>
      <TickField label="Something is mixed for it" value={draft.mixes} onChange={(on) => set('mixes', on)} />
      {draft.mixes && (
        <fieldset className="field step-wait">
          <legend>The mix</legend>
          <TextField
            label="Called"
            note="Steps with a mix of this name may share a batch, and all that is said here."
            suggest={known}
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults['mix name']}
          />
          <ChoiceField
            label="What it is"
            value={draft.family}
            onChange={(family) => set('family', family)}
            none="none of these"
            options={cureLaws
              .filter(({ law }) => law.kind === 'reacts')
              .map(({ id, title }) => ({ value: id, name: title }))}
          />
          {figure('mixing', 'Mixing takes', 'min', true)}
          {figure('potLife', 'Pot life at 20 °C', 'min', true, 'What the tin says wins.')}
          <PickField
            label="Its two parts go together"
            value={draft.by}
            onChange={(by) => set('by', by)}
            options={[
              { value: 'weight', name: 'by weight' },
              { value: 'volume', name: 'by volume' },
              { value: 'unsaid', name: 'as its tin says' },
            ]}
          />
          {draft.by !== 'unsaid' && (
            <div className="field-row">
              {figure('resin', 'Resin', 'parts')}
              {figure('hardener', 'Hardener', 'parts')}
            </div>
          )}
          <ChoiceField
            label="How much: as much as it takes of"
            value={draft.of}
            onChange={(of) => set('of', of)}
            none="not said"
            options={taken.map((name) => ({ value: name, name }))}
          />
          {figure('density', 'It weighs, mixed', 'g/ml')}
        </fieldset>
      )}
    </>
  );
}
