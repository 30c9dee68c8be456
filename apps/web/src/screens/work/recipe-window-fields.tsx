/** The window of a step of a recipe: how soon after the step before it the next coat must be on, and what if it is not. */
import type { RecipeWindow } from '#jobs';
import type { Faults, FormReading } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';
import { PastLatestFields } from './past-latest-fields.tsx';

export interface RecipeWindowDraft {
  /** hours; '': at any time */
  readonly latest: string;
  readonly past: RecipeWindow['past']['kind'];
  readonly abrade: string;
}

export type RecipeWindowFault = `window ${'latest' | 'abrade'}`;

export const recipeWindowDraft = (window: RecipeWindow | null): RecipeWindowDraft => ({
  latest: window === null ? '' : String(Math.round((window.greatest_min / 60) * 100) / 100),
  past: window?.past.kind ?? 'abrade',
  abrade: window?.past.kind === 'abrade' ? String(window.past.minutes) : '',
});

export function readRecipeWindow(
  { latest, past, abrade }: RecipeWindowDraft,
  form: FormReading<RecipeWindowFault>,
): RecipeWindow | null {
  const hours = form.figureOrNone('window latest', latest, { min: 0.02, max: 2160, unit: 'h' });
  if (hours === null) return null;
  return {
    greatest_min: Math.round(hours * 60),
    past:
      past === 'forbidden'
        ? { kind: past }
        : { kind: past, minutes: form.figure('window abrade', abrade, { min: 1, max: 600, unit: 'min', whole: true }) },
  };
}

export function RecipeWindowFields({
  draft,
  faults,
  onChange,
}: {
  readonly draft: RecipeWindowDraft;
  readonly faults: Faults<RecipeWindowFault>;
  readonly onChange: (draft: RecipeWindowDraft) => void;
}) {
  return (
    <fieldset className="field">
      <legend>After the step before it and its waits</legend>
      <NumberField
        label="At the latest after"
        unit="h"
        note="Empty: no latest. Where the tin of the coat below says its window, the tin wins."
        value={draft.latest}
        onChange={(latest) => onChange({ ...draft, latest })}
        refused={faults['window latest']}
      />
      {draft.latest !== '' && (
        <PastLatestFields
          past={draft.past}
          abrade={draft.abrade}
          refused={faults['window abrade']}
          onChange={(part) => onChange({ ...draft, ...part })}
        />
      )}
    </fieldset>
  );
}
