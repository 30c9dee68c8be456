/** Something was got: how much in truth, what it cost, where it was put. */
import type { Book } from '#boat-book';
import { priceInWords, type ToGet, unitInWords } from '#reckoning';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { gotFields } from './got-fields.ts';
import { PlaceFields, type PlaceName, placeDraft, placeKept, readPlace } from './place-fields.tsx';

type Name = PlaceName | 'amount' | 'price' | 'currency' | 'expires';

export default function GotSheet({
  book,
  line,
  onClose,
}: {
  readonly book: Book;
  readonly line: Pick<ToGet, 'store' | 'name' | 'jobs' | 'buy' | 'price'>;
  readonly onClose: () => void;
}) {
  const store = book.stores[line.store];
  const unit = store?.unit ?? line.buy?.unit ?? null;
  const { draft, set, changed } = useDraft({
    amount: line.buy?.amount.toString() ?? '',
    price: '',
    currency: book.boat.currency ?? '',
    expires: '',
    place: placeDraft(book, store),
  });
  if (store === undefined) return null;
  const read = (form: FormReading<Name>) => {
    const price = form.figureOrNone('price', draft.price, { min: 0, max: 10_000_000, unit: draft.currency });
    const currency = draft.currency.trim().toUpperCase();
    if (price !== null && !/^[A-Z]{3}$/.test(currency))
      form.refuse('currency', 'Say what was paid in: the three letters of a currency, such as EUR.');
    return {
      place: readPlace(form, draft.place, book),
      amount: unit === null ? null : form.figureOrNone('amount', draft.amount, { min: 0, max: 1_000_000, unit }),
      cost: price === null ? null : { amount: price, currency },
      expires: form.dayOrNone('expires', draft.expires),
    };
  };
  return (
    <RecordSheet
      title={`Got it: ${store.name}`}
      keep="Put it in the stores"
      unsaved={changed}
      read={read}
      onKeep={async ({ place, amount, cost, expires }, run) => {
        if (cost !== null && cost.currency !== (book.boat.currency ?? null)) {
          const told = await run('setBoat', { currency: cost.currency });
          if (told.kind === 'refused') return told;
        }
        const kept = await placeKept(place, run);
        if ('kind' in kept) return kept;
        return run('gotStore', {
          ...gotFields(line, unit, amount),
          ...kept,
          ...(expires === null ? {} : { expires }),
          cost,
        });
      }}
      onClose={onClose}
    >
      {(faults) => (
        <>
          {unit !== null && (
            <NumberField
              label="How much was got"
              {...(line.buy === null ? {} : { note: `On the list: ${line.buy.words}.` })}
              unit={unitInWords(unit)}
              value={draft.amount}
              onChange={(text) => set('amount', text)}
              refused={faults.amount}
            />
          )}
          <div className="stores-pair">
            <NumberField
              label="Paid for all of it"
              {...(line.price === null
                ? {}
                : { note: `Thought: ${priceInWords(line.price, book.boat.currency ?? null)}.` })}
              unit=""
              value={draft.price}
              onChange={(text) => set('price', text)}
              refused={faults.price}
            />
            <TextField
              label="Currency"
              note="three letters"
              value={draft.currency}
              onChange={(text) => set('currency', text)}
              refused={faults.currency}
            />
          </div>
          <PlaceFields book={book} draft={draft.place} onChange={(place) => set('place', place)} faults={faults} />
          <DayField
            label="Date printed on it"
            note="The last day it is good for, where it says one."
            value={draft.expires}
            onChange={(day) => set('expires', day)}
            refused={faults.expires}
          />
          {line.jobs.length > 0 && (
            <p className="small soft">
              What was paid goes to {line.jobs.map(({ title }) => `'${title}'`).join(', ')}
              {line.jobs.every(({ share }) => share !== null)
                ? ` for what ${line.jobs.length === 1 ? 'it takes' : 'each takes'}; what is over is stock.`
                : line.jobs.length === 1
                  ? '.'
                  : ' in equal parts.'}
            </p>
          )}
        </>
      )}
    </RecordSheet>
  );
}
