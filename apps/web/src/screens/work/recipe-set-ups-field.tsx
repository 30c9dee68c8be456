/** How she must stand for a step or a wait of a recipe: by the boat's own set-ups, and those the recipe names besides. */
import type { Book } from '#boat-book';
import type { RecipeSetUp } from '#jobs';
import { recipeSetUpChoices } from '#reckoning';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { capital } from '../../parts/in-words.ts';

export function RecipeSetUpsField({
  book,
  label,
  setUps,
  onChange,
}: {
  readonly book: Pick<Book, 'setUps'>;
  readonly label: string;
  readonly setUps: readonly RecipeSetUp[];
  readonly onChange: (setUps: readonly RecipeSetUp[]) => void;
}) {
  const choices = recipeSetUpChoices(book, setUps);
  if (choices.length === 0)
    return <p className="field-note">{label}: there are no set-ups yet; they are put in under Boat.</p>;
  return (
    <fieldset className="field">
      <legend>{label}</legend>
      <div className="field-set-ups">
        {choices.map(({ setUp, states, state, inBook }) => (
          <ChoiceField
            key={setUp}
            label={capital(setUp)}
            note={inBook ? undefined : 'This boat has no such set-up: a job put in by this recipe does not ask for it.'}
            value={state}
            onChange={(next) =>
              onChange([
                ...setUps.filter((other) => other.setUp !== setUp),
                ...(next === '' ? [] : [{ setUp, state: next }]),
              ])
            }
            none="it does not matter"
            options={states.map((name) => ({ value: name, name }))}
          />
        ))}
      </div>
    </fieldset>
  );
}
