/** A thing in the stores: what, how much, where, its dates, and what it is sold in. */
import type { Book, Id, StoreUnit } from '#boat-book';
import { shelfLifeOf } from '#materials';
import { isStoreUnit, sizeInWords, storeUnits, unitInWords } from '#reckoning';
import { ChoiceField, PickField } from '../../parts/choice-fields.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { todayAt } from '../../reading/today.ts';
import { PlaceFields, type PlaceName, placeDraft, placeKept, readPlace } from './place-fields.tsx';

const StandingPart = onDemand(() => import('./standing-part.tsx'));

type Name =
  | PlaceName
  | 'name'
  | 'expected'
  | 'stands'
  | 'lead'
  | 'amount'
  | 'unit'
  | 'holds'
  | 'packWord'
  | 'opened'
  | 'expires'
  | 'keeps'
  | 'price'
  | 'currency';

const pieces = 'pieces';
const units = storeUnits.map((unit) => ({ value: unit === '' ? pieces : unit, name: unitInWords(unit) }));
const unitOf = (value: string): StoreUnit | null =>
  value === pieces ? '' : value !== '' && isStoreUnit(value) ? value : null;

export default function StoreSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const store = id === null ? undefined : book.stores[id];
  const today = todayAt(book);
  const figure = (value: number | null | undefined) => value?.toString() ?? '';
  const { draft, set, changed } = useDraft({
    name: store?.name ?? '',
    stands: (store === undefined
      ? ''
      : store.onHand
        ? 'on hand'
        : store.expected === null
          ? 'not ordered'
          : 'expected') as 'on hand' | 'expected' | 'not ordered' | '',
    expected: store?.expected ?? '',
    lead: figure(store?.lead_days),
    note: store?.note ?? '',
    amount: store?.onHand ? figure(store.amount) : '',
    unit: store?.unit == null ? '' : store.unit === '' ? pieces : store.unit,
    holds: figure(store?.pack?.holds),
    packWord: store?.pack?.word ?? '',
    opened: store?.opened ?? '',
    expires: store?.expires ?? '',
    keeps: figure(store?.keepsOpened_months),
    from: store?.from ?? '',
    price: figure(store?.price),
    currency: book.boat.currency ?? '',
    place: placeDraft(book, store),
  });
  const read = (form: FormReading<Name>) => {
    const stands = form.chosen('stands', draft.stands, 'Say whether it is on hand.');
    const unit = unitOf(draft.unit);
    const amount =
      stands === 'on hand'
        ? form.figureOrNone('amount', draft.amount, { min: 0, max: 1_000_000, unit: draft.unit })
        : null;
    const holds = form.figureOrNone('holds', draft.holds, { min: 0.001, max: 1_000_000, unit: draft.unit });
    if (unit === null && (amount !== null || holds !== null))
      form.refuse('unit', 'An amount needs to know what it is counted in. Choose one.');
    if (holds !== null && draft.packWord.trim() === '')
      form.refuse('packWord', 'Say what holds that much: a tube, a tin, a coil.');
    const price = form.figureOrNone('price', draft.price, { min: 0, max: 10_000_000, unit: draft.currency });
    const currency = draft.currency.trim().toUpperCase();
    if (currency !== '' && !/^[A-Z]{3}$/.test(currency))
      form.refuse('currency', `'${draft.currency.trim()}' is no currency. Give its three letters, such as EUR.`);
    return {
      place: readPlace(form, draft.place, book),
      currency: currency === '' ? null : currency,
      fields: {
        name: form.words('name', draft.name, 'Name it, with its size.'),
        onHand: stands === 'on hand',
        expected: stands === 'expected' ? form.day('expected', draft.expected) : null,
        lead_days: form.figureOrNone('lead', draft.lead, { min: 0, max: 365, unit: 'days', whole: true }),
        note: draft.note.trim(),
        amount,
        unit,
        pack: holds === null ? null : { holds, word: draft.packWord.trim() },
        opened: form.dayOrNone('opened', draft.opened),
        expires: form.dayOrNone('expires', draft.expires),
        keepsOpened_months: form.figureOrNone('keeps', draft.keeps, { min: 0, max: 600, unit: 'months' }),
        from: draft.from.trim() === '' ? null : draft.from.trim(),
        price,
        // on hand from today, so that what keeps so long after it came is counted from then
        ...(stands === 'on hand' && store?.onHand !== true ? { got: today } : {}),
      },
    };
  };
  const size = sizeInWords(draft.name);
  const family = shelfLifeOf(draft.name);
  return (
    <RecordSheet
      title={store ? `Change: ${store.name}` : 'A thing for the stores'}
      keep={store ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={async ({ place, currency, fields }, run) => {
        if (currency !== null && currency !== (book.boat.currency ?? null)) {
          const told = await run('setBoat', { currency });
          if (told.kind === 'refused') return told;
        }
        const kept = await placeKept(place, run);
        if ('kind' in kept) return kept;
        return id === null ? run('addStore', { ...fields, ...kept }) : run('changeStore', { id, ...fields, ...kept });
      }}
      onRemove={id === null ? null : (run) => run('removeStore', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          {id !== null && store && <StandingPart book={book} id={id} />}
          <TextField
            label="What it is, with its size"
            {...(size === null ? {} : { note: `Read as ${size}.` })}
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults.name}
          />
          <PickField
            label="It is"
            value={draft.stands}
            onChange={(value) => set('stands', value)}
            options={[
              { value: 'on hand', name: 'on hand' },
              { value: 'expected', name: 'expected on a day' },
              { value: 'not ordered', name: 'not ordered' },
            ]}
            refused={faults.stands}
          />
          {draft.stands === 'expected' && (
            <DayField
              label="Expected on"
              value={draft.expected}
              onChange={(day) => set('expected', day)}
              refused={faults.expected}
            />
          )}
          <div className="stores-pair">
            {draft.stands === 'on hand' && (
              <NumberField
                label="How much is there"
                unit=""
                value={draft.amount}
                onChange={(text) => set('amount', text)}
                refused={faults.amount}
              />
            )}
            <ChoiceField
              label="Counted in"
              value={draft.unit}
              onChange={(value) => set('unit', value)}
              none="not counted"
              options={units}
              refused={faults.unit}
            />
          </div>
          <PlaceFields book={book} draft={draft.place} onChange={(place) => set('place', place)} faults={faults} />
          <details
            className="field-group"
            open={
              faults.opened !== undefined || faults.expires !== undefined || faults.keeps !== undefined || undefined
            }
          >
            <summary>
              Its dates{' '}
              <span className="soft">{draft.expires !== '' || draft.opened !== '' ? 'written down' : 'none'}</span>
            </summary>
            <DayField
              label="Date printed on it"
              note="The last day it is good for. It counts before all else."
              value={draft.expires}
              onChange={(day) => set('expires', day)}
              refused={faults.expires}
            />
            <DayField
              label="Opened on"
              value={draft.opened}
              onChange={(day) => set('opened', day)}
              refused={faults.opened}
            />
            <NumberField
              label="Keeps once opened"
              note={
                family?.opened_months == null
                  ? 'As its tin says. Empty: nothing is known.'
                  : `As its tin says. Empty: ${family.opened_months === 1 ? 'a month' : `${family.opened_months} months`}, as ${family.family} commonly does (common practice).`
              }
              unit="months"
              value={draft.keeps}
              onChange={(text) => set('keeps', text)}
              refused={faults.keeps}
            />
          </details>
          <details
            className="field-group"
            open={
              [faults.lead, faults.holds, faults.packWord, faults.price, faults.currency].some(Boolean) || undefined
            }
          >
            <summary>
              Getting it{' '}
              <span className="soft">
                {[draft.from.trim(), draft.lead !== '' && `${draft.lead} days`].filter(Boolean).join(', ') ||
                  'nothing said'}
              </span>
            </summary>
            <NumberField
              label="Lead time"
              note="Whole days from ordering it to having it: 0 where it is to be had the same day. Leave it empty where you do not know."
              unit="days"
              whole
              value={draft.lead}
              onChange={(text) => set('lead', text)}
              refused={faults.lead}
            />
            <TextField label="Where it is to be had" value={draft.from} onChange={(text) => set('from', text)} />
            <div className="stores-pair">
              <TextField
                label="It is sold by the"
                note="tube, tin, coil"
                value={draft.packWord}
                onChange={(text) => set('packWord', text)}
                refused={faults.packWord}
              />
              <NumberField
                label="Each holds"
                unit={draft.unit === pieces ? '' : draft.unit}
                value={draft.holds}
                onChange={(text) => set('holds', text)}
                refused={faults.holds}
              />
            </div>
            <div className="stores-pair">
              <NumberField
                label={draft.packWord.trim() === '' ? 'Price of one' : `Price of one ${draft.packWord.trim()}`}
                unit=""
                value={draft.price}
                onChange={(text) => set('price', text)}
                refused={faults.price}
              />
              <TextField
                label="Currency of all prices"
                note="three letters"
                value={draft.currency}
                onChange={(text) => set('currency', text)}
                refused={faults.currency}
              />
            </div>
          </details>
          <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
