/** A step's place in the order of its job: after the one before it, or after others with a soonest and a latest. */
import type { Book, Id } from '#boat-book';
import { ChoiceField, PickField } from '../../parts/choice-fields.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';
import type { NamedStep } from '../../reading/open-work.ts';
import { emptyFollow, type FollowDraft, type FollowFault } from './follow-draft.ts';
import { PastLatestFields } from './past-latest-fields.tsx';

export function FollowFields({
  book,
  others,
  follows,
  faults,
  onChange,
}: {
  readonly book: Book;
  /** the other steps of the job */
  readonly others: readonly NamedStep[];
  readonly follows: readonly FollowDraft[] | null;
  readonly faults: Readonly<Record<number, Faults<FollowFault>>>;
  readonly onChange: (follows: readonly FollowDraft[] | null) => void;
}) {
  const change = (index: number, part: Partial<FollowDraft>) =>
    onChange((follows ?? []).map((follow, at) => (at === index ? { ...follow, ...part } : follow)));
  return (
    <>
      <PickField
        quiet
        label="When it can be done"
        value={follows === null ? 'in order' : 'own'}
        onChange={(value) =>
          onChange(value === 'in order' ? null : others.length > 0 ? [emptyFollow(crypto.randomUUID())] : [])
        }
        options={[
          { value: 'in order', name: 'after the step before it and its waits' },
          { value: 'own', name: 'an order of its own' },
        ]}
      />
      {follows?.length === 0 && <p className="field-note">It needs no other step first.</p>}
      {follows?.map((follow, index) => (
        <fieldset key={follow.id} className="step-wait">
          <legend className="unseen">Comes after, {index + 1}</legend>
          <ChoiceField
            label="After the step"
            value={follow.step}
            onChange={(step) => change(index, { step, wait: '' })}
            options={others.map(({ id, step }) => ({ value: id, name: step.title }))}
            refused={faults[index]?.step}
          />
          {waitsOf(book, follow.step).length > 0 && (
            <ChoiceField
              label="From the end of"
              value={follow.wait}
              onChange={(wait) => change(index, { wait })}
              none="the step itself"
              options={waitsOf(book, follow.step).map((wait) => ({ value: wait.id, name: wait.title }))}
            />
          )}
          <div className="field-row">
            <NumberField
              label="At the soonest after"
              unit="min"
              whole
              value={follow.least}
              onChange={(least) => change(index, { least })}
              refused={faults[index]?.least}
            />
            <NumberField
              label="At the latest after"
              unit="min"
              whole
              note="Empty: no latest."
              value={follow.greatest}
              onChange={(greatest) => change(index, { greatest })}
              refused={faults[index]?.greatest}
            />
          </div>
          {follow.greatest !== '' && (
            <PastLatestFields
              past={follow.past}
              abrade={follow.abrade}
              refused={faults[index]?.abrade}
              onChange={(part) => change(index, part)}
            />
          )}
          <p>
            <button
              type="button"
              className="words removes"
              onClick={() => onChange(follows.filter((other) => other.id !== follow.id))}
            >
              Take this out
            </button>
          </p>
        </fieldset>
      ))}
      {follows !== null && others.length > 0 && (
        <p>
          <button
            type="button"
            className="words"
            onClick={() => onChange([...follows, emptyFollow(crypto.randomUUID())])}
          >
            It also comes after another step
          </button>
        </p>
      )}
    </>
  );
}

function waitsOf(book: Book, step: Id) {
  return book.steps[step]?.waits ?? [];
}
