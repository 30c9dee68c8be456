/** What a step used of its stores: by the amount where they are counted, or used up; left alone, nothing is taken out. */
import type { Book, Step, UsedStore } from '#boat-book';
import { takesByTin } from '#reckoning';
import { TickField } from '../../parts/choice-fields.tsx';
import { readFigure } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';

/** What was typed or ticked, by store. */
export type UsedDraft = Readonly<Record<string, string>>;

const usedUp = 'used up';
const limits = { min: 0, max: 1_000_000, unit: '' } as const;

/** What the step is expected to take of each thing that is counted in the same unit. */
export function expectedUse(book: Book, step: Step): UsedDraft {
  return Object.fromEntries(
    takesByTin(book, step).flatMap(({ store, amount, unit }) => {
      const known = book.stores[store];
      return known?.onHand && known.amount != null && known.unit === unit
        ? [[store, String(Number(amount.toPrecision(4)))]]
        : [];
    }),
  );
}

/** What is to be taken out of the stores, or what of it cannot be read, by store. */
export function usedOf(
  book: Book,
  draft: UsedDraft,
): { readonly used: readonly UsedStore[]; readonly faults: Readonly<Record<string, string>> } {
  const used: UsedStore[] = [];
  const faults: Record<string, string> = {};
  for (const [store, text] of Object.entries(draft)) {
    if (text.trim() === '' || book.stores[store] === undefined) continue;
    if (text === usedUp) used.push({ store, amount: null });
    else {
      const read = readFigure(text, limits);
      if (read.kind === 'refused') faults[store] = read.why;
      else if (read.value > 0) used.push({ store, amount: read.value });
    }
  }
  return { used, faults };
}

export function UsedStores({
  book,
  step,
  draft,
  faults,
  onChange,
}: {
  readonly book: Book;
  readonly step: Step;
  readonly draft: UsedDraft;
  readonly faults: Readonly<Record<string, string>>;
  readonly onChange: (draft: UsedDraft) => void;
}) {
  const there = step.stores.flatMap((id) => {
    const store = book.stores[id];
    return store?.onHand ? [{ id, store }] : [];
  });
  if (there.length === 0) return null;
  return (
    <fieldset className="field">
      <legend>What was used</legend>
      {there.map(({ id, store }) =>
        store.amount == null || store.unit == null ? (
          <TickField
            key={id}
            label={`${store.name}: used up`}
            value={draft[id] === usedUp}
            onChange={(up) => onChange({ ...draft, [id]: up ? usedUp : '' })}
          />
        ) : (
          <NumberField
            key={id}
            label={store.name}
            unit={store.unit}
            note={`${store.amount} ${store.unit} there`.replace(/ {2}/, ' ')}
            value={draft[id] ?? ''}
            onChange={(text) => onChange({ ...draft, [id]: text })}
            refused={faults[id] ?? null}
          />
        ),
      )}
    </fieldset>
  );
}
