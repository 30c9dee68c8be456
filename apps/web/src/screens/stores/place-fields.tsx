/** Where a thing is kept: a place of the keeper's list, or a new one, and what is more to say of it. */
import type { Book, Id } from '#boat-book';
import { keptInWords, stowageNamed, stowagesInOrder } from '#reckoning';
import { ChoiceField, PickField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { TextField } from '../../parts/text-fields.tsx';
import type { Run } from '../../parts/use-run.ts';

/** chosen to name a place that is not in the list yet */
const another = 'a new place';

export interface PlaceDraft {
  readonly stowage: string;
  readonly newPlace: string;
  readonly newIs: 'on board' | 'ashore' | '';
  readonly keptAt: string;
}

export function placeDraft(
  book: Book,
  kept: { readonly keptAt: string; readonly stowage?: Id | null } | undefined,
): PlaceDraft {
  // words that name a place of the list are that place
  const named = kept?.stowage ?? stowageNamed(book.stowages, kept?.keptAt ?? '');
  return {
    stowage: named ?? '',
    newPlace: '',
    newIs: '',
    keptAt: kept === undefined || (kept.stowage == null && named !== null) ? '' : kept.keptAt,
  };
}

export type PlaceName = 'newPlace' | 'newIs';
export type ReadPlace = {
  readonly keptAt: string;
  readonly stowage: Id | null;
  readonly add: { readonly name: string; readonly aboard: boolean } | null;
};

export function readPlace(form: FormReading<PlaceName>, draft: PlaceDraft, book: Book): ReadPlace {
  const keptAt = draft.keptAt.trim();
  if (draft.stowage !== another) return { keptAt, stowage: draft.stowage === '' ? null : draft.stowage, add: null };
  const name = form.words('newPlace', draft.newPlace, 'Name the place, such as port locker.');
  const known = stowageNamed(book.stowages, name);
  if (known !== null) return { keptAt, stowage: known, add: null };
  const is = form.chosen('newIs', draft.newIs, 'Say whether it is on board or ashore.');
  return { keptAt, stowage: null, add: { name, aboard: is === 'on board' } };
}

/** The place as the record has it; one that is new is put in the list first. */
export async function placeKept(
  { keptAt, stowage, add }: ReadPlace,
  run: Run,
): Promise<{ readonly keptAt: string; readonly stowage: Id | null } | Awaited<ReturnType<Run>>> {
  if (add === null) return { keptAt, stowage };
  const outcome = await run('addStowage', { name: add.name, within: null, aboard: add.aboard });
  return outcome.kind === 'done' ? { keptAt, stowage: outcome.id } : outcome;
}

export function PlaceFields({
  book,
  draft,
  onChange,
  faults,
}: {
  readonly book: Book;
  readonly draft: PlaceDraft;
  readonly onChange: (draft: PlaceDraft) => void;
  readonly faults: Partial<Readonly<Record<PlaceName, string>>>;
}) {
  return (
    <>
      <ChoiceField
        label="Where it is kept"
        value={draft.stowage}
        onChange={(value) => onChange({ ...draft, stowage: value })}
        none="no place of the list"
        options={[
          ...stowagesInOrder(book.stowages).map(({ id, stowage }) => ({
            value: id,
            name: `${keptInWords(book.stowages, { stowage: id, keptAt: '' })}${stowage.aboard ? ', on board' : ''}`,
          })),
          { value: another, name: 'a new place …' },
        ]}
      />
      {draft.stowage === another && (
        <>
          <TextField
            label="Name of the place"
            note="As you would call it: port locker, garage shelf 2."
            value={draft.newPlace}
            onChange={(text) => onChange({ ...draft, newPlace: text })}
            refused={faults.newPlace}
          />
          <PickField
            label="It is"
            value={draft.newIs}
            onChange={(value) => onChange({ ...draft, newIs: value })}
            options={[
              { value: 'on board', name: 'on board' },
              { value: 'ashore', name: 'ashore' },
            ]}
            refused={faults.newIs}
          />
        </>
      )}
      <TextField
        label={draft.stowage === '' ? 'Or in words' : 'More exactly'}
        note="As you would tell a friend who fetches it."
        value={draft.keptAt}
        onChange={(text) => onChange({ ...draft, keptAt: text })}
      />
    </>
  );
}
