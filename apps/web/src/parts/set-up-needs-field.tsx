import type { Book, Id, SetUpNeedRecord } from '#boat-book';
import { ManyField } from './choice-fields.tsx';

/** Which states of each set-up will do; none ticked: it does not matter. */
export function SetUpNeedsField({
  book,
  label,
  needs,
  onChange,
  except,
  only,
}: {
  readonly book: Book;
  readonly label: string;
  readonly needs: readonly SetUpNeedRecord[];
  readonly onChange: (needs: readonly SetUpNeedRecord[]) => void;
  /** a set-up that is not asked about */
  readonly except?: Id | undefined;
  /** the set-ups asked about; left out: all */
  readonly only?: readonly Id[];
}) {
  const setUps = Object.entries(book.setUps).filter(
    ([id]) => id !== except && (only === undefined || only.includes(id)),
  );
  if (setUps.length === 0) return null;
  return (
    <fieldset className="field">
      <legend>{label}</legend>
      <p className="field-note">None ticked: it does not matter.</p>
      <div className="field-set-ups">
        {setUps.map(([id, setUp]) => (
          <ManyField
            key={id}
            label={setUp.name}
            values={needs.find((need) => need.setUp === id)?.states ?? []}
            onChange={(states) =>
              onChange([
                ...needs.filter((need) => need.setUp !== id),
                ...(states.length > 0 ? [{ setUp: id, states }] : []),
              ])
            }
            options={setUp.states.map((state) => ({ value: state.id, name: state.name }))}
            empty="It has no states yet."
          />
        ))}
      </div>
    </fieldset>
  );
}
